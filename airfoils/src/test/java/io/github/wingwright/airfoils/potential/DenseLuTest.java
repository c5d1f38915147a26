// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The elimination against Apache Commons Math, at sizes that fill blocks of pivots and that do not. */
class DenseLuTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 3, 4, 5, 8, 22, 147})
  void solutions_equal_those_of_commons_math(int n) {
    Random random = new Random(n);
    double[][] a = new double[n][n];
    double[] b = new double[n];
    for (int i = 0; i < n; i++) {
      b[i] = random.nextGaussian();
      for (int j = 0; j < n; j++) {
        a[i][j] = random.nextGaussian() * Math.pow(10, i % 5);
      }
    }
    double[] expected =
        new LUDecomposition(new Array2DRowRealMatrix(a)).getSolver().solve(new ArrayRealVector(b)).toArray();
    double[] x = new DenseLu(a).solve(b);
    for (int i = 0; i < n; i++) {
      assertThat(x[i]).isCloseTo(expected[i], within(1e-9 * (1 + Math.abs(expected[i]))));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 6})
  void a_singular_matrix_is_refused(int n) {
    double[][] a = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        a[i][j] = i + j * j;
      }
      a[i][n - 1] = a[i][0];
    }
    assertThatThrownBy(() -> new DenseLu(a)).isInstanceOf(IllegalArgumentException.class);
  }
}
