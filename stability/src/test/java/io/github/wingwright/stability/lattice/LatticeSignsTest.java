// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static io.github.wingwright.stability.lattice.Coefficient.LIFT;
import static io.github.wingwright.stability.lattice.Coefficient.PITCHING_MOMENT;
import static io.github.wingwright.stability.lattice.Coefficient.ROLLING_MOMENT;
import static io.github.wingwright.stability.lattice.Coefficient.SIDE_FORCE;
import static io.github.wingwright.stability.lattice.Coefficient.YAWING_MOMENT;
import static io.github.wingwright.stability.lattice.Variable.ANGLE_OF_ATTACK;
import static io.github.wingwright.stability.lattice.Variable.PITCH_RATE;
import static io.github.wingwright.stability.lattice.Variable.ROLL_RATE;
import static io.github.wingwright.stability.lattice.Variable.SIDESLIP;
import static io.github.wingwright.stability.lattice.Variable.YAW_RATE;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Every sign of a wing with dihedral, a tailplane and a fin, each with the reason that a pilot would give. */
class LatticeSignsTest {
  private static final LatticeReference REFERENCE = new LatticeReference(6, 1, 6, 0.3, 0);
  private static final LatticeSurface FLAT = LatticeSurface.trapezoid("wing", 6, 1, 1, 0, 0).panels(3, 12)
      .control(new LatticeControl("aileron", 0.75, 0.6, 0.95, true));
  private static final LatticeSurface DIHEDRAL = LatticeSurface.trapezoid("wing", 6, 1, 1, 0, 0.1).panels(3, 12);
  private static final LatticeSurface SWEPT = LatticeSurface.trapezoid("wing", 6, 1, 1, 0.5, 0).panels(3, 12);
  private static final LatticeSurface TAIL = LatticeSurface.trapezoid("tail", 2, 0.5, 0.5, 0, 0)
      .movedBy(3, 0, 0.1).panels(3, 8).control(new LatticeControl("elevator", 0.6, 0, 1, false));
  private static final LatticeSurface FIN = LatticeSurface.central("fin", new LatticeStation(3, 0, 0.1, 0.5, 0),
      new LatticeStation(3.1, 0, 0.9, 0.4, 0)).panels(3, 8).control(new LatticeControl("rudder", 0.6, 0, 1, false));

  private static LatticeSolution level(LatticeSurface... surfaces) {
    return at(0, surfaces);
  }

  private static LatticeSolution at(double alpha, LatticeSurface... surfaces) {
    return VortexLattice.of(REFERENCE, surfaces).factor().solve(LatticeCondition.at(alpha));
  }

  @Test
  void more_angle_lifts_and_the_tail_pushes_the_nose_down() {
    assertThat(level(FLAT).derivative(LIFT, ANGLE_OF_ATTACK)).isPositive();
    assertThat(level(FLAT, TAIL).derivative(PITCHING_MOMENT, ANGLE_OF_ATTACK)).isNegative();
    assertThat(level(FLAT, TAIL).derivative("tail", PITCHING_MOMENT, ANGLE_OF_ATTACK)).isNegative();
  }

  @Test
  void the_tail_feels_less_than_the_whole_angle_behind_the_wing() {
    LatticeSolution alone = level(TAIL);
    LatticeSolution behind = level(FLAT, TAIL);
    assertThat(behind.derivative("tail", LIFT, ANGLE_OF_ATTACK))
        .isBetween(0.3 * alone.derivative(LIFT, ANGLE_OF_ATTACK), 0.8 * alone.derivative(LIFT, ANGLE_OF_ATTACK));
  }

  @Test
  void pitching_up_is_opposed_and_lifts_the_tail() {
    assertThat(level(FLAT, TAIL).derivative(PITCHING_MOMENT, PITCH_RATE)).isNegative();
    assertThat(level(FLAT, TAIL).derivative("tail", LIFT, PITCH_RATE)).isPositive();
  }

  @Test
  void dihedral_rolls_away_from_the_wind() {
    assertThat(level(DIHEDRAL).derivative(ROLLING_MOMENT, SIDESLIP)).isNegative();
    assertThat(level(DIHEDRAL).derivative(SIDE_FORCE, SIDESLIP)).isNegative();
  }

