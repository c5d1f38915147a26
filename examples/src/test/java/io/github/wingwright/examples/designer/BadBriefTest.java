// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A bad brief gives one clear message with its place and what is accepted, exit status 2, and leaves nothing behind. */
class BadBriefTest {
  @TempDir
  Path temporary;

  /** A fault, the brief that has it, and what the message must contain. */
  record Bad(String fault, String brief, String... says) {
    @Override
    public String toString() {
      return fault;
    }
  }

  private static Bad changed(String fault, String from, String to, String... says) {
    return new Bad(fault, ProgramRun.changed(from, to), says);
  }

  static Stream<Bad> briefs() {
    return Stream.of(
        changed("unknown field", "\"taper_ratio\": 0.75", "\"tapper_ratio\": 0.75", "line 15, column 11", "\"taper_ratio\" is missing", "tapper_ratio"),
        changed("unknown field beside the known ones", "\"walls\": 1,", "\"walls\": 1, \"colour\": \"red\",", "line 21, column 27", "\"wing.colour\"", "unknown field", "accepted here are", "taper_ratio"),
        changed("tails too thick for the body", "\"thickness\": \"0.84 mm\"", "\"thickness\": \"50 mm\"", "\"tails.thickness\"", "at most a third of the body's diameter of 22 mm", "was 50 mm"),
        changed("a loading that nothing printed reaches", "\"span\": \"480 mm\",", "\"loading\": \"1.36 kg/m²\",", "\"wing.loading\"", "every glider tried came out heavier", "1.37 kg/m²", "rounds a wing made for"),
        changed("unknown field at the top", "\"material\"", "\"wings\": 2, \"material\"", "\"wings\"", "unknown field", "conditions"),
        changed("missing field", "\"section\": \"4406\",", "", "field \"wing\"", "\"section\" is missing"),
        changed("missing object", "\"balance\": { \"static_margin\": 0.15 },", "", "\"balance\" is missing"),
        changed("unknown unit", "\"480 mm\"", "\"480 mn\"", "line 16, column 13", "\"wing.span\"", "480 mn", "mm", "in"),
        changed("wrong dimension", "\"480 mm\"", "\"480 g\"", "\"wing.span\"", "480 g", "mm"),
        changed("no unit", "\"480 mm\"", "\"480\"", "\"wing.span\"", "480", "mm"),
        changed("a number for a quantity", "\"480 mm\"", "480", "\"wing.span\"", "as text with a unit", "480"),
        changed("a quantity for a number", "\"aspect_ratio\": 6.2", "\"aspect_ratio\": \"6.2\"", "\"wing.aspect_ratio\"", "plain number", "\"6.2\""),
        changed("negative length", "\"480 mm\"", "\"-480 mm\"", "\"wing.span\"", "-480 mm", "50 mm to 20 m"),
        changed("negative coefficient", "\"volume_coefficient\": 0.52", "\"volume_coefficient\": -0.52", "\"tails.horizontal.volume_coefficient\"", "-0.52", "0.001"),
        changed("absurd length", "\"480 mm\"", "\"480 km\"", "\"wing.span\"", "480 km", "20 m"),
        changed("absurd speed", "\"7 m/s\"", "\"650 m/s\"", "\"launch.speed\"", "40 m/s", "650 m/s"),
        changed("absurd margin", "\"static_margin\": 0.15", "\"static_margin\": 15", "\"balance.static_margin\"", "0.6", "15"),
        changed("colder than space", "\"19 °C\"", "\"-300 °C\"", "\"conditions.temperature\"", "-300"),
        changed("NaN as text", "\"480 mm\"", "\"NaN mm\"", "\"wing.span\"", "NaN"),
        changed("infinity as text", "\"480 mm\"", "\"Infinity mm\"", "\"wing.span\"", "Infinity"),
        changed("NaN as a number", "\"aspect_ratio\": 6.2", "\"aspect_ratio\": NaN", "line 17, column 24", "not JSON", "NaN"),
        changed("a number beyond all numbers", "\"aspect_ratio\": 6.2", "\"aspect_ratio\": 1e999", "\"wing.aspect_ratio\"", "finite"),
        changed("contradictory wing", "\"aspect_ratio\": 6.2,", "\"aspect_ratio\": 6.2, \"area\": \"900 cm²\",", "field \"wing\"", "span", "area", "aspect ratio"),
        changed("wing of too little", "\"aspect_ratio\": 6.2,", "", "field \"wing\"", "aspect ratio"),
        changed("both pressure and altitude", "\"pressure\"", "\"altitude\": \"200 m\", \"pressure\"", "\"conditions\"", "either", "both"),
        changed("neither pressure nor altitude", ", \"pressure\": \"1004 hPa\"", "", "\"conditions\"", "either", "neither"),
        changed("unknown section", "\"4406\"", "\"44X6\"", "\"wing.section\"", "44X6"),
        changed("unknown material", "\"foaming PLA\"", "\"unobtainium\"", "\"material\"", "foaming PLA", "unobtainium"),
        changed("unknown figure of merit", "\"distance\"", "\"beauty\"", "\"figure_of_merit\"", "distance", "beauty"),
        changed("unknown shape", "\"capsule\"", "\"pear\"", "\"fuselage.shape\"", "capsule", "pear"),
        changed("a range of three", "[6, 10]", "[6, 8, 10]", "\"fuselage.fineness_range\"", "two numbers"),
        changed("a range upside down", "[6, 10]", "[10, 6]", "\"fuselage.fineness_range[1]\"", "6"),
        changed("a number for a list", "[6, 10]", "8", "\"fuselage.fineness_range\"", "a list in brackets", "8"),
        changed("text for an object", "{ \"static_margin\": 0.15 }", "\"0.15\"", "\"balance\"", "an object in braces"),
        changed("a list for text", "\"name\": \"hall-glider\"", "\"name\": [\"hall-glider\"]", "\"name\"", "must be text", "a list"),
        changed("true for a number", "\"infill\": 0", "\"infill\": true", "\"wing.infill\"", "plain number", "true"),
        changed("half a wall", "\"walls\": 1,", "\"walls\": 1.5,", "\"wing.walls\"", "whole number", "1.5"),
        changed("null", "\"walls\": 1,", "\"walls\": null,", "\"wing.walls\"", "null"),
        changed("set aside and provisional", "\"packing_fraction\": 0.7,", "\"packing_fraction\": 0.7, \"provisional_until\": \"May\",", "\"fuselage.contents\"", "not both"),
        changed("a name that climbs out", "\"hall-glider\"", "\"../hall-glider\"", "\"name\"", "letters", "../hall-glider"),
        changed("an absolute name", "\"hall-glider\"", "\"/tmp/x\"", "\"name\"", "letters"),
        changed("a hidden name", "\"hall-glider\"", "\".hidden\"", "\"name\"", "letters"),
        changed("a name with a line break", "\"hall-glider\"", "\"hall\\nglider\"", "\"name\"", "letters"),
        changed("a name without letters", "\"hall-glider\"", "\" \"", "\"name\"", "empty text"),
        changed("duplicate field", "\"walls\": 1,", "\"walls\": 1, \"walls\": 2,", "line 21", "not JSON", "walls"),
        changed("trailing comma", "\"infill\": 0,", "\"infill\": 0,,", "not JSON", "line 22"),
        changed("tails that do not fit", "\"longest_straight_part\": \"256 mm\"", "\"longest_straight_part\": \"110 mm\"", "line 38, column 12, field \"tails\": no design satisfies this brief", "machine.longest_straight_part"),
        changed("a length too short for the tails", "\"diameter\": \"22 mm\"", "\"diameter\": \"22 mm\", \"length\": \"150 mm\"", "field \"fuselage.length\": no design satisfies this brief", "the fuselage must be longer"),
        changed("a tail too small to trim", "\"volume_coefficient\": 0.52", "\"volume_coefficient\": 0.01", "field \"balance.static_margin\": no design"),
        changed(
            "a brick ahead of the nose",
            "\"mass\": \"1.2 g\", \"at\": \"2 mm\"",
            "\"mass\": \"500 g\", \"at\": \"-100 mm\"",
            "field \"carried[0].mass\": no design satisfies this brief", "the tail would have to stand at -47°", "too far forward"),
        new Bad("trailing text", ProgramRun.builtInBrief() + "{}", "nothing may follow", "line"),
        new Bad("truncated", ProgramRun.builtInBrief().substring(0, 400), "not JSON", "line"),
        new Bad("not JSON", "span: 480 mm\n", "not JSON", "line 1"),
        new Bad("a list", "[]", "JSON object"),
        new Bad("empty", "", "JSON object"),
        new Bad("an empty object", "{}", "\"name\" is missing"),
        new Bad("too large", "{\"name\": \"" + "x".repeat(1_000_001) + "\"}", "at most 1 MB"),
        new Bad("too deep", "{\"a\":".repeat(5_000) + "1" + "}".repeat(5_000), "nested deeper"),
        new Bad("deep lists", "{\"a\":" + "[".repeat(900) + "]".repeat(900) + "}", "nested deeper"),
        new Bad("a number of thousands of digits", ProgramRun.changed("\"aspect_ratio\": 6.2", "\"aspect_ratio\": 6." + "2".repeat(5_000)), "line 17"),
        new Bad("a text without end", ProgramRun.changed("\"480 mm\"", "\"" + "4".repeat(100_000) + " mm\""), "\"wing.span\"", "with a unit", "mm"),
        new Bad("a word without end", ProgramRun.changed("\"distance\"", "\"" + "d".repeat(100_000) + "\""), "\"figure_of_merit\"", "distance"),
        new Bad("text that turns its direction", ProgramRun.changed("\"480 mm\"", "\"480 \\u202emm\""), "\"wing.span\""),
        new Bad("a control character in a message", ProgramRun.changed("\"480 mm\"", "\"480 \\u001b[31mmm\""), "\"wing.span\""));
  }

