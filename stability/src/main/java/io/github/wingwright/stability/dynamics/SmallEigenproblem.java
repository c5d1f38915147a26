// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import io.github.wingwright.core.ConvergenceException;
import java.util.Arrays;

/**
 * Eigenvalues and eigenvectors of a small real matrix, by its characteristic polynomial.
 *
 * <p>State matrices have four rows, and texts on flight dynamics print their characteristic polynomials, so the way here
 * is the one of the texts: balance, form the polynomial (Faddeev and Le Verrier), find its roots all at once (Aberth and
 * Ehrlich), then improve each with its eigenvector by inverse iteration on the matrix itself. Every pair is verified: the
 * residual of A·x = λ·x, and trace and determinant against sum and product of the eigenvalues.
 */
final class SmallEigenproblem {
  private static final int MOST_ITERATIONS = 500;
  private static final double RESIDUAL = 1e-6;

  final double[] real;
  final double[] imaginary;
  /** Eigenvector of each eigenvalue: [eigenvalue][component], greatest component of size one. */
  final double[][] vectorReal;
  final double[][] vectorImaginary;

  SmallEigenproblem(double[][] matrix) {
    int n = matrix.length;
    double[] scale = new double[n];
    double[][] a = balanced(matrix, scale);
    double[] polynomial = polynomial(a);
    real = new double[n];
    imaginary = new double[n];
    roots(polynomial, real, imaginary);
    pairUp();
    vectorReal = new double[n][n];
    vectorImaginary = new double[n][n];
    double norm = norm(a);
    double sum = 0;
    boolean apart = true;
    for (int i = 0; i < n; i++) {
      apart &= isSingle(i, norm);
      if (imaginary[i] < 0) {
        real[i] = real[i - 1];
        imaginary[i] = -imaginary[i - 1];
        for (int k = 0; k < n; k++) {
          vectorReal[i][k] = vectorReal[i - 1][k];
          vectorImaginary[i][k] = -vectorImaginary[i - 1][k];
        }
      } else {
        inverseIteration(a, i, norm);
      }
      sum += real[i];
    }
    for (int i = 0; i < n; i++) {
      // a root within the rounding of the matrix is zero: neither growing nor dying out
      if (Math.hypot(real[i], imaginary[i]) < 1e-14 * norm) {
        real[i] = 0;
        imaginary[i] = 0;
      }
      restore(i, scale);
    }
    double trace = 0;
    for (int i = 0; i < n; i++) {
      trace += a[i][i];
    }
    // roots that fall together are known to a fraction of the digits only
    if (!(Math.abs(sum - trace) <= (apart ? 1e-9 : 1e-3) * norm)) {
      throw ConvergenceException.atValues("eigenvalues do not add up to the trace", 1, sum - trace, real);
    }
  }

  /** Characteristic polynomial det(λ·I − A), highest power first, leading coefficient one. */
  static double[] polynomial(double[][] a) {
    int n = a.length;
    double[] c = new double[n + 1];
    c[0] = 1;
    double[][] m = new double[n][n];
    for (int k = 1; k <= n; k++) {
      double[][] next = new double[n][n];
      double trace = 0;
      for (int i = 0; i < n; i++) {
        m[i][i] += c[k - 1];
      }
      for (int i = 0; i < n; i++) {
        for (int l = 0; l < n; l++) {
          double f = a[i][l];
          for (int j = 0; j < n; j++) {
            next[i][j] += f * m[l][j];
          }
        }
        trace += next[i][i];
      }
      c[k] = -trace / k;
      m = next;
    }
    return c;
  }

