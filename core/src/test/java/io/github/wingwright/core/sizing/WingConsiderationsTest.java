// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static io.github.wingwright.core.sizing.WingConsiderations.aspectRatioWithin;
import static io.github.wingwright.core.sizing.WingConsiderations.fliesWhenThrown;
import static io.github.wingwright.core.sizing.WingConsiderations.piecesOfEachHalf;
import static io.github.wingwright.core.sizing.WingConsiderations.printableTrailingEdge;
import static io.github.wingwright.core.sizing.WingConsiderations.reynoldsNumberAtLeast;
import static io.github.wingwright.core.sizing.WingConsiderations.rootChordAtMost;
import static io.github.wingwright.core.sizing.WingConsiderations.rootThicknessAtLeast;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import org.junit.jupiter.api.Test;

class WingConsiderationsTest {
  private static final KinematicViscosity NU = KinematicViscosity.squareMetresPerSecond(1.5e-5);
  private static final Density AIR = Density.kilogramsPerCubicMetre(1.2);
  private static final Density PLA = Density.kilogramsPerCubicMetre(1240);
  private static final WingFrame FRAME = new WingFrame(0.4, 0.6, new BiconvexSection(0.06));

  @Test
  void each_one_bounds_the_chord_where_a_hand_calculation_does() {
    // 0.45 mm at 95 % of a tip chord of 0.75 mean chords: t/c there is 4·0.06·0.95·0.05 = 0.0114.
    assertThat(printableTrailingEdge(Length.millimetres(0.45), 0.95).meanChords(FRAME))
        .isEqualTo(Interval.atLeast(0.45e-3 / (FRAME.section().thickness(0.95) * 0.75)));
    assertThat(reynoldsNumberAtLeast(20_000, Speed.metresPerSecond(6), NU).meanChords(FRAME).lower())
        .isCloseTo(0.05, within(1e-15));
    assertThat(rootChordAtMost(Length.millimetres(100)).meanChords(FRAME).upper()).isCloseTo(0.08, within(1e-15));
    assertThat(aspectRatioWithin(5, 10, Source.BRIEF).meanChords(FRAME)).isEqualTo(Interval.between(0.04, 0.08));
    assertThat(rootThicknessAtLeast(Length.millimetres(4)).meanChords(FRAME).lower())
        .isCloseTo(4e-3 / 0.06 / 1.25, within(1e-15));
    assertThat(piecesOfEachHalf(Length.millimetres(200), 1).meanChords(FRAME)).isEqualTo(Interval.ALL);
    assertThat(piecesOfEachHalf(Length.millimetres(199), 1).meanChords(FRAME).isEmpty()).isTrue();
  }

  @Test
  void a_section_with_a_sharp_edge_is_printable_nowhere_at_the_edge_itself() {
    assertThat(printableTrailingEdge(Length.millimetres(0.45), 1.0).meanChords(FRAME).isEmpty()).isTrue();
  }

  @Test
  void the_chord_at_the_limit_stalls_just_below_the_throw() {
    Seeded.points(7, 200, new double[] {3, 12}, new double[] {1, 1.5}, new double[] {0.5, 1.2}, new double[] {0.01, 0.1})
        .forEach(
            p -> {
              Interval chords =
                  fliesWhenThrown(Speed.metresPerSecond(p[0]), p[1], p[2], AIR, Mass.kilograms(p[3])).meanChords(FRAME);
              double area = FRAME.span() * chords.lower();
              double stall = Math.sqrt(2.0 * p[3] * 9.80665 / (1.2 * area * p[2]));
              assertThat(stall * p[1]).isCloseTo(p[0], within(1e-12 * p[0]));
              assertThat(chords.upper()).isInfinite();
            });
  }

