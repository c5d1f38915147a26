// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;

/**
 * A plate of one thickness with the outline of a planform: the tails of a small glider. The planform is its middle; where
 * that has dihedral, as a V-tail has, the plate is bent along its folds, mitred there, and as thick across each panel. Straight
 * edges need no tolerance: a flat plate is exact, a bent one to a few parts in 10⁴ of its volume.
 */
public final class PlateSolid implements Solid {
  /** Just beside a station [m]. */
  private static final double BESIDE = 1e-9;

  private final Planform planform;
  private final double thickness;
  private final double from;
  private final double to;

  private PlateSolid(Planform planform, double thickness, double from, double to) {
    this.planform = planform;
    this.thickness = thickness;
    this.from = from;
    this.to = to;
  }

  /**
   * A plate: from tip to tip if the planform has two halves, else from root to tip.
   *
   * @param planform its outline, with a tip chord of at least 1 mm
   * @param thickness its thickness, positive
   * @return the plate
   */
  public static PlateSolid of(Planform planform, Length thickness) {
    Objects.requireNonNull(planform, "planform");
    Door.positive(thickness, "thickness of a plate");
    Door.within(planform.tipChord(), Length.millimetres(1), planform.rootChord().times(100.0), "tip chord of a part");
    double span = planform.span().si();
    return planform.isMirrored()
        ? new PlateSolid(planform, thickness.si(), -0.5 * span, 0.5 * span)
        : new PlateSolid(planform, thickness.si(), 0.0, span);
  }

  /**
   * The same plate without its innermost strip: a fin that stands on a plate begins where that ends.
   *
   * @param begin where it begins, from the root
   * @return the plate
   */
  public PlateSolid startingAt(Length begin) {
    if (planform.isMirrored()) {
      throw new IllegalStateException("only a fin can start away from its root, was " + planform);
    }
    Door.within(begin, Length.ZERO, planform.span().times(0.99), "beginning of a plate");
    return new PlateSolid(planform, thickness, begin.si(), to);
  }

  /**
   * The piece between two stations, counted from the end that comes first: the port tip, of a fin the root.
   *
   * @param begin where it begins
   * @param end where it ends
   * @return the piece
   */
  public PlateSolid between(Length begin, Length end) {
    Objects.requireNonNull(begin, "begin");
    Objects.requireNonNull(end, "end");
    double first = planform.isMirrored() ? -0.5 * planform.span().si() : 0.0;
    double start = Math.max(from, first + begin.si());
    double stop = Math.min(to, first + end.si());
    if (!(start < stop)) {
      throw new IllegalArgumentException("a piece of a plate must begin before it ends, was " + begin + " to " + end);
    }
    return new PlateSolid(planform, thickness, start, stop);
  }

  @Override
  public TriangleMesh mesh(Length tolerance) {
    Curves.tolerance(tolerance);
    TreeSet<Double> changes = new TreeSet<>();
    for (Length station : planform.stations()) {
      for (double y : new double[] {0.0 - station.si(), station.si()}) {
        if (y > from && y < to) {
          changes.add(y);
        }
      }
    }
    NavigableSet<Double> stations = SlabStack.apart(changes, from, to);
    WingFrame frame = new WingFrame(planform);
    double half = 0.5 * thickness;
    List<int[]> loops = List.of(new int[] {0, 1, 2, 3});
    List<SlabStack.Slab> slabs = new ArrayList<>();
    double start = stations.first();
    for (double end : stations.tailSet(start, false)) {
      slabs.add(new SlabStack.Slab(new double[] {start, end}, loops));
      start = end;
    }
    return SlabStack.mesh(
        1,
        slabs,
        false,
        false,
        (key, y, p) -> {
          frame.place(y, key == 1 || key == 2 ? 1.0 : 0.0, 0.0, p);
          double[] offset = offset(y, half);
          p[1] += key < 2 ? offset[0] : 0.0 - offset[0];
          p[2] += key < 2 ? offset[1] : 0.0 - offset[1];
        });
  }

  /**
   * From the middle to the upper face, along y and z: across the panel, at a fold along the line that halves it, so that both
   * panels are as thick; at an end as its panel has it, at the plane of symmetry upright.
   */
  private double[] offset(double y, double half) {
    double inner = slope(y, -1.0);
    double outer = slope(y, 1.0);
    double mean = 0.5 * (inner + outer);
    double reach = half / Math.cos(0.5 * (outer - inner));
    return new double[] {0.0 - reach * Math.sin(mean), reach * Math.cos(mean)};
  }

  /** The angle at which the middle rises towards starboard just before or after a station [rad]. */
  private double slope(double y, double side) {
    boolean port = planform.isMirrored() && (y < -BESIDE || y < BESIDE && side < 0.0);
    double out = Math.abs(y) + (port ? -side : side) * BESIDE;
    List<Length> stations = planform.stations();
    int panel = 0;
    while (panel < stations.size() - 2 && stations.get(panel + 1).si() < out) {
      panel++;
    }
    double rise = planform.panels().get(panel).dihedral().si();
    return port ? 0.0 - rise : rise;
  }

  @Override
  public String toString() {
    return "plate " + Length.metres(thickness) + " thick, " + planform;
  }
}
