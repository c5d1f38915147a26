// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ParabolicGlideTest {
  /** Half a unit of the last of six decimals, of a sink rate of 0.22 m/s. */
  private static final double PERCENT = 2.5e-4;

  @ParameterizedTest
  @MethodSource("glides")
  void best_glide_and_least_sink_are_the_computed_ones(PublishedValues.Row row) {
    double cd0 = row.number("cd0");
    double k = row.number("k");
    double p = row.number("weight_over_area_Pa");
    double rho = row.number("density");
    double best = ParabolicGlide.bestGlideLift(cd0, k);
    double angle = SteadyGlide.angle(cd0 + k * best * best, best);
    close(best, row, "best_lift");
    close(ParabolicGlide.greatestLiftToDrag(cd0, k), row, "best_ratio");
    close(Math.toDegrees(angle), row, "best_angle_deg");
    close(SteadyGlide.levelSpeed(p, rho, best), row, "best_speed_small");
    close(SteadyGlide.speed(p, angle, rho, best), row, "best_speed_exact");
    double small = ParabolicGlide.leastSinkLift(cd0, k);
    double smallSpeed = SteadyGlide.levelSpeed(p, rho, small);
    close(small, row, "sink_lift_small");
    close(smallSpeed, row, "sink_speed_small");
    close(smallSpeed * (cd0 + k * small * small) / small, row, "sink_small");
    double exact = ParabolicGlide.leastSinkLiftExact(cd0, k);
    close(exact, row, "sink_lift_exact");
    close(GlideKernel.sinkRate(exact, cd0 + k * exact * exact, p, rho), row, "sink_exact");
  }

  private static void close(double value, PublishedValues.Row row, String column) {
    assertThat(value).as("%s of %s", column, row).isCloseTo(row.number(column), withinPercentage(PERCENT));
  }

  static Stream<PublishedValues.Row> glides() {
    return PublishedValues.beside(ParabolicGlideTest.class, "glide.csv").rows();
  }

  @Test
  void the_closed_forms_are_where_a_search_finds_the_optimum() {
    Seeded.points(1, 100, new double[] {0.008, 0.08}, new double[] {0.02, 0.12})
        .forEach(
            p -> {
              double cd0 = p[0];
              double k = p[1];
              Minimum glide = Minimum.within(cl -> (cd0 + k * cl * cl) / cl, 0.05, 4, Tolerance.relative(1e-9));
              Minimum sink =
                  Minimum.within(cl -> GlideKernel.sinkRate(cl, cd0 + k * cl * cl, 20, 1.2), 0.05, 6, Tolerance.relative(1e-9));
              assertThat(ParabolicGlide.bestGlideLift(cd0, k)).isCloseTo(glide.argument(), withinPercentage(1e-5));
              assertThat(ParabolicGlide.leastSinkLiftExact(cd0, k)).isCloseTo(sink.argument(), withinPercentage(1e-5));
            });
  }

  @Test
  void least_sink_is_flown_at_a_fixed_part_of_the_best_glide_speed_and_ratio() {
    double best = ParabolicGlide.bestGlideLift(0.03, 0.05);
    double slow = ParabolicGlide.leastSinkLift(0.03, 0.05);
    assertThat(SteadyGlide.levelSpeed(20, 1.2, slow) / SteadyGlide.levelSpeed(20, 1.2, best))
        .isCloseTo(Math.pow(3.0, -0.25), within(1e-14));
    assertThat(slow / (0.03 + 0.05 * slow * slow) / ParabolicGlide.greatestLiftToDrag(0.03, 0.05))
        .isCloseTo(0.5 * Math.sqrt(3.0), within(1e-14));
  }

  @Test
  void a_glider_too_draggy_for_a_least_sink_has_none() {
    assertThat(ParabolicGlide.leastSinkLiftExact(0.2, 0.2)).isNaN();
  }

  @Test
  void the_documented_examples_hold() {
    assertThat(ParabolicGlide.bestGlideLiftAboutLeastDrag(0.03, 0.06, 0.3)).isCloseTo(0.768115, within(5e-7));
    assertThat(SteadyGlide.angle(0.1, 0.7)).isCloseTo(0.141897, within(5e-7));
    assertThat(SteadyGlide.speed(7.84532, Math.toRadians(7.423477), 1.225, 0.767495)).isCloseTo(4.068055, within(5e-6));
    assertThat(SteadyGlide.sinkRate(4, 0.1)).isCloseTo(0.399334, within(5e-7));
    assertThat(SteadyGlide.levelSpeed(26.5, 1.2, 0.8)).isCloseTo(7.43023, within(5e-6));
    assertThat(SteadyGlide.weightOverArea(0.03, 9.80665, 0.02)).isCloseTo(14.709975, within(1e-9));
    assertThat(SteadyGlide.distance(1.8, 7)).isCloseTo(12.6, within(1e-12));
    assertThat(SteadyGlide.bankedSpeedFactor(Math.toRadians(60))).isCloseTo(1.41421356, within(5e-9));
    assertThat(SteadyGlide.bankedSinkFactor(Math.toRadians(60))).isCloseTo(2.82842712, within(5e-9));
    assertThat(SteadyGlide.bankedSinkFactor(Math.toRadians(30))).isCloseTo(1.24080648, within(5e-9));
    assertThat(SteadyGlide.turnRadius(5, 9.80665, Math.toRadians(30))).isCloseTo(4.41550, within(5e-6));
  }
}
