// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import static io.github.wingwright.core.quantity.Length.metres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.sun.management.ThreadMXBean;
import io.github.wingwright.core.performance.Flight;
import io.github.wingwright.core.performance.FlightEnd;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.performance.LaunchTrajectory;
import io.github.wingwright.core.performance.RangeMap;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.performance.TrackPoint;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.design.Briefs;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;

/** The invented glider of the tests of the loop, thrown. */
class PitchFlightTest {
  static final Design DESIGN = SizingLoop.of(Briefs.balanced()).solve();
  private static final PitchFlight MODEL = PitchFlight.of(DESIGN);
  private static final double GLIDE = MODEL.glideSpeed().orElseThrow().si();

  static Throw thrown(double speed, double degrees, double height) {
    return new Throw(Speed.metresPerSecond(speed), Angle.degrees(degrees), metres(height));
  }

  @Test
  void it_trims_where_the_design_says_it_does() {
    assertThat(MODEL.trimmedLift().orElseThrow()).isCloseTo(DESIGN.trim().liftCoefficient(), within(1e-7));
    assertThat(MODEL.decalage()).isEqualTo(DESIGN.trim().decalage());
    TrimmedPolar.Point point = polar().at(DESIGN.trim().liftCoefficient());
    assertThat(GLIDE).isCloseTo(point.speed().si(), withinPercentage(0.02));
    assertThat(MODEL.glideAngle().orElseThrow().si()).isCloseTo(point.angle().si(), withinPercentage(0.2));
  }

  private static TrimmedPolar polar() {
    return TrimmedPolar.of(
        DESIGN.pitchModel(),
        DESIGN.aircraft().centreOfGravity().x(),
        DESIGN.glide().drag(),
        DESIGN.aircraft().mass(),
        DESIGN.brief().air());
  }

  @Test
  void in_its_steady_glide_it_stays_in_it() {
    double gamma = MODEL.glideAngle().orElseThrow().si();
    Flight flight =
        MODEL.thrown(new Throw(Speed.metresPerSecond(GLIDE), Angle.radians(-gamma), metres(30)));
    assertThat(flight.track()).allSatisfy(p -> {
      assertThat(p.v()).isCloseTo(GLIDE, within(1e-9));
      assertThat(p.gamma()).isCloseTo(-gamma, within(1e-9));
    });
    assertThat(flight.distance().si()).isCloseTo(30.0 / Math.tan(gamma), within(1e-7));
    assertThat(flight.swings().turns()).isZero();
    assertThat(flight.findings()).isEmpty();
  }

  @Test
  void more_decalage_trims_for_more_lift_and_slower_flight_until_it_does_not_trim() {
    double before = 0.0;
    double speed = 1e9;
    for (int i = -3; i <= 1; i++) {
      PitchFlight set = MODEL.withDecalage(Angle.degrees(MODEL.decalage().degrees() + i));
      assertThat(set.trimmedLift().orElseThrow()).isGreaterThan(before);
      assertThat(set.glideSpeed().orElseThrow().si()).isLessThan(speed);
      before = set.trimmedLift().orElseThrow();
      speed = set.glideSpeed().orElseThrow().si();
    }
    PitchFlight far = MODEL.withDecalage(Angle.degrees(29));
    assertThat(far.trimmedLift()).isEmpty();
    assertThat(far.glideSpeed()).isEmpty();
    assertThat(far.thrown(thrown(7, 0, 1.5)).firstStall()).as("it flies all the same, and stalls").isPresent();
  }

  @Test
  void it_goes_about_as_far_as_a_point_on_its_own_trimmed_polar_when_nothing_stalls() {
    LaunchTrajectory point =
        LaunchTrajectory.of(
            polar(),
            DESIGN.aircraft().airframe().wing().planform().area(),
            DESIGN.aircraft().mass(),
            DESIGN.brief().air(),
            DESIGN.trim().liftCoefficient());
    for (double degrees : new double[] {-15, -5, 0}) {
      Throw how = thrown(1.1 * GLIDE, degrees, 4);
      Flight pitch = MODEL.thrown(how);
      assertThat(pitch.firstStall()).isEmpty();
      assertThat(pitch.distance().si()).as("%s°", degrees).isCloseTo(point.thrown(how).distance().si(), withinPercentage(10));
    }
  }

  @Test
  void thrown_too_slowly_it_stalls_at_once_and_thrown_hard_and_up_it_stalls_on_top() {
    Flight slow = MODEL.thrown(thrown(0.75 * GLIDE, 0, 1.5));
    assertThat(slow.firstStall().orElseThrow().seconds()).isLessThan(0.3);
    Flight hard = MODEL.thrown(thrown(1.7 * GLIDE, 20, 1.5));
    TrackPoint stall = hard.firstStall().orElseThrow();
    assertThat(stall.seconds()).isGreaterThan(0.4);
    assertThat(stall.h()).isGreaterThan(2.0);
    assertThat(hard.stalledTime().si()).isPositive().isLessThan(hard.time().si());
    assertThat(hard.findings().get(0).message())
        .contains("It stalls ", "Launch it slower or lower, or move the centre of gravity forward.");
    Flight good = MODEL.thrown(new Throw(Speed.metresPerSecond(GLIDE), Angle.degrees(-7), metres(1.5)));
    assertThat(good.firstStall()).isEmpty();
  }

