// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Each sign with its reason, and the examples of the documentation. */
class DerivativeSignsTest {
  private static final double FIVE_DEGREES = Math.toRadians(5);
  private static final double FIN = FinLateral.sideForce(3, 0.93, 0.1);

  @Test
  void dihedral_lifts_the_wing_to_windward() {
    assertThat(WingLateral.dihedralEffect(4.5, FIVE_DEGREES, 1)).isCloseTo(-0.098, within(5e-4));
    assertThat(WingLateral.dihedralEffect(4.5, -FIVE_DEGREES, 1)).isPositive();
  }

  @Test
  void sweep_works_with_lift_only() {
    assertThat(WingLateral.sweepEffect(0.5, Math.toRadians(20), 1)).isCloseTo(-0.091, within(5e-4));
    assertThat(WingLateral.sweepEffect(0, 0.3, 1)).isZero();
    assertThat(WingLateral.sweepEffect(0.5, -0.3, 1)).isPositive();
  }

  @Test
  void a_high_wing_acts_like_dihedral_and_a_low_one_against_it() {
    assertThat(WingLateral.positionEffect(7, 0.05, 0.1, 0.1)).isCloseTo(-0.032, within(5e-4));
    assertThat(WingLateral.positionEffect(7, -0.05, 0.1, 0.1)).isPositive();
  }

  @Test
  void the_wing_that_goes_down_meets_more_angle() {
    assertThat(WingLateral.rollDamping(4.5, 1)).isCloseTo(-0.75, within(1e-12));
    assertThat(WingLateral.rollDampingWithLoss(2 * Math.PI, 8, 0.5)).isCloseTo(-0.582, within(5e-4));
  }

  @Test
  void the_outer_wing_is_faster() {
    assertThat(WingLateral.rollDueToYawRate(0.6, 1)).isCloseTo(0.2, within(1e-12));
    assertThat(WingLateral.yawDamping(0.03, 1)).isNegative();
  }

  @Test
  void lift_leans_forward_on_the_wing_that_goes_down() {
    assertThat(WingLateral.yawDueToRollRate(1, 6)).isCloseTo(-0.05, within(1e-12));
    assertThat(WingLateral.yawDueToSideslip(0.6, 5)).isCloseTo(0.0057, within(5e-5));
  }

  @Test
  void a_fin_behind_turns_the_nose_into_the_wind() {
    assertThat(FIN).isNegative();
    assertThat(FinLateral.sidewashFactor(0.1, 0, 0, 6)).isCloseTo(0.931, within(5e-4));
    assertThat(FinLateral.yawDueToSideslip(FIN, 0.5)).isPositive();
    assertThat(FinLateral.yawDueToSideslip(FIN, -0.2)).isNegative();
  }

  @Test
  void a_high_fin_acts_like_dihedral() {
    assertThat(FinLateral.rollDueToSideslip(FIN, 0.1)).isNegative();
    assertThat(FinLateral.rollDueToSideslip(FIN, -0.1)).isPositive();
  }

  @Test
  void a_fin_damps_yaw_and_roll() {
    assertThat(FinLateral.yawDamping(-0.3, 0.5)).isCloseTo(-0.15, within(1e-12));
    assertThat(FinLateral.rollDamping(FIN, 0.1)).isNegative();
  }

  @Test
  void a_high_fin_behind_rolls_with_yaw_and_yaws_with_roll() {
    assertThat(FinLateral.rollDueToYawRate(FIN, 0.5, 0.1)).isPositive();
    assertThat(FinLateral.yawDueToRollRate(FIN, 0.5, 0.1)).isPositive();
    assertThat(FinLateral.sideForceDueToYawRate(FIN, 0.5)).isPositive();
    assertThat(FinLateral.sideForceDueToRollRate(FIN, 0.1)).isNegative();
  }

  @Test
  void a_body_turns_its_nose_away_from_the_wind() {
    assertThat(BodyLateral.yawDueToSideslip(0.9, 0.02)).isNegative();
    assertThat(BodyLateral.sideForce(0.05)).isNegative();
  }

  @Test
  void a_tailplane_damps_pitch_and_feels_the_downwash_late() {
    assertThat(TailPitchRate.pitchDamping(0.9, 0.5, 3.2, 3)).isCloseTo(-8.64, within(1e-12));
    assertThat(TailPitchRate.downwashLag(0.9, 0.5, 3.2, 3, 0.4)).isCloseTo(-3.456, within(1e-12));
    assertThat(TailPitchRate.liftDueToPitchRate(0.9, 0.5, 3.2)).isPositive();
    assertThat(TailPitchRate.liftDueToAngleRate(0.9, 0.5, 3.2, 0.4)).isPositive();
  }
}
