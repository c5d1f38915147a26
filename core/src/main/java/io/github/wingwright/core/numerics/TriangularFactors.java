// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import java.util.Objects;

/**
 * The two triangular factors of a full square matrix; they are kept and serve any number of right sides.
 *
 * <p>Gauss's elimination with the largest pivot of each column; every row is scaled first to a largest element of one, so that
 * a small pivot means what it says. Source: any text on numerical linear algebra.
 *
 * <p>Example: of {@code 2·x = 4, y = 3} the solution is 2 and 3.
 */
public final class TriangularFactors {
  /** Pivots that are applied together. */
  private static final int BLOCK = 4;

  private final double[][] lu;
  private final int[] order;
  private final double[] scale;

  /** Thrown where elimination finds no pivot: the equations are not independent, or one is not a number. */
  public static final class Singular extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int place;

    Singular(int place) {
      super("no pivot in row and column " + place, null, false, false);
      this.place = place;
    }

    /** Row and column at which no pivot was left, from 0. */
    public int place() {
      return place;
    }
  }

  /**
   * Factors the matrix in place: the caller gives it away.
   *
   * @param matrix the coefficients by rows [any unit], as many columns as rows
   * @param leastPivot the pivot at which it counts as singular, over the largest element of its row, such as 1e-14
   * @throws Singular if there is no pivot above that, or a row that is zero or not finite
   */
  public TriangularFactors(double[][] matrix, double leastPivot) {
    Objects.requireNonNull(matrix, "matrix");
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
        throw new Singular(i);
      }
      scale[i] = 1 / largest;
      for (int j = 0; j < n; j++) {
        lu[i][j] *= scale[i];
      }
    }
    for (int from = 0; from < n; from += BLOCK) {
      int to = Math.min(from + BLOCK, n);
      factorColumns(from, to, leastPivot);
      update(from, to);
    }
  }

  /** Factors a few columns, with the pivots among them. */
  private void factorColumns(int from, int to, double leastPivot) {
    int n = lu.length;
    for (int k = from; k < to; k++) {
      int pivot = k;
      double largest = Math.abs(lu[k][k]);
      for (int i = k + 1; i < n; i++) {
        double size = Math.abs(lu[i][k]);
        if (size > largest) {
          largest = size;
          pivot = i;
        }
      }
      if (!(largest >= leastPivot)) {
        throw new Singular(k);
      }
      double[] row = lu[pivot];
      lu[pivot] = lu[k];
      lu[k] = row;
      int place = order[pivot];
      order[pivot] = order[k];
      order[k] = place;
      double inverse = 1 / row[k];
      for (int i = k + 1; i < n; i++) {
        double[] target = lu[i];
        double factor = target[k] * inverse;
        target[k] = factor;
        for (int j = k + 1; j < to; j++) {
          target[j] -= factor * row[j];
        }
      }
    }
  }

  /** Brings the columns to the right up to date, several pivots at a time: the matrix is read a fourth as often. */
  private void update(int from, int to) {
    int n = lu.length;
    for (int i = from + 1; i < to; i++) {
      for (int k = from; k < i; k++) {
        subtract(lu[i], lu[k], lu[i][k], to, n);
      }
    }
    if (to - from < BLOCK) {
      return;
    }
    double[] a = lu[from];
    double[] b = lu[from + 1];
    double[] c = lu[from + 2];
    double[] d = lu[from + 3];
    for (int i = to; i < n; i++) {
      double[] target = lu[i];
      subtract(target, a, b, c, d, target[from], target[from + 1], target[from + 2], target[from + 3], to, n);
    }
  }

  private static void subtract(double[] target, double[] row, double factor, int from, int to) {
    for (int j = from; j < to; j++) {
      target[j] -= factor * row[j];
    }
  }

  private static void subtract(double[] target, double[] a, double[] b, double[] c, double[] d, double fa, double fb,
      double fc, double fd, int from, int to) {
    for (int j = from; j < to; j++) {
      target[j] -= fa * a[j] + fb * b[j] + (fc * c[j] + fd * d[j]);
    }
  }

  /** Solution for one right side [any unit]; the argument is kept. */
  public double[] solve(double[] right) {
    Objects.requireNonNull(right, "right");
    double[] x = new double[lu.length];
    solve(right, x);
    return x;
  }

  /** Writes the solution for one right side [any unit] without allocating. */
  public void solve(double[] right, double[] x) {
    Objects.requireNonNull(right, "right");
    Objects.requireNonNull(x, "x");
    int n = lu.length;
    for (int i = 0; i < n; i++) {
      x[i] = right[order[i]] * scale[order[i]] - product(lu[i], x, 0, i);
    }
    for (int i = n - 1; i >= 0; i--) {
      x[i] = (x[i] - product(lu[i], x, i + 1, n)) / lu[i][i];
    }
  }

  /** Sum of products of the first elements, in four partial sums: several times as fast as one. */
  public static double product(double[] a, double[] b, int count) {
    Objects.requireNonNull(a, "a");
    Objects.requireNonNull(b, "b");
    return product(a, b, 0, count);
  }

  private static double product(double[] a, double[] b, int from, int to) {
    double p = 0;
    double q = 0;
    double r = 0;
    double s = 0;
    int j = from;
    for (; j < to - 3; j += 4) {
      p += a[j] * b[j];
      q += a[j + 1] * b[j + 1];
      r += a[j + 2] * b[j + 2];
      s += a[j + 3] * b[j + 3];
    }
    for (; j < to; j++) {
      p += a[j] * b[j];
    }
    return p + q + (r + s);
  }

  @Override
  public String toString() {
    return "matrix of " + lu.length + " rows in triangular factors";
  }
}
