// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.WingLoading;
import io.github.wingwright.testing.Seeded;
import org.junit.jupiter.api.Test;

class WingSizingTest {
  private static final BiconvexSection SECTION = new BiconvexSection(0.06);
  private static final Density AIR = Density.kilogramsPerCubicMetre(1.2);

  private static WingSizing open() {
    return WingSizing.open().section(SECTION);
  }

  @Test
  void the_hall_glider_has_the_chords_of_a_hand_calculation() {
    Sized<Wing> sized =
        WingSizing.forSpan(Length.millimetres(400))
            .aspectRatio(7.5)
            .taperRatio(0.6)
            .section(SECTION)
            .dihedral(Angle.degrees(8))
            .solve();
    Wing wing = sized.value();
    assertThat(wing.planform().area().squareCentimetres()).isCloseTo(1600.0 / 7.5, within(1e-10));
    assertThat(wing.planform().rootChord().millimetres()).isCloseTo(200.0 / 3.0, within(1e-10));
    assertThat(wing.planform().tipChord().millimetres()).isCloseTo(40.0, within(1e-10));
    assertThat(wing.planform().meanAerodynamicChord().millimetres()).isCloseTo(490.0 / 9.0, within(1e-10));
    assertThat(wing.planform().sweepAt(0.25).degrees()).isCloseTo(0.0, within(1e-12));
    assertThat(wing.planform().panels().get(0).dihedral().degrees()).isCloseTo(8.0, within(1e-12));
    assertThat(wing.maximumThickness().millimetres()).isCloseTo(4.0, within(1e-10));
    assertThat(sized.findings()).isEmpty();
  }

  @Test
  void the_workings_give_the_numbers_of_the_wing() {
    Sized<Wing> sized = open().span(Length.metres(0.4)).aspectRatio(7.5).taperRatio(0.6).solve();
    assertThat(step(sized, "S")).isCloseTo(sized.value().planform().area().si(), within(1e-16));
    assertThat(step(sized, "c_r")).isEqualTo(sized.value().planform().rootChord().si());
    assertThat(step(sized, "c_t")).isEqualTo(sized.value().planform().tipChord().si());
    assertThat(step(sized, "c̄")).isCloseTo(sized.value().planform().meanAerodynamicChord().si(), within(1e-16));
    assertThat(step(sized, "t")).isEqualTo(sized.value().maximumThickness().si());
  }

  private static double step(Sized<?> sized, String symbol) {
    return sized.workings().steps().stream()
        .filter(s -> s.symbol().equals(symbol))
        .findFirst()
        .orElseThrow()
        .value();
  }

  /** Every subset of span, area, aspect ratio, loading, mass and speed of one consistent wing. */
  @Test
  void any_sufficient_set_gives_the_same_wing_and_any_other_is_refused() {
    Seeded.points(
            41,
            40,
            new double[] {0.2, 4.0},
            new double[] {3.0, 25.0},
            new double[] {0.5, 30.0},
            new double[] {0.3, 1.5})
        .forEach(
            p -> {
              double b = p[0];
              double s = b * b / p[1];
              double m = p[2] * s;
              double v = Math.sqrt(2.0 * p[2] * 9.80665 / (1.2 * p[3]));
              for (int set = 0; set < 64; set++) {
                boolean span = (set & 1) != 0;
                boolean area = (set & 2) != 0;
                boolean ratio = (set & 4) != 0;
                boolean loading = (set & 8) != 0;
                boolean mass = (set & 16) != 0;
                boolean speed = (set & 32) != 0;
                WingSizing sizing = open();
                sizing = span ? sizing.span(Length.metres(b)) : sizing;
                sizing = area ? sizing.area(Area.squareMetres(s)) : sizing;
                sizing = ratio ? sizing.aspectRatio(p[1]) : sizing;
                sizing = loading ? sizing.wingLoading(WingLoading.kilogramsPerSquareMetre(p[2])) : sizing;
                sizing = mass ? sizing.mass(Mass.kilograms(m)) : sizing;
                sizing = speed ? sizing.speedAtLift(Speed.metresPerSecond(v), p[3], AIR) : sizing;
                boolean knowsArea = area || (mass && (loading || speed));
                int known = (span ? 1 : 0) + (ratio ? 1 : 0) + (knowsArea ? 1 : 0);
                WingSizing asked = sizing;
                if (known >= 2) {
                  Wing wing = asked.solve().value();
                  assertThat(wing.planform().span().si()).isCloseTo(b, within(1e-12 * b));
                  assertThat(wing.planform().area().si()).isCloseTo(s, within(1e-12 * s));
                } else {
                  assertThatIllegalStateException().isThrownBy(asked::solve).withMessageContaining("needs two of");
                }
              }
            });
  }

