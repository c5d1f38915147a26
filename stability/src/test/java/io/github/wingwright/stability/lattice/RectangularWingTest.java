// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RectangularWingTest {
  private static FactoredLattice rectangle(double aspectRatio, int rows, int strips) {
    return VortexLattice.of(new LatticeReference(aspectRatio, 1, aspectRatio, 0, 0),
        LatticeSurface.trapezoid("wing", aspectRatio, 1, 1, 0, 0).panels(rows, strips)).factor();
  }

  @ParameterizedTest
  @MethodSource("plates")
  void slope_and_neutral_point_agree_with_lifting_surface_theory(PublishedValues.Row row) {
    FactoredLattice fine = rectangle(row.number("aspect_ratio"), 8, 32);
    assertThat(fine.liftSlope()).as(row.toString())
        .isCloseTo(row.number("slope"), within(row.number("tolerance_slope")));
    assertThat(fine.neutralPoint()).as(row.toString())
        .isCloseTo(row.number("neutral_point"), within(row.number("tolerance_neutral_point")));
  }

  @ParameterizedTest
  @MethodSource("plates")
  void four_rows_of_sixteen_strips_are_within_a_tenth_of_a_per_cent(PublishedValues.Row row) {
    assertThat(rectangle(row.number("aspect_ratio"), 4, 16).liftSlope()).as(row.toString())
        .isCloseTo(row.number("slope"), within(row.number("tolerance_slope")));
  }

  static Stream<PublishedValues.Row> plates() {
    return PublishedValues.beside(RectangularWingTest.class, "rectangular-wings.csv").rows();
  }

  @Test
  void drag_on_the_panels_is_the_drag_in_the_far_wake() {
    LatticeSolution flow = rectangle(6, 8, 32).solve(LatticeCondition.at(0.05));
    assertThat(flow.coefficients().nearFieldDrag())
        .isCloseTo(flow.inducedDragCoefficient(), withinPercentage(0.2));
  }

  @Test
  void a_long_wing_tends_to_the_lifting_line() {
    FactoredLattice lattice = rectangle(20, 4, 40);
    var line = LiftingLine.tapered(20, 20, 1).solve();
    assertThat(lattice.liftSlope()).isCloseTo(line.liftSlope(), withinPercentage(2.5));
    LatticeSolution level = lattice.solve(LatticeCondition.at(0));
    assertThat(level.derivative(Coefficient.ROLLING_MOMENT, Variable.ROLL_RATE))
        .isCloseTo(line.rollDamping(), withinPercentage(6));
    LatticeSolution climbing = lattice.solve(LatticeCondition.at(0.05));
    double lift = climbing.coefficients().lift();
    assertThat(climbing.inducedDragCoefficient())
        .isCloseTo(line.at(lift).inducedDragCoefficient(), withinPercentage(6));
  }

  /** Thin-airfoil theory: a parabolic mean line of camber 0.02 has its zero lift at −2·0.02 rad and C_m −π·0.02. */
  @Test
  void camber_of_a_long_wing_is_that_of_thin_airfoil_theory() {
    double camber = 0.02;
    FactoredLattice lattice = VortexLattice.of(new LatticeReference(200, 1, 200, 0.25, 0),
        LatticeSurface.trapezoid("wing", 200, 1, 1, 0, 0).meanLine(x -> 4 * camber * (1 - 2 * x))
            .panels(6, 40)).factor();
    LatticeSolution zero = lattice.solve(LatticeCondition.at(-2 * camber));
    assertThat(zero.coefficients().lift()).isCloseTo(0, within(0.003));
    assertThat(zero.coefficients().pitchingMoment()).isCloseTo(-Math.PI * camber, within(0.001));
  }

  @Test
  void washout_lowers_the_lift_and_moves_it_inboard() {
    LatticeSurface flat = LatticeSurface.trapezoid("wing", 8, 1, 1, 0, 0).panels(4, 16);
    LatticeReference reference = new LatticeReference(8, 1, 8, 0.25, 0);
    LatticeSolution straight = VortexLattice.of(reference, flat).factor().solve(LatticeCondition.at(0.1));
    LatticeSolution washed = VortexLattice.of(reference, flat.twisted(0, -0.05)).factor()
        .solve(LatticeCondition.at(0.1));
    assertThat(washed.coefficients().lift()).isLessThan(straight.coefficients().lift());
    int tip = 15;
    assertThat(washed.spanLoading("wing", false).get(tip).sectionLiftCoefficient()
        / washed.coefficients().lift()).isLessThan(straight.spanLoading("wing", false).get(tip)
            .sectionLiftCoefficient() / straight.coefficients().lift());
  }

  /** J. Weissinger's rule for rectangular wings, C_lβ/C_L = −1/A + 0.05, from memory, low confidence: to a half. */
  @Test
  void a_flat_rectangle_in_sideslip_rolls_away_from_the_wind_as_the_rule_says() {
    for (double a : new double[] {4, 6, 8}) {
      LatticeSolution flow = rectangle(a, 4, 20).solve(LatticeCondition.at(0.05));
      double perLift = flow.derivative(Coefficient.ROLLING_MOMENT, Variable.SIDESLIP) / flow.coefficients().lift();
      assertThat(perLift).isNegative().isCloseTo(-1 / a + 0.05, withinPercentage(50));
    }
  }

  @Test
  void a_fin_alone_has_the_side_force_of_a_wing_of_its_shape() {
    LatticeSurface fin = LatticeSurface.central("fin", new LatticeStation(0, 0, -1, 1, 0),
        new LatticeStation(0, 0, 1, 1, 0)).panels(8, 32);
    LatticeSolution level = VortexLattice.of(new LatticeReference(2, 1, 2, 0, 0), fin).factor()
        .solve(LatticeCondition.at(0));
    assertThat(level.derivative(Coefficient.SIDE_FORCE, Variable.SIDESLIP)).isCloseTo(-2.4744, within(0.0024));
    assertThat(level.coefficients().lift()).isZero();
  }
}
