// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every number in the table of margins is worked out in the handout. */
class MarginTableTest {
  private static final Pattern PERCENT = Pattern.compile("(kept by|missed by|off by) (\\S+) %");
  private static final Pattern WANTED = Pattern.compile("would like ([^,]+)");

  @ParameterizedTest
  @ValueSource(strings = {"survey-aeroplane", "survey-aeroplane-small-printer", "two-seat-tourer", "hall-glider-fuselage"})
  void each_number_of_the_table_is_reproduced_by_a_step_of_the_handout(String brief) {
    BodyStudy study = FuselageRun.study(FuselageRun.brief(brief));
    List<Block> handout = new WorkingsChapter(study).chapter().blocks();
    Block.Table table =
        new ConsiderationChapter(study)
            .chapter().blocks().stream()
                .filter(Block.Table.class::isInstance)
                .map(Block.Table.class::cast)
                .findFirst()
                .orElseThrow();
    int column = table.header().size() - 2;
    assertThat(table.header().get(column)).startsWith("margin of");
    int numbers = 0;
    for (List<String> row : table.rows()) {
      String standing = row.get(column);
      Matcher percent = PERCENT.matcher(standing);
      if (percent.find()) {
        List<Step> steps = stepsUnder(handout, row.get(0) + ": " + standing + ".");
        double margin = steps.get(steps.size() - 1).value();
        assertThat(margin >= 0.0).as(row.get(0)).isEqualTo(standing.startsWith("kept"));
        assertThat(NamedUnit.NUMBER.format(100.0 * Math.abs(margin), 2)).as(row.get(0)).isEqualTo(percent.group(2));
        numbers++;
        Matcher wanted = WANTED.matcher(standing);
        if (wanted.find()) {
          assertThat(steps)
              .as(standing)
              .anyMatch(s -> s.symbol().equals("d_0") && shown(study, s.value()).equals(wanted.group(1)));
        }
      }
    }
    assertThat(numbers).isGreaterThanOrEqualTo(3);
  }

  @Test
  void a_rule_tells_what_the_body_comes_to_and_no_other_way_out() {
    List<String> rules =
        new ConsiderationChapter(FuselageRun.study(FuselageRun.brief("survey-aeroplane")))
            .chapter().blocks().stream()
                .filter(Block.Points.class::isInstance)
                .flatMap(b -> ((Block.Points) b).points().stream())
                .toList();
    // Four pieces of a body of 900 mm that overlap by 12 mm: (900 + 3·12)/4.
    assertThat(rules.get(0)).startsWith("fits into").endsWith("This body: pieces of 234 mm");
  }

  private static String shown(BodyStudy study, double metres) {
    return study.brief().units().show(Length.metres(metres));
  }

  /** The workings that follow a line of the handout. */
  private static List<Step> stepsUnder(List<Block> handout, String line) {
    int at = handout.indexOf(new Block.Paragraph(line));
    assertThat(at).as("the handout has the line " + line).isNotNegative();
    return ((Block.Steps) handout.get(at + 1)).workings().steps();
  }
}
