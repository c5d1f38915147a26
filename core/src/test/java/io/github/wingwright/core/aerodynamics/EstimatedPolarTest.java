// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EstimatedPolarTest {
  private static final EstimatedPolar CAMBERED = EstimatedPolar.of(new FourDigitShape(0.06, 0.09));

  @ParameterizedTest
  @MethodSource("meanLines")
  void quadrature_of_the_mean_line_agrees_with_the_closed_form(PublishedValues.Row row) {
    MeanLineTheory theory = MeanLineTheory.of(new FourDigitShape(row.number("camber"), 0.12));
    double tolerance = row.number("tolerance");
    assertThat(Math.toDegrees(theory.zeroLiftAngle())).isCloseTo(row.number("zero_lift_deg"), within(60 * tolerance));
    assertThat(theory.designLift()).isCloseTo(row.number("design_lift"), within(tolerance));
    assertThat(theory.moment()).isCloseTo(row.number("moment"), within(tolerance));
  }

  static Stream<PublishedValues.Row> meanLines() {
    return PublishedValues.beside(EstimatedPolarTest.class, "mean-line.csv").rows();
  }

  @Test
  void the_circular_arc_of_the_documentation_has_its_closed_form() {
    MeanLineTheory arc = MeanLineTheory.of(x -> 4.0 * 0.05 * (1.0 - 2.0 * x));
    assertThat(arc.zeroLiftAngle()).isCloseTo(-0.1, within(1e-10));
    assertThat(arc.designLift()).isCloseTo(0.2 * Math.PI, within(1e-9));
    assertThat(arc.moment()).isCloseTo(-0.05 * Math.PI, within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("measured")
  void the_band_holds_what_two_tunnels_measured(PublishedValues.Row row) {
    EstimatedPolar polar = EstimatedPolar.of(new FourDigitShape(row.number("camber"), row.number("thickness")));
    double reynolds = row.number("reynolds");
    double value = row.number("value");
    boolean drag = row.text("quantity").equals("least drag");
    Band band = drag ? leastDrag(polar, reynolds) : polar.zeroLiftAngle(reynolds).times(180.0 / Math.PI);
    assertThat(value).as(row + " in " + band).isBetween(band.low() - 0.01 * Math.abs(value), band.high() + 0.01 * Math.abs(value));
  }

  static Stream<PublishedValues.Row> measured() {
    return PublishedValues.beside(EstimatedPolarTest.class, "measured-low-reynolds.csv").rows();
  }

  /** The band at the lift of least likely drag. */
  private static Band leastDrag(EstimatedPolar polar, double reynolds) {
    Band least = polar.profileDrag(0.0, reynolds);
    for (double cl = 0.0; cl < 1.0; cl += 0.01) {
      Band band = polar.profileDrag(cl, reynolds);
      least = band.likely() < least.likely() ? band : least;
    }
    return least;
  }

  @Test
  void the_likely_drag_at_sixty_thousand_lies_between_the_two_tunnels() {
    assertThat(leastDrag(CAMBERED, 6.13e4).likely()).isBetween(0.0280, 0.0363);
  }

  @Test
  void friction_times_form_factor_lies_far_below_both_tunnels() {
    double naive =
        2.0 * SkinFriction.laminar(6.13e4) * SurfaceFormFactor.hoerner(0.09);
    assertThat(naive).as("why there is a band").isLessThan(0.5 * 0.0280);
  }

  @Test
  void likely_and_band_are_one_number_and_the_band_is_in_order() {
    Seeded.points(5, 500, new double[] {-0.5, 1.2}, new double[] {8e3, 4e5})
        .forEach(
            p -> {
              Band band = CAMBERED.profileDrag(p[0], p[1]);
              assertThat(band.likely()).isEqualTo(CAMBERED.likelyProfileDrag(p[0], p[1]));
              assertThat(band.low()).isLessThan(band.likely());
              assertThat(band.likely()).isLessThan(band.high());
            });
  }

  @Test
  void zero_lift_angle_and_moment_run_from_the_theory_to_the_measured_part() {
    Band angle = CAMBERED.zeroLiftAngle(6.13e4);
    assertThat(Math.toDegrees(angle.low())).isCloseTo(-6.2317, within(1e-4));
    assertThat(Math.toDegrees(angle.high())).isCloseTo(0.43 * -6.2317, within(1e-3));
    Band moment = CAMBERED.moment(6.13e4);
    assertThat(moment.low()).isCloseTo(-0.159359, within(1e-6));
    assertThat(moment.high()).isCloseTo(0.43 * -0.159359, within(1e-6));
    assertThat(EstimatedPolar.of(new FourDigitShape(0.0, 0.06)).zeroLiftAngle(4e4).likely()).isCloseTo(0.0, within(1e-12));
  }

  @Test
  void below_fifty_thousand_the_regime_is_said_in_words() {
    assertThat(CAMBERED.findings(0.5, 3e4)).extracting(Finding::subject).contains("section flow: separated, not reattaching");
    assertThat(CAMBERED.findings(0.5, 8e4)).extracting(Finding::subject).containsExactly("section data estimated");
    assertThat(CAMBERED.findings(0.5, 5e3)).extracting(Finding::subject).contains("Reynolds number of the section");
    assertThat(CAMBERED.findings(1.1, 3e4)).extracting(Finding::subject).contains("section lift");
  }

  @Test
  void a_thin_curved_plate_beats_thick_sections_below_fifty_thousand_as_all_tests_found() {
    CurvedPlatePolar plate = CurvedPlatePolar.of(0.05, 0.018);
    for (double t : new double[] {0.09, 0.12}) {
      EstimatedPolar thick = EstimatedPolar.of(new FourDigitShape(0.04, t));
      for (double re : new double[] {1.5e4, 2e4, 3e4, 4.5e4}) {
        assertThat(bestRatio(plate, re)).as("Re %s, t %s", re, t).isGreaterThan(bestRatio(thick, re));
      }
    }
    assertThat(plate.usableLift(2e4).likely()).isGreaterThan(CAMBERED.usableLift(2e4).likely());
  }

  @Test
  void a_flat_plate_has_the_measured_drag() {
    // Selig, Donovan and Fraser 1989, 2 % thick, 1.0e5: lift, drag.
    double[][] measured = {{0.017, 0.0143}, {0.216, 0.0180}, {0.417, 0.0365}, {0.614, 0.0723}, {0.674, 0.0921}};
    CurvedPlatePolar plate = CurvedPlatePolar.of(0, 0.02);
    for (double[] row : measured) {
      assertThat(plate.likelyProfileDrag(row[0], 1e5)).isCloseTo(row[1], within(row[1] * (row[0] < 0.5 ? 0.1 : 0.2)));
      assertThat(plate.profileDrag(row[0], 1e5).interval().contains(row[1])).isTrue();
    }
    assertThat(plate.likelyProfileDrag(0.417, 1e5)).isCloseTo(0.0352, within(5e-5));
  }

  private static double bestRatio(SectionPolar polar, double reynolds) {
    double best = 0.0;
    for (double cl = 0.2; cl <= polar.usableLift(reynolds).likely(); cl += 0.01) {
      best = Math.max(best, cl / polar.likelyProfileDrag(cl, reynolds));
    }
    return best;
  }

  @Test
  void the_documented_attached_drag_holds() {
    assertThat(EstimatedPolar.attachedDrag(0.09, 6e4)).isCloseTo(0.0199190, within(5e-8));
  }

  @Test
  void a_reynolds_number_that_is_not_positive_is_refused_by_name() {
    EstimatedPolar polar = EstimatedPolar.of(new FourDigitShape(0.06, 0.12));
    for (double reynolds : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      String message = "Reynolds number must be positive, was " + reynolds;
      assertThatIllegalArgumentException().isThrownBy(() -> polar.profileDrag(0.5, reynolds)).withMessage(message);
      assertThatIllegalArgumentException().isThrownBy(() -> polar.zeroLiftAngle(reynolds)).withMessage(message);
      assertThatIllegalArgumentException().isThrownBy(() -> polar.moment(reynolds)).withMessage(message);
      assertThatIllegalArgumentException().isThrownBy(() -> polar.liftSlope(reynolds)).withMessage(message);
      assertThatIllegalArgumentException().isThrownBy(() -> polar.usableLift(reynolds)).withMessage(message);
    }
  }
}
