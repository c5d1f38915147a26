// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.core.aerodynamics.LiftingLineSolution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lattice and lifting line of the same straight wing with the same section: two theories, one limit. */
class LiftingLineAgreementTest {
  private static LatticeSurface wing(double aspectRatio, double taper, double dihedral) {
    double root = 2 / (aspectRatio * (1 + taper));
    return LatticeSurface.trapezoid("wing", 1, root, taper * root, 0, dihedral).panels(4, 32);
  }

  private static FactoredLattice lattice(double aspectRatio, LatticeSurface surface) {
    return VortexLattice.of(new LatticeReference(1 / aspectRatio, 1 / aspectRatio, 1, 0, 0), surface).factor();
  }

  private static double factor(FactoredLattice lattice, double aspectRatio) {
    LatticeSolution s = lattice.solve(LatticeCondition.at(0.1));
    double lift = s.coefficients().lift();
    return s.inducedDragCoefficient() * Math.PI * aspectRatio / (lift * lift) - 1;
  }

  @ParameterizedTest
  @CsvSource({
    "6, 1, 6.2832", "8, 0.5, 6.2832", "12, 1, 6.2832", "20, 1, 6.2832", "40, 1, 6.2832",
    "7.5, 0.6, 5.2", "20, 0.5, 5.0", "12, 1, 4.0", "40, 0.5, 4.0",
  })
  void the_slopes_of_straight_wings_agree_to_half_of_one_over_the_aspect_ratio(double a, double taper, double a0) {
    LiftingLineSolution line = LiftingLine.tapered(1, a, taper).sectionLiftSlope(a0).solve();
    double slope = lattice(a, wing(a, taper, 0).sectionLiftSlope(a0)).liftSlope();
    assertThat(slope).isLessThan(line.liftSlope());
    assertThat(1 - slope / line.liftSlope()).isLessThan(FiniteWingComparison.AGREEMENT / a);
  }

  @ParameterizedTest
  @CsvSource({"8, 0.5, 0.03", "20, 0.5, 0.05", "8, 1, 0.05", "40, 1, 0.07"})
  void induced_drag_factors_agree_and_the_lattice_has_the_lower_one(double a, double taper, double apart) {
    double line = LiftingLine.tapered(1, a, taper).solve().inducedDragFactor();
    double lattice = factor(lattice(a, wing(a, taper, 0)), a);
    assertThat(lattice).isBetween(line - apart, line);
  }

  @Test
  void a_nearly_endless_wing_lifts_with_the_slope_of_its_section() {
    for (double a0 : new double[] {2 * Math.PI, 5, 4}) {
      double slope = lattice(2000, wing(2000, 1, 0).sectionLiftSlope(a0)).liftSlope();
      assertThat(slope).isCloseTo(a0, within(0.003 * a0));
    }
  }

  @Test
  void a_poorer_section_moves_neither_the_neutral_point_nor_the_zero_lift_angle() {
    LatticeSurface cambered = wing(8, 1, 0).meanLine(x -> 0.12 * (1 - 2 * x));
    FactoredLattice ideal = lattice(8, cambered);
    FactoredLattice poor = lattice(8, cambered.sectionLiftSlope(4.5));
    assertThat(poor.neutralPoint()).isCloseTo(ideal.neutralPoint(), within(0.002 / 8));
    double idealZero = -ideal.solve(LatticeCondition.at(0)).coefficients().lift() / ideal.liftSlope();
    double poorZero = -poor.solve(LatticeCondition.at(0)).coefficients().lift() / poor.liftSlope();
    assertThat(poorZero).isCloseTo(idealZero, within(1e-4));
  }

  @Test
  void near_forces_and_far_wake_agree_with_poorer_sections_too() {
    LatticeSolution s = lattice(7.5, wing(7.5, 1, 0).sectionLiftSlope(4.5)).solve(LatticeCondition.at(0.1));
    assertThat(s.coefficients().nearFieldDrag()).isCloseTo(s.inducedDragCoefficient(), within(2e-4 * 0.5));
  }

  @Test
  void dihedral_lowers_the_factor_on_the_projected_span() {
    double flat = factor(lattice(7.5, wing(7.5, 0.6, 0)), 7.5);
    double bent = factor(lattice(7.5, wing(7.5, 0.6, Math.toRadians(12))), 7.5);
    assertThat(bent).isLessThan(0.0);
    assertThat(flat - bent).isBetween(0.015, 0.03);
  }

  @Test
  void a_section_slope_must_be_one() {
    assertThatIllegalArgumentException().isThrownBy(() -> wing(8, 1, 0).sectionLiftSlope(0))
        .withMessage("section lift slope of surface 'wing' must lie within 0 and 8 per rad, was 0.0");
    assertThatIllegalArgumentException().isThrownBy(() -> wing(8, 1, 0).incidence(1))
        .withMessage("incidence of surface 'wing' must lie within -45° and 45°, was 57.30°");
  }
}
