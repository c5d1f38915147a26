// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class OriginsTest {
  private static final Formula AREA =
      Formula.named("area")
          .gives("S", Area.SQUARE_METRE)
          .as("b·c")
          .where("b", "span", Length.METRE, 0, 10)
          .where("c", "chord", Length.METRE, 0, 10)
          .computedBy((b, c) -> b * c);

  private static final Formula ASPECT_RATIO =
      Formula.named("aspect ratio")
          .gives("A")
          .as("b² / S")
          .where("b", "span", Length.METRE, 0, 10)
          .where("S", "area", Area.SQUARE_METRE, 0, 10)
          .computedBy((b, s) -> b * b / s);

  private final Step span = Step.given("span", "b", Length.metres(0.45), Source.BRIEF);
  private final Step chord = Step.given("chord", "c", Length.metres(0.07), Source.BRIEF);
  private final Step area = Step.of(AREA, span, chord);

  private static Step area(double squareMetres) {
    return Step.given("area", "S", Area.squareMetres(squareMetres), Source.library("read from a shape"));
  }

  @Test
  void a_given_value_becomes_the_step_that_computed_it() {
    Origins origins = new Origins(List.of(span, area));
    Step traced = origins.trace(Step.of(ASPECT_RATIO, span, area(area.value())));
    assertThat(traced.inputs().get(1)).isSameAs(area);
    assertThat(traced.inputs().get(0)).isSameAs(span);
    assertThat(traced.value()).isEqualTo(0.45 * 0.45 / (0.45 * 0.07));
  }

  @Test
  void rounding_in_the_last_places_is_the_same_value() {
    double nearly = Math.nextUp(Math.nextUp(area.value()));
    Step traced = new Origins(List.of(area)).trace(Step.of(ASPECT_RATIO, span, area(nearly)));
    assertThat(traced.inputs().get(1)).isSameAs(area);
    assertThat(traced.value()).isEqualTo(ASPECT_RATIO.evaluate(0.45, area.value()));
  }

  @Test
  void another_value_symbol_or_unit_stays_as_it_was_given() {
    Step other = area(area.value() * (1 + 1e-9));
    Step number = Step.given("a number", "S", area.value(), Source.BRIEF);
    Step tail = Step.given("tail area", "S_h", Area.squareMetres(area.value()), Source.BRIEF);
    Origins origins = new Origins(List.of(area));
    assertThat(origins.trace(other)).isSameAs(other);
    assertThat(origins.trace(number)).isSameAs(number);
    assertThat(origins.trace(tail)).isSameAs(tail);
    Step untouched = Step.of(ASPECT_RATIO, span, other);
    assertThat(origins.trace(untouched)).isSameAs(untouched);
  }

  @Test
  void what_stands_on_a_replaced_value_is_made_again_all_the_way_up() {
    Step given = area(area.value());
    Step sum = Step.sum("both areas", "S_2", List.of(given, given));
    Step solved =
        Step.solution("half", "S_½", Area.SQUARE_METRE, "halving", "2·S_½ = S_2", v -> v[0] / 2, v -> 2 * v[1] - v[0], Source.DEFINITION, sum);
    Step traced = new Origins(List.of(area)).trace(solved);
    assertThat(traced.value()).isEqualTo(area.value());
    assertThat(traced.inputs().get(0).inputs()).allMatch(s -> s == area);
    assertThat(Workings.of(List.of(traced)).steps()).contains(area, span, chord).doesNotContain(given);
  }

  @Test
  void a_step_is_traced_once_and_an_origin_stays_itself() {
    Origins origins = new Origins(List.of());
    origins.add(area);
    Step asked = Step.of(ASPECT_RATIO, span, area(area.value()));
    assertThat(origins.trace(asked)).isSameAs(origins.trace(asked));
    assertThat(origins.trace(origins.trace(asked))).isSameAs(origins.trace(asked));
    assertThat(origins.trace(area)).isSameAs(area);
  }

  @Test
  void the_same_formula_of_the_same_inputs_is_one_step() {
    Origins origins = new Origins(List.of());
    Step again = Step.of(AREA, Step.given("span", "b", Length.metres(0.45), Source.BRIEF), chord);
    assertThat(origins.trace(again)).isSameAs(origins.trace(Step.of(AREA, span, chord)));
    Step tail = Step.of("area of the tail", "S_h", AREA, span, chord);
    assertThat(origins.trace(tail)).isNotSameAs(origins.trace(again));
    assertThat(Workings.of(List.of(origins.trace(tail), origins.trace(again))).steps()).hasSize(4);
  }

  @Test
  void of_two_origins_of_one_symbol_and_value_that_of_the_same_name_is_taken() {
    Step ahead = Step.given("share ahead", "k", 0.5, Source.taken("a choice"));
    Step behind = Step.given("share behind", "k", 0.5, Source.taken("another"));
    Origins origins = new Origins(List.of(ahead, behind));
    assertThat(origins.trace(Step.given("share behind", "k", 0.5, Source.BRIEF))).isSameAs(behind);
    assertThat(origins.trace(Step.given("share", "k", 0.5, Source.BRIEF))).isSameAs(ahead);
    assertThat(behind.source().cite()).isEqualTo("another");
  }
}
