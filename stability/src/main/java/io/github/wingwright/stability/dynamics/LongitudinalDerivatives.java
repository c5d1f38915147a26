// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import java.util.Locale;

/**
 * Nondimensional longitudinal derivatives in stability axes, x forward and z down.
 *
 * <p>Rates are made nondimensional with c̄/(2·u₀), speed with u₀. The factory takes the lift and drag form of most
 * handbooks.
 *
 * @param xSpeed C_xu: change of the forward force coefficient with u/u₀, thrust included. That the same coefficient makes
 *     more force at more speed is not part of it
 * @param zSpeed C_zu
 * @param mSpeed C_mu
 * @param xAngle C_xα [1/rad]
 * @param zAngle C_zα [1/rad]
 * @param mAngle C_mα [1/rad]: negative when statically stable
 * @param zPitchRate C_zq
 * @param mPitchRate C_mq: negative, damping
 * @param zAngleRate C_zα̇
 * @param mAngleRate C_mα̇
 */
public record LongitudinalDerivatives(double xSpeed, double zSpeed, double mSpeed, double xAngle, double zAngle,
    double mAngle, double zPitchRate, double mPitchRate, double zAngleRate, double mAngleRate) {
  public LongitudinalDerivatives {
    for (double value : new double[] {xSpeed, zSpeed, mSpeed, xAngle, zAngle, mAngle, zPitchRate, mPitchRate,
      zAngleRate, mAngleRate}) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("longitudinal derivatives must be finite, one was " + value);
      }
    }
  }

  /**
   * From lift and drag, incompressible, without an engine or with one of constant thrust.
   *
   * <pre>{@code
   * C_xα = C_L − C_Dα        C_zα = −(C_Lα + C_D)        C_zq = −C_Lq        C_zα̇ = −C_Lα̇
   * C_xu = −2·C_T            with C_T the thrust coefficient, zero in a glide
   * }</pre>
   * Source: B. Etkin and L. D. Reid, <i>Dynamics of Flight</i>, 3rd ed., ch. 5, from memory; R. C. Nelson, <i>Flight
   * Stability and Automatic Control</i>, from memory, gives the same X_w and Z_w.
   *
   * @param lift C_L of the steady flight
   * @param drag C_D of the steady flight
   * @param thrust C_T of the steady flight, thrust over q·S, 0 in a glide
   * @param liftSlope C_Lα [1/rad]
   * @param dragSlope C_Dα [1/rad]
   * @param momentSlope C_mα [1/rad]
   * @param liftPitchRate C_Lq
   * @param momentPitchRate C_mq
   * @param liftAngleRate C_Lα̇
   * @param momentAngleRate C_mα̇
   */
  public static LongitudinalDerivatives ofLiftAndDrag(double lift, double drag, double thrust, double liftSlope,
      double dragSlope, double momentSlope, double liftPitchRate, double momentPitchRate, double liftAngleRate,
      double momentAngleRate) {
    return new LongitudinalDerivatives(-2 * thrust, 0, 0, lift - dragSlope, -(liftSlope + drag), momentSlope,
        -liftPitchRate, momentPitchRate, -liftAngleRate, momentAngleRate);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "longitudinal: C_zα %.3g, C_mα %.3g, C_mq %.3g, C_mα̇ %.3g", zAngle, mAngle,
        mPitchRate, mAngleRate);
  }
}
