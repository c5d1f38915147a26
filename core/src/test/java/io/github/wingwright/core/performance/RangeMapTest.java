// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.management.ThreadMXBean;
import io.github.wingwright.core.quantity.Angle;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;

class RangeMapTest {
  private static final double[] SPEEDS = RangeMap.evenly(3, 12, 40);
  private static final double[] LIFTS = RangeMap.evenly(0.3, 1.2, 25);

  private static List<List<Double>> map() {
    RangeMap map = Flights.trimmed(5.0, 0.12).map(GlideGoal.DISTANCE, SPEEDS, LIFTS, 0.1, 1.5);
    List<List<Double>> rows = new ArrayList<>();
    for (int i = 0; i < LIFTS.length; i++) {
      rows.add(map.row(i));
    }
    return rows;
  }

  @Test
  void the_map_is_the_same_to_the_bit_on_any_number_of_threads() throws Exception {
    List<List<Double>> here = map();
    for (int threads : new int[] {1, 2, 7}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        assertThat(pool.submit(RangeMapTest::map).get()).as("%s threads", threads).isEqualTo(here);
      } finally {
        pool.shutdown();
      }
    }
  }

  @Test
  void each_cell_is_the_flight_of_its_own() {
    LaunchTrajectory model = Flights.trimmed(5.0, 0.12);
    RangeMap map = model.map(GlideGoal.DURATION, SPEEDS, LIFTS, 0.1, 1.5);
    double one = model.atLift(LIFTS[7]).thrown(Flights.thrown(SPEEDS[13], 0, 1.5).at(Angle.radians(0.1))).time().si();
    assertThat(map.value(7, 13)).isEqualTo(one);
    assertThat(map).hasToString("map of 1000 flights, 40 launch speeds by 25 settings");
  }

  /** A flight from ten times as high has many more steps and costs not a byte more. */
  @Test
  void a_step_allocates_nothing() {
    LaunchTrajectory model = Flights.trimmed(5.0, 0.12);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long me = Thread.currentThread().getId();
    for (int i = 0; i < 2000; i++) {
      model.value(GlideGoal.DISTANCE, 6.0, 1e-4 * i, 1.5);
    }
    long least = Long.MAX_VALUE;
    for (int i = 0; i < 20; i++) {
      long before = threads.getThreadAllocatedBytes(me);
      model.value(GlideGoal.DISTANCE, 6.0, 0.0, 1.5);
      long between = threads.getThreadAllocatedBytes(me);
      model.value(GlideGoal.DISTANCE, 6.0, 0.0, 60.0);
      long after = threads.getThreadAllocatedBytes(me);
      least = Math.min(least, Math.abs((after - between) - (between - before)));
    }
    assertThat(least).isLessThan(64L);
  }

  @Test
  void a_map_that_cannot_be_is_refused() {
    assertThatThrownBy(() -> RangeMap.of(new double[] {1}, LIFTS, y -> x -> x))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("launch speeds must be at least two, got 1");
    assertThatThrownBy(() -> RangeMap.of(SPEEDS, new double[] {2, 1}, y -> x -> x))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("settings must rise, were 2.0 then 1.0");
  }

  @Test
  void rows_and_columns_outside_the_map_are_refused_in_words() {
    RangeMap map = RangeMap.of(new double[] {5, 6, 7}, new double[] {1, 2}, setting -> speed -> setting * speed);
    assertThat(map.value(1, 2)).isEqualTo(14);
    assertThatThrownBy(() -> map.row(-1)).isInstanceOf(IllegalArgumentException.class).hasMessage("row must be 0 to 1, was -1");
    assertThatThrownBy(() -> map.value(2, 0)).isInstanceOf(IllegalArgumentException.class).hasMessage("row must be 0 to 1, was 2");
    assertThatThrownBy(() -> map.value(0, 3)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("column must be 0 to 2, was 3");
  }

  @Test
  void evenly_spaced_numbers_rise_from_number_to_number() {
    assertThatThrownBy(() -> RangeMap.evenly(Double.NaN, 0.5, 3)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("first number must be finite, was NaN");
    assertThatThrownBy(() -> RangeMap.evenly(1, 0.5, 3)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("last number must be above the first, was 0.5 after 1.0");
  }

  @Test
  void the_table_shows_both_ends_and_values_of_the_map_between() {
    RangeMap map = RangeMap.of(RangeMap.evenly(4, 12, 100), RangeMap.evenly(0.0, 0.1, 33), k -> v -> 100 * k + v);
    String[] lines = map.table("decalage, °", 180 / Math.PI).toString().split("\n");
    assertThat(lines).hasSize(12).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(75));
    assertThat(lines[0]).startsWith("decalage, °");
    assertThat(map.table().toString()).startsWith("settings down");
    assertThat(lines[1].trim()).startsWith("4.00").endsWith("12.0");
    assertThat(lines[2].trim().split(" +")).startsWith("0.00", "4.00").endsWith("12.0");
    assertThat(lines[11].trim().split(" +")).startsWith("5.73", "14.0").endsWith("22.0");
  }
}
