// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import java.util.Optional;

/**
 * Ballast that lies loose in the hollow nose. What finds no room at the place of the design lies further aft and has to weigh
 * more, so that it turns the glider about its balance mark as much.
 *
 * <pre>{@code m·(x_t − x̄) = m_b·(x_t − x_b)}</pre>
 *
 * <p>with the mass m and the middle x̄ of what fills the nose from its front wall up to the reach. The inside of the body
 * is reckoned as of a round one of the same sections: what is a wall away from its skin everywhere.
 *
 * @param ware what it is filled with
 * @param mass m
 * @param reach how far behind the tip of the nose it comes
 */
record NoseFilling(Ware ware, Mass mass, Length reach) {
  private static final double SLICE = 1e-4;

  /** Places to either side at which the wall is looked at. */
  private static final int PLACES = 10;

  /** What people have at hand, with its density as it lies in the nose, the gaps counted (from memory). */
  enum Ware {
    /** Half of the room is steel of 7.85 g/cm³. */
    STEEL_NUTS("steel nuts", 4000.0),
    /** Chalk and oil, without gaps. */
    MODELLING_CLAY("modelling clay", 1800.0);

    private final String words;
    private final double density;

    Ware(String words, double density) {
      this.words = words;
      this.density = density;
    }

    String words() {
      return words;
    }

    /** As it lies [kg/m³]. */
    double density() {
      return density;
    }
  }

  /**
   * The filling that balances as the ballast of the design does.
   *
   * @param design the design
   * @param ballast mass at the place of the design, positive
   * @param place that place, behind the tip of the nose
   * @param ware what it is filled with
   * @return empty if the nose up to the balance mark does not hold it
   */
  static Optional<NoseFilling> of(Design design, Mass ballast, Length place, Ware ware) {
    Fuselage body = design.aircraft().airframe().fuselage();
    double wall = design.brief().bodyShell().wallThickness().si();
    double mark = design.aircraft().centreOfGravity().x().si();
    double end = Math.min(mark, body.length().si() - 2.0 * wall);
    double wanted = ballast.si() * (mark - place.si());
    double mass = 0.0;
    double moment = 0.0;
    for (int i = 0; wall + (i + 1) * SLICE < end; i++) {
      double x = wall + (i + 0.5) * SLICE;
      double radius = inside(body, wall, x);
      double slice = ware.density() * Math.PI * radius * radius * SLICE;
      mass += slice;
      moment += slice * (mark - x);
      if (moment >= wanted) {
        return Optional.of(new NoseFilling(ware, Mass.kilograms(mass), Length.metres(x)));
      }
    }
    return Optional.empty();
  }

  /** Radius inside: a ball as thick as the wall, around a point of it, stays within the body. */
  private static double inside(Fuselage body, double wall, double x) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = -PLACES; i <= PLACES; i++) {
      double off = wall * i / PLACES;
      double outside = Math.sqrt(body.sectionAreaAt(Length.metres(x + off)).si() / Math.PI);
      least = Math.min(least, outside - Math.sqrt(wall * wall - off * off));
    }
    return Math.max(0.0, least);
  }
}
