// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.examples.brief.BriefFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FlightChapterTest {
  private static final String HALL = " \"hall\": { \"length\": \"45 m\", \"height\": \"7 m\" },";

  @TempDir Path folder;

  private String report(String... changes) throws Exception {
    ProgramRun run = ProgramRun.of(folder, ProgramRun.write(folder, ProgramRun.changed(changes)));
    assertThat(run.err()).isEmpty();
    assertThat(folder.resolve("hall-glider/flight.svg")).isNotEmptyFile();
    return Files.readString(folder.resolve("hall-glider/report.html"));
  }

  private static GliderBrief brief(String... changes) {
    return GliderBrief.from(BriefFile.parse("brief.json", ProgramRun.changed(changes)));
  }

  @Test
  void the_throw_of_the_brief_stands_beside_the_steady_glide_of_the_sheet() throws Exception {
    assertThat(report())
        .contains(
            "The flight down the hall", "in a hall 45 m long and 7 m high", "steady glide, as on the sheet",
            "point that holds the lift of best glide", "with pitch, decalage", "lands on the floor", "The best throw at this speed",
            "the throw of the brief", "Distance of a level throw", "stalls", "dives", "turns over", "ceiling");
  }

  @Test
  void thrown_hard_it_stalls_or_hits_the_ceiling_and_the_report_says_what_to_do() throws Exception {
    assertThat(report("\"speed\": \"7 m/s\"", "\"speed\": \"10 m/s\"")).contains("Launch it slower or lower");
    assertThat(report("\"speed\": \"7 m/s\"", "\"speed\": \"16 m/s\"")).contains("hits the ceiling");
    assertThat(Files.readString(folder.resolve("hall-glider/flight.svg"))).contains("in 0.");
  }

  @Test
  void who_wants_to_stay_up_reads_of_time() throws Exception {
    assertThat(report("\"figure_of_merit\": \"distance\"", "\"figure_of_merit\": \"duration\"")).contains("Time of a level throw");
  }

  @Test
  void a_brief_need_not_name_a_hall_and_may_name_a_ceiling_alone() throws Exception {
    assertThat(brief(HALL, "").hall()).isEqualTo(Hall.OUTDOORS);
    assertThat(brief("\"length\": \"45 m\", ", "").hall()).isEqualTo(Hall.OUTDOORS.withCeiling(Length.metres(7)));
    assertThat(report(HALL, "")).contains("in a field without walls and ceiling");
  }

  @Test
  void from_high_up_the_glide_matters_not_the_throw() throws Exception {
    assertThat(report(HALL, "", "\"height\": \"1.5 m\"", "\"height\": \"60 m\""))
        .contains("the throw matters little")
        .doesNotContain("The best throw at this speed");
  }

  @Test
  void feet_and_inches_are_kept() throws Exception {
    String text = report("\"480 mm\"", "\"19 in\"", "\"1.5 m\"", "\"5 ft\"", "\"7 m/s\"", "\"23 ft/s\"");
    assertThat(text).contains("distance from the launch in ft", "throw speed in ft/s");
  }

  @Test
  void a_hall_that_is_lower_than_the_hand_or_has_other_fields_is_refused_with_its_place() {
    ProgramRun low =
        ProgramRun.of(folder, ProgramRun.write(folder, ProgramRun.changed("\"height\": \"7 m\"", "\"height\": \"1.2 m\"")));
    assertThat(low.status()).isEqualTo(2);
    assertThat(low.err()).contains("field \"hall\"", "must be higher than the hand at launch, 1.5 m, was 1.2 m high");
    ProgramRun wide =
        ProgramRun.of(folder, ProgramRun.write(folder, ProgramRun.changed("\"length\": \"45 m\"", "\"width\": \"20 m\"")));
    assertThat(wide.err()).contains("hall.width", "unknown field");
  }

  @Test
  void a_throw_that_does_not_fly_tells_no_distance_on_sheet_report_page_and_picture() throws Exception {
    ProgramRun run =
        ProgramRun.of(folder, ProgramRun.write(folder, ProgramRun.changed("\"speed\": \"7 m/s\"", "\"speed\": \"4 m/s\"")));
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("no: does not fly for this thrower").doesNotContain("distance of the steady glide", "level at");
    String chapter = Files.readString(folder.resolve("hall-glider/report.html"));
    assertThat(chapter).contains("stalls below").doesNotContain("distance flown", "steady glide, as on the sheet", "The best throw at this speed");
    assertThat(Files.readString(folder.resolve("hall-glider/BUILD.md"))).contains("so no distance is told").doesNotContain("goes some");
    assertThat(Files.readString(folder.resolve("hall-glider/flight.svg"))).doesNotContain(" m in ");
  }
}
