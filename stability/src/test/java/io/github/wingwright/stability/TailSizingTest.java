// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.feet;
import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TailSizingTest {
  private static final Wing GLIDER = Models.glider().wing();

  private static TailSizing small() {
    return TailSizing.horizontal(GLIDER).section(Models.PLATE).aspectRatio(3.5).taperRatio(0.8);
  }

  @ParameterizedTest
  @MethodSource("lightTwin")
  void the_light_twin_of_the_course_notes_gets_its_tails(PublishedValues.Row row) {
    boolean level = row.text("role").equals("horizontal");
    // The area is given so that the rounding of the wing's chord in the notes does not enter.
    double byHand =
        TailVolume.area(row.number("volume_coefficient"), row.number("arm"), 134, level ? 4.3 : 33);
    TailSizing sizing =
        level ? TailSizing.horizontal(Models.lightTwinWing()) : TailSizing.vertical(Models.lightTwinWing());
    Tail tail =
        sizing
            .forClass(AircraftClass.TWIN_ENGINE)
            .section(Models.PLATE)
            .arm(feet(row.number("arm")))
            .area(Area.squareFeet(byHand))
            .aspectRatio(row.number("aspect_ratio"))
            .taperRatio(row.number("taper_ratio"))
            .solve()
            .value();
    Planform p = tail.planform();
    Percentage tolerance = Percentage.withPercentage(100 * row.number("tolerance"));
    assertThat(p.area().squareFeet()).isCloseTo(row.number("area"), tolerance);
    assertThat(p.span().feet()).isCloseTo(row.number("span"), tolerance);
    assertThat(p.rootChord().feet()).isCloseTo(row.number("root_chord"), tolerance);
    assertThat(p.tipChord().feet()).isCloseTo(row.number("tip_chord"), tolerance);
    assertThat(p.meanAerodynamicChord().feet()).isCloseTo(row.number("mean_chord"), tolerance);
    // The notes give a fin's ȳ as that of a wing of twice the height: y = 2·h/6·(1+2λ)/(1+λ), here its z.
    assertThat(p.meanAerodynamicChordY().feet()).isCloseTo(row.number("place"), tolerance);
    assertThat(p.area().squareFeet()).isCloseTo(row.number("published_area"), within(0.5));
    assertThat(p.span().feet()).isCloseTo(row.number("published_span"), within(0.5));
  }

  static Stream<PublishedValues.Row> lightTwin() {
    return PublishedValues.beside(TailSizingTest.class, "light-twin-tails.csv").rows();
  }

  @Test
  void any_two_of_arm_area_and_coefficient_give_the_third() {
    Tail byArea = small().arm(millimetres(190)).volumeCoefficient(0.6).solve().value();
    Tail byArm = small().area(byArea.planform().area()).volumeCoefficient(0.6).solve().value();
    Tail byBoth = small().arm(millimetres(190)).area(byArea.planform().area()).solve().value();
    for (Tail tail : List.of(byArea, byArm, byBoth)) {
      assertThat(TailVolume.of(tail, GLIDER)).isCloseTo(0.6, within(1e-12));
      assertThat(tail.armFrom(GLIDER).millimetres()).isCloseTo(190, within(1e-9));
    }
  }

  @Test
  void a_tail_may_end_where_the_fuselage_ends() {
    Length end = millimetres(320);
    Tail tail = small().trailingEdgeAt(end).volumeCoefficient(0.6).solve().value();
    Length trailing = tail.placement().x().plus(tail.planform().rootChord());
    assertThat(trailing.millimetres()).isCloseTo(320, within(1e-7));
    assertThat(TailVolume.of(tail, GLIDER)).isCloseTo(0.6, within(1e-12));

    Tail swept = small().sweep(Angle.degrees(35)).trailingEdgeAt(end).volumeCoefficient(0.6).solve().value();
    Planform p = swept.planform();
    double tip = p.leadingEdgeAt(p.span().times(0.5)).si() + p.tipChord().si();
    assertThat(swept.placement().x().si() + Math.max(tip, p.rootChord().si())).isCloseTo(0.320, within(1e-10));
  }

  @Test
  void a_tail_that_cannot_end_there_is_explained() {
    assertThatThrownBy(() -> small().trailingEdgeAt(millimetres(130)).volumeCoefficient(0.9).solve())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("Lengthen the fuselage, move the wing forward, or ask for less tail volume");
    assertThatThrownBy(() -> small().trailingEdgeAt(millimetres(80)).volumeCoefficient(0.6).solve())
        .hasMessageContaining("must lie behind the wing's quarter chord");
  }

  @Test
  void a_wanted_margin_gives_the_area_that_has_it() {
    Airframe glider = Models.glider();
    PitchModel model = PitchModel.of(glider);
    Length cg = GLIDER.quarterChordX().plus(millimetres(3));
    Tail tail = small().arm(millimetres(190)).staticMargin(0.12, cg, model).solve().value();
    PitchModel with = model.withAirframe(new Airframe(glider.fuselage(), GLIDER, List.of(tail)));
    assertThat(with.staticMargin(cg).value()).isCloseTo(0.12, within(1e-12));
  }

  @Test
  void the_greatest_requirement_decides_and_is_named() {
    PitchModel model = PitchModel.of(Models.glider());
    Length cg = GLIDER.quarterChordX().plus(millimetres(3));
    Sized<Tail> tail =
        small().arm(millimetres(190)).volumeCoefficient(0.2).staticMargin(0.25, cg, model).solve();
    assertThat(tail.range().lowerBinding().orElseThrow().name()).startsWith("static margin of 25 %");
    assertThat(TailVolume.of(tail.value(), GLIDER)).isGreaterThan(0.2);
    Sized<Tail> other = small().arm(millimetres(190)).volumeCoefficient(0.9).staticMargin(0.05, cg, model).solve();
    assertThat(other.range().lowerBinding().orElseThrow().name()).isEqualTo("volume coefficient wanted");
    assertThat(TailVolume.of(other.value(), GLIDER)).isCloseTo(0.9, within(1e-12));
  }

  @Test
  void an_impossible_margin_says_what_to_move() {
    PitchModel model = PitchModel.of(Models.glider());
    Length farAft = GLIDER.quarterChordX().plus(millimetres(180));
    assertThatThrownBy(() -> small().arm(millimetres(190)).staticMargin(0.3, farAft, model).solve())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("Move the centre of gravity forward or the tail aft");
    Length farForward = GLIDER.quarterChordX().minus(millimetres(40));
    assertThatThrownBy(() -> small().arm(millimetres(190)).staticMargin(0.1, farForward, model).solve())
        .hasMessageContaining("no horizontal tail is needed");
  }

  @Test
  void a_small_tail_is_found_out_and_a_good_one_is_not_scolded() {
    List<Finding> little = small().arm(millimetres(190)).volumeCoefficient(0.3).solve().findings();
    assertThat(little).anySatisfy(f -> assertThat(f.message()).contains("enlarge the tail or move it aft"));
    assertThat(small().arm(millimetres(190)).volumeCoefficient(0.6).solve().findings()).isEmpty();
    // A margin of full size is no matter for models, and the other way round.
    assertThat(small().aspectRatio(8).arm(millimetres(190)).volumeCoefficient(0.6).solve().findings())
        .extracting(Finding::severity)
        .containsOnly(Severity.CAUTION);
  }

  @Test
  void every_number_has_its_workings_bit_for_bit() {
    Sized<Tail> tail = small().arm(millimetres(190)).volumeCoefficient(0.6).solve();
    List<Step> steps = tail.workings().steps();
    assertThat(value(steps, "S_h")).isEqualTo(tail.value().planform().area().si(), within(1e-17));
    assertThat(value(steps, "x_t")).isEqualTo(tail.value().placement().x().si());
    assertThat(value(steps, "V_h")).isCloseTo(0.6, within(1e-15));
  }

  private static double value(List<Step> steps, String symbol) {
    return steps.stream().filter(s -> s.symbol().equals(symbol)).reduce((a, b) -> b).orElseThrow().value();
  }

  @Test
  void conflicts_and_gaps_are_named() {
    assertThatThrownBy(() -> small().arm(millimetres(190)).solve())
        .hasMessageContaining("needs an area, a volume coefficient or a requirement");
    assertThatThrownBy(() -> small().volumeCoefficient(0.6).solve()).hasMessageContaining("needs an arm");
    assertThatThrownBy(
            () ->
                small().arm(millimetres(190)).area(Area.squareCentimetres(40)).volumeCoefficient(0.6).solve())
        .hasMessageContaining("conflict: give two of them");
    assertThatThrownBy(() -> TailSizing.vertical(GLIDER).arm(millimetres(190)).volumeCoefficient(0.04).solve())
        .hasMessage("a vertical tail needs a section, none was given");
    assertThatThrownBy(
            () -> TailSizing.vertical(GLIDER).staticMargin(0.1, millimetres(90), PitchModel.of(Models.glider())))
        .hasMessageContaining("static margin is a matter of the horizontal tail");
  }

  @Test
  void a_specification_does_not_change_when_another_is_made_of_it() {
    TailSizing base = small().arm(millimetres(190)).volumeCoefficient(0.6);
    base.volumeCoefficient(0.8).arm(millimetres(100));
    assertThat(TailVolume.of(base.solve().value(), GLIDER)).isCloseTo(0.6, within(1e-12));
  }

  @Test
  void what_is_read_from_the_wing_is_not_said_to_be_given_by_the_brief() {
    List<Step> given =
        small().arm(millimetres(190)).volumeCoefficient(0.6).solve().workings().steps().stream()
            .filter(Step.Given.class::isInstance)
            .toList();
    assertThat(given)
        .filteredOn(step -> step.source().equals(Source.BRIEF))
        .extracting(Step::value)
        .containsExactlyInAnyOrder(0.19, 0.6, 3.5, 0.8);
    assertThat(given).filteredOn(step -> step.source().equals(Sources.AIRFRAME)).extracting(Step::symbol).contains("S", "c̄");
  }
}
