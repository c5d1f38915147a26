// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static io.github.wingwright.core.quantity.Mass.grams;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class WingStationTest {
  private static final PitchModel MODEL = PitchModel.of(Models.glider());

  private static WingStation spec() {
    return WingStation.of(MODEL)
        .massOnWing(grams(20), millimetres(103))
        .massElsewhere(grams(20), millimetres(100))
        .travel(millimetres(60), millimetres(120))
        .ballast(millimetres(8), grams(12));
  }

  @Test
  void the_wing_moves_first_and_no_ballast_is_used() {
    WingStation.Balance balance = spec().forMargin(0.15);
    assertThat(balance.ballast().si()).isZero();
    assertThat(balance.staticMargin().value()).isCloseTo(0.15, within(1e-9));
    assertThat(balance.airframe().wing().placement().x()).isEqualTo(balance.station());
    // Independent: margin and centre of gravity of the airframe that came out.
    double moved = 103 + balance.station().millimetres() - 80;
    assertThat(balance.centreOfGravity().millimetres()).isCloseTo(0.5 * (100 + moved), within(1e-9));
    PitchModel there = MODEL.withAirframe(balance.airframe());
    assertThat(there.staticMargin(balance.centreOfGravity()).value()).isCloseTo(0.15, within(1e-9));
    assertThat(balance.findings()).isEmpty();
    assertThat(balance.range().interval().contains(balance.station().si())).isTrue();
  }

  @Test
  void moving_the_wing_aft_makes_it_more_stable() {
    double less = spec().forMargin(0.08).station().si();
    double more = spec().forMargin(0.18).station().si();
    assertThat(more).isGreaterThan(less);
  }

  @Test
  void the_closed_form_is_near_for_small_moves() {
    WingStation.Balance a = spec().forMargin(0.14);
    WingStation.Balance b = spec().forMargin(0.15);
    PitchTerms t = MODEL.withAirframe(a.airframe()).terms();
    double tail =
        NeutralPoint.tailSlope(t.efficiency.value(), t.areaRatio.value(), t.tailSlope.value(), t.downwash.value());
    double share = t.wingSlope.value() / (t.wingSlope.value() + tail);
    double shift = WingStation.shift(0.01, t.chord.value(), share, 0.5);
    double solved = b.station().si() - a.station().si();
    // Downwash grows as the tail comes nearer; the closed form does not know it.
    assertThat(shift / solved).isBetween(0.6, 1.1);
  }

  @Test
  void ballast_does_what_the_travel_cannot() {
    WingStation.Balance balance =
        spec().massElsewhere(grams(20), millimetres(140)).travel(millimetres(80), millimetres(90)).forMargin(0.12);
    assertThat(balance.station().millimetres()).isCloseTo(90, within(1e-9));
    assertThat(balance.ballast().grams()).isBetween(0.1, 12.0);
    assertThat(balance.staticMargin().value()).isCloseTo(0.12, within(1e-9));
    assertThat(balance.mass().grams()).isCloseTo(40 + balance.ballast().grams(), within(1e-9));
    assertThat(balance.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE);
  }

  @Test
  void what_cannot_be_balanced_says_what_to_move() {
    WingStation.Balance balance =
        spec()
            .massElsewhere(grams(40), millimetres(180))
            .travel(millimetres(80), millimetres(85))
            .ballast(millimetres(60), grams(3))
            .forMargin(0.15);
    assertThat(balance.ballast().grams()).isCloseTo(3, within(1e-12));
    assertThat(balance.staticMargin().value()).isLessThan(0.15);
    assertThat(balance.findings().get(0).severity()).isEqualTo(Severity.SERIOUS);
    assertThat(balance.findings())
        .anySatisfy(
            f ->
                assertThat(f.message())
                    .contains("there is room for 3 g")
                    .contains("Give the wing more travel aft")
                    .contains("enlarge the tail"));
  }

  @Test
  void a_nose_heavy_model_is_not_ballasted_in_the_nose() {
    WingStation.Balance balance =
        spec().massElsewhere(grams(30), millimetres(40)).travel(millimetres(80), millimetres(100)).forMargin(0.1);
    assertThat(balance.station().millimetres()).isCloseTo(80, within(1e-9));
    assertThat(balance.ballast().si()).isZero();
    assertThat(balance.staticMargin().value()).isGreaterThan(0.1);
    assertThat(balance.findings()).anySatisfy(f -> assertThat(f.message()).contains("Move mass aft"));
  }

  @Test
  void ballast_goes_to_the_end_of_its_room_where_least_does() {
    WingStation tailHeavy = spec().massElsewhere(grams(20), millimetres(140)).travel(millimetres(80), millimetres(90));
    double fixed = tailHeavy.ballast(millimetres(30), grams(12)).forMargin(0.12).ballast().grams();
    double free = tailHeavy.ballast(millimetres(8), millimetres(30), grams(12)).forMargin(0.12).ballast().grams();
    assertThat(free).isLessThan(fixed);
    // A nose-heavy model takes it at the tail end.
    WingStation.Balance rear =
        spec()
            .massElsewhere(grams(30), millimetres(60))
            .travel(millimetres(80), millimetres(100))
            .ballast(millimetres(8), millimetres(310), grams(20))
            .forMargin(0.1);
    assertThat(rear.ballast().grams()).isPositive();
    assertThat(rear.staticMargin().value()).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void wing_station_and_tail_are_found_together() {
    // The tail ends with the fuselage and keeps its volume coefficient: its arm and area follow the wing.
    WingStation.Balance balance =
        spec()
            .refitting(
                a -> {
                  Tail level =
                      TailSizing.horizontal(a.wing())
                          .section(Models.PLATE)
                          .aspectRatio(3.5)
                          .taperRatio(0.8)
                          .volumeCoefficient(0.6)
                          .trailingEdgeAt(millimetres(320))
                          .solve()
                          .value();
                  return new Airframe(a.fuselage(), a.wing(), List.of(level, a.verticalTail().orElseThrow()));
                })
            .forMargin(0.15);
    Tail tail = balance.airframe().horizontalTail().orElseThrow();
    assertThat(TailVolume.of(tail, balance.airframe().wing())).isCloseTo(0.6, within(1e-10));
    assertThat(tail.placement().x().plus(tail.planform().rootChord()).millimetres()).isCloseTo(320, within(1e-6));
    assertThat(balance.staticMargin().value()).isCloseTo(0.15, within(1e-9));
    PitchModel there = MODEL.withAirframe(balance.airframe());
    assertThat(there.staticMargin(balance.centreOfGravity()).value()).isCloseTo(0.15, within(1e-9));
  }

  @Test
  void masses_may_come_as_statements() {
    MassStatement wing =
        MassStatement.of(
            MassItem.of("wing shell", grams(18), Placement.at(millimetres(103), Length.ZERO)),
            MassItem.of("wing joiner", grams(2), Placement.at(millimetres(103), Length.ZERO)));
    MassStatement rest = MassStatement.of(MassItem.of("rest", grams(20), Placement.at(millimetres(100), Length.ZERO)));
    double byStatement = spec().massOnWing(wing).massElsewhere(rest).forMargin(0.15).station().si();
    assertThat(byStatement).isCloseTo(spec().forMargin(0.15).station().si(), within(1e-12));
  }

  @Test
  void what_is_missing_or_wrong_is_named() {
    assertThatThrownBy(() -> WingStation.of(MODEL).forMargin(0.1))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("needs the mass on the wing and the mass elsewhere");
    assertThatThrownBy(() -> spec().travel(millimetres(90), millimetres(80)))
        .hasMessage("aftmost wing station must not be ahead of 90 mm, was 80 mm");
    assertThatThrownBy(() -> spec().ballast(Length.ZERO, grams(-1)))
        .hasMessage("most ballast must not be negative, was -1 g");
    assertThatThrownBy(() -> spec().massOnWing(grams(0), Length.ZERO))
        .hasMessage("mass on the wing must be positive, was 0 kg");
  }
}
