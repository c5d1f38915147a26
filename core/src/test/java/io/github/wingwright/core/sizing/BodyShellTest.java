// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.testing.Seeded;
import org.junit.jupiter.api.Test;

class BodyShellTest {
  @Test
  void the_documented_examples_hold() {
    assertThat(BodyShell.secondMoment(0.02, 0.0008) * 1e12).isCloseTo(2227.44, within(0.005));
    assertThat(BodyShell.neededStiffness(0.2, 0.18, 0.02)).isCloseTo(0.108, within(1e-15));
  }

  @Test
  void the_ring_by_its_middle_line_is_the_same_ring() {
    Seeded.points(3, 300, new double[] {0.005, 2}, new double[] {1e-4, 2.4e-3})
        .forEach(
            p -> {
              double middle = p[0] - p[1];
              assertThat(BodyShell.secondMoment(p[0], p[1]))
                  .isCloseTo(
                      Math.PI / 8 * p[1] * middle * (middle * middle + p[1] * p[1]),
                      within(1e-12 * BodyShell.secondMoment(p[0], p[1]) * p[0] / p[1]));
            });
  }

  @Test
  void the_second_moment_is_the_integral_over_the_ring() {
    double sum = 0;
    int n = 20_000;
    for (int i = 0; i < n; i++) {
      double r = 0.0092 + 0.0008 * (i + 0.5) / n;
      sum += Math.PI * r * r * r * 0.0008 / n;
    }
    assertThat(BodyShell.secondMoment(0.02, 0.0008)).isCloseTo(sum, within(1e-8 * sum));
  }

  @Test
  void the_diameter_of_a_second_moment_is_its_inverse_also_where_the_wall_fills_the_tube() {
    Seeded.points(5, 500, new double[] {1e-3, 3}, new double[] {1e-4, 1e-2})
        .forEach(
            p ->
                assertThat(BodyShell.diameterOf(BodyShell.secondMoment(p[0], p[1]), p[1]))
                    .isCloseTo(p[0], within(1e-12 * p[0] * Math.max(1, p[0] / p[1]))));
  }

  @Test
  void a_thin_tube_is_as_stiff_as_the_cube_of_its_diameter() {
    double ratio = BodyShell.secondMoment(0.4, 1e-5) / BodyShell.secondMoment(0.2, 1e-5);
    assertThat(ratio).isCloseTo(8.0, within(2e-3));
  }

  @Test
  void nonsense_is_refused_by_name() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                BodyShell.of(
                    Length.millimetres(-1), Density.kilogramsPerCubicMetre(1240), Pressure.gigapascals(2)))
        .withMessage("wall thickness must be positive, was -1 mm");
  }
}
