// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.CurvedPlatePolar;
import io.github.wingwright.core.aerodynamics.DragBuildUp;
import io.github.wingwright.core.aerodynamics.DragComponent;
import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.aerodynamics.FourDigitShape;
import io.github.wingwright.core.aerodynamics.FrictionModel;
import io.github.wingwright.core.aerodynamics.MeasuredPolar;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.core.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GlidePerformanceTest {
  private static final AirState HALL = AirState.of(Pressure.hectopascals(1000), Temperature.degreesCelsius(20));
  private static final Planform WING = Planform.tapered(Length.metres(0.4), Length.metres(0.06), Length.metres(0.045));
  private static final DragBuildUp REST =
      DragBuildUp.about(WING.area())
          .with(
              DragComponent.body(
                  "body",
                  new Fuselage(BodyShape.capsule(), Length.millimetres(180), Length.millimetres(20)),
                  FrictionModel.laminar(),
                  BodyFormFactor.HOERNER_LAMINAR));
  private static final EstimatedPolar SECTION = EstimatedPolar.of(new FourDigitShape(0.04, 0.06));

  private static GlidePerformance glide(SectionPolar section, double grams) {
    return GlidePerformance.of(AircraftDrag.of(WING, section, 0.02, REST), Mass.grams(grams), HALL);
  }

  @Test
  void no_point_of_the_polar_beats_the_best_glide_or_sinks_slower_than_the_least() {
    GlidePerformance glide = glide(SECTION, 28);
    for (GlidePoint point : glide.polar(200)) {
      assertThat(point.liftToDrag()).isLessThanOrEqualTo(glide.bestGlide().liftToDrag() * (1 + 1e-9));
      assertThat(point.sinkRate().si()).isGreaterThanOrEqualTo(glide.leastSink().sinkRate().si() * (1 - 1e-9));
    }
  }

  @Test
  void at_every_point_the_forces_balance() {
    GlidePerformance glide = glide(SECTION, 28);
    double rho = HALL.density().si();
    double weight = 0.028 * 9.80665;
    for (GlidePoint point : glide.polar(20)) {
      double q = 0.5 * rho * point.speed().si() * point.speed().si() * WING.area().si();
      assertThat(q * point.liftCoefficient()).isCloseTo(weight * point.angle().cosine(), within(1e-9));
      assertThat(q * point.dragCoefficient()).isCloseTo(weight * point.angle().sine(), within(1e-9));
      assertThat(point.dragCoefficient())
          .as("drag at the speed of the point itself")
          .isCloseTo(
              glide.drag().likelyCoefficient(point.liftCoefficient(), point.speed().si(), HALL.kinematicViscosity().si()),
              within(1e-12));
    }
  }

  @Test
  void an_optimum_at_the_end_of_the_polar_says_so_and_the_closed_form_would_lie_behind_the_stall() {
    GlidePerformance glide = glide(EstimatedPolar.of(new FourDigitShape(0.06, 0.12)), 14);
    assertThat(glide.leastSink().liftCoefficient()).isCloseTo(glide.usableLift(), within(1e-6));
    assertThat(glide.findings())
        .filteredOn(finding -> finding.subject().equals("least sink"))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.message()).startsWith("The least sink lies at the usable lift, C_L 0.8, where");
              assertThat(finding.measure()).as("0.8 at most 0.8 says nothing").isEmpty();
            });
    double cd0 = glide.leastSink().dragCoefficient() - 0.64 / (Math.PI * WING.aspectRatio());
    assertThat(ParabolicGlide.leastSinkLift(cd0, 1.0 / (Math.PI * WING.aspectRatio()))).isGreaterThan(1.5);
    assertThatThrownBy(() -> glide.at(1.01 * glide.usableLift())).hasMessageContaining("at most the usable 0.8");
  }

  @Test
  void a_double_humped_polar_is_searched_over_its_whole_length() {
    // the drag bucket at 0.8 gives the better glide, the one at 0.35 is the first that a downhill search would meet
    List<MeasuredPolar.Point> points = new ArrayList<>();
    double[] lift = {-0.2, 0.0, 0.3, 0.35, 0.4, 0.6, 0.75, 0.8, 0.85, 1.0};
    double[] drag = {0.06, 0.05, 0.04, 0.02, 0.04, 0.05, 0.05, 0.02, 0.05, 0.07};
    for (int i = 0; i < lift.length; i++) {
      points.add(MeasuredPolar.Point.of(3e4, lift[i], drag[i]));
    }
    MeasuredPolar humped = MeasuredPolar.of("humped", Source.library("invented for the test"), points, SECTION);
    assertThat(glide(humped, 28).bestGlide().liftCoefficient()).isCloseTo(0.8, within(1e-3));
  }

  @Test
  void the_ratio_is_a_band_about_its_likely_value() {
    Band ratio = glide(SECTION, 28).greatestLiftToDrag();
    assertThat(ratio.likely()).isEqualTo(glide(SECTION, 28).bestGlide().liftToDrag());
    assertThat(ratio.low()).isLessThan(0.95 * ratio.likely());
    assertThat(ratio.high()).isGreaterThan(1.05 * ratio.likely());
    assertThat(glide(SECTION, 28).distanceFrom(Length.metres(1.8)).likely().metres()).isCloseTo(1.8 * ratio.likely(), within(1e-12));
  }

  @Test
  void the_stall_speed_goes_with_the_square_root_of_the_mass() {
    assertThat(glide(SECTION, 40).stallSpeed().si() / glide(SECTION, 10).stallSpeed().si()).isCloseTo(2.0, within(1e-6));
    GlidePerformance glide = glide(SECTION, 28);
    double q = 0.5 * HALL.density().si() * Math.pow(glide.stallSpeed().si(), 2) * WING.area().si();
    assertThat(q * glide.usableLift()).isCloseTo(0.028 * 9.80665, within(1e-9));
    assertThat(glide.stallSpeedBand().low()).isLessThan(glide.stallSpeed());
    assertThat(glide.stallSpeedBand().high()).isGreaterThan(glide.stallSpeed());
  }

  @Test
  void a_solid_wing_does_not_fly_for_a_gentle_toss_and_a_curved_plate_does() {
    // 2.7 kg/m² of a solid printed wing against 0.6 kg/m² of a plate of two walls
    GlidePerformance solid = glide(SECTION, 2700 * WING.area().si());
    ThrowCheck toss = solid.thrownAt(Speed.metresPerSecond(5));
    assertThat(toss.verdict()).isEqualTo(ThrowCheck.Verdict.DOES_NOT_FLY);
    assertThat(toss.findings().get(0).severity()).isEqualTo(Severity.SERIOUS);
    GlidePerformance plate = glide(CurvedPlatePolar.of(0.05, 0.018), 600 * WING.area().si());
    assertThat(plate.thrownAt(Speed.metresPerSecond(5)).verdict()).isEqualTo(ThrowCheck.Verdict.FLIES);
  }

  @Test
  void the_verdict_changes_at_the_stall_and_at_the_margin() {
    assertThat(ThrowCheck.verdict(4.99, 5.0)).isEqualTo(ThrowCheck.Verdict.DOES_NOT_FLY);
    assertThat(ThrowCheck.verdict(5.0, 5.0)).isEqualTo(ThrowCheck.Verdict.MARGINAL);
    assertThat(ThrowCheck.verdict(6.0, 5.0)).isEqualTo(ThrowCheck.Verdict.FLIES);
    ThrowCheck hard = glide(SECTION, 20).thrownAt(Speed.metresPerSecond(15));
    assertThat(hard.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE);
    assertThat(hard.loadFactor()).isGreaterThan(4.0);
  }

  @Test
  void the_figure_of_merit_is_metres_or_seconds() {
    GlidePerformance glide = glide(SECTION, 28);
    assertThat(GlideGoal.DISTANCE.of(glide, Length.metres(2))).isCloseTo(2.0 * glide.bestGlide().liftToDrag(), within(1e-12));
    assertThat(GlideGoal.DURATION.of(glide, Length.metres(2)))
        .isCloseTo(2.0 / glide.leastSink().sinkRate().si(), within(1e-12));
  }

  @Test
  void what_cannot_fly_is_refused() {
    assertThatThrownBy(() -> glide(SECTION, 0)).hasMessageContaining("mass must be positive, was 0");
    assertThatThrownBy(() -> glide(SECTION, 20).thrownAt(Speed.metresPerSecond(-1))).hasMessageContaining("throw speed must be positive, was -1");
    assertThatThrownBy(() -> glide(SECTION, 20).distanceFrom(Length.metres(-1))).hasMessageContaining("height must not be negative, was -1");
  }

  @Test
  void the_workings_give_the_numbers_of_the_sheet_to_the_bit() {
    List<SectionPolar> sections =
        List.of(SECTION, CurvedPlatePolar.of(0.05, 0.018), EstimatedPolar.of(new FourDigitShape(0.06, 0.12)));
    for (SectionPolar section : sections) {
      GlidePerformance glide = glide(section, 28);
      GlideWorkings workings = glide.workings();
      assertThat(workings.stallSpeed().value()).isEqualTo(glide.stallSpeed().si());
      assertThat(workings.bestGlideSpeed().value()).isEqualTo(glide.bestGlide().speed().si());
      assertThat(workings.bestLiftToDrag().value()).isEqualTo(glide.bestGlide().liftToDrag());
      assertThat(workings.leastSinkRate().value()).isEqualTo(glide.leastSink().sinkRate().si());
      assertThat(workings.all().toString()).contains("c_d + (C_Di + C_D0)", "C_f·FF·Q·S_wet", "m·g / S");
    }
  }

  @Test
  void in_a_turn_the_forces_balance_in_all_three_directions() {
    GlidePerformance glide = glide(SECTION, 28);
    double weight = 0.028 * 9.80665;
    for (double degrees : new double[] {5, 20, 45, 70}) {
      Angle bank = Angle.degrees(degrees);
      GlideTurn turn = glide.turning(0.7, bank);
      GlidePoint along = turn.glide();
      double q = 0.5 * HALL.density().si() * along.speed().si() * along.speed().si() * WING.area().si();
      double horizontal = along.speed().si() * along.angle().cosine();
      assertThat(q * 0.7 * bank.cosine()).isCloseTo(weight * along.angle().cosine(), within(1e-9));
      assertThat(q * along.dragCoefficient()).isCloseTo(weight * along.angle().sine(), within(1e-9));
      assertThat(q * 0.7 * bank.sine()).isCloseTo(0.028 * horizontal * horizontal / turn.radius().si(), within(1e-9));
    }
  }

  @Test
  void a_turn_costs_what_the_shallow_factors_say_but_for_the_gain_in_reynolds_number() {
    GlidePerformance glide = glide(SECTION, 28);
    GlidePoint straight = glide.at(0.6);
    GlidePoint turn = glide.turning(0.6, Angle.degrees(30)).glide();
    assertThat(turn.speed().si() / straight.speed().si()).isCloseTo(SteadyGlide.bankedSpeedFactor(Math.toRadians(30)), within(0.01));
    assertThat(turn.sinkRate().si() / straight.sinkRate().si())
        .isLessThan(SteadyGlide.bankedSinkFactor(Math.toRadians(30)))
        .isCloseTo(SteadyGlide.bankedSinkFactor(Math.toRadians(30)), within(0.07));
    assertThat(GlideTurn.helixRadius(5, 0, 9.80665, Math.toRadians(30))).isCloseTo(4.41550, within(5e-6));
    assertThatThrownBy(() -> glide.turning(0.6, Angle.degrees(80))).hasMessageContaining("bank must be above 0° and at most 75°");
  }

  @Test
  void a_polar_has_neither_one_point_nor_a_thousand_million() {
    GlidePerformance glide = glide(SECTION, 28);
    for (int points : new int[] {-1, 1, Integer.MAX_VALUE}) {
      assertThatIllegalArgumentException().isThrownBy(() -> glide.polar(points))
          .withMessage("number of points must be 2 to 100000, was " + points);
    }
  }

  @Test
  void points_of_a_glide_and_of_a_flight_are_numbers() {
    Speed v = Speed.metresPerSecond(5);
    Angle a = Angle.degrees(5);
    assertThatIllegalArgumentException().isThrownBy(() -> new GlidePoint(0.5, Double.NaN, v, a, v, 3e4))
        .withMessage("drag coefficient must be finite, was NaN");
    assertThatIllegalArgumentException().isThrownBy(() -> new TrackPoint(0, 1, Double.NaN, 5, 0, false))
        .withMessage("height must be finite, was NaN");
    assertThatIllegalArgumentException().isThrownBy(() -> new Swings(2, Time.ZERO, Time.seconds(1).times(Double.POSITIVE_INFINITY), 0))
        .withMessage("time of the last turn must be finite, was ∞ s");
    assertThatIllegalArgumentException().isThrownBy(() -> new Swings(-1, Time.ZERO, Time.ZERO, 0)).withMessageContaining("number of turns");
    assertThatIllegalArgumentException().isThrownBy(() -> new ThrowOptimum(a, 12, Double.NaN, GlideGoal.DISTANCE))
        .withMessage("least value nearby must be finite, was NaN");
  }

  @Test
  void a_glide_is_told_in_the_unit_of_its_reader() {
    GlidePerformance glide = glide(SECTION, 28);
    String speed = glide.bestGlide().speed().format(Speed.FOOT_PER_SECOND, 3);
    assertThat(glide.bestGlide().format(Speed.FOOT_PER_SECOND)).contains(" at " + speed + ", sink ").doesNotContain("m/s");
    assertThat(glide.format(Speed.METRE_PER_SECOND)).isEqualTo(glide.toString());
  }
}
