// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import org.junit.jupiter.api.Test;

class StockTest {
  private static final Placement HERE = Placement.at(Length.millimetres(100), Length.ZERO);

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  /** A rhombus, thickest in the middle. */
  private record Rhombus(double maximumThickness) implements AirfoilSection {
    @Override
    public String name() {
      return "rhombus";
    }

    @Override
    public double maximumThicknessPosition() {
      return 0.5;
    }

    @Override
    public double maximumCamber() {
      return 0;
    }

    @Override
    public double trailingEdgeThickness() {
      return 0;
    }

    @Override
    public double area() {
      return 0.5 * maximumThickness;
    }

    @Override
    public double perimeter() {
      return 2 * Math.hypot(1, maximumThickness);
    }

    @Override
    public double thickness(double x) {
      return maximumThickness * (1 - Math.abs(2 * x - 1));
    }

    @Override
    public double camber(double x) {
      return 0;
    }

    @Override
    public double camberSlope(double x) {
      return 0;
    }

    @Override
    public void outline(double[] x, double[] y) {
      throw new UnsupportedOperationException();
    }
  }

  @Test
  void the_documented_tube_holds() {
    assertThat(Stock.tubeMass(1550, 4e-3, 3e-3, 1)).isCloseTo(8.5216e-3, within(5e-8));
  }

