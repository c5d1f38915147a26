// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import java.util.function.DoubleUnaryOperator;

/**
 * Gauss-Legendre quadrature with 20 points on each piece: exact for polynomials to degree 39, and ten digits and more
 * for the smooth pieces of a section.
 */
final class GaussLegendre {
  private static final int POINTS = 20;
  private static final double[] NODE = new double[POINTS];
  private static final double[] WEIGHT = new double[POINTS];

  static {
    for (int i = 0; i < POINTS; i++) {
      double z = Math.cos(Math.PI * (i + 0.75) / (POINTS + 0.5));
      double derivative = 1;
      for (int newton = 0; newton < 20; newton++) {
        double p0 = 1;
        double p1 = z;
        for (int n = 2; n <= POINTS; n++) {
          double p2 = ((2 * n - 1) * z * p1 - (n - 1) * p0) / n;
          p0 = p1;
          p1 = p2;
        }
        derivative = POINTS * (z * p1 - p0) / (z * z - 1);
        z -= p1 / derivative;
      }
      NODE[i] = z;
      WEIGHT[i] = 2 / ((1 - z * z) * derivative * derivative);
    }
  }

  private GaussLegendre() {}

  static double integrate(DoubleUnaryOperator f, double from, double to) {
    double middle = 0.5 * (from + to);
    double half = 0.5 * (to - from);
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      sum += WEIGHT[i] * f.applyAsDouble(middle + half * NODE[i]);
    }
    return half * sum;
  }

  /** Integral over consecutive pieces, each cut in {@code parts}. */
  static double integrate(DoubleUnaryOperator f, double[] edges, int parts) {
    double sum = 0;
    for (int i = 0; i + 1 < edges.length; i++) {
      double step = (edges[i + 1] - edges[i]) / parts;
      for (int k = 0; k < parts; k++) {
        sum += integrate(f, edges[i] + k * step, edges[i] + (k + 1) * step);
      }
    }
    return sum;
  }
}
