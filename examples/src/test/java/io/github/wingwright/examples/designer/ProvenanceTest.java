// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.examples.brief.BriefNumbers;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the workings of the built-in design say of where their numbers come from is true. */
class ProvenanceTest {
  private static Design design;
  private static GliderBrief brief;
  private static BriefNumbers held;

  @BeforeAll
  static void design() {
    String text = ProgramRun.builtInBrief();
    brief = GliderBrief.from(BriefFile.parse("hall-glider.json", text));
    design = SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve();
    held = new BriefNumbers(text);
  }

  private static void assertThatTheBriefHolds(Collection<Step> steps) {
    assertThat(BriefNumbers.claims(steps)).isNotEmpty();
    assertThat(held.claimedInVain(steps)).isEmpty();
  }

  private static List<Step> told(Chapter chapter) {
    return chapter.blocks().stream()
        .filter(Block.Steps.class::isInstance)
        .flatMap(block -> ((Block.Steps) block).workings().steps().stream())
        .toList();
  }

  @Test
  void the_numbers_of_the_brief_are_read_as_they_stand_there() {
    assertThat(List.of(0.48, 6.2, 292.15, 100_400.0, Math.toRadians(12.0), 0.52)).allMatch(held::holds);
    assertThat(List.of(3.502, 0.8 - 1e-6)).noneMatch(held::holds);
  }

  @Test
  void what_is_said_to_be_given_by_the_brief_is_in_the_brief() {
    assertThatTheBriefHolds(design.workings().steps());
  }

  @Test
  void what_the_handouts_of_wing_and_fuselage_say_to_be_given_by_the_brief_is_in_the_brief() {
    FlownThrow thrown = new FlightChapter(design, brief).thrown();
    List<Step> fuselage = told(GliderFuselage.of(design, brief, thrown).chapter());
    List<Step> wing = told(new WingChapter(design, brief.units()).chapter());
    assertThatTheBriefHolds(fuselage);
    assertThatTheBriefHolds(wing);
    // What the design knows how to make is not given to them either.
    assertThat(fuselage).noneMatch(step -> step instanceof Step.Given && List.of("t", "F").contains(step.symbol()));
    assertThat(wing).noneMatch(step -> step instanceof Step.Given && List.of("b", "m", "ν").contains(step.symbol()));
    assertThat(wing).filteredOn(step -> step.symbol().equals("c_g")).hasSize(1);
    assertThat(wing).noneMatch(step -> List.of("c_t", "S").contains(step.symbol()));
  }

  @Test
  void no_number_that_a_step_makes_is_given_again_to_the_neutral_point() {
    List<Step> steps = design.workings().steps();
    for (String symbol : List.of("Λ_½", "A_h", "x_c", "x_cg", "C_L", "S_h", "l_h")) {
      assertThat(steps.stream().filter(step -> step.symbol().equals(symbol) && step.name().indexOf("as asked") < 0))
          .as(symbol)
          .isNotEmpty()
          .noneMatch(Step.Given.class::isInstance);
    }
    for (String name : List.of("volume of the fuselage", "mean aerodynamic chord", "aspect ratio of the tail")) {
      assertThat(steps).noneMatch(step -> step instanceof Step.Given && step.name().equals(name));
    }
  }
}
