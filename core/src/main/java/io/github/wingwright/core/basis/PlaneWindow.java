// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

/**
 * The part of the plane of length and diameter that is looked at.
 *
 * @param lengths the lengths [m]
 * @param diameters the diameters [m]
 * @param leastFineness length over diameter of the stoutest body that exists; 0 if there is none
 */
record PlaneWindow(Interval lengths, Interval diameters, double leastFineness) {
  private static final double ROUNDING = 1e-9;

  /**
   * The diameters of the window that bodies of a length have. Margins of bodies that the family cannot form are no margins;
   * where it can form none the least diameter of all is looked at.
   */
  Interval search(double length) {
    double stoutest = length / leastFineness;
    return stoutest >= diameters.upper()
        ? diameters
        : Interval.between(diameters.lower(), Math.max(stoutest, diameters.lower() * (1.0 + ROUNDING)));
  }

  /** What a consideration leaves of the diameter at a length; open where the search ends. */
  Interval left(Consideration one, double length) {
    return one.diametersAt(length, search(length));
  }

  /** Whether the family can form a body, give or take rounding. */
  boolean exists(double length, double diameter) {
    return length >= leastFineness * diameter * (1.0 - ROUNDING);
  }
}