  @Test
  void a_tube_has_the_exact_inertia_of_a_hollow_cylinder() {
    MassItem tube = Stock.tube("boom", Materials.CARBON_TUBE, mm(4), mm(3), mm(500), HERE);
    double m = tube.mass().si();
    assertThat(tube.massBand().low().si()).isLessThan(m);
    double roll = m * (4e-3 * 4e-3 + 3e-3 * 3e-3) / 8;
    assertThat(tube.ownInertia().roll().si()).isCloseTo(roll, within(1e-12 * roll));
    double pitch = m * (3 * (2e-3 * 2e-3 + 1.5e-3 * 1.5e-3) + 0.25) / 12;
    assertThat(tube.ownInertia().pitch().si()).isCloseTo(pitch, within(1e-9 * pitch));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Stock.tube("boom", Materials.CARBON_TUBE, mm(3), mm(3), mm(500), HERE))
        .withMessage("inner diameter of boom must be less than the outer of 3 mm, was 3 mm");
  }

  @Test
  void a_spar_across_rolls_as_a_boom_along_pitches() {
    MassItem boom = Stock.tube("boom", Materials.CARBON_TUBE, mm(4), mm(3), mm(500), HERE);
    MassItem spar = Stock.tubeAcross("spar", Materials.CARBON_TUBE, mm(4), mm(3), mm(500), HERE);
    assertThat(spar.massBand()).isEqualTo(boom.massBand());
    assertThat(spar.ownInertia().roll()).isEqualTo(boom.ownInertia().pitch());
    assertThat(spar.ownInertia().pitch()).isEqualTo(boom.ownInertia().roll());
    assertThat(spar.ownInertia().yaw()).isEqualTo(boom.ownInertia().yaw());
  }

  @Test
  void sheets_cores_and_coverings_weigh_density_times_size() {
    Area area = Area.squareCentimetres(100);
    assertThat(Stock.sheet("fin", Materials.BALSA_MEDIUM, area, mm(1.5), HERE).mass().si())
        .isCloseTo(Stock.sheetMass(Materials.BALSA_MEDIUM, area, mm(1.5)).si(), within(1e-15));
    assertThat(Stock.core("wing", Materials.XPS, Volume.cubicCentimetres(1000), HERE).mass().grams()).isCloseTo(33, within(1e-9));
    assertThat(Covering.LIGHT_FILM.mass(Area.squareCentimetres(744)).grams()).isCloseTo(1.9344, within(1e-9));
    MassItem covered = Covering.TISSUE.item("wing", Area.squareMetres(1), HERE);
    assertThat(covered.name()).isEqualTo("wing, doped tissue");
    assertThat(covered.massBand().high().si()).isEqualTo(0.035);
    for (int i = 1; i < Covering.all().size(); i++) {
      assertThat(Covering.all().get(i).arealDensity().likely().si())
          .isGreaterThanOrEqualTo(Covering.all().get(i - 1).arealDensity().likely().si() - 0.002);
    }
  }

  @Test
  void a_catalogue_takes_materials_of_ones_own() {
    Material mine = Material.of("Blue PLA", Density.gramsPerCubicCentimetre(1.21), Source.BRIEF);
    MaterialCatalogue catalogue = MaterialCatalogue.standard().with(mine);
    assertThat(catalogue.named("blue pla")).isSameAs(mine);
    assertThat(catalogue.all()).hasSize(Materials.all().size() + 1);
    assertThat(MaterialCatalogue.standard().find("blue PLA")).isEmpty();
    Material other = Material.of("PLA", Density.gramsPerCubicCentimetre(1.3), Source.BRIEF);
    assertThat(catalogue.with(other).named("PLA")).isSameAs(other);
    assertThat(catalogue.with(other).all()).hasSize(catalogue.all().size());
    assertThatIllegalArgumentException().isThrownBy(() -> catalogue.named("glue")).withMessageEndingWith("Blue PLA, was glue");
  }

  @Test
  void the_wall_of_a_capsule_is_what_lies_between_two_capsules() {
    // 256 mm long, 22 mm thick, wall 0.84 mm: the inside is a capsule too.
    Fuselage body = new Fuselage(BodyShape.capsule(), mm(256), mm(22));
    Fuselage inside = new Fuselage(BodyShape.capsule(), mm(256 - 1.68), mm(22 - 1.68));
    double exact = body.volume().si() - inside.volume().si();
    assertThat(SkinVolume.ofBody(body, mm(0.84)).si()).isCloseTo(exact, within(2e-4 * exact));
    // Area times wall is larger, by w/(2r) along the tube and twice as much on the round ends.
    double thin = body.wettedArea().si() * 0.84e-3;
    assertThat(thin / exact - 1).isCloseTo(0.84 / 22, within(0.006));
    assertThat(SkinVolume.ofBody(body, mm(20)).si()).isCloseTo(body.volume().si(), within(1e-3 * body.volume().si()));
  }

  @Test
  void the_wall_of_a_ball_and_of_a_double_cone_is_what_lies_between_two_of_them() {
    double ball = 4.0 / 3.0 * Math.PI * (8000 - Math.pow(20 - 0.84, 3));
    Fuselage round = new Fuselage(BodyShape.prolateSpheroid(), mm(40), mm(40));
    assertThat(SkinVolume.ofBody(round, mm(0.84)).cubicMillimetres()).isCloseTo(ball, within(1e-4 * ball));
    for (double fineness : new double[] {1, 2.5, 4}) {
      Fuselage cones = new Fuselage(BodyShape.of(EndProfile.cone(), fineness, EndProfile.cone(), fineness), mm(60 * fineness), mm(30));
      double angle = Math.atan(0.5 / fineness);
      // Inside is a double cone smaller in the ratio of the distances of its sides from the middle.
      double ratio = 1 - 3 / (15 * Math.cos(angle));
      double exact = cones.volume().cubicMillimetres() * (1 - ratio * ratio * ratio);
      assertThat(SkinVolume.ofBody(cones, mm(3)).cubicMillimetres()).isCloseTo(exact, within(2e-5 * exact));
      double curvature = cones.shape().curvatureIntegral(cones.length().si(), cones.diameter().si());
      double steiner = 1e9 * SkinVolume.ofSmoothBody(cones.wettedArea().si(), curvature, 3e-3);
      double points = 2 * 27 * Math.PI / 3 * (Math.pow(Math.cos(angle), 2) / Math.sin(angle) - 2 + 2 * Math.sin(angle));
      double rim = 2 * Math.PI * 15 * 9 * (Math.tan(angle) - angle);
      // What is left is of the third order at the rim.
      assertThat(steiner + points - rim).as("fineness of each cone %s", fineness).isCloseTo(exact, within(1.5e-3 * exact));
    }
  }

  @Test
  void the_wall_of_a_section_fills_its_edges() {
    Rhombus section = new Rhombus(0.06);
    // Inside is a rhombus smaller in the ratio of the distances of its sides from the middle.
    double distance = 0.03 / Math.hypot(1, 0.06);
    double wall = 0.005;
    double ratio = 1 - wall / distance;
    double exact = 0.5 * 0.06 * (1 - ratio * ratio);
    assertThat(SkinVolume.ofSection(section, 1, wall)).isCloseTo(exact, within(1e-6));
    assertThat(SkinVolume.ofSection(section, 1, 0.5)).isCloseTo(0.03, within(1e-6));
    assertThat(SkinVolume.ofSection(section, 1, wall)).isLessThan(section.perimeter() * wall);
  }

  @Test
  void the_wall_of_a_wing_is_the_integral_over_its_span() {
    Wing straight = Wing.of(Planform.tapered(Length.metres(0.5), mm(80), mm(80)), new Rhombus(0.06));
    double expected = 0.5 * SkinVolume.ofSection(straight.section(), 0.08, 0.42e-3);
    assertThat(SkinVolume.ofSurface(straight, mm(0.42)).si()).isCloseTo(expected, within(1e-12));
    Wing tapered = Wing.of(Planform.tapered(Length.metres(0.5), mm(90), mm(70)), new Rhombus(0.06));
    int n = 400;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += 0.5 / n * SkinVolume.ofSection(tapered.section(), 0.09 - 0.02 * (i + 0.5) / n, 0.42e-3);
    }
    assertThat(SkinVolume.ofSurface(tapered, mm(0.42)).si()).isCloseTo(sum, within(1e-5 * sum));
  }
}
