// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

class RungeKuttaTest {
  private static double[] carried(RungeKutta.Rates system, double[] start, double time, int steps) {
    double[] state = start.clone();
    double[] rates = new double[start.length];
    double[] next = new double[start.length];
    RungeKutta.Work work = new RungeKutta.Work(start.length);
    for (int i = 0; i < steps; i++) {
      system.at(state, rates);
      RungeKutta.step(system, state, rates, time / steps, next, work);
      System.arraycopy(next, 0, state, 0, state.length);
    }
    return state;
  }

  private static void pendulum(double[] y, double[] rates) {
    rates[0] = y[1];
    rates[1] = -Math.sin(y[0]) - 0.1 * y[1];
  }

  @Test
  void a_cubic_in_time_is_carried_exactly() {
    double[] end = carried((y, r) -> {
      r[0] = 1.0;
      r[1] = 3.0 * y[0] * y[0];
    }, new double[] {0.0, 2.0}, 3.0, 4);
    assertThat(end[1]).isCloseTo(29.0, within(1e-13));
  }

  @Test
  void the_error_of_a_motion_goes_with_the_fourth_power_of_the_step() {
    RungeKutta.Rates swing = (y, r) -> {
      r[0] = y[1];
      r[1] = -y[0];
    };
    double coarse = Math.abs(carried(swing, new double[] {1.0, 0.0}, 2.0, 20)[0] - Math.cos(2.0));
    double fine = Math.abs(carried(swing, new double[] {1.0, 0.0}, 2.0, 40)[0] - Math.cos(2.0));
    assertThat(Math.log(coarse / fine) / Math.log(2.0)).isCloseTo(4.0, within(0.1));
  }

  @Test
  void a_damped_pendulum_agrees_with_another_integrator_of_eighth_order() {
    double[] other = new double[2];
    new DormandPrince853Integrator(1e-6, 0.1, 1e-13, 1e-13).integrate(new FirstOrderDifferentialEquations() {
      @Override
      public int getDimension() {
        return 2;
      }

      @Override
      public void computeDerivatives(double t, double[] y, double[] rates) {
        pendulum(y, rates);
      }
    }, 0.0, new double[] {2.5, 0.0}, 10.0, other);
    double[] own = carried(RungeKuttaTest::pendulum, new double[] {2.5, 0.0}, 10.0, 4000);
    assertThat(own[0]).isCloseTo(other[0], within(1e-11));
    assertThat(own[1]).isCloseTo(other[1], within(1e-11));
  }
}
