// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.FrictionModel;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.report.Report;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FlightDrag;
import io.github.wingwright.core.sizing.FuselageSizing;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FuselageChapterTest {
  private static final FlightCondition FLIGHT =
      FlightCondition.of(Atmosphere.standard().at(Length.ZERO), Speed.metresPerSecond(6.5));

  private static final FlightDrag DRAG =
      new FlightDrag(FLIGHT, FrictionModel.laminar(), BodyFormFactor.HOERNER_LAMINAR);

  @TempDir Path folder;

  private static FuselageSizing tube() {
    return FuselageSizing.of(BodyShape.capsule())
        .madeOf(BodyShell.of(Materials.PLA, Length.millimetres(0.8)))
        .considering(Considerations.lengthAtMost(Length.millimetres(300)))
        .considering(Considerations.finenessWithin(6, 10))
        .considering(Considerations.diameterNear(2.5, Length.millimetres(5)));
  }

  private static Chapter chapter(FuselageSizing sizing, Sized<Fuselage> choice) {
    return FuselageChapter.of(sizing, choice, DRAG)
        .partOf(Area.squareCentimetres(20), "best glide")
        .chapter();
  }

  private static String text(Chapter chapter) {
    return new Report("a tube", "", List.of(chapter)).toMarkdown();
  }

  @Test
  void the_report_of_the_hall_glider_has_region_price_curves_methods_share_and_workings()
      throws Exception {
    ProgramRun.of(folder);
    String report = Files.readString(folder.resolve("hall-glider").resolve("report.html"));
    assertThat(report)
        .contains(
            "Length and diameter of the fuselage",
            "the best inside: ",
            "Drag and diameter",
            "Drag and fineness ratio")
        .contains("The price of the choice", "distance", "bending stiffness", "shell mass")
        .contains(
            "How well friction and form of the body are known",
            "Torenbeek",
            "Jenkinson",
            "Hoerner, laminar")
        .contains("of the drag of the aircraft at best glide", "The workings of the choice");
    assertThat(folder.resolve("hall-glider").resolve("fuselage-region.svg")).exists();
  }

  @Test
  void a_choice_inside_says_who_binds_and_a_choice_outside_by_how_much_it_misses() {
    String inside = text(chapter(tube(), tube().nearestToTargets()));
    assertThat(inside)
        .contains(
            "The diameter may be 30 to 50 mm. A thinner body is refused by \"fineness ratio 6 to 10\"");
    assertThat(inside).contains("would like 12.5 mm");
    // 300 mm over 25 mm is 12, which misses 10 by a fifth.
    assertThat(text(chapter(tube(), tube().diameter(Length.millimetres(25)))))
        .contains("| missed by 20 % |");
  }

  @Test
  void the_share_of_the_body_is_that_of_a_hand_calculation() {
    Sized<Fuselage> choice = tube().diameter(Length.millimetres(30));
    // Friction 1.328/√Re on π·d·L, times Hoerner's laminar form at f = 10, over 20 cm².
    double re = 6.5 * 0.3 / FLIGHT.air().kinematicViscosity().si();
    double cf = 1.328 / Math.sqrt(re);
    double form = 1 + Math.pow(10, -1.5) + 0.11 / (100 * cf);
    double share = cf * form * Math.PI * 0.03 * 0.3 / 20e-4;
    String text = text(chapter(tube(), choice));
    int at = text.indexOf("The body is ") + 12;
    assertThat(Double.parseDouble(text.substring(at, text.indexOf(' ', at))))
        .isCloseTo(100 * share, within(0.06));
  }

  @Test
  void the_workings_hold_the_drag_once_and_none_of_them_a_line_twice() {
    Chapter chapter = chapter(tube(), tube().nearestToTargets());
    List<List<Step>> workings =
        chapter.blocks().stream()
            .filter(Block.Steps.class::isInstance)
            .map(block -> ((Block.Steps) block).workings().steps())
            .toList();
    assertThat(workings.stream().flatMap(List::stream).filter(s -> s.name().equals("drag area of fuselage"))).hasSize(1);
    assertThat(workings).allSatisfy(steps -> assertThat(steps).extracting(Step::name).doesNotHaveDuplicates());
  }

  @Test
  void an_impossible_brief_gets_a_chapter_of_advice() {
    FuselageSizing impossible =
        tube().considering(Considerations.diameterAtLeast(Length.millimetres(60)));
    String text = text(chapter(impossible, impossible.nearestToTargets()));
    assertThat(text)
        .contains("Enough alone would be", "There is no body inside all considerations");
  }

  @Test
  void other_units_are_used_throughout() {
    Chapter chapter =
        FuselageChapter.of(
                tube().showing(Length.INCH), tube().showing(Length.INCH).nearestToTargets(), DRAG)
            .showing(Length.INCH, Area.SQUARE_INCH)
            .chapter();
    assertThat(text(chapter))
        .contains("11.81 in × 1.181 in", " in²")
        .doesNotContain("cm² by the method");
  }
}
