// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import java.util.function.DoubleUnaryOperator;

/** Small searches on functions that are cheap and smooth. */
final class Search {
  private Search() {}

  /** Root of an increasing function by bisection to the last digit. */
  static double increasingRoot(DoubleUnaryOperator f, double low, double high) {
    double a = low;
    double b = high;
    for (int i = 0; i < 200; i++) {
      double m = 0.5 * (a + b);
      if (m <= a || m >= b) {
        break;
      }
      if (f.applyAsDouble(m) > 0) {
        b = m;
      } else {
        a = m;
      }
    }
    return 0.5 * (a + b);
  }

  /** Abscissa of the greatest value on [0, 1], refined by the zero of the slope inside its piece. */
  static double maximum(DoubleUnaryOperator f, DoubleUnaryOperator slope, double[] edges) {
    int cells = 400;
    double best = 0.5;
    for (int i = 1; i < cells; i++) {
      double x = (double) i / cells;
      if (f.applyAsDouble(x) > f.applyAsDouble(best)) {
        best = x;
      }
    }
    for (double edge : edges) {
      if (f.applyAsDouble(edge) > f.applyAsDouble(best)) {
        best = edge;
      }
    }
    double low = Math.max(best - 1.0 / cells, 1e-12);
    double high = Math.min(best + 1.0 / cells, 1);
    if (slope.applyAsDouble(low) <= 0 || slope.applyAsDouble(high) >= 0) {
      return best;
    }
    return increasingRoot(x -> -slope.applyAsDouble(x), low, high);
  }
}
