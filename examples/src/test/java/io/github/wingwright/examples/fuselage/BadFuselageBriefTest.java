// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A malformed brief gets one clear message with its place and what is accepted, and leaves nothing behind. */
class BadFuselageBriefTest {
  @TempDir Path temporary;

  /** A fault, the brief that has it, and what the message must contain. */
  record Bad(String fault, String brief, String... says) {
    @Override
    public String toString() {
      return fault;
    }
  }

  private static Bad survey(String fault, String from, String to, String... says) {
    return new Bad(fault, FuselageRun.changed("survey-aeroplane", from, to), says);
  }

  private static Bad tourer(String fault, String from, String to, String... says) {
    return new Bad(fault, FuselageRun.changed("two-seat-tourer", from, to), says);
  }

  static Stream<Bad> briefs() {
    return Stream.of(
        survey(
            "a wall that meets itself",
            "\"material\": \"PETG\", \"wall\": \"1.2 mm\"",
            "\"material\": \"PETG\", \"wall\": \"46 mm\"",
            "choice.diameter",
            "must be more than twice the wall of 46 mm, was 92 mm"),
        survey(
            "a thing of no form",
            "\"sphere\": \"82 mm\"",
            "\"ball\": \"82 mm\"",
            "contents.things[4]",
            "needs one of box, cylinder, sphere, cabin",
            "has none"),
        survey(
            "a thing of two forms",
            "\"sphere\": \"82 mm\"",
            "\"sphere\": \"82 mm\", \"box\": [\"1 mm\", \"1 mm\", \"1 mm\"]",
            "contents.things[4]",
            "[box, sphere]"),
        survey(
            "a box of two sides",
            "[\"62 mm\", \"34 mm\", \"16 mm\"]",
            "[\"62 mm\", \"34 mm\"]",
            "contents.things[1].box",
            "a list of 3: length, width and height, had 2"),
        survey(
            "a box of negative height",
            "\"34 mm\", \"16 mm\"",
            "\"34 mm\", \"-16 mm\"",
            "line 17, column 63",
            "contents.things[1].box[2]",
            "-16 mm"),
        survey(
            "two things of one name",
            "\"name\": \"autopilot\"",
            "\"name\": \"battery\"",
            "contents.things[3]",
            "a name of its own",
            "\"battery\""),
        survey(
            "an unknown consideration",
            "\"tail_arm\"",
            "\"tail_leg\"",
            "considerations.tail_leg",
            "unknown field",
            "tail_arm"),
        survey(
            "an unknown unit to show",
            "\"length\": \"mm\"",
            "\"length\": \"furlong\"",
            "units.length",
            "furlong",
            "mm"),
        survey(
            "a fineness of both kinds",
            "\"context\": \"subsonic_practice\"",
            "\"context\": \"subsonic_practice\", \"range\": [3, 9]",
            "considerations.fineness",
            "either a \"range\" or a \"context\""),
        survey(
            "an unknown context",
            "\"subsonic_practice\"",
            "\"gliding\"",
            "considerations.fineness.context",
            "fixed_volume",
            "gliding"),
        survey(
            "set aside and provisional",
            "\"arm\": \"480 mm\"",
            "\"set_aside_because\": \"a\", \"provisional_until\": \"b\", \"arm\": \"480 mm\"",
            "considerations.tail_arm",
            "not both"),
        survey(
            "a strength that does not bind",
            "\"arm\": \"480 mm\"",
            "\"strength\": \"target\", \"arm\": \"480 mm\"",
            "considerations.tail_arm.strength",
            "limit or guideline"),
        survey(
            "a tail ahead of the wing",
            "\"held_at\": 0.42, \"tail_at\": 0.97",
            "\"held_at\": 0.97, \"tail_at\": 0.42",
            "considerations.tail_load",
            "ahead of the tail"),
        survey(
            "an unknown form factor",
            "\"hoerner\"",
            "\"best\"",
            "flow.form_factor",
            "torenbeek",
            "best"),
        survey(
            "a nose that is cut off",
            "\"nose\": \"half_ellipsoid\"",
            "\"nose\": \"boat_tail\"",
            "shape.nose",
            "a point or a round tip"),
        survey("an unknown material", "\"PETG\"", "\"cheese\"", "shell.material", "PLA", "cheese"),
        survey(
            "a choice of nothing",
            "{ \"length\": \"900 mm\", \"diameter\": \"92 mm\" }",
            "{ \"length\": \"900 mm\" }",
            "field \"choice\"",
            "neither"),
        survey(
            "a choice of both",
            "\"diameter\": \"92 mm\"",
            "\"diameter\": \"92 mm\", \"by\": \"smallest\"",
            "field \"choice\"",
            "both"),
        survey(
            "an unknown figure",
            "\"endurance\"",
            "\"beauty\"",
            "judged_by.figure",
            "glide_distance",
            "beauty"),
        survey("NaN", "\"15 m/s\"", "\"NaN m/s\"", "flight.speed", "NaN"),
        survey("no data statement", "\"data\"", "\"date\"", "\"data\" is missing"),
        survey(
            "neither pressure nor altitude",
            "\"altitude\": \"300 m\", ",
            "",
            "field \"flight\"",
            "neither"),
        tourer(
            "a pilot without a seat",
            "\"sits_in\": \"seats\"",
            "\"sits_in\": \"throne\"",
            "considerations.vision",
            "throne"),
        tourer(
            "a pilot who sits in the luggage",
            "\"sits_in\": \"seats\"",
            "\"sits_in\": \"luggage\"",
            "considerations.vision",
            "must sit in a cabin",
            "luggage"),
        tourer(
            "half a row",
            "\"rows\": 1",
            "\"rows\": 1.5",
            "contents.things[2].cabin.rows",
            "whole number",
            "1.5"),
        tourer(
            "truth that is none",
            "\"carries_people\": true",
            "\"carries_people\": \"yes\"",
            "\"carries_people\"",
            "true or false",
            "\"yes\""),
        tourer(
            "stations that run forward",
            "\"x\": \"2.05 m\"",
            "\"x\": \"0.05 m\"",
            "field \"shape\"",
            "stations must run aft"),
        tourer(
            "wheels behind the tail",
            "\"wheels_at\": 0.405",
            "\"wheels_at\": 1.4",
            "undercarriage.wheels_at",
            "1.4"),
        new Bad(
            "a length without bounds",
            FuselageRun.changed(
                "hall-glider-fuselage",
                "\"longest_part\": { \"length\": \"256 mm\" },",
                "",
                "{ \"length\": \"256 mm\", \"diameter\": \"22 mm\" }",
                "{ \"by\": \"smallest\" }",
                "\"nose_impact\": { \"mass\": \"51 g\", \"speed\": \"6.5 m/s\", \"stroke\": \"8"
                    + " mm\", \"wall_strength\": \"3 MPa\" },",
                ""),
            "field \"considerations\": no fuselage follows",
            "fixed or bounded",
            "longest_part"),
        survey(
            "nearest to no target",
            "{ \"length\": \"900 mm\", \"diameter\": \"92 mm\" }",
            "{ \"by\": \"nearest_to_targets\" }",
            "line 42, column 21, field \"choice.by\": no fuselage follows",
            "needs a target",
            "wing_thickness"),
        survey(
            "a body stouter than its family",
            "{ \"length\": \"900 mm\", \"diameter\": \"92 mm\" }",
            "{ \"length\": \"20 mm\", \"diameter\": \"92 mm\" }",
            "field \"choice.length\": no fuselage follows",
            "at least 478.4 mm",
            "was 20 mm"),
        survey(
            "a unit of another kind",
            "\"mass\": \"520 g\"",
            "\"mass\": \"3 mm\"",
            "field \"contents.things[2].mass\": mass must be",
            "\"mm\" is a unit of length, not of mass",
            "kg, g"));
  }

  @ParameterizedTest
  @MethodSource("briefs")
  void a_bad_brief_gets_one_clear_message(Bad bad) {
    Path designs = temporary.resolve("designs");
    FuselageRun run = FuselageRun.of(designs, FuselageRun.write(temporary, bad.brief()));
    assertThat(run.status()).as(run.out() + run.err()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).as(run.err()).hasSize(1);
    assertThat(run.err()).contains("brief.json, line ").contains(", column ").contains(bad.says());
    assertThat(run.err()).doesNotContain("Exception", "java.");
    assertThat(Files.exists(designs)).isFalse();
  }

  @Test
  void a_name_that_is_not_built_in_hears_those_that_are() {
    FuselageRun run = FuselageRun.of(temporary, "submarine");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("submarine", "survey-aeroplane", "two-seat-tourer");
  }

  @Test
  void two_arguments_are_one_too_many() {
    assertThat(FuselageRun.of(temporary, "a", "b").err()).contains("at most one argument");
  }
}
