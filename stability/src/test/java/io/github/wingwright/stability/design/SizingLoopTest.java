// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.WingLoading;
import io.github.wingwright.core.sizing.WingSizing;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SizingLoopTest {
  private static final double STANDARD_GRAVITY = 9.80665;

  private static double value(Design design, String name) {
    return design.number(name).value();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.1, 0.15, 0.2})
  void the_wanted_margin_is_reached_with_ballast(double wanted) {
    Design design = SizingLoop.of(TestGlider.brief().staticMargin(wanted)).solve();
    assertThat(value(design, "ballast_kg")).isPositive();
    assertThat(value(design, "static_margin")).isCloseTo(wanted, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.1, 0.15, 0.2})
  void the_wanted_margin_is_reached_by_the_station_alone_where_one_serves(double wanted) {
    Design design = SizingLoop.of(TestGlider.noseHeavy().staticMargin(wanted)).solve();
    assertThat(value(design, "ballast_kg")).isZero();
    assertThat(value(design, "static_margin")).isCloseTo(wanted, within(1e-9));
    assertThat(design.aircraft().masses().item("ballast")).isEmpty();
  }

  @Test
  void there_is_ballast_only_where_no_station_reaches_the_margin() {
    Design design = SizingLoop.of(TestGlider.brief()).solve();
    QuickDesign quick = new QuickDesign(design.brief(), design.sizedWing().value(), design.sizedFuselage().value());
    for (int i = 0; i <= 200; i++) {
      double station = quick.travel().lower() + quick.travel().width() * i / 200.0;
      assertThat(quick.margin(station, value(design, "mass_kg"))).isLessThan(0.15);
    }
  }

  @Test
  void the_ballasted_station_is_the_lightest() {
    Design design = SizingLoop.of(TestGlider.brief()).solve();
    double mass = value(design, "mass_kg");
    double station = value(design, "wing.leading_edge_x_m");
    for (double move : new double[] {-0.02, -0.01, -0.005, 0.005}) {
      DesignBrief held =
          TestGlider.brief().wingBetween(Length.metres(station + move), Length.metres(station + move + 1e-5));
      assertThat(value(SizingLoop.of(held).solve(), "mass_kg")).as("moved by %s m", move).isGreaterThan(mass);
    }
  }

  @Test
  void the_mass_that_comes_out_is_the_mass_that_went_in() {
    Design design = SizingLoop.of(TestGlider.noseHeavy()).solve();
    double mass = value(design, "mass_kg");
    QuickDesign quick = new QuickDesign(design.brief(), design.sizedWing().value(), design.sizedFuselage().value());
    assertThat(quick.balance(mass).mass()).isCloseTo(mass, within(1e-9 * mass));
  }

  @Test
  void a_wing_by_loading_has_the_loading_of_the_finished_glider() {
    WingSizing byLoading =
        WingSizing.open()
            .wingLoading(WingLoading.kilogramsPerSquareMetre(1.6))
            .aspectRatio(6.5)
            .taperRatio(0.7)
            .section(TestGlider.WEDGE);
    Design design = SizingLoop.of(TestGlider.brief().wing(byLoading)).solve();
    assertThat(value(design, "wing.loading_kg_per_m2")).isCloseTo(1.6, within(1e-8));
    assertThat(value(design, "mass_kg") / value(design, "wing.area_m2")).isCloseTo(1.6, within(1e-8));
  }

  @Test
  void a_wing_by_speed_carries_the_finished_glider_at_that_speed() {
    Density rho = TestGlider.brief().air().density();
    WingSizing bySpeed =
        WingSizing.open()
            .speedAtLift(Speed.metresPerSecond(7), 0.5, rho)
            .aspectRatio(6.5)
            .taperRatio(0.7)
            .section(TestGlider.WEDGE);
    Design design = SizingLoop.of(TestGlider.brief().wing(bySpeed)).solve();
    double lift = 0.5 * rho.si() * 49.0 * 0.5 * value(design, "wing.area_m2");
    double weight = value(design, "mass_kg") * STANDARD_GRAVITY;
    assertThat(lift).isCloseTo(weight, within(1e-8 * weight));
  }

  @Test
  void a_mass_that_jumps_to_and_fro_is_named_with_its_last_values() {
    // A large wing while the glider is light, a small one while it is heavy: no mass agrees with itself.
    double large = value(SizingLoop.of(TestGlider.brief().wing(TestGlider.wing().span(millimetres(460)))).solve(), "mass_kg");
    double small = value(SizingLoop.of(TestGlider.brief().wing(TestGlider.wing().span(millimetres(350)))).solve(), "mass_kg");
    double between = 0.5 * (large + small);
    DesignBrief brief =
        TestGlider.brief().wing(mass -> TestGlider.wing().span(millimetres(mass.kilograms() < between ? 460 : 350)));
    ConvergenceException e = catchThrowableOfType(ConvergenceException.class, () -> SizingLoop.of(brief).solve());
    assertThat(e).hasMessageContaining("mass").hasMessageContaining("settle");
    assertThat(e.lastValues()).hasSize(2);
    assertThat(e.iterations()).isEqualTo(100);
    // Whatever the last round began with, it ended with one of the two gliders, and not with what it began with.
    double cameOut = e.lastValues()[1];
    assertThat(Math.min(Math.abs(cameOut - large) / large, Math.abs(cameOut - small) / small)).isLessThan(0.05);
    assertThat(e.residual()).isEqualTo(cameOut - e.lastValues()[0]);
    assertThat(Math.abs(e.residual())).isGreaterThan(0.01 * small);
  }

  @Test
  void a_mass_that_grows_without_end_is_named_with_its_last_values() {
    // The printed wing alone weighs more than this loading allows: each round asks for a larger wing.
    WingSizing tooLight =
        WingSizing.open()
            .wingLoading(WingLoading.kilogramsPerSquareMetre(0.4))
            .aspectRatio(6.5)
            .taperRatio(0.7)
            .section(TestGlider.WEDGE);
    DesignBrief brief =
        TestGlider.brief()
            .wing(tooLight)
            .fuselage(wing -> TestGlider.body(700.0 * wing.planform().span().metres()).apply(wing));
    ConvergenceException e = catchThrowableOfType(ConvergenceException.class, () -> SizingLoop.of(brief).solve());
    assertThat(e).hasMessageContaining("mass").hasMessageContaining("settle");
    assertThat(e.lastValues()[1]).isGreaterThan(e.lastValues()[0]);
    assertThat(e.iterations()).isLessThan(100);
  }

  @Test
  void a_loading_that_cannot_be_reached_hears_one_that_can() {
    ConvergenceException e = catchThrowableOfType(ConvergenceException.class, () -> SizingLoop.of(byLoading(0.4)).solve());
    assertThat(e).hasMessageContaining("every glider tried came out heavier").hasMessageContaining("a larger wing weighs more");
    Matcher said = Pattern.compile("came out was ([0-9.]+) kg/m²").matcher(e.getMessage());
    assertThat(said.find()).isTrue();
    double reachable = Double.parseDouble(said.group(1));
    assertThat(reachable).isGreaterThan(0.4);
    double more = 1.3 * reachable;
    assertThat(value(SizingLoop.of(byLoading(more)).solve(), "wing.loading_kg_per_m2")).isCloseTo(more, within(1e-8));
  }

  private static DesignBrief byLoading(double kilogramsPerSquareMetre) {
    WingSizing wing =
        WingSizing.open()
            .wingLoading(WingLoading.kilogramsPerSquareMetre(kilogramsPerSquareMetre))
            .aspectRatio(6.5)
            .taperRatio(0.7)
            .section(TestGlider.WEDGE);
    return TestGlider.brief()
        .wing(wing)
        .fuselage(sized -> TestGlider.body(700.0 * sized.planform().span().metres()).apply(sized));
  }

  @Test
  void tails_that_do_not_fit_are_refused_with_the_lengths_in_question() {
    assertThatThrownBy(() -> SizingLoop.of(TestGlider.brief().fuselage(TestGlider.body(115))).solve())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("fuselage must be longer")
        .hasMessageContaining("115 mm")
        .hasMessageContaining("tails need");
  }

  @Test
  void a_least_arm_that_does_not_fit_is_refused() {
    assertThatThrownBy(() -> SizingLoop.of(TestGlider.brief().tailArmAtLeast(millimetres(400))).solve())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("fuselage must be longer");
  }

  @Test
  void a_tail_heavy_load_that_no_ballast_balances_is_refused_with_the_places() {
    DesignBrief brief =
        TestGlider.brief()
            .wingBetween(millimetres(20), millimetres(30))
            .staticMargin(0.6)
            .tails(
                TestGlider.PLATE,
                TestGlider.brief().tailPolar(),
                new TailBrief(0.05, 3.5, 0.8),
                new TailBrief(0.01, 1.5, 0.7))
            .carrying(MassItem.of("lamp", Mass.grams(60), Placement.at(millimetres(280), Length.ZERO)));
    assertThatThrownBy(() -> SizingLoop.of(brief).solve())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("no ballast")
        .hasMessageContaining("neutral point");
  }

  @Test
  void the_arm_is_at_least_the_least_that_was_asked() {
    Design design = SizingLoop.of(TestGlider.noseHeavy().staticMargin(0.2).tailArmAtLeast(millimetres(120))).solve();
    assertThat(value(design, "horizontal_tail.arm_m")).isGreaterThanOrEqualTo(0.12 - 1e-12);
  }

  @Test
  void the_same_brief_gives_the_same_numbers_to_the_bit() {
    Design one = SizingLoop.of(TestGlider.brief()).solve();
    Design two = SizingLoop.of(TestGlider.brief()).solve();
    one.numbers().forEach((name, step) -> assertThat(two.number(name).value()).as(name).isEqualTo(step.value()));
  }
}