  @Test
  void a_flat_wing_and_more_so_a_swept_one_rolls_away_from_the_wind_when_it_lifts() {
    double flat = at(0.1, FLAT).derivative(ROLLING_MOMENT, SIDESLIP);
    double swept = at(0.1, SWEPT).derivative(ROLLING_MOMENT, SIDESLIP);
    assertThat(flat).isNegative();
    assertThat(swept).isLessThan(1.5 * flat);
    assertThat(Math.abs(level(SWEPT).derivative(ROLLING_MOMENT, SIDESLIP))).isLessThan(1e-12);
  }

  @Test
  void the_fin_turns_the_nose_into_the_wind_and_rolls_away_from_it() {
    LatticeSolution fin = level(FIN);
    assertThat(fin.derivative(SIDE_FORCE, SIDESLIP)).isNegative();
    assertThat(fin.derivative(YAWING_MOMENT, SIDESLIP)).isPositive();
    assertThat(fin.derivative(ROLLING_MOMENT, SIDESLIP)).isNegative();
  }

  @Test
  void yawing_is_opposed_by_the_fin() {
    LatticeSolution fin = level(FIN);
    assertThat(fin.derivative(YAWING_MOMENT, YAW_RATE)).isNegative();
    assertThat(fin.derivative(SIDE_FORCE, YAW_RATE)).isPositive();
    assertThat(fin.derivative(ROLLING_MOMENT, YAW_RATE)).isPositive();
  }

  @Test
  void rolling_is_opposed_by_wing_and_fin() {
    assertThat(level(FLAT).derivative(ROLLING_MOMENT, ROLL_RATE)).isNegative();
    assertThat(level(FIN).derivative(ROLLING_MOMENT, ROLL_RATE)).isNegative();
    assertThat(level(FIN).derivative(YAWING_MOMENT, ROLL_RATE)).isPositive();
  }

  @Test
  void a_wing_that_lifts_yaws_against_its_roll_and_rolls_with_its_yaw() {
    assertThat(at(0.1, FLAT).derivative(YAWING_MOMENT, ROLL_RATE)).isNegative();
    assertThat(at(0.1, FLAT).derivative(ROLLING_MOMENT, YAW_RATE)).isPositive();
    assertThat(at(0.1, FLAT).derivative(YAWING_MOMENT, YAW_RATE)).isNegative();
  }

  @Test
  void elevator_down_lifts_the_tail_and_lowers_the_nose() {
    LatticeSolution flow = level(FLAT, TAIL);
    assertThat(flow.controlDerivative(LIFT, "elevator")).isPositive();
    assertThat(flow.controlDerivative(PITCHING_MOMENT, "elevator")).isNegative();
  }

  @Test
  void rudder_to_port_pushes_the_tail_to_starboard_and_the_nose_to_port() {
    LatticeSolution flow = level(FIN);
    assertThat(flow.controlDerivative(SIDE_FORCE, "rudder")).isPositive();
    assertThat(flow.controlDerivative(YAWING_MOMENT, "rudder")).isNegative();
  }

  @Test
  void starboard_aileron_down_rolls_to_port_and_yaws_to_starboard_when_the_wing_lifts() {
    assertThat(level(FLAT).controlDerivative(ROLLING_MOMENT, "aileron")).isNegative();
    assertThat(at(0.1, FLAT).controlDerivative(YAWING_MOMENT, "aileron")).isPositive();
  }

  @Test
  void ground_adds_lift_and_takes_away_induced_drag() {
    VortexLattice free = VortexLattice.of(REFERENCE, FLAT);
    LatticeSolution high = free.factor().solve(LatticeCondition.at(0.05));
    LatticeSolution low = free.groundAt(-0.6).factor().solve(LatticeCondition.at(0.05));
    assertThat(low.coefficients().lift()).isGreaterThan(high.coefficients().lift());
    assertThat(low.inducedDragCoefficient() / Math.pow(low.coefficients().lift(), 2))
        .isLessThan(high.inducedDragCoefficient() / Math.pow(high.coefficients().lift(), 2));
  }
}
