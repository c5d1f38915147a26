// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import java.util.function.DoubleUnaryOperator;

/** Simpson's rule on [0, 1], apart from the quadrature that the library integrates with. */
final class Simpson {
  private static final int INTERVALS = 200_000;

  private Simpson() {}

  static double of(DoubleUnaryOperator function) {
    double sum = function.applyAsDouble(0) + function.applyAsDouble(1);
    for (int i = 1; i < INTERVALS; i++) {
      sum += (i % 2 == 1 ? 4 : 2) * function.applyAsDouble((double) i / INTERVALS);
    }
    return sum / (3.0 * INTERVALS);
  }
}
