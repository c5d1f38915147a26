// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import java.util.List;
import org.junit.jupiter.api.Test;

class StepTest {
  static final Formula DYNAMIC_PRESSURE =
      Formula.named("dynamic pressure")
          .gives("q", Pressure.PASCAL)
          .as("½·ρ·V²")
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.001, 2)
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 0, 100)
          .from(Source.DEFINITION)
          .computedBy((rho, v) -> 0.5 * rho * v * v);

  static final Step RHO = Step.given("air density", "ρ", Density.kilogramsPerCubicMetre(1.225), Source.BRIEF);
  static final Step V = Step.given("airspeed", "V", Speed.metresPerSecond(6), Source.BRIEF);

  private static Formula formula(String symbol, String text) {
    return Formula.named("test").gives(symbol, NamedUnit.NUMBER).as(text)
        .where("a", "first", 0, 1).where("b", "second", 0, 1).computedBy((a, b) -> a / b);
  }

  @Test
  void a_formula_computes_with_its_method() {
    assertThat(DYNAMIC_PRESSURE.evaluate(1.225, 6)).isEqualTo(0.5 * 1.225 * 6 * 6);
    assertThat(DYNAMIC_PRESSURE).hasToString("q = ½·ρ·V²");
    assertThat(DYNAMIC_PRESSURE.inputs()).extracting(Symbol::symbol).containsExactly("ρ", "V");
  }

  @Test
  void a_formula_wants_as_many_values_as_it_has_inputs() {
    for (double[] values : new double[][] {{}, {1}, {1, 2, 3}}) {
      String message = "dynamic pressure needs 2 values (ρ, V), got " + values.length;
      assertThatThrownBy(() -> DYNAMIC_PRESSURE.evaluate(values))
          .isInstanceOf(IllegalArgumentException.class).hasMessage(message);
      assertThatThrownBy(() -> DYNAMIC_PRESSURE.outsideDomain(values))
          .isInstanceOf(IllegalArgumentException.class).hasMessage(message);
    }
  }

  @Test
  void a_formula_is_complete_or_refused() {
    assertThatThrownBy(() -> Formula.named("lift").gives("L").as("q·S")
            .where("q", "dynamic pressure", 0, 1).computedBy((q, s) -> q * s))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("lift needs a symbol, a text and 2 explained inputs, has 1");
    assertThatThrownBy(() -> formula("", "a/b")).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> formula("y", "")).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> Formula.named("lift").where("c", "chord", 0, 1).where("c", "coefficient", 0, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("each symbol of lift must stand for one thing, c stands for chord and for coefficient");
    assertThatThrownBy(() -> Formula.named("lift").where("c", "chord", 0, Double.POSITIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("domain of c must be finite and not empty, was at least 0");
    assertThatThrownBy(() -> Formula.named("lift").where("c", "chord", 2, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_formula_binds_one_to_eight_inputs_in_their_order() {
    Formula.Definition d = Formula.named("n").gives("n").as("…").where("a", "a", 0, 9);
    assertThat(d.computedBy((a) -> a).evaluate(1)).isEqualTo(1);
    d.where("b", "b", 0, 9);
    assertThat(d.computedBy((a, b) -> 10 * a + b).evaluate(1, 2)).isEqualTo(12);
    d.where("c", "c", 0, 9);
    assertThat(d.computedBy((a, b, c) -> 100 * a + 10 * b + c).evaluate(1, 2, 3)).isEqualTo(123);
    d.where("d", "d", 0, 9);
    assertThat(d.computedBy((a, b, c, e) -> 100 * b + 10 * c + e).evaluate(1, 2, 3, 4)).isEqualTo(234);
    d.where("e", "e", 0, 9);
    assertThat(d.computedBy((a, b, c, e, f) -> 100 * c + 10 * e + f).evaluate(1, 2, 3, 4, 5)).isEqualTo(345);
    d.where("f", "f", 0, 9);
    assertThat(d.computedBy((a, b, c, e, f, g) -> 100 * e + 10 * f + g).evaluate(1, 2, 3, 4, 5, 6)).isEqualTo(456);
    d.where("g", "g", 0, 9);
    assertThat(d.computedBy((a, b, c, e, f, g, h) -> 100 * f + 10 * g + h).evaluate(1, 2, 3, 4, 5, 6, 7))
        .isEqualTo(567);
    d.where("h", "h", 0, 9);
    assertThat(d.computedBy((a, b, c, e, f, g, h, i) -> 100 * g + 10 * h + i).evaluate(1, 2, 3, 4, 5, 6, 7, 8))
        .isEqualTo(678);
  }

  @Test
  void an_evaluated_step_has_the_value_of_its_formula_to_the_last_bit() {
    Step q = Step.of(DYNAMIC_PRESSURE, RHO, V);
    assertThat(q.value()).isEqualTo(DYNAMIC_PRESSURE.evaluate(1.225, 6.0));
    assertThat(q.name()).isEqualTo("dynamic pressure");
    assertThat(q.unit()).isEqualTo(Pressure.PASCAL);
    assertThat(q.inputs()).containsExactly(RHO, V);
    assertThat(q).hasToString("q = ½·ρ·V² = 22.05 Pa  dynamic pressure");
    assertThat(Step.of("dynamic pressure at launch", "q_0", DYNAMIC_PRESSURE, RHO, V))
        .hasToString("q_0 = ½·ρ·V² = 22.05 Pa  dynamic pressure at launch");
  }

  @Test
  void a_step_refuses_inputs_in_the_wrong_order() {
    assertThatThrownBy(() -> Step.of(DYNAMIC_PRESSURE, V, RHO))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("dynamic pressure needs ρ in kg/m³, got V in m/s");
    assertThatThrownBy(() -> Step.of(DYNAMIC_PRESSURE, RHO))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("dynamic pressure needs 2 values (ρ, V), got 1");
  }

  @Test
  void a_slope_per_radian_passes_for_a_number() {
    Formula twice = Formula.named("twice").gives("y").as("2·a").where("a", "slope", 0, 7)
        .computedBy(a -> 2 * a);
    Formula slope = Formula.named("slope").gives("a", NamedUnit.PER_RADIAN).as("2·x").where("x", "half", 0, 7)
        .computedBy(x -> 2 * x);
    assertThat(Step.of(twice, Step.of(slope, Step.given("half", "x", 3.0, Source.BRIEF))).value()).isEqualTo(12);
  }

  @Test
  void no_step_holds_what_is_not_a_number() {
    Step zero = Step.given("nothing", "a", 0.0, Source.BRIEF);
    Step none = Step.given("nothing", "b", 0.0, Source.BRIEF);
    assertThatThrownBy(() -> Step.of(formula("y", "a/b"), zero, none))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("test must be finite, was NaN from y = a/b with a = 0, b = 0");
    assertThatThrownBy(() -> Step.given("span", "b", Double.NaN, Source.BRIEF))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("span must be finite, was NaN");
    assertThatThrownBy(() -> Step.sum("mass", "m", List.of(
            Step.given("a", "a", 1e308, Source.BRIEF), Step.given("b", "b", 1e308, Source.BRIEF))))
        .hasMessageContaining("mass must be finite, was Infinity from a sum");
    assertThatThrownBy(() -> Step.solution("root", "x", NamedUnit.NUMBER, "a guess", "x = x", v -> Double.NaN, v -> 0,
            Source.DEFINITION))
        .hasMessageContaining("root must be finite, was NaN from x = x");
  }

  @Test
  void a_formula_outside_its_domain_is_found_and_computed() {
    Step fast = Step.of(DYNAMIC_PRESSURE, RHO, Step.given("airspeed", "V", Speed.metresPerSecond(200), Source.BRIEF));
    assertThat(fast.value()).isCloseTo(24_500.0, within(1e-10));
    assertThat(fast.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
      assertThat(finding.message())
          .isEqualTo("airspeed is outside the range for which the formula q = ½·ρ·V² is stated.");
      assertThat(finding.measure()).isEqualTo("200 m/s (range 0 to 100 m/s)");
    });
    assertThat(Step.of(DYNAMIC_PRESSURE, RHO, V).findings()).isEmpty();
  }

  @Test
  void a_sum_adds_lines_of_one_unit() {
    Step wing = Step.given("wing", "m_W", Mass.grams(12), Source.BRIEF);
    Step body = Step.given("body", "m_B", Mass.grams(18), Source.BRIEF);
    assertThat(Step.sum("mass", "m", List.of(wing, body)).value()).isEqualTo(0.012 + 0.018);
    assertThatThrownBy(() -> Step.sum("mass", "m", List.of()))
        .isInstanceOf(IllegalArgumentException.class).hasMessage("mass needs at least one term, got none");
    Step span = Step.given("span", "b", Length.metres(1), Source.BRIEF);
    assertThatThrownBy(() -> Step.sum("mass", "m", List.of(wing, span)))
        .isInstanceOf(IllegalArgumentException.class).hasMessage("mass needs terms of one unit, got kg and m");
  }

  @Test
  void a_solution_says_how_well_it_closes() {
    Step two = Step.given("radicand", "a", 2.0, Source.BRIEF);
    Step root = Step.solution("root", "x", NamedUnit.NUMBER, "four steps of Newton's method", "x² = a",
        v -> {
          double x = 1;
          for (int i = 0; i < 4; i++) {
            x = 0.5 * (x + v[0] / x);
          }
          return x;
        },
        v -> v[1] * v[1] - v[0], Source.DEFINITION, two);
    assertThat(root.value()).isCloseTo(Math.sqrt(2), within(1e-11));
    assertThat(((Step.Solution) root).residual()).isEqualTo(root.value() * root.value() - 2.0);
    assertThat(Workings.explain(root)).startsWith("x² = a, by four steps of Newton's method, residual ");
  }

  @Test
  void a_line_is_never_longer_than_a_terminal_allows() {
    Step step = Step.given("a name that is much longer than anybody would wish a name to be, and longer", "x", 1.0 / 3,
        Source.BRIEF);
    assertThat(step.toString()).hasSize(75).endsWith("…").startsWith("x = 0.333333  a name");
  }
}
