// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;

/**
 * The apparent mass of an ellipsoid of revolution: the air that moves with it, as a fraction of the air that it displaces.
 *
 * <p>With f the length over the diameter and e² = 1 − 1/f² the exact coefficients are
 *
 * <pre>{@code
 * α₀ = 2·(1 − e²)/e³·(½·ln((1 + e)/(1 − e)) − e)        k₁ = α₀/(2 − α₀)      along the axis
 * β₀ = 1/e² − (1 − e²)/(2·e³)·ln((1 + e)/(1 − e))       k₂ = β₀/(2 − β₀)      across it
 * k′ = e⁴·(β₀ − α₀)/((2 − e²)·(2·e² − (2 − e²)·(β₀ − α₀)))                    in rotation
 * }</pre>
 *
 * <p>A sphere has k₁ = k₂ = ½ and k′ = 0; an endless cylinder k₁ = 0 and k₂ = k′ = 1. Munk's moment of a body at an angle
 * is proportional to k₂ − k₁. Example: f = 6 gives k₁ 0.04518, k₂ 0.91712, k′ 0.76232.
 */
public final class ApparentMass {
  /** Below this the closed forms lose digits by cancellation and the series about the sphere is used. */
  private static final double NEARLY_A_SPHERE = 0.05;

  /** Lamb's k₂ − k₁ as one formula. */
  public static final Formula DIFFERENCE =
      Formula.named("apparent-mass factor")
          .gives("k₂−k₁")
          .as("β₀/(2 − β₀) − α₀/(2 − α₀)")
          .where("α₀", "coefficient along the axis", 0, 0.6667)
          .where("β₀", "coefficient across the axis", 0.6666, 1)
          .from(Sources.LAMB)
          .computedBy(ApparentMass::difference);

  /** Lamb's α₀. */
  public static final Formula ALONG =
      Formula.named("Lamb's coefficient along the axis")
          .gives("α₀")
          .as("2·(1 − e²)/e³·(½·ln((1 + e)/(1 − e)) − e)")
          .where("e", "eccentricity of the ellipsoid", NEARLY_A_SPHERE, 0.9999)
          .from(Sources.LAMB)
          .computedBy(ApparentMass::along);

  /** Lamb's β₀. */
  public static final Formula ACROSS =
      Formula.named("Lamb's coefficient across the axis")
          .gives("β₀")
          .as("1/e² − (1 − e²)/(2·e³)·ln((1 + e)/(1 − e))")
          .where("e", "eccentricity of the ellipsoid", NEARLY_A_SPHERE, 0.9999)
          .from(Sources.LAMB)
          .computedBy(ApparentMass::across);

  /** Eccentricity of the ellipsoid. */
  public static final Formula ECCENTRICITY =
      Formula.named("eccentricity of the ellipsoid")
          .gives("e")
          .as("√(1 − 1/f²)")
          .where("f", "fineness ratio", 1.01, 50)
          .from(Sources.LAMB)
          .computedBy(ApparentMass::eccentricity);

  private ApparentMass() {}

  /**
   * Eccentricity.
   *
   * @param fineness length over diameter f, 1 or more
   * @return e = √(1 − 1/f²)
   */
  public static double eccentricity(double fineness) {
    return Math.sqrt(1.0 - 1.0 / (fineness * fineness));
  }

  /**
   * Lamb's α₀.
   *
   * @param e eccentricity, 0 to 1
   * @return α₀, ⅔ for a sphere
   */
  public static double along(double e) {
    double e2 = e * e;
    if (e < NEARLY_A_SPHERE) {
      return 2.0 * (1.0 - e2) * (1.0 / 3.0 + e2 / 5.0 + e2 * e2 / 7.0 + e2 * e2 * e2 / 9.0);
    }
    return 2.0 * (1.0 - e2) / (e2 * e) * (0.5 * Math.log((1.0 + e) / (1.0 - e)) - e);
  }

  /**
   * Lamb's β₀.
   *
   * @param e eccentricity, 0 to 1
   * @return β₀ = 1 − ½·α₀, ⅔ for a sphere
   */
  public static double across(double e) {
    if (e < NEARLY_A_SPHERE) {
      return 1.0 - 0.5 * along(e);
    }
    double e2 = e * e;
    return 1.0 / e2 - (1.0 - e2) / (2.0 * e2 * e) * Math.log((1.0 + e) / (1.0 - e));
  }

  /**
   * The factor of Munk's moment.
   *
   * @param along α₀
   * @param across β₀
   * @return k₂ − k₁
   */
  public static double difference(double along, double across) {
    return across / (2.0 - across) - along / (2.0 - along);
  }

  /**
   * Apparent mass in motion along the axis.
   *
   * @param fineness length over diameter f, 1 or more
   * @return k₁
   */
  public static double axial(double fineness) {
    double a = along(eccentricity(fineness));
    return a / (2.0 - a);
  }

  /**
   * Apparent mass in motion across the axis.
   *
   * @param fineness length over diameter f, 1 or more
   * @return k₂
   */
  public static double transverse(double fineness) {
    double b = across(eccentricity(fineness));
    return b / (2.0 - b);
  }

  /**
   * The factor of Munk's moment.
   *
   * @param fineness length over diameter f, 1 or more
   * @return k₂ − k₁; with f = 6 it is 0.8719
   */
  public static double munkFactor(double fineness) {
    double e = eccentricity(fineness);
    return difference(along(e), across(e));
  }

  /**
   * Apparent moment of inertia about a transverse axis, as a fraction of that of the displaced air.
   *
   * @param fineness length over diameter f, 1 or more
   * @return k′
   */
  public static double rotational(double fineness) {
    double e = eccentricity(fineness);
    double e2 = e * e;
    double difference = across(e) - along(e);
    if (e < NEARLY_A_SPHERE) {
      // β₀ − α₀ = ⅖·e² + … , so k′ = e⁴·⅖·e²/(2·(2·e² − ⅘·e²)) = e⁴/6 + …
      return e2 * e2 / 6.0;
    }
    return e2 * e2 * difference / ((2.0 - e2) * (2.0 * e2 - (2.0 - e2) * difference));
  }
}
