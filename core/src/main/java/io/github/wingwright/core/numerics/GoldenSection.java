// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * Where a function with one peak is greatest, one evaluation for each section and nothing allocated: for searches inside of
 * searches. {@link Minimum} finds a place with fewer evaluations where the function is smooth.
 *
 * <p>Source: J. Kiefer, Sequential minimax search for a maximum, Proc. Am. Math. Soc. 4 (1953), from memory.
 */
public final class GoldenSection {
  private static final double GOLDEN = 0.5 * (Math.sqrt(5.0) - 1.0);

  private GoldenSection() {}

  /**
   * The place of the greatest value. Example: {@code greatest(x -> -Math.abs(x - 3), 0, 10, 50)} is 3.
   *
   * <p>Of a function that only rises or falls it is the end, short of it by the last section. The ends themselves are not asked.
   *
   * @param function the function, which rises and then falls
   * @param from one end
   * @param to the other, not below it
   * @param sections how often the interval is made 0.618 times as long, not negative; 75 of them exhaust a double
   * @return the place with the greater value of the last two
   * @throws IllegalArgumentException if the interval is none, or the sections are negative
   */
  public static double greatest(DoubleUnaryOperator function, double from, double to, int sections) {
    Objects.requireNonNull(function, "function");
    if (!(from <= to && Double.isFinite(to - from))) {
      throw new IllegalArgumentException("interval must be finite and not empty, was " + from + " to " + to);
    }
    if (sections < 0) {
      throw new IllegalArgumentException("sections must not be negative, were " + sections);
    }
    double a = from;
    double b = to;
    double x = b - GOLDEN * (b - a);
    double y = a + GOLDEN * (b - a);
    double atX = function.applyAsDouble(x);
    double atY = function.applyAsDouble(y);
    for (int i = 0; i < sections && x < y; i++) {
      if (atX >= atY) {
        b = y;
        y = x;
        atY = atX;
        x = b - GOLDEN * (b - a);
        atX = function.applyAsDouble(x);
      } else {
        a = x;
        x = y;
        atX = atY;
        y = a + GOLDEN * (b - a);
        atY = function.applyAsDouble(y);
      }
    }
    return atX >= atY ? x : y;
  }
}
