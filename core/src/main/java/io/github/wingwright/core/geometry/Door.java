// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.AdditiveQuantity;
import io.github.wingwright.core.quantity.Length;

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

  static <Q extends AdditiveQuantity<Q>> Q within(Q quantity, Q lower, Q upper, String name) {
    if (!(quantity.si() >= lower.si() && quantity.si() <= upper.si())) {
      throw new IllegalArgumentException(name + " must be " + lower + " to " + upper + ", was " + quantity);
    }
    return quantity;
  }

  static <Q extends AdditiveQuantity<Q>> Q finite(Q quantity, String name) {
    if (!Double.isFinite(quantity.si())) {
      throw new IllegalArgumentException(name + " must be finite, was " + quantity);
    }
    return quantity;
  }

  /** Refuses a body that its family cannot form. */
  static void body(BodyShape shape, Length length, Length diameter) {
    positive(length, "body length");
    positive(diameter, "body diameter");
    double least = shape.leastFinenessRatio();
    // A length that was computed as least · d may miss it by a rounding error.
    if (length.si() < least * diameter.si() * (1.0 - 1e-12)) {
      throw new IllegalArgumentException(
          "body length must be at least "
              + diameter.times(least)
              + " for a "
              + shape.name()
              + " of diameter "
              + diameter
              + ", was "
              + length);
    }
  }

  static double positive(double number, String name) {
    if (!(number > 0.0) || Double.isInfinite(number)) {
      throw new IllegalArgumentException(name + " must be positive, was " + number);
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
