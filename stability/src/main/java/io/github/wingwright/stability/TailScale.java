// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import java.util.Objects;

/** The same tail in another size. */
public final class TailScale {
  private TailScale() {}

  /**
   * Grown or shrunk, its shape and the place of its quarter mean chord kept.
   *
   * @param tail the tail
   * @param area area of its planform [m²], positive
   * @return the tail with it
   */
  public static Tail toArea(Tail tail, double area) {
    Objects.requireNonNull(tail, "tail");
    Door.positive(area, "area of the tail");
    Planform old = tail.planform();
    double f = Math.sqrt(area / old.area().si());
    List<Panel> panels =
        old.panels().stream()
            .map(p -> new Panel(p.extent().times(f), p.tipChord().times(f), p.leadingEdgeSweep(), p.dihedral(), p.washout()))
            .toList();
    Length root = old.rootChord().times(f);
    Planform planform = old.isMirrored() ? Planform.symmetric(root, panels) : Planform.fin(root, panels);
    Length x = tail.quarterChordX().minus(planform.quarterMeanAerodynamicChordX());
    return new Tail(tail.role(), planform, tail.section(), tail.placement().withX(x), tail.incidence());
  }
}
