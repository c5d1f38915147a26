// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wings that are hard to mesh: each is watertight with its volume, or refused with the place. */
class HardWingsTest {
  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  /** Volume of a half: area of the lens over c² along the span; dihedral and twist leave both as they are [mm³]. */
  private static double exact(double thickness, double span, double root, double tip) {
    return 2.0 * thickness / 3.0 * 0.5 * span * (root * root + root * tip + tip * tip) / 3.0;
  }

  private static void holds(WingSolid half, double exact, double area, double tolerance, String what) {
    MeshCheck check = MeshCheck.of(half.mesh(mm(tolerance)));
    // Vertices lie on the surface, and the surface is a little more than twice the area of the planform.
    assertThat(check.volume().cubicMillimetres()).as(what).isCloseTo(exact, within(2.2 * area * tolerance + 1e-6 * exact));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      a tip of a millimetre     | 400 | 60 | 1  | 0   | 0  | 0 | 0.10
      swept back                | 400 | 60 | 30 | 35  | 5  | 0 | 0.10
      swept forward             | 400 | 60 | 30 | -35 | 5  | 0 | 0.10
      washed out by five degrees | 400 | 60 | 30 | 0  | 0  | 5 | 0.10
      much dihedral             | 400 | 60 | 30 | 0   | 25 | 0 | 0.10
      two per cent thick        | 400 | 60 | 30 | 0   | 5  | 2 | 0.02
      all of it                 | 400 | 60 | 20 | -20 | 25 | 5 | 0.02
      tiny                      | 60  | 12 | 6  | 10  | 10 | 2 | 0.06
      large                     | 3000 | 300 | 150 | 10 | 5 | 3 | 0.14
      """)
  void each_is_watertight_at_every_tolerance(
      String what, double span, double root, double tip, double sweep, double dihedral, double washout, double thickness) {
    Planform planform = Planform.tapered(mm(span), mm(root), mm(tip))
        .withSweep(0.25, Angle.degrees(sweep))
        .withDihedral(Angle.degrees(dihedral))
        .withWashout(Angle.degrees(washout));
    WingSolid half = WingSolid.half(planform, new Lens(thickness, 0.03));
    for (double tolerance : new double[] {0.02, 0.05, 0.5, 10.0}) {
      holds(half, exact(thickness, span, root, tip), 0.25 * span * (root + tip), tolerance, what + " at " + tolerance);
    }
  }

  @Test
  void the_finest_tolerance_is_still_watertight() {
    Planform planform = Planform.tapered(mm(200), mm(40), mm(20)).withWashout(Angle.degrees(3));
    holds(WingSolid.half(planform, new Lens(0.08, 0.03)), exact(0.08, 200, 40, 20), 3000, 1e-3, "at 1 µm");
    assertThatThrownBy(() -> WingSolid.half(planform, new Lens(0.08, 0.03)).mesh(mm(0.5e-3)))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("tolerance");
  }

  @Test
  void wings_of_several_panels_at_random_are_watertight_at_extreme_tolerances() {
    Random random = new Random(61_103);
    for (int i = 0; i < 60; i++) {
      double root = 20 + 200 * random.nextDouble();
      double thickness = 0.03 + 0.1 * random.nextDouble();
      List<Panel> panels = new ArrayList<>();
      double inner = root;
      double squares = 0.0;
      double area = 0.0;
      for (int k = 0; k < 2 + random.nextInt(4); k++) {
        double extent = root * (0.3 + 2.0 * random.nextDouble());
        double outer = inner * (0.4 + 0.7 * random.nextDouble());
        panels.add(new Panel(
            mm(extent),
            mm(outer),
            Angle.degrees(-20 + 45 * random.nextDouble()),
            Angle.degrees(-5 + 35 * random.nextDouble()),
            Angle.degrees(-2 + 5 * random.nextDouble())));
        squares += extent * (inner * inner + inner * outer + outer * outer) / 3.0;
        area += 0.5 * extent * (inner + outer);
        inner = outer;
      }
      WingSolid half = WingSolid.half(Planform.symmetric(mm(root), panels), new Lens(thickness, 0.05 * random.nextDouble()));
      // 1 µm takes a second for a large wing: now and then only.
      double tolerance = i % 20 == 0 ? 1e-3 : Math.exp(Math.log(0.005) + random.nextDouble() * Math.log(1000));
      holds(half, 2.0 * thickness / 3.0 * squares, area, tolerance, "wing " + i + " at " + tolerance + ", " + panels);
    }
  }

  @Test
  void a_pointed_tip_is_refused_with_what_it_needs() {
    Planform pointed = Planform.tapered(mm(400), mm(60), mm(0));
    assertThatThrownBy(() -> WingSolid.half(pointed, new Lens(0.1, 0.0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("tip chord of a part must be 1 mm");
  }

  @Test
  void a_cut_through_a_hole_leaves_both_pieces_watertight_and_nothing_lost() {
    Planform planform = Planform.tapered(mm(600), mm(90), mm(50))
        .withDihedral(Angle.degrees(8)).withWashout(Angle.degrees(2));
    WingSolid half = WingSolid.half(planform, new Lens(0.1, 0.03))
        .with(Bore.along(0.3, mm(3), mm(0), mm(200)))
        .with(Bore.along(0.55, mm(2), mm(40), mm(160)));
    double whole = MeshCheck.of(half.mesh(mm(0.02))).volume().cubicMillimetres();
    double sum = 0.0;
    double[] cuts = {0.0, 40.0, 100.0, 160.0, 200.0, 300.0};
    for (int i = 1; i < cuts.length; i++) {
      sum += MeshCheck.of(half.between(mm(cuts[i - 1]), mm(cuts[i])).mesh(mm(0.02))).volume().cubicMillimetres();
    }
    assertThat(sum).isCloseTo(whole, within(2e-4 * whole));
  }

  @Test
  void wings_at_random_are_watertight_or_say_where_a_hole_leaves_them() {
    Random random = new Random(611);
    int made = 0;
    for (int i = 0; i < 150; i++) {
      double span = Math.exp(Math.log(100) + random.nextDouble() * Math.log(15));
      double root = span / (4.0 + 8.0 * random.nextDouble());
      double tip = root * (0.15 + 0.85 * random.nextDouble());
      double thickness = 0.02 + 0.13 * random.nextDouble();
      Planform planform = Planform.tapered(mm(span), mm(root), mm(tip))
          .withSweep(0.25, Angle.degrees(-30 + 60 * random.nextDouble()))
          .withDihedral(Angle.degrees(25 * random.nextDouble()))
          .withWashout(Angle.degrees(-2 + 7 * random.nextDouble()));
      WingSolid half = WingSolid.half(planform, new Lens(thickness, 0.06 * random.nextDouble()));
      double tolerance = Math.exp(Math.log(0.02) + random.nextDouble() * Math.log(50));
      String what = "wing " + i;
      holds(half, exact(thickness, span, root, tip), 0.25 * span * (root + tip), tolerance, what);
      double diameter = 0.5 + 0.6 * thickness * root * random.nextDouble();
      WingSolid bored =
          half.with(Bore.along(0.2 + 0.4 * random.nextDouble(), mm(diameter), mm(0), mm(0.45 * span * random.nextDouble() + 1)));
      try {
        MeshCheck.of(bored.mesh(mm(tolerance)));
        made++;
      } catch (IllegalStateException e) {
        assertThat(e.getMessage()).as(what).startsWith("a hole of ").contains(" leaves ").contains(" at y ");
      }
    }
    assertThat(made).isBetween(40, 149);
  }
}
