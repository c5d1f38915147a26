// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Entry;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.testing.FormulaCheck;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every number on the sheet has its workings, and a reader with an evaluator of their own gets the same numbers. */
class DesignWorkingsTest {
  private static final int PRINTED_DIGITS = 5;

  private static GliderBrief brief;
  private static Design design;

  @BeforeAll
  static void design() {
    brief = GliderBrief.from(BriefFile.parse("hall-glider.json", ProgramRun.builtInBrief()));
    design = SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve();
  }

  private static Stream<Step.Evaluated> formulas() {
    return design.workings().steps().stream().filter(Step.Evaluated.class::isInstance).map(Step.Evaluated.class::cast);
  }

  /** The inputs as the workings print them: "formula with b = 0.48 m, S = 0.0372 m²". */
  private static double[] printedInputs(Step.Evaluated step) {
    String line = Workings.explain(step);
    assertThat(line).startsWith(step.formula().text());
    String[] inputs = line.substring(step.formula().text().length()).replaceFirst("^ with ", "").split(", ");
    assertThat(inputs).hasSize(step.formula().inputs().size());
    double[] values = new double[inputs.length];
    for (int i = 0; i < inputs.length; i++) {
      String symbol = step.formula().inputs().get(i).symbol();
      assertThat(inputs[i]).startsWith(symbol + " = ");
      values[i] = number(inputs[i].substring(symbol.length() + 3));
    }
    return values;
  }

  private static double number(String printed) {
    return Double.parseDouble(printed.split(" ")[0]);
  }

  @TestFactory
  Stream<DynamicTest> the_printed_inputs_in_the_printed_formula_give_the_printed_result() {
    return formulas().map(step -> DynamicTest.dynamicTest(step.toString(), () -> {
      double read = FormulaCheck.valueOfText(step.formula(), printedInputs(step));
      double printed = number(Workings.result(step));
      assertThat(NamedUnit.NUMBER.format(read, PRINTED_DIGITS))
          .isEqualTo(NamedUnit.NUMBER.format(printed, PRINTED_DIGITS));
    }));
  }

  @TestFactory
  Stream<DynamicTest> the_printed_formula_of_the_full_inputs_gives_the_full_result() {
    return formulas().map(step -> DynamicTest.dynamicTest(step.toString(), () -> {
      double[] inputs = step.inputs().stream().mapToDouble(Step::value).toArray();
      double size = Math.max(Math.abs(step.value()), 1e-300);
      // Evaluator and library order their operations differently; where terms nearly cancel that costs some digits.
      assertThat(FormulaCheck.valueOfText(step.formula(), inputs)).isCloseTo(step.value(), within(1e-11 * size));
    }));
  }

  @TestFactory
  Stream<DynamicTest> the_printed_terms_of_a_sum_give_the_printed_sum() {
    return design.workings().steps().stream()
        .filter(Step.Sum.class::isInstance)
        .map(step -> DynamicTest.dynamicTest(step.toString(), () -> {
          double total = Arrays.stream(Workings.explain(step).split(" \\+ "))
              .mapToDouble(Double::parseDouble)
              .sum();
          assertThat(NamedUnit.NUMBER.format(total, PRINTED_DIGITS))
              .isEqualTo(NamedUnit.NUMBER.format(number(Workings.result(step)), PRINTED_DIGITS));
        }));
  }

  @Test
  void there_is_a_formula_for_most_numbers() {
    assertThat(formulas().count()).isGreaterThan(60);
  }

  @Test
  void every_number_on_the_sheet_is_a_step_of_the_workings() {
    List<Step> steps = design.workings().steps();
    for (List<Entry> group : new DesignSheet(design, brief.units()).groups().values()) {
      for (Entry entry : group) {
        assertThat(steps).as(entry.label()).anyMatch(step -> step == entry.step());
      }
    }
  }

  @Test
  void every_number_leads_back_to_given_values_of_a_named_source() {
    for (Step step : Workings.of(List.copyOf(design.numbers().values())).steps()) {
      assertThat(step.source().cite()).as(step.toString()).isNotBlank();
      // A solution may come from considerations alone; a formula and a sum come from other steps.
      assertThat(step.inputs().isEmpty() && (step instanceof Step.Evaluated || step instanceof Step.Sum))
          .as(step.toString())
          .isFalse();
    }
  }

  @Test
  void no_formula_is_applied_twice_to_the_same_steps_and_no_value_given_twice() {
    List<List<?>> lines = design.workings().steps().stream()
        .filter(step -> step instanceof Step.Given || step instanceof Step.Evaluated)
        .map(step -> step instanceof Step.Evaluated evaluated
            ? List.of(step.name(), step.symbol(), evaluated.formula().text(), step.inputs())
            : List.of(step))
        .<List<?>>map(line -> line)
        .toList();
    assertThat(lines).doesNotHaveDuplicates();
  }
}
