// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BodyDragCurveTest {
  private static final FlightCondition HALL =
      FlightCondition.of(
          AirState.of(Pressure.hectopascals(1000), Temperature.degreesCelsius(20)), Speed.metresPerSecond(6));
  private static final FrictionModel MIXED = FrictionModel.mixed(5e5, TurbulentFriction.PRANDTL_SCHLICHTING);
  private static final Interval USUAL = Interval.between(2, 14);

  private static BodyDragCurve curve(BodyShape shape, FrictionModel friction, BodyFormFactor form) {
    return BodyDragCurve.of(shape, HALL, friction, form);
  }

  @ParameterizedTest
  @MethodSource("optima")
  void the_optimum_is_the_sourced_one_for_each_form_factor(PublishedValues.Row row) {
    BodyShape shape =
        switch (row.text("shape")) {
          case "capsule" -> BodyShape.capsule();
          case "spheroid" -> BodyShape.prolateSpheroid();
          default -> BodyShape.searsHaack();
        };
    FrictionModel friction =
        row.text("friction").equals("fixed")
            ? FrictionModel.fixed(0.004)
            : FrictionModel.turbulent(TurbulentFriction.FIFTH_ROOT);
    boolean volume = row.text("held").equals("VOLUME");
    BodyDragCurve any = curve(shape, friction, BodyFormFactor.valueOf(row.text("method")));
    BodyDragCurve curve =
        volume ? any.atFixedVolume(Volume.cubicMetres(1)) : any.atFixedSection(Length.metres(2.0 / Math.sqrt(Math.PI)));
    BodyDragCurve.Optimum optimum = curve.optimum(Interval.between(2, 20));
    assertThat(optimum.fineness()).as(row.toString()).isCloseTo(row.number("optimum"), within(row.number("tolerance")));
    if (row.has("least")) {
      assertThat(optimum.dragArea().si() / 0.004)
          .as(row.toString())
          .isCloseTo(row.number("least"), within(row.number("least_tolerance") * row.number("least")));
    }
    assertThat(optimum.inside()).isTrue();
    assertThat(optimum.form()).isEqualTo(BodyFormFactor.valueOf(row.text("method")));
  }

  static Stream<PublishedValues.Row> optima() {
    return PublishedValues.beside(BodyDragCurveTest.class, "fineness-optima.csv").rows();
  }

  @Test
  void hoerners_own_form_on_the_frontal_area_has_its_minimum_where_it_was_computed() {
    // 3·f + 4.5/√f + 21/f² (Hoerner ch. 6, from memory) is 3·f times his form factor
    Minimum least = Minimum.within(f -> 3.0 * f * BodyFormFactor.hoerner(f), 1.5, 6, Tolerance.relative(1e-9));
    assertThat(least.argument()).isCloseTo(2.57639, within(1e-5));
    assertThat(least.value()).isCloseTo(13.696415, within(1e-6));
  }

  @Test
  void at_fixed_length_the_drag_falls_all_the_way_as_the_body_gets_thinner() {
    for (BodyFormFactor form : List.of(BodyFormFactor.HOERNER, BodyFormFactor.HOERNER_LAMINAR, BodyFormFactor.JENKINSON)) {
      BodyDragCurve curve =
          curve(BodyShape.capsule(), MIXED, form).atFixedLength(Length.millimetres(180));
      List<BodyDragCurve.Point> points = curve.points(USUAL, 50);
      for (int i = 1; i < points.size(); i++) {
        assertThat(points.get(i).dragArea()).isLessThan(points.get(i - 1).dragArea());
      }
      BodyDragCurve.Optimum optimum = curve.optimum(USUAL);
      assertThat(optimum.inside()).isFalse();
      assertThat(optimum.fineness()).isEqualTo(14.0);
      assertThat(optimum.toString()).startsWith("least at the end");
    }
  }

  @Test
  void laminar_friction_at_fixed_volume_does_not_depend_on_slenderness() {
    // C_f ~ L^−½ and S ~ d·L with d²·L fixed: what is left of the price is the pressure drag alone
    BodyDragCurve curve =
        curve(BodyShape.searsHaack(), FrictionModel.laminar(), BodyFormFactor.NACELLE)
            .atFixedVolume(Volume.cubicCentimetres(60));
    double at20 = curve.dragArea(20) / BodyFormFactor.nacelle(20);
    assertThat(curve.dragArea(40) / BodyFormFactor.nacelle(40)).isCloseTo(at20, withinPercentage(0.5));
    assertThat(curve.optimum(USUAL).inside()).isFalse();
  }

  @Test
  void everything_that_is_held_is_held() {
    Seeded.doubles(4, 30, 2, 14)
        .forEach(
            f -> {
              BodyDragCurve any = curve(BodyShape.noseCylinderCone(1.0, 1.0), MIXED, BodyFormFactor.HOERNER);
              assertThat(any.atFixedVolume(Volume.cubicCentimetres(60)).body(f + 0.1).volume().cubicCentimetres())
                  .isCloseTo(60.0, within(1e-9));
              assertThat(any.atFixedLength(Length.millimetres(180)).body(f + 0.1).length().millimetres())
                  .isCloseTo(180.0, within(1e-9));
              assertThat(any.atFixedSection(Length.millimetres(24)).body(f + 0.1).diameter().millimetres())
                  .isCloseTo(24.0, within(1e-9));
            });
  }

  @Test
  void within_the_flat_range_the_drag_is_within_one_per_cent_and_at_its_ends_just_that() {
    BodyDragCurve curve =
        curve(BodyShape.capsule(), FrictionModel.turbulent(TurbulentFriction.KARMAN_SCHOENHERR), BodyFormFactor.HOERNER)
            .atFixedVolume(Volume.cubicCentimetres(60));
    BodyDragCurve.Optimum optimum = curve.optimum(USUAL);
    double least = optimum.dragArea().si();
    assertThat(optimum.inside()).isTrue();
    assertThat(curve.dragArea(optimum.within().lower()) / least).isCloseTo(1.01, within(1e-6));
    assertThat(curve.dragArea(optimum.within().upper()) / least).isCloseTo(1.01, within(1e-6));
    assertThat(optimum.within().contains(optimum.fineness())).isTrue();
  }

  @Test
  void the_optimum_by_raymers_sixth_edition_is_flatter_than_hoerners() {
    BodyDragCurve hoerner =
        curve(BodyShape.prolateSpheroid(), FrictionModel.fixed(0.004), BodyFormFactor.HOERNER)
            .atFixedVolume(Volume.cubicMetres(1));
    BodyDragCurve.Optimum sharp = hoerner.optimum(USUAL);
    BodyDragCurve.Optimum flat = hoerner.by(BodyFormFactor.RAYMER_6).optimum(USUAL);
    assertThat(flat.within().upper() / flat.within().lower())
        .isGreaterThan(sharp.within().upper() / sharp.within().lower());
    assertThat(flat.isFlat()).isTrue();
  }

  @Test
  void the_workings_give_the_number_of_the_curve() {
    BodyDragCurve any = curve(BodyShape.capsule(), MIXED, BodyFormFactor.TORENBEEK);
    for (BodyDragCurve curve :
        List.of(
            any.atFixedVolume(Volume.cubicCentimetres(60)),
            any.atFixedLength(Length.millimetres(300)),
            any.atFixedSection(Length.millimetres(30)))) {
      assertThat(curve.step(7.3).value()).isEqualTo(curve.dragArea(7.3));
      List<Step> steps = Workings.of(List.of(curve.step(7.3))).steps();
      assertThat(steps).filteredOn(s -> s.symbol().equals("f")).hasSize(1);
      assertThat(steps).filteredOn(Step.Solution.class::isInstance).hasSize(1);
    }
  }

  @Test
  void theWorkingsOfAnotherBodyAreRefused() {
    BodyDrag body = new BodyDrag("pod", 0.3, 10.0, 0.03, FrictionModel.laminar(), BodyFormFactor.HOERNER, 1.0);
    Step speed = Step.given("V", "V", Speed.metresPerSecond(6), Source.BRIEF);
    Step viscosity = Step.given("ν", "ν", KinematicViscosity.squareMetresPerSecond(1.5e-5), Source.BRIEF);
    Step mach = Step.given("M", "M", 0.0, Source.BRIEF);
    Step length = Step.given("L", "L", Length.metres(0.31), Source.BRIEF);
    Step fineness = Step.given("f", "f", 10.0, Source.BRIEF);
    Step area = Step.given("S", "S", Area.squareMetres(0.03), Source.BRIEF);
    assertThatThrownBy(() -> body.step(speed, viscosity, mach, new BodyDrag.Shape(length, fineness, area)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("length in the workings of pod must be 0.3 m as in the component, was 0.31 m");
  }

  @Test
  void an_optimum_outside_the_fit_of_its_form_factor_says_so_and_the_polynomial_is_searched_inside_only() {
    BodyDragCurve section =
        curve(BodyShape.prolateSpheroid(), FrictionModel.fixed(0.004), BodyFormFactor.RAYMER_6)
            .atFixedSection(Length.millimetres(24));
    assertThat(section.optimum(USUAL).findings()).hasSize(1);
    BodyDragCurve.Optimum polynomial =
        section.by(BodyFormFactor.SHEVELL).atFixedVolume(Volume.cubicCentimetres(60)).optimum(USUAL);
    assertThat(polynomial.fineness()).isBetween(4.0, 10.0);
  }

  @Test
  void what_cannot_be_searched_is_refused() {
    BodyDragCurve curve = curve(BodyShape.capsule(), MIXED, BodyFormFactor.HOERNER);
    assertThatThrownBy(() -> curve.optimum(Interval.between(0.2, 0.8)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("fineness ratios must be a finite range from 1.0 up for a capsule by Hoerner");
    assertThatThrownBy(() -> curve.atFixedVolume(Volume.ZERO)).hasMessage("volume of the body must be positive, was 0 m³");
    FlightCondition standing = HALL.withAirspeed(Speed.ZERO);
    assertThatThrownBy(() -> BodyDragCurve.of(BodyShape.capsule(), standing, MIXED, BodyFormFactor.HOERNER))
        .hasMessage("airspeed must be positive, was 0 m/s");
  }
}
