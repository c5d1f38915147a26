// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.examples.brief.BriefNumbers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the handout of a fuselage says of where its numbers come from is true. */
class FuselageProvenanceTest {
  private static String text(String name) throws IOException {
    return Files.readString(Path.of("briefs", name + ".json"));
  }

  private static List<Step> told(String text) {
    BodyStudy study = BodyStudy.of(FuselageBrief.from(BriefFile.parse("brief.json", text)));
    return new WorkingsChapter(study)
        .chapter().blocks().stream()
            .filter(Block.Steps.class::isInstance)
            .flatMap(block -> ((Block.Steps) block).workings().steps().stream())
            .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"hall-glider-fuselage", "survey-aeroplane", "survey-aeroplane-small-printer", "two-seat-tourer"})
  void what_is_said_to_be_given_by_the_brief_is_in_the_brief(String name) throws IOException {
    List<Step> told = told(text(name));
    assertThat(BriefNumbers.claims(told)).hasSizeGreaterThan(15);
    assertThat(new BriefNumbers(text(name)).claimedInVain(told)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"hall-glider-fuselage", "survey-aeroplane", "survey-aeroplane-small-printer", "two-seat-tourer"})
  void each_line_is_told_once_and_after_the_lines_that_it_comes_from(String name) throws IOException {
    Set<Step> before = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Step step : told(text(name))) {
      assertThat(before).containsAll(step.inputs());
      assertThat(before.add(step)).as(step.toString()).isTrue();
    }
  }
}
