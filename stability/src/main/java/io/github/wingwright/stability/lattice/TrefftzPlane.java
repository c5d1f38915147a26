// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.Objects;

/**
 * Induced drag from the wake far behind, where it has become two-dimensional.
 *
 * <p>The wake is cut into strips, each between two trailing vortices and with one value of circulation. Half of the
 * kinetic energy left behind per metre is the drag:
 * <pre>{@code
 * D = −½·ρ·Σ Γⱼ·wⱼ·sⱼ
 * }</pre>
 * with wⱼ the velocity across the strip at its control station and sⱼ its width. For strips spaced by
 * {@link Spacing#SEMICIRCLE} the sum is exact for elliptic loading and second order in the strips for any other smooth one.
 *
 * <p>Source: M. M. Munk's theorems on the far wake, as in most texts on wing theory.
 */
public final class TrefftzPlane {
  private TrefftzPlane() {}

  /**
   * Velocity across each strip.
   *
   * @param wake strips of the whole wake, both halves
   * @param circulation circulation of each strip over airspeed [m]
   * @return wⱼ/V along each strip's normal [-]; negative is downwash
   */
  public static double[] normalVelocity(WakeStrips wake, double[] circulation) {
    Objects.requireNonNull(wake, "wake");
    Objects.requireNonNull(circulation, "circulation");
    int n = wake.size();
    if (circulation.length != n) {
      throw new IllegalArgumentException(
          "circulation must be given for each of " + n + " strips, was given for " + circulation.length);
    }
    double[] wash = new double[n];
    for (int i = 0; i < n; i++) {
      double y = wake.middleY(i);
      double z = wake.middleZ(i);
      double ny = wake.normalY(i);
      double nz = wake.normalZ(i);
      double image = 2 * wake.ground() - z;
      double sum = 0;
      for (int j = 0; j < n; j++) {
        boolean smooth = wake.group(i) != wake.group(j);
        double g = circulation[j];
        sum += g * pair(wake, j, y, z, ny, nz, smooth);
        if (wake.ground() > Double.NEGATIVE_INFINITY) {
          sum += g * pair(wake, j, y, image, ny, -nz, smooth);
        }
      }
      wash[i] = sum / (2 * Math.PI);
    }
    return wash;
  }

  /** 2π times the velocity along (ny, nz) of a strip's two trailing vortices of unit strength. */
  private static double pair(WakeStrips wake, int j, double y, double z, double ny, double nz, boolean smooth) {
    double y1 = y - wake.firstY(j);
    double z1 = z - wake.firstZ(j);
    double y2 = y - wake.secondY(j);
    double z2 = z - wake.secondZ(j);
    double h1 = y1 * y1 + z1 * z1;
    double h2 = y2 * y2 + z2 * z2;
    if (smooth) {
      h1 = Math.sqrt(h1 * h1 + wake.core4(j));
      h2 = Math.sqrt(h2 * h2 + wake.core4(j));
    }
    return (z1 / h1 - z2 / h2) * ny + (y2 / h2 - y1 / h1) * nz;
  }

  /**
   * Induced drag.
   *
   * @param wake strips of the whole wake, both halves
   * @param circulation circulation of each strip over airspeed [m]
   * @return drag over dynamic pressure D/q [m²]
   */
  public static double inducedDragArea(WakeStrips wake, double[] circulation) {
    Objects.requireNonNull(wake, "wake");
    Objects.requireNonNull(circulation, "circulation");
    double[] wash = normalVelocity(wake, circulation);
    double sum = 0;
    for (int j = 0; j < wash.length; j++) {
      sum -= circulation[j] * wash[j] * wake.width(j);
    }
    return sum;
  }

  /**
   * Lift, from the same strips.
   *
   * @param wake strips of the whole wake, both halves
   * @param circulation circulation of each strip over airspeed [m]
   * @return lift over dynamic pressure L/q [m²]
   */
  public static double liftArea(WakeStrips wake, double[] circulation) {
    Objects.requireNonNull(wake, "wake");
    Objects.requireNonNull(circulation, "circulation");
    double sum = 0;
    for (int j = 0; j < wake.size(); j++) {
      sum += 2 * circulation[j] * wake.width(j) * wake.normalZ(j);
    }
    return sum;
  }
}
