// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.potential;

/**
 * The stream function of straight panels at the nodes of an outline.
 *
 * <p>With panel axes (X along the panel from its first node, Y to the inside of the body), L its length, X2 = X1 − L:
 * <pre>{@code
 * vortex, clockwise, strength running linearly from γa to γb:
 *   ψ = 1/(2π)·∫ γ·ln r dξ
 *   ∫ ln r dξ   = X1·ln r1 − X2·ln r2 − L + Y·(subtended angle)              = I0
 *   ∫ ξ·ln r dξ = X1·I0 − ½·(r1²·ln r1 − r2²·ln r2) + ¼·(r1² − r2²)          = I1
 * source, constant strength σ:
 *   ψ = σ/(2π)·[X1·θ1 − X2·θ2 + Y·(ln r1 − ln r2)],  θ from the inward normal
 * }</pre>
 * The angle of a source has its cut along the outward normal, so that no cut crosses the body.
 */
final class Influence {
  private static final double SCALE = 1 / (2 * Math.PI);

  private Influence() {}

  /**
   * The matrix of the flow: rows are nodes (stream function equal on all of them) and the condition at the trailing
   * edge, columns the vortex strengths at the nodes and the common stream function.
   */
  static double[][] matrix(Outline o) {
    int n = o.nodes;
    double[][] a = new double[n + 1][n + 1];
    // Logarithm and direction between two nodes serve two panels and both ends: computed once per pair.
    double[][] log = new double[n][n];
    double[][] direction = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double ex = o.x[j] - o.x[i];
        double ey = o.y[j] - o.y[i];
        double r2 = ex * ex + ey * ey;
        double l = r2 > 0 ? 0.5 * Math.log(r2) : 0;
        double angle = Math.atan2(ey, ex);
        log[i][j] = l;
        log[j][i] = l;
        direction[i][j] = angle;
        direction[j][i] = angle > 0 ? angle - Math.PI : angle + Math.PI;
      }
    }
    for (int i = 0; i < n; i++) {
      fillRow(o, a[i], i, log[i], direction[i]);
    }
    if (o.blunt) {
      addBase(o, a);
    } else {
      // Both ends are one point and would give one equation twice. The speed at the edge is extrapolated from
      // the mean of the two sides instead.
      double[] row = a[n - 1];
      java.util.Arrays.fill(row, 0);
      row[0] = 1;
      row[1] = -2;
      row[2] = 1;
      row[n - 1] = -1;
      row[n - 2] = 2;
      row[n - 3] = -1;
    }
    a[n][0] = 1;
    a[n][n - 1] = 1;
    return a;
  }

  private static void fillRow(Outline o, double[] row, int i, double[] log, double[] direction) {
    int n = o.nodes;
    for (int j = 0; j < n - 1; j++) {
      double ex = o.x[i] - o.x[j];
      double ey = o.y[i] - o.y[j];
      double l = o.length[j];
      double x1 = ex * o.dirX[j] + ey * o.dirY[j];
      double x2 = x1 - l;
      double y = 0;
      double subtended = 0;
      if (i != j && i != j + 1) {
        y = ey * o.dirX[j] - ex * o.dirY[j];
        subtended = Math.abs(direction[j + 1] - direction[j]);
        if (subtended > Math.PI) {
          subtended = 2 * Math.PI - subtended;
        }
      }
      double r1 = x1 * x1 + y * y;
      double r2 = x2 * x2 + y * y;
      double log1 = log[j];
      double log2 = log[j + 1];
      double i0 = x1 * log1 - x2 * log2 - l + Math.abs(y) * subtended;
      double i1 = (x1 * i0 - 0.5 * (r1 * log1 - r2 * log2) + 0.25 * (r1 - r2)) / l;
      row[j] += SCALE * (i0 - i1);
      row[j + 1] += SCALE * i1;
    }
    row[n] = -1;
  }

  /**
   * A blunt base: the fluid inside is at rest, and a dead-air wake as wide as the base leaves it with the speed of
   * the outer flow along the bisector of the two surfaces. On the base that is a source and a vortex whose
   * strengths are the components of this velocity across and along it.
   */
  private static void addBase(Outline o, double[][] a) {
    int n = o.nodes;
    double bx = o.x[0] - o.x[n - 1];
    double by = o.y[0] - o.y[n - 1];
    double l = Math.hypot(bx, by);
    bx /= l;
    by /= l;
    // Downstream bisector of the last panels of both sides.
    double tx = o.dirX[n - 2] - o.dirX[0];
    double ty = o.dirY[n - 2] - o.dirY[0];
    double t = Math.hypot(tx, ty);
    double across = (tx * by - ty * bx) / t;
    double along = (tx * bx + ty * by) / t;
    for (int i = 0; i < n; i++) {
      double source = source(o.x[i], o.y[i], o.x[n - 1], o.y[n - 1], bx, by, l);
      double vortex = vortex(o.x[i], o.y[i], o.x[n - 1], o.y[n - 1], bx, by, l);
      // Speed at the edge is half the difference of the end strengths.
      double psi = 0.5 * (across * source - along * vortex);
      a[i][0] += psi;
      a[i][n - 1] -= psi;
    }
  }

  /** Stream function of a unit constant source on a panel. */
  static double source(double px, double py, double ax, double ay, double dx, double dy, double l) {
    double ex = px - ax;
    double ey = py - ay;
    double x1 = ex * dx + ey * dy;
    double x2 = x1 - l;
    double y = ey * dx - ex * dy;
    if (Math.abs(y) < 1e-13) {
      y = 0;
    }
    double first = x1 == 0 ? 0 : x1 * Math.atan2(-x1, y);
    double second = x2 == 0 ? 0 : x2 * Math.atan2(-x2, y);
    double logs = y == 0 ? 0 : 0.5 * y * Math.log((x1 * x1 + y * y) / (x2 * x2 + y * y));
    return SCALE * (first - second + logs);
  }

  /** Stream function of a unit constant clockwise vortex on a panel. */
  private static double vortex(double px, double py, double ax, double ay, double dx, double dy, double l) {
    double ex = px - ax;
    double ey = py - ay;
    double x1 = ex * dx + ey * dy;
    double x2 = x1 - l;
    double y = ey * dx - ex * dy;
    double first = x1 == 0 && y == 0 ? 0 : 0.5 * x1 * Math.log(x1 * x1 + y * y);
    double second = x2 == 0 && y == 0 ? 0 : 0.5 * x2 * Math.log(x2 * x2 + y * y);
    double subtended = Math.abs(y) < 1e-13 ? 0 : y * (Math.atan2(x1, y) - Math.atan2(x2, y));
    return SCALE * (first - second - l + subtended);
  }
}
