// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.quantity.AdditiveQuantity;

/** Checks at the public door: each names the argument, what was got, and what is allowed. */
final class Door {
  private Door() {}

  static <Q extends AdditiveQuantity<Q>> Q positive(Q quantity, String name) {
    if (!(quantity.si() > 0.0) || Double.isInfinite(quantity.si())) {
      throw new IllegalArgumentException(name + " must be positive, was " + quantity);
    }
    return quantity;
  }

  static <Q extends AdditiveQuantity<Q>> Q notNegative(Q quantity, String name) {
    if (!(quantity.si() >= 0.0) || Double.isInfinite(quantity.si())) {
      throw new IllegalArgumentException(name + " must not be negative, was " + quantity);
    }
    return quantity;
  }

  static <Q extends AdditiveQuantity<Q>> Q finite(Q quantity, String name) {
    if (!Double.isFinite(quantity.si())) {
      throw new IllegalArgumentException(name + " must be finite, was " + quantity);
    }
    return quantity;
  }

  static int within(int number, int lower, int upper, String name) {
    if (number < lower || number > upper) {
      throw new IllegalArgumentException(name + " must be " + lower + " to " + upper + ", was " + number);
    }
    return number;
  }

  static double within(double number, double lower, double upper, String name) {
    if (!(number >= lower && number <= upper)) {
      throw new IllegalArgumentException(name + " must be " + lower + " to " + upper + ", was " + number);
    }
    return number;
  }

  static String named(String name, String what) {
    if (name.isBlank()) {
      throw new IllegalArgumentException(what + " must have a name, was blank");
    }
    return name;
  }
}
