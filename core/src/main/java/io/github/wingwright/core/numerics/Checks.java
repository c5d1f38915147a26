// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import io.github.wingwright.core.ConvergenceException;
import java.util.function.DoubleUnaryOperator;

/** The checks that every method of this package makes before and during its work. */
final class Checks {
  private Checks() {
  }

  /** Refuses an interval that is not finite or not in order. */
  static void interval(double lower, double upper) {
    if (!(Double.isFinite(lower) && Double.isFinite(upper) && lower < upper)) {
      throw new IllegalArgumentException(
          "interval must be finite, with its lower end below its upper, was " + lower + " to " + upper);
    }
    if (!Double.isFinite(upper - lower)) {
      throw new IllegalArgumentException("interval must not be wider than a double, was " + lower + " to " + upper);
    }
  }

  /** A function that counts its calls, and ends the search where it is not finite or called too often. */
  static final class Guarded {
    private final DoubleUnaryOperator function;
    private final int mostCalls;
    private final double lower;
    private final double upper;
    private int calls;
    private double lastValue = Double.NaN;

    Guarded(DoubleUnaryOperator function, int mostCalls, double lower, double upper) {
      this.function = function;
      this.mostCalls = mostCalls;
      this.lower = lower;
      this.upper = upper;
    }

    double value(double x) {
      if (calls >= mostCalls) {
        throw ConvergenceException.inBracket("not within tolerance", calls, lastValue, lower, upper);
      }
      calls++;
      double value = function.applyAsDouble(x);
      if (!Double.isFinite(value)) {
        throw ConvergenceException.inBracket("function is " + value + " at " + x, calls, lastValue, lower, upper);
      }
      lastValue = value;
      return value;
    }

    int calls() {
      return calls;
    }
  }
}
