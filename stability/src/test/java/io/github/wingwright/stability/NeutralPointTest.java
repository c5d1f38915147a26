// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NeutralPointTest {
  @ParameterizedTest
  @MethodSource("published")
  void the_light_twin_has_its_neutral_point(PublishedValues.Row row) {
    double h =
        NeutralPoint.position(
            5, 0.25, row.number("fuselage_slope"), 0.9, 31.0 / 134, 4.47469, 1 - 0.618797, 3.73837);
    assertThat(h).as(row.toString()).isCloseTo(row.number("expected"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(NeutralPointTest.class, "neutral-point.csv").rows();
  }

  @Test
  void the_light_twin_has_its_printed_margin_after_propeller_and_floating_elevator() {
    // The notes: 2 % less for each chord of propeller ahead of the centre of gravity, then 3.5 % stick free.
    double fixed = 0.399335 * (1 - 0.02 * 4.65 / 4.3);
    double free = 0.965 * fixed;
    assertThat(free).isCloseTo(0.377, within(5e-4));
    assertThat(StaticMargin.margin(free, 0.1861)).isCloseTo(0.19, within(2e-3));
  }

  @Test
  void the_wind_tunnel_model_has_its_moment_slope() {
    // Anderson, Introduction to Flight, chapter 7 (from memory): −0.0133 per degree. h_h = 0.35 + 0.17/0.1.
    double t = NeutralPoint.tailSlope(1.0, 0.2, 0.1, 0.35);
    assertThat(NeutralPoint.momentSlope(0.08, 0.35, 0.24, 0, t, 0.35 + 1.7)).isCloseTo(-0.0133, within(1e-12));
    // The book's neutral point takes V_h about the actual centre of gravity and the slope of wing and body alone.
    double bookForm = 0.24 + 0.34 * (0.1 / 0.08) * 0.65;
    assertThat(bookForm).isCloseTo(0.516, within(5e-4));
    // With every arm from one origin it lies at 0.493: a stable model either way.
    assertThat(NeutralPoint.position(0.08, 0.24, 0, 1.0, 0.2, 0.1, 0.35, 2.05)).isCloseTo(0.49301, within(1e-5));
  }

  @Test
  void the_moment_slope_vanishes_at_the_neutral_point_and_grows_with_the_centre_of_gravity_aft_of_it() {
    Seeded.points(
            11, 300, range(3, 6), range(0.2, 0.3), range(0, 1.2), range(0.7, 1), range(0.05, 0.4), range(2, 5),
            range(0.1, 0.7), range(1.5, 5))
        .forEach(
            p -> {
              double h = NeutralPoint.position(p[0], p[1], p[2], p[3], p[4], p[5], p[6], p[7]);
              double t = NeutralPoint.tailSlope(p[3], p[4], p[5], p[6]);
              assertThat(NeutralPoint.momentSlope(p[0], h, p[1], p[2], t, p[7])).isCloseTo(0, within(1e-11));
              assertThat(NeutralPoint.momentSlope(p[0], h - 0.1, p[1], p[2], t, p[7])).isNegative();
              assertThat(NeutralPoint.momentSlope(p[0], h + 0.1, p[1], p[2], t, p[7])).isPositive();
              double parts =
                  p[1] + NeutralPoint.tailShift(t, p[7], p[1], p[0]) + NeutralPoint.fuselageShift(p[2], p[0], t);
              assertThat(parts).isCloseTo(h, within(1e-12));
            });
  }

  private static double[] range(double low, double high) {
    return new double[] {low, high};
  }

  @Test
  void the_form_with_a_tail_volume_agrees_if_its_slope_is_that_of_the_aircraft() {
    double t = NeutralPoint.tailSlope(0.9, 0.22, 3.5, 0.4);
    double h = NeutralPoint.position(4.8, 0.25, 0, 0.9, 0.22, 3.5, 0.4, 3.4);
    double volume = 0.22 * (3.4 - 0.25);
    double byVolume = 0.25 + 0.9 * volume * 3.5 / (4.8 + t) * (1 - 0.4);
    assertThat(byVolume).isCloseTo(h, within(1e-14));
  }

  @Test
  void a_tail_moves_it_aft_and_a_fuselage_forward() {
    NeutralPoint np = PitchModel.of(Models.glider()).neutralPoint();
    List<Step> parts = np.contributions();
    assertThat(parts.get(0).value()).isEqualTo(0.25);
    assertThat(parts.get(1).value()).isPositive();
    assertThat(parts.get(2).value()).isNegative();
    assertThat(parts.stream().mapToDouble(Step::value).sum()).isCloseTo(np.fraction(), within(1e-14));
    assertThat(np.fraction()).isBetween(0.4, 0.9);
  }

  @Test
  void places_in_metres_and_in_chords_are_the_same_place() {
    NeutralPoint np = PitchModel.of(Models.glider()).neutralPoint();
    double x = np.leadingEdge().si() + np.fraction() * np.meanAerodynamicChord().si();
    assertThat(np.x().si()).isEqualTo(x);
    // Taper 60 to 40 mm on 400 mm: c̄ = 50.6667 mm.
    assertThat(np.meanAerodynamicChord().millimetres()).isCloseTo(50.6667, within(1e-4));
  }

  @Test
  void the_more_downwash_the_less_tail() {
    NeutralPoint np = PitchModel.of(Models.glider()).neutralPoint();
    assertThat(np.band().low()).isLessThan(np.fraction());
    assertThat(np.band().high()).isGreaterThanOrEqualTo(np.fraction());
  }

  @Test
  void a_floating_elevator_moves_it_forward() {
    PitchModel fixed = PitchModel.of(Models.glider());
    double factor = NeutralPoint.floatingFactor(0.5, -0.2, -0.4);
    assertThat(factor).isEqualTo(0.75);
    PitchModel free = fixed.withFloatingFactor(factor);
    assertThat(free.neutralPoint().fraction()).isLessThan(fixed.neutralPoint().fraction());
  }

  @Test
  void a_nacelle_and_a_propeller_ahead_move_it_forward() {
    PitchModel bare = PitchModel.of(Models.glider());
    Fuselage pod = new Fuselage(BodyShape.prolateSpheroid(), Length.millimetres(60), Length.millimetres(12));
    NeutralPoint without = bare.neutralPoint();
    NeutralPoint twin = bare.withNacelle(pod).withNacelle(pod).neutralPoint();
    NeutralPoint single = bare.withNacelle(pod).neutralPoint();
    double first = without.fraction() - single.fraction();
    assertThat(first).isPositive();
    assertThat(without.fraction() - twin.fraction()).isCloseTo(2 * first, within(1e-12));
    // The notes: 2 % of its place for each chord that the propeller lies ahead.
    double chord = without.meanAerodynamicChord().si();
    NeutralPoint pulled = bare.withPropellerAhead(Length.metres(1.5 * chord)).neutralPoint();
    assertThat(pulled.fraction()).isCloseTo(without.fraction() * 0.97, within(1e-12));
    assertThat(pulled.contributions().stream().mapToDouble(Step::value).sum())
        .isCloseTo(pulled.fraction(), within(1e-13));
    assertThat(pulled.band().likely()).isEqualTo(pulled.fraction());
  }

  @Test
  void without_a_tail_wing_and_fuselage_remain_and_the_result_says_so() {
    Airframe glider = Models.glider();
    Airframe tailless = new Airframe(glider.fuselage(), glider.wing(), List.of());
    NeutralPoint np = PitchModel.of(tailless).neutralPoint();
    assertThat(np.contributions()).hasSize(2);
    assertThat(np.fraction()).isLessThan(0.25);
    assertThat(np.findings()).anySatisfy(f -> assertThat(f.message()).contains("sweep with washout"));
    assertThatThrownBy(() -> PitchModel.of(tailless).downwash()).hasMessageContaining("needs a horizontal tail");
  }

  @Test
  void the_quick_path_gives_the_same_bits_as_the_workings() {
    PitchModel model = PitchModel.of(Models.glider());
    NeutralPoint np = model.neutralPoint();
    double[] inputs = np.step().inputs().stream().mapToDouble(Step::value).toArray();
    double quick =
        NeutralPoint.position(
            inputs[0], inputs[1], inputs[2], inputs[3], inputs[4], inputs[5], inputs[6], inputs[7]);
    assertThat(np.fraction()).isEqualTo(quick);
  }

  @Test
  void the_margin_is_the_way_from_the_centre_of_gravity_to_the_neutral_point() {
    PitchModel model = PitchModel.of(Models.glider());
    NeutralPoint np = model.neutralPoint();
    Length ahead = np.x().minus(np.meanAerodynamicChord().times(0.15));
    StaticMargin margin = model.staticMargin(ahead);
    assertThat(margin.value()).isCloseTo(0.15, within(1e-12));
    assertThat(margin.findings()).isEmpty();
    StaticMargin unstable = model.staticMargin(np.x().plus(Length.millimetres(2)));
    assertThat(unstable.value()).isNegative();
    Finding finding = unstable.findings().get(0);
    assertThat(finding.severity()).isEqualTo(Severity.SERIOUS);
    assertThat(finding.message()).contains("does not return by itself").contains("move mass forward");
    StaticMargin twitchy = model.staticMargin(np.x().minus(np.meanAerodynamicChord().times(0.02)));
    assertThat(twitchy.findings().get(0).message()).contains("fly unsteadily");
    StaticMargin nose = model.staticMargin(np.x().minus(np.meanAerodynamicChord().times(0.4)));
    assertThat(nose.findings()).extracting(Finding::severity).containsExactly(Severity.CAUTION);
  }
}
