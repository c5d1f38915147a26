// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.testing.PublishedValues;
import java.util.List;
import org.junit.jupiter.api.Test;

class CentreOfGravityRangeTest {
  private static final PitchModel MODEL =
      PitchModel.of(Models.glider())
          .withWingSection(Models.exact(5.5, -0.05, -0.08, 0.9), 3e4)
          .withTailSection(Models.symmetric(), 2e4);
  private static final CentreOfGravityRange RANGE = CentreOfGravityRange.of(MODEL, 0.10, 0.8, 0.6);

  private static LoadingCase at(String name, double millimetres) {
    return new LoadingCase(
        name,
        MassStatement.of(
            MassItem.of("wing", Mass.grams(20), Placement.at(millimetres(millimetres), Length.ZERO)),
            MassItem.of("battery", Mass.grams(10), Placement.at(millimetres(millimetres), Length.ZERO))));
  }

  @Test
  void the_aft_end_has_the_margin_and_the_forward_end_the_tail_at_its_limit() {
    double aft = RANGE.range().limits().upper();
    assertThat(MODEL.staticMargin(Length.metres(aft)).value()).isCloseTo(0.10, within(1e-12));
    double forward = RANGE.range().limits().lower();
    assertThat(MODEL.trim(Length.metres(forward), 0.8).tailLiftCoefficient()).isCloseTo(-0.6, within(1e-12));
    assertThat(forward).isLessThan(aft);
    assertThat(RANGE.range().upperBinding().orElseThrow().name()).startsWith("static margin");
    assertThat(RANGE.workings().steps()).isNotEmpty();
  }

  @Test
  void a_case_outside_says_what_to_move_and_how_far() {
    double aft = RANGE.range().limits().upper() * 1000;
    var checked = RANGE.check(List.of(at("full", aft - 1), at("empty", aft + 2)));
    assertThat(checked.cases().get(0).findings()).isEmpty();
    var empty = checked.cases().get(1);
    assertThat(empty.findings().get(0).severity()).isEqualTo(Severity.SERIOUS);
    // 30 g must come forward by 2 mm: the battery of 10 g by 6 mm.
    assertThat(empty.findings().get(0).message()).contains("Move battery forward by 6 mm");
    assertThat(empty.staticMargin().value()).isLessThan(0.10);
    assertThat(checked.travel().width() * 1000).isCloseTo(3, within(1e-9));
    assertThat(checked.findings()).hasSizeGreaterThanOrEqualTo(1);
  }

  @Test
  void a_case_too_far_forward_is_moved_aft() {
    double forward = RANGE.range().limits().lower() * 1000;
    var checked = RANGE.check(List.of(at("nose-heavy", forward - 5)));
    assertThat(checked.findings()).anySatisfy(f -> assertThat(f.message()).contains("Move battery aft by 15 mm"));
  }

  @Test
  void a_range_that_is_empty_names_who_clashes() {
    CentreOfGravityRange none = CentreOfGravityRange.of(MODEL, 1.5, 0.85, 0.3);
    assertThat(none.range().isEmpty()).isTrue();
    assertThat(none.range().clashes()).isNotEmpty();
  }

  @Test
  void the_light_aeroplane_is_loaded_as_in_the_notes() {
    List<MassItem> items =
        PublishedValues.beside(CentreOfGravityRangeTest.class, "light-aeroplane-loading.csv")
            .rows()
            .map(
                r -> {
                  assertThat(r.number("mass_lb") * r.number("arm_in")).isEqualTo(r.number("moment_lb_in"));
                  return MassItem.of(
                      r.text("item"),
                      Mass.pounds(r.number("mass_lb")),
                      Placement.at(Length.inches(r.number("arm_in")), Length.ZERO));
                })
            .toList();
    List<LoadingCase> cases = CentreOfGravityRange.travel(MassStatement.of(items), "fuel", 5);
    assertThat(cases).hasSize(5);
    MassStatement full = cases.get(0).masses();
    assertThat(full.mass().pounds()).isCloseTo(2397, within(1e-9));
    assertThat(full.centreOfGravity().x().inches()).isCloseTo(45.2378, within(5e-5));
    MassStatement dry = cases.get(4).masses();
    assertThat(dry.mass().pounds()).isCloseTo(2207, within(1e-9));
    assertThat(dry.centreOfGravity().x().inches()).isCloseTo(99505.0 / 2207, within(1e-9));
    assertThat(cases.get(1).name()).isEqualTo("fuel 75 %");
    assertThatThrownBy(() -> CentreOfGravityRange.travel(full, "water", 3))
        .hasMessageContaining("item must be one of [").hasMessageContaining("was water");
  }

  @Test
  void what_is_wrong_is_refused() {
    assertThatThrownBy(() -> RANGE.check(List.of())).hasMessageContaining("must be at least one");
    assertThatThrownBy(() -> CentreOfGravityRange.of(MODEL, 0.1, -0.8, 0.6))
        .hasMessage("greatest lift coefficient must be positive, was -0.8");
    assertThatThrownBy(() -> new LoadingCase(" ", at("x", 1).masses())).hasMessageContaining("must say what is aboard");
  }
}
