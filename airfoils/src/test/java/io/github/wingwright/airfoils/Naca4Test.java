// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class Naca4Test {
  static Stream<PublishedValues.Row> ordinates() {
    return PublishedValues.beside(Naca4Test.class, "ordinates.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("ordinates")
  void ordinates_at_a_station_are_the_published_ones(PublishedValues.Row row) {
    Naca4 section = Naca4.parse(row.text("section"));
    double station = row.number("station_percent") / 100;
    assertThat(100 * section.ordinate(Surface.UPPER, station))
        .as(row.toString())
        .isCloseTo(row.number("upper_percent"), within(row.number("tolerance_percent")));
    assertThat(100 * section.ordinate(Surface.LOWER, station))
        .as(row.toString())
        .isCloseTo(row.number("lower_percent"), within(row.number("tolerance_percent")));
  }

  static Stream<PublishedValues.Row> geometry() {
    return PublishedValues.beside(Naca4Test.class, "geometry.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("geometry")
  void nose_and_ends_are_those_of_an_independent_computation(PublishedValues.Row row) {
    Naca4 section = Naca4.parse(row.text("section")).withTrailingEdge(TrailingEdge.valueOf(row.text("edge")));
    double tolerance = row.number("tolerance");
    assertThat(section.noseRadius()).isCloseTo(row.number("nose_radius"), within(tolerance));
    assertThat(section.noseOverhang()).isCloseTo(row.number("overhang"), within(tolerance));
    SurfacePoint upper = section.point(Surface.UPPER, 1);
    SurfacePoint lower = section.point(Surface.LOWER, 1);
    assertThat(upper.x()).isCloseTo(row.number("upper_end_x"), within(tolerance));
    assertThat(upper.y()).isCloseTo(row.number("upper_end_y"), within(tolerance));
    assertThat(lower.x()).isCloseTo(row.number("lower_end_x"), within(tolerance));
    assertThat(lower.y()).isCloseTo(row.number("lower_end_y"), within(tolerance));
    assertThat(section.trailingEdgeAngle().degrees()).isCloseTo(row.number("edge_angle_deg"), within(1e-7));
  }

  @Test
  void the_true_greatest_thickness_is_not_the_nominal_one() {
    // Roots of the derivative, computed independently with 30 digits.
    Naca4 open = Naca4.parse("0012");
    assertThat(open.maximumThicknessPosition()).isCloseTo(0.299827878070144, within(1e-12));
    assertThat(open.maximumThickness()).isCloseTo(0.12 * 1.00028788479978, within(1e-14));
    Naca4 closed = open.withTrailingEdge(TrailingEdge.CLOSED);
    assertThat(closed.maximumThicknessPosition()).isCloseTo(0.299528435330541, within(1e-12));
    assertThat(closed.maximumThickness()).isCloseTo(0.12 * 1.00011851389258, within(1e-14));
  }

  @Test
  void worked_numbers_of_the_documentation() {
    assertThat(FourDigitThickness.halfThickness(0.12, 0.1015, 0.3)).isCloseTo(0.0600172664, within(5e-11));
    assertThat(FourDigitMeanLine.ordinate(0.02, 0.4, 0.7)).isCloseTo(0.015, within(1e-15));
    assertThat(FourDigitThickness.noseRadius(0.12)).isCloseTo(0.0158669298, within(5e-11));
    Naca4 section = Naca4.parse("2412");
    assertThat(section.ordinate(Surface.UPPER, 0.3)).isCloseTo(0.078785, within(5e-7));
    assertThat(section.ordinate(Surface.LOWER, 0.3)).isCloseTo(-0.041286, within(5e-7));
    assertThat(Naca4.parse("0012").curvature(Surface.UPPER, 0)).isCloseTo(63.02, within(0.005));
    assertThat(section.noseOverhang()).isCloseTo(7.793e-5, within(5e-9));
  }

  @Test
  void the_station_equation_is_solved_to_the_last_digits() {
    Naca4 section = Naca4.parse("6409");
    for (double station = 0.001; station < 0.9995; station += 0.0371) {
      for (Surface side : Surface.values()) {
        double parameter = section.parameterAt(side, station);
        assertThat(section.point(side, Math.min(parameter, 1)).x()).isCloseTo(station, within(1e-14));
      }
    }
  }

  @Test
  void the_surface_has_its_known_tiny_corner_over_the_greatest_camber() {
    // Slope jumps of the open 2412, computed independently: −2.936e−4 above, −3.062e−4 below.
    Naca4 section = Naca4.parse("2412");
    for (Surface side : Surface.values()) {
      double jump = section.point(side, 0.4 + 1e-9).slopeAngle() - section.point(side, 0.4 - 1e-9).slopeAngle();
      assertThat(jump).isCloseTo(side == Surface.UPPER ? -2.936e-4 : -3.062e-4, within(1e-7));
    }
  }

  @Test
  void a_given_trailing_edge_is_made_without_moving_the_thickest_part() {
    Naca4 section = Naca4.parse("2408").withTrailingEdgeThickness(0.01);
    assertThat(section.trailingEdgeThickness()).isCloseTo(0.01, within(1e-15));
    assertThat(2 * FourDigitThickness.of(0.08, TrailingEdge.OPEN).withTrailingEdgeThickness(0.01).halfThickness(1))
        .isCloseTo(0.01, within(1e-15));
    assertThat(section.maximumThickness()).isCloseTo(0.08, within(2e-4));
  }

  @Test
  void perpendicular_and_vertical_construction_differ_by_the_known_amount() {
    // Up to 2.3e−3 chord at the published stations, 6 % camber (independent computation).
    Naca4 perpendicular = Naca4.parse("6412");
    Naca4 vertical = perpendicular.withConstruction(Construction.VERTICAL);
    double largest = 0;
    for (double x : new double[] {0.0125, 0.025, 0.05, 0.075, 0.1, 0.15, 0.2, 0.3, 0.5, 0.7, 0.9}) {
      largest = Math.max(largest, Math.abs(
          perpendicular.ordinate(Surface.UPPER, x) - vertical.ordinate(Surface.UPPER, x)));
    }
    assertThat(largest).isBetween(1e-3, 5e-3);
  }

  @Test
  void designations_are_read_and_written() {
    assertThat(Naca4.parse(" NACA 2412 ").name()).isEqualTo("NACA 2412");
    assertThat(Naca4.parse("naca2412")).isEqualTo(Naca4.of(0.02, 0.4, 0.12));
    assertThat(Naca4.parse("0009").name()).isEqualTo("NACA 0009");
    assertThat(Naca4.of(0.025, 0.41, 0.083).name())
        .isEqualTo("4-digit section, camber 2.5 % at 41 %, thickness 8.3 %");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "241", "23012", "24 12", "NACA", "abcd", "２４１２", "-412", "2412.5", "0412", "2012", "2400", "2460"})
  void anything_else_is_refused_with_the_digits_explained(String designation) {
    assertThatThrownBy(() -> Naca4.parse(designation))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("camber in % of chord")
        .hasMessageContaining(designation);
  }

  @Test
  void parameters_outside_the_family_are_refused() {
    assertThatThrownBy(() -> Naca4.of(0.2, 0.4, 0.12)).hasMessageContaining("maximum camber must be from 0 to 0.1");
    assertThatThrownBy(() -> Naca4.of(0.02, Double.NaN, 0.12)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Naca4.of(0.02, 0.4, -0.12)).hasMessageContaining("thickness ratio must be positive");
    assertThatThrownBy(() -> Naca4.of(0.02, 0.4, Double.POSITIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Naca4.parse("2412").ordinate(Surface.UPPER, 1.2)).hasMessageContaining("station");
    assertThatThrownBy(() -> Naca4.parse("2412").withTrailingEdgeThickness(0.07))
        .hasMessageContaining("trailing-edge thickness must be from 0 to 0.06");
  }

  @Test
  void a_section_that_folds_over_itself_is_recognised() {
    assertThat(Naca4.of(0.09, 0.1, 0.2).folds()).isTrue();
    assertThat(Naca4.of(0.09, 0.1, 0.2).findings()).anyMatch(f -> f.message().contains("folds over itself"));
    assertThat(Naca4.parse("2412").folds()).isFalse();
    assertThat(Naca4.parse("2412").findings()).isEmpty();
    assertThat(Naca4.parse("0004").findings()).singleElement()
        .satisfies(f -> assertThat(f.message()).contains("thickness ratio lies outside"));
    assertThat(Naca4.parse("9512").folds()).isFalse();
  }

  @Test
  void the_outline_runs_round_the_nose_and_repeats_the_surface_equations() {
    Naca4 section = Naca4.parse("4412");
    double[] x = new double[101];
    double[] y = new double[101];
    section.outline(x, y);
    assertThat(x[50]).isZero();
    assertThat(y[0]).isPositive();
    assertThat(y[100]).isNegative();
    for (int i = 0; i <= 100; i++) {
      double parameter = 0.5 * (1 + Math.cos(2 * Math.PI * i / 100));
      SurfacePoint point = section.point(i <= 50 ? Surface.UPPER : Surface.LOWER, Math.min(parameter, 1));
      assertThat(x[i]).isCloseTo(point.x(), within(1e-14));
      assertThat(y[i]).isCloseTo(point.y(), within(2e-9));
    }
    Contour fromGeneral = ComposedSection.of(section.meanLine(), section.thicknessForm(), section.construction())
        .contour(101);
    assertThat(fromGeneral.ys()).containsExactly(y, within(1e-15));
  }

  @Test
  void public_coordinates_of_the_12_percent_section_are_reproduced() {
    // Public university coordinate collection, seven decimals; worst deviation of all 66 points 6.5e−8.
    double[][] published = {{0.9994161, 0.0013419}, {0.9906850, 0.0025595}, {0.0005839, 0.0042603}};
    Naca4 section = Naca4.parse("0012");
    for (double[] p : published) {
      assertThat(section.ordinate(Surface.UPPER, p[0])).isCloseTo(p[1], within(2e-7));
    }
  }
}
