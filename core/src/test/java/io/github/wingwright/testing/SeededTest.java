// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SeededTest {
  @Test
  void the_same_seed_gives_the_same_numbers() {
    double[] first = Seeded.doubles(7, 50, -1, 3).toArray();
    assertThat(first).hasSize(50).isEqualTo(Seeded.doubles(7, 50, -1, 3).toArray());
    assertThat(first).isNotEqualTo(Seeded.doubles(8, 50, -1, 3).toArray());
  }

  @Test
  void the_ends_come_first_and_nothing_lies_outside() {
    double[] numbers = Seeded.doubles(1, 1_000, -1, 3).toArray();
    assertThat(Arrays.copyOf(numbers, 2)).containsExactly(-1, 3);
    assertThat(Arrays.stream(numbers).min()).hasValue(-1);
    assertThat(Arrays.stream(numbers).max()).hasValue(3);
    assertThat(Arrays.stream(numbers).average().orElseThrow()).isCloseTo(1, within(0.15));
  }

  @Test
  void orders_of_magnitude_come_equally_often() {
    double[] numbers = Seeded.logUniform(2, 10_000, 1e-3, 1e3).toArray();
    assertThat(numbers).startsWith(1e-3, 1e3);
    assertThat(Arrays.stream(numbers).filter(x -> x < 1).count()).isBetween(4_800L, 5_200L);
    assertThat(Arrays.stream(numbers)).allMatch(x -> x >= 1e-3 && x <= 1e3);
  }

  @Test
  void points_start_with_two_corners() {
    double[][] points = Seeded.points(3, 100, new double[] {0, 1}, new double[] {10, 20}).toArray(double[][]::new);
    assertThat(points).hasDimensions(100, 2);
    assertThat(points[0]).containsExactly(0, 10);
    assertThat(points[1]).containsExactly(1, 20);
    assertThat(Arrays.stream(points)).allMatch(p -> p[0] >= 0 && p[0] <= 1 && p[1] >= 10 && p[1] <= 20);
    assertThat(points).isDeepEqualTo(
        Seeded.points(3, 100, new double[] {0, 1}, new double[] {10, 20}).toArray(double[][]::new));
  }

  @Test
  void a_range_that_does_not_rise_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Seeded.doubles(1, 10, 2, 2))
        .withMessage("range must be finite and rising, was 2.0 to 2.0");
    assertThatIllegalArgumentException().isThrownBy(() -> Seeded.doubles(1, 1, 1, 2))
        .withMessage("count must be at least 2, was 1");
    assertThatIllegalArgumentException().isThrownBy(() -> Seeded.logUniform(1, 10, 0, 2))
        .withMessage("lower end must be positive, was 0.0");
  }
}
