// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import org.junit.jupiter.api.Test;

class WingSolidTest {
  private static final AirfoilSection LENS = new Lens(0.1, 0.03);
  private static final Planform TAPERED =
      Planform.tapered(mm(400), mm(60), mm(30)).withDihedral(Angle.degrees(10));
  private static final Length FINE = Length.micrometres(2);

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private static double volume(Solid solid, Length tolerance) {
    return MeshCheck.of(solid.mesh(tolerance)).volume().cubicMillimetres();
  }

  @Test
  void a_tapered_half_has_the_volume_of_its_sections() {
    // k·∫c² dy with c from 60 to 30 mm over 200 mm, k = 2t/3; dihedral leaves sections and span as they are.
    double exact = 0.2 / 3.0 * 200.0 * (60.0 * 60.0 + 60.0 * 30.0 + 30.0 * 30.0) / 3.0;
    assertThat(volume(WingSolid.half(TAPERED, LENS), FINE)).isCloseTo(exact, withinPercentage(0.1));
    assertThat(volume(WingSolid.whole(TAPERED, LENS), FINE)).isCloseTo(2.0 * exact, withinPercentage(0.1));
  }

  @Test
  void the_error_of_the_volume_shrinks_with_the_tolerance() {
    double exact = 0.2 / 3.0 * 200.0 * 2100.0;
    double surface = 2.0 * 200.0 * 45.0;
    for (double tolerance : new double[] {0.2, 0.05, 0.0125, 0.003}) {
      double error = exact - volume(WingSolid.half(TAPERED, LENS), mm(tolerance));
      assertThat(Math.abs(error)).as("at %s mm", tolerance).isLessThan(surface * tolerance);
    }
  }

  @Test
  void no_edge_of_an_outline_strays_further_than_the_tolerance() {
    for (double tolerance : new double[] {0.1, 0.02, 0.005}) {
      SectionLoop loop = SectionLoop.of(LENS, 0.0, tolerance / 100.0);
      for (int i = 0; i < loop.size(); i++) {
        int j = (i + 1) % loop.size();
        double x = 0.5 * (loop.x(i) + loop.x(j));
        double z = 0.5 * (loop.z(i) + loop.z(j));
        double upper = LENS.camber(x) + 0.5 * LENS.thickness(x);
        double lower = LENS.camber(x) - 0.5 * LENS.thickness(x);
        assertThat(Math.min(Math.abs(z - upper), Math.abs(z - lower))).isLessThan(1.05 * tolerance / 100.0);
      }
    }
    assertThat(SectionLoop.of(LENS, 0.0, 1e-5).size()).isGreaterThan(2 * SectionLoop.of(LENS, 0.0, 1e-3).size());
  }

  @Test
  void washout_turns_sections_without_changing_their_area() {
    Planform twisted = TAPERED.withWashout(Angle.degrees(5));
    double straight = volume(WingSolid.half(TAPERED, LENS), FINE);
    assertThat(volume(WingSolid.half(twisted, LENS), FINE)).isCloseTo(straight, withinPercentage(0.02));
    double rise = WingSolid.half(twisted, LENS).mesh(mm(0.02)).box().height().millimetres();
    assertThat(rise).isGreaterThan(WingSolid.half(TAPERED, LENS).mesh(mm(0.02)).box().height().millimetres() + 1.0);
  }

  @Test
  void tips_lie_where_the_planform_says() {
    MeshBox box = WingSolid.whole(TAPERED, LENS).mesh(mm(0.05)).box();
    assertThat(box.width().millimetres()).isCloseTo(400.0, within(1e-9));
    assertThat(box.least().y().millimetres()).isCloseTo(-200.0, within(1e-9));
    double tip = 200.0 * Angle.degrees(10).tangent();
    assertThat(box.most().z().millimetres()).isCloseTo(tip + 0.08 * 30.0, within(0.06));
  }

  @Test
  void a_thin_trailing_edge_is_made_as_thick_as_asked() {
    double plain = volume(WingSolid.half(TAPERED, LENS), FINE);
    double thick = volume(WingSolid.half(TAPERED, LENS).trailingEdgeAtLeast(mm(0.6)), FINE);
    // At the tip 0.6 mm of 30 mm: 2 % of the chord, added as a wedge of area 1 % of the chord squared everywhere.
    assertThat(thick - plain).isCloseTo(0.01 * 200.0 * 2100.0, withinPercentage(0.5));
  }

  @Test
  void a_hole_takes_its_own_volume() {
    WingSolid plain = WingSolid.half(TAPERED, LENS);
    Bore spar = Bore.along(0.5, mm(2), mm(0), mm(200));
    Bore blind = Bore.along(0.3, mm(1.5), mm(20), mm(90));
    Bore pin = Bore.acrossRoot(0.7, mm(2), mm(6));
    double whole = volume(plain, FINE);
    assertThat(whole - volume(plain.with(spar), FINE)).isCloseTo(Math.PI * 200.0, withinPercentage(0.4));
    double both = volume(plain.with(spar).with(blind).with(pin), FINE);
    double holes = Math.PI * (200.0 + 0.5625 * 70.0 + 6.0);
    assertThat(whole - both).isCloseTo(holes, withinPercentage(0.4));
  }

