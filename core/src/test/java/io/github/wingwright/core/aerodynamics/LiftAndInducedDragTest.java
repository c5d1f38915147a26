// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LiftAndInducedDragTest {
  private static final double TWO_PI = 2.0 * Math.PI;

  @ParameterizedTest
  @MethodSource("slopes")
  void lift_slopes_are_the_published_ones(PublishedValues.Row row) {
    double a = row.number("aspect_ratio");
    double slope =
        switch (row.text("method")) {
          case "helmbold" -> LiftSlope.helmbold(TWO_PI, a);
          case "lifting line" -> LiftSlope.liftingLine(TWO_PI, a, row.number("tau"));
          default ->
              LiftSlope.handbook(
                  a,
                  Math.sqrt(1.0 - row.number("mach") * row.number("mach")),
                  row.number("kappa"),
                  Math.toRadians(row.number("sweep_deg")));
        };
    assertThat(slope).as(row.toString()).isCloseTo(row.number("slope"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> slopes() {
    return PublishedValues.beside(LiftAndInducedDragTest.class, "lift-slope.csv").rows();
  }

  @Test
  void helmbold_and_the_handbook_are_one_formula_without_sweep_and_mach_number() {
    Seeded.logUniform(1, 200, 0.2, 60)
        .forEach(a -> assertThat(LiftSlope.handbook(a, 1, 1, 0)).isCloseTo(LiftSlope.helmbold(TWO_PI, a), within(1e-12)));
  }

  @Test
  void helmbold_goes_to_jones_limit_for_low_and_to_the_section_for_high_aspect_ratio() {
    assertThat(LiftSlope.helmbold(TWO_PI, 0.001) / (0.5 * Math.PI * 0.001)).isCloseTo(1.0, within(1e-3));
    assertThat(LiftSlope.helmbold(TWO_PI, 1e6)).isCloseTo(TWO_PI, within(1e-4));
  }

  @Test
  void the_library_solves_the_lifting_line_to_the_slope_that_its_closed_form_gives() {
    LiftingLineSolution wing = LiftingLine.tapered(1.0, 8.0, 0.5).solve();
    assertThat(LiftSlope.liftingLine(TWO_PI, 8.0, wing.liftSlopeFactor())).isCloseTo(wing.liftSlope(), within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("oswald")
  void the_statistical_factor_is_the_published_one(PublishedValues.Row row) {
    assertThat(InducedDrag.oswaldStatistical(row.number("aspect_ratio")))
        .as(row.toString())
        .isCloseTo(row.number("factor"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> oswald() {
    return PublishedValues.beside(LiftAndInducedDragTest.class, "oswald.csv").rows();
  }

  @Test
  void the_statistical_factor_says_that_it_is_not_for_models_nor_for_sailplanes() {
    assertThat(InducedDrag.statisticalFindings(8.0, 5e6)).isEmpty();
    assertThat(InducedDrag.statisticalFindings(8.0, 5e4)).hasSize(1);
    assertThat(InducedDrag.statisticalFindings(20.0, 5e4)).hasSize(2);
  }

  @Test
  void the_documented_examples_of_induced_drag_hold() {
    assertThat(InducedDrag.factor(0.0172, 8.0, 0.01)).isCloseTo(0.0504731, within(5e-8));
    assertThat(InducedDrag.coefficient(0.8, 0.0172, 8.0)).isCloseTo(0.0259028, within(5e-8));
    assertThat(InducedDrag.oswald(8.0, 0.05)).isCloseTo(0.795775, within(5e-7));
    assertThat(InducedDrag.oswald(8.0, InducedDrag.factor(0.0, 8.0, 0.0))).isCloseTo(1.0, within(1e-15));
  }
}
