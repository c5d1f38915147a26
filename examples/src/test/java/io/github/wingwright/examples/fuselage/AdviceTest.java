// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Impossible briefs of several sizes and units: what the advice must say, and that it is true. */
class AdviceTest {

  private static Advice advice(String name) {
    return new Advice(FuselageRun.study(FuselageRun.brief(name)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // 110 mm over the 13.88 mm that hold the contents are 7.923; 10 times 13.88 mm are 138.8 mm.
        "impossible-indoor-model | “fineness ratio 10 to 14” and “holds the 4 things listed” cannot all hold",
        "impossible-indoor-model | though they could with any one of them left out; at best they miss each other by 21 %.",
        "impossible-indoor-model | Nothing else in the brief stands in the way.",
        "impossible-indoor-model | 2. “holds the 4 things listed” with contents 2.89 mm thinner (by 21 %)",
        "impossible-indoor-model | 1. “fineness ratio 10 to 14” widened to 7.923 (by 21 %)",
        "impossible-indoor-model | 3. “length at most 110 mm in one piece” relaxed to 138.9 mm (by 26 %)",
        "impossible-indoor-model | Way 1 asks the least of your wishes, 21 %.",
        "impossible-indoor-model | best with way 2, 22.2 m, worst with way 3, 21.9 m.",
        "impossible-indoor-model | What to do next: try way 1 first. “fineness ratio 10 to 14” is a guideline and not a limit",
        // The wing 1 in thick, 0.6 radii high, asks for (1 + 2·0.04)/(1 − 0.6) in; 24 in leave 0.55·24 in of arm.
        "impossible-park-flyer | “diameter at most 2 in” and “holds the 5 things listed” cannot both hold",
        "impossible-park-flyer | “diameter at most 2 in” and “carries a wing of 1 in through” cannot both hold",
        "impossible-park-flyer | No single step is enough.",
        "impossible-park-flyer | 1. “diameter at most 2 in” relaxed to 2.7 in (by 35 %) and “tail arm at least 16 in",
        "impossible-park-flyer | relaxed to 13.2 in (by 17 %). Body 24 in × 2.7 in; endurance on 30 W·h at 25 mi/h: 76 min.",
        "impossible-park-flyer | 2. “length at most 24 in” relaxed to 29.1 in (by 21 %)",
        "impossible-park-flyer | Way 1 asks the least of your wishes, 52 % in all.",
        "impossible-park-flyer | What to do next: try way 1 first.",
        // 21 ft leave 0.57·21 ft of arm.
        "impossible-two-seater | “sees 7.2° over the nose from the seats” cannot both hold",
        "impossible-two-seater | relaxed to 4.265 ft (by 4.4 %) and “tail arm at least 12.1 ft",
        "impossible-two-seater | relaxed to 11.97 ft (by 1.1 %). Body 21 ft × 4.264 ft",
        "impossible-two-seater | 2. “length at most 21 ft” relaxed to 21.23 ft (by 1.1 %)",
      })
  void the_advice_says_who_clashes_what_ends_it_what_costs_least_and_what_to_do(String brief, String said) {
    assertThat(advice(brief).summary()).contains(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "impossible-indoor-model | [10, 14] | [7.923, 14] | |",
        "impossible-indoor-model | 110 mm | 138.9 mm | |",
        "impossible-indoor-model | \"11 mm\", \"5 mm\" | \"8.11 mm\", \"2.11 mm\" | \"10 mm\", \"3 mm\" | \"7.11 mm\", \"0.11 mm\"",
        "impossible-park-flyer | \"2 in\" } | \"2.7 in\" } | 16 in | 13.2 in",
        "impossible-park-flyer | \"2 in\" } | \"2.7 in\" } | 24 in | 29.1 in",
        "impossible-two-seater | 49 in | 4.265 ft | 12.1 ft | 11.97 ft",
        "impossible-two-seater | 49 in | 4.276 ft | 21 ft | 21.23 ft",
      })
  void what_the_advice_asks_for_is_enough(
      String brief, String one, String relaxed, String other, String otherRelaxed) {
    String changed =
        other == null
            ? FuselageRun.changed(brief, one, relaxed)
            : FuselageRun.changed(brief, one, relaxed, other, otherRelaxed);
    BodyStudy study = FuselageRun.study(changed);
    assertThat(study.region().isEmpty()).isFalse();
    assertThat(study.region().lengths().isEmpty()).isFalse();
    assertThat(new Advice(study).lines()).isEmpty();
    assertThat(new Advice(study).blocks()).isEmpty();
  }

  @Test
  void one_step_of_several_that_belong_together_is_not_enough() {
    assertThat(FuselageRun.study(FuselageRun.changed("impossible-park-flyer", "16 in", "13.2 in")).region().isEmpty())
        .isTrue();
    assertThat(FuselageRun.study(FuselageRun.changed("impossible-two-seater", "49 in", "4.265 ft")).region().isEmpty())
        .isTrue();
  }

  @Test
  void in_feet_what_is_smaller_than_a_foot_is_told_in_inches() {
    String small =
        FuselageRun.changed(
            "impossible-park-flyer", "\"length\": \"in\"", "\"length\": \"ft\"", "\"arm\": \"16 in\"", "\"arm\": \"13 in\"");
    List<String> lines = new Advice(FuselageRun.study(small)).lines();
    assertThat(String.join(" ", lines))
        .contains("“diameter at most 2 in” relaxed to 2.7 in (by 35 %). Body ")
        .contains("ft × 2.7 in;")
        .doesNotContain("0.225 ft");
  }
}
