// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * Best glide and least sink in closed form, on a parabolic polar without end.
 *
 * <pre>{@code C_D = C_D0 + K·C_L²}</pre>
 *
 * <p>These are the formulas of the textbook, for the workings and for comparison. On a small model they place both optima
 * at a lift that the wing does not reach: {@link GlidePerformance} searches a polar that ends.
 *
 * <p>Least sink is given twice: with the cosine of the glide angle taken as 1, as the textbook does, and exactly. Exactly,
 * the sink rate goes as C_D/(C_L² + C_D²)^¾, and its minimum solves a quadratic equation in C_D:
 *
 * <pre>{@code 2·K·C_D² − C_D + 4·C_D0 = 0}</pre>
 */
public final class ParabolicGlide {
  private static final Source TEXTBOOK =
      Source.restated("Raymer, Aircraft Design: A Conceptual Approach, 6th ed., AIAA 2018", "eqs 17.13, 17.64 to 17.73");

  /** Lift of the best glide. */
  public static final Formula BEST_GLIDE_LIFT =
      parabola("lift coefficient of the best glide", "C_L,bg", "√(C_D0 / K)").computedBy(ParabolicGlide::bestGlideLift);

  /** Greatest ratio of lift to drag. */
  public static final Formula GREATEST_LIFT_TO_DRAG =
      parabola("greatest ratio of lift to drag", "L/D", "1 / (2·√(C_D0·K))")
          .computedBy(ParabolicGlide::greatestLiftToDrag);

  /** Lift of least sink, small angles. */
  public static final Formula LEAST_SINK_LIFT =
      parabola("lift coefficient of least sink, small angles", "C_L,ms", "√(3·C_D0 / K)")
          .computedBy(ParabolicGlide::leastSinkLift);

  /** Lift of least sink, exact. */
  public static final Formula LEAST_SINK_LIFT_EXACT =
      Formula.named("lift coefficient of least sink, exact")
          .gives("C_L,ms")
          .as("√(((1 − √(1 − 32·K·C_D0)) / (4·K) − C_D0) / K)")
          .where("C_D0", "drag coefficient without lift", 0.005, 0.1)
          .where("K", "factor of drag due to lift", 0.01, 0.3)
          .from(Source.library("minimum of C_D/(C_L² + C_D²)^¾, solved in closed form"))
          .computedBy(ParabolicGlide::leastSinkLiftExact);

  private ParabolicGlide() {}

  private static Formula.Definition parabola(String name, String symbol, String text) {
    return Formula.named(name)
        .gives(symbol, NamedUnit.NUMBER)
        .as(text)
        .where("C_D0", "drag coefficient without lift", 0.003, 0.3)
        .where("K", "factor of drag due to lift", 0.005, 0.5)
        .from(TEXTBOOK);
  }

  /**
   * Lift coefficient of the best glide.
   *
   * <pre>{@code C_L = √(C_D0/K)}</pre>
   *
   * <p>Example: C_D0 = 0.035, K = 0.07105131 gives 0.701856.
   *
   * @param dragWithoutLift C_D0
   * @param factor K
   * @return C_L
   */
  public static double bestGlideLift(double dragWithoutLift, double factor) {
    return Math.sqrt(dragWithoutLift / factor);
  }

  /**
   * Lift coefficient of the best glide where the least drag is at a lift of its own.
   *
   * <pre>{@code C_D = C_Dmin + K·(C_L − C_L0)²        C_L = √(C_L0² + C_Dmin/K)}</pre>
   *
   * <p>Example: 0.03, 0.06, C_L0 = 0.3 gives 0.768115.
   *
   * @param leastDrag C_Dmin
   * @param factor K
   * @param leastDragLift C_L0
   * @return C_L
   */
  public static double bestGlideLiftAboutLeastDrag(double leastDrag, double factor, double leastDragLift) {
    return Math.sqrt(leastDragLift * leastDragLift + leastDrag / factor);
  }

  /**
   * Greatest ratio of lift to drag.
   *
   * <pre>{@code L/D = 1/(2·√(C_D0·K))}</pre>
   *
   * <p>Example: C_D0 = 0.035, K = 0.07105131 gives 10.026513.
   *
   * @param dragWithoutLift C_D0
   * @param factor K
   * @return L/D
   */
  public static double greatestLiftToDrag(double dragWithoutLift, double factor) {
    return 1.0 / (2.0 * Math.sqrt(dragWithoutLift * factor));
  }

  /**
   * Lift coefficient of least sink, the cosine of the glide angle taken as 1.
   *
   * <pre>{@code C_L = √(3·C_D0/K)}</pre>
   *
   * <p>Example: C_D0 = 0.05, K = 0.08488264 gives 1.329340.
   *
   * @param dragWithoutLift C_D0
   * @param factor K
   * @return C_L
   */
  public static double leastSinkLift(double dragWithoutLift, double factor) {
    return Math.sqrt(3.0 * dragWithoutLift / factor);
  }

  /**
   * Lift coefficient of least sink, exactly.
   *
   * <pre>{@code
   * C_D = (1 − √(1 − 32·K·C_D0))/(4·K)        C_L = √((C_D − C_D0)/K)
   * }</pre>
   *
   * <p>There is such a lift if 32·K·C_D0 is at most 1, that is if the greatest L/D is at least 2.83; else NaN. Example:
   * C_D0 = 0.05, K = 0.08488264 gives 1.361282.
   *
   * @param dragWithoutLift C_D0
   * @param factor K
   * @return C_L
   */
  public static double leastSinkLiftExact(double dragWithoutLift, double factor) {
    double drag = (1.0 - Math.sqrt(1.0 - 32.0 * factor * dragWithoutLift)) / (4.0 * factor);
    return Math.sqrt((drag - dragWithoutLift) / factor);
  }
}
