// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/** The lattice by halves against a plain one of the whole span, set up here from single horseshoes. */
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
                HorseshoeKernel.velocity(p[0] + front, p[1], p[2], q[0] + front, q[1], q[2], x, y, z, v);
                matrix[i][j] = v[1] * ny + v[2] * nz;
                if (ground > Double.NEGATIVE_INFINITY) {
                    // the image below the ground, of opposite strength
                    HorseshoeKernel.velocity(p[0] + front, p[1], 2 * ground - p[2], q[0] + front, q[1],
                            2 * ground - q[2], x, y, z, v);
                    matrix[i][j] -= v[1] * ny + v[2] * nz;
                }
            }
        }
        return new LUDecomposition(new Array2DRowRealMatrix(matrix), 1e-14).getSolver()
                .solve(new ArrayRealVector(right)).toArray();
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
        double beta = 0.05;
        LatticeSolution flow = lattice.factor().solve(LatticeCondition.at(alpha).sideslip(beta));
        double[] whole = wholeSpan(alpha, beta, ground);
        double[] starboard = flow.strengths("wing", false);
        double[] port = flow.strengths("wing", true);
        for (int k = 0; k < ROWS; k++) {
            for (int j = 0; j < HALF; j++) {
                assertThat(starboard[k * HALF + j]).isCloseTo(whole[k * 2 * HALF + HALF + j], within(1e-9));
                assertThat(port[k * HALF + j]).isCloseTo(whole[k * 2 * HALF + HALF - 1 - j], within(1e-9));
            }
        }
    }
}
