// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class FormFactorTest {

  @ParameterizedTest
  @MethodSource("bodies")
  void bodies_have_the_published_form_factors(PublishedValues.Row row) {
    assertThat(BodyFormFactor.valueOf(row.text("method")).factor(row.number("fineness"), 0.004))
        .as(row.toString())
        .isCloseTo(row.number("factor"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> bodies() {
    return PublishedValues.beside(FormFactorTest.class, "body-form-factors.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("surfaces")
  void surfaces_have_the_published_form_factors(PublishedValues.Row row) {
    assertThat(
            SurfaceFormFactor.valueOf(row.text("method"))
                .factor(
                    row.number("thickness"),
                    row.number("position"),
                    row.number("mach"),
                    Math.toRadians(row.number("sweep_deg"))))
        .as(row.toString())
        .isCloseTo(row.number("factor"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> surfaces() {
    return PublishedValues.beside(FormFactorTest.class, "surface-form-factors.csv").rows();
  }

  @Test
  void the_mach_bracket_never_lowers_the_drag_of_a_slow_model() {
    Seeded.doubles(1, 100, 0.0, 0.19672)
        .forEach(m -> assertThat(SurfaceFormFactor.raymer(0.1, 0.3, m, 0.0)).isEqualTo(1.21));
    assertThat(SurfaceFormFactor.raymer(0.1, 0.3, 0.19673, 0.0)).isGreaterThan(1.21);
  }

  @Test
  void the_polynomial_is_refused_outside_its_fit() {
    assertThatThrownBy(() -> BodyFormFactor.SHEVELL.factor(30.0, 0.004))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("fineness ratio for the polynomial of Shevell must be 4.0 to 10.0, was 30.0");
    assertThat(BodyFormFactor.SHEVELL.isDefinedAt(30.0)).isFalse();
    assertThat(BodyFormFactor.shevell(30.0)).as("why it is refused").isGreaterThan(70.0);
  }

  @ParameterizedTest
  @EnumSource
  void a_body_outside_the_fit_gets_a_finding_and_one_inside_does_not(BodyFormFactor method) {
    assertThat(method.findings(0.5 * (method.domain().lower() + method.domain().upper()))).isEmpty();
    assertThat(method.findings(method.domain().upper() + 1.0)).hasSize(1);
  }

  @ParameterizedTest
  @EnumSource
  void a_body_drags_more_than_its_friction_within_the_fit(BodyFormFactor method) {
    Seeded.doubles(2, 50, method.domain().lower(), method.domain().upper())
        .forEach(f -> assertThat(method.factor(f, 0.006)).isGreaterThan(1.0));
  }

  @Test
  void the_laminar_form_on_the_wetted_area_is_hoerners_on_the_frontal_area() {
    Seeded.points(3, 100, new double[] {2, 12}, new double[] {0.003, 0.02})
        .forEach(
            p -> {
              double f = p[0];
              double frontal = 0.33 / f + p[1] * (3.0 * f + 3.0 / Math.sqrt(f));
              assertThat(p[1] * BodyFormFactor.hoernerLaminar(f, p[1]) * 3.0 * f).isCloseTo(frontal, within(1e-12));
            });
    assertThat(BodyFormFactor.hoernerLaminar(6.0, 0.01)).isCloseTo(1.373597, within(5e-7));
  }

  @Test
  void a_section_at_model_reynolds_numbers_is_told_that_form_factors_mislead() {
    assertThat(SurfaceFormFactor.TORENBEEK.findings(0.09, 0.3, 0, 0, 6e4)).hasSize(1);
    assertThat(SurfaceFormFactor.TORENBEEK.findings(0.09, 0.3, 0, 0, 6e6)).isEmpty();
    assertThat(SurfaceFormFactor.TORENBEEK.findings(0.30, 0.3, 0, 0, 6e6)).hasSize(1);
    assertThat(BodyFormFactor.nacelle(3.5)).isCloseTo(1.1, within(1e-15));
  }
}
