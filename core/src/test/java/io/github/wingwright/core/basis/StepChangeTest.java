// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

class StepChangeTest {
  private static final Formula PRODUCT =
      Formula.named("product")
          .gives("p")
          .as("a·b")
          .where("a", "one", -1e6, 1e6)
          .where("b", "other", -1e6, 1e6)
          .from(Source.DEFINITION)
          .computedBy((double a, double b) -> a * b);
  private static final Formula SUM =
      Formula.named("sum by formula")
          .gives("s")
          .as("a + b")
          .where("a", "one", -1e6, 1e6)
          .where("b", "other", -1e6, 1e6)
          .from(Source.DEFINITION)
          .computedBy(Double::sum);

  private static Step given(String name, double value) {
    return Step.given(name, name, value, Source.BRIEF);
  }

  private static Step tree(double a, double b, double c) {
    return Step.of(SUM, Step.of(PRODUCT, given("a", a), given("b", b)), given("c", c));
  }

  @Test
  void what_did_not_change_has_no_cause() {
    StepChange change = StepChange.between(tree(2, 3, 4), tree(2, 3, 4));
    assertThat(change.isChanged()).isFalse();
    assertThat(change.causes()).isEmpty();
    assertThat(change.roots()).isEmpty();
    assertThat(change).hasToString("sum by formula unchanged");
  }

  @Test
  void the_input_that_counts_most_comes_first_with_its_share() {
    StepChange change = StepChange.between(tree(2, 3, 4), tree(3, 3, 6));
    assertThat(change.difference()).isEqualTo(5);
    assertThat(change.causes()).extracting(c -> c.change().after().name()).containsExactly("product", "c");
    assertThat(change.causes()).extracting(StepChange.Cause::share).containsExactly(3.0, 2.0);
    assertThat(change.roots()).extracting(r -> r.after().name()).containsExactly("a", "c");
    assertThat(change.words()).isEqualTo("sum by formula, from product, from a (given otherwise): 2 to 3");
    assertThat(change.briefly(u -> u)).isEqualTo("product, in the end a (given otherwise): 2 to 3");
  }

  @Test
  void the_shares_of_a_sum_are_the_change() {
    Step before = Step.sum("table", "t", List.of(given("x", 1), given("y", 2), given("z", 3)));
    Step after = Step.sum("table", "t", List.of(given("x", 1.5), given("y", 2), given("z", 1)));
    StepChange change = StepChange.between(before, after);
    double shares = change.causes().stream().mapToDouble(StepChange.Cause::share).sum();
    assertThat(shares).isCloseTo(change.difference(), within(1e-15));
    assertThat(change.causes()).hasSize(2);
  }

  @Test
  void another_formula_is_a_cause_by_itself() {
    StepChange change =
        StepChange.between(Step.of(SUM, given("a", 2), given("b", 5)), Step.of(PRODUCT, given("a", 2), given("b", 5)));
    assertThat(change.ownReason()).contains("reckoned another way");
    assertThat(change.path()).containsExactly(change);
  }

  private static Step solution(double factor, double a) {
    return Step.solution(
        "root", "r", NamedUnit.NUMBER, "scan", "r = f·a", v -> factor * v[0], v -> 0, Source.DEFINITION, given("a", a));
  }

  @Test
  void a_solution_whose_inputs_stayed_was_found_from_other_data() {
    StepChange change = StepChange.between(solution(1, 2), solution(3, 2));
    assertThat(change.ownReason()).contains("found from other data");
    assertThat(change.roots()).containsExactly(change);
  }

  @Test
  void a_solution_of_the_same_method_passes_on_what_its_inputs_changed() {
    StepChange change = StepChange.between(solution(2, 2), solution(2, 5));
    assertThat(change.ownReason()).isEmpty();
    assertThat(change.causes().get(0).share()).isEqualTo(6);
    assertThat(change.words()).isEqualTo("root, from a (given otherwise): 2 to 5");
  }

  @Test
  void where_method_and_input_both_changed_the_larger_share_tells() {
    // 2·2 to 2.1·5: the input alone makes 6 of it, the method 0.5.
    StepChange mostlyInput = StepChange.between(solution(2, 2), solution(2.1, 5));
    assertThat(mostlyInput.path()).hasSize(2);
    assertThat(mostlyInput.roots()).hasSize(2);
    // 2·2 to 10·2.1: the input alone makes 0.2 of it.
    StepChange mostlyMethod = StepChange.between(solution(2, 2), solution(10, 2.1));
    assertThat(mostlyMethod.path()).hasSize(1);
    assertThat(mostlyMethod.words()).isEqualTo("root (found from other data): 4 to 21");
  }

  @Test
  void values_are_shown_with_digits_enough_to_tell_them_apart() {
    Step before = Step.given("span", "b", Length.millimetres(480), Source.BRIEF);
    Step after = Step.given("span", "b", Length.millimetres(480.004), Source.BRIEF);
    assertThat(StepChange.between(before, after).values(u -> Length.MILLIMETRE)).isEqualTo("480 mm to 480.004 mm");
    assertThat(StepChange.between(before, Step.given("span", "b", Length.millimetres(440), Source.BRIEF)).values())
        .isEqualTo("0.48 m to 0.44 m");
  }

  @Test
  void a_step_that_many_use_is_compared_once() {
    Step before = given("a", 2);
    Step after = given("a", 2.1);
    for (int i = 0; i < 60; i++) {
      before = Step.of(SUM, before, before);
      after = Step.of(SUM, after, after);
    }
    // Without memory this would take 2^60 comparisons.
    assertThat(StepChange.between(before, after).roots()).hasSize(1);
  }
}
