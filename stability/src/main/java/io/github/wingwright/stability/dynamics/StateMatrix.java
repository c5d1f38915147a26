// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import io.github.wingwright.core.quantity.Door;
import java.util.Locale;
import java.util.Objects;

/**
 * A linear system ẋ = A·x of four states: the small motions of an aircraft about steady flight.
 *
 * <p>Longitudinal states are [u, w, q, θ] in m/s, m/s, rad/s, rad; lateral states are [v, p, r, φ] in m/s, rad/s, rad/s,
 * rad. Axes are the stability axes: x forward, y to starboard, z down.
 */
public final class StateMatrix {
  private final double[][] a;
  private final boolean lateral;
  private final double speed;

  private StateMatrix(double[][] a, boolean lateral, double speed) {
    if (a.length != 4) {
      throw new IllegalArgumentException("state matrix must have 4 rows, had " + a.length);
    }
    this.a = new double[4][];
    for (int i = 0; i < 4; i++) {
      if (a[i].length != 4) {
        throw new IllegalArgumentException("row " + (i + 1) + " must have 4 entries, had " + a[i].length);
      }
      for (double v : a[i]) {
        if (!Double.isFinite(v)) {
          throw new IllegalArgumentException("state matrix must be finite, row " + (i + 1) + " had " + v);
        }
      }
      this.a[i] = a[i].clone();
    }
    if (!(speed > 0) || speed == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "speed must be positive, was %.6g m/s", speed));
    }
    this.lateral = lateral;
    this.speed = speed;
  }

  /**
   * A longitudinal system [u, w, q, θ].
   *
   * @param a matrix of four rows [1/s and so on]
   * @param speed airspeed of the steady flight u₀, in the length unit of the matrix per second
   */
  public static StateMatrix longitudinal(double[][] a, double speed) {
    Objects.requireNonNull(a, "a");
    return new StateMatrix(a, false, speed);
  }

  /**
   * A lateral system [v, p, r, φ].
   *
   * @param a matrix of four rows [1/s and so on]
   * @param speed airspeed of the steady flight u₀, in the length unit of the matrix per second
   */
  public static StateMatrix lateral(double[][] a, double speed) {
    Objects.requireNonNull(a, "a");
    return new StateMatrix(a, true, speed);
  }

  /** Whether the states are lateral. */
  public boolean isLateral() {
    return lateral;
  }

  /** Airspeed of the steady flight u₀. */
  public double speed() {
    return speed;
  }

  /**
   * Entry of the matrix.
   *
   * @param row row, 0 to 3
   * @param column column, 0 to 3
   */
  public double entry(int row, int column) {
    return a[Door.within(row, 0, 3, "row")][Door.within(column, 0, 3, "column")];
  }

  double[][] rows() {
    return a;
  }

  /** Characteristic polynomial λ⁴ + B·λ³ + C·λ² + D·λ + E: the coefficients 1, B, C, D, E in a new array. */
  public double[] characteristicPolynomial() {
    return SmallEigenproblem.polynomial(a);
  }

  /**
   * Routh's discriminant.
   *
   * <pre>{@code
   * R = D·(B·C − D) − B²·E
   * }</pre>
   * All motions die out when B, D, E and R are positive. E turns negative with the first divergence, R with the first
   * oscillation that grows.
   */
  public double routhDiscriminant() {
    double[] c = characteristicPolynomial();
    return c[3] * (c[1] * c[2] - c[3]) - c[1] * c[1] * c[4];
  }

  /** The natural motions, named, quickest first. */
  public Modes modes() {
    return Modes.of(this);
  }

  /**
   * Motion after a disturbance.
   *
   * @param initial the four states at time zero
   * @param duration how long [s], positive
   * @param steps number of equal steps, 1 to 100,000
   */
  public TimeResponse response(double[] initial, double duration, int steps) {
    return TimeResponse.of(this, initial, new double[4], duration, steps);
  }

  /**
   * Motion after a disturbance under a constant input, such as a control that is held.
   *
   * @param initial the four states at time zero
   * @param input what the input adds to the rates of the four states [m/s², rad/s² and so on]
   * @param duration how long [s], positive
   * @param steps number of equal steps, 1 to 100,000
   */
  public TimeResponse response(double[] initial, double[] input, double duration, int steps) {
    return TimeResponse.of(this, initial, input, duration, steps);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s state matrix at %.4g m/s", lateral ? "lateral" : "longitudinal", speed);
  }
}
