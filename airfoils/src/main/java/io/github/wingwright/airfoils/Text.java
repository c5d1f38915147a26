// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import java.math.BigDecimal;
import java.math.MathContext;

/** Locale-free text for names. */
final class Text {
  private Text() {}

  /** A fraction as a percentage without trailing zeros: 0.025 gives "2.5 %". */
  static String percent(double fraction) {
    return number(100 * fraction) + " %";
  }

  static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(4));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
