// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Contour;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.TrailingEdge;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

public class PanelMethodTest {
  static Stream<PublishedValues.Row> sections() {
    return PublishedValues.beside(PanelMethodTest.class, "sections.csv").rows();
  }

  private static Naca4 closed(String designation) {
    return Naca4.parse(designation).withTrailingEdge(TrailingEdge.CLOSED);
  }

  @ParameterizedTest
  @MethodSource("sections")
  void two_hundred_panels_meet_the_goals(PublishedValues.Row row) {
    PanelMethod flow = PanelMethod.of(closed(row.text("section")), 200);
    for (int degrees : new int[] {4, 8}) {
      double angle = Math.toRadians(degrees);
      assertThat(flow.liftCoefficient(angle)).isCloseTo(row.number("lift_" + degrees), within(5e-5));
      assertThat(flow.momentAboutQuarterChord(angle)).isCloseTo(row.number("moment_" + degrees), within(3e-5));
      assertThat(flow.at(Angle.radians(angle)).pressureDrag()).isCloseTo(0, within(3e-4));
    }
    assertThat(flow.zeroLiftAngle().degrees()).isCloseTo(row.number("zero_lift_deg"), within(1e-4));
    assertThat(flow.liftSlope()).isCloseTo(row.number("slope_per_rad"), within(2e-4));
  }

  @ParameterizedTest
  @MethodSource("sections")
  void two_grids_extrapolate_to_a_millionth_and_know_their_error(PublishedValues.Row row) {
    RefinedFlow flow = RefinedFlow.of(closed(row.text("section")), 200, Angle.degrees(4));
    double liftError = Math.abs(flow.liftCoefficient() - row.number("lift_4"));
    double momentError = Math.abs(flow.momentAboutQuarterChord() - row.number("moment_4"));
    assertThat(liftError).isLessThan(row.number("tolerance")).isLessThan(flow.liftError());
    assertThat(momentError).isLessThan(row.number("tolerance")).isLessThan(flow.momentError());
    assertThat(flow.liftError()).isLessThan(1e-5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"9412", "6409", "9506", "9315", "4406"})
  void the_error_falls_with_the_square_of_the_panel_length_for_strong_camber_too(String designation) {
    double angle = Math.toRadians(8);
    double exact = RefinedFlow.of(closed(designation), 400, Angle.radians(angle)).liftCoefficient();
    double coarse = PanelMethod.of(closed(designation), 100).liftCoefficient(angle) - exact;
    double fine = PanelMethod.of(closed(designation), 200).liftCoefficient(angle) - exact;
    assertThat(Math.abs(fine)).isLessThan(2e-4);
    // Where the error changes sign between grids it is far below the second-order line.
    assertThat(Math.abs(fine)).isLessThan(Math.max(Math.abs(coarse) / 3, 5e-6));
    assertThat(PanelMethod.of(closed(designation), 200).at(Angle.radians(angle)).pressureDrag()).isCloseTo(0, within(5e-4));
  }

