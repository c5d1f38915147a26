// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import java.util.Objects;

/**
 * Dimensional longitudinal derivatives: forces and moment per unit of the disturbance.
 *
 * <pre>{@code
 * X_u = ρ·u₀·S·C_W·sin θ₀ + ½·ρ·u₀·S·C_xu      X_w = ½·ρ·u₀·S·C_xα
 * Z_u = −ρ·u₀·S·C_W·cos θ₀ + ½·ρ·u₀·S·C_zu     Z_w = ½·ρ·u₀·S·C_zα
 * M_u = ½·ρ·u₀·S·c̄·C_mu                        M_w = ½·ρ·u₀·S·c̄·C_mα
 * Z_q = ¼·ρ·u₀·S·c̄·C_zq                        M_q = ¼·ρ·u₀·S·c̄²·C_mq
 * Z_ẇ = ¼·ρ·S·c̄·C_zα̇                           M_ẇ = ¼·ρ·S·c̄²·C_mα̇
 * }</pre>
 * with C_W = m·g/(½·ρ·u₀²·S). The moment of weight and drag in the steady flight is balanced, so M_u has no such part.
 *
 * <p>Source: B. Etkin and L. D. Reid, <i>Dynamics of Flight</i>, 3rd ed., table 4.4, from memory; checked with the large
 * jet transport of its section 6.2.
 *
 * @param xu X_u [N·s/m]
 * @param xw X_w [N·s/m]
 * @param zu Z_u [N·s/m]
 * @param zw Z_w [N·s/m]
 * @param zq Z_q [N·s]
 * @param zwDot Z_ẇ [kg]
 * @param mu M_u [N·s]
 * @param mw M_w [N·s]
 * @param mq M_q [N·m·s]
 * @param mwDot M_ẇ [kg·m]
 */
public record LongitudinalForces(double xu, double xw, double zu, double zw, double zq, double zwDot, double mu,
    double mw, double mq, double mwDot) {
  /**
   * Makes nondimensional derivatives dimensional.
   *
   * @param flight the steady flight
   * @param mass mass [kg], positive
   * @param d nondimensional derivatives
   */
  public static LongitudinalForces of(SteadyFlight flight, double mass, LongitudinalDerivatives d) {
    Objects.requireNonNull(flight, "flight");
    Objects.requireNonNull(d, "d");
    double weight = mass * flight.gravity() / (flight.dynamicPressure() * flight.area());
    double half = flight.density() * flight.speed() * flight.area() / 2;
    double c = flight.chord();
    double still = flight.density() * flight.area() * c / 4;
    return new LongitudinalForces(
        2 * half * weight * Math.sin(flight.pathAngle()) + half * d.xSpeed(),
        half * d.xAngle(),
        -2 * half * weight * Math.cos(flight.pathAngle()) + half * d.zSpeed(),
        half * d.zAngle(),
        half * c / 2 * d.zPitchRate(),
        still * d.zAngleRate(),
        half * c * d.mSpeed(),
        half * c * d.mAngle(),
        half * c * c / 2 * d.mPitchRate(),
        still * c * d.mAngleRate());
  }

  /**
   * With the apparent mass of the air that a light aircraft carries along in heave.
   *
   * @param apparent apparent mass; its pitch inertia belongs to the inertia and is added by
   *     {@link WingApparentMass#addedTo(BodyInertia)}
   */
  public LongitudinalForces with(WingApparentMass apparent) {
    Objects.requireNonNull(apparent, "apparent");
    return new LongitudinalForces(xu, xw, zu, zw, zq, zwDot - apparent.heave(), mu, mw, mq,
        mwDot - apparent.heave() * apparent.centreBehind());
  }

  /**
   * State matrix of [u, w, q, θ].
   *
   * <pre>{@code
   * m′ = m − Z_ẇ
   * u̇ = (X_u·u + X_w·w)/m − g·cos θ₀·θ
   * ẇ = (Z_u·u + Z_w·w + (Z_q + m·u₀)·q − m·g·sin θ₀·θ)/m′
   * q̇ = (M_u·u + M_w·w + M_q·q + M_ẇ·ẇ)/I_y
   * θ̇ = q
   * }</pre>
   * Source: Etkin and Reid, eq. (4.9,18), from memory.
   *
   * @param flight the steady flight
   * @param body mass and inertia
   */
  public StateMatrix stateMatrix(SteadyFlight flight, BodyInertia body) {
    double m = body.mass();
    double heavy = m - zwDot;
    double g = flight.gravity();
    double sin = Math.sin(flight.pathAngle());
    double cos = Math.cos(flight.pathAngle());
    double[] w = {zu / heavy, zw / heavy, (zq + m * flight.speed()) / heavy, -m * g * sin / heavy};
    double iy = body.pitch();
    double[][] a = {
      {xu / m, xw / m, 0, -g * cos},
      w,
      {(mu + mwDot * w[0]) / iy, (mw + mwDot * w[1]) / iy, (mq + mwDot * w[2]) / iy, mwDot * w[3] / iy},
      {0, 0, 1, 0}};
    return StateMatrix.longitudinal(a, flight.speed());
  }
}
