// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.quantity.AdditiveQuantity;

/** Checks at the public door: each states the requirement, then what was got. */
final class Door {
  private Door() {}

  static <Q extends AdditiveQuantity<Q>> Q positive(Q quantity, String name) {
    if (!(quantity.si() > 0.0) || Double.isInfinite(quantity.si())) {
      throw new IllegalArgumentException(name + " must be positive, was " + quantity);
    }
    return quantity;
  }

  static <Q extends AdditiveQuantity<Q>> Q finite(Q quantity, String name) {
    if (!Double.isFinite(quantity.si())) {
      throw new IllegalArgumentException(name + " must be finite, was " + quantity);
    }
    return quantity;
  }

  static double positive(double number, String name) {
    if (!(number > 0.0) || Double.isInfinite(number)) {
      throw new IllegalArgumentException(name + " must be positive, was " + number);
    }
    return number;
  }

  static double finite(double number, String name) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException(name + " must be finite, was " + number);
    }
    return number;
  }

  static double within(double number, double lower, double upper, String name) {
    if (!(number >= lower && number <= upper)) {
      throw new IllegalArgumentException(name + " must be " + lower + " to " + upper + ", was " + number);
    }
    return number;
  }
}
