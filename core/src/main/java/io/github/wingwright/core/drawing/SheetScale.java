// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * How large things are drawn, and how their figures are written.
 *
 * @param ratio paper over reality
 * @param unit unit of the figures
 */
record SheetScale(double ratio, NamedUnit<Length> unit) {
  /** Significant digits of a figure on a drawing. */
  private static final int DIGITS = 4;

  /** Recommended scales, largest first (ISO 5455). */
  private static final double[] STANDARD = {
    50, 20, 10, 5, 2, 1, 1.0 / 2, 1.0 / 5, 1.0 / 10, 1.0 / 20, 1.0 / 50, 1.0 / 100, 1.0 / 200, 1.0 / 500, 1.0 / 1000,
    1.0 / 2000, 1.0 / 5000, 1.0 / 10000
  };

  static double[] standardRatios() {
    return STANDARD.clone();
  }

  /** A real length on paper [mm]. */
  double paper(Length length) {
    return paper(length.si());
  }

  /** A real length [m] on paper [mm]. */
  double paper(double metres) {
    return metres * 1000.0 * ratio;
  }

  /** The figure of a dimension, without its unit. */
  String figure(Length length) {
    return NamedUnit.NUMBER.format(unit.fromSi(length.si()), DIGITS);
  }

  /** The scale as the sheet says it, such as {@code "1 : 5"}. */
  String words() {
    return ratio >= 1.0 ? Math.round(ratio) + " : 1" : "1 : " + Math.round(1.0 / ratio);
  }
}
