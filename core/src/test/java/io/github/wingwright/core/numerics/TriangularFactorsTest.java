// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The elimination put to the test of the equations themselves, at sizes that fill blocks of pivots and that do not. */
class TriangularFactorsTest {
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
    double[] x = new TriangularFactors(a, 1e-14).solve(b);
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
    assertThatThrownBy(() -> new TriangularFactors(a, 1e-14)).isInstanceOf(TriangularFactors.Singular.class);
  }

  @Test
  void the_documented_example_holds_and_rows_of_any_size_weigh_alike() {
    TriangularFactors factors = new TriangularFactors(new double[][] {{2, 0}, {0, 1}}, 1e-14);
    assertThat(factors.solve(new double[] {4, 3})).containsExactly(2, 3);
    assertThat(factors).hasToString("matrix of 2 rows in triangular factors");
    double[] x = new TriangularFactors(new double[][] {{0, 2e9, 0}, {1e-9, 1e-9, 0}, {0, 0, 3}}, 1e-12)
        .solve(new double[] {4e9, 3e-9, 6});
    assertThat(x).containsExactly(new double[] {1, 2, 2}, within(1e-12));
  }

  @Test
  void a_singular_matrix_tells_its_place() {
    assertThatThrownBy(() -> new TriangularFactors(new double[][] {{1, 2, 3}, {2, 4, 6}, {1, 0, 1}}, 1e-12))
        .isInstanceOfSatisfying(TriangularFactors.Singular.class, e -> assertThat(e.place()).isEqualTo(2));
    assertThatThrownBy(() -> new TriangularFactors(new double[][] {{1, 0}, {0, Double.NaN}}, 1e-12))
        .isInstanceOfSatisfying(TriangularFactors.Singular.class, e -> assertThat(e.place()).isEqualTo(1));
  }
}
