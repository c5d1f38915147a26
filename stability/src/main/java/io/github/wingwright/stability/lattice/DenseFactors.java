// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

/** Factors of a square matrix with partial pivoting, rows scaled first so that a small pivot means what it says. */
final class DenseFactors {
  private final double[][] lu;
  private final int[] order;
  private final double[] scale;

  /** Thrown with the column at which no usable pivot was left. */
  static final class Singular extends RuntimeException {
    private static final long serialVersionUID = 1L;
    final int column;

    Singular(int column) {
      super("no pivot in column " + column, null, false, false);
      this.column = column;
    }
  }

  /** Factors in place: the matrix is overwritten and kept. */
  DenseFactors(double[][] matrix) {
    lu = matrix;
    int n = matrix.length;
    order = new int[n];
    scale = new double[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
      double largest = 0;
      for (double v : lu[i]) {
        largest = Math.max(largest, Math.abs(v));
      }
      if (!(largest > 0) || largest == Double.POSITIVE_INFINITY) {
        throw new Singular(i);
      }
      scale[i] = 1 / largest;
      for (int k = 0; k < n; k++) {
        lu[i][k] *= scale[i];
      }
    }
    for (int k = 0; k < n; k++) {
      int best = k;
      for (int i = k + 1; i < n; i++) {
        if (Math.abs(lu[i][k]) > Math.abs(lu[best][k])) {
          best = i;
        }
      }
      double[] pivotRow = lu[best];
      if (!(Math.abs(pivotRow[k]) > 1e-12)) {
        throw new Singular(k);
      }
      lu[best] = lu[k];
      lu[k] = pivotRow;
      int swap = order[best];
      order[best] = order[k];
      order[k] = swap;
      double inverse = 1 / pivotRow[k];
      for (int i = k + 1; i < n; i++) {
        subtract(lu[i], pivotRow, lu[i][k] * inverse, k);
      }
    }
  }

  private static void subtract(double[] row, double[] pivotRow, double factor, int k) {
    row[k] = factor;
    for (int m = k + 1; m < row.length; m++) {
      row[m] -= factor * pivotRow[m];
    }
  }

  double[] solve(double[] right) {
    int n = lu.length;
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      double[] row = lu[i];
      double sum = right[order[i]] * scale[order[i]];
      for (int k = 0; k < i; k++) {
        sum -= row[k] * x[k];
      }
      x[i] = sum;
    }
    for (int i = n - 1; i >= 0; i--) {
      double[] row = lu[i];
      double sum = x[i];
      for (int k = i + 1; k < n; k++) {
        sum -= row[k] * x[k];
      }
      x[i] = sum / row[i];
    }
    return x;
  }
}
