// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * A drag polar as a table, straight between its points: with the Reynolds number that belongs to each lift already in it.
 *
 * <p>In a steady glide the slower flight has the higher lift, and Re·√C_L stays the same. A polar that is tabulated along
 * that line is the one an aircraft of one mass flies on.
 */
public final class TabulatedPolar implements DragPolar {
  private static final long serialVersionUID = 1L;

  private final double[] lift;
  private final double[] drag;

  private TabulatedPolar(double[] lift, double[] drag) {
    this.lift = lift;
    this.drag = drag;
  }

  /**
   * A polar from points.
   *
   * @param lift lift coefficients, rising, at least two
   * @param drag drag coefficients, positive, as many
   * @return the polar
   */
  public static TabulatedPolar of(double[] lift, double[] drag) {
    Objects.requireNonNull(lift, "lift");
    Objects.requireNonNull(drag, "drag");
    if (lift.length < 2 || lift.length != drag.length) {
      throw new IllegalArgumentException(
          "a polar needs as many drags as lifts and at least two, has " + lift.length + " and " + drag.length);
    }
    for (int i = 0; i < lift.length; i++) {
      Door.finite(lift[i], "lift coefficient");
      Door.positive(drag[i], "drag coefficient");
      if (i > 0 && !(lift[i] > lift[i - 1])) {
        throw new IllegalArgumentException("lifts must rise, were " + lift[i - 1] + " then " + lift[i]);
      }
    }
    return new TabulatedPolar(lift.clone(), drag.clone());
  }

  @Override
  public double dragCoefficient(double cl) {
    int last = lift.length - 1;
    if (!(cl >= lift[0] && cl <= lift[last])) {
      throw new IllegalArgumentException(
          "lift coefficient must be " + lift[0] + " to " + lift[last] + ", was " + cl);
    }
    int i = 1;
    while (lift[i] < cl) {
      i++;
    }
    double t = (cl - lift[i - 1]) / (lift[i] - lift[i - 1]);
    return drag[i - 1] + t * (drag[i] - drag[i - 1]);
  }

  @Override
  public Interval lifts() {
    return Interval.between(lift[0], lift[lift.length - 1]);
  }

  /**
   * The parabola that fits the table best, by least squares.
   *
   * @return a parabola with the table's end
   */
  public ParabolicPolar fitted() {
    if (lift.length < 3) {
      throw new IllegalStateException("a parabola needs at least three points, has " + lift.length);
    }
    double mean = 0.0;
    for (double cl : lift) {
      mean += cl / lift.length;
    }
    double[] moments = new double[5];
    double[] right = new double[3];
    for (int i = 0; i < lift.length; i++) {
      double power = 1.0;
      for (int k = 0; k < 5; k++) {
        moments[k] += power;
        if (k < 3) {
          right[k] += power * drag[i];
        }
        power *= lift[i] - mean;
      }
    }
    // lifts are taken about their mean, which keeps the equations well apart
    double[] c = solve(moments, right);
    if (!(c[2] > 0.0)) {
      throw new IllegalStateException("the polar has no least drag to fit a parabola to: its curvature is " + c[2]);
    }
    double lowest = -0.5 * c[1] / c[2];
    return new ParabolicPolar(c[0] + 0.5 * c[1] * lowest, c[2], mean + lowest, lift[lift.length - 1]);
  }

  /** Cramer's rule for the three normal equations. */
  private static double[] solve(double[] m, double[] r) {
    double det = determinant(m[0], m[1], m[2], m[1], m[2], m[3], m[2], m[3], m[4]);
    return new double[] {
      determinant(r[0], m[1], m[2], r[1], m[2], m[3], r[2], m[3], m[4]) / det,
      determinant(m[0], r[0], m[2], m[1], r[1], m[3], m[2], r[2], m[4]) / det,
      determinant(m[0], m[1], r[0], m[1], m[2], r[1], m[2], m[3], r[2]) / det
    };
  }

  private static double determinant(
      double a, double b, double c, double d, double e, double f, double g, double h, double i) {
    return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  }

  @Override
  public String toString() {
    return "polar of " + lift.length + " points, C_L " + NamedUnit.NUMBER.format(lift[0], 3) + " to "
        + NamedUnit.NUMBER.format(lift[lift.length - 1], 3);
  }
}
