// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SkinFrictionTest {

  @ParameterizedTest
  @MethodSource("friction")
  void agrees_with_the_published_and_the_independently_computed_values(PublishedValues.Row row) {
    double reynolds = row.number("reynolds");
    double friction =
        switch (row.text("law")) {
          case "laminar" -> SkinFriction.laminar(reynolds);
          case "mixed" ->
              SkinFriction.mixed(reynolds, row.number("parameter"), TurbulentFriction.PRANDTL_SCHLICHTING);
          case "partly" ->
              SkinFriction.partlyLaminar(reynolds, row.number("parameter"), TurbulentFriction.PRANDTL_SCHLICHTING);
          default -> TurbulentFriction.valueOf(row.text("law")).coefficient(reynolds);
        };
    assertThat(friction)
        .as(row.toString())
        .isCloseTo(row.number("friction"), withinPercentage(row.number("tolerance_percent")));
  }

  static Stream<PublishedValues.Row> friction() {
    return PublishedValues.beside(SkinFrictionTest.class, "skin-friction.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("transitions")
  void the_constant_of_the_substitution_is_the_published_one(PublishedValues.Row row) {
    TurbulentFriction law = TurbulentFriction.valueOf(row.text("law"));
    double transition = row.number("transition");
    double reynolds = 4.0 * transition;
    double constant = reynolds * (law.coefficient(reynolds) - SkinFriction.mixed(reynolds, transition, law));
    assertThat(constant)
        .as(row.toString())
        .isCloseTo(row.number("constant"), withinPercentage(row.number("tolerance_percent")));
  }

  static Stream<PublishedValues.Row> transitions() {
    return PublishedValues.beside(SkinFrictionTest.class, "transition-constants.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("plates")
  void the_textbook_plate_drags_as_in_the_book(PublishedValues.Row row) {
    double reynolds = 1.225 * 120.0 * 0.05 / 1.789e-5;
    double friction =
        row.text("layer").equals("laminar") ? SkinFriction.laminar(reynolds) : SkinFriction.fifthRoot(reynolds);
    double drag = 2.0 * 0.5 * 1.225 * 120.0 * 120.0 * 0.05 * friction;
    assertThat(drag)
        .as(row.toString())
        .isCloseTo(row.number("drag_N"), withinPercentage(row.number("tolerance_percent")));
  }

  static Stream<PublishedValues.Row> plates() {
    return PublishedValues.beside(SkinFrictionTest.class, "flat-plate.csv").rows();
  }

  @ParameterizedTest
  @EnumSource
  void mixed_friction_is_continuous_at_transition(TurbulentFriction law) {
    Seeded.logUniform(1, 50, 1e5, 3e6)
        .forEach(
            t -> {
              double laminar = SkinFriction.laminar(t);
              assertThat(SkinFriction.mixed(t * (1 + 1e-12), t, law)).isCloseTo(laminar, within(1e-9));
              assertThat(SkinFriction.mixedWithContinuousThickness(t * (1 + 1e-12), t, law))
                  .isCloseTo(laminar, within(1e-9));
            });
  }

  @ParameterizedTest
  @EnumSource
  void mixed_friction_lies_between_laminar_and_turbulent(TurbulentFriction law) {
    Seeded.points(2, 200, new double[] {1e5, 1e6}, new double[] {1.01, 50})
        .forEach(
            p -> {
              double reynolds = p[0] * p[1];
              assertThat(SkinFriction.mixed(reynolds, p[0], law))
                  .isGreaterThan(SkinFriction.laminar(reynolds))
                  .isLessThan(law.coefficient(reynolds));
            });
  }

  @ParameterizedTest
  @EnumSource
  void a_turbulent_layer_that_starts_where_its_thickness_says_has_the_momentum_loss_of_the_laminar_part(
      TurbulentFriction law) {
    double transition = 4e5;
    double start = law.reynoldsForFrictionLength(transition * SkinFriction.laminar(transition));
    assertThat(start * law.coefficient(start))
        .isCloseTo(transition * SkinFriction.laminar(transition), withinPercentage(1e-10));
  }

  @Test
  void the_implicit_law_solves_its_equation_everywhere() {
    Seeded.logUniform(3, 500, 1e4, 1e10)
        .forEach(
            re ->
                assertThat(SkinFriction.karmanSchoenherrResidual(SkinFriction.karmanSchoenherr(re), re))
                    .as("Re %s", re)
                    .isCloseTo(0.0, within(1e-12)));
  }

  @Test
  void the_documented_examples_hold() {
    assertThat(SkinFriction.mixedWithContinuousThickness(1e6, 5e5, TurbulentFriction.FIFTH_ROOT))
        .isCloseTo(0.00324547, within(5e-9));
    assertThat(SkinFriction.compressibilityDivisor(0.3)).isCloseTo(1.00840, within(1e-5));
    assertThat(SkinFriction.compressibilityDivisor(0.0)).isEqualTo(1.0);
    assertThat(SkinFriction.partlyLaminar(5.50966e7, 0.1, TurbulentFriction.PRANDTL_SCHLICHTING))
        .isCloseTo(0.00210305, within(5e-9));
  }

  @Test
  void the_laminar_law_is_the_integral_of_its_local_friction() {
    // mean of 0.664/√Re_x over the plate
    double mean =
        Quadrature.integrate(
                t -> 2.0 * t * 0.664 / (t * Math.sqrt(2e5)),
                0.0,
                1.0,
                Tolerance.relative(1e-10))
            .value();
    assertThat(SkinFriction.laminar(2e5)).isCloseTo(mean, within(1e-12));
  }
}
