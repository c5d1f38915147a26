// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import java.util.Locale;

/**
 * The motion of a linear system after a disturbance, at equal steps of time.
 *
 * <p>Exact at the steps: the state is carried from one to the next by the matrix exponential, so the length of a step
 * changes how fine the curve is, not how true.
 */
public final class TimeResponse {
  private final double step;
  private final double[][] states;
  private final boolean lateral;

  private TimeResponse(double step, double[][] states, boolean lateral) {
    this.step = step;
    this.states = states;
    this.lateral = lateral;
  }

  static TimeResponse of(StateMatrix matrix, double[] initial, double[] input, double duration, int steps) {
    if (initial.length != 4 || input.length != 4) {
      throw new IllegalArgumentException("a state and an input must have 4 values, had " + initial.length
          + " and " + input.length);
    }
    for (int i = 0; i < 4; i++) {
      if (!Double.isFinite(initial[i]) || !Double.isFinite(input[i])) {
        throw new IllegalArgumentException("a state and an input must be finite, had " + initial[i] + " and "
            + input[i]);
      }
    }
    if (!(duration > 0) || duration == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "duration must be positive, was %.6g s", duration));
    }
    if (steps < 1 || steps > 100_000) {
      throw new IllegalArgumentException("number of steps must lie within 1 and 100000, was " + steps);
    }
    double step = duration / steps;
    double[][] carry = exponential(matrix.rows(), input, step);
    double[][] states = new double[steps + 1][4];
    states[0] = initial.clone();
    for (int k = 0; k < steps; k++) {
      for (int i = 0; i < 4; i++) {
        double sum = carry[i][4];
        for (int j = 0; j < 4; j++) {
          sum += carry[i][j] * states[k][j];
        }
        states[k + 1][i] = sum;
      }
    }
    return new TimeResponse(step, states, matrix.isLateral());
  }

  /** e^(A·h) of the system with the constant input as a fifth state, by scaling and squaring of the power series. */
  private static double[][] exponential(double[][] a, double[] input, double h) {
    int n = 5;
    double[][] m = new double[n][n];
    double greatest = 0;
    for (int i = 0; i < 4; i++) {
      double row = 0;
      for (int j = 0; j < 4; j++) {
        m[i][j] = a[i][j] * h;
        row += Math.abs(m[i][j]);
      }
      m[i][4] = input[i] * h;
      greatest = Math.max(greatest, row + Math.abs(m[i][4]));
    }
    int halvings = greatest > 0.5 ? Math.getExponent(greatest) + 2 : 0;
    for (double[] row : m) {
      for (int j = 0; j < n; j++) {
        row[j] = Math.scalb(row[j], -halvings);
      }
    }
    double[][] sum = identity(n);
    double[][] term = identity(n);
    for (int k = 1; k <= 16; k++) {
      term = product(term, m, 1.0 / k);
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          sum[i][j] += term[i][j];
        }
      }
    }
    for (int k = 0; k < halvings; k++) {
      sum = product(sum, sum, 1);
    }
    return sum;
  }

  private static double[][] identity(int n) {
    double[][] one = new double[n][n];
    for (int i = 0; i < n; i++) {
      one[i][i] = 1;
    }
    return one;
  }

  private static double[][] product(double[][] p, double[][] q, double factor) {
    int n = p.length;
    double[][] result = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        double f = p[i][k] * factor;
        for (int j = 0; j < n; j++) {
          result[i][j] += f * q[k][j];
        }
      }
    }
    return result;
  }

  /** Number of instants, one more than steps. */
  public int size() {
    return states.length;
  }

  /**
   * Time of an instant.
   *
   * @param index instant, from 0
   * @return time [s]
   */
  public double time(int index) {
    return index * step;
  }

  /**
   * A state at an instant.
   *
   * @param index instant, from 0
   * @param component 0 to 3: u, w, q, θ or v, p, r, φ
   */
  public double state(int index, int component) {
    return states[index][component];
  }

  /** Whether the states are lateral. */
  public boolean isLateral() {
    return lateral;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s response over %.4g s in %d steps", lateral ? "lateral" : "longitudinal",
        step * (size() - 1), size() - 1);
  }
}
