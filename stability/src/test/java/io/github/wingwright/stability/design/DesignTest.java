// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.flighttest.CorrectedPolar;
import io.github.wingwright.stability.flighttest.Measured;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DesignTest {
  private static final Length STEP = Length.millimetres(0.5);
  private static final List<String> MADE =
      List.of(
          "wing.span_m",
          "wing.root_chord_m",
          "wing.tip_chord_m",
          "wing.leading_edge_x_m",
          "fuselage.length_m",
          "fuselage.diameter_m",
          "horizontal_tail.span_m",
          "horizontal_tail.root_chord_m",
          "horizontal_tail.tip_chord_m",
          "vertical_tail.span_m",
          "vertical_tail.root_chord_m",
          "vertical_tail.tip_chord_m");

  /** Two ways to one number round differently in their last places; in a chain of some twenty operations by so much. */
  private static final double ROUNDING = 1e-12;

  static Stream<Design> designs() {
    return Stream.of(
        SizingLoop.of(TestGlider.brief()).solve(),
        SizingLoop.of(TestGlider.noseHeavy()).solve(),
        SizingLoop.of(TestGlider.brief()).madeTo(STEP, Mass.grams(0.1)).solve(),
        SizingLoop.of(TestGlider.noseHeavy()).madeTo(STEP, Mass.grams(0.1)).solve());
  }

  @Test
  void every_made_length_is_a_whole_number_of_steps_near_its_sized_value() {
    Design exact = SizingLoop.of(TestGlider.brief()).solve();
    Design made = SizingLoop.of(TestGlider.brief()).madeTo(STEP, Mass.grams(0.1)).solve();
    for (String name : MADE) {
      double value = made.number(name).value();
      double steps = value / STEP.si();
      assertThat(steps).as(name).isCloseTo(Math.rint(steps), within(1e-9));
      assertThat(value).as(name).isCloseTo(Math.round(value * 2000.0) / 2000.0, within(0.0));
      // Tails are sized for the made wing, so they may differ by a little more than half a step.
      assertThat(value).as(name).isCloseTo(exact.number(name).value(), within(1.5 * STEP.si()));
    }
    double ballast = made.number("ballast_kg").value() / 1e-4;
    assertThat(ballast).isCloseTo(Math.rint(ballast), within(1e-9));
  }

  @Test
  void inches_round_to_fractions_of_an_inch() {
    Length sixteenth = Length.inches(1.0 / 16.0);
    Design made = SizingLoop.of(TestGlider.brief()).madeTo(sixteenth, Mass.grams(1)).solve();
    for (String name : MADE) {
      double steps = made.number(name).value() / sixteenth.si();
      assertThat(steps).as(name).isCloseTo(Math.rint(steps), within(1e-9));
    }
  }

  @Test
  void rounding_coarser_than_a_dimension_is_refused_with_words() {
    assertThatThrownBy(() -> SizingLoop.of(TestGlider.brief()).madeTo(Length.millimetres(300), Mass.grams(1)).solve())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("300 mm")
        .hasMessageContaining("chord");
  }

  @ParameterizedTest
  @MethodSource("designs")
  void every_number_is_that_of_the_typed_result(Design design) {
    Airframe a = design.aircraft().airframe();
    Wing wing = a.wing();
    Planform p = wing.planform();
    Fuselage f = a.fuselage();
    Map<String, Double> typed = new LinkedHashMap<>();
    typed.put("air.density_kg_per_m3", design.brief().air().density().si());
    typed.put("air.kinematic_viscosity_m2_per_s", design.brief().air().kinematicViscosity().si());
    typed.put("wing.span_m", p.span().si());
    typed.put("wing.area_m2", p.area().si());
    typed.put("wing.aspect_ratio", p.aspectRatio());
    typed.put("wing.root_chord_m", p.rootChord().si());
    typed.put("wing.taper_ratio", p.taperRatio());
    typed.put("wing.mean_aerodynamic_chord_m", p.meanAerodynamicChord().si());
    typed.put("wing.maximum_thickness_m", wing.section().maximumThickness() * p.rootChord().si());
    typed.put("wing.dihedral_rad", p.equivalentDihedral().si());
    typed.put("wing.leading_edge_x_m", wing.placement().x().si());
    typed.put("wing.loading_kg_per_m2", design.aircraft().wingLoading().si());
    typed.put("wing.lift_coefficient_usable", design.glide().usableLift());
    typed.put("fuselage.length_m", f.length().si());
    typed.put("fuselage.diameter_m", f.diameter().si());
    typed.put("fuselage.fineness_ratio", f.finenessRatio());
    typed.put("fuselage.volume_m3", f.volume().si());
    typed.put("fuselage.wetted_area_m2", f.wettedArea().si());
    for (Tail tail : a.tails()) {
      boolean level = tail.role() == Tail.Role.HORIZONTAL;
      String key = level ? "horizontal_tail" : "vertical_tail";
      double reference = level ? p.meanAerodynamicChord().si() : p.span().si();
      double area = tail.planform().area().si();
      typed.put(key + ".span_m", tail.planform().span().si());
      typed.put(key + ".area_m2", area);
      typed.put(key + ".arm_m", tail.armFrom(wing).si());
      typed.put(key + ".volume_coefficient", area * tail.armFrom(wing).si() / (p.area().si() * reference));
    }
    typed.put("mass_kg", design.aircraft().mass().si());
    typed.put("ballast_kg", design.aircraft().masses().item("ballast").map(i -> i.mass().si()).orElse(0.0));
    typed.put("centre_of_gravity.x_m", design.aircraft().centreOfGravity().x().si());
    typed.put("neutral_point.x_m", design.neutralPoint().x().si());
    typed.put("static_margin", design.staticMargin().value());
    typed.put("decalage_rad", design.trim().decalage().si());
    typed.put("spiral_parameter_rad", design.lateral().spiralParameter().si());
    typed.put("stall_speed_m_per_s", design.glide().stallSpeed().si());
    typed.put("launch_speed_m_per_s", design.brief().launch().speed().si());
    GlidePoint best = design.glide().bestGlide();
    typed.put("glide.best_lift_to_drag", best.liftToDrag());
    typed.put("glide.best_glide_speed_m_per_s", best.speed().si());
    typed.put("glide.best_glide_lift_coefficient", best.liftCoefficient());
    GlidePoint least = design.glide().leastSink();
    typed.put("glide.minimum_sink_rate_m_per_s", least.sinkRate().si());
    typed.put("glide.minimum_sink_speed_m_per_s", least.speed().si());
    typed.put("glide.time_s", design.glide().durationFrom(design.brief().launch().height()).si());
    typed.put("glide.distance_m", design.glide().distanceFrom(design.brief().launch().height()).likely().si());
    typed.put("drag.coefficient_without_wing", design.drag().coefficient().value());
    typed.forEach(
        (name, value) ->
            assertThat(design.number(name).value()).as(name).isCloseTo(value, within(ROUNDING * Math.max(Math.abs(value), 0.01))));
  }

  @ParameterizedTest
  @MethodSource("designs")
  void what_a_numerical_method_found_closes_its_equation(Design design) {
    int solutions = 0;
    for (Step step : design.workings().steps()) {
      if (step instanceof Step.Solution solution) {
        solutions++;
        double allowed = solution.method().startsWith("rounding") ? 0.5 * (step.symbol().equals("m_b") ? 1e-4 : STEP.si()) : 1e-9 * Math.abs(step.value());
        if (step.symbol().equals("V_f") || step.symbol().equals("M") || step.symbol().equals("V_t")) {
          // An integral by few places, held against one by many.
          allowed = 5e-3 * Math.abs(step.value());
        } else if (step.symbol().equals("V_h") || step.symbol().equals("V_v")) {
          allowed = 0.02 * Math.abs(step.value());
        }
        assertThat(Math.abs(solution.residual())).as(step.toString()).isLessThanOrEqualTo(allowed * (1.0 + 1e-9));
      }
    }
    assertThat(solutions).isGreaterThan(8);
  }

  @Test
  void the_quick_balance_and_the_full_one_agree() {
    for (DesignBrief brief : List.of(TestGlider.brief(), TestGlider.noseHeavy())) {
      Design design = SizingLoop.of(brief).solve();
      double mass = design.aircraft().mass().si();
      QuickDesign.Balance quick =
          new QuickDesign(brief, design.sizedWing().value(), design.sizedFuselage().value()).balance(mass);
      assertThat(quick.mass()).isCloseTo(mass, within(1e-9 * mass));
      assertThat(quick.centreOfGravity()).isCloseTo(design.aircraft().centreOfGravity().x().si(), within(1e-9));
      assertThat(quick.neutralPoint()).isCloseTo(design.neutralPoint().x().si(), within(1e-9));
      assertThat(quick.horizontalArea()).isCloseTo(design.number("horizontal_tail.area_m2").value(), within(1e-11));
      assertThat(quick.verticalArea()).isCloseTo(design.number("vertical_tail.area_m2").value(), within(1e-11));
      assertThat(design.staticMargin().value()).isCloseTo(0.15, within(1e-9));
    }
  }

  @Test
  void the_centre_of_gravity_is_that_of_the_parts_added_by_hand() {
    Design design = SizingLoop.of(TestGlider.noseHeavy()).madeTo(STEP, Mass.grams(0.1)).solve();
    double mass = 0.0;
    double moment = 0.0;
    for (var item : design.aircraft().masses().items()) {
      mass += item.mass().si();
      moment += item.mass().si() * item.centreOfGravity().x().si();
    }
    assertThat(design.number("centre_of_gravity.x_m").value()).isCloseTo(moment / mass, within(1e-14));
  }

  @Test
  void tails_end_with_the_fuselage_as_made() {
    Airframe a = SizingLoop.of(TestGlider.brief()).madeTo(STEP, Mass.grams(0.1)).solve().aircraft().airframe();
    for (Tail tail : a.tails()) {
      assertThat(tail.placement().x().si() + tail.planform().rootChord().si()).isCloseTo(a.fuselage().length().si(), within(1e-15));
    }
  }

  @Test
  void names_are_flat_and_lead_from_inputs_to_results() {
    Design design = SizingLoop.of(TestGlider.brief()).solve();
    assertThat(design.numbers().keySet()).allMatch(n -> n.matches("[a-z]+(_[a-z]+)*(\\.[a-z0-9]+(_[a-z0-9]+)*)?"));
    List<Step> steps = design.workings().steps();
    assertThat(steps).doesNotHaveDuplicates();
    assertThat(steps).containsAll(design.numbers().values());
    assertThatThrownBy(() -> design.number("wing.colour")).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("wing.span_m");
  }

  @Test
  void one_span_stands_in_the_workings_once() {
    Design design = SizingLoop.of(TestGlider.brief()).madeTo(STEP, Mass.grams(0.1)).solve();
    for (String symbol : List.of("S", "c̄", "ρ", "ν", "K_w")) {
      List<Step> same = design.workings().steps().stream().filter(s -> s.symbol().equals(symbol)).toList();
      double value = same.get(same.size() - 1).value();
      assertThat(same.stream().filter(s -> s.value() == value)).as(symbol + ": " + same).hasSize(1);
    }
  }

  @Test
  void with_its_own_fuselage_it_is_the_design_before_rounding_and_with_a_thicker_one_it_is_worse() {
    Design exact = SizingLoop.of(TestGlider.brief()).solve();
    Fuselage body = exact.aircraft().airframe().fuselage();
    Design same = exact.withFuselage(body);
    exact.numbers().forEach((name, step) ->
        assertThat(same.number(name).value()).as(name).isCloseTo(step.value(), within(1e-7 * Math.max(1e-3, Math.abs(step.value())))));
    Design thick = exact.withFuselage(new Fuselage(body.shape(), body.length(), body.diameter().times(1.3)));
    assertThat(thick.glide().bestGlide().liftToDrag()).isLessThan(exact.glide().bestGlide().liftToDrag());
    assertThat(thick.aircraft().airframe().wing().planform()).isEqualTo(exact.aircraft().airframe().wing().planform());
  }

  @Test
  void with_its_own_section_it_is_the_design_before_rounding_and_a_better_polar_glides_better() {
    Design exact = SizingLoop.of(TestGlider.brief()).solve();
    AirfoilSection section = exact.aircraft().airframe().wing().section();
    Design same = exact.withSection(section, exact.brief().wingPolar());
    exact.numbers().forEach((name, step) ->
        assertThat(same.number(name).value()).as(name).isCloseTo(step.value(), within(1e-7 * Math.max(1e-3, Math.abs(step.value())))));
    Design better = exact.withSection(section, CorrectedPolar.of(exact.brief().wingPolar(), new Measured(-0.005, 0.0)));
    assertThat(better.glide().bestGlide().liftToDrag()).isGreaterThan(1.05 * exact.glide().bestGlide().liftToDrag());
    assertThat(better.aircraft().airframe().fuselage()).isEqualTo(exact.aircraft().airframe().fuselage());
  }
}
