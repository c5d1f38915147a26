// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Margins as relative distances. */
final class Margins {
  private Margins() {}

  /** How far a positive value lies inside an interval, as a part of the nearer end; negative outside, −1 if it is empty. */
  static double within(double value, Interval interval) {
    double fromBelow = interval.lower() == Double.NEGATIVE_INFINITY ? Double.MAX_VALUE : value / interval.lower() - 1.0;
    double fromAbove = interval.upper() == Double.POSITIVE_INFINITY ? Double.MAX_VALUE : 1.0 - value / interval.upper();
    return Math.min(fromBelow, fromAbove);
  }

  /** A value rounded up to so many digits of its unit: what is advised must be enough as it is read. */
  static double up(double si, NamedUnit<?> unit, int digits) {
    return rounded(si, unit, digits, RoundingMode.CEILING);
  }

  /** A value rounded down to so many digits of its unit. */
  static double down(double si, NamedUnit<?> unit, int digits) {
    return rounded(si, unit, digits, RoundingMode.FLOOR);
  }

  /** Twelve digits first, so that the last bit of 0.3 m does not make 301 mm of it. */
  private static double rounded(double si, NamedUnit<?> unit, int digits, RoundingMode mode) {
    NamedUnit<?> shown = Length.readable(si, unit);
    BigDecimal value = new BigDecimal(shown.fromSi(si)).round(new MathContext(12, RoundingMode.HALF_EVEN));
    return shown.toSi(value.round(new MathContext(digits, mode)).doubleValue());
  }

  static String percent(double ratio) {
    return NamedUnit.NUMBER.format(100.0 * ratio, 3) + " %";
  }
}
