// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hall glider on an elastic: its sheet, report and page for builders speak of the elastic and of no hand. */
class LaunchWordsTest {
  @TempDir
  static Path folder;

  private static ProgramRun run;
  private static String page;
  private static String report;

  @BeforeAll
  static void run() throws IOException {
    String brief =
        ProgramRun.changed(
            "\"launch\": { \"speed\": \"7 m/s\", \"height\": \"1.5 m\" }",
            "\"launch\": { \"elastic\": { \"pull\": \"7 N\", \"stretch\": \"0.6 m\", \"mass\": \"4 g\","
                + " \"glider_mass\": \"52 g\" }, \"height\": \"1.5 m\" }");
    run = ProgramRun.of(folder, ProgramRun.write(folder, brief));
    page = Files.readString(folder.resolve("hall-glider").resolve("BUILD.md"));
    report = Files.readString(folder.resolve("hall-glider").resolve("report.html")).replace('\u00a0', ' ');
  }

  private static List<String> fly() {
    return page.lines().dropWhile(l -> !l.equals("## 4. Fly")).takeWhile(l -> !l.equals("## 5. Trim")).toList();
  }

  @Test
  void sheet_and_report_name_the_elastic() {
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("launch speed off the elastic", "Elastic launch   flies for this elastic", "best angle to let it go")
        .doesNotContain("thrower", "best for a hand");
    assertThat(report).contains("by an elastic, drawn back 600 mm to 7 N: 7.26 m/s from 1.5 m");
  }

  /** Everywhere the speed is that of the glider as it came out; nothing is said of a throw, which no elastic is. */
  @Test
  void the_report_knows_no_throw_and_one_speed() {
    String text = report.replaceAll("<style.*?</style>", "").replaceAll("<[^>]+>", "\n");
    assertThat(text.lines().filter(l -> l.matches(".*\\b([Tt]hrow(?! away)|[Tt]hrown|thrower)\\b.*"))).isEmpty();
    assertThat(text)
        .contains("Leaving the elastic at 7.26 m/s, this glider carries", "flies for this elastic: launch 7.26 m/s")
        .contains("Distance of a level launch")
        .contains("launch speed off the elastic");
    assertThat(run.out()).contains("launch speed off the elastic      7.26 m/s", "level at 7.26 m/s: ");
  }

  /** By hand: V = x/X·√(2·0.7·2.1 J/(54.5 g + 4 g/3)); 7 N over 54.5 g · g is 13.1; hook a diameter behind the tip. */
  @Test
  void the_page_says_how_far_to_draw_it_back_and_how_hard_it_pulls() {
    assertThat(Math.sqrt(2 * 0.7 * 2.1 / (0.0545 + 0.004 / 3))).isBetween(7.255, 7.265);
    assertThat(String.join("\n", fly()))
        .contains("draws it back 600 mm: there it pulls with 7 N, 13 times the glider's weight")
        .contains("leaves it at 7.26 m/s")
        .contains("Begin with 54", "leaves at 6.6 m/s, for which it is trimmed")
        .contains("drawn back less than 45")
        .contains("eye protection", "22 mm behind the tip", "open to the rear", "14 N, twice what it must bear")
        .doesNotContain("dart", "thrower", "Throw it");
  }

  /** The brief tells no efficiency: page and workings say where the usual one is from, and not that it is the brief's. */
  @Test
  void the_efficiency_that_nobody_told_is_common_practice() {
    String text = report.replaceAll("<[^>]+>", " ").replaceAll("\\s+", " ");
    assertThat(text).containsPattern("0\\.7 part of the energy that reaches the glider = given: common practice, no source");
    assertThat(text).containsPattern("0\\.004 kg mass of the elastic = given: the brief");
    assertThat(page).contains("at 7.26 m/s, if 70 % of the energy reaches it (common practice, no source");
  }

  /** The statement's wing is that of closed ends, by formula and by mesh (held to each other where the parts are made). */
  @Test
  void the_page_closes_the_ends_that_the_masses_count() {
    assertThat(page).contains("its two ends closed by layers that are together as thick as the wall").doesNotContain("no top and bottom layers");
  }
}
