// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.performance.FlightManner;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.design.TestGlider;
import io.github.wingwright.stability.flight.PitchFlight;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FlightEvaluationTest {
  private static final Design DESIGN =
      SizingLoop.of(TestGlider.brief()).madeTo(Length.millimetres(0.5), Mass.grams(0.1)).solve();

  private static Measured m(double value, double uncertainty) {
    return new Measured(value, uncertainty);
  }

  /** A steady glide of the design at a lift coefficient, with more drag than it was reckoned. */
  private static FlightTest glide(String name, double lift, double more) {
    GlidePoint at = DESIGN.glide().at(lift);
    double e = lift / (at.dragCoefficient() + more);
    double height = 1.6;
    double distance = e * height;
    // The speed at which the steeper glide carries the weight.
    double gamma = Math.atan(1 / e);
    double weight = DESIGN.aircraft().mass().si() * 9.80665;
    double area = DESIGN.aircraft().airframe().wing().planform().area().si();
    double v = Math.sqrt(2 * weight * Math.cos(gamma) / (DESIGN.brief().air().density().si() * area * lift));
    double time = Math.hypot(distance, height) / v;
    return FlightTest.named(name, m(distance, 0.1), m(height, 0.02)).in(m(time, 0.05)).thrownAt(m(v, 0.2));
  }

  private static List<WeighedPart> asReckoned() {
    return DESIGN.aircraft().masses().items().stream()
        .map(i -> new WeighedPart(i.name(), m(i.mass().si(), 1e-4)))
        .toList();
  }

  @Test
  void the_documented_energy_height_holds() {
    assertThat(GlideResult.energyHeight(12, 1.5, 2, 7)).isCloseTo(1.5 + (49 - (144 + 2.25) / 4) / 19.6133, within(1e-12));
    assertThat(GlideResult.energyHeight(12, 1.5, 2, 7)).isCloseTo(2.1341, within(5e-5));
  }

  @Test
  void flights_of_the_design_as_reckoned_find_no_further_drag() {
    FlightEvaluation tested =
        FlightEvaluation.of(DESIGN, asReckoned(), List.of(glide("1", 0.5, 0), glide("2", 0.6, 0)));
    assertThat(tested.excessDrag().orElseThrow().value()).isCloseTo(0, within(1e-5));
    assertThat(tested.materialFactor().value()).isCloseTo(1, within(1e-12));
    assertThat(tested.results().get(0).liftCoefficient().value()).isCloseTo(0.5, within(1e-9));
    double expected = DESIGN.glide().at(0.5).liftToDrag();
    assertThat(tested.results().get(0).liftToDrag().value()).isCloseTo(expected, within(1e-6 * expected));
  }

  @Test
  void flights_with_more_drag_give_it_back_and_the_next_design_has_it() {
    FlightEvaluation tested =
        FlightEvaluation.of(DESIGN, asReckoned(), List.of(glide("1", 0.5, 0.012), glide("2", 0.6, 0.012)));
    assertThat(tested.excessDrag().orElseThrow().value()).isCloseTo(0.012, within(2e-4));
    Design next = SizingLoop.of(tested.nextBrief()).madeTo(Length.millimetres(0.5), Mass.grams(0.1)).solve();
    assertThat(next.glide().bestGlide().liftToDrag()).isLessThan(DESIGN.glide().bestGlide().liftToDrag());
    double cd = DESIGN.glide().at(0.5).dragCoefficient();
    assertThat(next.glide().at(0.5).dragCoefficient()).isCloseTo(cd + 0.012, within(3e-3));
  }

  @Test
  void heavier_parts_make_the_material_denser_by_the_same_factor() {
    List<WeighedPart> heavier = new ArrayList<>();
    for (MassItem item : DESIGN.aircraft().masses().items()) {
      if (!item.name().equals("ballast")) {
        heavier.add(new WeighedPart(item.name(), m(1.1 * item.mass().si(), 1e-4)));
      }
    }
    FlightEvaluation tested = FlightEvaluation.of(DESIGN, heavier, List.of());
    assertThat(tested.materialFactor().value()).isCloseTo(1.1, within(1e-12));
    assertThat(tested.materialAsWeighed().density().si())
        .isCloseTo(1.1 * DESIGN.brief().material().density().si(), within(1e-9));
    assertThat(tested.materialAsWeighed().elasticModulus()).isEqualTo(DESIGN.brief().material().elasticModulus());
    assertThat(tested.findings()).anySatisfy(f -> assertThat(f.message()).contains("None of the 0 flights"));
  }

  @Test
  void the_nose_mass_of_the_advice_trims_what_the_design_trims_at() {
    FlightTest stall = glide("1", 0.6, 0).seen(Set.of(Behaviour.STALLS));
    TrimAdvice advice = FlightEvaluation.of(DESIGN, List.of(), List.of(stall)).advice().get(0);
    assertThat(advice.tailAngle().orElseThrow().si()).isPositive();
    double added = advice.noseMass().orElseThrow().si();
    assertThat(added).isPositive();
    double mass = DESIGN.aircraft().mass().si();
    double x = DESIGN.aircraft().centreOfGravity().x().si();
    double nose = DESIGN.aircraft().masses().item("ballast").orElseThrow().centreOfGravity().x().si();
    double shifted = (mass * x + added * nose) / (mass + added);
    double before =
        DESIGN.pitchModel().trim(Length.metres(x), DESIGN.glide().usableLift()).tailIncidence().si();
    double after =
        DESIGN.pitchModel().trim(Length.metres(shifted), DESIGN.trim().liftCoefficient()).tailIncidence().si();
    assertThat(after).isCloseTo(before, within(1e-9));
    assertThat(advice.words()).startsWith("It stalls: it flies at C_L ").contains(" to the nose, or turn the tailplane");
  }

  /** The glider as it was seen, flown with what was advised: each amount alone gives the lift that it was designed for. */
  @ParameterizedTest
  @EnumSource(names = {"STALLS", "DIVES"})
  void each_advised_amount_alone_trims_the_glider_that_flies(Behaviour seen) {
    TrimAdvice advice = TrimAdvice.of(DESIGN, seen);
    double target = DESIGN.trim().liftCoefficient();
    double flown = seen == Behaviour.STALLS ? DESIGN.glide().usableLift() : 0.5 * target;
    Aircraft built = DESIGN.aircraft();
    Angle decalage = DESIGN.pitchModel().trim(built.centreOfGravity().x(), flown).decalage();
    PitchFlight asSeen = PitchFlight.of(DESIGN).withDecalage(decalage);
    PitchFlight turned = asSeen.withDecalage(decalage.minus(advice.tailAngle().orElseThrow()));
    assertThat(turned.trimmedLift().orElseThrow()).isCloseTo(target, within(1e-9));
    MassItem ballast = built.masses().item("ballast").orElseThrow();
    Mass weight = ballast.mass().plus(advice.noseMass().orElseThrow());
    Aircraft weighted =
        new Aircraft(
            built.airframe(),
            built.masses().without("ballast").with(MassItem.of("ballast", weight, ballast.centreOfGravity())));
    PitchFlight nosed =
        PitchFlight.of(DESIGN.pitchModel(), weighted, DESIGN.glide().drag(), DESIGN.brief().air(), target).withDecalage(decalage);
    assertThat(nosed.trimmedLift().orElseThrow()).isCloseTo(target, within(1e-9));
    Throw level = Throw.level(DESIGN.glide().at(target).speed(), Length.metres(1.5));
    FlightManner before = asSeen.thrown(level).manner();
    assertThat(before).isEqualTo(seen == Behaviour.STALLS ? FlightManner.STALLS : FlightManner.GLIDES);
    assertThat(turned.thrown(level).manner()).isEqualTo(FlightManner.GLIDES);
    assertThat(nosed.thrown(level).manner()).isEqualTo(FlightManner.GLIDES);
  }

  @Test
  void a_dive_asks_for_the_opposite_of_a_stall() {
    FlightTest dive = glide("1", 0.3, 0).seen(Set.of(Behaviour.DIVES));
    TrimAdvice advice = FlightEvaluation.of(DESIGN, asReckoned(), List.of(dive)).advice().get(0);
    assertThat(advice.tailAngle().orElseThrow().si()).isNegative();
    assertThat(advice.words()).contains("C_L 0.3 ").contains("leading edge down");
  }

  @Test
  void a_turn_is_straightened_by_an_angle_that_falls_with_its_radius() {
    double at3 = fin(3, Behaviour.TURNS_LEFT);
    double at6 = fin(6, Behaviour.TURNS_LEFT);
    assertThat(at3).isPositive().isCloseTo(2 * at6, within(1e-12));
    double x = DESIGN.aircraft().centreOfGravity().x().si();
    double arm = DESIGN.aircraft().airframe().verticalTail().orElseThrow().quarterChordX().si() - x;
    assertThat(at3).isCloseTo(arm / 3, within(1e-12));
    assertThat(fin(3, Behaviour.TURNS_RIGHT)).isEqualTo(-at3);
  }

  private static double fin(double radius, Behaviour which) {
    FlightTest turn = glide("1", 0.5, 0).turningAt(m(radius, 1)).seen(Set.of(which));
    return FlightEvaluation.of(DESIGN, List.of(), List.of(turn)).advice().get(0).finAngle().orElseThrow().si();
  }

  @Test
  void each_behaviour_is_advised_on_once() {
    List<FlightTest> flights =
        List.of(
            glide("1", 0.5, 0).seen(Set.of(Behaviour.BOUNCES, Behaviour.SPIRALS)),
            glide("2", 0.5, 0).seen(Set.of(Behaviour.BOUNCES)));
    FlightEvaluation tested = FlightEvaluation.of(DESIGN, List.of(), flights);
    assertThat(tested.advice()).extracting(TrimAdvice::behaviour).containsExactly(Behaviour.BOUNCES, Behaviour.SPIRALS);
    assertThat(tested.results()).isEmpty();
    assertThat(tested.liftToDrag()).isEmpty();
  }

  @Test
  void a_balance_elsewhere_and_scattering_flights_are_found() {
    double designed = DESIGN.aircraft().centreOfGravity().x().si();
    FlightEvaluation tested =
        FlightEvaluation.of(
            DESIGN, asReckoned(), m(designed + 0.012, 0.001), List.of(glide("1", 0.5, 0), glide("2", 0.5, 0.12)));
    assertThat(tested.findings()).extracting(f -> f.subject()).contains("centre of gravity as built", "scatter of the flights");
  }

  /** The same glides, launched a tenth faster than they fly, or at their speed. */
  @Test
  void launches_off_the_speed_of_the_flight_are_found() {
    FlightTest flown = glide("1", 0.5, 0);
    double speed = flown.launchSpeed().orElseThrow().value();
    FlightTest fast = flown.thrownAt(m(1.1 * speed, 0.1));
    FlightTest near = flown.thrownAt(m(1.03 * speed, 0.1));
    assertThat(subjects(List.of(fast, fast, fast))).contains("launches off the glide");
    assertThat(subjects(List.of(near, near, near))).doesNotContain("launches off the glide");
    // Read so badly, the same launches are no sign of anything.
    FlightTest read = flown.thrownAt(m(1.1 * speed, 0.8));
    assertThat(subjects(List.of(read, read, read))).doesNotContain("launches off the glide");
  }

  private static List<String> subjects(List<FlightTest> flights) {
    return FlightEvaluation.of(DESIGN, asReckoned(), flights).findings().stream().map(f -> f.subject()).toList();
  }

  @Test
  void a_part_that_is_none_is_refused_with_those_that_are() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FlightEvaluation.of(DESIGN, List.of(new WeighedPart("canopy", m(1e-3, 1e-4))), List.of()))
        .withMessageStartingWith("weighed part must be one of [wing, fuselage,")
        .withMessageEndingWith("was canopy");
  }

  @Test
  void uncertainties_go_through_as_in_a_thousand_repetitions() {
    Measured[] in = {m(12, 0.2), m(1.5, 0.03), m(1.9, 0.05), m(6.5, 0.3)};
    Measured out =
        Measured.propagated(v -> v[0] / GlideResult.energyHeight(v[0], v[1], v[2], v[3]), in);
    Random random = new Random(97);
    int n = 200_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double[] v = new double[4];
      for (int k = 0; k < 4; k++) {
        // A tenth of the uncertainties, so that the first order is all there is.
        v[k] = in[k].value() + 0.1 * in[k].uncertainty() * random.nextGaussian();
      }
      double e = v[0] / GlideResult.energyHeight(v[0], v[1], v[2], v[3]);
      sum += e;
      squares += e * e;
    }
    double mean = sum / n;
    double spread = 10 * Math.sqrt(squares / n - mean * mean);
    assertThat(out.uncertainty()).isCloseTo(spread, within(0.02 * spread));
  }

  @Test
  void the_mean_is_weighted_and_as_uncertain_as_the_scatter_if_that_is_more() {
    Measured agreed = Measured.mean(List.of(m(10, 1), m(10, 1)));
    assertThat(agreed.value()).isEqualTo(10);
    assertThat(agreed.uncertainty()).isCloseTo(Math.sqrt(0.5), within(1e-12));
    Measured weighted = Measured.mean(List.of(m(10, 1), m(13, 2)));
    assertThat(weighted.value()).isCloseTo((10 + 13 / 4.0) / 1.25, within(1e-12));
    Measured scattered = Measured.mean(List.of(m(5, 0.1), m(15, 0.1)));
    assertThat(scattered.uncertainty()).isCloseTo(5, within(1e-12));
    assertThatIllegalArgumentException().isThrownBy(() -> Measured.mean(List.of(m(5, 0)))).withMessageContaining("uncertainty");
    assertThat(m(7.913, 0.42)).hasToString("7.91 ± 0.42");
  }

  @Test
  void a_corrected_polar_refuses_a_reynolds_number_that_is_not_positive() {
    SectionPolar polar = CorrectedPolar.of(DESIGN.brief().wingPolar(), m(0.002, 0.001));
    for (double reynolds : new double[] {0, -1, Double.NaN}) {
      assertThatIllegalArgumentException().isThrownBy(() -> polar.profileDrag(0.5, reynolds))
          .withMessage("Reynolds number must be positive, was " + reynolds);
    }
  }
}
