// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.stability.derivatives.LatticeDerivatives;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import io.github.wingwright.stability.dynamics.LateralForces;
import io.github.wingwright.stability.dynamics.Mode;
import io.github.wingwright.stability.dynamics.ModeApproximations;
import io.github.wingwright.stability.dynamics.ModeKind;
import io.github.wingwright.stability.dynamics.StateMatrix;
import io.github.wingwright.stability.dynamics.SteadyFlight;
import io.github.wingwright.stability.dynamics.TimeResponse;
import io.github.wingwright.stability.lattice.LatticeCondition;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlightModesTest {
  private static final Design DESIGN =
      SizingLoop.of(TestGlider.brief()).madeTo(Length.millimetres(0.5), Mass.grams(0.1)).solve();
  private static final FlightModes MODES = DESIGN.modes();

  private static double step(String symbol) {
    List<Step> found = MODES.workings().steps().stream().filter(s -> s.symbol().equals(symbol)).toList();
    assertThat(found).as(symbol).isNotEmpty();
    return found.get(found.size() - 1).value();
  }

  private static double step(String name, String symbol) {
    return MODES.workings().steps().stream()
        .filter(s -> s.name().equals(name) && s.symbol().equals(symbol))
        .findFirst()
        .orElseThrow()
        .value();
  }

  @Test
  void a_glider_of_usual_proportions_has_the_five_usual_motions() {
    assertThat(MODES.rows()).extracting(r -> r.mode().kind())
        .containsExactlyInAnyOrder(
            ModeKind.SHORT_PERIOD, ModeKind.PHUGOID, ModeKind.ROLL, ModeKind.DUTCH_ROLL, ModeKind.SPIRAL);
  }

  @Test
  void the_glide_that_is_disturbed_is_the_one_that_it_is_trimmed_for() {
    assertThat(MODES.glide().liftCoefficient()).isEqualTo(DESIGN.trim().liftCoefficient());
    double weight = DESIGN.aircraft().mass().kilograms() * 9.80665 * Math.cos(MODES.glide().angle().radians());
    double lift = MODES.flight().dynamicPressure() * MODES.flight().area() * MODES.glide().liftCoefficient();
    assertThat(lift).isCloseTo(weight, withinPercentage(1e-6));
  }

  @Test
  void the_moment_slope_is_the_static_margin_times_the_lift_slope() {
    double margin = DESIGN.staticMargin().value();
    assertThat(MODES.longitudinalDerivatives().mAngle())
        .isCloseTo(-margin * DESIGN.pitchModel().slopes().lift().value(), within(1e-9));
  }

  @Test
  void derivatives_are_the_values_of_their_own_workings() {
    assertThat(MODES.longitudinalDerivatives().mAngle()).isEqualTo(step("C_mα"));
    assertThat(MODES.longitudinalDerivatives().mPitchRate()).isCloseTo(step("C_mq"), within(1e-12));
    assertThat(MODES.longitudinalDerivatives().mAngleRate()).isEqualTo(step("C_mα̇"));
    assertThat(MODES.lateralContributions()).filteredOn(c -> c.part().equals("fin"))
        .singleElement()
        .satisfies(c -> assertThat(c.values().sideSideslip()).isEqualTo(step("C_Yβ,v")));
  }

  @Test
  void what_is_worked_by_hand_is_what_stands_in_the_matrix() {
    // The matrix has the cross product of inertia and Z_q besides, which the hand leaves out.
    assertThat(step("heave damping over mass", "z_w")).isCloseTo(MODES.longitudinal().entry(1, 1), withinPercentage(5));
    assertThat(step("l_p")).isCloseTo(MODES.lateral().entry(1, 1), withinPercentage(5));
    assertThat(step("m_q")).isGreaterThan(MODES.longitudinal().entry(2, 2));
    Mode exact = MODES.find(ModeKind.SHORT_PERIOD).orElseThrow();
    assertThat(step("ω_n")).isCloseTo(exact.naturalFrequency().radiansPerSecond(), withinPercentage(10));
  }

  @Test
  void a_rising_gust_loads_the_wing_at_once_and_the_load_dies_out() {
    Speed gust = Speed.metresPerSecond(0.4);
    TimeResponse motion = MODES.gust(gust, Time.seconds(8));
    double angle = gust.metresPerSecond() / MODES.flight().speed();
    double lift = MODES.glide().liftCoefficient();
    double expected = 1.0 + angle * (DESIGN.pitchModel().slopes().lift().value() + MODES.glide().dragCoefficient()) / lift;
    // lift over weight: the weight is that of the glide over the cosine of its path
    assertThat(MODES.loadFactor(motion, 0)).isCloseTo(expected, withinPercentage(1));
    assertThat(MODES.loadFactor(motion, motion.size() - 1)).isCloseTo(1.0, within(0.15));
  }

  @Test
  void a_bank_is_levelled_or_kept_but_not_overturned_within_a_flight() {
    TimeResponse motion = MODES.banked(Angle.degrees(10), Time.seconds(2));
    assertThat(motion.state(0, 3)).isEqualTo(Math.toRadians(10));
    assertThat(Math.abs(motion.state(motion.size() - 1, 3))).isLessThan(Math.toRadians(20));
    // it slips towards the low wing: v to starboard
    assertThat(motion.state(5, 0)).isPositive();
  }

  /** Two independent ways to the same numbers; the lattice has no body, and loses lift at the tips of a twisted load. */
  @Test
  void handbook_and_lattice_agree_on_signs_and_sizes_of_the_lateral_derivatives() {
    LateralDerivatives hand = MODES.lateralDerivatives();
    double zero = DESIGN.lattice().solve(LatticeCondition.at(0)).coefficients().lift();
    double alpha = (MODES.glide().liftCoefficient() - zero) / DESIGN.lattice().liftSlope();
    LateralDerivatives lattice = LatticeDerivatives.lateral(DESIGN.lattice().solve(LatticeCondition.at(alpha)));
    assertThat(hand.rollSideslip()).isCloseTo(lattice.rollSideslip(), withinPercentage(50));
    assertThat(hand.yawSideslip()).isCloseTo(lattice.yawSideslip(), withinPercentage(50));
    assertThat(hand.rollRollRate()).isCloseTo(lattice.rollRollRate(), withinPercentage(25));
    assertThat(hand.rollYawRate()).isCloseTo(lattice.rollYawRate(), withinPercentage(30));
    assertThat(hand.yawYawRate()).isCloseTo(lattice.yawYawRate(), withinPercentage(50));
  }

  @Test
  void the_air_carried_along_slows_the_nod_and_the_roll() {
    for (FlightModes.Row row : MODES.rows()) {
      ModeKind kind = row.mode().kind();
      if (kind == ModeKind.SHORT_PERIOD || kind == ModeKind.ROLL) {
        assertThat(row.mode().naturalFrequency())
            .as(kind.words())
            .isLessThan(row.withoutApparentMass().orElseThrow().naturalFrequency());
      }
    }
  }

  @Test
  void the_shell_shows_a_table() {
    assertThat(MODES.toString().lines()).hasSize(7).allMatch(line -> line.length() <= 75);
    assertThat(DESIGN.finiteWing().toString().lines()).hasSize(5).allMatch(line -> line.length() <= 75);
  }

  @Test
  void what_is_asked_twice_is_reckoned_once() {
    assertThat(DESIGN.modes()).isSameAs(MODES);
    assertThat(DESIGN.finiteWing()).isSameAs(DESIGN.finiteWing());
    assertThat(DESIGN.lattice()).isSameAs(DESIGN.lattice());
    assertThat(DESIGN.trimmedPolar()).isSameAs(DESIGN.trimmedPolar());
  }

  /** The term r·tan θ₀: a turn on a path downwards takes bank off. The short formula knows level flight only. */
  @Test
  void gliding_steadies_the_spiral_and_in_level_flight_the_short_formula_is_near() {
    SteadyFlight f = MODES.flight();
    SteadyFlight level = new SteadyFlight(f.speed(), f.density(), 0.0, f.area(), f.chord(), f.span(), f.gravity());
    StateMatrix matrix =
        LateralForces.of(level, MODES.lateralDerivatives()).stateMatrix(level, MODES.apparentMass().addedTo(MODES.body()));
    double flat = matrix.modes().find(ModeKind.SPIRAL).orElseThrow().real();
    assertThat(MODES.find(ModeKind.SPIRAL).orElseThrow().real()).isLessThan(flat);
    assertThat(ModeApproximations.spiral(matrix, f.gravity()).real()).isCloseTo(flat, within(0.1 * Math.abs(flat) + 0.01));
  }
}
