// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;

/**
 * The closed forms of noses and tails: the fullness c = V/(π·R²·n), and the area ratio s = S/(π·R²) of the curved surface,
 * for a base of radius R, a length n and a fineness f = n/(2R).
 *
 * <p>They follow from the outlines of {@link EndProfile} by integration and are exact. What is missing here (the ogive, and the
 * areas of the series) is integrated numerically.
 */
public final class EndFormulas {
  private static final Source GEOMETRY = Source.DEFINITION;

  /** Fullness of a cone or a boat-tail. */
  public static final Formula BOAT_TAIL_FULLNESS =
      Formula.named("fullness of a cone or boat-tail")
          .gives("c")
          .as("(1 + β + β²)/3")
          .where("β", "diameter of the end over that of the base", 0, 1)
          .from(GEOMETRY)
          .computedBy(EndFormulas::boatTailFullness);

  /** Area ratio of a cone or a boat-tail. */
  public static final Formula BOAT_TAIL_AREA =
      Formula.named("area ratio of a cone or boat-tail")
          .gives("s")
          .as("(1 + β)·√(4·f² + (1 − β)²)")
          .where("β", "diameter of the end over that of the base", 0, 1)
          .where("f", "fineness", 0.05, 50)
          .from(GEOMETRY)
          .computedBy(EndFormulas::boatTailArea);

  /** Area ratio of a half ellipsoid that is longer than a hemisphere. */
  public static final Formula ELLIPSOID_AREA =
      Formula.named("area ratio of a half ellipsoid")
          .gives("s")
          .as("1 + 2·f·asin(√(1 − 1/(4·f²))) / √(1 − 1/(4·f²))")
          .where("f", "fineness", 0.501, 50)
          .from(GEOMETRY)
          .computedBy(EndFormulas::ellipsoidArea);

  /** Fullness of the power series. */
  public static final Formula POWER_FULLNESS =
      Formula.named("fullness of the power series")
          .gives("c")
          .as("1/(2·m + 1)")
          .where("m", "exponent", 0.3, 1)
          .from(GEOMETRY)
          .computedBy(EndFormulas::powerFullness);

  /** Fullness of the parabolic series. */
  public static final Formula PARABOLIC_FULLNESS =
      Formula.named("fullness of the parabolic series")
          .gives("c")
          .as("(4/3 − K + K²/5)/(2 − K)²")
          .where("K", "parameter", 0, 1)
          .from(GEOMETRY)
          .computedBy(EndFormulas::parabolicFullness);

  /** Fullness of the Haack series. */
  public static final Formula HAACK_FULLNESS =
      Formula.named("fullness of the Haack series")
          .gives("c")
          .as("½ + 3/16·C")
          .where("C", "parameter", 0, 0.667)
          .from(GEOMETRY)
          .computedBy(EndFormulas::haackFullness);

  private EndFormulas() {}

  /**
   * Fullness of a cone or a boat-tail.
   *
   * @param endRatio diameter of the end over that of the base β; zero for a cone
   * @return c = (1 + β + β²)/3
   */
  public static double boatTailFullness(double endRatio) {
    return (1.0 + endRatio + endRatio * endRatio) / 3.0;
  }

  /**
   * Area ratio of a cone or a boat-tail.
   *
   * @param endRatio diameter of the end over that of the base β; zero for a cone
   * @param fineness fineness f
   * @return s = (1 + β)·√(4·f² + (1 − β)²)
   */
  public static double boatTailArea(double endRatio, double fineness) {
    return (1.0 + endRatio) * Math.hypot(2.0 * fineness, 1.0 - endRatio);
  }

  /**
   * Area ratio of a half ellipsoid.
   *
   * @param fineness fineness f, positive; also right for a hemisphere, f = 0.5, and a flat one
   * @return s = 1 + 2·f·asin e/e, e = √(1 − 1/(4·f²))
   */
  public static double ellipsoidArea(double fineness) {
    return 1.0 + Ellipse.arcFactor(0.5 / fineness);
  }

  /**
   * Fullness of the power series r/R = t^m.
   *
   * @param exponent exponent m
   * @return c = 1/(2m + 1)
   */
  public static double powerFullness(double exponent) {
    return 1.0 / (2.0 * exponent + 1.0);
  }

  /**
   * Fullness of the parabolic series r/R = (2t − K·t²)/(2 − K).
   *
   * @param parameter parameter K
   * @return c = (4/3 − K + K²/5)/(2 − K)²; 8/15 for K = 1
   */
  public static double parabolicFullness(double parameter) {
    double base = 2.0 - parameter;
    return (4.0 / 3.0 - parameter + parameter * parameter / 5.0) / (base * base);
  }

  /**
   * Fullness of the Haack series.
   *
   * @param parameter parameter C
   * @return c = ½ + 3C/16; 9/16 for C = 1/3
   */
  public static double haackFullness(double parameter) {
    return 0.5 + 3.0 / 16.0 * parameter;
  }
}
