// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ThinAirfoilTest {
  static Stream<PublishedValues.Row> rows() {
    return PublishedValues.beside(ThinAirfoilTest.class, "thin-airfoil.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void closed_form_and_quadrature_agree_with_an_independent_computation(PublishedValues.Row row) {
    double m = row.number("camber");
    double p = row.number("position");
    for (ThinAirfoil theory : new ThinAirfoil[] {
      ThinAirfoil.fourDigit(m, p), ThinAirfoil.byQuadrature(new FourDigitMeanLine(m, p))
    }) {
      double tolerance = row.number("tolerance");
      assertThat(theory.idealAngle().radians()).isCloseTo(row.number("mean_slope_rad"), within(tolerance));
      assertThat(theory.a1()).isCloseTo(row.number("a1"), within(tolerance));
      assertThat(theory.a2()).isCloseTo(row.number("a2"), within(tolerance));
      assertThat(theory.zeroLiftAngle().degrees())
          .isCloseTo(row.number("zero_lift_deg"), within(100 * tolerance));
      assertThat(theory.idealAngle().degrees()).isCloseTo(row.number("ideal_deg"), within(100 * tolerance));
      assertThat(theory.designLiftCoefficient()).isCloseTo(row.number("design_lift"), within(10 * tolerance));
      assertThat(theory.momentAboutQuarterChord()).isCloseTo(row.number("moment"), within(10 * tolerance));
    }
  }

  @ParameterizedTest
  @CsvSource({
    // Mean-line data of NACA Report 824, from memory; a coarser numerical method, off by up to 3 % (lift, moment)
    "0.2, 0.90, -0.113", "0.3, 0.80, -0.134", "0.4, 0.76, -0.157", "0.5, 0.75, -0.187", "0.6, 0.76, -0.222",
    "0.7, 0.80, -0.266"
  })
  void published_mean_lines_agree_within_their_coarser_method(double position, double lift, double moment) {
    ThinAirfoil theory = ThinAirfoil.fourDigit(0.06, position);
    assertThat(theory.designLiftCoefficient()).isCloseTo(lift, within(0.03 * lift));
    assertThat(theory.momentAboutQuarterChord()).isCloseTo(moment, within(0.031 * -moment));
  }

  @Test
  void a_parabola_has_the_textbook_values() {
    // Glauert: αL0 = −2·m, design lift 4π·m, moment −π·m.
    ThinAirfoil theory = ThinAirfoil.of(PolynomialMeanLine.of(0.2, -0.2));
    assertThat(theory.zeroLiftAngle().radians()).isCloseTo(-0.1, within(1e-14));
    assertThat(theory.designLiftCoefficient()).isCloseTo(4 * Math.PI * 0.05, within(1e-13));
    assertThat(theory.momentAboutQuarterChord()).isCloseTo(-Math.PI * 0.05, within(1e-13));
    assertThat(theory.momentAboutNose(Angle.radians(0.05))).isCloseTo(-Math.PI * 0.05 - theory.liftCoefficient(Angle.radians(0.05)) / 4, within(1e-13));
  }

  @Test
  void a_flat_arc_tends_to_the_parabola() {
    ThinAirfoil arc = ThinAirfoil.of(new CircularArcMeanLine(1e-3));
    assertThat(arc.zeroLiftAngle().radians()).isCloseTo(-2e-3, within(1e-8));
  }

  @Test
  void a_plain_flap_of_20_percent_is_55_percent_effective() {
    assertThat(ThinAirfoil.flapEffectiveness(0.8)).isCloseTo(0.5498, within(5e-5));
    // The same from a kinked mean line.
    double slope = 1e-4;
    MeanLine flapped = new MeanLine() {
      private static final long serialVersionUID = 1L;

      @Override
      public String name() {
        return "kinked";
      }

      @Override
      public double ordinate(double x) {
        return x < 0.8 ? 0 : -slope * (x - 0.8);
      }

      @Override
      public double slope(double x) {
        return x < 0.8 ? 0 : -slope;
      }

      @Override
      public double secondDerivative(double x) {
        return 0;
      }

      @Override
      public double[] breaks() {
        return new double[] {0.8};
      }
    };
    ThinAirfoil theory = ThinAirfoil.of(flapped);
    assertThat(-theory.zeroLiftAngle().radians() / slope).isCloseTo(ThinAirfoil.flapEffectiveness(0.8), within(1e-10));
    assertThat(theory.momentAboutQuarterChord() / slope).isCloseTo(ThinAirfoil.flapMoment(0.8), within(1e-10));
  }

  @Test
  void worked_numbers_of_the_documentation() {
    ThinAirfoil theory = ThinAirfoil.of(Naca4.parse("2412"));
    assertThat(theory.zeroLiftAngle().degrees()).isCloseTo(-2.07724, within(5e-6));
    assertThat(theory.idealAngle().degrees()).isCloseTo(0.25742, within(5e-6));
    assertThat(theory.designLiftCoefficient()).isCloseTo(0.256025, within(5e-7));
    assertThat(theory.momentAboutQuarterChord()).isCloseTo(-0.0531195, within(5e-8));
  }
}
