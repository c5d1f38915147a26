// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class LatticeInputTest {
  private static final LatticeReference REFERENCE = new LatticeReference(6, 1, 6, 0.25, 0);
  private static final LatticeSurface WING = LatticeSurface.trapezoid("wing", 6, 1, 1, 0, 0).panels(2, 6);

  @Test
  void quantities_give_the_same_lattice_as_numbers() {
    Angle sweep = Angle.degrees(10);
    Angle dihedral = Angle.degrees(5);
    LatticeSurface numbers =
        LatticeSurface.trapezoid("wing", 0.6, 0.1, 0.08, sweep.si(), dihedral.si()).movedBy(0.05, 0.01, 0.02)
            .twisted(0.01, -0.02).incidence(0.03).control(new LatticeControl("flap", 0.7, 0, 0.5, false)).panels(2, 4);
    LatticeSurface quantities =
        LatticeSurface.trapezoid("wing", Length.millimetres(600), Length.millimetres(100), Length.millimetres(80), sweep, dihedral)
            .movedBy(Length.millimetres(50), Length.millimetres(10), Length.millimetres(20))
            .twisted(Angle.radians(0.01), Angle.radians(-0.02)).incidence(Angle.radians(0.03))
            .control(new LatticeControl("flap", 0.7, 0, 0.5, false)).panels(2, 4);
    LatticeReference reference = new LatticeReference(0.054, 0.09, 0.6, 0.05, 0);
    LatticeSolution first = VortexLattice.of(reference, numbers).groundAt(-0.3).factor()
        .solve(LatticeCondition.at(0.05).sideslip(0.02).deflect("flap", 0.1));
    LatticeSolution second = VortexLattice.of(reference, quantities).groundAt(Length.metres(-0.3)).factor()
        .solve(LatticeCondition.at(Angle.radians(0.05)).sideslip(Angle.radians(0.02)).deflect("flap", Angle.radians(0.1)));
    assertThat(second.condition()).isEqualTo(first.condition());
    assertThat(second.coefficients().lift()).isCloseTo(first.coefficients().lift(), within(1e-12));
    assertThat(second.coefficients().rollingMoment()).isCloseTo(first.coefficients().rollingMoment(), within(1e-12));
  }

  @Test
  void coincident_surfaces_are_named() {
    LatticeSurface copy = LatticeSurface.trapezoid("second wing", 6, 1, 1, 0, 0).panels(3, 7).movedBy(0.2, 0, 0);
    assertThatIllegalArgumentException().isThrownBy(() -> VortexLattice.of(REFERENCE, WING, copy).factor())
        .withMessage("surfaces must not coincide: 'wing' and 'second wing' lie in one another");
    assertThat(VortexLattice.of(REFERENCE, WING, copy.movedBy(0, 0, 1)).factor().liftSlope()).isPositive();
  }

  @Test
  void a_fin_given_as_mirrored_is_told_to_be_central() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LatticeSurface.mirrored("fin", new LatticeStation(0, 0, 0, 1, 0),
            new LatticeStation(0, 0, 1, 1, 0)))
        .withMessage("surface 'fin' would coincide with its own mirror image: give it as central");
    LatticeSurface tooNear = LatticeSurface.mirrored("twin fin", new LatticeStation(0, 1e-5, 0, 1, 0),
        new LatticeStation(0, 1e-5, 1, 1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> VortexLattice.of(REFERENCE, tooNear).factor())
        .withMessage("surfaces must not coincide: 'twin fin' lies in its own mirror image");
  }

  @Test
  void bad_numbers_are_refused_with_what_was_got() {
    assertThatIllegalArgumentException().isThrownBy(() -> new LatticeStation(0, 0, 0, -0.1, 0))
        .withMessage("chord must not be negative, was -0.100000 m");
    assertThatIllegalArgumentException().isThrownBy(() -> new LatticeStation(Double.NaN, 0, 0, 1, 0))
        .withMessageContaining("leading edge must be finite");
    assertThatIllegalArgumentException().isThrownBy(() -> new LatticeReference(0, 1, 1, 0, 0))
        .withMessage("reference area must be positive, was 0.00000 m²");
    assertThatIllegalArgumentException().isThrownBy(() -> LatticeCondition.at(2.0))
        .withMessage("angle of attack must lie within -90° and 90°, was 114.6°");
    assertThatIllegalArgumentException().isThrownBy(() -> LatticeCondition.at(0).rates(Double.NaN, 0, 0))
        .withMessage("roll rate must be finite, was NaN");
    assertThatIllegalArgumentException().isThrownBy(() -> WING.panels(0, 4))
        .withMessage("rows of panels must lie within 1 and 64, were 0");
    assertThatIllegalArgumentException().isThrownBy(() -> VortexLattice.of(REFERENCE))
        .withMessage("a lattice needs at least 1 surface, had none");
    assertThatIllegalArgumentException().isThrownBy(() -> VortexLattice.of(REFERENCE, WING, WING))
        .withMessage("surfaces need different names, two were 'wing'");
    assertThatIllegalArgumentException().isThrownBy(() -> VortexLattice.of(REFERENCE, WING).groundAt(0.1))
        .withMessageContaining("ground must lie below surface 'wing'");
    assertThatIllegalArgumentException().isThrownBy(() -> VortexLattice.of(REFERENCE,
        WING.meanLine(x -> Double.NaN)).factor()).withMessageContaining("mean line of surface 'wing'");
    assertThatIllegalArgumentException().isThrownBy(() -> VortexLattice.of(REFERENCE, WING).factor()
        .solve(LatticeCondition.at(0).deflect("flap", 0.1))).withMessage("control must be one of [], was 'flap'");
    assertThatIllegalArgumentException().isThrownBy(() -> VortexLattice.of(REFERENCE, WING).factor()
        .solve(LatticeCondition.at(0)).strengths("tail", false))
        .withMessage("surface must be one of [wing], was 'tail'");
  }

  @Test
  void a_wing_with_bends_keeps_an_edge_at_every_bend() {
    LatticeSurface bent = LatticeSurface.mirrored("wing", new LatticeStation(0, 0, 0, 1, 0),
        new LatticeStation(0, 2, 0, 1, 0), new LatticeStation(0.2, 3, 0.4, 0.6, 0)).panels(2, 7);
    LatticePanels panels = new LatticePanels(bent);
    assertThat(Arrays.stream(panels.edgeY).boxed()).anySatisfy(y -> assertThat(y).isCloseTo(2, within(1e-12)));
    assertThat(Arrays.stream(panels.stripWidth).boxed()).allSatisfy(w -> assertThat(w).isPositive());
  }

  @Test
  void large_angles_are_a_finding() {
    FactoredLattice lattice = VortexLattice.of(REFERENCE, WING).factor();
    assertThat(lattice.solve(LatticeCondition.at(Angle.degrees(5))).findings()).isEmpty();
    assertThat(lattice.solve(LatticeCondition.at(Angle.degrees(15))).findings()).hasSize(1);
  }

  @Test
  void text_fits_on_a_line() {
    FactoredLattice lattice = VortexLattice.of(REFERENCE, WING).factor();
    assertThat(WING.toString()).isEqualTo("mirrored 'wing', 2 sections, 2 by 6 panels");
    assertThat(lattice.lattice().toString()).isEqualTo("vortex lattice of 1 surfaces, 12 panels per half");
    for (Object o : new Object[] {lattice, lattice.solve(LatticeCondition.at(-0.1)),
      lattice.solve(LatticeCondition.at(-0.1)).coefficients(),
      lattice.solve(LatticeCondition.at(0.1)).spanLoading("wing", true).get(0), WING.stations().get(1)}) {
      assertThat(o.toString()).hasSizeLessThanOrEqualTo(75);
    }
  }
}
