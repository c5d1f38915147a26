// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import io.github.wingwright.core.quantity.Door;
import java.io.Serializable;
import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The outline of a section as points: from the upper trailing edge round the nose to the lower trailing edge, on a
 * chord of 1. This is the order in which every method of this module expects a section.
 */
public final class Contour implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] x;
  private final double[] y;

  private Contour(double[] x, double[] y) {
    this.x = x;
    this.y = y;
  }

  /**
   * An outline through these points. The arrays are copied.
   *
   * @param x abscissas [chords], finite, at least 5
   * @param y ordinates [chords], finite, as many
   * @throws IllegalArgumentException if the points do not run from the upper trailing edge round the nose
   */
  public static Contour of(double[] x, double[] y) {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    int n = sizeOf(x, y);
    for (int i = 0; i < n; i++) {
      Checks.finite("abscissa of point " + i, x[i]);
      Checks.finite("ordinate of point " + i, y[i]);
    }
    Contour contour = new Contour(x.clone(), y.clone());
    double area = contour.area();
    if (!(area > 0)) {
      throw new IllegalArgumentException(
          "the points must run from the upper trailing edge round the nose to the lower one and enclose an"
              + " area, the signed area was " + area);
    }
    return contour;
  }

  static int sizeOf(double[] x, double[] y) {
    if (x.length != y.length) {
      throw new IllegalArgumentException(
          "a contour needs as many ordinates as abscissas, got " + x.length + " and " + y.length);
    }
    if (x.length < 5) {
      throw new IllegalArgumentException("a contour needs at least 5 points, got " + x.length);
    }
    return x.length;
  }

  /** Number of points. */
  public int size() {
    return x.length;
  }

  /**
   * Abscissa of a point [chords].
   *
   * @param index number of the point, from 0
   */
  public double x(int index) {
    return x[Door.within(index, 0, x.length - 1, "number of the point")];
  }

  /**
   * Ordinate of a point [chords].
   *
   * @param index number of the point, from 0
   */
  public double y(int index) {
    return y[Door.within(index, 0, x.length - 1, "number of the point")];
  }

  /** A copy of the abscissas. */
  public double[] xs() {
    return x.clone();
  }

  /** A copy of the ordinates. */
  public double[] ys() {
    return y.clone();
  }

  /** Area of the polygon [chord²]. */
  public double area() {
    double sum = 0;
    for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
      sum += x[j] * y[i] - x[i] * y[j];
    }
    return 0.5 * sum;
  }

  /** Length of the polygon, base included [chords]. */
  public double perimeter() {
    double sum = 0;
    for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
      sum += Math.hypot(x[i] - x[j], y[i] - y[j]);
    }
    return sum;
  }

  /** Distance between the first and the last point [chords]: 0 when the trailing edge is sharp. */
  public double trailingEdgeGap() {
    int last = x.length - 1;
    return Math.hypot(x[0] - x[last], y[0] - y[last]);
  }

  /** Index of the most forward point. */
  public int noseIndex() {
    int nose = 0;
    for (int i = 1; i < x.length; i++) {
      if (x[i] < x[nose]) {
        nose = i;
      }
    }
    return nose;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Contour contour && Arrays.equals(x, contour.x) && Arrays.equals(y, contour.y);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
  }

  @Override
  public String toString() {
    return "contour of " + x.length + " points, area " + Text.number(area()) + " chord²";
  }
}