  @Test
  void it_meets_ceiling_and_wall() {
    PitchFlight inside = MODEL.in(Hall.of(metres(9), metres(3)));
    Flight up = inside.thrown(thrown(2.0 * GLIDE, 30, 1.5));
    assertThat(up.end()).isEqualTo(FlightEnd.CEILING);
    assertThat(up.track().get(up.track().size() - 1).h()).isCloseTo(3.0, within(1e-12));
    Flight along = inside.thrown(thrown(1.2 * GLIDE, -5, 1.5));
    assertThat(along.end()).isEqualTo(FlightEnd.WALL_AHEAD);
    assertThat(along.distance().si()).isCloseTo(9.0, within(1e-12));
  }

  @Test
  void a_following_wind_carries_it_farther_and_one_from_ahead_less_far() {
    Throw how = thrown(1.1 * GLIDE, 0, 1.5);
    double still = MODEL.thrown(how).distance().si();
    assertThat(MODEL.inWind(Speed.metresPerSecond(-1)).start(6, 0, 1)[2]).isGreaterThan(MODEL.start(6, 0, 1)[2]);
    assertThat(MODEL.inWind(Speed.metresPerSecond(0.5)).in(Hall.OUTDOORS).thrown(how).distance().si()).isNotEqualTo(still);
    PitchFlight wind = MODEL.inWind(Speed.metresPerSecond(0.5));
    double[] same = MODEL.start(1.1 * GLIDE, 0, 1.5);
    double[] rates = new double[6];
    double[] carried = new double[6];
    MODEL.equations().rates(same, rates);
    wind.equations().rates(same, carried);
    assertThat(carried[0]).isCloseTo(rates[0] + 0.5, within(1e-15));
    for (int i = 1; i < 6; i++) {
      assertThat(carried[i]).isEqualTo(rates[i]);
    }
  }

  @Test
  void how_it_is_held_changes_how_it_leaves_the_hand() {
    double[] level = MODEL.heldAt(Angle.ZERO).start(6, 0, 1.5);
    double[] nose = MODEL.heldAt(Angle.degrees(10)).start(6, 0, 1.5);
    assertThat(nose[5] - level[5]).isCloseTo(Math.toRadians(10), within(1e-12));
    assertThat(Math.hypot(nose[2], nose[3])).isCloseTo(6.0, within(1e-12));
    assertThat(MODEL.heldAt(Angle.degrees(25)).thrown(thrown(6, 0, 1.5)).firstStall().orElseThrow().seconds()).isZero();
  }

  @Test
  void the_map_is_the_same_on_any_number_of_threads_and_each_cell_is_a_flight() throws Exception {
    double[] speeds = RangeMap.evenly(0.7 * GLIDE, 2 * GLIDE, 12);
    double[] settings = RangeMap.evenly(MODEL.decalage().si() - 0.05, MODEL.decalage().si() + 0.05, 9);
    List<List<Double>> here = rows(MODEL.map(GlideGoal.DISTANCE, speeds, settings, 0.0, 1.5));
    for (int threads : new int[] {1, 3}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        assertThat(pool.submit(() -> rows(MODEL.map(GlideGoal.DISTANCE, speeds, settings, 0.0, 1.5))).get()).isEqualTo(here);
      } finally {
        pool.shutdown();
      }
    }
    Flight one =
        MODEL.withDecalage(Angle.radians(settings[3]))
            .thrown(Throw.level(Speed.metresPerSecond(speeds[5]), metres(1.5)));
    assertThat(here.get(3).get(5)).isEqualTo(one.distance().si());
  }

  private static List<List<Double>> rows(RangeMap map) {
    List<List<Double>> rows = new ArrayList<>();
    for (int i = 0; i < map.settings().size(); i++) {
      rows.add(map.row(i));
    }
    return rows;
  }

  @Test
  void a_step_allocates_nothing() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long me = Thread.currentThread().getId();
    for (int i = 0; i < 1000; i++) {
      MODEL.value(GlideGoal.DISTANCE, GLIDE, 1e-4 * i, 1.5);
    }
    long least = Long.MAX_VALUE;
    for (int i = 0; i < 20; i++) {
      long before = threads.getThreadAllocatedBytes(me);
      MODEL.value(GlideGoal.DISTANCE, GLIDE, 0.0, 1.5);
      long between = threads.getThreadAllocatedBytes(me);
      MODEL.value(GlideGoal.DISTANCE, GLIDE, 0.0, 40.0);
      long after = threads.getThreadAllocatedBytes(me);
      least = Math.min(least, Math.abs((after - between) - (between - before)));
    }
    assertThat(least).isLessThan(64L);
  }

  @Test
  void what_cannot_be_set_is_refused() {
    assertThatThrownBy(() -> MODEL.withDecalage(Angle.degrees(31)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("decalage");
    assertThatThrownBy(() -> MODEL.heldAt(Angle.degrees(-46))).isInstanceOf(IllegalArgumentException.class);
    assertThat(MODEL.toString()).hasSizeLessThanOrEqualTo(75);
  }
}
