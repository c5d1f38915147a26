// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.testing.Seeded;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class WorkingsTest {
  private static final Pattern NUMBER = Pattern.compile("(?<== )[-+0-9.e]+");

  private static Formula formula(String text, Kernel.Of2 kernel) {
    return Formula.named("test").gives("y").as(text)
        .where("a", "first", -1e9, 1e9).where("b", "second", -1e9, 1e9).computedBy(kernel);
  }

  private static Step number(String symbol, double value) {
    return Step.given(symbol, symbol, value, Source.BRIEF);
  }

  @Test
  void each_step_stands_once_and_after_its_inputs() {
    Formula sum = formula("a + b", Double::sum);
    Step a = number("a", 1);
    Step b = Step.of(sum, a, a);
    Step c = Step.of(sum, a, b);
    Step d = Step.of(sum, c, b);
    List<Step> steps = Workings.of(List.of(d, c, d)).steps();
    assertThat(steps).containsExactly(a, b, c, d);
    for (Step step : steps) {
      assertThat(steps.subList(0, steps.indexOf(step))).containsAll(step.inputs());
    }
    assertThat(d.value()).isEqualTo(5);
  }

  @Test
  void deep_workings_with_shared_steps_stay_short() {
    Formula mean = formula("(a + b)/2", (a, b) -> (a + b) / 2);
    Step step = number("a", 1);
    for (int i = 0; i < 200; i++) {
      step = Step.of(mean, step, step);
    }
    assertThat(Workings.of(List.of(step)).steps()).hasSize(201);
  }

  @Test
  void the_printed_inputs_give_the_printed_result() {
    List<Formula> formulas = List.of(
        formula("a·b", (a, b) -> a * b),
        formula("a − b", (a, b) -> a - b),
        formula("a^9/b", (a, b) -> Math.pow(a, 9) / b),
        formula("exp(a) − exp(b)", (a, b) -> Math.exp(a) - Math.exp(b)),
        formula("√(a² + b²)", (a, b) -> Math.sqrt(a * a + b * b)));
    Seeded.points(51, 400, new double[] {0.5, 3}, new double[] {0.5, 3}).forEach(point -> {
      // close together for every third point, so that differences cancel
      double b = point[0] * 7 % 3 < 1 ? point[0] * (1 + 1e-6 * point[1]) : point[1];
      for (Formula formula : formulas) {
        Step step = Step.of(formula, number("a", point[0]), number("b", b));
        double[] printed = NUMBER.matcher(Workings.explain(step)).results()
            .map(MatchResult::group).mapToDouble(Double::parseDouble).toArray();
        assertThat(printed).hasSize(2);
        assertThat(NamedUnit.NUMBER.format(formula.evaluate(printed), 5))
            .as(Workings.explain(step))
            .isEqualTo(Workings.result(step));
      }
    });
  }

  @Test
  void the_printed_terms_add_up_to_the_printed_sum() {
    Seeded.points(52, 300, new double[] {1e-4, 0.1}, new double[] {1e-4, 0.1}, new double[] {1e-4, 0.1})
        .forEach(point -> {
          Step sum = Step.sum("mass", "m", Arrays.stream(point)
              .mapToObj(m -> Step.given("part", "m_i", Mass.kilograms(m), Source.BRIEF)).toList());
          double printed = Arrays.stream(Workings.explain(sum).split(" \\+ ")).mapToDouble(Double::parseDouble).sum();
          assertThat(NamedUnit.NUMBER.format(printed, 5) + " kg").isEqualTo(Workings.result(sum));
        });
  }

  @Test
  void as_text_each_number_has_its_origin() {
    Workings workings = Workings.of(List.of(Step.of(StepTest.DYNAMIC_PRESSURE, StepTest.RHO, StepTest.V)));
    assertThat(workings).hasToString(String.join("\n",
        "ρ = 1.225 kg/m³  air density",
        "    = given: the brief",
        "V = 6 m/s  airspeed",
        "    = given: the brief",
        "q = 22.05 Pa  dynamic pressure",
        "    = ½·ρ·V² with ρ = 1.225 kg/m³, V = 6 m/s"));
    assertThat(workings.findings()).isEmpty();
  }

  @Test
  void a_result_in_the_middle_between_two_printed_ones_takes_a_digit_more() {
    Step arm = Step.of(formula("a − b", (a, b) -> a - b), number("a", 0.256), number("b", 0.141125));
    assertThat(Workings.result(arm)).isEqualTo("0.114875");
    assertThat(Workings.explain(arm)).isEqualTo("a − b with a = 0.256, b = 0.141125");
  }

  @Test
  void a_mark_stands_behind_each_input_and_a_method_names_where_it_starts() {
    Formula sum = formula("a + b", Double::sum);
    Step a = number("a", 1);
    Step b = number("b", 2);
    assertThat(Workings.explain(Step.of(sum, a, b), input -> input == a ? " [1]" : "")).isEqualTo("a + b with a = 1 [1], b = 2");
    assertThat(Workings.explain(Step.sum("both", "s", List.of(a, b)), input -> " [" + input.symbol() + "]")).isEqualTo("1 [a] + 2 [b]");
    Step root =
        Step.solution("root", "x", NamedUnit.NUMBER, "bisection", "x² = b", v -> Math.sqrt(v[0]), v -> v[1] * v[1] - v[0],
            Source.DEFINITION, b);
    assertThat(Workings.explain(root, input -> " [2]")).endsWith(", from b [2]");
    assertThat(Workings.explain(root)).doesNotContain("from");
  }

  @Test
  void beyond_what_stands_elsewhere_only_the_rest_is_told() {
    Formula sum = formula("a + b", Double::sum);
    Step a = number("a", 1);
    Step b = number("b", 2);
    Step c = Step.of(sum, a, b);
    assertThat(Workings.of(List.of(c)).beyond(List.of(a)).steps()).containsExactly(b, c);
  }

  @Test
  void findings_of_all_steps_come_together() {
    Formula narrow = Formula.named("narrow").gives("y").as("a").where("a", "first", 0, 1)
        .computedBy(a -> a);
    Step low = Step.of(narrow, number("a", 2));
    assertThat(Workings.of(List.of(Step.of(narrow, low))).findings()).hasSize(1);
    assertThat(Workings.of(List.of(low, Step.of(narrow, number("a", 3)))).findings()).hasSize(2);
  }

  @Test
  void computed_steps_alone_leave_out_what_is_given_and_what_is_printed_already() {
    Formula sum = formula("a + b", Double::sum);
    Step first = Step.of(sum, number("a", 1), number("b", 2));
    Step again = Step.of(sum, number("a", 1), number("b", 2));
    Step other = Step.of(sum, first, again);
    assertThat(Workings.of(List.of(other)).computed().steps()).containsExactly(first, other);
    assertThat(Workings.of(List.of(other)).computedBeyond(Workings.of(List.of(again))).steps()).containsExactly(other);
  }
}
