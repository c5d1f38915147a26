// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import java.util.Locale;

/**
 * Nondimensional lateral derivatives in stability axes. Rates are made nondimensional with b/(2·u₀).
 *
 * @param sideSideslip C_Yβ [1/rad]: negative, wind from starboard pushes to port
 * @param rollSideslip C_lβ [1/rad]: negative when dihedral lifts the wing that is to windward
 * @param yawSideslip C_nβ [1/rad]: positive when the nose turns into the wind
 * @param sideRollRate C_Yp
 * @param rollRollRate C_lp: negative, damping
 * @param yawRollRate C_np: usually negative
 * @param sideYawRate C_Yr
 * @param rollYawRate C_lr: positive, the outer wing is faster
 * @param yawYawRate C_nr: negative, damping
 */
public record LateralDerivatives(double sideSideslip, double rollSideslip, double yawSideslip, double sideRollRate,
    double rollRollRate, double yawRollRate, double sideYawRate, double rollYawRate, double yawYawRate) {
  public LateralDerivatives {
    for (double value : new double[] {sideSideslip, rollSideslip, yawSideslip, sideRollRate, rollRollRate,
      yawRollRate, sideYawRate, rollYawRate, yawYawRate}) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("lateral derivatives must be finite, one was " + value);
      }
    }
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "lateral: C_Yβ %.3g, C_lβ %.3g, C_nβ %.3g, C_lp %.3g, C_nr %.3g", sideSideslip, rollSideslip,
        yawSideslip, rollRollRate, yawYawRate);
  }
}
