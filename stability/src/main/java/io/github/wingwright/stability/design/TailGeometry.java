// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;

/**
 * A tail whose trailing edge ends with the fuselage: its arm and its area depend on each other.
 *
 * <p>The area follows from the volume coefficient and the arm, the root chord from the area, and the arm from where the
 * root chord leaves the quarter-chord point (the quarter-chord line is not swept):
 *
 * <pre>{@code
 * S_t = V·S·r/l        c_r,t = 2·√(S_t/A_t)/(1 + λ_t)        l = L − ¾·c_r,t − x_¼
 * }</pre>
 *
 * <p>with r = c̄ for a horizontal tail and r = b for a fin, A_t the span (of a fin the height) squared over the area.
 */
final class TailGeometry {
  /** Root chord of a tapered surface from its area. */
  public static final Formula ROOT_CHORD =
      Formula.named("root chord of a tail")
          .gives("c_r,t", Length.METRE)
          .as("2·√(S_t/A_t) / (1 + λ_t)")
          .where("S_t", "area of the tail", Area.SQUARE_METRE, 1e-5, 200)
          .where("A_t", "aspect ratio of the tail", 0.3, 20)
          .where("λ_t", "taper ratio of the tail", 0, 1.5)
          .from(Source.DEFINITION)
          .computedBy(TailGeometry::rootChord);

  private static final int MOST_ROUNDS = 60;

  private TailGeometry() {}

  /**
   * Root chord from the area.
   *
   * <pre>{@code c_r,t = 2·√(S_t/A_t)/(1 + λ_t)}</pre>
   *
   * @param area S_t [m²], positive
   * @param aspectRatio A_t, positive
   * @param taperRatio λ_t
   * @return c_r,t [m]; 100 cm², A 4 and λ 1 give 50 mm
   */
  public static double rootChord(double area, double aspectRatio, double taperRatio) {
    return 2.0 * Math.sqrt(area / aspectRatio) / (1.0 + taperRatio);
  }

  /**
   * The arm that closes the circle.
   *
   * <p>With D = L − x_¼ the equation is l + k/√l = D, where k = ¾·2·√(V·S·r/A_t)/(1 + λ_t). Its left side is least at l =
   * (k/2)^⅔: where D is less than that least value the fuselage is too short for such a tail. The longer of the two roots
   * is taken (the shorter one is a tail larger than its arm), by Newton's method, which converges from above: from the
   * first terms of the series of the root in q = k/D^(3/2), l/D = 1 − q − ½·q² − ⅝·q³ − …, whose later terms are all
   * negative too, or from D itself close to the fold at q = 2/√27, where the series is slow.
   *
   * @param room D, from the wing's quarter mean aerodynamic chord to the end of the fuselage [m]
   * @param volume V·S·r [m³], positive
   * @param aspectRatio A_t
   * @param taperRatio λ_t
   * @return l [m], or NaN where the fuselage is too short
   */
  public static double arm(double room, double volume, double aspectRatio, double taperRatio) {
    double k = 0.75 * rootChord(volume, aspectRatio, taperRatio);
    if (room < leastRoom(k)) {
      return Double.NaN;
    }
    double q = k / (room * Math.sqrt(room));
    double arm = q < 0.3 ? room * (1.0 - q * (1.0 + q * (0.5 + q * (0.625 + q * (1.0 + q * 1.8046875))))) : room;
    for (int i = 0; i < MOST_ROUNDS; i++) {
      double root = Math.sqrt(arm);
      double step = (arm + k / root - room) / (1.0 - 0.5 * k / (arm * root));
      arm -= step;
      if (!(arm > 0.0)) {
        return Double.NaN;
      }
      if (Math.abs(step) <= 1e-15 * arm) {
        break;
      }
    }
    return arm;
  }

  /** The least value of l + k/√l, at l = (k/2)^⅔. */
  private static double leastRoom(double k) {
    return 3.0 * Math.cbrt(0.25 * k * k);
  }

  /**
   * The least room behind the wing's quarter chord in which such a tail fits.
   *
   * @param volume V·S·r [m³], positive
   * @param aspectRatio A_t
   * @param taperRatio λ_t
   * @return D [m]
   */
  public static double leastRoom(double volume, double aspectRatio, double taperRatio) {
    return leastRoom(0.75 * rootChord(volume, aspectRatio, taperRatio));
  }
}