  private static void refused(ProgramRun run, Path designs) {
    assertThat(run.status()).as(run.out() + run.err()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).as(run.err()).hasSize(1);
    assertThat(run.err()).doesNotContain("Exception", "java.", "com.fasterxml", "Feature", "Stream", "[Source").endsWith(System.lineSeparator());
    assertThat(run.err().strip().chars()).as(run.err()).noneMatch(c -> c < ' ' || c == 0x202e);
    assertThat(run.err().length()).as(run.err()).isLessThan(1_000);
    assertThat(ProgramRun.contents(designs)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("briefs")
  void a_bad_brief_gets_one_clear_message(Bad bad) {
    Path designs = temporary.resolve("designs");
    ProgramRun run = ProgramRun.of(designs, ProgramRun.write(temporary, bad.brief()));
    refused(run, designs);
    assertThat(run.err()).contains("brief.json").contains(bad.says());
  }

  @Test
  void a_file_that_is_not_there() {
    Path designs = temporary.resolve("designs");
    ProgramRun run = ProgramRun.of(designs, temporary.resolve("nowhere.json").toString());
    refused(run, designs);
    assertThat(run.err()).contains("nowhere.json", "no such file", "path of a brief");
  }

  @Test
  void a_folder_for_a_file() {
    Path designs = temporary.resolve("designs");
    ProgramRun run = ProgramRun.of(designs, temporary.toString());
    refused(run, designs);
    assertThat(run.err()).contains(temporary.toString());
  }

  @Test
  void a_path_that_is_none() {
    Path designs = temporary.resolve("designs");
    refused(ProgramRun.of(designs, "bad\0path"), designs);
  }

  @Test
  void three_arguments() {
    Path designs = temporary.resolve("designs");
    ProgramRun run = ProgramRun.of(designs, "one.json", "two.json", "three.json");
    refused(run, designs);
    assertThat(run.err()).contains("at most two arguments", "3");
  }

  @Test
  void bytes_that_are_no_utf_8() throws IOException {
    Path designs = temporary.resolve("designs");
    Path file = Files.write(temporary.resolve("brief.json"), "{\"name\": \"é\"}".getBytes(StandardCharsets.ISO_8859_1));
    ProgramRun run = ProgramRun.of(designs, file.toString());
    refused(run, designs);
    assertThat(run.err()).contains("UTF-8");
  }
}