  static Stream<PublishedValues.Row> pressures() {
    return PublishedValues.beside(PanelMethodTest.class, "pressures-2412.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("pressures")
  void pressures_are_those_of_the_conformal_map(PublishedValues.Row row) {
    PanelMethod method = PanelMethod.of(closed("2412"), 400);
    for (int degrees : new int[] {0, 4, 8}) {
      PotentialFlow flow = method.at(Angle.degrees(degrees));
      boolean upper = row.text("surface").equals("upper");
      assertThat(pressureAt(flow, row.number("x"), upper))
          .as(row.toString())
          .isCloseTo(row.number("cp_" + degrees), within(row.number("tolerance")));
    }
  }

  private static double pressureAt(PotentialFlow flow, double x, boolean upper) {
    int half = flow.size() / 2;
    for (int i = upper ? 0 : half; i < (upper ? half : flow.size() - 1); i++) {
      double a = flow.x(i);
      double b = flow.x(i + 1);
      if ((x - a) * (x - b) <= 0) {
        double speed = flow.speed(i) + (x - a) / (b - a) * (flow.speed(i + 1) - flow.speed(i));
        return 1 - speed * speed;
      }
    }
    throw new IllegalArgumentException("no panel at " + x);
  }

  /** Circle plane to section plane; Milne-Thomson, Theoretical Aerodynamics, 4th ed., chapters VI and VII. */
  private static Contour mapped(double centre, double exponent, int points) {
    double[] x = new double[points];
    double[] y = new double[points];
    double radius = 1 - centre;
    double[] re = new double[points];
    double[] im = new double[points];
    for (int i = 0; i < points; i++) {
      double t = 2 * Math.PI * i / (points - 1);
      double zr = centre + radius * Math.cos(t);
      double zi = radius * Math.sin(t);
      // q = ((ζ − 1)/(ζ + 1))^n
      double dr = (zr - 1) * (zr + 1) + zi * zi;
      double di = zi * (zr + 1) - (zr - 1) * zi;
      double m = (zr + 1) * (zr + 1) + zi * zi;
      double modulus = Math.pow(Math.hypot(dr, di) / m, exponent);
      // The cut of the power joins the two foci, inside the circle.
      double argument = exponent * Math.atan2(di, dr);
      double qr = modulus * Math.cos(argument);
      double qi = modulus * Math.sin(argument);
      double den = (1 - qr) * (1 - qr) + qi * qi;
      re[i] = exponent * ((1 + qr) * (1 - qr) - qi * qi) / den;
      im[i] = exponent * (2 * qi) / den;
    }
    re[points - 1] = re[0];
    im[0] = 0;
    im[points - 1] = 0;
    double nose = java.util.Arrays.stream(re).min().orElseThrow();
    for (int i = 0; i < points; i++) {
      x[i] = (re[i] - nose) / (re[0] - nose);
      y[i] = im[i] / (re[0] - nose);
    }
    return Contour.of(x, y);
  }

  @Test
  void an_exact_joukowski_flow_is_met() {
    // cl = 8π·(R/c)·sin α; independent: 0.59739892611099, cm −0.0023474151952643 for μ = −0.1, α = 5°.
    PanelMethod flow = PanelMethod.of(mapped(-0.1, 2, 401));
    assertThat(flow.liftCoefficient(Math.toRadians(5))).isCloseTo(0.59739892611099, within(3e-4));
    assertThat(flow.momentAboutQuarterChord(Math.toRadians(5))).isCloseTo(-0.0023474151952643, within(1e-4));
  }

  @Test
  void an_exact_karman_trefftz_flow_is_met() {
    // Trailing edge of 15°, μ = −0.08, α = 6°; independent: 0.73510830251056, cm −0.013803775099214.
    PanelMethod flow = PanelMethod.of(mapped(-0.08, 2 - 15.0 / 180, 401));
    assertThat(flow.liftCoefficient(Math.toRadians(6))).isCloseTo(0.73510830251056, within(3e-4));
    assertThat(flow.momentAboutQuarterChord(Math.toRadians(6))).isCloseTo(-0.013803775099214, within(1e-4));
  }

  @Test
  void lift_is_exactly_sinusoidal_and_a_symmetric_section_has_none_at_zero() {
    PanelMethod flow = PanelMethod.of(closed("0012"), 100);
    assertThat(flow.zeroLiftAngle().radians()).isCloseTo(0, within(1e-10));
    PanelMethod cambered = PanelMethod.of(closed("2412"), 100);
    for (double angle : new double[] {-0.2, 0, 0.1}) {
      assertThat(cambered.liftCoefficient(angle))
          .isCloseTo(cambered.liftSlope() * Math.sin(angle - cambered.zeroLiftAngle().radians()), within(1e-12));
    }
  }

  @Test
  void moments_about_two_points_differ_by_the_lift_times_the_arm() {
    PanelMethod flow = PanelMethod.of(closed("4412"), 100);
    double angle = 0.1;
    double difference = flow.momentCoefficient(angle, 0.5, 0) - flow.momentCoefficient(angle, 0, 0);
    assertThat(difference).isCloseTo(flow.liftCoefficient(angle) * Math.cos(angle) * 0.5, within(1e-12));
  }

  @Test
  void a_blunt_edge_changes_little_and_tends_to_the_sharp_one() {
    double angle = Math.toRadians(4);
    double sharp = PanelMethod.of(closed("2412"), 200).liftCoefficient(angle);
    double nearly = PanelMethod.of(Naca4.parse("2412").withTrailingEdgeThickness(1e-4), 200).liftCoefficient(angle);
    double printed = PanelMethod.of(Naca4.parse("2412").withTrailingEdgeThickness(0.01), 200).liftCoefficient(angle);
    assertThat(nearly).isCloseTo(sharp, within(3e-4));
    assertThat(printed).isCloseTo(sharp, within(0.012));
  }

  @Test
  void a_thin_plate_has_the_lift_of_thin_airfoil_theory_within_its_thickness() {
    PanelMethod plate = PanelMethod.of(ComposedSection.plate(0.01, 0), 300);
    assertThat(plate.liftSlope()).isCloseTo(2 * Math.PI, within(0.03 * 2 * Math.PI));
    PanelMethod arc = PanelMethod.of(ComposedSection.plate(0.01, 0.03), 300);
    assertThat(arc.zeroLiftAngle().radians()).isCloseTo(-0.06, within(0.004));
  }

  @Test
  void the_stagnation_point_moves_under_the_nose_as_the_angle_grows() {
    PanelMethod flow = PanelMethod.of(closed("0012"), 200);
    assertThat(flow.at(Angle.ZERO).stagnationX()).isCloseTo(0, within(1e-4));
    assertThat(flow.at(Angle.radians(0.14)).stagnationX()).isBetween(0.005, 0.03);
    assertThat(flow.at(Angle.radians(0.14)).stagnationNode()).isGreaterThan(100);
  }

  @Test
  void worked_numbers_of_the_documentation() {
    assertThat(PanelMethod.of(closed("2412"), 200).liftCoefficient(Math.toRadians(4)))
        .isCloseTo(0.741668, within(2e-6));
  }

  @Test
  void bad_outlines_are_refused() {
    assertThatThrownBy(() -> PanelMethod.of(Naca4.parse("0012").contour(11))).hasMessageContaining("at least 20");
    Contour good = Naca4.parse("0012").contour(41);
    double[] x = good.xs();
    double[] y = good.ys();
    x[10] = x[9];
    y[10] = y[9];
    // A repeated point is found when the panels are made.
    assertThatThrownBy(() -> PanelMethod.of(Contour.of(x, y))).isInstanceOf(IllegalArgumentException.class);
    assertThat(PanelMethod.of(good).at(Angle.degrees(3)).angleOfAttack()).isEqualTo(Angle.degrees(3));
  }

  @Test
  void displacement_speeds_up_the_flow_over_a_swelling() {
    PanelMethod method = PanelMethod.of(closed("0012"), 100);
    DisplacedFlow displaced = new DisplacedFlow(method, 12);
    double[] defect = new double[displaced.size()];
    // A bump of displacement in the middle of the upper side (signs: minus there).
    for (int i = 20; i <= 30; i++) {
      defect[i] = -0.002 * Math.sin(Math.PI * (i - 20) / 10.0);
    }
    assertThat(displaced.change(25, defect)).isPositive();
    assertThat(Math.abs(displaced.change(75, defect))).isLessThan(displaced.change(25, defect) / 3);
  }

  @Test
  void panels_are_enough_for_a_flow_and_not_more_than_memory_holds() {
    Naca4 section = Naca4.parse("2412");
    for (int panels : new int[] {-1, 18, Integer.MAX_VALUE}) {
      assertThatThrownBy(() -> PanelMethod.of(section, panels)).isInstanceOf(IllegalArgumentException.class)
          .hasMessage("number of panels must be 19 to 4000, was " + panels);
    }
  }
}
