// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.Seeded;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class GoldenSectionTest {
  @Test
  void a_kink_is_found_to_the_last_digits_wherever_it_is() {
    Seeded.doubles(1953, 200, -3.0, 8.0)
        .forEach(kink ->
            assertThat(GoldenSection.greatest(x -> -Math.abs(x - kink), -3.0, 8.0, 90)).isCloseTo(kink, within(1e-14)));
  }

  /** A smooth peak is flat: its place is known to the root of a rounding error only, its value to all digits. */
  @Test
  void it_agrees_with_brents_method_on_smooth_peaks() {
    Seeded.doubles(1954, 100, 0.2, 2.9)
        .forEach(peak -> {
          double place = GoldenSection.greatest(x -> Math.cos(x - peak), 0.0, 3.0, 60);
          Minimum brent = Minimum.within(x -> -Math.cos(x - peak), 0.0, 3.0, Tolerance.relative(1e-9));
          assertThat(place).isCloseTo(brent.argument(), within(1e-7));
          assertThat(Math.cos(place - peak)).isCloseTo(-brent.value(), within(1e-15));
        });
  }

  /** Each section leaves 0.618034 of the interval and costs one evaluation. */
  @Test
  void what_only_rises_is_greatest_at_its_end_short_by_the_last_section() {
    double golden = 0.6180339887498949;
    for (int sections = 0; sections <= 30; sections++) {
      AtomicInteger asked = new AtomicInteger();
      double place =
          GoldenSection.greatest(
              x -> {
                asked.incrementAndGet();
                return x;
              },
              1.0,
              2.0,
              sections);
      assertThat(2.0 - place).isCloseTo(Math.pow(golden, sections) * (1.0 - golden), within(1e-12));
      assertThat(asked).hasValue(sections + 2);
    }
  }

  @Test
  void an_interval_of_one_point_is_that_point_and_none_is_refused() {
    assertThat(GoldenSection.greatest(x -> x, 2.0, 2.0, 40)).isEqualTo(2.0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> GoldenSection.greatest(x -> x, 3.0, 2.0, 40))
        .withMessage("interval must be finite and not empty, was 3.0 to 2.0");
    assertThatIllegalArgumentException().isThrownBy(() -> GoldenSection.greatest(x -> x, Double.NaN, 2.0, 40));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> GoldenSection.greatest(x -> x, 1.0, 2.0, -1))
        .withMessage("sections must not be negative, were -1");
  }
}
