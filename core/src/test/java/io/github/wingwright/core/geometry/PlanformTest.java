// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static io.github.wingwright.core.quantity.Angle.degrees;
import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanformTest {
  private static final Planform WING =
      Planform.tapered(millimetres(400), millimetres(60), millimetres(30)).withDihedral(degrees(8));

  @ParameterizedTest
  @MethodSource("published")
  void a_tapered_planform_agrees_with_the_published_values(PublishedValues.Row row) {
    double unit = row.text("unit").equals("ft") ? 0.3048 : 1.0;
    Area area = Area.squareMetres(row.number("area") * unit * unit);
    Planform wing = Planform.tapered(area, row.number("aspect_ratio"), row.number("taper_ratio"));
    double[] digits = {
      wing.span().si(), wing.rootChord().si(), wing.tipChord().si(), wing.meanAerodynamicChord().si(),
      wing.meanAerodynamicChordY().si()
    };
    String[] computed = {"span", "root_chord", "tip_chord", "mean_chord", "mean_chord_y"};
    String[] printed = {"published_span", "published_root", "published_tip", "published_mean_chord", "published_y"};
    for (int i = 0; i < digits.length; i++) {
      // Eight decimals are printed: half a unit of the last is at most 1 part in 10⁷ here.
      assertThat(digits[i] / unit).as(computed[i]).isCloseTo(row.number(computed[i]), withinPercentage(1e-5));
      if (row.has(printed[i])) {
        assertThat(digits[i] / unit).as(printed[i]).isCloseTo(row.number(printed[i]), within(row.number("half_unit")));
      }
    }
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(PlanformTest.class, "planforms.csv").rows();
  }

  @Test
  void a_fin_is_half_a_wing_of_twice_its_aspect_ratio() {
    Planform fin = Planform.taperedFin(Area.squareCentimetres(40), 1.3, 0.55);
    Planform wing = Planform.tapered(Area.squareCentimetres(80), 2.6, 0.55);
    assertThat(fin.isMirrored()).isFalse();
    assertThat(fin.aspectRatio()).isCloseTo(1.3, withinPercentage(1e-12));
    assertThat(fin.area().squareCentimetres()).isCloseTo(40, withinPercentage(1e-12));
    assertThat(fin.span().si()).isCloseTo(0.5 * wing.span().si(), withinPercentage(1e-12));
    assertThat(fin.rootChord().si()).isCloseTo(wing.rootChord().si(), withinPercentage(1e-12));
    assertThat(fin.meanAerodynamicChord().si()).isCloseTo(wing.meanAerodynamicChord().si(), withinPercentage(1e-12));
    assertThat(fin.meanAerodynamicChordY().si()).isCloseTo(wing.meanAerodynamicChordY().si(), withinPercentage(1e-12));
    assertThat(fin.meanAerodynamicChordX().si()).isCloseTo(wing.meanAerodynamicChordX().si(), withinPercentage(1e-12));
  }

  @Test
  void the_area_form_and_the_chord_form_make_one_planform() {
    Seeded.points(5, 100, new double[] {0.01, 20}, new double[] {1, 30}, new double[] {0.05, 1.2}).forEach(p -> {
      Planform byArea = Planform.tapered(Area.squareMetres(p[0]), p[1], p[2]);
      Planform byChord = Planform.tapered(byArea.span(), byArea.rootChord(), byArea.tipChord());
      assertThat(byChord).isEqualTo(byArea);
      assertThat(byChord.area().si()).isCloseTo(p[0], withinPercentage(1e-10));
      assertThat(byChord.aspectRatio()).isCloseTo(p[1], withinPercentage(1e-10));
      assertThat(byChord.taperRatio()).isCloseTo(p[2], withinPercentage(1e-10));
      assertThat(byChord.sweepAt(0.25).si()).isCloseTo(0, within(1e-12));
    });
  }

  @Test
  void cutting_a_panel_in_two_changes_nothing() {
    Seeded.points(7, 200, new double[] {0.1, 0.9}, new double[] {0.1, 1.2}, new double[] {-40, 60}, new double[] {-20, 20})
        .forEach(p -> {
          Length root = metres(0.3);
          Angle sweep = degrees(p[2]);
          Angle dihedral = degrees(p[3]);
          double between = 0.3 * (1 + p[0] * (p[1] - 1));
          Planform whole =
              Planform.symmetric(root, List.of(new Panel(metres(1), metres(0.3 * p[1]), sweep, dihedral, degrees(2))));
          Planform cut =
              Planform.symmetric(
                  root,
                  List.of(
                      new Panel(metres(p[0]), metres(between), sweep, dihedral, degrees(2 * p[0])),
                      new Panel(metres(1 - p[0]), metres(0.3 * p[1]), sweep, dihedral, degrees(2 * (1 - p[0])))));
          assertThat(cut.area().si()).isCloseTo(whole.area().si(), withinPercentage(1e-10));
          assertThat(cut.meanAerodynamicChord().si()).isCloseTo(whole.meanAerodynamicChord().si(), withinPercentage(1e-10));
          assertThat(cut.meanAerodynamicChordX().si()).isCloseTo(whole.meanAerodynamicChordX().si(), within(1e-12));
          assertThat(cut.meanAerodynamicChordY().si()).isCloseTo(whole.meanAerodynamicChordY().si(), within(1e-12));
          assertThat(cut.meanAerodynamicChordZ().si()).isCloseTo(whole.meanAerodynamicChordZ().si(), within(1e-12));
          assertThat(cut.sweepAt(0.5).si()).isCloseTo(whole.sweepAt(0.5).si(), within(1e-12));
          assertThat(cut.equivalentDihedral().si()).isCloseTo(whole.equivalentDihedral().si(), within(1e-12));
          assertThat(cut.twistAt(metres(0.77)).si()).isCloseTo(whole.twistAt(metres(0.77)).si(), within(1e-12));
          assertThat(cut.chordAt(metres(0.77)).si()).isCloseTo(whole.chordAt(metres(0.77)).si(), within(1e-12));
        });
  }

  @Test
  void sweep_is_carried_from_one_chord_fraction_to_another() {
    Seeded.points(11, 200, new double[] {0, 1}, new double[] {0, 1}, new double[] {-30, 45}, new double[] {0.2, 1.0})
        .forEach(p -> {
          Planform swept =
              Planform.tapered(Area.squareMetres(0.2), 8, p[3]).withSweep(p[0], degrees(p[2]));
          assertThat(swept.sweepAt(p[0]).degrees()).isCloseTo(p[2], within(1e-10));
          double expected = TaperedPlanform.sweepTangent(degrees(p[2]).tangent(), p[0], p[1], 8, p[3]);
          assertThat(swept.sweepAt(p[1]).tangent()).isCloseTo(expected, within(1e-12));
          assertThat(swept.area().si()).isCloseTo(0.2, withinPercentage(1e-10));
        });
  }

  @Test
  void a_point_at_the_tip_gives_the_delta_results() {
    // A triangle of root chord c: mean aerodynamic chord 2/3 c, at a third of the semispan.
    Planform delta = Planform.tapered(metres(2), metres(0.9), Length.ZERO).withSweep(1.0, Angle.ZERO);
    assertThat(delta.meanAerodynamicChord().si()).isCloseTo(0.6, within(1e-15));
    assertThat(delta.meanAerodynamicChordY().si()).isCloseTo(1.0 / 3.0, within(1e-15));
    assertThat(delta.meanAerodynamicChordX().si()).isCloseTo(0.3, within(1e-15));
    assertThat(delta.area().si()).isCloseTo(0.9, within(1e-15));
    assertThat(delta.sweepAt(0).degrees()).isCloseTo(Math.toDegrees(Math.atan(0.9)), within(1e-12));
  }

  @Test
  void dihedral_lifts_and_does_not_narrow() {
    assertThat(WING.span()).isEqualTo(millimetres(400));
    assertThat(WING.heightAt(millimetres(200)).si()).isCloseTo(0.2 * Math.tan(Math.toRadians(8)), within(1e-15));
    assertThat(WING.equivalentDihedral().degrees()).isCloseTo(8, within(1e-12));
    assertThat(WING.meanAerodynamicChordZ().si())
        .isCloseTo(WING.heightAt(WING.meanAerodynamicChordY()).si(), within(1e-15));
  }

  @Test
  void a_flat_centre_and_raised_tips_weigh_the_tips_more() {
    Planform poly =
        Planform.symmetric(
            metres(0.1),
            List.of(
                new Panel(metres(0.5), metres(0.1), Angle.ZERO, Angle.ZERO, Angle.ZERO),
                new Panel(metres(0.5), metres(0.1), Angle.ZERO, degrees(12), Angle.ZERO)));
    // ∫y dy over the outer half is three quarters of the whole.
    assertThat(poly.equivalentDihedral().degrees()).isCloseTo(9, within(1e-12));
  }

  @Test
  void washout_is_spread_over_the_semispan_and_lessens_the_incidence() {
    Planform washed = WING.withWashout(degrees(3));
    assertThat(washed.twistAt(Length.ZERO)).isEqualTo(Angle.ZERO);
    assertThat(washed.twistAt(millimetres(100)).degrees()).isCloseTo(-1.5, within(1e-12));
    assertThat(washed.twistAt(millimetres(200)).degrees()).isCloseTo(-3, within(1e-12));
  }

  @Test
  void stations_run_from_the_root_to_the_tip() {
    assertThat(WING.stations()).containsExactly(Length.ZERO, millimetres(200));
    assertThat(WING.chordAt(millimetres(100)).millimetres()).isCloseTo(45, within(1e-12));
    assertThat(WING.leadingEdgeAt(millimetres(200)).millimetres()).isCloseTo(7.5, within(1e-12));
    assertThat(WING.quarterMeanAerodynamicChordX().millimetres()).isCloseTo(15, within(1e-12));
    assertThat(WING.meanGeometricChord().millimetres()).isCloseTo(45, within(1e-12));
  }

  @Test
  void equal_planforms_are_equal_and_different_ones_are_not() {
    Planform same = Planform.tapered(millimetres(400), millimetres(60), millimetres(30)).withDihedral(degrees(8));
    assertThat(same).isEqualTo(WING).hasSameHashCodeAs(WING);
    assertThat(WING.withDihedral(degrees(9))).isNotEqualTo(WING);
    assertThat(Planform.fin(WING.rootChord(), WING.panels())).isNotEqualTo(WING);
    assertThat(WING).isNotEqualTo("planform");
  }

  @Test
  void its_text_is_one_line() {
    assertThat(WING).hasToString("planform 400 mm span, 180 cm², A 8.89, λ 0.5");
    assertThat(Planform.taperedFin(Area.squareCentimetres(20), 1.5, 0.6).toString()).startsWith("fin 54.7723 mm span, ");
  }

  @Test
  void it_survives_serialization() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(WING);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      Planform read = (Planform) in.readObject();
      assertThat(read).isEqualTo(WING);
      assertThat(read.meanAerodynamicChord()).isEqualTo(WING.meanAerodynamicChord());
    }
  }

  @Test
  void a_planform_that_cannot_be_is_refused_with_its_reason() {
    refuses(() -> Planform.tapered(millimetres(-400), millimetres(60), millimetres(30)), "span must be positive, was -400 mm");
    refuses(() -> Planform.tapered(millimetres(400), Length.ZERO, millimetres(30)), "root chord must be positive, was 0 m");
    refuses(() -> Planform.tapered(millimetres(400), millimetres(60), millimetres(-3)), "tip chord must not be negative, was -3 mm");
    refuses(() -> Planform.tapered(Area.ZERO, 8, 0.5), "reference area must be positive, was 0 m²");
    refuses(() -> Planform.tapered(Area.squareMetres(1), Double.NaN, 0.5), "aspect ratio must be positive, was NaN");
    refuses(() -> Planform.tapered(Area.squareMetres(1), 8, 1.6), "taper ratio must be 0.0 to 1.5, was 1.6");
    refuses(() -> Planform.taperedFin(Area.squareMetres(-1), 8, 0.5), "fin area must be positive, was -1 m²");
    refuses(() -> Planform.symmetric(metres(1), List.of()), "a planform needs at least one panel, got none");
    refuses(() -> WING.withSweep(1.1, degrees(3)), "chord fraction must be 0.0 to 1.0, was 1.1");
    refuses(() -> WING.withSweep(0.25, degrees(85)), "leading-edge sweep must be -80° to 80°, was 85.0");
    refuses(() -> WING.withDihedral(degrees(90)), "dihedral must be -80° to 80°, was 90°");
    refuses(() -> WING.chordAt(millimetres(201)), "station must be 0 m to 200 mm, was 201 mm");
    refuses(() -> WING.chordAt(millimetres(-1)), "station must be 0 m to 200 mm, was -1 mm");
    refuses(() -> WING.sweepAt(-0.1), "chord fraction must be 0.0 to 1.0, was -0.1");
    refuses(
        () -> new Panel(metres(1), metres(1), Angle.ZERO, Angle.ZERO, degrees(1).times(Double.POSITIVE_INFINITY)),
        "washout must be finite, was ∞");
  }

  private static void refuses(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String start) {
    assertThatIllegalArgumentException().isThrownBy(call).withMessageStartingWith(start);
  }
}
