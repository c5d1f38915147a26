// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import java.io.Serializable;

/**
 * A smooth curve through some points that rises where they rise and falls where they fall: piecewise cubic, its slope at an
 * inner point the weighted harmonic mean of the slopes beside it, and zero at an extreme.
 *
 * <p>Source: F. N. Fritsch and J. Butland, A method for constructing local monotone piecewise cubic interpolants, SIAM J. Sci.
 * Stat. Comput. 5 (1984), from memory.
 */
final class MonotoneCurve implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] x;
  private final double[] y;
  private final double[] slope;

  private MonotoneCurve(double[] x, double[] y, double[] slope) {
    this.x = x;
    this.y = y;
    this.slope = slope;
  }

  /** The curve; at an end that is level the slope is zero, at another that of the chord. */
  static MonotoneCurve through(double[] x, double[] y, boolean levelStart, boolean levelEnd) {
    int n = x.length;
    double[] slope = new double[n];
    for (int i = 1; i < n - 1; i++) {
      double h1 = x[i] - x[i - 1];
      double h2 = x[i + 1] - x[i];
      double s1 = (y[i] - y[i - 1]) / h1;
      double s2 = (y[i + 1] - y[i]) / h2;
      if (s1 * s2 > 0.0) {
        double w1 = 2.0 * h2 + h1;
        double w2 = h2 + 2.0 * h1;
        slope[i] = (w1 + w2) / (w1 / s1 + w2 / s2);
      }
    }
    if (n > 1) {
      slope[0] = levelStart ? 0.0 : (y[1] - y[0]) / (x[1] - x[0]);
      slope[n - 1] = levelEnd ? 0.0 : (y[n - 1] - y[n - 2]) / (x[n - 1] - x[n - 2]);
    }
    return new MonotoneCurve(x, y, slope);
  }

  double at(double where) {
    int last = x.length - 1;
    if (where <= x[0]) {
      return y[0];
    }
    if (where >= x[last]) {
      return y[last];
    }
    int i = 1;
    while (x[i] < where) {
      i++;
    }
    double h = x[i] - x[i - 1];
    double t = (where - x[i - 1]) / h;
    double u = 1.0 - t;
    return u * u * ((1.0 + 2.0 * t) * y[i - 1] + t * h * slope[i - 1])
        + t * t * ((1.0 + 2.0 * u) * y[i] - u * h * slope[i]);
  }
}
