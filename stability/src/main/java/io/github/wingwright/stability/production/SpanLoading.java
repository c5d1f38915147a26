// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Moment;

/**
 * The bending moment of the lift along a half wing: the mean of a loading like the chord and an elliptic one.
 *
 * <p>With η the place over the half span, k = 1 − λ and u = 1 − η, a half wing that carries L/2 over b/2 is bent by
 *
 * <pre>{@code
 * chord:    M = ½·L·½·b·(½·(1 − k·η)·u² − ⅓·k·u³)/(½·(1 + λ))
 * ellipse:  M = ½·L·½·b·(⅓·(1 − η²)^1.5 − ½·η·(acos η − η·√(1 − η²)))/(¼·π)
 * }</pre>
 *
 * <p>The mean is O. Schrenk's approximation (Luftwissen 7, 1940; NACA TM 948; from memory). The wing's own mass, which relieves
 * it, is left out.
 */
public final class SpanLoading {
  private static final Source SCHRENK = Source.fromMemory("O. Schrenk, NACA TM 948, 1940", "mean of chord and ellipse");

  /** Bending moment at the root: the mean of both. */
  public static final Formula ROOT_MOMENT =
      Formula.named("bending moment at the wing root")
          .gives("M_r", Moment.NEWTON_METRE)
          .as("0.125·L·b·((1 + 2·λ)/(3·(1 + λ)) + 4/(3·π))")
          .where("L", "lift of the whole wing", Force.NEWTON, 0, 1e6)
          .where("b", "span", Length.METRE, 0.05, 80)
          .where("λ", "taper ratio", 0, 2)
          .from(SCHRENK)
          .computedBy(SpanLoading::rootMoment);

  private SpanLoading() {}

  /**
   * Bending moment at the root.
   *
   * <pre>{@code M_r = ⅛·L·b·((1 + 2·λ)/(3·(1 + λ)) + 4/(3·π))}</pre>
   *
   * @param lift lift of the whole wing L [N]
   * @param span span b [m]
   * @param taper taper ratio λ
   * @return M_r [N·m]; 1 N, 0.48 m and 0.75 give 0.054036 N·m
   */
  public static double rootMoment(double lift, double span, double taper) {
    return 0.125 * lift * span * ((1.0 + 2.0 * taper) / (3.0 * (1.0 + taper)) + 4.0 / (3.0 * Math.PI));
  }

  /**
   * Bending moment at a place on a half wing.
   *
   * @param lift lift of the whole wing L [N]
   * @param span span b [m]
   * @param taper taper ratio λ
   * @param eta place over the half span η, 0 at the root to 1 at the tip
   * @return M [N·m], zero at the tip
   */
  public static double moment(double lift, double span, double taper, double eta) {
    double k = 1.0 - taper;
    double u = 1.0 - eta;
    double chord = (0.5 * (1.0 - k * eta) * u * u - k * u * u * u / 3.0) / (0.5 * (1.0 + taper));
    double s = Math.sqrt(Math.max(0.0, 1.0 - eta * eta));
    double ellipse = (s * s * s / 3.0 - 0.5 * eta * (Math.acos(Math.min(1.0, eta)) - eta * s)) / (0.25 * Math.PI);
    return 0.25 * lift * span * 0.5 * (chord + Math.max(0.0, ellipse));
  }
}
