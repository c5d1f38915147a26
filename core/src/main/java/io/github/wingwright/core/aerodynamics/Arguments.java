// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

/** Checks of plain numbers at the public door. */
final class Arguments {
  private Arguments() {}

  static double positive(double number, String name) {
    if (!(number > 0.0) || Double.isInfinite(number)) {
      throw new IllegalArgumentException(name + " must be positive, was " + number);
    }
    return number;
  }

  static double notNegative(double number, String name) {
    if (!(number >= 0.0) || Double.isInfinite(number)) {
      throw new IllegalArgumentException(name + " must not be negative, was " + number);
    }
    return number;
  }

  static double within(double number, double lower, double upper, String name) {
    if (!(number >= lower && number <= upper)) {
      throw new IllegalArgumentException(name + " must be " + lower + " to " + upper + ", was " + number);
    }
    return number;
  }

  static double finite(double number, String name) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException(name + " must be finite, was " + number);
    }
    return number;
  }
}
