// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Formula;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The judge is judged: it reads what formulas are written in, and refuses the rest. */
class FormulaCheckTest {
  /** A formula of a (2) and b_α (3) whose method gives NaN: only its text matters. */
  private static Formula text(String text) {
    return Formula.named("test").gives("y")
        .as(text)
        .where("a", "first", 1, 2)
        .where("b_α", "second", 1, 3)
        .computedBy((double a, double b) -> Double.NaN);
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', textBlock = """
      a·b_α                      ; 6
      ½·a²·b_α                   ; 6
      ¼·a⁴ + ⅓·b_α               ; 5
      √(a·2) − ∛(b_α·9)          ; -1
      a^b_α/4                    ; 2
      −a² + b_α                  ; -1
      |−a|·b_α                   ; 6
      |a − b_α|·|b_α − a|        ; 1
      π·a·b_α/π                  ; 6
      ln(exp(a))·b_α             ; 6
      log10(10^a)·b_α            ; 6
      max(a, b_α)·min(a, b_α)    ; 6
      (sin(a)² + cos(a)²)·b_α    ; 3
      tan(atan(a))·b_α           ; 6
      asin(½) + acos(½) − π/2 + a·b_α ; 6
      abs(−a)·b_α                ; 6
      5·10^(−1)·a·b_α            ; 3
      5·10⁻¹·a·b_α               ; 3
      0.5e1·a·b_α                ; 30
      a·(−b_α)                   ; -6
      """)
  void reads_what_formulas_are_written_in(String text, double expected) {
    double value = FormulaText.expression(text(text)).setVariable("v0", 2).setVariable("v1", 3).evaluate();
    assertThat(value).isCloseTo(expected, within(1e-14 * Math.max(1, Math.abs(expected))));
  }

  @ParameterizedTest
  @ValueSource(strings = {
    "a·b_α·c", "ab_α", "a b_α", "2a·b_α", "a·b", "a·b_αx", "sin a·b_α", "log(a)·b_α", "√a·b_α", "a×b_α", "a·b_α)",
    "(a·b_α", "a·b_α·", "a··b_α", "a·|b_α", "a", "", "a = b_α", "²·a·b_α", "a·−b_α", "a'·b_α", "ā·b_α", "e^a·b_α"})
  void refuses_what_it_does_not_know(String text) {
    assertThatThrownBy(() -> FormulaText.translate(text.isEmpty() ? text(" ") : text(text)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void names_the_unknown_symbol_and_its_place() {
    assertThatThrownBy(() -> FormulaText.translate(text("a·b_α + q_∞·a")))
        .hasMessageContaining("unknown symbol \"q_\"")
        .hasMessageContaining("a·b_α + ▸q_∞·a");
  }

  @Test
  void takes_the_longest_symbol_with_its_marks() {
    Formula formula = Formula.named("test").gives("y")
        .as("C_L,max·C_L + c̄/c + dε/dα·S_wet")
        .where("C_L", "lift coefficient", 0, 1)
        .where("C_L,max", "greatest lift coefficient", 0, 1)
        .where("c", "chord", 1, 2)
        .where("c̄", "mean chord", 1, 2)
        .where("dε/dα", "downwash gradient", 0, 1)
        .where("S_wet", "wetted area", 0, 1)
        .computedBy((double cl, double clMax, double c, double cBar, double d, double s) ->
            clMax * cl + cBar / c + d * s);
    FormulaCheck.textAgreesWithMethod(formula);
    assertThat(FormulaText.translate(formula)).isEqualTo("v1*v0+v3/v2+v4*v5");
  }

  @Test
  void finds_a_constant_that_is_wrong_in_its_eighth_digit() {
    Formula formula = Formula.named("weight").gives("W")
        .as("9.80665·m")
        .where("m", "mass", 0.01, 10)
        .computedBy((double m) -> 9.8066502 * m);
    assertThatThrownBy(() -> FormulaCheck.textAgreesWithMethod(formula))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("weight does not compute what it prints")
        .hasMessageContaining("W = 9.80665·m")
        .hasMessageContaining("m = 0.01")
        .hasMessageContaining("text:    0.0980665")
        .hasMessageContaining("method:  0.098066502");
  }

  @Test
  void finds_inputs_in_the_wrong_order() {
    Formula formula = Formula.named("quotient").gives("y")
        .as("a/b").where("a", "above", 1, 2).where("b", "below", 3, 4)
        .computedBy((double a, double b) -> b / a);
    assertThatThrownBy(() -> FormulaCheck.textAgreesWithMethod(formula)).isInstanceOf(AssertionError.class);
  }

  @Test
  void finds_a_domain_in_which_the_formula_is_not_finite() {
    Formula formula = Formula.named("root").gives("y")
        .as("√(a)").where("a", "of", -0.1, 1).computedBy((double a) -> Math.sqrt(a));
    assertThatThrownBy(() -> FormulaCheck.textAgreesWithMethod(formula)).isInstanceOf(AssertionError.class)
        .hasMessageContaining("a = -0.0");
  }

  @Test
  void forgives_a_pole_at_a_corner_of_the_domain_if_text_and_method_have_it() {
    FormulaCheck.textAgreesWithMethod(Formula.named("inverse").gives("y")
        .as("1/a").where("a", "below", 0, 1).computedBy((double a) -> 1 / a));
    Formula silent = Formula.named("inverse").gives("y")
        .as("1/a").where("a", "below", 0, 1).computedBy((double a) -> a == 0 ? 0 : 1 / a);
    assertThatThrownBy(() -> FormulaCheck.textAgreesWithMethod(silent)).isInstanceOf(AssertionError.class);
  }

  @Test
  void finds_a_branch_that_only_small_values_reach() {
    Formula formula = Formula.named("identity").gives("y")
        .as("a").where("a", "value", 1e-6, 1)
        .computedBy((double a) -> a > 2e-6 && a < 1e-4 ? 2 * a : a);
    assertThatThrownBy(() -> FormulaCheck.textAgreesWithMethod(formula)).isInstanceOf(AssertionError.class);
  }

  @Test
  void accepts_terms_that_cancel_to_rounding() {
    Formula formula = Formula.named("difference").gives("y")
        .as("(a + b) − b").where("a", "small", 0, 1).where("b", "large", 0, 1)
        .computedBy((double a, double b) -> a);
    FormulaCheck.textAgreesWithMethod(formula);
    assertThat(DoubleStream.of(0.1 + 0.7 - 0.7).sum()).isNotEqualTo(0.1);
  }

  @Test
  void refuses_to_pass_over_a_package_without_formulas() {
    assertThatThrownBy(() -> FormulaCheck.ofFormulasIn("io.github.wingwright.core.numerics"))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("no formula constant");
  }
}
