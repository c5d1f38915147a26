// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class OverlaidViewsTest {
  private static final Airframe GLIDER = SampleAirframes.glider();

  private static Svg draw(Airframe before, Airframe after) {
    return OverlaidViews.draw(before, after, "first <one>", "second", Length.MILLIMETRE);
  }

  @Test
  void both_are_named_and_the_sheet_is_legible_for_any_pair() throws Exception {
    for (long seed = 1; seed <= 12; seed++) {
      Svg picture = draw(SampleAirframes.random(seed), SampleAirframes.random(seed + 100));
      List<String> words = PictureChecks.isLegible(picture, "pair " + seed).words();
      assertThat(words).contains("first <one>", "second");
    }
  }

  @Test
  void the_first_is_dashed_and_the_second_is_not() {
    String svg = draw(GLIDER, GLIDER).document();
    // Of each airframe: body in three views, wing and two tails in four, four and three outlines.
    assertThat(svg.split("stroke-dasharray=\"2.2 1.1\"", -1)).hasSize(1 + 3 + 4 + 4 + 3 + 1);
  }

  @Test
  void it_is_drawn_in_the_same_way_every_time() {
    PictureChecks.isStable(() -> draw(GLIDER, SampleAirframes.random(7)));
  }
}
