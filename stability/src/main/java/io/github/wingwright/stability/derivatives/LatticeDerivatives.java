// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.stability.dynamics.LateralDerivatives;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import io.github.wingwright.stability.lattice.Coefficient;
import io.github.wingwright.stability.lattice.LatticeSolution;
import io.github.wingwright.stability.lattice.Variable;

/**
 * Takes the derivatives of a vortex lattice over into the equations of motion.
 *
 * <p>The lattice must have its moment reference at the centre of gravity, and be solved at the angle of the steady flight:
 * then its derivatives are in the stability axes that the equations use. What a lattice does not know is added from
 * outside: profile drag, thrust, the body, and the derivatives with the rate of angle of attack.
 */
public final class LatticeDerivatives {
  private LatticeDerivatives() {}

  /**
   * Lateral derivatives.
   *
   * @param solution the lattice at the angle of the steady flight, without sideslip and rates
   */
  public static LateralDerivatives lateral(LatticeSolution solution) {
    return new LateralDerivatives(
        solution.derivative(Coefficient.SIDE_FORCE, Variable.SIDESLIP),
        solution.derivative(Coefficient.ROLLING_MOMENT, Variable.SIDESLIP),
        solution.derivative(Coefficient.YAWING_MOMENT, Variable.SIDESLIP),
        solution.derivative(Coefficient.SIDE_FORCE, Variable.ROLL_RATE),
        solution.derivative(Coefficient.ROLLING_MOMENT, Variable.ROLL_RATE),
        solution.derivative(Coefficient.YAWING_MOMENT, Variable.ROLL_RATE),
        solution.derivative(Coefficient.SIDE_FORCE, Variable.YAW_RATE),
        solution.derivative(Coefficient.ROLLING_MOMENT, Variable.YAW_RATE),
        solution.derivative(Coefficient.YAWING_MOMENT, Variable.YAW_RATE));
  }

  /**
   * Longitudinal derivatives.
   *
   * @param solution the lattice at the angle of the steady flight
   * @param profileDrag profile drag coefficient C_D0, taken as constant with the angle [-]
   * @param thrust thrust coefficient C_T [-], 0 in a glide
   * @param liftAngleRate C_Lα̇ [-], such as {@link TailPitchRate#liftDueToAngleRate}
   * @param momentAngleRate C_mα̇ [-], such as {@link TailPitchRate#downwashLag}
   */
  public static LongitudinalDerivatives longitudinal(LatticeSolution solution, double profileDrag, double thrust,
      double liftAngleRate, double momentAngleRate) {
    return LongitudinalDerivatives.ofLiftAndDrag(
        solution.coefficients().lift(),
        profileDrag + solution.inducedDragCoefficient(),
        thrust,
        solution.derivative(Coefficient.LIFT, Variable.ANGLE_OF_ATTACK),
        solution.derivative(Coefficient.NEAR_FIELD_DRAG, Variable.ANGLE_OF_ATTACK),
        solution.derivative(Coefficient.PITCHING_MOMENT, Variable.ANGLE_OF_ATTACK),
        solution.derivative(Coefficient.LIFT, Variable.PITCH_RATE),
        solution.derivative(Coefficient.PITCHING_MOMENT, Variable.PITCH_RATE),
        liftAngleRate, momentAngleRate);
  }
}
