// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.report.Block;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A brief that cannot be met is a result: it names who clashes, and what each would have to give up. */
class ImpossibleBriefTest {
  private static final String MACHINE = "fits into 215 mm × 215 mm × 215 mm in 4 segments";
  private static final String HOLDS = "holds the 6 things listed";
  private static final String ARM = "tail arm at least 480 mm with 45 % of the length outside it";

  @TempDir Path temporary;

  private static List<Block> advice(BodyStudy study) {
    return new Advice(study).blocks();
  }

  private static String paragraph(Block block) {
    return ((Block.Paragraph) block).text();
  }

  @Test
  void the_small_printer_gets_advice_and_not_an_error() {
    BodyStudy study = FuselageRun.study(FuselageRun.brief("survey-aeroplane-small-printer"));
    assertThat(study.region().isEmpty()).isTrue();
    List<Block> blocks = advice(study);
    assertThat(paragraph(blocks.get(0)))
        .isEqualTo(
            "The brief cannot be met as it stands. “%s”, “%s” and “%s” cannot all hold, though they could with any one of"
                + " them left out; at best they miss each other by 5.3 %%. Nothing else in the brief stands in the way.",
            MACHINE, HOLDS, ARM);
    assertThat(paragraph(blocks.get(1)))
        .isEqualTo("Any one of these ways alone is enough; the smallest step comes first:");
    Block.Table ways = (Block.Table) blocks.get(2);
    // 480 mm over 1 − 0.45 are 872.7 mm; in four pieces with three joints of 12 mm that takes pieces of 227.2 mm. Of two
    // ways that ask for the same, the one that leaves the limits alone comes first.
    assertThat(ways.rows().get(0))
        .contains("“tail arm at least 480 mm with 45 % of the length outside it” relaxed to 454.6 mm (by 5.3 %)", "826.6 mm × 88.4 mm");
    assertThat(ways.rows().get(1))
        .contains(
            "“fits into 215 mm × 215 mm × 215 mm in 4 segments” with pieces of 227.2 mm, or with 5 segments (by 5.3 %)",
            "872.7 mm × 88.4 mm");
    assertThat(ways.rows().get(2).get(1))
        .isEqualTo("“holds the 6 things listed” with contents 17.4 mm thinner (by 20 %)");
    assertThat(paragraph(blocks.get(3)))
        .startsWith("Way 1 asks the least of your wishes, 5.3 %.")
        .endsWith("best with way 3, 80.1 min, worst with way 2, 78.4 min.");
    assertThat(paragraph(blocks.get(4)))
        .contains("“" + ARM + "” is a guideline and not a limit: it may be left, at a price");
  }

  @Test
  void what_the_advice_promises_holds() {
    String five =
        FuselageRun.changed("survey-aeroplane-small-printer", "\"segments\": 4", "\"segments\": 5");
    assertThat(FuselageRun.study(five).region().isEmpty()).isFalse();
    String shorter =
        FuselageRun.changed(
            "survey-aeroplane-small-printer", "\"arm\": \"480 mm\"", "\"arm\": \"454 mm\"");
    assertThat(FuselageRun.study(shorter).region().isEmpty()).isFalse();
    String notQuite =
        FuselageRun.changed(
            "survey-aeroplane-small-printer", "\"arm\": \"480 mm\"", "\"arm\": \"455.5 mm\"");
    assertThat(FuselageRun.study(notQuite).region().isEmpty()).isTrue();
  }

  @Test
  void the_advice_is_in_the_units_of_the_brief() {
    String inches =
        FuselageRun.changed(
            "survey-aeroplane-small-printer",
            "\"length\": \"mm\"",
            "\"length\": \"in\"",
            "\"mass\": \"g\"",
            "\"mass\": \"oz\"");
    Block.Table ways = (Block.Table) advice(FuselageRun.study(inches)).get(2);
    assertThat(ways.rows().get(1).get(1)).contains("with pieces of 8.945 in, or with 5 segments");
    assertThat(ways.rows().get(0).get(1)).isEqualTo("“tail arm at least 18.9 in with 45 % of the length outside it” relaxed to 17.89 in (by 5.3 %)");
    assertThat(ways.rows().get(0).get(2)).isEqualTo("32.54 in × 3.48 in");
    assertThat(ways.rows().get(0).get(3)).endsWith(" oz");
  }

  @Test
  void the_program_ends_well_and_prints_the_clash() {
    FuselageRun run = FuselageRun.of(temporary, "survey-aeroplane-small-printer");
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("nothing is left")
        .contains("empty. ")
        .contains("cannot all hold")
        .doesNotContain("Price");
  }
}
