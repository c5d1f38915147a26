// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Speed.metresPerSecond;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import org.junit.jupiter.api.Test;

class BestThrowTest {
  private static LaunchTrajectory model(double parasite, double grams) {
    DragLaw drag =
        new DragLaw() {
          @Override
          public double likelyCoefficient(double lift, double speed, double viscosity) {
            return parasite + 0.06 * lift * lift;
          }

          @Override
          public double usableLift(double unitSpeed, double viscosity) {
            return 0.85;
          }
        };
    return LaunchTrajectory.of(
        drag, Area.squareCentimetres(350), Mass.grams(grams), Atmosphere.standard().at(Length.ZERO), 0.5);
  }

  private static double best(GlideGoal goal, double parasite, double grams) {
    LaunchTrajectory model = model(parasite, grams);
    return BestThrow.of(goal, metresPerSecond(6.5), metres(1.5), 0.15, 0.85, model::atLift).value();
  }

  @Test
  void it_is_no_less_than_what_a_fine_scan_over_angle_finds_at_its_setting_nor_than_the_steady_glide() {
    LaunchTrajectory model = model(0.045, 45);
    BestThrow best = BestThrow.of(GlideGoal.DISTANCE, metresPerSecond(6.5), metres(1.5), 0.15, 0.85, model::atLift);
    ThrowAngles scan = model.atLift(best.setting()).bestAngles(GlideGoal.DISTANCE, metresPerSecond(6.5), metres(1.5));
    assertThat(best.value()).isGreaterThan(0.999 * scan.best().value());
    double flattest = 0.0;
    for (double cl = 0.2; cl <= 0.85; cl += 0.01) {
      flattest = Math.max(flattest, cl / (0.045 + 0.06 * cl * cl));
    }
    assertThat(best.value()).isGreaterThan(1.5 * flattest);
  }

  /** A price is a difference: over a sweep in steps of a tenth of a per cent of drag it must not be noise. */
  @Test
  void over_a_sweep_of_drag_it_falls_steadily_within_its_resolution() {
    for (GlideGoal goal : GlideGoal.values()) {
      double before = best(goal, 0.045, 45);
      double worst = 0.0;
      double first = before;
      for (int i = 1; i <= 40; i++) {
        double now = best(goal, 0.045 * (1.0 + 0.001 * i), 45);
        worst = Math.max(worst, (now - before) / before);
        before = now;
      }
      assertThat(worst).as("%s: greatest rise where it must fall", goal).isLessThan(BestThrow.RESOLUTION);
      assertThat(before).isLessThan(first);
    }
  }

  @Test
  void what_cannot_be_is_refused() {
    LaunchTrajectory model = model(0.045, 45);
    assertThatThrownBy(() -> BestThrow.of(GlideGoal.DISTANCE, metresPerSecond(-1), metres(1), 0.2, 0.8, model::atLift))
        .hasMessageContaining("throw speed");
    assertThatThrownBy(() -> BestThrow.of(GlideGoal.DISTANCE, metresPerSecond(6), metres(1), 0.8, 0.2, model::atLift))
        .hasMessageContaining("greatest setting");
    Hall low = Hall.OUTDOORS.withCeiling(metres(0.001));
    assertThatThrownBy(() -> model.in(low).value(GlideGoal.DISTANCE, 6, 0, 1.5)).hasMessageContaining("below the ceiling");
    for (double bad : new double[] {Double.NaN, -1, 0, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> model.value(GlideGoal.DISTANCE, bad, 0, 1.5)).isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> model.stalledTime(6, 0, bad)).isInstanceOf(IllegalArgumentException.class);
    }
    assertThatThrownBy(() -> model.value(GlideGoal.DISTANCE, 6, 3, 1.5)).hasMessageContaining("throw angle");
    assertThatThrownBy(() -> model.atLift(1e9)).hasMessageContaining("lift coefficient");
    assertThatThrownBy(() -> model.advice(Throw.level(metresPerSecond(6), metres(1))).add(null)).isNotNull();
    assertThat(model.thrown(Throw.level(metresPerSecond(500), metres(1.5))).findings())
        .anyMatch(f -> f.subject().equals("launch speed"));
  }
}
