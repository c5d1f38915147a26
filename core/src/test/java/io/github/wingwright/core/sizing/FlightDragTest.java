// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.DragComponent;
import io.github.wingwright.core.aerodynamics.FrictionModel;
import io.github.wingwright.core.aerodynamics.TurbulentFriction;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlightDragTest {
  private static final FlightCondition HALL =
      FlightCondition.of(
          AirState.of(Pressure.hectopascals(1013.25), Temperature.degreesCelsius(20)), Speed.metresPerSecond(6));

  private static final Length LENGTH = Length.millimetres(300);

  @Test
  void a_laminar_body_drags_as_blasius_and_the_laminar_form_factor_say() {
    FlightDrag drag = FlightDrag.of(HALL, LENGTH);
    assertThat(drag.form()).isEqualTo(BodyFormFactor.HOERNER_LAMINAR);
    double reynolds = 6 * 0.3 / HALL.air().kinematicViscosity().si();
    double cf = 1.328 / Math.sqrt(reynolds);
    double f = 10;
    double front = 0.33 / f + cf * (3 * f + 3 / Math.sqrt(f));
    // The laminar form on the frontal area has S_wet = 3·f·A; the capsule has 4·f·A.
    double expected = front / (3 * f) * (Math.PI * 0.03 * 0.3);
    assertThat(drag.dragArea(BodyShape.capsule(), 0.3, 0.03)).isCloseTo(expected, within(2e-4 * expected));
  }

  @Test
  void a_larger_and_faster_body_is_reckoned_mixed() {
    FlightDrag drag = FlightDrag.of(HALL.withAirspeed(Speed.metresPerSecond(50)), Length.metres(6));
    assertThat(drag.form()).isEqualTo(BodyFormFactor.HOERNER);
    double cf = drag.dragArea(BodyShape.prolateSpheroid(), 6, 1) / BodyFormFactor.hoerner(6)
        / BodyShape.prolateSpheroid().wettedArea(6, 1);
    assertThat(cf).as("mixed at a Reynolds number of 2·10⁷").isBetween(0.0024, 0.0028);
  }

  @Test
  void the_drag_in_the_workings_is_the_drag_that_was_compared() {
    Sized<Fuselage> body =
        FuselageSizing.of(BodyShape.capsule())
            .considering(Considerations.lengthAtMost(LENGTH))
            .considering(Considerations.finenessWithin(6, 10))
            .leastDrag(HALL);
    FlightDrag drag = FlightDrag.of(HALL, LENGTH);
    Fuselage fuselage = body.value();
    double compared = drag.dragArea(fuselage.shape(), fuselage.length().si(), fuselage.diameter().si());
    double shown =
        body.workings().steps().stream()
            .filter(s -> s.name().startsWith("drag area"))
            .mapToDouble(Step::value)
            .findFirst()
            .orElseThrow();
    assertThat(shown).isCloseTo(compared, within(1e-12 * compared));
  }

  @Test
  void at_a_fixed_length_the_thin_end_of_the_guideline_drags_least() {
    Sized<Fuselage> body =
        FuselageSizing.of(BodyShape.capsule())
            .considering(Considerations.finenessWithin(6, 10))
            .length(LENGTH)
            .madeOf(BodyShell.of(Materials.PLA, Length.millimetres(0.8)))
            .leastDrag(HALL);
    assertThat(body.value().diameter().millimetres()).isCloseTo(30, within(1e-6));
  }

  @Test
  void outside_the_fit_of_the_form_factor_a_finding_says_so_and_the_search_goes_on() {
    FlightDrag drag = FlightDrag.of(HALL, LENGTH);
    assertThat(drag.findings(new Fuselage(BodyShape.capsule(), LENGTH, Length.millimetres(15))))
        .anyMatch(f -> f.subject().equals("form factor of the body"));
    FlightDrag polynomial = new FlightDrag(HALL, drag.friction(), BodyFormFactor.SHEVELL);
    assertThat(polynomial.dragArea(BodyShape.capsule(), 0.3, 0.01)).isPositive().isFinite();
    assertThat(polynomial.findings(new Fuselage(BodyShape.capsule(), LENGTH, Length.millimetres(10)))).isNotEmpty();
  }

  @Test
  void a_fast_body_drags_alike_here_in_the_build_up_and_in_the_workings() {
    FlightCondition fast = HALL.withAirspeed(Speed.metresPerSecond(100));
    FrictionModel painted =
        FrictionModel.mixed(5e5, TurbulentFriction.PRANDTL_SCHLICHTING).withRoughness(Length.micrometres(6.34));
    FlightDrag drag = new FlightDrag(fast, painted, BodyFormFactor.TORENBEEK);
    Fuselage body = new Fuselage(BodyShape.capsule(), Length.metres(6), Length.metres(1));
    double here = drag.dragArea(body.shape(), 6, 1);
    double there =
        DragComponent.body("body", body, painted, BodyFormFactor.TORENBEEK)
            .dragArea(100, fast.air().kinematicViscosity().si(), fast.machNumber());
    assertThat(here).isCloseTo(there, within(1e-12 * there));
    Step shown = drag.step(BodySteps.of(body, Source.BRIEF)).orElseThrow();
    assertThat(shown.value()).isCloseTo(here, within(1e-12 * here));
    assertThat(Workings.of(List.of(shown)).steps().stream().map(Step::symbol))
        .as("rough, though smooth enough here, and compressible")
        .contains("Re_cut", "Re_e", "M", "a");
  }

  @Test
  void air_at_rest_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FlightDrag.of(HALL.withAirspeed(Speed.ZERO), LENGTH))
        .withMessage("airspeed must be positive, was 0 m/s");
  }

  @Test
  void a_material_without_a_known_stiffness_makes_no_shell() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                BodyShell.of(
                    Material.of(
                        "own foam",
                        Density.kilogramsPerCubicMetre(500),
                        Source.BRIEF),
                    Length.millimetres(0.8)))
        .withMessage("material must have a known modulus of elasticity, was own foam");
  }

  @Test
  void a_flat_base_adds_its_own_drag() {
    FlightDrag drag = FlightDrag.of(HALL, LENGTH);
    double skin = Math.PI * 0.03 * (0.3 + 0.015);
    double cf = 1.328 / Math.sqrt(6 * 0.3 / HALL.air().kinematicViscosity().si());
    double attached = cf * BodyFormFactor.hoernerLaminar(10, cf) * skin;
    double base = Math.PI / 4 * 9e-4;
    // Hoerner's blunt-based bodies: C_D,b = 0.029/√C_fB on the base (from memory).
    double expected = attached + 0.029 / Math.sqrt(attached / base) * base;
    assertThat(drag.dragArea(new Tube(), 0.3, 0.03)).isCloseTo(expected, within(2e-4 * expected));
    Fuselage body = new Fuselage(new Tube(), LENGTH, Length.millimetres(30));
    assertThat(drag.step(BodySteps.of(body, Source.BRIEF)).orElseThrow().value()).isCloseTo(drag.dragArea(new Tube(), 0.3, 0.03), within(1e-15));
  }

  @Test
  void an_upsweep_costs_what_the_handbook_says() {
    DragArea straight = FlightDrag.of(HALL, LENGTH);
    DragArea swept = straight.withUpsweep(Angle.degrees(10));
    double section = Math.PI / 4 * 9e-4;
    // D/q = 3.83·u^2.5·A_max (Raymer, eq. 12.36, read in study notes): 0.04874075·A_max at 10°.
    assertThat(swept.dragArea(BodyShape.capsule(), 0.3, 0.03) - straight.dragArea(BodyShape.capsule(), 0.3, 0.03))
        .isCloseTo(0.04874075 * section, within(1e-8 * section));
    Fuselage body = new Fuselage(BodyShape.capsule(), LENGTH, Length.millimetres(30));
    assertThat(swept.step(BodySteps.of(body, Source.BRIEF)).orElseThrow().value())
        .isCloseTo(swept.dragArea(BodyShape.capsule(), 0.3, 0.03), within(1e-15));
    assertThat(swept.findings(body)).isEqualTo(straight.findings(body));
  }

  @Test
  void a_body_that_is_swept_up_drags_with_the_upsweep_it_has() {
    BodyShape straight = BodyShape.noseCylinderCone(1.5, 3);
    BodyShape bent = straight.upswept(3, Angle.degrees(12), 0.5);
    DragArea alone = FlightDrag.of(HALL, LENGTH);
    DragArea whole = alone.withUpsweepOfBody();
    Fuselage body = new Fuselage(bent, LENGTH, Length.millimetres(30));
    double u = body.upsweep().si();
    assertThat(Math.toDegrees(u)).isBetween(9.0, 9.5);
    double swept = 3.83 * Math.pow(u, 2.5) * Math.PI / 4 * 9e-4;
    double drag = whole.dragArea(bent, 0.3, 0.03);
    assertThat(drag - alone.dragArea(bent, 0.3, 0.03)).isCloseTo(swept, within(1e-15));
    assertThat(DragComponent.upsweep(body).dragArea(6, 1.5e-5, 0)).isCloseTo(swept, within(1e-15));
    assertThat(whole.step(BodySteps.of(body, Source.BRIEF)).orElseThrow().value()).isEqualTo(drag);
    assertThat(whole.dragArea(straight, 0.3, 0.03)).isEqualTo(alone.dragArea(straight, 0.3, 0.03));
    assertThat(whole.findings(body)).isEqualTo(alone.findings(body));
    Fuselage steep = new Fuselage(straight.upswept(3, Angle.degrees(40), 0.3), LENGTH, Length.millimetres(30));
    assertThat(whole.findings(steep)).extracting(Finding::subject).contains("drag area of the upsweep");
  }

  @Test
  void its_workings_go_on_from_those_of_the_body() {
    BodySteps body = BodySteps.of(new Fuselage(BodyShape.capsule(), LENGTH, Length.millimetres(30)), Source.BRIEF);
    List<Step> steps = Workings.of(List.of(FlightDrag.of(HALL, LENGTH).step(body).orElseThrow())).steps();
    assertThat(steps).contains(body.length(), body.diameter(), body.fineness(), body.wettedArea());
    assertThat(steps).filteredOn(s -> s.symbol().equals("L")).hasSize(1);
    assertThat(steps).filteredOn(s -> s.symbol().equals("f")).hasSize(1);
  }
}
