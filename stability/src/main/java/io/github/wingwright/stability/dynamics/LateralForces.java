// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import java.util.Objects;

/**
 * Dimensional lateral derivatives: force and moments per unit of the disturbance.
 *
 * <pre>{@code
 * Y_v = ½·ρ·u₀·S·C_Yβ      L_v = ½·ρ·u₀·S·b·C_lβ      N_v = ½·ρ·u₀·S·b·C_nβ
 * Y_p = ¼·ρ·u₀·S·b·C_Yp    L_p = ¼·ρ·u₀·S·b²·C_lp     N_p = ¼·ρ·u₀·S·b²·C_np
 * Y_r = ¼·ρ·u₀·S·b·C_Yr    L_r = ¼·ρ·u₀·S·b²·C_lr     N_r = ¼·ρ·u₀·S·b²·C_nr
 * }</pre>
 * Source: B. Etkin and L. D. Reid, <i>Dynamics of Flight</i>, 3rd ed., table 4.5, from memory.
 *
 * @param yv Y_v [N·s/m]
 * @param yp Y_p [N·s]
 * @param yr Y_r [N·s]
 * @param lv L_v [N·s]
 * @param lp L_p [N·m·s]
 * @param lr L_r [N·m·s]
 * @param nv N_v [N·s]
 * @param np N_p [N·m·s]
 * @param nr N_r [N·m·s]
 */
public record LateralForces(double yv, double yp, double yr, double lv, double lp, double lr, double nv, double np,
    double nr) {
  /**
   * Makes nondimensional derivatives dimensional.
   *
   * @param flight the steady flight
   * @param d nondimensional derivatives
   */
  public static LateralForces of(SteadyFlight flight, LateralDerivatives d) {
    Objects.requireNonNull(flight, "flight");
    Objects.requireNonNull(d, "d");
    double half = flight.density() * flight.speed() * flight.area() / 2;
    double b = flight.span();
    return new LateralForces(
        half * d.sideSideslip(), half * b / 2 * d.sideRollRate(), half * b / 2 * d.sideYawRate(),
        half * b * d.rollSideslip(), half * b * b / 2 * d.rollRollRate(), half * b * b / 2 * d.rollYawRate(),
        half * b * d.yawSideslip(), half * b * b / 2 * d.yawRollRate(), half * b * b / 2 * d.yawYawRate());
  }

  /**
   * State matrix of [v, p, r, φ].
   *
   * <pre>{@code
   * I_x′ = (I_x·I_z − I_zx²)/I_z      I_z′ = (I_x·I_z − I_zx²)/I_x      I_zx′ = I_zx/(I_x·I_z − I_zx²)
   * v̇ = (Y_v·v + Y_p·p + Y_r·r)/m − u₀·r + g·cos θ₀·φ
   * ṗ = L/I_x′ + I_zx′·N              ṙ = I_zx′·L + N/I_z′              with L, N linear in v, p, r
   * φ̇ = p + r·tan θ₀
   * }</pre>
   * Source: Etkin and Reid, eq. (4.9,19), from memory.
   *
   * @param flight the steady flight
   * @param body mass and inertia
   */
  public StateMatrix stateMatrix(SteadyFlight flight, BodyInertia body) {
    double m = body.mass();
    double determinant = body.roll() * body.yaw() - body.product() * body.product();
    double rollByL = body.yaw() / determinant;
    double cross = body.product() / determinant;
    double yawByN = body.roll() / determinant;
    double[][] a = {
      {yv / m, yp / m, yr / m - flight.speed(), flight.gravity() * Math.cos(flight.pathAngle())},
      {rollByL * lv + cross * nv, rollByL * lp + cross * np, rollByL * lr + cross * nr, 0},
      {cross * lv + yawByN * nv, cross * lp + yawByN * np, cross * lr + yawByN * nr, 0},
      {0, 1, Math.tan(flight.pathAngle()), 0}};
    return StateMatrix.lateral(a, flight.speed());
  }
}
