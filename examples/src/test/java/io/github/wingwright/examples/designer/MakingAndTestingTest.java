// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.wingwright.examples.brief.BriefException;
import io.github.wingwright.examples.brief.BriefFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the folder says about printing, building and flying, and what two briefs or test flights change. */
class MakingAndTestingTest {
  @TempDir
  static Path shared;

  private static String page;
  private static String report;

  @TempDir
  Path temporary;

  @BeforeAll
  static void run() throws IOException {
    ProgramRun.of(shared);
    page = Files.readString(shared.resolve("hall-glider").resolve("BUILD.md"));
    report = Files.readString(shared.resolve("hall-glider").resolve("report.html"));
  }

  private static String flights() throws IOException {
    try (var in = DesignProgram.class.getResourceAsStream("hall-glider.flights.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String complaint(String flights) {
    try {
      FlightTests.from(BriefFile.parse("x.flights.json", flights));
    } catch (BriefException e) {
      return e.getMessage();
    }
    return "";
  }

  @Test
  void the_page_says_which_file_is_which_part_and_what_goes_into_what() throws Exception {
    try (Stream<Path> files = Files.list(shared.resolve("hall-glider").resolve("parts"))) {
      assertThat(files.map(p -> p.getFileName().toString().replace(".stl", "")).filter(n -> !n.startsWith("shim")))
          .isNotEmpty()
          .allSatisfy(name -> assertThat(page).contains(name));
    }
    assertThat(page).contains("push the tailplane into the level one").contains("The shim of 4.5° goes between the two");
    // tan 4.7° over the wing's root chord of 88.5 mm and the tailplane's of 68 mm, by hand: 7.28 and 5.59.
    assertThat(page).contains("by 7.2 mm over its root chord, or the tailplane's trailing edge by 5.6 mm over its own");
  }

  @Test
  void the_page_takes_a_newcomer_from_printing_to_trimming_in_the_numbers_of_the_design() {
    assertThat(page.lines().filter(l -> l.startsWith("## ")))
        .containsExactly(
            "## Before you begin", "## 1. Print", "## 2. Glue", "## 3. Balance", "## 4. Fly", "## 5. Trim", "## 6. Write it down");
    assertThat(page)
        .contains("68 mm behind the tip of the nose: there the leading edge of the wing's root will sit")
        .contains("under the wing at the mark, 89 mm behind the tip of the nose")
        .contains("Put 20.7 g into the nose")
        .contains("Ready to fly it should weigh 54.5 g")
        .contains("as one throws a dart")
        .doesNotContain("spring balance")
        .contains("It stalls", "to the nose", "leading edge up by")
        .contains("Never launch it towards people", "eye protection", "licensed engineers");
  }

  /**
   * By hand: a half ball and a tube of 10.16 mm inside the wall of 0.84 mm, filled until m·(89 mm − x̄) is 20.7 g·(89 − 5.5) mm, with
   * 5/8·R for the middle of the half ball: 22.69 g up to 21.7 mm at 4 g/cm³, 28.68 g up to 53.4 mm at 1.8 g/cm³.
   */
  @Test
  void ballast_that_finds_no_room_in_the_tip_weighs_more() {
    assertThat(page)
        .contains("about 22.7 g of steel nuts, up to 22 mm, or 28.7 g of modelling clay, up to 53 mm behind the tip")
        .contains("The printed body is closed all around: cut an opening into one side of the nose");
  }

  @Test
  void the_print_list_is_the_one_of_the_report() throws IOException {
    List<String> list = Files.readAllLines(shared.resolve("hall-glider").resolve("print-list.csv"));
    assertThat(list.stream().filter(line -> !line.startsWith("shim of "))).hasSize(5);
    assertThat(list.get(1)).isEqualTo(
        "half wing,2,foaming PLA,\"1 wall of 0.42 mm, infill 0 %\",8.04 g,standing on end,0 to 245 mm,none,2,"
            + "parts/wing-starboard-half.stl; parts/wing-port-half.stl,1; 1");
    assertThat(report).contains("On a smaller machine, of 180 mm × 180 mm × 180 mm: 9 pieces");
  }

  @Test
  void invented_flights_say_so_wherever_they_are_shown() {
    assertThat(report).contains("INVENTED for this demonstration", "printed parts are 2.8 % heavier than reckoned");
  }

  @Test
  void flights_are_read_from_the_file_beside_the_brief_and_only_from_there() throws IOException {
    Path brief = Files.writeString(temporary.resolve("mine.json"), ProgramRun.changed("\"name\": \"hall-glider\"", "\"name\": \"mine\""));
    assertThat(ProgramRun.of(temporary.resolve("out"), brief.toString()).status()).isZero();
    Path without = temporary.resolve("out").resolve("mine").resolve("report.html");
    assertThat(Files.readString(without)).doesNotContain("Test flights");
    Files.writeString(temporary.resolve("mine.flights.json"), flights().replace("INVENTED for this demonstration", "Flown on Monday"));
    assertThat(ProgramRun.of(temporary.resolve("out"), brief.toString()).status()).isZero();
    assertThat(Files.readString(without)).contains("Test flights", "Flown on Monday");
  }

  @Test
  void a_bad_flight_is_refused_at_its_place_and_nothing_is_written() throws IOException {
    Path brief = Files.writeString(temporary.resolve("mine.json"), ProgramRun.builtInBrief());
    Path file = temporary.resolve("mine.flights.json");
    Files.writeString(file, flights().replace("\"11.9 m\"", "\"11.9 s\""));
    ProgramRun run = ProgramRun.of(temporary.resolve("out"), brief.toString());
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).startsWith("mine.flights.json, line ").contains("column ", "flights[3].distance");
    assertThat(temporary.resolve("out")).doesNotExist();
    Files.writeString(file, flights().replace("\"part\": \"fuselage\"", "\"part\": \"canopy\""));
    assertThat(ProgramRun.of(temporary.resolve("out"), brief.toString()).err())
        .contains("weighed part must be one of [wing, fuselage,", "was canopy");
  }

  @Test
  void complaints_about_flights_say_what_is_accepted() throws IOException {
    assertThat(complaint(flights().replace("\"stalls\"", "\"flops\"")))
        .contains("seen[0]", "must be one of: stalls, dives, bounces, turns_left, turns_right, spirals, was \"flops\"");
    assertThat(complaint(flights().replace("\"time\": \"1.88 s\"", "\"tyme\": \"1.88 s\""))).contains("unknown field");
    assertThat(complaint(flights().replace("\"note\"", "\"comment\""))).contains("field \"note\" is missing");
    assertThat(complaint(flights())).isEmpty();
  }

  @Test
  void two_briefs_print_what_changed_and_why() {
    String first = ProgramRun.write(temporary, ProgramRun.builtInBrief());
    Path other = temporary.resolve("other.json");
    try {
      Files.writeString(
          other, ProgramRun.changed("\"name\": \"hall-glider\"", "\"name\": \"shorter\"", "\"480 mm\"", "\"440 mm\""));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    ProgramRun run = ProgramRun.of(temporary.resolve("out"), first, other.toString());
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out())
        .contains("Changed from hall-glider to shorter", "wing.span: 480 mm to 440 mm", "by span (given otherwise): 480 mm to 440 mm")
        .contains("  went           note on tail arm: Rounding to what can be made leaves the tail arm a little")
        .containsPattern("  Flown          launched level +14\\.\\d m to 1\\d\\.?\\d? m .*(better|worse)")
        .containsPattern("  Flown          launched at its best angle +18\\.8 m to ")
        .containsPattern("  Flight         least sink rate +0\\.654 m/s to 0\\.649 m/s");
    long better = run.out().lines().filter(line -> line.matches("  \\S.* better")).count();
    long worse = run.out().lines().filter(line -> line.matches("  \\S.*% +worse")).count();
    assertThat(better).isPositive();
    assertThat(worse).isPositive();
    assertThat(run.out()).contains("  Of these " + better + " better, " + worse + " worse");
    // Only the second one's folder is written, and its report shows both on each other.
    assertThat(ProgramRun.contents(temporary.resolve("out"))).containsExactly("shorter");
    assertThat(temporary.resolve("out").resolve("shorter").resolve("report.html"))
        .content(StandardCharsets.UTF_8)
        .contains("What changed", "nose on nose");
  }

  @Test
  void the_same_brief_twice_changes_nothing() {
    String same = ProgramRun.write(temporary, ProgramRun.builtInBrief());
    ProgramRun run = ProgramRun.of(temporary.resolve("out"), same, same);
    assertThat(run.out()).contains("Changed from hall-glider, first brief to hall-glider, second brief", "Of these 0 better, 0 worse")
        .doesNotContain("launched level");
  }

  @Test
  void what_stands_otherwise_in_a_brief_is_named_by_its_path() {
    Map<String, String> wishes =
        ComparisonChapter.wishes(
            BriefFile.parse("a", "{\"wing\": {\"span\": \"480 mm\", \"walls\": 1}, \"x\": [1, 2]}").flat(),
            BriefFile.parse("b", "{\"wing\": {\"span\": \"440 mm\", \"twist\": \"2°\"}, \"x\": [1, 3]}").flat());
    assertThat(wishes)
        .containsEntry("wing.span", "480 mm to 440 mm")
        .containsEntry("wing.twist", "new, 2°")
        .containsEntry("x[1]", "2 to 3")
        .containsEntry("wing.walls", "left out")
        .hasSize(4);
  }

  @Test
  void a_machine_is_a_box_or_a_cylinder_but_not_both() {
    String cylinder = "\"build_volume\": { \"diameter\": \"250 mm\", \"height\": \"400 mm\" }";
    String box = "\"build_volume\": { \"width\": \"256 mm\", \"depth\": \"256 mm\", \"height\": \"256 mm\" }";
    ProgramRun round = ProgramRun.of(temporary.resolve("out"), ProgramRun.write(temporary, ProgramRun.changed(box, cylinder)));
    assertThat(round.status()).as(round.err()).isZero();
    assertThat(temporary.resolve("out").resolve("hall-glider").resolve("BUILD.md")).content(StandardCharsets.UTF_8).contains("⌀ 250 mm × 400 mm");
    assertThatExceptionOfType(BriefException.class)
        .isThrownBy(() -> GliderBrief.from(BriefFile.parse("b", ProgramRun.changed(box, cylinder.replace("{ ", "{ \"width\": \"3 m\", ")))))
        .withMessageContaining("either a \"diameter\" or a \"width\"");
  }

  @Test
  void a_brief_may_bring_its_own_material() {
    String mine =
        "{ \"name\": \"my foam\", \"density\": [\"480 kg/m³\", \"500 kg/m³\", \"520 kg/m³\"], "
            + "\"elastic_modulus\": [\"0.3 GPa\", \"0.45 GPa\", \"0.9 GPa\"] }";
    GliderBrief brief = GliderBrief.from(BriefFile.parse("b", ProgramRun.changed("\"foaming PLA\"", mine)));
    assertThat(brief.brief().material().name()).isEqualTo("my foam");
    assertThat(brief.brief().material().strength()).isEmpty();
    assertThatExceptionOfType(BriefException.class)
        .isThrownBy(() -> GliderBrief.from(BriefFile.parse("b", ProgramRun.changed("\"foaming PLA\"", mine.replace("\"480 kg/m³\", ", "")))))
        .withMessageContaining("material.density")
        .withMessageContaining("must be a list of three values");
    assertThatExceptionOfType(BriefException.class)
        .isThrownBy(() -> GliderBrief.from(BriefFile.parse("b", ProgramRun.changed("\"foaming PLA\"", mine.replace("\"480", "\"580")))))
        .withMessageContaining("band must be in order");
  }
}
