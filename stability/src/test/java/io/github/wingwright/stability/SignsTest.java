// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.derivatives.FinLateral;
import io.github.wingwright.stability.derivatives.RudderDemand;
import io.github.wingwright.stability.derivatives.TailPitchRate;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import org.junit.jupiter.api.Test;

/**
 * Every sign of balance, trim and motion, each as a sentence that a student can check by hand: x aft, nose-up positive,
 * trailing edge down positive, wind from starboard positive. Those of the lattice are in LatticeSignsTest, those of each
 * part in DerivativeSignsTest.
 */
class SignsTest {
  private static final PitchModel GLIDER =
      PitchModel.of(Models.glider())
          .withWingSection(Models.exact(5.5, -0.05, -0.08, 0.9), 3e4)
          .withTailSection(Models.symmetric(), 2e4);
  private static final NeutralPoint POINT = GLIDER.neutralPoint();

  private static Length behind(double margin) {
    return POINT.x().minus(POINT.meanAerodynamicChord().times(margin));
  }

  @Test
  void balance_a_centre_of_gravity_ahead_of_the_neutral_point_is_a_positive_margin() {
    assertThat(GLIDER.staticMargin(POINT.x().minus(millimetres(5))).value()).isPositive();
    assertThat(GLIDER.staticMargin(POINT.x().plus(millimetres(5))).value()).isNegative();
  }

  @Test
  void balance_a_tail_behind_moves_the_neutral_point_aft_and_a_foreplane_forward() {
    assertThat(NeutralPoint.tailShift(0.8, 4.0, 0.25, 4.5)).isPositive();
    assertThat(NeutralPoint.tailShift(0.8, -3.0, 0.25, 4.5)).isNegative();
  }

  @Test
  void balance_a_fuselage_moves_it_forward_and_so_does_more_downwash() {
    assertThat(NeutralPoint.fuselageShift(0.3, 4.5, 0.8)).isNegative();
    double little = NeutralPoint.position(4.5, 0.25, 0, 0.9, 0.2, 3.5, 0.3, 4);
    assertThat(NeutralPoint.position(4.5, 0.25, 0, 0.9, 0.2, 3.5, 0.5, 4)).isLessThan(little);
  }

  @Test
  void stability_more_angle_of_attack_pitches_a_stable_aircraft_down() {
    assertThat(NeutralPoint.momentSlope(4.5, POINT.fraction() - 0.1, 0.25, 0, 0.8, 4.0)).isNegative();
  }

  @Test
  void trim_the_tail_is_set_leading_edge_down_against_the_wing() {
    Trim trim = GLIDER.trim(behind(0.15), 0.6);
    assertThat(trim.decalage().si()).as("i_w − i_h").isPositive();
    assertThat(trim.tailIncidence().si()).isLessThan(GLIDER.airframe().wing().incidence().si());
  }

  @Test
  void trim_slower_takes_more_decalage_when_stable_and_less_when_unstable() {
    assertThat(GLIDER.trim(behind(0.15), 0.8).decalage()).isGreaterThan(GLIDER.trim(behind(0.15), 0.4).decalage());
    assertThat(GLIDER.trim(behind(-0.15), 0.8).decalage()).isLessThan(GLIDER.trim(behind(-0.15), 0.4).decalage());
  }

  @Test
  void trim_a_nose_heavy_aircraft_needs_more_download() {
    assertThat(GLIDER.trim(behind(0.4), 0.6).tailLift()).isLessThan(GLIDER.trim(behind(0.1), 0.6).tailLift());
  }

  @Test
  void trim_camber_pitches_down_and_reflex_up() {
    assertThat(TrimFormulas.tailLift(-0.08, 0.5, 0.3, 0.25, 0, 4.5, 0, 4))
        .isLessThan(TrimFormulas.tailLift(0.02, 0.5, 0.3, 0.25, 0, 4.5, 0, 4));
  }

  @Test
  void trim_elevator_trailing_edge_down_flies_faster() {
    // Positive deflection takes decalage away: less lift coefficient, more speed.
    assertThat(ElevatorRange.trimmedLift(0.05, 0.6, 0.03, 0.01, 0.06))
        .isLessThan(ElevatorRange.trimmedLift(0.05, 0.6, -0.03, 0.01, 0.06));
    assertThat(TrimFormulas.elevator(0.06, -0.76, 0.15, 0.34, 2.3)).as("up, to hold a large angle").isNegative();
  }

