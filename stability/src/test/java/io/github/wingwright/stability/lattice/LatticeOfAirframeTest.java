// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import org.junit.jupiter.api.Test;

/** Wings and tails of an airframe as surfaces of a lattice. */
class LatticeOfAirframeTest {
  /** A parabolic mean line of camber 0.03, as thin as the lattice takes it to be. */
  private static final AirfoilSection CAMBERED = new AirfoilSection() {
    @Override
    public String name() {
      return "parabola";
    }

    @Override
    public double maximumThickness() {
      return 0.05;
    }

    @Override
    public double maximumThicknessPosition() {
      return 0.3;
    }

    @Override
    public double maximumCamber() {
      return 0.03;
    }

    @Override
    public double trailingEdgeThickness() {
      return 0;
    }

    @Override
    public double area() {
      return 0.03;
    }

    @Override
    public double perimeter() {
      return 2;
    }

    @Override
    public double thickness(double x) {
      return 0.2 * x * (1 - x);
    }

    @Override
    public double camber(double x) {
      return 0.12 * x * (1 - x);
    }

    @Override
    public double camberSlope(double x) {
      return 0.12 * (1 - 2 * x);
    }

    @Override
    public void outline(double[] x, double[] y) {
      throw new UnsupportedOperationException("a lattice needs no outline");
    }
  };

  private static final Planform PLANFORM = Planform.tapered(Length.metres(2), Length.metres(0.3), Length.metres(0.2))
      .withDihedral(Angle.degrees(5)).withWashout(Angle.degrees(2));
  private static final Wing WING = new Wing(PLANFORM, CAMBERED,
      Placement.at(Length.metres(0.4), Length.metres(0.05)), Angle.degrees(3));

  @Test
  void a_wing_brings_its_place_twist_incidence_and_mean_line() {
    LatticeSurface surface = LatticeSurface.of("wing", WING);
    LatticeStation root = surface.stations().get(0);
    LatticeStation tip = surface.stations().get(1);
    assertThat(surface.isCentral()).isFalse();
    assertThat(root.x()).isCloseTo(0.4, within(1e-15));
    assertThat(surface.incidence()).isCloseTo(Math.toRadians(3), within(1e-15));
    assertThat(root.twist()).isCloseTo(0, within(1e-15));
    assertThat(tip.twist()).isCloseTo(Math.toRadians(-2), within(1e-15));
    assertThat(tip.y()).isCloseTo(1, within(1e-15));
    assertThat(tip.z()).isCloseTo(0.05 + Math.tan(Math.toRadians(5)), within(1e-12));
    assertThat(surface.meanLineSlope(0.25)).isCloseTo(0.06, within(1e-15));
  }

  @Test
  void incidence_and_angle_of_attack_are_the_same_to_a_wing() {
    LatticeReference reference = LatticeReference.of(PLANFORM, Length.metres(0.5), Length.ZERO);
    double raised = VortexLattice.of(reference, LatticeSurface.of("wing", WING).panels(3, 10)).factor()
        .solve(LatticeCondition.at(0)).coefficients().lift();
    double turned = VortexLattice.of(reference, LatticeSurface.of("wing", WING.withIncidence(Angle.ZERO))
        .panels(3, 10)).factor().solve(LatticeCondition.at(Angle.degrees(3))).coefficients().lift();
    assertThat(raised).isCloseTo(turned, within(0.003 * turned));
  }

  @Test
  void a_fin_in_the_plane_of_symmetry_is_central_and_one_beside_it_is_one_of_a_pair() {
    Planform upright = Planform.taperedFin(Area.squareCentimetres(200), 1.5, 0.6);
    Tail one = new Tail(Tail.Role.VERTICAL, upright, CAMBERED, Placement.at(Length.metres(1.3), Length.ZERO), Angle.ZERO);
    Tail two = new Tail(Tail.Role.VERTICAL, upright, CAMBERED,
        new Placement(Length.metres(1.3), Length.metres(0.2), Length.ZERO), Angle.ZERO);
    assertThat(LatticeSurface.of("fin", one).isCentral()).isTrue();
    assertThat(LatticeSurface.of("fins", two).isCentral()).isFalse();
    assertThat(LatticeSurface.of("fin", one).stations().get(1).z())
        .isCloseTo(upright.span().metres(), within(1e-12));
  }

  @Test
  void handbook_line_and_lattice_stand_beside_each_other() {
    Wing wing = Wing.of(Planform.tapered(Area.squareMetres(0.5), 8, 0.6), CAMBERED);
    FiniteWingComparison comparison = FiniteWingComparison.of(wing);
    assertThat(comparison.methods()).extracting(FiniteWingComparison.Row::method)
        .containsExactly("handbook", "lifting line", "lattice");
    double lattice = comparison.methods().get(2).liftSlope();
    assertThat(comparison.methods().get(0).liftSlope()).isCloseTo(lattice, within(0.06 * lattice));
    assertThat(comparison.methods().get(1).liftSlope()).isCloseTo(lattice, within(0.06 * lattice));
    assertThat(comparison.methods().get(2).neutralPoint().orElseThrow()).isBetween(0.22, 0.27);
    assertThat(comparison.methods().get(2).inducedDragFactor().orElseThrow())
        .isCloseTo(comparison.methods().get(1).inducedDragFactor().orElseThrow(), within(0.02));
    assertThat(comparison.toString().lines()).hasSize(3).allMatch(line -> line.length() <= 75);
  }

  @Test
  void a_wing_with_dihedral_has_a_row_to_compare_and_one_as_built() {
    Wing flat = Wing.of(Planform.tapered(Area.squareMetres(0.5), 7.5, 0.6), CAMBERED);
    Wing bent = Wing.of(flat.planform().withDihedral(Angle.degrees(12)), CAMBERED);
    FiniteWingComparison level = FiniteWingComparison.of(flat, 5.2);
    FiniteWingComparison raised = FiniteWingComparison.of(bent, 5.2);
    assertThat(raised.methods()).extracting(FiniteWingComparison.Row::method)
        .containsExactly("handbook", "lifting line", "flat lattice", "lattice");
    FiniteWingComparison.Row comparable = raised.methods().get(2);
    assertThat(comparable.liftSlope()).isCloseTo(level.methods().get(2).liftSlope(), within(1e-9));
    FiniteWingComparison.Row built = raised.methods().get(3);
    assertThat(built.inducedDragFactor().orElseThrow())
        .as("the wake of a bent wing is longer than its projected span")
        .isLessThan(comparable.inducedDragFactor().orElseThrow() - 0.01);
    assertThat(built.assumes()).isEqualTo("section slope 5.20 per rad, 12.0° of dihedral");
    assertThat(raised.findings()).anyMatch(f -> f.message().contains("Hold the row without dihedral"));
  }

  @Test
  void a_stubby_wing_is_where_the_lifting_line_says_too_much() {
    Wing wing = Wing.of(Planform.tapered(Area.squareMetres(0.5), 2, 1), CAMBERED);
    FiniteWingComparison comparison = FiniteWingComparison.of(wing);
    assertThat(comparison.findings()).isNotEmpty();
    assertThat(comparison.methods().get(1).liftSlope()).isGreaterThan(1.15 * comparison.methods().get(2).liftSlope());
  }
}
