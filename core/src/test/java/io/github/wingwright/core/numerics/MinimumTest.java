// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import io.github.wingwright.core.ConvergenceException;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.Seeded;
import org.junit.jupiter.api.Test;

class MinimumTest {
  private static final Tolerance FINE = Tolerance.relative(1e-8);

  @Test
  void the_documented_example_holds() {
    Minimum least = Minimum.within(x -> (x - 3) * (x - 3), 0, 10, FINE);
    assertThat(least.argument()).isCloseTo(3, within(1e-7));
    assertThat(least.value()).isCloseTo(0, within(1e-14));
  }

  @Test
  void the_minimum_of_a_over_x_plus_x_is_at_the_root_of_a() {
    Seeded.logUniform(21, 100, 1e-4, 1e4).forEach(a -> {
      Minimum least = Minimum.within(x -> a / x + x, 1e-3, 1e3, FINE);
      assertThat(least.argument()).isCloseTo(Math.sqrt(a), within(1e-6 * Math.sqrt(a)));
      assertThat(least.value()).isCloseTo(2 * Math.sqrt(a), within(1e-12 * Math.sqrt(a)));
    });
  }

  @Test
  void a_minimum_at_an_end_is_that_end_exactly() {
    assertThat(Minimum.within(x -> x, -1, 2, FINE)).isEqualTo(new Minimum(-1, -1));
    assertThat(Minimum.within(x -> -x, -1, 2, FINE)).isEqualTo(new Minimum(2, -2));
  }

  @Test
  void the_least_of_several_dips_is_found() {
    // dips near -1 and 1; the tilt makes the left one the lower: x³ − x + 0.025 = 0
    Minimum least = Minimum.amongSeveral(x -> Math.pow(x * x - 1, 2) / 4 + 0.025 * x, -2, 2, 20, FINE);
    double exact = Roots.find(x -> x * x * x - x + 0.025, -1.2, -0.9, Tolerance.relative(1e-14));
    assertThat(least.argument()).isCloseTo(exact, within(1e-7));
  }

  @Test
  void a_scan_sees_the_ends_too() {
    assertThat(Minimum.amongSeveral(Math::sin, 0, 4.5, 10, FINE)).isEqualTo(new Minimum(4.5, Math.sin(4.5)));
    assertThat(Minimum.amongSeveral(x -> 1, 0, 1, 4, FINE)).isEqualTo(new Minimum(0, 1));
  }

  @Test
  void what_is_not_finite_ends_the_search() {
    assertThatExceptionOfType(ConvergenceException.class)
        .isThrownBy(() -> Minimum.within(Math::log, 0, 1, FINE))
        .withMessageContaining("function is -Infinity at 0.0");
    assertThatIllegalArgumentException().isThrownBy(() -> Minimum.within(x -> x, 1, 1, FINE))
        .withMessageContaining("was 1.0 to 1.0");
    assertThatIllegalArgumentException().isThrownBy(() -> Minimum.amongSeveral(x -> x, 0, 1, 1, FINE))
        .withMessage("scan must have at least 2 steps, was 1");
  }
}