  @Test
  void a_solid_wing_can_be_too_large_for_its_thrower_as_well_as_too_small() {
    WingConsideration thrown =
        fliesWhenThrown(Speed.metresPerSecond(10), 1.2, 0.8, AIR, Mass.grams(10), PLA);
    Interval chords = thrown.meanChords(FRAME);
    assertThat(chords.lower()).isPositive();
    assertThat(chords.upper()).isFinite();
    for (double chord : new double[] {chords.lower(), chords.upper()}) {
      // By integration over the span: ∫c² dy of a tapered wing from its end chords.
      double root = 1.25 * chord;
      double tip = 0.75 * chord;
      double volume = 0.04 * 0.4 * (root * root + root * tip + tip * tip) / 3.0;
      double mass = 0.010 + 1240 * volume;
      double stall = Math.sqrt(2.0 * mass * 9.80665 / (1.2 * 0.4 * chord * 0.8));
      assertThat(1.2 * stall).isCloseTo(10, within(1e-10));
    }
    assertThat(
            fliesWhenThrown(Speed.metresPerSecond(3), 1.2, 0.8, AIR, Mass.grams(10), PLA).meanChords(FRAME).isEmpty())
        .as("a gentle toss carries no solid wing")
        .isTrue();
  }

  @Test
  void the_range_names_who_binds_and_the_wing_outside_a_guideline_has_its_price() {
    WingSizing sizing =
        WingSizing.forSpan(Length.millimetres(400))
            .aspectRatio(10)
            .taperRatio(0.6)
            .section(FRAME.section())
            .considering(
                reynoldsNumberAtLeast(20_000, Speed.metresPerSecond(6), NU), rootChordAtMost(Length.millimetres(100)));
    FeasibleRange range = sizing.meanChordRange();
    assertThat(range.interval().lower()).isCloseTo(0.05, within(1e-12));
    assertThat(range.interval().upper()).isCloseTo(0.08, within(1e-12));
    assertThat(range.lowerBinding().map(Bound::name)).contains("Reynolds number at least 20000 at 6 m/s");
    Sized<Wing> sized = sizing.solve();
    assertThat(sized.range().interval()).isEqualTo(range.interval());
    assertThat(sized.findings()).extracting(Finding::severity).containsExactly(Severity.CAUTION);
    assertThat(sized.isFeasible()).isTrue();
    List<Price> prices = sized.prices();
    assertThat(prices).extracting(Price::what).contains("wetted area", "thickness at the root");
    assertThat(prices.get(0).relativeChange()).as("0.04 m instead of 0.05 m of chord").isCloseTo(-0.2, within(1e-12));
    assertThat(prices.get(0).isGain()).isTrue();
    assertThat(prices.get(2).isGain()).isFalse();
  }

  @Test
  void a_limit_that_no_chord_meets_is_serious_and_no_exception() {
    Sized<Wing> sized =
        WingSizing.forSpan(Length.millimetres(400))
            .aspectRatio(7)
            .section(FRAME.section())
            .considering(piecesOfEachHalf(Length.millimetres(150), 1))
            .solve();
    assertThat(sized.isFeasible()).isFalse();
    assertThat(sized.findings().get(0).severity()).isEqualTo(Severity.SERIOUS);
    assertThat(sized.findings().get(0).message()).contains("holds for no chord at this span");
    assertThat(sized.range().impossible()).hasSize(1);
  }

  @Test
  void a_consideration_that_is_set_aside_is_shown_with_its_reason_and_takes_no_part() {
    WingConsideration pieces = piecesOfEachHalf(Length.millimetres(150), 1);
    Sized<Wing> sized =
        WingSizing.forSpan(Length.millimetres(400))
            .aspectRatio(7)
            .section(FRAME.section())
            .considering(pieces)
            .settingAside(pieces, "the club has a larger machine")
            .provisionally(rootChordAtMost(Length.millimetres(90)), "the bed is measured")
            .solve();
    assertThat(sized.isFeasible()).isTrue();
    assertThat(sized.range().toString())
        .contains("set aside because the club has a larger machine", "provisional until the bed is measured");
    assertThat(sized.findings()).extracting(Finding::severity).containsOnly(Severity.NOTE);
    assertThat(sized.findings()).hasSize(2);
  }

  @Test
  void nonsense_is_refused_by_name() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> piecesOfEachHalf(Length.millimetres(150), 0))
        .withMessage("pieces of each half must be at least 1, was 0");
    assertThatIllegalArgumentException().isThrownBy(() -> aspectRatioWithin(8, 5, Source.BRIEF));
    assertThatIllegalArgumentException().isThrownBy(() -> reynoldsNumberAtLeast(0, Speed.metresPerSecond(6), NU));
    assertThatIllegalArgumentException().isThrownBy(() -> printableTrailingEdge(Length.ZERO, 0.95));
  }
}
