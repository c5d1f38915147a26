// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import java.util.Objects;

/**
 * The classical method of Runge and Kutta for ẏ = f(y), of fourth order, without allocation.
 *
 * <pre>{@code
 * k₁ = f(y)   k₂ = f(y + ½·h·k₁)   k₃ = f(y + ½·h·k₂)   k₄ = f(y + h·k₃)
 * y(t + h) = y + h/6·(k₁ + 2·k₂ + 2·k₃ + k₄)
 * }</pre>
 *
 * <p>The error of a step goes as h⁵, that of a whole motion as h⁴. It is stable for a motion that dies out as e^(−λ·t) as
 * long as λ·h stays below 2.78; a tenth of that is accurate.
 *
 * <p>Source: M. Abramowitz, I. A. Stegun, <i>Handbook of Mathematical Functions</i>, formula 25.5.10 (from memory); the order
 * is held by a test.
 */
public final class RungeKutta {
  private RungeKutta() {}

  /** The right-hand side f of a system of equations that do not depend on time otherwise. */
  @FunctionalInterface
  public interface Rates {
    /**
     * Rates of change at a state.
     *
     * @param state y, not to be changed
     * @param rates where f(y) goes, as long
     */
    void at(double[] state, double[] rates);
  }

  /** What {@link #step} works in, one for each thread that makes steps. */
  public static final class Work {
    private final double[] k2;
    private final double[] k3;
    private final double[] k4;
    private final double[] trial;

    /**
     * Room for a system.
     *
     * @param size number of states, positive
     */
    public Work(int size) {
      k2 = new double[size];
      k3 = new double[size];
      k4 = new double[size];
      trial = new double[size];
    }
  }

  /**
   * One step.
   *
   * @param system the right-hand side
   * @param state y at the start
   * @param rates f(y) at the start
   * @param h length of the step
   * @param next where y at the end goes; another array than {@code state}
   * @param work what it works in
   */
  public static void step(Rates system, double[] state, double[] rates, double h, double[] next, Work work) {
    Objects.requireNonNull(system, "system");
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(rates, "rates");
    Objects.requireNonNull(next, "next");
    Objects.requireNonNull(work, "work");
    double[] trial = work.trial;
    int n = state.length;
    for (int i = 0; i < n; i++) {
      trial[i] = state[i] + 0.5 * h * rates[i];
    }
    system.at(trial, work.k2);
    for (int i = 0; i < n; i++) {
      trial[i] = state[i] + 0.5 * h * work.k2[i];
    }
    system.at(trial, work.k3);
    for (int i = 0; i < n; i++) {
      trial[i] = state[i] + h * work.k3[i];
    }
    system.at(trial, work.k4);
    for (int i = 0; i < n; i++) {
      next[i] = state[i] + h / 6.0 * (rates[i] + 2.0 * (work.k2[i] + work.k3[i]) + work.k4[i]);
    }
  }
}
