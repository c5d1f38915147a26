// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.potential;

/**
 * LU factors of a dense matrix with partial pivoting, rows scaled first; the factors are kept and serve any number of
 * right sides.
 */
public final class DenseLu {
  private final double[][] lu;
  private final int[] order;
  private final double[] scale;

  /** Factors the matrix in place: the caller gives it away. */
  public DenseLu(double[][] matrix) {
    int n = matrix.length;
    lu = matrix;
    order = new int[n];
    scale = new double[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
      double largest = 0;
      for (double v : lu[i]) {
        largest = Math.max(largest, Math.abs(v));
      }
      if (!(largest > 0) || largest == Double.POSITIVE_INFINITY) {
        throw new IllegalArgumentException("row " + i + " of the influence matrix is empty or not finite");
      }
      scale[i] = 1 / largest;
      for (int j = 0; j < n; j++) {
        lu[i][j] *= scale[i];
      }
    }
    for (int k = 0; k < n; k++) {
      int pivot = k;
      for (int i = k + 1; i < n; i++) {
        if (Math.abs(lu[i][k]) > Math.abs(lu[pivot][k])) {
          pivot = i;
        }
      }
      if (Math.abs(lu[pivot][k]) < 1e-14) {
        throw new IllegalArgumentException(
            "the outline has no unique flow: two of its points coincide or it crosses itself near point "
                + k);
      }
      double[] row = lu[pivot];
      lu[pivot] = lu[k];
      lu[k] = row;
      int place = order[pivot];
      order[pivot] = order[k];
      order[k] = place;
      double inverse = 1 / row[k];
      for (int i = k + 1; i < n; i++) {
        double factor = lu[i][k] * inverse;
        lu[i][k] = factor;
        subtract(lu[i], row, factor, k + 1, n);
      }
    }
  }

  private static void subtract(double[] target, double[] row, double factor, int from, int to) {
    for (int j = from; j < to; j++) {
      target[j] -= factor * row[j];
    }
  }

  /** Solution for one right side [any unit]; the argument is kept. */
  public double[] solve(double[] right) {
    int n = lu.length;
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = right[order[i]] * scale[order[i]];
      double[] row = lu[i];
      for (int j = 0; j < i; j++) {
        sum -= row[j] * x[j];
      }
      x[i] = sum;
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = x[i];
      double[] row = lu[i];
      for (int j = i + 1; j < n; j++) {
        sum -= row[j] * x[j];
      }
      x[i] = sum / row[i];
    }
    return x;
  }
}
