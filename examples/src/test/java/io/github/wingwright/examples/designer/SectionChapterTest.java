// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SectionChapterTest {
  @TempDir Path folder;

  @Test
  void the_report_sets_three_sections_and_a_plate_beside_each_other() throws Exception {
    ProgramRun.of(folder);
    String report = Files.readString(folder.resolve("hall-glider").resolve("report.html"));
    assertThat(report).contains("Section in the air", "NACA 4406", "NACA 2406", "NACA 4404", "plate data", "boundary layers");
    String table = report.substring(report.indexOf("flown level"));
    assertThat(table.substring(0, table.indexOf("</table>")).replaceAll("<[^>]+>", " ").replaceAll("[\\s\u00a0]+", " "))
        .as("the sheet's own number for the chosen section")
        .containsPattern("NACA 4406 [^N]* 14\\.6 m ")
        .containsPattern("NACA 2406 [^N]* \\d+\\.?\\d* m ")
        .containsPattern("NACA 4404 [^N]* \\d+\\.?\\d* m ");
  }

  @Test
  void a_brief_may_ask_for_the_computed_polar() throws Exception {
    String brief = ProgramRun.changed("\"section\": \"4406\"", "\"section\": \"4406\", \"polar\": \"computed\"");
    ProgramRun run = ProgramRun.of(folder, ProgramRun.write(folder, brief));
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("best lift to drag");
  }

  @Test
  void an_unknown_polar_is_refused_with_what_is_accepted() {
    String brief = ProgramRun.changed("\"section\": \"4406\"", "\"section\": \"4406\", \"polar\": \"guessed\"");
    ProgramRun run = ProgramRun.of(folder, ProgramRun.write(folder, brief));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("wing.polar", "estimated", "computed", "guessed");
  }
}
