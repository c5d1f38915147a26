// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class GroundEffectTest {

  @Test
  void nothing_is_left_on_the_ground_and_all_of_it_far_above() {
    assertThat(GroundEffect.handbook(0.0)).isZero();
    assertThat(GroundEffect.handbook(1e6)).isCloseTo(1.0, within(1e-9));
    assertThat(GroundEffect.handbook(Math.pow(33.0, -2.0 / 3.0))).isCloseTo(0.5, within(1e-15));
  }

  @Test
  void examples_of_the_page_hold() {
    assertThat(GroundEffect.handbook(0.24 / 0.48)).isCloseTo(0.921056, within(5e-7));
    assertThat(GroundEffect.handbook(4.0 / 33.0)).isCloseTo(0.582048, within(5e-7));
    assertThat(GroundEffect.image(0.1)).isCloseTo(0.515084, within(5e-7));
    assertThat(GroundEffect.handbook(0.05) / image(0.05)).isCloseTo(0.8, within(0.02));
    assertThat(GroundEffect.handbook(0.2) / image(0.2)).isCloseTo(1.05, within(0.01));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.035, 0.05, 0.1, 0.15, 0.2, 0.25})
  void the_image_is_the_mirrored_elliptic_wing_of_the_far_wake(double height) {
    assertThat(GroundEffect.image(height)).isCloseTo(image(height), within(2e-3));
  }

  /**
   * The energy of two elliptic wakes in wave numbers: the transform of the loading is J₁(t)/t, the self energy ∫ J₁²/t = ½,
   * and over a gap G a wave fades by exp(−2·t·G/b), here with G = 2·h.
   */
  private static double image(double height) {
    double end = 12.0 / height;
    int steps = (int) (end / 0.02);
    double sum = 0.0;
    for (int i = 0; i < steps; i++) {
      double t = (i + 0.5) * end / steps;
      double j = besselOne(t);
      sum += j * j / t * Math.exp(-4.0 * height * t);
    }
    return 1.0 - 2.0 * sum * end / steps;
  }

  /** J₁ by its integral; the trapezoidal rule on a period is exact once it has more points than the argument. */
  private static double besselOne(double t) {
    int n = 64 + (int) (2.0 * t);
    double sum = 0.0;
    for (int i = 0; i < n; i++) {
      double a = 2.0 * Math.PI * i / n;
      sum += Math.cos(a - t * Math.sin(a));
    }
    return sum / n;
  }

  @ParameterizedTest
  @MethodSource("heights")
  void agrees_with_published_values(PublishedValues.Row row) {
    double height = row.number("height");
    double share = row.text("method").equals("image") ? GroundEffect.image(height) : GroundEffect.handbook(height);
    assertThat(share).as(row.toString()).isCloseTo(row.number("share"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> heights() {
    return PublishedValues.beside(GroundEffectTest.class, "ground-effect.csv").rows();
  }
}
