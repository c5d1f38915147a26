// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mean lines, thickness forms and contours beside the 4-digit ones. */
class ShapesTest {
  @ParameterizedTest
  @CsvSource({"6, 0.3", "3, 0.4", "0, 0.5", "9, 0.2", "6, 0.6", "6, 0.35"})
  void the_modified_form_meets_the_conditions_that_define_it(int nose, double position) {
    ModifiedFourDigitThickness form = new ModifiedFourDigitThickness(0.12, nose, position);
    double e = 1e-6;
    assertThat(form.halfThickness(position)).isCloseTo(0.06, within(1e-14));
    assertThat(form.slope(position)).isCloseTo(0, within(1e-13));
    assertThat(form.slope(position + 1e-12)).isCloseTo(0, within(1e-10));
    double before = (form.slope(position - e) - form.slope(position - 2 * e)) / e;
    double after = (form.slope(position + 2 * e) - form.slope(position + e)) / e;
    assertThat(after).isCloseTo(before, within(1e-4));
    assertThat(form.trailingEdgeThickness()).isCloseTo(0.02 * 0.12, within(1e-15));
    double index = nose == 9 ? Math.sqrt(3) : nose / 6.0;
    assertThat(form.noseRadius()).isCloseTo(1.101870125 * 0.12 * 0.12 * index * index, within(1e-12));
  }

  @Test
  void the_modified_form_with_index_6_at_30_percent_is_nearly_the_plain_one() {
    ModifiedFourDigitThickness modified = new ModifiedFourDigitThickness(0.12, 6, 0.3);
    FourDigitThickness plain = FourDigitThickness.of(0.12, TrailingEdge.OPEN);
    for (double x = 0.01; x < 1; x += 0.01) {
      assertThat(modified.halfThickness(x)).isCloseTo(plain.halfThickness(x), within(2e-3));
    }
  }

  @Test
  void derivatives_are_those_of_the_functions() {
    MeanLine[] lines = {
      new FourDigitMeanLine(0.04, 0.3), new CircularArcMeanLine(0.05), PolynomialMeanLine.of(0.3, -0.5, 0.2),
      new CircularArcMeanLine(0)
    };
    double e = 1e-5;
    for (MeanLine line : lines) {
      assertThat(line.ordinate(0)).isCloseTo(0, within(1e-15));
      assertThat(line.ordinate(1)).isCloseTo(0, within(1e-15));
      for (double x : new double[] {0.1, 0.25, 0.5, 0.8}) {
        assertThat(line.slope(x))
            .isCloseTo((line.ordinate(x + e) - line.ordinate(x - e)) / (2 * e), within(1e-8));
        assertThat(line.secondDerivative(x))
            .isCloseTo((line.slope(x + e) - line.slope(x - e)) / (2 * e), within(1e-7));
      }
    }
    ThicknessForm[] forms = {
      FourDigitThickness.of(0.12, TrailingEdge.CLOSED), new ModifiedFourDigitThickness(0.09, 4, 0.4),
      new PlateThickness(0.06)
    };
    for (ThicknessForm form : forms) {
      for (double x : new double[] {0.01, 0.25, 0.5, 0.8}) {
        assertThat(form.slope(x))
            .isCloseTo((form.halfThickness(x + e) - form.halfThickness(x - e)) / (2 * e), within(1e-4));
      }
    }
  }

  @Test
  void an_arc_is_an_arc() {
    CircularArcMeanLine arc = new CircularArcMeanLine(0.05);
    double radius = (0.25 + 0.0025) / 0.1;
    assertThat(arc.ordinate(0.5)).isCloseTo(0.05, within(1e-15));
    for (double x : new double[] {0.1, 0.3, 0.9}) {
      assertThat(Math.hypot(x - 0.5, arc.ordinate(x) + radius - 0.05)).isCloseTo(radius, within(1e-12));
    }
  }

  @Test
  void curvature_of_a_plate_is_that_of_its_nose_and_its_arc() {
    ComposedSection flat = ComposedSection.plate(0.04, 0);
    assertThat(flat.curvature(Surface.UPPER, 0.005)).isCloseTo(50, within(1e-3));
    assertThat(flat.curvature(Surface.UPPER, 0.5)).isCloseTo(0, within(1e-9));
    ComposedSection arc = ComposedSection.plate(0.04, 0.05);
    double radius = (0.25 + 0.0025) / 0.1;
    assertThat(arc.curvature(Surface.UPPER, 0.5)).isCloseTo(1 / (radius + 0.02), within(1e-6));
    assertThat(arc.curvature(Surface.LOWER, 0.5)).isCloseTo(-1 / (radius - 0.02), within(1e-6));
  }

  @Test
  void contours_copy_their_arrays_and_refuse_the_wrong_way_round() {
    Contour contour = Naca4.parse("2412").contour(51);
    double[] x = contour.xs();
    x[3] = 99;
    assertThat(contour.x(3)).isLessThan(1);
    double[] rx = new double[51];
    double[] ry = new double[51];
    for (int i = 0; i < 51; i++) {
      rx[i] = contour.x(50 - i);
      ry[i] = contour.y(50 - i);
    }
    assertThatThrownBy(() -> Contour.of(rx, ry)).hasMessageContaining("from the upper trailing edge round the nose");
    assertThatThrownBy(() -> Contour.of(new double[3], new double[3])).hasMessageContaining("at least 5 points");
    assertThatThrownBy(() -> Contour.of(new double[6], new double[5])).hasMessageContaining("6 and 5");
    ry[2] = Double.NaN;
    assertThatThrownBy(() -> Contour.of(rx, ry)).hasMessageContaining("ordinate of point 2");
  }

  @Test
  void polynomials_that_do_not_end_on_the_chord_are_refused() {
    assertThatThrownBy(() -> PolynomialMeanLine.of(0.2, -0.1)).hasMessageContaining("sum to zero");
    assertThatThrownBy(() -> PolynomialMeanLine.of(0.2)).hasMessageContaining("at least two");
    assertThat(PolynomialMeanLine.of(0.2, -0.2)).isEqualTo(PolynomialMeanLine.of(0.2, -0.2));
  }

  @Test
  void a_number_of_points_that_makes_no_contour_is_refused() {
    Naca4 section = Naca4.parse("2412");
    for (int points : new int[] {-1, 4, Integer.MAX_VALUE}) {
      assertThatThrownBy(() -> section.contour(points)).isInstanceOf(IllegalArgumentException.class)
          .hasMessage("number of points must be 5 to 100001, was " + points);
    }
    assertThatThrownBy(() -> section.contour(Integer.MAX_VALUE, 0.2)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("number of points must be 21 to 100001, was 2147483647");
    assertThatThrownBy(() -> section.contour(22, 0.2)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("number of points of this spacing must be odd, was 22");
  }

  @Test
  void a_point_that_the_contour_has_not_is_refused() {
    Contour contour = Naca4.parse("2412").contour(41);
    assertThatThrownBy(() -> contour.x(41)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("number of the point must be 0 to 40, was 41");
    assertThatThrownBy(() -> contour.y(-1)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("number of the point must be 0 to 40, was -1");
  }

  @Test
  void properties_read_in_one_line() {
    assertThat(Naca4.parse("0012").properties().toString()).startsWith("area 0.08").contains(", 0.0000, outline 2.0")
        .hasSizeLessThanOrEqualTo(75);
  }
}
