// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;

/**
 * The tail arm of least wetted area: a long arm makes the tails small and the body long, a short one the other way.
 *
 * <p>With fixed tail volumes the wetted area of the tails falls as 1/l, and that of the body behind the wing grows with p,
 * the wetted area of a metre of it:
 *
 * <pre>{@code
 * A(l) = p·l + k·(V_h·S·c̄ + V_v·S·b)/l        least at l* = √(k·(V_h·S·c̄ + V_v·S·b)/p)
 * }</pre>
 *
 * <p>k is the wetted area of a tail over its area, a little more than 2. Both tails are taken at one arm. The least is
 * flat: 20 % off the arm cost 2 % of this area.
 */
public final class TailArm {
  private static final Source CALCULUS = Source.library("minimum of p·l + k·V/l, elementary");

  /** Sum of both tail volumes. */
  public static final Formula TAIL_VOLUME =
      Formula.named("volume of both tails")
          .gives("Q_t", Volume.CUBIC_METRE)
          .as("S·(V_h·c̄ + V_v·b)")
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("V_h", "horizontal tail volume coefficient", 0, 2)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .where("V_v", "vertical tail volume coefficient", 0, 0.3)
          .where("b", "wing span", Length.METRE, 0.05, 100)
          .from(Source.DEFINITION)
          .computedBy(TailArm::tailVolume);

  /** The arm of least wetted area. */
  public static final Formula LEAST_WETTED =
      Formula.named("tail arm of least wetted area")
          .gives("l*", Length.METRE)
          .as("√(k·Q_t / p)")
          .where("k", "wetted area of a tail over its area", 1.9, 2.6)
          .where("Q_t", "volume of both tails", Volume.CUBIC_METRE, 1e-7, 1000)
          .where("p", "wetted area of a metre of the body behind the wing", Length.METRE, 1e-3, 20)
          .from(CALCULUS)
          .computedBy(TailArm::leastWetted);

  private TailArm() {}

  /**
   * Sum of both tail volumes.
   *
   * @param wingArea S [m²]
   * @param horizontal V_h
   * @param chord c̄ [m]
   * @param vertical V_v
   * @param span b [m]
   * @return Q_t [m³]
   */
  public static double tailVolume(double wingArea, double horizontal, double chord, double vertical, double span) {
    return wingArea * (horizontal * chord + vertical * span);
  }

  /**
   * The arm of least wetted area.
   *
   * <p>Example: k = 2.06, Q_t = 0.92·10⁻³ m³ and a boom of 10 mm diameter, p = 31.4 mm, give 245.6 mm.
   *
   * @param factor k, wetted area of a tail over its area
   * @param tailVolume Q_t [m³]
   * @param perimeter p, wetted area of a metre of the body [m], positive
   * @return l* [m]
   */
  public static double leastWetted(double factor, double tailVolume, double perimeter) {
    return Math.sqrt(factor * tailVolume / perimeter);
  }

  /**
   * Wetted area of tails and body behind the wing.
   *
   * @param arm l [m], positive
   * @param factor k
   * @param tailVolume Q_t [m³]
   * @param perimeter p [m]
   * @return A [m²]
   */
  public static double wettedArea(double arm, double factor, double tailVolume, double perimeter) {
    return perimeter * arm + factor * tailVolume / arm;
  }
}
