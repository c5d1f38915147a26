// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import org.apache.commons.math3.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CrossSectionTest {
  record Drawn(CrossSection section, double width, double height) {}

  static Stream<Drawn> drawn() {
    return Stream.of(
            CrossSection.ellipse(),
            CrossSection.roundedRectangle(0),
            CrossSection.roundedRectangle(0.3),
            CrossSection.roundedRectangle(1),
            CrossSection.superellipse(1.4),
            CrossSection.superellipse(2.5),
            CrossSection.superellipse(6))
        .flatMap(s -> Stream.of(new Drawn(s, 0.04, 0.04), new Drawn(s, 0.03, 0.08), new Drawn(s, 1.4, 1.1)));
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void area_and_perimeter_are_those_of_a_polygon_along_the_outline(Drawn d) {
    int sides = 400_000;
    double area = 0;
    double perimeter = 0;
    double y1 = 0.5 * d.width() * d.section().radial(0, d.width(), d.height());
    double z1 = 0;
    for (int i = 1; i <= sides; i++) {
      double angle = 2 * Math.PI * i / sides;
      double rho = d.section().radial(angle, d.width(), d.height());
      double y2 = 0.5 * d.width() * rho * Math.cos(angle);
      double z2 = 0.5 * d.height() * rho * Math.sin(angle);
      area += 0.5 * (y1 * z2 - y2 * z1);
      perimeter += Math.hypot(y2 - y1, z2 - z1);
      y1 = y2;
      z1 = z2;
    }
    assertThat(d.section().area(d.width(), d.height())).isCloseTo(area, withinPercentage(1e-7));
    assertThat(d.section().perimeter(d.width(), d.height())).isCloseTo(perimeter, withinPercentage(1e-7));
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void it_touches_its_width_and_its_height_and_is_symmetric(Drawn d) {
    CrossSection s = d.section();
    assertThat(s.radial(0, d.width(), d.height())).isCloseTo(1, within(1e-12));
    assertThat(s.radial(0.5 * Math.PI, d.width(), d.height())).isCloseTo(1, within(1e-12));
    for (double angle = 0.05; angle < 1.57; angle += 0.1) {
      double rho = s.radial(angle, d.width(), d.height());
      assertThat(rho).isBetween(1 / Math.sqrt(2), Math.sqrt(2) + 1e-12);
      assertThat(rho * Math.max(Math.cos(angle), Math.sin(angle))).isLessThanOrEqualTo(1 + 1e-12);
      assertThat(s.radial(Math.PI - angle, d.width(), d.height())).isCloseTo(rho, within(1e-12));
      assertThat(s.radial(-angle, d.width(), d.height())).isCloseTo(rho, within(1e-12));
    }
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void a_section_of_ones_own_needs_only_its_outline(Drawn d) {
    CrossSection own = new CrossSection() {
      private static final long serialVersionUID = 1L;

      @Override
      public String name() {
        return "own";
      }

      @Override
      public double radial(double angle, double width, double height) {
        return d.section().radial(angle, width, height);
      }
    };
    assertThat(own.area(d.width(), d.height()))
        .isCloseTo(d.section().area(d.width(), d.height()), withinPercentage(1e-7));
    assertThat(own.perimeter(d.width(), d.height()))
        .isCloseTo(d.section().perimeter(d.width(), d.height()), withinPercentage(1e-4));
  }

  @Test
  void a_superellipse_has_the_area_that_the_gamma_function_gives() {
    for (double n : new double[] {1.2, 1.5, 2, 2.5, 3, 4, 8, 12}) {
      double g = Math.exp(2 * Gamma.logGamma(1 + 1 / n) - Gamma.logGamma(1 + 2 / n));
      assertThat(CrossSection.superellipse(n).area(2, 2)).isCloseTo(4 * g, withinPercentage(1e-8));
    }
  }

  @Test
  void limits_are_known_figures() {
    assertThat(CrossSection.superellipse(2).perimeter(0.3, 0.2))
        .isCloseTo(CrossSection.ellipse().perimeter(0.3, 0.2), withinPercentage(1e-8));
    assertThat(CrossSection.roundedRectangle(1).perimeter(2, 2)).isCloseTo(2 * Math.PI, within(1e-14));
    assertThat(CrossSection.roundedRectangle(1).area(4, 2)).isCloseTo(4 + Math.PI, within(1e-14));
    assertThat(CrossSection.roundedRectangle(0).perimeter(4, 2)).isCloseTo(12, within(1e-14));
    assertThat(CrossSection.ellipse().perimeter(2, 2)).isCloseTo(2 * Math.PI, within(1e-14));
    assertThat(CrossSection.ellipse().perimeter(2, 1e-9)).isCloseTo(4, within(1e-12));
  }

  @Test
  void the_perimeter_of_an_ellipse_is_the_integral_along_it() {
    for (double b : new double[] {0.9, 0.5, 0.1}) {
      double quarter =
          Simpson.of(s -> 0.5 * Math.PI * Math.hypot(Math.sin(0.5 * Math.PI * s), b * Math.cos(0.5 * Math.PI * s)));
      assertThat(CrossSection.ellipse().perimeter(2, 2 * b)).isCloseTo(4 * quarter, withinPercentage(1e-10));
    }
  }

  @Test
  void what_is_no_section_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CrossSection.superellipse(0.5))
        .withMessage("exponent of a superellipse must be 1.2 to 12.0, was 0.5");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CrossSection.roundedRectangle(1.1))
        .withMessage("rounding of a rectangle must be 0.0 to 1.0, was 1.1");
  }
}
