// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The elimination put to the test of the equations themselves, at sizes that fill blocks of pivots and that do not. */
class DenseLuTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 3, 4, 5, 8, 22, 147})
  void a_solution_satisfies_the_equations(int n) {
    Random random = new Random(n);
    double[][] a = new double[n][n];
    double[] b = new double[n];
    for (int i = 0; i < n; i++) {
      b[i] = random.nextGaussian();
      for (int j = 0; j < n; j++) {
        a[i][j] = random.nextGaussian() * Math.pow(10, i % 5);
      }
    }
    double[][] kept = new double[n][];
    for (int i = 0; i < n; i++) {
      kept[i] = a[i].clone();
    }
    double[] x = new DenseLu(a).solve(b);
    for (int i = 0; i < n; i++) {
      double sum = 0;
      double size = Math.abs(b[i]);
      for (int j = 0; j < n; j++) {
        sum += kept[i][j] * x[j];
        size += Math.abs(kept[i][j] * x[j]);
      }
      assertThat(sum).isCloseTo(b[i], within(1e-12 * size));
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
