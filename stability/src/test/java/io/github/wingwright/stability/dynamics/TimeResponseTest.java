// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TimeResponseTest {
  @Test
  void a_roll_rate_alone_dies_out_exponentially() {
    double[][] a = {{-1, 0, 0, 0}, {0, -4, 0, 0}, {0, 0, -2, 0}, {0, 1, 0, 0}};
    TimeResponse motion = StateMatrix.lateral(a, 10).response(new double[] {0, 1, 0, 0}, 2, 50);
    for (int i = 0; i < motion.size(); i++) {
      double t = motion.time(i);
      assertThat(motion.state(i, 1)).isCloseTo(Math.exp(-4 * t), within(1e-13));
      assertThat(motion.state(i, 3)).isCloseTo((1 - Math.exp(-4 * t)) / 4, within(1e-13));
    }
    assertThat(motion.time(50)).isCloseTo(2, within(1e-14));
  }

  @Test
  void a_held_input_leads_to_its_steady_state() {
    double[][] a = {{-1, 0, 0, 0}, {0, -4, 0, 0}, {0, 0, -2, 0}, {0, 0, 0, -1}};
    TimeResponse motion =
        StateMatrix.lateral(a, 10).response(new double[4], new double[] {0, 2, 0, 0}, 10, 20);
    assertThat(motion.state(20, 1)).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void the_length_of_the_step_does_not_change_the_motion() {
    StateMatrix jet = JetTransportTest.printed("longitudinal");
    double[] gust = {0, 10, 0, 0};
    TimeResponse coarse = jet.response(gust, 100, 10);
    TimeResponse fine = jet.response(gust, 100, 1000);
    for (int c = 0; c < 4; c++) {
      assertThat(coarse.state(7, c)).isCloseTo(fine.state(700, c), within(1e-9));
    }
  }

  @Test
  void after_one_period_a_phugoid_is_back_and_damped() {
    StateMatrix jet = JetTransportTest.printed("longitudinal");
    Mode phugoid = jet.modes().find(ModeKind.PHUGOID).orElseThrow();
    double period = phugoid.period().orElseThrow().seconds();
    TimeResponse motion = jet.response(new double[] {10, 0, 0, 0}, 2 * period, 2);
    assertThat(motion.state(2, 0) / motion.state(1, 0))
        .isCloseTo(Math.exp(phugoid.real() * period), within(1e-6));
  }

  @Test
  void bad_requests_are_refused() {
    StateMatrix jet = JetTransportTest.printed("lateral");
    assertThatIllegalArgumentException().isThrownBy(() -> jet.response(new double[3], 1, 1))
        .withMessage("a state and an input must have 4 values, had 3 and 4");
    assertThatIllegalArgumentException().isThrownBy(() -> jet.response(new double[4], 0, 1))
        .withMessage("duration must be positive, was 0.00000 s");
    assertThatIllegalArgumentException().isThrownBy(() -> jet.response(new double[4], 1, 0))
        .withMessageContaining("number of steps");
  }
}
