// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.Length;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;

/** The fuselages that come with the program, each from its brief to its report. */
class FuselageProgramTest {
  private static final List<String> FILES =
      List.of("drag.svg", "region.svg", "report.html", "side-view.svg");

  @TempDir Path temporary;

  static Stream<String> builtIn() {
    return FuselageProgram.BUILT_IN.stream();
  }

  private static void assertWellFormed(Path file) throws Exception {
    String text = Files.readString(file).replaceFirst("<!DOCTYPE html>", "");
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(text)));
  }

  @ParameterizedTest
  @MethodSource("builtIn")
  void a_built_in_brief_ends_in_a_short_sheet_and_a_folder(String name) throws Exception {
    Path designs = temporary.resolve("designs");
    FuselageRun run = FuselageRun.of(designs, name);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out().lines().count()).isLessThanOrEqualTo(45);
    assertThat(run.out().lines().map(String::length)).allMatch(l -> l <= 140);
    try (Stream<Path> made = Files.list(designs)) {
      assertThat(made.map(p -> p.getFileName().toString())).containsExactly(name);
    }
    try (Stream<Path> files = Files.list(designs.resolve(name))) {
      assertThat(files.map(p -> p.getFileName().toString()).sorted())
          .containsExactlyElementsOf(Stream.concat(Stream.of(".written"), FILES.stream()).toList());
    }
    for (String file : FILES) {
      assertWellFormed(designs.resolve(name).resolve(file));
    }
    String report = Files.readString(designs.resolve(name).resolve("report.html"));
    assertThat(report).containsIgnoringCase("invented for this demonstration");
    assertThat(report.contains("are for licensed practice, by the rules of the country"))
        .isEqualTo(name.contains("tourer"));
  }

  @Test
  void the_built_in_briefs_are_those_of_the_folder() throws IOException {
    for (String name : FuselageProgram.BUILT_IN) {
      Path file = Path.of("briefs", name + ".json");
      assertThat(Files.readString(file)).isEqualTo(FuselageRun.brief(name));
      assertThat(FuselageRun.brief(name)).containsIgnoringCase("invented for this demonstration");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"hall-glider-fuselage", "survey-aeroplane", "two-seat-tourer"})
  void the_choice_keeps_every_limit_and_its_numbers_are_those_of_their_workings(String name) {
    BodyStudy study = FuselageRun.study(FuselageRun.brief(name));
    double length = study.body().length().si();
    double diameter = study.body().diameter().si();
    assertThat(study.region().isEmpty()).isFalse();
    for (Weighed one : study.region().considerations()) {
      if (one.binds() && one.isLimit()) {
        assertThat(one.consideration().margin(length, diameter))
            .as(one.consideration().name())
            .isNotNegative();
      }
    }
    assertThat(study.findings()).noneMatch(f -> f.severity() == Severity.SERIOUS);
    double drag = study.dragAreaOf(study.body());
    assertThat(study.dragArea().value()).isCloseTo(drag, within(1e-9 * drag));
    assertThat(study.figure().value())
        .isCloseTo(study.figureOf(study.body()), within(1e-9 * study.figure().value()));
  }

  @Test
  void the_survey_aeroplane_holds_its_contents_and_balances_as_the_table_says() {
    BodyStudy study = FuselageRun.study(FuselageRun.brief("survey-aeroplane"));
    var placing = study.placing().orElseThrow();
    assertThat(placing.places()).hasSize(6);
    double moment = 0.0;
    double mass = 0.0;
    for (var place : placing.places()) {
      mass += place.thing().mass().si();
      moment +=
          place.thing().mass().si() * (place.front().si() + 0.5 * place.thing().length().si());
    }
    assertThat(placing.centreOfGravity().si()).isCloseTo(moment / mass, within(1e-12));
    // Contents and the 1250 g at 48 % of 900 mm must lie ahead of 40 %.
    double all = (moment + 1.25 * 0.48 * 0.9) / (mass + 1.25);
    assertThat(all).isLessThan(0.40 * 0.9);
  }

  @Test
  void the_pilot_of_the_tourer_sees_the_angle_of_the_handbook() {
    BodyStudy study = FuselageRun.study(FuselageRun.brief("two-seat-tourer"));
    // 3° of approach and 0.07° for each of 60 kt (restated from Raymer, eq. 9.1).
    assertThat(study.brief().asked().overNose().orElseThrow().degrees())
        .isCloseTo(7.2, within(1e-9));
    // No point of the contour ahead of the windscreen lies above the line of sight.
    var eye = new FuselagePictures(study).eye().orElseThrow();
    double windscreen = eye[0].si() - study.brief().pilot().orElseThrow().windscreenAhead().si();
    for (int i = 0; i <= 1_000; i++) {
      double x = windscreen * i / 1_000;
      var station = Length.metres(x);
      double top =
          study.body().centreHeightAt(station).si() + 0.5 * study.body().heightAt(station).si();
      double sight = eye[1].si() - Math.tan(Math.toRadians(7.2)) * (eye[0].si() - x);
      assertThat(top).isLessThanOrEqualTo(sight + 1e-6);
    }
  }

  @Test
  void the_same_brief_gives_the_same_bytes() throws IOException {
    Path one = temporary.resolve("one");
    Path two = temporary.resolve("two");
    FuselageRun.of(one, "hall-glider-fuselage");
    FuselageRun.of(two, "hall-glider-fuselage");
    for (String file : FILES) {
      assertThat(Files.readString(one.resolve("hall-glider-fuselage").resolve(file)))
          .isEqualTo(Files.readString(two.resolve("hall-glider-fuselage").resolve(file)));
    }
  }

  @Test
  void a_step_of_every_kind_is_in_the_workings_of_the_tourer() {
    BodyStudy study = FuselageRun.study(FuselageRun.brief("two-seat-tourer"));
    List<String> names =
        Workings.of(List.of(study.dragArea(), study.figure())).steps().stream()
            .map(Step::name)
            .toList();
    assertThat(names)
        .containsAll(
            Arrays.asList(
                "drag area of the upsweep",
                "drag area of the base behind a thick layer",
                "level speed"));
  }
}
