// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LatticeIdentitiesTest {
  private static final LatticeReference REFERENCE = new LatticeReference(6, 1, 6, 0.3, 0.05);
  private static final LatticeSurface WING = LatticeSurface.trapezoid("wing", 6, 1.2, 0.8, 0.2, 0.1).panels(3, 10)
      .meanLine(x -> 0.1 * (1 - 2 * x)).twisted(0.02, -0.03)
      .control(new LatticeControl("aileron", 0.7, 0.5, 0.9, true));
  private static final LatticeSurface TAIL =
      LatticeSurface.trapezoid("tail", 2, 0.5, 0.4, 0.1, 0).movedBy(3, 0, 0.3).panels(3, 6);
  private static final LatticeSurface FIN = LatticeSurface.central("fin", new LatticeStation(3, 0, 0.3, 0.5, 0),
      new LatticeStation(3.1, 0, 1.1, 0.4, 0)).panels(3, 6);
  private static final FactoredLattice LATTICE = VortexLattice.of(REFERENCE, WING, TAIL, FIN).factor();

  private static LatticeCondition condition(double alpha, double beta, double p, double q, double r) {
    return new LatticeCondition(alpha, beta, p, q, r, Map.of("aileron", 0.02));
  }

  @ParameterizedTest
  @EnumSource(Variable.class)
  void derivatives_are_what_small_differences_say(Variable variable) {
    double h = 1e-4;
    double[] x = {0.08, 0.03, 0.01, 0.004, -0.02};
    int k = switch (variable) {
      case ANGLE_OF_ATTACK -> 0;
      case SIDESLIP -> 1;
      case ROLL_RATE -> 2;
      case PITCH_RATE -> 3;
      case YAW_RATE -> 4;
    };
    double[] up = x.clone();
    double[] down = x.clone();
    up[k] += h;
    down[k] -= h;
    LatticeSolution here = LATTICE.solve(condition(x[0], x[1], x[2], x[3], x[4]));
    LatticeCoefficients more = LATTICE.solve(condition(up[0], up[1], up[2], up[3], up[4])).coefficients();
    LatticeCoefficients less = LATTICE.solve(condition(down[0], down[1], down[2], down[3], down[4])).coefficients();
    for (Coefficient c : Coefficient.values()) {
      assertThat(here.derivative(c, variable)).as(c + " with " + variable)
          .isCloseTo((more.of(c) - less.of(c)) / (2 * h), within(1e-6));
    }
  }

  @Test
  void the_mirrored_flight_has_the_mirrored_forces() {
    LatticeCoefficients one = LATTICE.solve(new LatticeCondition(0.06, 0.04, 0.02, 0.003, -0.01,
        Map.of("aileron", 0.03))).coefficients();
    LatticeCoefficients other = LATTICE.solve(new LatticeCondition(0.06, -0.04, -0.02, 0.003, 0.01,
        Map.of("aileron", -0.03))).coefficients();
    assertThat(other.lift()).isCloseTo(one.lift(), within(1e-13));
    assertThat(other.pitchingMoment()).isCloseTo(one.pitchingMoment(), within(1e-13));
    assertThat(other.sideForce()).isCloseTo(-one.sideForce(), within(1e-13));
    assertThat(other.rollingMoment()).isCloseTo(-one.rollingMoment(), within(1e-13));
    assertThat(other.yawingMoment()).isCloseTo(-one.yawingMoment(), within(1e-13));
  }

  @Test
  void moments_move_with_their_reference_as_forces_times_arms() {
    double dx = 0.4;
    double alpha = 0.07;
    LatticeCondition flight = LatticeCondition.at(alpha).sideslip(0.03);
    LatticeCoefficients here = LATTICE.solve(flight).coefficients();
    LatticeCoefficients moved = VortexLattice.of(REFERENCE.about(0.3 + dx, 0.05), WING, TAIL, FIN).factor()
        .solve(flight).coefficients();
    double cb = Math.cos(0.03);
    double sb = Math.sin(0.03);
    double along = (here.nearFieldDrag() + here.sideForce() * sb) / cb;
    double normal = here.lift() * Math.cos(alpha) + along * Math.sin(alpha);
    assertThat(moved.pitchingMoment()).isCloseTo(here.pitchingMoment() + dx * normal, within(1e-12));
    double yaw = dx / 6 * here.sideForce();
    assertThat(moved.yawingMoment()).isCloseTo(here.yawingMoment() + yaw * Math.cos(alpha), within(1e-12));
    assertThat(moved.rollingMoment()).isCloseTo(here.rollingMoment() + yaw * Math.sin(alpha), within(1e-12));
    assertThat(moved.lift()).isCloseTo(here.lift(), within(1e-13));
  }

  @Test
  void the_neutral_point_does_not_depend_on_the_reference() {
    FactoredLattice other = VortexLattice.of(REFERENCE.about(1.7, 0.05), WING, TAIL, FIN).factor();
    assertThat(other.neutralPoint()).isCloseTo(LATTICE.neutralPoint(), within(1e-9));
  }

  @Test
  void about_the_neutral_point_the_moment_does_not_change_with_the_angle() {
    LatticeSurface flat = LatticeSurface.trapezoid("wing", 6, 1.2, 0.8, 0.2, 0).panels(3, 10);
    double x = VortexLattice.of(REFERENCE.about(0.3, 0), flat).factor().neutralPoint();
    LatticeSolution level = VortexLattice.of(REFERENCE.about(x, 0), flat).factor().solve(LatticeCondition.at(0));
    assertThat(level.derivative(Coefficient.PITCHING_MOMENT, Variable.ANGLE_OF_ATTACK)).isCloseTo(0, within(1e-12));
  }

  /** Turning the axes of lateral derivatives by the angle of attack and back gives them again. */
  @Test
  void stability_axes_are_the_body_axes_turned_by_the_angle_of_attack() {
    double alpha = 0.09;
    LatticeSolution tilted = LATTICE.solve(LatticeCondition.at(alpha));
    double c = Math.cos(alpha);
    double s = Math.sin(alpha);
    double lp = tilted.derivative(Coefficient.ROLLING_MOMENT, Variable.ROLL_RATE);
    double lr = tilted.derivative(Coefficient.ROLLING_MOMENT, Variable.YAW_RATE);
    double np = tilted.derivative(Coefficient.YAWING_MOMENT, Variable.ROLL_RATE);
    double nr = tilted.derivative(Coefficient.YAWING_MOMENT, Variable.YAW_RATE);
    // body rates of roll: p = 1 means p_s = cos α, r_s = −sin α; body roll moment L = L_s·cos α − N_s·sin α
    double bodyLp = c * (lp * c - lr * s) - s * (np * c - nr * s);
    double bodyNr = s * (lp * s + lr * c) + c * (np * s + nr * c);
    assertThat(bodyLp + bodyNr).as("the trace of the damping").isCloseTo(lp + nr, within(1e-13));
    LatticeCoefficients rolling = LATTICE.solve(LatticeCondition.at(alpha).rates(c * 0.01, 0, -s * 0.01))
        .coefficients();
    LatticeCoefficients still = LATTICE.solve(LatticeCondition.at(alpha)).coefficients();
    double bodyRoll = rolling.rollingMoment() * c - rolling.yawingMoment() * s
        - still.rollingMoment() * c + still.yawingMoment() * s;
    assertThat(bodyRoll / 0.01).isCloseTo(bodyLp, within(1e-9));
  }

  @Test
  void parts_add_up_to_the_whole() {
    LatticeSolution flow = LATTICE.solve(condition(0.05, 0.02, 0.01, 0.002, 0.01));
    for (Coefficient c : Coefficient.values()) {
      double sum = 0;
      for (String part : new String[] {"wing", "tail", "fin"}) {
        sum += flow.coefficients(part).of(c);
      }
      assertThat(sum).as(c.name()).isCloseTo(flow.coefficients().of(c), within(1e-12));
    }
  }

  @Test
  void scale_does_not_matter() {
    double k = 0.07;
    LatticeSurface wing = LatticeSurface.trapezoid("wing", 6 * k, 1.2 * k, 0.8 * k, 0.2, 0.1).panels(3, 10);
    LatticeSurface full = LatticeSurface.trapezoid("wing", 6, 1.2, 0.8, 0.2, 0.1).panels(3, 10);
    double small = VortexLattice.of(new LatticeReference(6 * k * k, k, 6 * k, 0.3 * k, 0), wing).factor()
        .solve(LatticeCondition.at(0.1)).derivative(Coefficient.ROLLING_MOMENT, Variable.SIDESLIP);
    double large = VortexLattice.of(new LatticeReference(6, 1, 6, 0.3, 0), full).factor()
        .solve(LatticeCondition.at(0.1)).derivative(Coefficient.ROLLING_MOMENT, Variable.SIDESLIP);
    assertThat(small).isCloseTo(large, within(1e-12));
  }
}
