// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.FrictionModel;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import org.junit.jupiter.api.Test;

class DragSurveyTest {
  private static final Interval WIDE = Interval.between(1.2, 20);

  private static DragArea hoerner() {
    return (shape, l, d) -> {
      double f = l / d;
      return shape.wettedArea(l, d) * (1 + 1.5 / Math.pow(f, 1.5) + 7 / (f * f * f));
    };
  }

  @Test
  void around_a_fixed_section_a_spheroid_drags_least_at_the_known_fineness() {
    DragSurvey survey =
        DragSurvey.atFixedSection(BodyShape.prolateSpheroid(), hoerner(), Length.metres(0.1), WIDE);
    // Computed independently with 30 digits: f = 2.72889, D/(q·C_f·S_front) = 15.117012.
    assertThat(survey.best().fineness()).isCloseTo(2.72889, within(1e-4));
    assertThat(survey.best().dragArea() / (Math.PI * 0.0025)).isCloseTo(15.117012, within(1e-6));
    assertThat(survey.atEnd()).isFalse();
  }

  @Test
  void hoerners_closed_form_on_the_frontal_area_has_its_known_least() {
    // C_D,front/C_f = 3f + 4.5/√f + 21/f² (from memory); least 13.696415 at f = 2.57639, computed independently.
    DragArea closed = (shape, l, d) -> 3 * l / d + 4.5 / Math.sqrt(l / d) + 21 * d * d / l / l;
    DragSurvey survey = DragSurvey.atFixedSection(BodyShape.capsule(), closed, Length.metres(1), WIDE);
    assertThat(survey.best().fineness()).isCloseTo(2.57639, within(1e-4));
    assertThat(survey.best().dragArea()).isCloseTo(13.696415, within(1e-6));
  }

  @Test
  void around_a_fixed_volume_it_agrees_with_the_search_over_the_plane() {
    DragSurvey survey = DragSurvey.atFixedVolume(BodyShape.capsule(), hoerner(), Volume.litres(1), WIDE);
    assertThat(survey.best().fineness()).isCloseTo(5.20539, within(1e-3));
    assertThat(survey.best().dragArea() / 0.01).isCloseTo(7.860504, within(1e-5));
    assertThat(survey.points())
        .allSatisfy(
            p -> {
              assertThat(BodyShape.capsule().volume(p.length(), p.diameter())).isCloseTo(1e-3, within(1e-15));
              assertThat(p.dragArea()).isGreaterThanOrEqualTo(survey.best().dragArea() * (1 - 1e-12));
            });
  }

  @Test
  void the_flat_part_ends_where_the_drag_has_grown_by_a_hundredth() {
    DragSurvey survey = DragSurvey.atFixedVolume(BodyShape.capsule(), hoerner(), Volume.litres(1), WIDE);
    for (double f : new double[] {survey.withinOnePercent().lower(), survey.withinOnePercent().upper()}) {
      double l = Math.cbrt(1e-3 / BodyShape.capsule().volume(1, 1 / f));
      assertThat(hoerner().dragArea(BodyShape.capsule(), l, l / f) / survey.best().dragArea())
          .isCloseTo(1.01, within(1e-6));
    }
  }

  @Test
  void at_a_fixed_length_drag_falls_all_the_way_to_the_thinnest() {
    DragSurvey survey =
        DragSurvey.atFixedLength(BodyShape.capsule(), hoerner(), Length.millimetres(300), Interval.between(3, 20));
    assertThat(survey.atEnd()).isTrue();
    assertThat(survey.best().fineness()).isCloseTo(20, within(1e-9));
    assertThat(survey.toString()).startsWith("length 300 mm: falls to the end at f 20");
    assertThat(survey.toString().length()).isLessThanOrEqualTo(75);
  }

  @Test
  void the_least_is_looked_for_where_the_form_factor_holds() {
    // Held at the end of its fit, the form of DATCOM would make a ball of f = 2 drag less than its published optimum.
    FlightCondition air = FlightCondition.of(Atmosphere.standard().at(Length.metres(0)), Speed.metresPerSecond(50));
    FlightDrag datcom = new FlightDrag(air, FrictionModel.fixed(0.003), BodyFormFactor.DATCOM);
    DragSurvey survey =
        DragSurvey.atFixedVolume(BodyShape.prolateSpheroid(), datcom, Volume.litres(1), Interval.between(2, 20));
    // Computed independently: f = 7.75592, D/(q·C_f·V^⅔) = 8.695620.
    assertThat(survey.best().fineness()).isCloseTo(7.75592, within(1e-4));
    assertThat(survey.best().dragArea() / 3e-5).isCloseTo(8.695620, within(1e-6));
    assertThat(survey.atEnd()).isFalse();
    assertThat(survey.points().get(0).fineness()).isEqualTo(2);
  }

  @Test
  void the_end_of_a_fit_is_no_optimum() {
    FlightDrag laminar =
        FlightDrag.of(
            FlightCondition.of(Atmosphere.standard().at(Length.metres(0)), Speed.metresPerSecond(6.5)), Length.metres(0.25));
    DragSurvey survey =
        DragSurvey.atFixedVolume(BodyShape.capsule(), laminar, Volume.cubicCentimetres(94.5), Interval.between(2, 20));
    assertThat(laminar.fit()).isEqualTo(Interval.between(2, 12));
    assertThat(laminar.withUpsweep(Angle.degrees(5)).fit()).isEqualTo(laminar.fit());
    assertThat(survey.atEnd()).isTrue();
    assertThat(survey.best().fineness()).isCloseTo(12, within(1e-6));
    assertThat(survey.withinOnePercent().upper()).isLessThanOrEqualTo(12);
  }

  @Test
  void the_share_of_the_whole_is_a_plain_quotient() {
    Fuselage body = new Fuselage(BodyShape.capsule(), Length.metres(1), Length.metres(0.1));
    DragArea tenth = (shape, l, d) -> 0.1;
    assertThat(DragSurvey.shareOf(tenth, body, Area.squareMetres(0.4))).isEqualTo(0.25);
  }

  @Test
  void fineness_ratios_that_the_family_has_not_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                DragSurvey.atFixedVolume(
                    BodyShape.capsule(), hoerner(), Volume.litres(1), Interval.between(0.5, 10)))
        .withMessage("fineness ratios must rise from at least 1.0 for a capsule, were 0.5 to 10.0");
  }
}
