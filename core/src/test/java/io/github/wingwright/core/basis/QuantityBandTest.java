// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import org.junit.jupiter.api.Test;

class QuantityBandTest {
  private static final QuantityBand<Speed> STALL = QuantityBand.of(new Band(5.2, 5.51, 5.9), Speed::metresPerSecond);

  @Test
  void the_documented_text_has_units() {
    assertThat(STALL).hasToString("5.51 m/s (5.2 m/s to 5.9 m/s)");
    assertThat(STALL.format(Speed.KILOMETRE_PER_HOUR, 3)).isEqualTo("18.7 to 21.2 km/h");
    assertThat(QuantityBand.exactly(Mass.grams(12))).hasToString("12 g");
  }

  @Test
  void numbers_go_in_and_out_unchanged() {
    assertThat(STALL.si()).isEqualTo(new Band(5.2, 5.51, 5.9));
    assertThat(STALL.isExact()).isFalse();
    assertThat(QuantityBand.exactly(Mass.grams(12)).isExact()).isTrue();
  }

  @Test
  void values_out_of_order_are_refused_with_their_unit() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new QuantityBand<>(Mass.grams(9), Mass.grams(8), Mass.grams(10)))
        .withMessage("band must be in order low ≤ likely ≤ high, was 9 g, 8 g, 10 g");
  }
}
