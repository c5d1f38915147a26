// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/**
 * The lattice by halves against a plain one of the whole span, set up here from single segments, with the wake going with the
 * wind. At the sideslip used the turning of the wake alone changes the strengths by some 10⁻⁶.
 */
class WholeSpanTest {
  private static final int ROWS = 3;
  private static final int HALF = 5;
  private static final double CHORD = 1;
  private static final double SEMISPAN = 3;
  private static final double SWEEP = Math.toRadians(20);
  private static final double DIHEDRAL = Math.toRadians(6);

  private static double[] edge(int strip) {
    double s = (strip - HALF) / (double) HALF;
    double y = s * SEMISPAN;
    return new double[] {Math.abs(y) * Math.tan(SWEEP), y, Math.abs(y) * Math.tan(DIHEDRAL)};
  }

  /** Strengths of the whole span from port to starboard, for onset flow (cos α cos β, −sin β, sin α cos β). */
  private static double[] wholeSpan(double alpha, double beta, double ground) {
    int n = ROWS * 2 * HALF;
    double[][] matrix = new double[n][n];
    double[] right = new double[n];
    double[] v = new double[3];
    for (int i = 0; i < n; i++) {
      double[] a = edge(i % (2 * HALF));
      double[] b = edge(i % (2 * HALF) + 1);
      double fraction = (i / (2 * HALF) + 0.75) / ROWS;
      double x = (a[0] + b[0]) / 2 + fraction * CHORD;
      double y = (a[1] + b[1]) / 2;
      double z = (a[2] + b[2]) / 2;
      double length = Math.hypot(b[1] - a[1], b[2] - a[2]);
      double ny = -(b[2] - a[2]) / length;
      double nz = (b[1] - a[1]) / length;
      right[i] = Math.sin(beta) * ny - Math.sin(alpha) * Math.cos(beta) * nz;
      for (int j = 0; j < n; j++) {
        double[] p = edge(j % (2 * HALF));
        double[] q = edge(j % (2 * HALF) + 1);
        double front = (j / (2 * HALF) + 0.25) / ROWS * CHORD;
        bent(p, q, front, beta, 1, 0, x, y, z, v);
        matrix[i][j] = v[1] * ny + v[2] * nz;
        if (ground > Double.NEGATIVE_INFINITY) {
          // the image below the ground, of opposite strength
          bent(p, q, front, beta, -1, 2 * ground, x, y, z, v);
          matrix[i][j] -= v[1] * ny + v[2] * nz;
        }
      }
    }
    return new LUDecomposition(new Array2DRowRealMatrix(matrix), 1e-14).getSolver()
        .solve(new ArrayRealVector(right)).toArray();
  }

  /** A horseshoe whose legs follow the chord to the trailing edge and the wind behind it; z is mirrored to m·z + shift. */
  private static void bent(double[] p, double[] q, double front, double beta, double m, double shift, double x, double y,
      double z, double[] v) {
    double[] a = {p[0] + front, p[1], m * p[2] + shift};
    double[] b = {q[0] + front, q[1], m * q[2] + shift};
    double[] behindA = {p[0] + CHORD, a[1], a[2]};
    double[] behindB = {q[0] + CHORD, b[1], b[2]};
    double[] point = {x, y, z};
    v[0] = 0;
    v[1] = 0;
    v[2] = 0;
    segment(behindA, a, point, v);
    segment(a, b, point, v);
    segment(b, behindB, point, v);
    wake(behindA, beta, point, -1, v);
    wake(behindB, beta, point, 1, v);
  }

  private static void segment(double[] from, double[] to, double[] point, double[] v) {
    double[] r1 = {point[0] - from[0], point[1] - from[1], point[2] - from[2]};
    double[] r2 = {point[0] - to[0], point[1] - to[1], point[2] - to[2]};
    double[] c = cross(r1, r2);
    double s1 = Math.sqrt(dot(r1, r1));
    double s2 = Math.sqrt(dot(r2, r2));
    double f = (s1 + s2) / (s1 * s2 * (s1 * s2 + dot(r1, r2))) / (4 * Math.PI);
    for (int k = 0; k < 3; k++) {
      v[k] += f * c[k];
    }
  }

  private static void wake(double[] from, double beta, double[] point, double sign, double[] v) {
    double[] d = {Math.cos(beta), -Math.sin(beta), 0};
    double[] r = {point[0] - from[0], point[1] - from[1], point[2] - from[2]};
    double[] c = cross(d, r);
    double s = Math.sqrt(dot(r, r));
    double f = sign / (s * (s - dot(r, d))) / (4 * Math.PI);
    for (int k = 0; k < 3; k++) {
      v[k] += f * c[k];
    }
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
  }

  private static VortexLattice lattice() {
    return VortexLattice.of(new LatticeReference(6, 1, 6, 0.25, 0),
        LatticeSurface.mirrored("wing", new LatticeStation(0, 0, 0, CHORD, 0),
            new LatticeStation(SEMISPAN * Math.tan(SWEEP), SEMISPAN, SEMISPAN * Math.tan(DIHEDRAL), CHORD, 0))
            .spacing(Spacing.UNIFORM).panels(ROWS, HALF));
  }

  @Test
  void halves_give_the_strengths_of_the_whole_span() {
    check(Double.NEGATIVE_INFINITY, lattice());
  }

  @Test
  void ground_gives_the_strengths_of_a_whole_span_with_its_image() {
    check(-0.7, lattice().groundAt(-0.7));
  }

  private static void check(double ground, VortexLattice lattice) {
    double alpha = 0.07;
    // the lattice turns its wake to first order only
    double beta = 1e-4;
    LatticeSolution flow = lattice.factor().solve(LatticeCondition.at(alpha).sideslip(beta));
    double[] whole = wholeSpan(alpha, beta, ground);
    double[] starboard = flow.strengths("wing", false);
    double[] port = flow.strengths("wing", true);
    for (int k = 0; k < ROWS; k++) {
      for (int j = 0; j < HALF; j++) {
        assertThat(starboard[k * HALF + j]).isCloseTo(whole[k * 2 * HALF + HALF + j], within(2e-9));
        assertThat(port[k * HALF + j]).isCloseTo(whole[k * 2 * HALF + HALF - 1 - j], within(2e-9));
      }
    }
  }
}