  @Test
  void tailless_washout_on_a_swept_back_wing_pitches_up() {
    var swept = Models.glider().wing().planform().withSweep(0.25, Angle.degrees(20)).withWashout(Angle.degrees(3));
    var forward = Models.glider().wing().planform().withSweep(0.25, Angle.degrees(-20)).withWashout(Angle.degrees(3));
    assertThat(SweptTwist.moment(swept, 4.5)).isPositive();
    assertThat(SweptTwist.moment(forward, 4.5)).isNegative();
  }

  @Test
  void roll_dihedral_against_fin_and_lift() {
    assertThat(LateralStability.parameter(0.2, 0.4, 0.1, 0.6)).isPositive();
    assertThat(LateralStability.parameter(0.2, 0.4, -0.1, 0.6)).as("anhedral").isNegative();
  }

  @Test
  void yaw_a_rudder_to_port_turns_the_nose_to_port_and_holds_a_wind_from_starboard() {
    double power = RudderDemand.rudderPower(3, 0.045, 0.6);
    assertThat(power).isNegative();
    assertThat(RudderDemand.crosswind(0.08, 0.2, power)).isPositive();
    assertThat(RudderDemand.engineOut(100, 1, 500, 10, 10, power)).as("starboard engine runs").isNegative();
  }

  @Test
  void sideslip_pushes_a_V_tail_to_port_and_its_nose_to_starboard() {
    double side = VTail.sideForceSlope(0.7, 4, 0.6);
    assertThat(side).isNegative();
    assertThat(FinLateral.yawDueToSideslip(side, 0.5)).isPositive();
    assertThat(FinLateral.rollDueToSideslip(side, 0.1)).as("wind side up").isNegative();
  }

  @Test
  void rates_are_opposed_and_the_downwash_comes_late() {
    assertThat(TailPitchRate.pitchDamping(0.9, 0.5, 3.2, 3)).isNegative();
    assertThat(TailPitchRate.pitchDamping(0.9, -0.5, 3.2, -3)).as("a foreplane damps too").isNegative();
    assertThat(TailPitchRate.downwashLag(0.9, 0.5, 3.2, 3, 0.4)).isNegative();
  }

  /** Stability axes of the equations: x forward, z down, so that lift and drag change their signs. */
  @Test
  void equations_lift_is_minus_z_and_drag_is_minus_x() {
    Airframe airframe = Models.glider();
    LongitudinalDerivatives d =
        AirframeDerivatives.of(GLIDER.withAirframe(airframe), Placement.at(behind(0.15), Length.ZERO), 0.6, 0.04)
            .longitudinal();
    assertThat(d.zAngle()).as("C_zα = −(C_Lα + C_D)").isNegative();
    assertThat(d.xAngle()).as("C_xα = C_L − C_Dα: lift leans forward more than drag grows").isPositive();
    assertThat(d.mAngle()).as("C_mα").isNegative();
    assertThat(d.mPitchRate()).as("C_mq").isNegative();
    assertThat(d.zPitchRate()).as("C_zq = −C_Lq").isNegative();
    assertThat(d.mAngleRate()).as("C_mα̇").isNegative();
    assertThat(d.zAngleRate()).as("C_zα̇ = −C_Lα̇").isNegative();
  }

  @Test
  void equations_across_the_plane_of_symmetry() {
    LateralDerivatives d =
        AirframeDerivatives.of(GLIDER, Placement.at(behind(0.15), Length.ZERO), 0.6, 0.04).lateral().total();
    assertThat(d.sideSideslip()).as("C_Yβ: pushed away from the wind").isNegative();
    assertThat(d.rollSideslip()).as("C_lβ: dihedral lifts the wing to windward").isNegative();
    assertThat(d.yawSideslip()).as("C_nβ: the nose turns into the wind").isPositive();
    assertThat(d.rollRollRate()).as("C_lp: the wing that goes down meets more angle").isNegative();
    assertThat(d.yawRollRate()).as("C_np: lift leans forward on the wing that goes down").isNegative();
    assertThat(d.rollYawRate()).as("C_lr: the outer wing is faster").isPositive();
    assertThat(d.yawYawRate()).as("C_nr: the fin opposes").isNegative();
    assertThat(d.sideYawRate()).as("C_Yr: the fin is swung to port and pushed to starboard").isPositive();
  }
}
