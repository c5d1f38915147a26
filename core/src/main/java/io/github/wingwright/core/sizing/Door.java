// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

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

  static <Q extends AdditiveQuantity<Q>> void inOrder(Q least, Q most, String name) {
    if (least.si() > most.si()) {
      throw new IllegalArgumentException(
          "least " + name + " must not exceed the greatest, was " + least + " and " + most);
    }
  }

  static String said(String text, String name) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(name + " must be said, was empty");
    }
    return text;
  }
}
