// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Interval;
import java.io.Serializable;

/**
 * Drag of a whole aircraft against its lift, up to the lift that a flight can use.
 *
 * <p>Coefficients are on the wing's reference area. Every polar ends: beyond {@link #lifts()} there is no answer, so an
 * optimum that a formula would place behind the stall is found at the end of the polar instead.
 */
public sealed interface DragPolar extends Serializable permits ParabolicPolar, TabulatedPolar {

  /**
   * A parabolic polar.
   *
   * @param leastDrag least drag coefficient C_Dmin, positive
   * @param factor factor of drag due to lift K, positive
   * @param leastDragLift lift coefficient of least drag C_L0
   * @param greatestLift lift coefficient at which the polar ends, positive
   * @return the polar
   */
  static ParabolicPolar parabolic(double leastDrag, double factor, double leastDragLift, double greatestLift) {
    return new ParabolicPolar(leastDrag, factor, leastDragLift, greatestLift);
  }

  /**
   * Drag coefficient.
   *
   * @param lift lift coefficient C_L within {@link #lifts()}
   * @return C_D
   */
  double dragCoefficient(double lift);

  /**
   * Lift coefficients for which the polar answers.
   *
   * @return the range; its upper end is the usable lift
   */
  Interval lifts();
}
