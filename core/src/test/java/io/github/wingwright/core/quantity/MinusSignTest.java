// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MinusSignTest {
  @ParameterizedTest
  @CsvSource({
    "-2.5°, −2.5°",
    "from -0.0245 to -.5 m, from −0.0245 to −.5 m",
    "(-3), (−3)",
    "2·-3e-05 m, 2·−3e−05 m",
    "3-14, 3-14",
    "2026-11-25, 2026-11-25",
    "table 6-2 and eq. 16-137, table 6-2 and eq. 16-137",
    "third-angle F3K-2 part-3, third-angle F3K-2 part-3",
    "one - two, one - two",
    "no sign, no sign"
  })
  void onlyAHyphenThatStandsForAMinusIsSet(String text, String set) {
    assertThat(MinusSign.in(text)).isEqualTo(set);
    assertThat(MinusSign.in(set)).isEqualTo(set);
  }

  @Test
  void theParserReadsWhatIsSet() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 200; i++) {
      Length length =
          Length.metres(random.nextDouble(-1.0, 1.0) * Math.pow(10.0, random.nextInt(-12, 12)));
      assertThat(Length.parse(MinusSign.in(length.toExactText()))).isEqualTo(length);
    }
  }
}
