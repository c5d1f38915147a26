// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.MarginWords;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.quantity.Length;
import org.junit.jupiter.api.Test;

class MarginWordsTest {
  private static final Consideration LONG_ENOUGH = Considerations.lengthAtLeast(Length.millimetres(200.0));
  private static final Consideration NEAR = Considerations.diameterNear(2.5, Length.millimetres(5.0));

  private static String at(Consideration consideration, double length, double diameter) {
    return MarginWords.of(new Weighed(consideration, Decision.chosen()), length, diameter);
  }

  @Test
  void what_is_kept_and_what_is_missed_is_told_as_a_part_of_what_is_asked() {
    assertThat(at(LONG_ENOUGH, 0.25, 0.02)).isEqualTo("kept by 25 %");
    assertThat(at(LONG_ENOUGH, 0.16, 0.02)).isEqualTo("missed by 20 %");
    assertThat(at(LONG_ENOUGH, 0.6, 0.02)).isEqualTo("kept by 200 %");
    assertThat(at(LONG_ENOUGH, 3.0, 0.02)).isEqualTo("kept amply");
  }

  @Test
  void only_rounding_is_at_the_edge() {
    assertThat(at(LONG_ENOUGH, 0.2, 0.02)).isEqualTo("at the edge");
    assertThat(at(LONG_ENOUGH, 0.2 * (1.0 + 4e-7), 0.02)).isEqualTo("at the edge");
    assertThat(at(LONG_ENOUGH, 0.2 * (1.0 - 4e-7), 0.02)).isEqualTo("at the edge");
    assertThat(at(LONG_ENOUGH, 0.2 * (1.0 + 4e-4), 0.02)).isEqualTo("kept by 0.04 %");
    assertThat(at(LONG_ENOUGH, 0.2 * (1.0 - 4e-4), 0.02)).isEqualTo("missed by 0.04 %");
  }

  @Test
  void a_target_tells_how_far_off_it_is_and_what_it_would_like() {
    assertThat(at(NEAR, 0.3, 0.0125)).isEqualTo("met");
    assertThat(at(NEAR, 0.3, 0.015)).isEqualTo("off by 20 %, would like 12.5 mm");
    assertThat(MarginWords.of(new Weighed(NEAR, Decision.chosen()), 0.3, 0.015, Length.INCH))
        .isEqualTo("off by 20 %, would like 0.4921 in");
  }

  @Test
  void what_was_decided_is_told_too() {
    assertThat(MarginWords.of(new Weighed(LONG_ENOUGH, Decision.notApplicable("it is short")), 0.16, 0.02))
        .isEqualTo("set aside because it is short");
    assertThat(MarginWords.of(new Weighed(LONG_ENOUGH, Decision.provisional("it is weighed")), 0.25, 0.02))
        .isEqualTo("kept by 25 %, provisional until it is weighed");
  }

  @Test
  void a_margin_alone_is_worded_as_that_of_a_bound() {
    assertThat(MarginWords.ofBound(0.25)).isEqualTo("kept by 25 %");
    assertThat(MarginWords.ofBound(-0.2)).isEqualTo("missed by 20 %");
    assertThat(MarginWords.ofBound(1e-9)).isEqualTo("at the edge");
    assertThat(MarginWords.ofBound(40.0)).isEqualTo("kept amply");
  }
}
