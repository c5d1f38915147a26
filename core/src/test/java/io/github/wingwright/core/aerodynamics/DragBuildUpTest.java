// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.testing.PublishedValues;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DragBuildUpTest {
  private static final AirState AIR = AirState.of(Pressure.hectopascals(1013.25), Temperature.degreesCelsius(20));
  private static final Fuselage BODY = new Fuselage(BodyShape.capsule(), Length.millimetres(180), Length.millimetres(24));
  private static final Wing WING =
      Wing.of(Planform.tapered(Length.metres(0.4), Length.metres(0.06), Length.metres(0.04)), new FourDigitShape(0.04, 0.06));

  private static List<FrictionModel> models() {
    return List.of(
        FrictionModel.laminar(),
        FrictionModel.turbulent(TurbulentFriction.KARMAN_SCHOENHERR),
        FrictionModel.mixed(5e4, TurbulentFriction.PRANDTL_SCHLICHTING).withRoughness(Length.micrometres(20)),
        FrictionModel.mixed(5e6, TurbulentFriction.PRANDTL_SCHLICHTING),
        FrictionModel.mixedWithContinuousThickness(4e4, TurbulentFriction.KARMAN_SCHOENHERR),
        FrictionModel.mixedWithContinuousThickness(4e4, TurbulentFriction.FIFTH_ROOT).withRoughness(Length.micrometres(300)),
        FrictionModel.mixed(4e4, TurbulentFriction.FIFTH_ROOT).withRoughness(Length.millimetres(3)),
        FrictionModel.partlyLaminar(0.3, TurbulentFriction.FIFTH_ROOT).withRoughness(Length.micrometres(200)));
  }

  private static DragBuildUp everything() {
    DragBuildUp build = DragBuildUp.about(WING.planform().area());
    for (FrictionModel model : models()) {
      for (BodyFormFactor form : BodyFormFactor.values()) {
        build = build.with(DragComponent.body("body " + form, BODY, model, form).withInterference(1.1));
      }
      for (SurfaceFormFactor form : SurfaceFormFactor.values()) {
        build = build.with(DragComponent.surface("wing " + form, WING, model, form));
      }
    }
    return build
        .with(DragComponent.body("square", BODY, FrictionModel.laminar(), BodyFormFactor.HOERNER).squareSided())
        .with(
            DragComponent.body("blunt", BODY, FrictionModel.laminar(), BodyFormFactor.HOERNER)
                .withBase(Area.squareMillimetres(60)))
        .with(DragComponent.surface("elevator", WING, FrictionModel.laminar(), SurfaceFormFactor.RAYMER).hinged())
        .with(DragComponent.body("fixed", BODY, FrictionModel.fixed(0.004), BodyFormFactor.HOERNER))
        .with(Protuberance.ROUND_WIRE.of("wire", Area.squareMillimetres(20)))
        .with(DragComponent.upsweep(Angle.degrees(8), BODY.frontalArea()))
        .with(DragComponent.base(Area.squareMillimetres(30)))
        .with(DragComponent.protuberance("hook", 1.2, Area.squareMillimetres(12), Source.COMMON_PRACTICE))
        .with(DragComponent.item("measured", Area.squareMillimetres(5), Source.COMMON_PRACTICE))
        .withLeakageAndProtuberances(0.05);
  }

  @Test
  void the_quick_path_and_the_workings_are_equal_to_the_bit() {
    DragBuildUp build = everything();
    for (double v : new double[] {3.0, 6.0, 40.0}) {
      FlightCondition flight = FlightCondition.of(AIR, Speed.metresPerSecond(v));
      assertThat(build.at(flight).value())
          .isEqualTo(build.coefficient(v, AIR.kinematicViscosity().si(), flight.machNumber()));
    }
  }

  @Test
  void every_line_of_the_workings_can_be_printed() {
    String text = Workings.of(List.of(everything().at(FlightCondition.of(AIR, Speed.metresPerSecond(40))).coefficient())).toString();
    assertThat(text).contains("C_f·FF·Q·S_wet", "0.242/√(C_f)", "38.21·(L/k)^1.053", "3.83·u^2.5·A_max");
  }

  @Test
  void the_coefficient_is_the_sum_of_the_products_of_the_handbook() {
    double v = 6.0;
    double nu = 1.5e-5;
    double cf = 1.328 / Math.sqrt(v * 0.18 / nu);
    double wetted = Math.PI * 0.024 * 0.18;
    double form = 1.0 + 1.5 / Math.pow(7.5, 1.5) + 7.0 / Math.pow(7.5, 3.0);
    DragBuildUp build =
        DragBuildUp.about(Area.squareMetres(0.02))
            .with(DragComponent.body("body", BODY, FrictionModel.laminar(), BodyFormFactor.HOERNER).withInterference(1.05));
    assertThat(build.coefficient(v, nu, 0.0)).isCloseTo(cf * form * 1.05 * wetted / 0.02, within(1e-14));
  }

  @Test
  void shares_add_up_to_one_and_leakage_is_added_on_top() {
    DragBreakdown breakdown = everything().at(FlightCondition.of(AIR, Speed.metresPerSecond(6)));
    assertThat(breakdown.lines().stream().mapToDouble(DragBreakdown.Part::share).sum()).isCloseTo(1.0, within(1e-12));
    DragBuildUp plain = DragBuildUp.about(Area.squareMetres(0.02)).with(DragComponent.base(Area.squareMetres(0.001)));
    assertThat(plain.withLeakageAndProtuberances(0.1).coefficient(6, 1.5e-5, 0))
        .isCloseTo(1.1 * plain.coefficient(6, 1.5e-5, 0), within(1e-15));
  }

  @Test
  void the_surface_of_a_model_wing_carries_the_finding_that_form_factors_mislead() {
    DragBuildUp build =
        DragBuildUp.about(WING.planform().area())
            .with(DragComponent.surface("wing", WING, FrictionModel.laminar(), SurfaceFormFactor.TORENBEEK));
    assertThat(build.at(FlightCondition.of(AIR, Speed.metresPerSecond(6))).findings())
        .anySatisfy(f -> assertThat(f.subject()).isEqualTo("friction times form factor"));
  }

  @Test
  void what_makes_no_sense_is_refused_with_its_value() {
    assertThatThrownBy(() -> DragBuildUp.about(Area.ZERO)).hasMessage("reference area must be positive, was 0 m²");
    assertThatThrownBy(() -> DragBuildUp.about(Area.squareMetres(1)).at(FlightCondition.of(AIR, Speed.metresPerSecond(5))))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("a drag build-up needs at least one component, has none");
    Fuselage needle = new Fuselage(BodyShape.capsule(), Length.metres(1), Length.millimetres(20));
    assertThatThrownBy(() -> DragComponent.body("needle", needle, FrictionModel.laminar(), BodyFormFactor.SHEVELL))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must be 4.0 to 10.0, was 50.0");
  }

  @ParameterizedTest
  @MethodSource("afterbodies")
  void afterbody_drag_is_the_published_one(PublishedValues.Row row) {
    double argument = row.number("argument");
    double ratio =
        row.text("kind").equals("upsweep_deg")
            ? AfterbodyDrag.upsweep(Math.toRadians(argument), 1.0)
            : AfterbodyDrag.base(argument, 1.0);
    assertThat(ratio).as(row.toString()).isCloseTo(row.number("ratio"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> afterbodies() {
    return PublishedValues.beside(DragBuildUpTest.class, "afterbody.csv").rows();
  }

  @Test
  void hinges_and_square_sides_raise_only_what_exceeds_friction() {
    SurfaceDrag tail = DragComponent.surface("tail", WING, FrictionModel.laminar(), SurfaceFormFactor.HOERNER);
    double form = SurfaceFormFactor.hoerner(0.06);
    assertThat(tail.hinged().dragArea(6, 1.5e-5, 0) / tail.dragArea(6, 1.5e-5, 0))
        .isCloseTo((1.0 + 1.1 * (form - 1.0)) / form, within(1e-14));
    BodyDrag body = DragComponent.body("body", BODY, FrictionModel.laminar(), BodyFormFactor.HOERNER);
    double round = BodyFormFactor.hoerner(7.5);
    assertThat(body.squareSided().dragArea(6, 1.5e-5, 0) / body.dragArea(6, 1.5e-5, 0))
        .isCloseTo((1.0 + 1.35 * (round - 1.0)) / round, within(1e-14));
    assertThat(DragBuildUp.raisedFormFactor(1.1, 1.2)).isCloseTo(1.22, within(1e-15));
  }

  @Test
  void a_blunt_end_adds_the_base_behind_the_layer_of_the_body() {
    BodyDrag body = DragComponent.body("body", BODY, FrictionModel.laminar(), BodyFormFactor.HOERNER);
    double forebody = body.dragArea(6, 1.5e-5, 0);
    assertThat(body.withBase(Area.squareMetres(1e-4)).dragArea(6, 1.5e-5, 0))
        .isCloseTo(forebody + 0.029 / Math.sqrt(forebody / 1e-4) * 1e-4, within(1e-15));
  }

  @Test
  void a_boat_tail_leaves_a_base_and_a_steep_one_leaves_all_of_it() {
    Length d = Length.millimetres(24);
    Length n = Length.millimetres(30);
    double base = 0.25 * Math.PI * Math.pow(0.01556755, 2);
    assertThat(AfterbodyDrag.baseArea(d, n, Angle.degrees(8)).si()).isCloseTo(base, within(1e-9));
    assertThat(AfterbodyDrag.baseArea(d, n, Angle.degrees(25)).si()).isCloseTo(0.25 * Math.PI * 0.024 * 0.024, within(1e-15));
    assertThat(AfterbodyDrag.baseArea(d, Length.millimetres(100), Angle.degrees(8)).si()).isZero();
    assertThat(AfterbodyDrag.CLOSURE.check(Math.toRadians(15))).isPresent();
  }

  @Test
  void a_thicker_layer_shields_the_base() {
    assertThat(AfterbodyDrag.shieldedBase(4e-4, 4e-4)).isCloseTo(1.16e-5, within(1e-12));
    assertThat(AfterbodyDrag.shieldedBase(4e-4, 1e-4)).isLessThan(AfterbodyDrag.shieldedBase(1e-4, 1e-4));
  }

  @Test
  void every_addition_says_where_it_is_used_outside_of_what_it_was_made_for() {
    BodyDrag pod = new BodyDrag("pod", 0.3, 10.0, 0.028, FrictionModel.laminar(), BodyFormFactor.HOERNER_LAMINAR, 1.0);
    assertThat(subjects(pod)).doesNotContain("interference factor", "base of pod");
    assertThat(subjects(pod.withInterference(1.8))).contains("interference factor");
    // The greatest section of a body of 300 mm and f = 10 is 7.07 cm².
    assertThat(subjects(pod.withBase(Area.squareCentimetres(7)))).doesNotContain("base of pod");
    assertThat(subjects(pod.withBase(Area.squareCentimetres(8)))).contains("base of pod");
    assertThat(subjects(pod.squareSided())).doesNotContain("factor of the excess of the form factor");
    SurfaceDrag tail =
        new SurfaceDrag("tail", 0.04, 0.03, 0.3, 0.0, 0.01, FrictionModel.laminar(), SurfaceFormFactor.HOERNER, 2.0);
    assertThat(subjects(tail)).contains("interference factor");
    assertThat(subjects(DragComponent.upsweep(Angle.degrees(30), Area.squareMetres(1)))).isNotEmpty();
    assertThat(subjects(DragComponent.base(Area.squareCentimetres(4)))).contains("base drag");
    assertThat(DragComponent.base(Area.squareMetres(1)).findings(60, 1.5e-5, 0.18)).isEmpty();
    assertThat(DragComponent.base(Area.squareMetres(1)).findings(330, 1.5e-5, 0.97)).isNotEmpty();
  }

  @Test
  void the_base_of_a_fuselage_is_counted_with_it() {
    Fuselage blunt =
        new Fuselage(BodyShape.of(EndProfile.halfEllipsoid(), 1, EndProfile.boatTail(0.5), 2), Length.millimetres(250), Length.millimetres(25));
    BodyDrag body = DragComponent.body("pod", blunt, FrictionModel.laminar(), BodyFormFactor.HOERNER_LAMINAR);
    assertThat(body.baseArea()).isEqualTo(blunt.baseArea().si()).isCloseTo(Math.PI * 0.00625 * 0.00625, within(1e-15));
    double attached = body.withBase(Area.ZERO).dragArea(6, 1.5e-5, 0);
    assertThat(body.dragArea(6, 1.5e-5, 0))
        .isEqualTo(attached + AfterbodyDrag.shieldedBase(attached, blunt.baseArea().si()));
    assertThat(DragComponent.body("capsule", BODY, FrictionModel.laminar(), BodyFormFactor.HOERNER).baseArea()).isZero();
  }

  @Test
  void a_form_factor_for_another_layer_says_so() {
    TurbulentFriction law = TurbulentFriction.PRANDTL_SCHLICHTING;
    String subject = "form factor and layer of body";
    BodyDrag small = DragComponent.body("body", BODY, FrictionModel.mixed(5e5, law), BodyFormFactor.HOERNER_LAMINAR);
    assertThat(subjects(small)).isEmpty();
    assertThat(subjects(small.by(BodyFormFactor.HOERNER))).containsExactly(subject);
    BodyDrag turbulent = DragComponent.body("body", BODY, FrictionModel.mixed(2e4, law), BodyFormFactor.HOERNER);
    assertThat(subjects(turbulent)).doesNotContain(subject);
    assertThat(subjects(turbulent.by(BodyFormFactor.HOERNER_LAMINAR))).contains(subject);
  }

  @Test
  void a_form_factor_of_a_surface_says_what_it_was_not_fitted_to() {
    TurbulentFriction law = TurbulentFriction.PRANDTL_SCHLICHTING;
    SurfaceDrag wing =
        new SurfaceDrag("wing", 1.5, 0.12, 0.3, 0.2, 20, FrictionModel.turbulent(law), SurfaceFormFactor.RAYMER, 1);
    assertThat(wing.findings(60, 1.5e-5, 0.18)).isEmpty();
    assertThat(wing.findings(300, 1.5e-5, 0.95)).hasSize(1);
    SurfaceDrag aft =
        new SurfaceDrag("wing", 1.5, 0.12, 0.7, 1.1, 20, FrictionModel.turbulent(law), SurfaceFormFactor.RAYMER, 1);
    assertThat(aft.findings(60, 1.5e-5, 0.18)).extracting(Finding::subject)
        .containsExactlyInAnyOrder("place of greatest thickness", "form factor of a lifting surface, Raymer");
    assertThat(aft.by(SurfaceFormFactor.HOERNER).findings(60, 1.5e-5, 0.18)).hasSize(1);
    assertThat(aft.by(SurfaceFormFactor.TORENBEEK).findings(60, 1.5e-5, 0.18)).isEmpty();
    assertThat(aft.by(SurfaceFormFactor.JENKINSON_TAIL).findings(60, 1.5e-5, 0.18)).hasSize(1);
  }

  @Test
  void leakage_and_the_speed_of_sound_have_their_ranges() {
    DragBuildUp plain =
        DragBuildUp.about(Area.squareMetres(1)).with(DragComponent.item("gear", Area.squareMetres(0.1), Source.COMMON_PRACTICE));
    FlightCondition slow = FlightCondition.of(AIR, Speed.metresPerSecond(60));
    assertThat(plain.at(slow).findings()).isEmpty();
    assertThat(plain.withLeakageAndProtuberances(0.07).at(slow).findings()).isEmpty();
    assertThat(plain.withLeakageAndProtuberances(0.2).at(slow).findings()).hasSize(1);
    assertThat(plain.at(FlightCondition.of(AIR, Speed.metresPerSecond(310))).findings()).hasSize(1);
  }

  private static List<String> subjects(DragComponent component) {
    return component.findings(6, 1.5e-5, 0.02).stream().map(Finding::subject).toList();
  }
}
