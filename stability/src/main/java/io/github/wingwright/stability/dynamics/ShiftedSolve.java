// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

/** Solves (A − λ·I)·x = b in complex numbers for a small real A; b comes in as x. A vanishing pivot is made tiny. */
final class ShiftedSolve {
  private ShiftedSolve() {}

  static void solve(double[][] a, double lr, double li, double norm, double[] xr, double[] xi) {
    int n = a.length;
    double[][] mr = new double[n][];
    double[][] mi = new double[n][n];
    for (int i = 0; i < n; i++) {
      mr[i] = a[i].clone();
      mr[i][i] -= lr;
      mi[i][i] = -li;
    }
    double tiny = 1e-15 * norm + Double.MIN_NORMAL;
    for (int k = 0; k < n; k++) {
      int best = k;
      for (int i = k + 1; i < n; i++) {
        if (size(mr[i][k], mi[i][k]) > size(mr[best][k], mi[best][k])) {
          best = i;
        }
      }
      swap(mr, best, k);
      swap(mi, best, k);
      swap(xr, best, k);
      swap(xi, best, k);
      if (size(mr[k][k], mi[k][k]) < tiny * tiny) {
        mr[k][k] = tiny;
      }
      double p2 = size(mr[k][k], mi[k][k]);
      for (int i = k + 1; i < n; i++) {
        double fr = (mr[i][k] * mr[k][k] + mi[i][k] * mi[k][k]) / p2;
        double fi = (mi[i][k] * mr[k][k] - mr[i][k] * mi[k][k]) / p2;
        for (int j = k + 1; j < n; j++) {
          mr[i][j] -= fr * mr[k][j] - fi * mi[k][j];
          mi[i][j] -= fr * mi[k][j] + fi * mr[k][j];
        }
        xr[i] -= fr * xr[k] - fi * xi[k];
        xi[i] -= fr * xi[k] + fi * xr[k];
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      double r = xr[k];
      double m = xi[k];
      for (int j = k + 1; j < n; j++) {
        r -= mr[k][j] * xr[j] - mi[k][j] * xi[j];
        m -= mr[k][j] * xi[j] + mi[k][j] * xr[j];
      }
      double p2 = size(mr[k][k], mi[k][k]);
      xr[k] = (r * mr[k][k] + m * mi[k][k]) / p2;
      xi[k] = (m * mr[k][k] - r * mi[k][k]) / p2;
    }
  }

  private static double size(double re, double im) {
    return re * re + im * im;
  }

  private static void swap(double[][] rows, int i, int k) {
    double[] row = rows[i];
    rows[i] = rows[k];
    rows[k] = row;
  }

  private static void swap(double[] values, int i, int k) {
    double value = values[i];
    values[i] = values[k];
    values[k] = value;
  }
}
