// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MissionTest {
  @Test
  void the_glide_is_the_height_times_the_best_lift_to_drag() {
    // (L/D)max = 1/(2·√(C_D0·K)) with K = 1/(π·A·e) (restated from Raymer, eqs 17.13 and 17.62).
    double area = 0.04;
    double parasite = 0.05;
    double k = 1 / (Math.PI * 7 * 0.8);
    double best = 1 / (2 * Math.sqrt(parasite * k));
    assertThat(Mission.glide(2, 7, 0.8, area, parasite * area)).isCloseTo(2 * best, within(1e-12));
  }

  @Test
  void the_drag_is_least_where_both_parts_are_equal() {
    double q = 2.0 * 9.80665 / Math.sqrt(0.01 * Math.PI * 8 * 0.8 * 0.4);
    double least = Mission.drag(q, 0.01, 2, 8, 0.8, 0.4);
    assertThat(least).isCloseTo(2 * q * 0.01, within(1e-12));
    assertThat(Mission.drag(1.1 * q, 0.01, 2, 8, 0.8, 0.4)).isGreaterThan(least);
    assertThat(Mission.drag(0.9 * q, 0.01, 2, 8, 0.8, 0.4)).isGreaterThan(least);
  }

  @Test
  void an_hour_takes_the_power_for_an_hour() {
    assertThat(Mission.endurance(36_000, 0.5, 0.5, 10)).isCloseTo(3_600, within(1e-9));
  }

  @Test
  void at_the_level_speed_thrust_and_drag_take_the_same_power() {
    BodyStudy study = FuselageRun.study(FuselageRun.brief("two-seat-tourer"));
    Mission mission = study.brief().mission();
    double v = study.figure().value();
    double q = 0.5 * study.brief().flight().air().density().si() * v * v;
    double all = study.dragArea().value() + mission.otherDragArea().si();
    double drag = Mission.drag(q, all, mission.mass(study.body()).si(), 7.6, 0.78, 11.2);
    assertThat(drag * v).isCloseTo(60_000 * 0.78, within(1e-6 * 60_000));
  }
}
