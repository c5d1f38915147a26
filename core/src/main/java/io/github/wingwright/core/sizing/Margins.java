// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;

/** Margins as relative distances. */
final class Margins {
  private Margins() {}

  /** How far a positive value lies inside an interval, as a part of the nearer end; negative outside, −1 if it is empty. */
  static double within(double value, Interval interval) {
    double fromBelow = interval.lower() == Double.NEGATIVE_INFINITY ? Double.MAX_VALUE : value / interval.lower() - 1.0;
    double fromAbove = interval.upper() == Double.POSITIVE_INFINITY ? Double.MAX_VALUE : 1.0 - value / interval.upper();
    return Math.min(fromBelow, fromAbove);
  }
}
