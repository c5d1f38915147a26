// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

/** The six coefficients that a lattice gives. */
public enum Coefficient {
  /** C_L on the reference area, up positive. */
  LIFT,
  /** C_Y on the reference area, to starboard positive. */
  SIDE_FORCE,
  /** C_D on the reference area, from the forces on the panels. */
  NEAR_FIELD_DRAG,
  /** C_l on area and span about the stability axis, starboard wing down positive. */
  ROLLING_MOMENT,
  /** C_m on area and mean chord, nose up positive. */
  PITCHING_MOMENT,
  /** C_n on area and span about the stability axis, nose to starboard positive. */
  YAWING_MOMENT
}
