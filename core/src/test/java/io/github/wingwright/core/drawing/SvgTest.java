// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SvgTest {
  @Test
  void coordinatesAreRoundedToAHundredthOfAMillimetre() {
    assertThat(Svg.number(1.0)).isEqualTo("1");
    assertThat(Svg.number(-0.004)).isEqualTo("0");
    assertThat(Svg.number(1234567.891)).isEqualTo("1234567.89");
    assertThat(Svg.number(1e-9)).isEqualTo("0");
  }

  @Test
  void aCoordinateThatIsNotFiniteIsRefused() {
    Svg svg = new Svg(10.0, 10.0, "picture");
    assertThatThrownBy(() -> svg.line(0.0, Double.NaN, 1.0, 1.0, Pen.THIN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("coordinate must be finite, was NaN");
  }

  @Test
  void aPictureWithoutSizeIsRefused() {
    assertThatThrownBy(() -> new Svg(0.0, 10.0, "picture")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Svg(10.0, Double.NaN, "picture")).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void textIsEscapedAndReadsBackAsItWas() throws Exception {
    Svg svg = new Svg(200.0, 20.0, "<title> & \"more\"");
    svg.text(10.0, 10.0, "a < b && c > \"d\" <tspan/> \uD83D\uDE80", Lettering.start(3.0));
    svg.upwardText(5.0, 18.0, "up & away", Lettering.start(3.0));
    SvgReader reader = new SvgReader(svg);
    assertThat(reader.title()).isEqualTo("<title> & \"more\"");
    assertThat(reader.words()).containsExactly("a < b && c > \"d\" <tspan/> \uD83D\uDE80", "up & away");
  }

  @Test
  void charactersThatNoDocumentMayHoldAreReplaced() {
    assertThat(Svg.escape("a\u0000b\u001Bc\uD800d\uFFFF")).isEqualTo("a\uFFFDb\uFFFDc\uFFFDd\uFFFD");
  }

  @Test
  void theCheckOfLegibilitySeesTextUponTextAndPointsOffTheSheet() {
    Svg crowded = new Svg(100.0, 20.0, "crowded");
    crowded.text(10.0, 10.0, "one text", Lettering.start(3.5));
    crowded.text(20.0, 11.0, "upon another", Lettering.start(3.5));
    assertThatThrownBy(() -> PictureChecks.isLegible(crowded, "crowded")).isInstanceOf(AssertionError.class);
    Svg outside = new Svg(100.0, 20.0, "outside");
    outside.line(0.0, 0.0, 100.1, 5.0, Pen.THIN);
    assertThatThrownBy(() -> PictureChecks.isLegible(outside, "outside")).isInstanceOf(AssertionError.class);
  }
}
