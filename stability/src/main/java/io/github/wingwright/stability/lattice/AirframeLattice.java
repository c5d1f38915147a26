// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The surfaces of an airframe as a lattice, whatever its layout: tail behind, on the fin, ahead or none, V-tail, twin fins.
 *
 * <p>A pair of fins, one on either side, is one mirrored surface. A specification is immutable; each call returns a new one.
 */
public final class AirframeLattice {
  private final Airframe airframe;
  private final int rows;
  private final int strips;
  private final double wingSlope;
  private final double tailSlope;

  private AirframeLattice(Airframe airframe, int rows, int strips, double wingSlope, double tailSlope) {
    this.airframe = airframe;
    this.rows = rows;
    this.strips = strips;
    this.wingSlope = wingSlope;
    this.tailSlope = tailSlope;
  }

  /**
   * The surfaces of an airframe, 6 rows of 24 strips on half the wing, half as many on each tail, ideal sections.
   *
   * @param airframe the airframe; its fuselage is no part of a lattice
   */
  public static AirframeLattice of(Airframe airframe) {
    Objects.requireNonNull(airframe, "airframe");
    return new AirframeLattice(airframe, 6, 24, 2 * Math.PI, 2 * Math.PI);
  }

  /**
   * With this number of panels on half the wing; a tail gets two thirds of the rows and half of the strips.
   *
   * @param alongChord rows along the chord
   * @param alongSpan strips along half the span
   */
  public AirframeLattice panels(int alongChord, int alongSpan) {
    return new AirframeLattice(airframe, alongChord, alongSpan, wingSlope, tailSlope);
  }

  /**
   * With these lift slopes of the sections: see {@link LatticeSurface#sectionLiftSlope}.
   *
   * @param wing of the wing's section [1/rad]
   * @param tails of the tails' section [1/rad]
   */
  public AirframeLattice sectionLiftSlopes(double wing, double tails) {
    return new AirframeLattice(airframe, rows, strips, wing, tails);
  }

  /**
   * The surfaces.
   *
   * @return the wing, then each tail, named {@code "wing"}, {@code "horizontal tail"}, {@code "V-tail"}, {@code "fin"},
   *     {@code "twin fins"}
   * @throws IllegalArgumentException if a fin on one side has no counterpart on the other
   */
  public List<LatticeSurface> surfaces() {
    List<LatticeSurface> all = new ArrayList<>();
    all.add(LatticeSurface.of("wing", airframe.wing()).panels(rows, strips).sectionLiftSlope(wingSlope));
    for (Tail tail : airframe.tails()) {
      double y = tail.placement().y().si();
      boolean aside = tail.role() == Tail.Role.VERTICAL && y != 0;
      if (aside) {
        counterpart(tail);
      }
      if (!aside || y > 0) {
        String name = unused(aside ? "twin fins" : tail.role() == Tail.Role.VERTICAL ? "fin" : tail.role().words(), all);
        all.add(tail(name, tail));
      }
    }
    return List.copyOf(all);
  }

  private LatticeSurface tail(String name, LiftingSurface surface) {
    int sections = surface.planform().stations().size();
    return LatticeSurface.of(name, surface)
        .panels(Math.max(1, 2 * rows / 3), Math.max(sections - 1, strips / 2))
        .sectionLiftSlope(tailSlope);
  }

  private static String unused(String name, List<LatticeSurface> taken) {
    String free = name;
    for (int i = 2; isTaken(free, taken); i++) {
      free = name + " " + i;
    }
    return free;
  }

  private static boolean isTaken(String name, List<LatticeSurface> taken) {
    return taken.stream().anyMatch(s -> s.name().equals(name));
  }

  private void counterpart(Tail fin) {
    Placement p = fin.placement();
    Placement other = new Placement(p.x(), p.y().negated(), p.z());
    double far = 1e-9 * airframe.wing().planform().span().si();
    if (airframe.tails().stream().noneMatch(t -> t.role() == Tail.Role.VERTICAL && t.planform().equals(fin.planform())
        && Math.abs(t.placement().x().si() - other.x().si()) < far
        && Math.abs(t.placement().y().si() - other.y().si()) < far
        && Math.abs(t.placement().z().si() - other.z().si()) < far)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "a fin beside the plane of symmetry needs a counterpart on the other side, the one at y = %s has none", p.y()));
    }
  }

  /**
   * The lattice, with coefficients on the wing's area, chord and span.
   *
   * @param x moment reference (centre of gravity) aft of the nose tip
   * @param z moment reference above the fuselage reference line
   */
  public VortexLattice about(Length x, Length z) {
    return VortexLattice.of(LatticeReference.of(airframe.wing().planform(), x, z),
        surfaces().toArray(LatticeSurface[]::new));
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "lattice of an airframe with %d tails, %d by %d panels on half the wing",
        airframe.tails().size(), rows, strips);
  }
}
