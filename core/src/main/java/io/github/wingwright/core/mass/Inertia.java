// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.MomentOfInertia;
import java.io.Serializable;

/**
 * Moments and products of inertia about some point, in axes parallel to those of the fuselage: x aft, y to starboard, z up.
 *
 * <pre>{@code
 * I_xx = ∫ (y² + z²) dm     I_yy = ∫ (x² + z²) dm     I_zz = ∫ (x² + y²) dm
 * I_xy = ∫ x·y dm           I_xz = ∫ x·z dm           I_yz = ∫ y·z dm
 * }</pre>
 *
 * <p>The products are the integrals themselves; in the inertia tensor they stand with a minus sign. Books that let x point
 * forward and z down have the same I_xz, and I_xy and I_yz of opposite sign.
 *
 * @param roll I_xx
 * @param pitch I_yy
 * @param yaw I_zz
 * @param productXy I_xy, zero for a body symmetric about the x-z plane
 * @param productXz I_xz
 * @param productYz I_yz, zero for a body symmetric about the x-z plane
 */
public record Inertia(
    MomentOfInertia roll,
    MomentOfInertia pitch,
    MomentOfInertia yaw,
    MomentOfInertia productXy,
    MomentOfInertia productXz,
    MomentOfInertia productYz)
    implements Serializable {

  /** That of a point about itself. */
  public static final Inertia NONE =
      new Inertia(
          MomentOfInertia.ZERO,
          MomentOfInertia.ZERO,
          MomentOfInertia.ZERO,
          MomentOfInertia.ZERO,
          MomentOfInertia.ZERO,
          MomentOfInertia.ZERO);

  /** Moment of inertia about an axis that does not pass through the part's own centre of gravity. */
  public static final Formula PARALLEL_AXIS =
      Formula.named("moment of inertia about a parallel axis")
          .gives("I", MomentOfInertia.KILOGRAM_SQUARE_METRE)
          .as("I_0 + m·(a² + b²)")
          .where("I_0", "own moment of inertia", MomentOfInertia.KILOGRAM_SQUARE_METRE, 0, 1e6)
          .where("m", "mass", Mass.KILOGRAM, 0, 1e6)
          .where("a", "first distance from the axis", Length.METRE, -100, 100)
          .where("b", "second distance from the axis", Length.METRE, -100, 100)
          .from(Source.DEFINITION)
          .computedBy(Inertia::aboutParallelAxis);

  /** Product of inertia about axes that do not pass through the part's own centre of gravity. */
  public static final Formula PARALLEL_AXES_PRODUCT =
      Formula.named("product of inertia about parallel axes")
          .gives("I_ab", MomentOfInertia.KILOGRAM_SQUARE_METRE)
          .as("P_0 + m·a·b")
          .where("P_0", "own product of inertia", MomentOfInertia.KILOGRAM_SQUARE_METRE, -1e6, 1e6)
          .where("m", "mass", Mass.KILOGRAM, 0, 1e6)
          .where("a", "first distance", Length.METRE, -100, 100)
          .where("b", "second distance", Length.METRE, -100, 100)
          .from(Source.DEFINITION)
          .computedBy(Inertia::aboutParallelAxes);

  /** Refuses what no body can have: a negative moment, or one greater than the other two together. */
  public Inertia {
    Door.notNegative(roll, "roll inertia");
    Door.notNegative(pitch, "pitch inertia");
    Door.notNegative(yaw, "yaw inertia");
    Door.finite(productXy, "product of inertia xy");
    Door.finite(productXz, "product of inertia xz");
    Door.finite(productYz, "product of inertia yz");
    double slack = 1e-12 * (roll.si() + pitch.si() + yaw.si());
    triangle(roll, pitch, yaw, "roll", "pitch and yaw", slack);
    triangle(pitch, roll, yaw, "pitch", "roll and yaw", slack);
    triangle(yaw, roll, pitch, "yaw", "roll and pitch", slack);
  }

  private static void triangle(
      MomentOfInertia one, MomentOfInertia two, MomentOfInertia three, String name, String others, double slack) {
    if (one.si() > two.si() + three.si() + slack) {
      throw new IllegalArgumentException(
          name + " inertia must be at most that in " + others + " together, " + two.plus(three) + ", was " + one);
    }
  }

  /**
   * A body that is symmetric about the x-z plane.
   *
   * @param roll I_xx
   * @param pitch I_yy
   * @param yaw I_zz
   * @return the inertia, its products zero
   */
  public static Inertia of(MomentOfInertia roll, MomentOfInertia pitch, MomentOfInertia yaw) {
    return new Inertia(roll, pitch, yaw, MomentOfInertia.ZERO, MomentOfInertia.ZERO, MomentOfInertia.ZERO);
  }

  /**
   * A box of even density about its centre: also a plank (a wing), a plate (a fin) or a rod (a boom).
   *
   * <pre>{@code I_xx = m/12·(b² + h²)     I_yy = m/12·(l² + h²)     I_zz = m/12·(l² + b²)}</pre>
   *
   * @param mass its mass m, not negative
   * @param length its size l along x, not negative
   * @param width its size b along y, not negative
   * @param height its size h along z, not negative
   * @return the inertia about its centre
   */
  public static Inertia ofBox(Mass mass, Length length, Length width, Length height) {
    double twelfth = Door.notNegative(mass, "mass").si() / 12.0;
    double l = square(Door.notNegative(length, "length"));
    double b = square(Door.notNegative(width, "width"));
    double h = square(Door.notNegative(height, "height"));
    return of(moment(twelfth * (b + h)), moment(twelfth * (l + h)), moment(twelfth * (l + b)));
  }

  /**
   * A thin tube of even wall about its centre, its axis along x: a fuselage shell without its ends.
   *
   * <pre>{@code I_xx = m·d²/4     I_yy = I_zz = m·(d²/8 + l²/12)}</pre>
   *
   * @param mass its mass m, not negative
   * @param length its length l, not negative
   * @param diameter its diameter d, not negative
   * @return the inertia about its centre
   */
  public static Inertia ofTube(Mass mass, Length length, Length diameter) {
    double m = Door.notNegative(mass, "mass").si();
    double l = square(Door.notNegative(length, "length"));
    double d = square(Door.notNegative(diameter, "diameter"));
    MomentOfInertia across = moment(m * (d / 8.0 + l / 12.0));
    return of(moment(0.25 * m * d), across, across);
  }

  /**
   * The inertia of the same shape with another mass.
   *
   * @param factor the other mass over this one, not negative
   * @return every moment and product times the factor
   */
  public Inertia times(double factor) {
    Door.notNegative(factor, "factor of an inertia");
    return new Inertia(
        roll.times(factor), pitch.times(factor), yaw.times(factor),
        productXy.times(factor), productXz.times(factor), productYz.times(factor));
  }

  /**
   * The inertia of the same body turned by a right angle about the z axis: what lay along now lies across.
   *
   * @return roll and pitch exchanged, and the products as the axes ask
   */
  public Inertia turnedAcross() {
    MomentOfInertia aboutX = pitch;
    MomentOfInertia aboutY = roll;
    return new Inertia(aboutX, aboutY, yaw, productXy.times(-1.0), productYz.times(-1.0), productXz);
  }

  /**
   * A moment of inertia about an axis at a distance.
   *
   * <pre>{@code I = I_0 + m·(a² + b²)}</pre>
   *
   * @param own moment about the parallel axis through the part's centre of gravity I_0 [kg·m²]
   * @param mass mass m [kg]
   * @param a one distance from the axis, across it [m]
   * @param b the other distance, across both [m]
   * @return I [kg·m²]; 0.02 kg at 0.3 m and 0.4 m give 0.005 kg·m²
   */
  public static double aboutParallelAxis(double own, double mass, double a, double b) {
    return own + mass * (a * a + b * b);
  }

  /**
   * A product of inertia about axes at a distance.
   *
   * <pre>{@code I_ab = P_0 + m·a·b}</pre>
   *
   * @param own product about the part's centre of gravity P_0 [kg·m²]
   * @param mass mass m [kg]
   * @param a distance along the first axis [m]
   * @param b distance along the second axis [m]
   * @return I_ab [kg·m²]; 0.02 kg at 0.3 m and 0.4 m give 0.0024 kg·m²
   */
  public static double aboutParallelAxes(double own, double mass, double a, double b) {
    return own + mass * a * b;
  }

  private static double square(Length length) {
    return length.si() * length.si();
  }

  private static MomentOfInertia moment(double si) {
    return MomentOfInertia.kilogramSquareMetres(si);
  }

  @Override
  public String toString() {
    return "inertia in roll " + roll + ", pitch " + pitch + ", yaw " + yaw;
  }
}