  @Test
  void pieces_with_a_tongue_make_up_the_half_and_the_tongue_its_slot() {
    Tongue tongue = new Tongue(0.3, 0.6, mm(2), mm(15), mm(0.1));
    WingSolid half = WingSolid.half(TAPERED, LENS);
    double inner = volume(half.between(mm(0), mm(90)).endingWith(tongue), FINE);
    double outer = volume(half.between(mm(90), mm(200)).startingOver(tongue), FINE);
    double wide = 0.3 * (60.0 - 90.0 * 0.15);
    double plug = wide * 2.0 * 15.0;
    double slot = (wide + 0.2) * 2.2 * 15.1;
    double cut = volume(half.between(mm(0), mm(90)), FINE) + volume(half.between(mm(90), mm(200)), FINE);
    assertThat(cut).isCloseTo(volume(half, FINE), withinPercentage(1e-6));
    assertThat(inner + outer).isCloseTo(cut + plug - slot, within(0.01));
  }

  @Test
  void what_leaves_the_section_is_an_error_that_says_where() {
    WingSolid half = WingSolid.half(TAPERED, LENS);
    assertThatThrownBy(() -> half.with(Bore.along(0.5, mm(4), mm(0), mm(200))).mesh(mm(0.05)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("a hole of 4 mm must leave a skin of 0.2 mm")
        .hasMessageContaining("at y ");
    Tongue thick = new Tongue(0.1, 0.9, mm(3), mm(10), mm(0.1));
    assertThatThrownBy(() -> half.between(mm(0), mm(100)).endingWith(thick).mesh(mm(0.05)))
        .hasMessageContaining("a tongue of 3 mm")
        .hasMessageContaining("y 100 mm");
    assertThatThrownBy(() -> half.between(mm(100), mm(300))).hasMessageContaining("between 0");
    assertThatThrownBy(() -> half.mesh(mm(0.0001))).hasMessageContaining("chordal tolerance");
    assertThatThrownBy(() -> WingSolid.half(Planform.tapered(mm(300), mm(50), mm(0)), LENS)).hasMessageContaining("tip chord");
  }

  @Test
  void wings_of_several_panels_drawn_at_random_are_watertight() {
    Seeded.points(
            20251125,
            40,
            new double[] {20, 200},
            new double[] {0.3, 1.2},
            new double[] {-20, 35},
            new double[] {-10, 25},
            new double[] {-4, 6},
            new double[] {0.06, 0.2},
            new double[] {0.01, 0.2})
        .forEach(p -> {
          double root = p[0];
          Panel inner = new Panel(
              mm(2.0 * root), mm(root * Math.sqrt(p[1])), Angle.degrees(p[2]), Angle.degrees(p[3]), Angle.degrees(p[4]));
          Panel outer = new Panel(
              mm(1.5 * root), mm(root * p[1]), Angle.degrees(p[2]), Angle.degrees(2.0 * p[3]), Angle.degrees(-p[4]));
          Planform planform = Planform.symmetric(mm(root), List.of(inner, outer));
          AirfoilSection lens = new Lens(p[5], 0.4 * p[5]);
          Length bore = mm(0.3 * p[5] * root * p[1]);
          WingSolid half = WingSolid.half(planform, lens).trailingEdgeAtLeast(mm(0.3));
          WingSolid bored = half.with(Bore.along(0.4, bore, mm(0), mm(1.9 * root)));
          Length tolerance = mm(p[6] * 0.01 * root);
          assertThat(volume(half, tolerance)).isGreaterThan(volume(bored, tolerance));
          MeshCheck.of(WingSolid.whole(planform, lens).mesh(tolerance));
        });
  }

  @Test
  void plates_tubes_and_shims_have_the_volume_of_their_formulas() {
    assertThat(volume(PlateSolid.of(TAPERED.withDihedral(Angle.ZERO), mm(0.8)), FINE)).isCloseTo(0.8 * 400.0 * 45.0, withinPercentage(1e-9));
    Planform fin = Planform.fin(mm(50), List.of(new Panel(mm(60), mm(30), Angle.degrees(20), Angle.ZERO, Angle.ZERO)));
    assertThat(volume(PlateSolid.of(fin, mm(1)), FINE)).isCloseTo(60.0 * 40.0, withinPercentage(1e-9));
    double cut = 60.0 * 40.0 - 6.0 * (50.0 + 48.0) / 2.0;
    assertThat(volume(PlateSolid.of(fin, mm(1)).startingAt(mm(6)), FINE)).isCloseTo(cut, withinPercentage(1e-9));
    double tube = Math.PI * (9.0 - 4.0) * 40.0;
    assertThat(volume(TubeSolid.of(mm(40), mm(6), mm(4)), FINE)).isCloseTo(tube, withinPercentage(0.2));
    double shim = 12.0 * 50.0 * (0.5 + 0.5 * 50.0 * Angle.degrees(2).tangent());
    // Turned end for end a shim that raises the trailing edge is the same wedge.
    Solid under = ShimSolid.of(mm(50), mm(12), mm(0.5), Angle.degrees(-2), Angle.degrees(12));
    assertThat(under.mesh(FINE).volume().cubicMillimetres()).isCloseTo(600 * (0.5 + 25 * Angle.degrees(2).tangent()), within(1e-6));
    assertThat(under.mesh(FINE).centroid().x()).isGreaterThan(mm(26));
    assertThat(ShimSolid.of(mm(50), mm(12), mm(0.5), Angle.degrees(2), Angle.degrees(12)).mesh(FINE).centroid().x())
        .isLessThan(mm(24));
    assertThatThrownBy(() -> ShimSolid.of(mm(50), mm(12), mm(0.5), Angle.degrees(10.5), Angle.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
    Solid wedge = ShimSolid.of(mm(50), mm(12), mm(0.5), Angle.degrees(2), Angle.degrees(12));
    assertThat(volume(wedge, FINE)).isCloseTo(shim, withinPercentage(1e-9));
    assertThat(volume(ShimSolid.of(mm(50), mm(12), mm(0.5), Angle.ZERO, Angle.ZERO), FINE)).isCloseTo(300.0, within(1e-9));
  }
}
