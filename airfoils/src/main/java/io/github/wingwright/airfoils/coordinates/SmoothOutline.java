// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.coordinates;

import io.github.wingwright.airfoils.Contour;
import io.github.wingwright.core.numerics.GoldenSection;
import java.util.Objects;

/**
 * A smooth curve through the points of an outline: a cubic spline over the length from point to point,
 * with free ends at the trailing edge.
 *
 * <p>It turns any listing into as many points as wanted, spaced as a panel method or a boundary layer likes them.
 */
public final class SmoothOutline {
  private final double[] s;
  private final double[] x;
  private final double[] y;
  private final double[] bendX;
  private final double[] bendY;
  private final double nose;

  private SmoothOutline(double[] s, double[] x, double[] y) {
    this.s = s;
    this.x = x;
    this.y = y;
    bendX = secondDerivatives(s, x);
    bendY = secondDerivatives(s, y);
    nose = mostForward();
  }

  /** The curve through an outline. */
  public static SmoothOutline through(Contour contour) {
    Objects.requireNonNull(contour, "contour");
    int n = contour.size();
    double[] s = new double[n];
    for (int i = 1; i < n; i++) {
      double step = Math.hypot(contour.x(i) - contour.x(i - 1), contour.y(i) - contour.y(i - 1));
      if (!(step > 0)) {
        throw new IllegalArgumentException("points " + (i - 1) + " and " + i + " of the outline are the same");
      }
      s[i] = s[i - 1] + step;
    }
    return new SmoothOutline(s, contour.xs(), contour.ys());
  }

  /** Natural spline: tridiagonal equations, solved by elimination. */
  private static double[] secondDerivatives(double[] s, double[] v) {
    int n = s.length;
    double[] m = new double[n];
    double[] upper = new double[n];
    for (int i = 1; i < n - 1; i++) {
      double h0 = s[i] - s[i - 1];
      double h1 = s[i + 1] - s[i];
      double right = 6 * ((v[i + 1] - v[i]) / h1 - (v[i] - v[i - 1]) / h0);
      double pivot = 2 * (h0 + h1) - h0 * upper[i - 1];
      upper[i] = h1 / pivot;
      m[i] = (right - h0 * m[i - 1]) / pivot;
    }
    for (int i = n - 2; i > 0; i--) {
      m[i] -= upper[i] * m[i + 1];
    }
    return m;
  }

  private double at(double t, double[] v, double[] bend) {
    int i = java.util.Arrays.binarySearch(s, t);
    if (i < 0) {
      i = -i - 2;
    }
    i = Math.min(Math.max(i, 0), s.length - 2);
    double h = s[i + 1] - s[i];
    double a = (s[i + 1] - t) / h;
    double b = (t - s[i]) / h;
    return a * v[i] + b * v[i + 1] + ((a * a * a - a) * bend[i] + (b * b * b - b) * bend[i + 1]) * h * h / 6;
  }

  private double mostForward() {
    int i = 0;
    for (int k = 1; k < x.length; k++) {
      if (x[k] < x[i]) {
        i = k;
      }
    }
    double a = s[Math.max(i - 1, 0)];
    double b = s[Math.min(i + 1, s.length - 1)];
    return GoldenSection.greatest(t -> -at(t, x, bendX), a, b, 60);
  }

  /** Abscissa of the most forward point of the curve [chords]. */
  public double noseX() {
    return at(nose, x, bendX);
  }

  /**
   * New points along the curve, crowded at the nose and at the trailing edge by the half cosine of the length of each
   * surface, mixed with a linear share.
   *
   * @param points number of points, odd, at least 21
   * @param linearShare 0 (cosine spacing) to 1 (equal spacing)
   */
  public Contour points(int points, double linearShare) {
    if (points < 21 || points % 2 == 0) {
      throw new IllegalArgumentException("an odd number of at least 21 points is needed, got " + points);
    }
    if (!(linearShare >= 0 && linearShare <= 1)) {
      throw new IllegalArgumentException("linear share must be from 0 to 1, was " + linearShare);
    }
    int half = points / 2;
    double end = s[s.length - 1];
    double[] px = new double[points];
    double[] py = new double[points];
    for (int i = 0; i < points; i++) {
      double u = i <= half ? (double) i / half : (double) (i - half) / half;
      double v = (1 - linearShare) * 0.5 * (1 - Math.cos(Math.PI * u)) + linearShare * u;
      double t = i <= half ? v * nose : nose + v * (end - nose);
      px[i] = at(t, x, bendX);
      py[i] = at(t, y, bendY);
    }
    return Contour.of(px, py);
  }

  /**
   * The outline turned and scaled so that its chord, from the middle of the trailing edge to the point furthest from it,
   * is 1 long and lies on y = 0.
   */
  public static Contour normalised(Contour contour) {
    Objects.requireNonNull(contour, "contour");
    int n = contour.size();
    double tx = 0.5 * (contour.x(0) + contour.x(n - 1));
    double ty = 0.5 * (contour.y(0) + contour.y(n - 1));
    int nose = 0;
    double chord = 0;
    for (int i = 0; i < n; i++) {
      double d = Math.hypot(contour.x(i) - tx, contour.y(i) - ty);
      if (d > chord) {
        chord = d;
        nose = i;
      }
    }
    double cos = (tx - contour.x(nose)) / chord;
    double sin = (ty - contour.y(nose)) / chord;
    double[] px = new double[n];
    double[] py = new double[n];
    for (int i = 0; i < n; i++) {
      double ex = (contour.x(i) - contour.x(nose)) / chord;
      double ey = (contour.y(i) - contour.y(nose)) / chord;
      px[i] = ex * cos + ey * sin;
      py[i] = ey * cos - ex * sin;
    }
    return Contour.of(px, py);
  }
}