  /** Scales rows and columns by powers of two until they are of like size. */
  private static double[][] balanced(double[][] matrix, double[] scale) {
    int n = matrix.length;
    double[][] a = new double[n][];
    for (int i = 0; i < n; i++) {
      a[i] = matrix[i].clone();
      scale[i] = 1;
    }
    boolean changed = true;
    for (int sweep = 0; changed && sweep < 30; sweep++) {
      changed = false;
      for (int i = 0; i < n; i++) {
        double row = 0;
        double column = 0;
        for (int j = 0; j < n; j++) {
          if (j != i) {
            row += Math.abs(a[i][j]);
            column += Math.abs(a[j][i]);
          }
        }
        if (row > 0 && column > 0) {
          double f = Math.scalb(1.0, Math.getExponent(Math.sqrt(row / column)));
          if (f > 1.5 || f < 0.75) {
            changed = true;
            scale[i] *= f;
            for (int j = 0; j < n; j++) {
              a[i][j] /= f;
              a[j][i] *= f;
            }
          }
        }
      }
    }
    return a;
  }

  private static double norm(double[][] a) {
    double sum = 0;
    for (double[] row : a) {
      for (double v : row) {
        sum += v * v;
      }
    }
    return Math.sqrt(sum);
  }

  /** All roots at once; each is moved by Newton's step, corrected for the pull of the others. */
  private static void roots(double[] c, double[] re, double[] im) {
    int n = c.length - 1;
    double radius = 0;
    for (int k = 1; k <= n; k++) {
      radius = Math.max(radius, Math.pow(Math.abs(c[k]), 1.0 / k));
    }
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * i / n + 0.4;
      re[i] = radius * (i + 1) / n * Math.cos(angle) + 0.0;
      im[i] = radius * (i + 1) / n * Math.sin(angle) + 0.0;
    }
    boolean moving = radius > 0;
    int iteration = 0;
    for (; moving && iteration < MOST_ITERATIONS; iteration++) {
      moving = false;
      for (int i = 0; i < n; i++) {
        moving |= step(c, re, im, i);
      }
    }
    if (moving) {
      throw ConvergenceException.atValues("roots of the characteristic polynomial did not settle", iteration,
          Double.NaN, re);
    }
  }

  private static boolean step(double[] c, double[] re, double[] im, int i) {
    int n = re.length;
    double x = re[i];
    double y = im[i];
    double pr = c[0];
    double pi = 0;
    double dr = 0;
    double di = 0;
    double size = Math.hypot(x, y);
    double bound = Math.abs(c[0]);
    for (int k = 1; k <= n; k++) {
      double nextDr = dr * x - di * y + pr;
      di = dr * y + di * x + pi;
      dr = nextDr;
      double nextPr = pr * x - pi * y + c[k];
      pi = pr * y + pi * x;
      pr = nextPr;
      bound = bound * size + Math.abs(c[k]);
    }
    if (pr * pr + pi * pi <= 1e-30 * bound * bound) {
      return false;
    }
    double sr = 0;
    double si = 0;
    for (int j = 0; j < n; j++) {
      if (j != i) {
        double ur = x - re[j];
        double ui = y - im[j];
        double u2 = ur * ur + ui * ui;
        if (u2 > 0) {
          sr += ur / u2;
          si -= ui / u2;
        }
      }
    }
    double qr = dr - (pr * sr - pi * si);
    double qi = di - (pr * si + pi * sr);
    double q2 = qr * qr + qi * qi;
    if (q2 == 0) {
      re[i] += 1e-3 * (size + 1);
      return true;
    }
    double stepR = (pr * qr + pi * qi) / q2;
    double stepI = (pi * qr - pr * qi) / q2;
    re[i] -= stepR;
    im[i] -= stepI;
    return Math.hypot(stepR, stepI) > 1e-14 * size;
  }

  /** Makes conjugates of what are conjugates, reals of what are real, and orders by size, greatest first. */
  private void pairUp() {
    int n = real.length;
    boolean[] used = new boolean[n];
    double[] r = real.clone();
    double[] m = imaginary.clone();
    Integer[] order = new Integer[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
    }
    Arrays.sort(order, (p, q) -> Double.compare(Math.hypot(r[q], m[q]), Math.hypot(r[p], m[p])));
    int at = 0;
    for (int oi = 0; oi < n; oi++) {
      int i = order[oi];
      if (used[i]) {
        continue;
      }
      used[i] = true;
      int mate = -1;
      double closest = Math.abs(m[i]);
      for (int j = 0; j < n; j++) {
        double distance = Math.hypot(r[i] - r[j], m[i] + m[j]);
        if (!used[j] && distance < closest) {
          closest = distance;
          mate = j;
        }
      }
      if (mate < 0 || Math.abs(m[i]) <= 1e-10 * Math.hypot(r[i], m[i])) {
        real[at] = r[i];
        imaginary[at++] = 0;
      } else {
        used[mate] = true;
        double re = (r[i] + r[mate]) / 2;
        double im = Math.abs(m[i] - m[mate]) / 2;
        real[at] = re;
        imaginary[at++] = im;
        real[at] = re;
        imaginary[at++] = -im;
      }
    }
  }

  private void inverseIteration(double[][] a, int index, double norm) {
    int n = a.length;
    if (norm == 0) {
      vectorReal[index][index] = 1;
      return;
    }
    double[] xr = new double[n];
    double[] xi = new double[n];
    for (int k = 0; k < n; k++) {
      xr[k] = 1 + 0.37 * k;
      xi[k] = imaginary[index] == 0 ? 0 : 0.61 - 0.23 * k;
    }
    double lr = real[index];
    double li = imaginary[index];
    double residual = Double.POSITIVE_INFINITY;
    boolean single = isSingle(index, norm);
    for (int pass = 0; pass < 4; pass++) {
      double[] br = xr.clone();
      double[] bi = xi.clone();
      ShiftedSolve.solve(a, lr, li, norm, xr, xi);
      int big = 0;
      for (int k = 1; k < n; k++) {
        if (Math.hypot(xr[k], xi[k]) > Math.hypot(xr[big], xi[big])) {
          big = k;
        }
      }
      double pr = xr[big];
      double pi = xi[big];
      double size2 = pr * pr + pi * pi;
      for (int k = 0; k < n; k++) {
        double vr = (xr[k] * pr + xi[k] * pi) / size2;
        xi[k] = (xi[k] * pr - xr[k] * pi) / size2;
        xr[k] = vr;
      }
      double now = residual(a, lr, li, xr, xi) / norm;
      double betterR = lr + (br[big] * pr + bi[big] * pi) / size2;
      double betterI = imaginary[index] == 0 ? 0 : li + (bi[big] * pr - br[big] * pi) / size2;
      double better = residual(a, betterR, betterI, xr, xi) / norm;
      if (single && better < now) {
        now = better;
        lr = betterR;
        li = betterI;
      }
      if (now < residual) {
        residual = now;
        real[index] = lr;
        imaginary[index] = li;
        vectorReal[index] = xr.clone();
        vectorImaginary[index] = xi.clone();
      }
    }
    if (!(residual <= RESIDUAL)) {
      throw ConvergenceException.atValues("eigenvector is not one", 4, residual, lr, li);
    }
  }

  /** Whether no other root is so near that inverse iteration would mix the two. */
  private boolean isSingle(int index, double norm) {
    for (int j = 0; j < real.length; j++) {
      if (j != index && Math.hypot(real[j] - real[index], imaginary[j] - imaginary[index]) < 1e-3 * norm) {
        return false;
      }
    }
    return true;
  }

  private static double residual(double[][] a, double lr, double li, double[] xr, double[] xi) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      double r = -lr * xr[i] + li * xi[i];
      double m = -lr * xi[i] - li * xr[i];
      for (int j = 0; j < a.length; j++) {
        r += a[i][j] * xr[j];
        m += a[i][j] * xi[j];
      }
      sum += r * r + m * m;
    }
    return Math.sqrt(sum);
  }

  /** Undoes the balancing in an eigenvector and makes its greatest component one in size. */
  private void restore(int index, double[] scale) {
    double greatest = 0;
    for (int k = 0; k < scale.length; k++) {
      vectorReal[index][k] *= scale[k];
      vectorImaginary[index][k] *= scale[k];
      greatest = Math.max(greatest, Math.hypot(vectorReal[index][k], vectorImaginary[index][k]));
    }
    for (int k = 0; k < scale.length; k++) {
      vectorReal[index][k] /= greatest;
      vectorImaginary[index][k] /= greatest;
    }
  }
}
