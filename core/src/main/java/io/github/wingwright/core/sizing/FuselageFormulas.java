// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;

/** The formulas of the body's main dimensions: length L, diameter d. */
public final class FuselageFormulas {
  /** Fineness ratio. */
  public static final Formula FINENESS_RATIO =
      Formula.named("fineness ratio")
          .gives("f")
          .as("L / d")
          .where("L", "length", Length.METRE, 1e-3, 100)
          .where("d", "diameter", Length.METRE, 1e-4, 20)
          .from(Source.DEFINITION)
          .computedBy(FuselageFormulas::finenessRatio);

  /** Frontal area. */
  public static final Formula FRONTAL_AREA =
      Formula.named("frontal area")
          .gives("S_f", Area.SQUARE_METRE)
          .as("π/4·d²")
          .where("d", "diameter", Length.METRE, 1e-4, 20)
          .from(Source.DEFINITION)
          .computedBy(FuselageFormulas::frontalArea);

  private FuselageFormulas() {}

  /**
   * Fineness ratio.
   *
   * @param length length L [m]
   * @param diameter diameter d [m]
   * @return L/d
   */
  public static double finenessRatio(double length, double diameter) {
    return length / diameter;
  }

  /**
   * Frontal area.
   *
   * @param diameter diameter d [m]
   * @return π/4·d² [m²]
   */
  public static double frontalArea(double diameter) {
    return 0.25 * Math.PI * diameter * diameter;
  }
}
