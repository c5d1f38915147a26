// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LiftingLineTest {
  private static final double TWO_PI = 2 * Math.PI;

  @ParameterizedTest
  @ValueSource(doubles = {4, 6, 8, 10, 20})
  void an_elliptic_wing_has_the_closed_solution_exactly(double a) {
    LiftingLineSolution wing = LiftingLine.elliptic(1, a).solve();
    assertThat(wing.aspectRatio()).isCloseTo(a, within(1e-12 * a));
    assertThat(wing.liftSlope()).isCloseTo(TWO_PI / (1 + 2 / a), within(1e-12));
    assertThat(wing.inducedDragFactor()).isCloseTo(0, within(1e-12));
    assertThat(wing.liftSlopeFactor()).isCloseTo(0, within(1e-12));
    assertThat(wing.rollDamping()).isCloseTo(-Math.PI / 4 * a / (a + 4), within(1e-12));
    assertThat(wing.yawDueToRollPerLift()).isCloseTo(-(a - 2) / (8 * (a + 4)), within(1e-12));
    assertThat(wing.additional().spanwiseCentre()).isCloseTo(4 / (3 * Math.PI), within(1e-12));
    assertThat(wing.additional().sectionLiftCoefficient(0.8)).isCloseTo(1, within(1e-12));
  }

  @ParameterizedTest
  @MethodSource("tapered")
  void forty_terms_agree_with_the_converged_tapered_wings(PublishedValues.Row row) {
    double tolerance = row.number("tolerance");
    LiftingLineSolution wing = LiftingLine.tapered(1, row.number("aspect_ratio"), row.number("taper"))
        .linearTwist(Math.toRadians(-3)).solve();
    assertThat(wing.liftSlope()).as(row + " slope").isCloseTo(row.number("lift_slope"), within(tolerance));
    assertThat(wing.liftSlopeFactor()).as(row + " τ").isCloseTo(row.number("tau"), within(tolerance));
    assertThat(wing.inducedDragFactor()).as(row + " δ").isCloseTo(row.number("delta"), within(tolerance));
    assertThat(wing.zeroLiftTwistFactor()).as(row + " J").isCloseTo(row.number("j"), within(tolerance));
    assertThat(wing.linearTwistDragFactor()).as(row + " v").isCloseTo(row.number("v"), within(tolerance / 20));
    assertThat(wing.quadraticTwistDragFactor()).as(row + " w").isCloseTo(row.number("w"), within(tolerance / 20));
  }

  static Stream<PublishedValues.Row> tapered() {
    return PublishedValues.beside(LiftingLineTest.class, "lifting-line-tapered.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("rectangular")
  void rectangular_wings_agree_with_the_converged_and_the_printed_table(PublishedValues.Row row) {
    LiftingLineSolution wing =
        LiftingLine.tapered(1, TWO_PI * row.number("aspect_ratio_over_slope"), 1).terms(100).solve();
    double tau = wing.liftSlopeFactor();
    double delta = wing.inducedDragFactor();
    assertThat(tau).as(row + " τ").isCloseTo(row.number("tau"), within(row.number("tolerance")));
    assertThat(delta).as(row + " δ").isCloseTo(row.number("delta"), within(row.number("tolerance")));
    double printed = row.number("tolerance_printed");
    assertThat(tau).as(row + " τ printed").isCloseTo(row.number("tau_printed"), within(printed));
    assertThat(delta).as(row + " δ printed").isCloseTo(row.number("delta_printed"), within(printed));
  }

  static Stream<PublishedValues.Row> rectangular() {
    return PublishedValues.beside(LiftingLineTest.class, "lifting-line-rectangular.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("threeTerms")
  void three_terms_give_the_hand_calculation(PublishedValues.Row row) {
    LiftingLineSolution wing = LiftingLine.tapered(1, row.number("aspect_ratio"), 1).terms(3).solve();
    LiftingLineLoading unit = wing.atAngle(1);
    double tolerance = row.number("tolerance");
    assertThat(unit.coefficient(1)).isCloseTo(row.number("a1"), within(tolerance));
    assertThat(unit.coefficient(3)).isCloseTo(row.number("a3"), within(tolerance));
    assertThat(unit.coefficient(5)).isCloseTo(row.number("a5"), within(tolerance));
    assertThat(wing.liftSlope()).isCloseTo(row.number("lift_slope"), within(tolerance));
    assertThat(wing.inducedDragFactor()).isCloseTo(row.number("delta"), within(tolerance));
  }

  static Stream<PublishedValues.Row> threeTerms() {
    return PublishedValues.beside(LiftingLineTest.class, "lifting-line-three-terms.csv").rows();
  }

  /** Computed independently of this project: 0.376 at aspect ratio 4, 0.364 at 8; Glauert: "about 0.3 to 0.4". */
  @Test
  void least_induced_drag_lies_at_a_taper_of_about_three_eighths() {
    assertThat(bestTaper(4)).isCloseTo(0.376, within(0.003));
    assertThat(bestTaper(8)).isCloseTo(0.364, within(0.003));
  }

  private static double bestTaper(double aspectRatio) {
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (double taper = 0.3; taper < 0.45; taper += 0.001) {
      double delta = LiftingLine.tapered(1, aspectRatio, taper).terms(100).solve().inducedDragFactor();
      if (delta < least) {
        least = delta;
        best = taper;
      }
    }
    return best;
  }

  @Test
  void loading_at_a_lift_is_basic_plus_lift_times_additional() {
    LiftingLineSolution wing = LiftingLine.tapered(2, 7, 0.6).linearTwist(-0.05)
        .zeroLiftAngle(eta -> -0.04).solve();
    LiftingLineLoading sum = wing.basic().plus(wing.additional(), 0.7);
    LiftingLineLoading direct = wing.at(0.7);
    for (double eta = -0.95; eta < 1; eta += 0.1) {
      assertThat(direct.circulation(eta)).isCloseTo(sum.circulation(eta), within(1e-14));
    }
    assertThat(wing.basic().liftCoefficient()).isCloseTo(0, within(1e-14));
    assertThat(wing.additional().liftCoefficient()).isCloseTo(1, within(1e-14));
    assertThat(direct.liftCoefficient()).isCloseTo(0.7, within(1e-14));
  }

  @Test
  void lift_is_the_integral_of_the_local_lift() {
    LiftingLineLoading loading = LiftingLine.tapered(2, 7, 0.6).linearTwist(-0.05).solve().at(0.7);
    double root = 2 * 2 / (7 * 1.6);
    int n = 20_000;
    double sum = 0;
    double moment = 0;
    for (int i = 0; i < n; i++) {
      double eta = Math.cos((i + 0.5) * Math.PI / 2 / n);
      double width = Math.sin((i + 0.5) * Math.PI / 2 / n) * Math.PI / 2 / n;
      double chord = root * (1 - 0.4 * eta);
      sum += loading.sectionLiftCoefficient(eta) * chord * width;
      moment += loading.sectionLiftCoefficient(eta) * chord * eta * width;
    }
    assertThat(sum * 2 / (4.0 / 7)).isCloseTo(0.7, within(1e-6));
    assertThat(loading.spanwiseCentre()).isCloseTo(moment / sum, within(1e-6));
  }

  @Test
  void a_uniform_camber_shifts_the_angle_and_nothing_else() {
    LiftingLineSolution flat = LiftingLine.tapered(1, 8, 0.5).solve();
    LiftingLineSolution cambered = LiftingLine.tapered(1, 8, 0.5).zeroLiftAngle(eta -> -0.06).solve();
    assertThat(cambered.zeroLiftAngle()).isCloseTo(-0.06, within(1e-14));
    assertThat(cambered.liftSlope()).isEqualTo(flat.liftSlope());
    assertThat(cambered.at(0.5).inducedDragCoefficient())
        .isCloseTo(flat.at(0.5).inducedDragCoefficient(), within(1e-14));
  }

  @Test
  void washout_unloads_the_tips_and_needs_a_greater_root_angle() {
    LiftingLineSolution straight = LiftingLine.tapered(1, 8, 0.5).solve();
    LiftingLineSolution washed = LiftingLine.tapered(1, 8, 0.5).linearTwist(Angle.degrees(-3)).solve();
    assertThat(washed.zeroLiftAngle()).isPositive();
    assertThat(washed.at(0.6).sectionLiftCoefficient(0.9))
        .isLessThan(straight.at(0.6).sectionLiftCoefficient(0.9));
    assertThat(washed.at(0.6).spanwiseCentre()).isLessThan(straight.at(0.6).spanwiseCentre());
  }

  @Test
  void a_rectangle_stalls_at_the_root_and_a_pointed_wing_towards_the_tip() {
    LiftingLineStall rectangle = LiftingLine.tapered(1, 8, 1).solve().firstStall(eta -> 1.2);
    LiftingLineStall pointed = LiftingLine.tapered(1, 8, 0.3).solve().firstStall(eta -> 1.2);
    assertThat(rectangle.station()).isZero();
    assertThat(pointed.station()).isBetween(0.55, 0.75);
    assertThat(rectangle.wingLiftCoefficient()).isLessThan(1.2);
    assertThat(pointed.wingLiftCoefficient()).isLessThan(1.2);
    LiftingLineStall washed =
        LiftingLine.tapered(1, 8, 0.3).linearTwist(Math.toRadians(-4)).solve().firstStall(eta -> 1.2);
    assertThat(washed.station()).isLessThan(pointed.station());
  }

  @Test
  void an_elliptic_wing_stalls_everywhere_at_once() {
    LiftingLineStall stall = LiftingLine.elliptic(1, 8).solve().firstStall(eta -> 1.3);
    assertThat(stall.wingLiftCoefficient()).isCloseTo(1.3, within(1e-9));
    assertThat(stall.sectionLiftCoefficient()).isEqualTo(1.3);
  }

  @Test
  void ailerons_starboard_down_roll_to_port_and_yaw_to_starboard() {
    LiftingLineSolution wing = LiftingLine.tapered(1, 8, 0.6).solve();
    LiftingLineLoading ailerons = wing.antisymmetric(eta -> eta > 0.6 ? 0.1 : 0);
    assertThat(ailerons.rollingMomentCoefficient()).isNegative();
    assertThat(wing.at(0.5).plus(ailerons, 1).inducedYawingMomentCoefficient()).isPositive();
    assertThat(ailerons.circulation(0.8)).isPositive();
    assertThat(ailerons.circulation(-0.8)).isCloseTo(-ailerons.circulation(0.8), within(1e-15));
  }

  @Test
  void rolling_is_damped_and_yaws_against_the_roll() {
    LiftingLineSolution wing = LiftingLine.tapered(1, 8, 0.6).solve();
    assertThat(wing.rollDamping()).isNegative();
    assertThat(wing.yawDueToRollPerLift()).isNegative();
  }

  @Test
  void size_does_not_matter() {
    LiftingLineSolution small = LiftingLine.tapered(0.4, 7.5, 0.6).linearTwist(-0.03).solve();
    LiftingLineSolution large = LiftingLine.tapered(40, 7.5, 0.6).linearTwist(-0.03).solve();
    assertThat(small.liftSlope()).isCloseTo(large.liftSlope(), within(1e-13));
    assertThat(small.zeroLiftAngle()).isCloseTo(large.zeroLiftAngle(), within(1e-14));
    assertThat(small.at(0.5).sectionLiftCoefficient(0.4))
        .isCloseTo(large.at(0.5).sectionLiftCoefficient(0.4), within(1e-13));
  }

  @Test
  void a_planform_gives_the_same_as_its_numbers() {
    Planform planform = Planform.tapered(Length.metres(2), Length.metres(0.3), Length.metres(0.2))
        .withWashout(Angle.degrees(2));
    LiftingLineSolution fromPlanform = LiftingLine.of(planform).solve();
    LiftingLineSolution fromNumbers =
        LiftingLine.of(2, eta -> 0.3 - 0.1 * eta).linearTwist(Math.toRadians(-2)).solve();
    assertThat(fromPlanform.liftSlope()).isCloseTo(fromNumbers.liftSlope(), within(1e-12));
    assertThat(fromPlanform.zeroLiftAngle()).isCloseTo(fromNumbers.zeroLiftAngle(), within(1e-13));
    assertThat(fromPlanform.area()).isCloseTo(planform.area().si(), within(1e-9));
  }

  @Test
  void a_low_aspect_ratio_is_a_finding() {
    assertThat(LiftingLine.tapered(1, 3, 1).solve().findings()).hasSize(1);
    assertThat(LiftingLine.tapered(1, 5, 1).solve().findings()).isEmpty();
  }

  @Test
  void bad_input_is_refused_with_what_was_got() {
    assertThatIllegalArgumentException().isThrownBy(() -> LiftingLine.of(-1, eta -> 1))
        .withMessage("span must be positive, was -1.00000 m");
    assertThatIllegalArgumentException().isThrownBy(() -> LiftingLine.of(1, eta -> 0.5 - eta).solve())
        .withMessageContaining("chord must be positive, was ");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LiftingLine.tapered(1, 6, 1).twist(eta -> Double.NaN).solve())
        .withMessageContaining("twist and zero-lift angle must be finite");
    assertThatIllegalArgumentException().isThrownBy(() -> LiftingLine.tapered(1, 6, 1).terms(1))
        .withMessage("number of terms must lie within 2 and 500, was 1");
    assertThatIllegalArgumentException().isThrownBy(() -> LiftingLine.tapered(1, Double.NaN, 1));
    assertThatIllegalStateException()
        .isThrownBy(() -> LiftingLine.tapered(1, 6, 1).solve().zeroLiftTwistFactor())
        .withMessageContaining("twist");
    assertThatIllegalStateException()
        .isThrownBy(() -> LiftingLine.tapered(1, 6, 1).solve().rolling().inducedDragFactor())
        .withMessageContaining("none");
  }

  @Test
  void text_fits_on_a_line() {
    LiftingLineSolution wing = LiftingLine.tapered(1, 6, 1).solve();
    assertThat(wing.toString())
        .isEqualTo("wing, A 6.00: slope 4.5304 per rad, δ 0.0483, zero lift 0.00°");
    assertThat(wing.firstStall(eta -> 1.1).toString()).hasSizeLessThanOrEqualTo(75);
    assertThat(wing.at(0.5).toString()).hasSizeLessThanOrEqualTo(75);
    assertThat(LiftingLine.tapered(1, 6, 1).toString()).hasSizeLessThanOrEqualTo(75);
  }
}
