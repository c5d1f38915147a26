// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import java.util.Locale;

/** Checks at the public door: the requirement first, then what was got. */
final class Checks {
  private Checks() {}

  static double finite(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " must be a finite number, was " + value);
    }
    return value;
  }

  /** Requires {@code low ≤ value ≤ high}. */
  static double within(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT, "%s must be from %s to %s, was %s",
          what, plain(low), plain(high), plain(value)));
    }
    return value;
  }

  static double positive(String what, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " must be positive and finite, was " + plain(value));
    }
    return value;
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e6
        ? String.valueOf((long) value)
        : String.valueOf(value);
  }
}
