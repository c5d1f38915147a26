// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the workings of the built-in design say of where their numbers come from is true. */
class ProvenanceTest {
  private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])(-?\\d+(?:\\.\\d+)?)(?: ([^\",}\\]\\s]+))?");
  private static final Map<String, Double> SI =
      Map.of(
          "mm", 1e-3, "m", 1.0, "g", 1e-3, "hPa", 100.0, "m/s", 1.0, "cm³", 1e-6, "cm²", 1e-4, "N", 1.0, "MPa", 1e6);

  private static Design design;
  private static List<Double> held;

  @BeforeAll
  static void design() {
    String text = ProgramRun.builtInBrief();
    GliderBrief brief = GliderBrief.from(BriefFile.parse("hall-glider.json", text));
    design = SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve();
    held = numbers(text);
  }

  /** Every number of the brief in SI units, read without the reader that the program reads it with. */
  private static List<Double> numbers(String text) {
    List<Double> numbers = new ArrayList<>();
    Matcher number = NUMBER.matcher(text.replace("12°", "12 °"));
    while (number.find()) {
      double value = Double.parseDouble(number.group(1));
      String unit = number.group(2) == null ? "" : number.group(2);
      switch (unit) {
        case "°C" -> numbers.add(value + 273.15);
        case "°" -> numbers.add(Math.toRadians(value));
        default -> numbers.add(value * SI.getOrDefault(unit, 1.0));
      }
    }
    return numbers;
  }

  private static boolean holds(double value) {
    return held.stream().anyMatch(h -> Math.abs(h - value) <= 1e-12 * Math.abs(h));
  }

  private static void assertThatTheBriefHolds(Workings workings) {
    List<Step> claims =
        workings.steps().stream()
            .filter(Step.Given.class::isInstance)
            .filter(step -> step.source().standing() == Source.Standing.BRIEF)
            .toList();
    assertThat(claims).isNotEmpty().allMatch(step -> holds(step.value()), "value that the brief holds");
  }

  @Test
  void the_numbers_of_the_brief_are_read_as_they_stand_there() {
    assertThat(held).contains(0.48, 6.2, 292.15, 100_400.0, Math.toRadians(12.0), 0.52).doesNotContain(3.502);
    assertThat(holds(0.8 - 1e-6)).isFalse();
  }

  @Test
  void what_is_said_to_be_given_by_the_brief_is_in_the_brief() {
    assertThatTheBriefHolds(design.workings());
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
