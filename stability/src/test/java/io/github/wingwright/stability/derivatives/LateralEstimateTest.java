// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import io.github.wingwright.stability.lattice.Coefficient;
import io.github.wingwright.stability.lattice.FactoredLattice;
import io.github.wingwright.stability.lattice.LatticeCondition;
import io.github.wingwright.stability.lattice.LatticeReference;
import io.github.wingwright.stability.lattice.LatticeSolution;
import io.github.wingwright.stability.lattice.LatticeStation;
import io.github.wingwright.stability.lattice.LatticeSurface;
import io.github.wingwright.stability.lattice.Variable;
import io.github.wingwright.stability.lattice.VortexLattice;
import org.junit.jupiter.api.Test;

class LateralEstimateTest {
  private static final LateralEstimate.WingShape WING =
      new LateralEstimate.WingShape(4.5, 2 * Math.PI, 7, 0.6, 0.1, 0.05, 0.5, 0.03, 0.04);
  private static final LateralEstimate.FinShape FIN = new LateralEstimate.FinShape(2.8, 0.08, 0.45, 0.06, 0.9);
  private static final LateralEstimate.Body BODY = new LateralEstimate.Body(0.01, 0.9, 0.03, 0.06, 0.06);

  @Test
  void contributions_add_up_and_are_named() {
    LateralEstimate.Result result = LateralEstimate.of(WING).fin(FIN).body(BODY).solve();
    assertThat(result.contributions()).extracting(LateralContribution::part).containsExactly("wing, dihedral",
        "wing, sweep", "wing, height on the body", "wing, lift and damping", "body", "fin");
    assertThat(result.contributions().stream().mapToDouble(c -> c.values().yawSideslip()).sum())
        .isCloseTo(result.total().yawSideslip(), within(1e-15));
    assertThat(result.findings()).isEmpty();
  }

  @Test
  void without_a_fin_the_body_wins_and_the_nose_leaves_the_wind() {
    assertThat(LateralEstimate.of(WING).body(BODY).solve().total().yawSideslip()).isNegative();
    assertThat(LateralEstimate.of(WING).body(BODY).fin(FIN).solve().total().yawSideslip()).isPositive();
  }

  @Test
  void a_part_given_again_replaces_the_earlier_one() {
    LateralEstimate.FinShape large = new LateralEstimate.FinShape(2.8, 0.16, 0.45, 0.06, 0.9);
    assertThat(LateralEstimate.of(WING).fin(FIN).fin(large).solve().total())
        .isEqualTo(LateralEstimate.of(WING).fin(large).solve().total());
  }

  @Test
  void a_formula_outside_its_range_is_a_finding_and_still_answers() {
    LateralEstimate.WingShape stubby =
        new LateralEstimate.WingShape(1.8, 2 * Math.PI, 1.5, 0.6, 0.1, 0, 0.5, 0.03, 0);
    LateralEstimate.Result result = LateralEstimate.of(stubby).solve();
    assertThat(result.findings()).isNotEmpty();
    assertThat(result.total().rollRollRate()).isNegative();
  }

