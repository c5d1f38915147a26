// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

/** The five variables of flight that coefficients are differentiated with respect to. */
public enum Variable {
  /** α [rad], nose up positive. */
  ANGLE_OF_ATTACK,
  /** β [rad], wind from starboard positive. */
  SIDESLIP,
  /** p·b/(2V) about the stability axis, starboard wing going down positive. */
  ROLL_RATE,
  /** q·c̄/(2V), nose going up positive. */
  PITCH_RATE,
  /** r·b/(2V) about the stability axis, nose going to starboard positive. */
  YAW_RATE
}
