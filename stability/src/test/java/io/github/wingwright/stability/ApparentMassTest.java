// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ApparentMassTest {
  @ParameterizedTest
  @MethodSource("published")
  void agrees_with_Lamb_and_Munk(PublishedValues.Row row) {
    Offset<Double> tolerance = within(row.number("tolerance"));
    double f = row.number("fineness");
    assertThat(ApparentMass.axial(f)).as(row.toString()).isCloseTo(row.number("axial"), tolerance);
    assertThat(ApparentMass.transverse(f)).as(row.toString()).isCloseTo(row.number("transverse"), tolerance);
    assertThat(ApparentMass.rotational(f)).as(row.toString()).isCloseTo(row.number("rotational"), tolerance);
    assertThat(ApparentMass.munkFactor(f))
        .isCloseTo(row.number("transverse") - row.number("axial"), within(2 * row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(ApparentMassTest.class, "apparent-mass.csv").rows();
  }

  @Test
  void a_sphere_carries_half_of_the_air_it_displaces_and_feels_no_couple() {
    assertThat(ApparentMass.axial(1)).isCloseTo(0.5, within(1e-15));
    assertThat(ApparentMass.transverse(1)).isCloseTo(0.5, within(1e-15));
    assertThat(ApparentMass.munkFactor(1)).isCloseTo(0.0, within(1e-15));
    assertThat(ApparentMass.rotational(1)).isZero();
  }

  @Test
  void series_and_closed_form_meet() {
    double below = 0.05 * (1 - 1e-9);
    double above = 0.05;
    assertThat(ApparentMass.along(below)).isCloseTo(ApparentMass.along(above), within(1e-9));
    assertThat(ApparentMass.across(below)).isCloseTo(ApparentMass.across(above), within(1e-9));
  }

  @Test
  void the_coefficients_are_the_integrals_that_define_them() {
    // α₀ = a·b²·∫ dλ/((a²+λ)^(3/2)·(b²+λ)) from 0 to ∞, with a = f, b = 1; λ = u/(1−u).
    Seeded.doubles(5, 30, 1.1, 12)
        .forEach(
            f -> {
              double integral =
                  Quadrature.integrate(
                          u -> {
                            double lambda = u / (1 - u);
                            double jacobian = 1 / ((1 - u) * (1 - u));
                            return f * jacobian / (Math.pow(f * f + lambda, 1.5) * (1 + lambda));
                          },
                          0,
                          1,
                          Tolerance.relative(1e-9))
                      .value();
              double e = ApparentMass.eccentricity(f);
              assertThat(ApparentMass.along(e)).isCloseTo(integral, within(1e-7));
              assertThat(2 * ApparentMass.across(e) + ApparentMass.along(e)).isCloseTo(2.0, within(1e-11));
            });
  }
}
