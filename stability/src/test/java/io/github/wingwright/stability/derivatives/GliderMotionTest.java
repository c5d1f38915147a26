// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.stability.dynamics.BodyInertia;
import io.github.wingwright.stability.dynamics.FlyingQualities;
import io.github.wingwright.stability.dynamics.LateralForces;
import io.github.wingwright.stability.dynamics.LongitudinalForces;
import io.github.wingwright.stability.dynamics.ModeKind;
import io.github.wingwright.stability.dynamics.Modes;
import io.github.wingwright.stability.dynamics.SteadyFlight;
import io.github.wingwright.stability.dynamics.WingApparentMass;
import io.github.wingwright.stability.lattice.Coefficient;
import io.github.wingwright.stability.lattice.LatticeCondition;
import io.github.wingwright.stability.lattice.LatticeReference;
import io.github.wingwright.stability.lattice.LatticeSolution;
import io.github.wingwright.stability.lattice.LatticeStation;
import io.github.wingwright.stability.lattice.LatticeSurface;
import io.github.wingwright.stability.lattice.Variable;
import io.github.wingwright.stability.lattice.VortexLattice;
import org.junit.jupiter.api.Test;

/** A glider of 0.4 m and 20 g (invented, of usual proportions) from its shape to its named motions. */
class GliderMotionTest {
  private static final double CHORD = 0.05;
  private static final double MASS = 0.020;
  private static final double SPEED = 5.5;
  private static final double DENSITY = 1.2;
  private static final double AREA = 0.02;
  private static final BodyInertia BODY = new BodyInertia(MASS, 1.1e-4, 1.0e-4, 2.0e-4, 0);

  private static LatticeSolution glide(double centreOfGravity, double dihedral) {
    LatticeSurface wing = LatticeSurface.trapezoid("wing", 0.4, 0.055, 0.045, 0, dihedral).panels(4, 12);
    LatticeSurface tail = LatticeSurface.trapezoid("tail", 0.13, 0.04, 0.035, 0, 0).movedBy(0.2, 0, 0).panels(3, 8);
    LatticeSurface fin = LatticeSurface.central("fin", new LatticeStation(0.2, 0, 0.001, 0.04, 0),
        new LatticeStation(0.21, 0, 0.05, 0.03, 0)).panels(3, 8);
    var lattice = VortexLattice.of(new LatticeReference(AREA, CHORD, 0.4, centreOfGravity, 0), wing, tail, fin).factor();
    double lift = MASS * 9.81 / (0.5 * DENSITY * SPEED * SPEED * AREA);
    return lattice.solve(LatticeCondition.at(lift / lattice.liftSlope()));
  }

  private static SteadyFlight flight() {
    return new SteadyFlight(SPEED, DENSITY, -0.12, AREA, CHORD, 0.4, 9.81);
  }

  private static Modes along(double centreOfGravity) {
    LatticeSolution flow = glide(centreOfGravity, 0.15);
    var air = WingApparentMass.ofWing(DENSITY, 0.4, eta -> CHORD, eta -> 0.5 * CHORD - centreOfGravity);
    return LongitudinalForces.of(flight(), MASS, LatticeDerivatives.longitudinal(flow, 0.045, 0, 1, -3)).with(air)
        .stateMatrix(flight(), air.addedTo(BODY)).modes();
  }

  @Test
  void forward_of_the_neutral_point_it_nods_and_behind_it_runs_away() {
    assertThat(along(0.020).find(ModeKind.PITCH_DIVERGENCE)).isEmpty();
    assertThat(along(0.020).find(ModeKind.PHUGOID)).isPresent();
    Modes aft = along(0.060);
    assertThat(aft.find(ModeKind.PITCH_DIVERGENCE)).isPresent();
    assertThat(FlyingQualities.freeFlightModel().check(aft).get(0).message()).contains("battery or ballast");
  }

  @Test
  void more_dihedral_makes_the_spiral_die_out_sooner() {
    double flat = spiral(0.02);
    double bent = spiral(0.25);
    assertThat(bent).isLessThan(flat);
    assertThat(bent).isNegative();
  }

  private static double spiral(double dihedral) {
    return LateralForces.of(flight(), LatticeDerivatives.lateral(glide(0.02, dihedral)))
        .stateMatrix(flight(), BODY).modes().find(ModeKind.SPIRAL).orElseThrow().real();
  }

  /** Turning the moment reference moves C_nβ by the side force times the arm: the fin's moment must come from its arm. */
  @Test
  void a_fin_further_behind_the_centre_of_gravity_turns_more() {
    double forward = glide(0.01, 0.1).derivative(Coefficient.YAWING_MOMENT, Variable.SIDESLIP);
    double aft = glide(0.05, 0.1).derivative(Coefficient.YAWING_MOMENT, Variable.SIDESLIP);
    assertThat(forward).isGreaterThan(aft).isPositive();
    double alpha = glide(0.01, 0.1).condition().angleOfAttack();
    assertThat(forward - aft).isCloseTo(-0.04 / 0.4 * Math.cos(alpha)
        * glide(0.01, 0.1).derivative(Coefficient.SIDE_FORCE, Variable.SIDESLIP), withinPercentage(0.1));
  }

  @Test
  void lift_carries_the_weight() {
    LatticeSolution flow = glide(0.02, 0.1);
    assertThat(flow.coefficients().lift() * 0.5 * DENSITY * SPEED * SPEED * AREA)
        .isCloseTo(MASS * 9.81, within(0.01 * MASS * 9.81));
  }
}
