// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

/** The few checks that the quantity types share. */
final class Check {
  private Check() {}

  /** Passes an SI value on if it is finite; the message names the value as it was given. */
  static <Q extends ScalarQuantity<Q>> double finite(
      double si, double given, QuantityKind<Q> kind, NamedUnit<Q> unit) {
    if (Math.abs(si) <= Double.MAX_VALUE) {
      return si;
    }
    throw notFinite(given, kind, unit);
  }

  private static <Q extends ScalarQuantity<Q>> IllegalArgumentException notFinite(
      double given, QuantityKind<Q> kind, NamedUnit<Q> unit) {
    return new IllegalArgumentException(
        kind.name() + " must be a finite number of " + unit.symbol() + ", was " + given);
  }

  /** Passes a divisor on if it is not zero. */
  static double divisor(double value, Object shown) {
    if (value == 0.0) {
      throw new ArithmeticException("divisor must not be zero, was " + shown);
    }
    return value;
  }

  /** Passes a square root on if it is a number. */
  static double root(double si, Object shown, double root) {
    if (si < 0.0) {
      throw new ArithmeticException("a square root needs a value that is not negative, was " + shown);
    }
    return root;
  }
}
