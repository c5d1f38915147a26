// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * The formulas by which a body comes to its margins where something was searched for before: the longest piece of a
 * machine, the place of a thing, a slope or a radius of the contour.
 */
public final class FitFormulas {
  /** Margin of the length that a machine can make. */
  public static final Formula LENGTH_IN_HAND =
      Formula.named("margin of the length that can be made")
          .gives("m")
          .as("L_max / L − 1")
          .where("L_max", "greatest length in segments", Length.METRE, 0.001, 500)
          .where("L", "length", Length.METRE, 0.001, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::above);

  /** Margin of a body that is too short for its contents. */
  public static final Formula SHORT_OF_CONTENTS =
      Formula.named("margin of a body that is too short for its contents")
          .gives("m")
          .as("min(L / L_min, d / (L / f_s)) − 1")
          .where("L", "length", Length.METRE, 0.001, 100)
          .where("L_min", "least length for the contents", Length.METRE, 0.001, 100)
          .where("d", "diameter", Length.METRE, 0.0001, 20)
          .where("f_s", "least fineness ratio of the family", NamedUnit.NUMBER, 0.1, 20)
          .from(Source.DEFINITION)
          .computedBy(FitFormulas::shortOfContents);

  /** Margin of the nose's radius. */
  public static final Formula RADIUS_MARGIN =
      Formula.named("margin of the nose's radius")
          .gives("m")
          .as("R / R_min − 1")
          .where("R", "radius of curvature at the nose tip", Length.METRE, 0, 10)
          .where("R_min", "least radius of the nose", Length.METRE, 0.0001, 1)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::above);

  /** Margin of the closure angles of top and underside. */
  public static final Formula TWO_CLOSURES =
      Formula.named("margin of the closure angles of top and underside")
          .gives("m")
          .as("1 − max(k_t / tan(β_t), k_u / tan(β_u))")
          .where("k_t", "slope of the top line", NamedUnit.NUMBER, -10, 10)
          .where("k_u", "slope of the underside", NamedUnit.NUMBER, -10, 10)
          .where("β_t", "greatest closure angle of the top", Angle.RADIAN, 0.01, 1.2)
          .where("β_u", "greatest closure angle of the underside", Angle.RADIAN, 0.01, 1.2)
          .from(Source.DEFINITION)
          .computedBy(FitFormulas::twoClosures);

  /** Place of something behind something else. */
  public static final Formula BEHIND =
      Formula.named("place of something behind something else")
          .gives("x", Length.METRE)
          .as("x_f + e")
          .where("x_f", "place ahead of it", Length.METRE, 0, 100)
          .where("e", "distance behind that", Length.METRE, 0, 100)
          .from(Source.DEFINITION)
          .computedBy(FitFormulas::behind);

  /** Middle of something of a length. */
  public static final Formula MIDDLE =
      Formula.named("middle of something behind a place")
          .gives("x", Length.METRE)
          .as("x_f + l / 2")
          .where("x_f", "where it begins", Length.METRE, 0, 100)
          .where("l", "length of it", Length.METRE, 0, 100)
          .from(Source.DEFINITION)
          .computedBy(FitFormulas::middle);

  private FitFormulas() {}

  /**
   * Middle of something that begins at a place.
   *
   * @param front where it begins x_f [m]
   * @param length length of it l [m]
   * @return x_f + l/2 [m]; 0.3 m and 0.1 m give 0.35 m
   */
  public static double middle(double front, double length) {
    return front + 0.5 * length;
  }

  /**
   * Margin of a body that is too short for its contents, against the stoutest body that holds them.
   *
   * @param length length L [m]
   * @param least least length L_min [m]
   * @param diameter diameter d [m]
   * @param stoutest least fineness ratio of the family f_s
   * @return m = min(L / L_min, d / (L / f_s)) − 1
   */
  public static double shortOfContents(double length, double least, double diameter, double stoutest) {
    return Math.min(length / least, diameter / (length / stoutest)) - 1.0;
  }

  /**
   * Margin of the closure angles of top and underside.
   *
   * @param top slope of the top line k_t
   * @param underside slope of the underside k_u
   * @param mostTop greatest closure angle of the top β_t [rad]
   * @param mostUnderside greatest closure angle of the underside β_u [rad]
   * @return m = 1 − max(k_t / tan(β_t), k_u / tan(β_u))
   */
  public static double twoClosures(double top, double underside, double mostTop, double mostUnderside) {
    return 1.0 - Math.max(top / Math.tan(mostTop), underside / Math.tan(mostUnderside));
  }

  /**
   * Place of something behind something else.
   *
   * @param ahead place ahead of it x_f [m]
   * @param distance distance behind that e [m]
   * @return x = x_f + e [m]
   */
  public static double behind(double ahead, double distance) {
    return ahead + distance;
  }
}