  @Test
  void too_little_is_answered_with_what_would_be_enough() {
    assertThatIllegalStateException()
        .isThrownBy(() -> open().span(Length.millimetres(400)).solve())
        .withMessage(
            "wing needs two of span, aspect ratio and reference area, has span; enough would be, in addition: area; or"
                + " mass and wing loading; or mass and speed at a lift coefficient; or aspect ratio");
    assertThatIllegalStateException()
        .isThrownBy(() -> open().aspectRatio(7).mass(Mass.grams(30)).solve())
        .withMessageEndingWith("area; or wing loading; or speed at a lift coefficient; or span");
    assertThatIllegalStateException()
        .isThrownBy(() -> open().area(Area.squareCentimetres(200)).solve())
        .withMessageEndingWith("has area; enough would be, in addition: span; or aspect ratio");
    assertThatIllegalStateException()
        .isThrownBy(() -> WingSizing.open().span(Length.millimetres(400)).aspectRatio(7).solve())
        .withMessage("wing needs a section, has none: give section(…)");
  }

  @Test
  void values_that_conflict_are_named_with_what_each_gives() {
    assertThatIllegalStateException()
        .isThrownBy(
            () -> open().span(Length.millimetres(400)).aspectRatio(7.5).area(Area.squareCentimetres(250)).solve())
        .withMessage(
            "wing specification must agree with itself to 0.5 %, but span and aspect ratio give a reference area of"
                + " 213.33 cm², area 250 cm² (17.2 % apart): leave out one of them");
    assertThatIllegalStateException()
        .isThrownBy(
            () ->
                open()
                    .span(Length.millimetres(400))
                    .aspectRatio(7.5)
                    .wingLoading(WingLoading.kilogramsPerSquareMetre(2))
                    .speedAtLift(Speed.metresPerSecond(6), 0.6, AIR)
                    .solve())
        .withMessageContaining("speed at a lift coefficient")
        .withMessageContaining("wing loading");
  }

  @Test
  void values_that_agree_after_rounding_are_accepted_with_a_note() {
    Sized<Wing> sized =
        open().span(Length.millimetres(400)).aspectRatio(7.5).area(Area.squareCentimetres(213)).solve();
    assertThat(sized.value().planform().aspectRatio()).isCloseTo(7.5, within(1e-12));
    assertThat(sized.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE);
  }

  @Test
  void saying_a_property_again_replaces_it_and_leaves_the_base_alone() {
    WingSizing base = open().span(Length.millimetres(400)).aspectRatio(7.5);
    WingSizing branch = base.aspectRatio(10);
    assertThat(branch.solve().value().planform().aspectRatio()).isCloseTo(10, within(1e-12));
    assertThat(base.solve().value().planform().aspectRatio()).isCloseTo(7.5, within(1e-12));
  }

  @Test
  void a_bad_value_is_refused_at_its_call() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> WingSizing.forSpan(Length.millimetres(-400)))
        .withMessage("span must be positive, was -400 mm");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> open().aspectRatio(Double.NaN))
        .withMessage("aspect ratio must be positive, was NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> open().taperRatio(-0.1))
        .withMessage("taper ratio must be 0.0 to 1.5, was -0.1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> open().dihedral(Angle.degrees(80)))
        .withMessageStartingWith("dihedral must be -45° to 45°");
    assertThatIllegalArgumentException().isThrownBy(() -> open().mass(Mass.ZERO));
    assertThatIllegalArgumentException().isThrownBy(() -> open().speedAtLift(Speed.metresPerSecond(6), 0, AIR));
  }
}