  @Test
  void numbers_that_are_none_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LateralEstimate.FinShape(2.8, Double.NaN, 0.45, 0.06, 0.9))
        .withMessage("numbers of the fin must be finite, one was NaN");
  }

  /** The same wing and fin by handbook and by lattice: within a third, which is what estimates of this kind are worth. */
  @Test
  void handbook_and_lattice_agree_within_a_third() {
    double alpha = Math.toRadians(5);
    LatticeSurface wing = LatticeSurface.trapezoid("wing", 7, 1.2, 0.8, 0, 0.1).panels(4, 16);
    LatticeSurface fin = LatticeSurface.central("fin", new LatticeStation(3, 0, 0, 0.7, 0),
        new LatticeStation(3.1, 0, 1.0, 0.5, 0)).panels(4, 10);
    FactoredLattice lattice = VortexLattice.of(new LatticeReference(7, 1, 7, 0.3, 0), wing, fin).factor();
    LatticeSolution flow = lattice.solve(LatticeCondition.at(alpha));
    LateralDerivatives exact = LatticeDerivatives.lateral(flow);
    double finSlope = -VortexLattice.of(new LatticeReference(0.6, 1, 1, 3.3, 0.5), fin).factor()
        .solve(LatticeCondition.at(0)).derivative(Coefficient.SIDE_FORCE, Variable.SIDESLIP);
    double slope = LiftingLine.tapered(7, 7, 2.0 / 3).solve().liftSlope();
    LateralDerivatives quick = LateralEstimate.of(new LateralEstimate.WingShape(slope, 2 * Math.PI, 7, 2.0 / 3, 0.1,
        0, flow.coefficients().lift(), 0, 0))
        .fin(new LateralEstimate.FinShape(finSlope, 0.6 / 7, 2.9 / 7, 0.5 / 7, 1)).solve().total();
    assertThat(quick.yawSideslip()).isCloseTo(exact.yawSideslip(), withinPercentage(33));
    assertThat(quick.yawYawRate()).isCloseTo(exact.yawYawRate(), withinPercentage(33));
    assertThat(quick.rollRollRate()).isCloseTo(exact.rollRollRate(), withinPercentage(33));
    assertThat(quick.rollYawRate()).isCloseTo(exact.rollYawRate(), withinPercentage(33));
    assertThat(quick.sideYawRate()).isCloseTo(exact.sideYawRate(), withinPercentage(33));
  }

  /** The lift acts at the tail's quarter chord, but follows the angle at three quarters: half a tail chord further aft. */
  @Test
  void tail_part_of_the_pitch_damping_agrees_with_the_lattice() {
    LatticeSurface tail = LatticeSurface.trapezoid("tail", 2, 0.5, 0.5, 0, 0).movedBy(3, 0, 0).panels(4, 12);
    LatticeReference reference = new LatticeReference(6, 1, 6, 0.3, 0);
    LatticeSolution level = VortexLattice.of(reference, tail).factor().solve(LatticeCondition.at(0));
    double slope = level.derivative(Coefficient.LIFT, Variable.ANGLE_OF_ATTACK) * 6;
    double arm = 3 + 0.23 * 0.5 - 0.3;
    double lattice = level.derivative(Coefficient.PITCHING_MOMENT, Variable.PITCH_RATE);
    assertThat(TailPitchRate.pitchDamping(1, arm / 6, slope, arm)).isCloseTo(lattice, withinPercentage(10));
    assertThat(TailPitchRate.pitchDamping(1, arm / 6, slope, arm + 0.25)).isCloseTo(lattice, withinPercentage(2));
  }

  @Test
  void lattice_derivatives_enter_the_equations_with_their_signs() {
    LatticeSurface wing = LatticeSurface.trapezoid("wing", 6, 1, 1, 0, 0).panels(3, 10);
    LatticeSurface tail = LatticeSurface.trapezoid("tail", 2, 0.5, 0.5, 0, 0).movedBy(3, 0, 0.2).panels(3, 6);
    LatticeSolution flow = VortexLattice.of(new LatticeReference(6, 1, 6, 0.3, 0), wing, tail).factor()
        .solve(LatticeCondition.at(0.08));
    LongitudinalDerivatives d = LatticeDerivatives.longitudinal(flow, 0.03, 0, 1, -3);
    assertThat(d.zAngle()).isNegative();
    assertThat(d.mAngle()).isNegative();
    assertThat(d.mPitchRate()).isNegative();
    assertThat(d.xAngle()).isPositive();
    assertThat(d.zAngle()).isCloseTo(-(flow.derivative(Coefficient.LIFT, Variable.ANGLE_OF_ATTACK) + 0.03
        + flow.inducedDragCoefficient()), within(1e-12));
  }
}
