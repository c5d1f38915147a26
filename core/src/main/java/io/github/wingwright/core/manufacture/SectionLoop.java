// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.AirfoilSection;

/**
 * The outline of a section as a closed polygon on a chord of one: from the trailing edge along the lower surface to the nose
 * and back along the upper, anticlockwise as seen from starboard with z to the right and x up.
 */
final class SectionLoop {
  private static final int POINTS = 801;

  /** The coarsest tolerance over the thickness of the section. */
  private static final double COARSEST = 0.2;

  private final double[] x;
  private final double[] z;

  private SectionLoop(double[] x, double[] z) {
    this.x = x;
    this.z = z;
  }

  /**
   * The fewest points.
   *
   * @param leastEdge least thickness of the trailing edge, in chords; what is missing is added in proportion to x
   * @param tolerance chordal tolerance, in chords
   */
  static SectionLoop of(AirfoilSection section, double leastEdge, double tolerance) {
    double[] px = new double[POINTS];
    double[] py = new double[POINTS];
    section.outline(px, py);
    double missing = Math.max(0.0, leastEdge - Math.hypot(px[0] - px[POINTS - 1], py[0] - py[POINTS - 1]));
    int nose = 0;
    double[] points = new double[3 * POINTS];
    for (int i = 0; i < POINTS; i++) {
      // Reversed: the listing goes from the trailing edge over the upper surface.
      int k = POINTS - 1 - i;
      points[3 * i] = px[k];
      points[3 * i + 1] = py[k] + (k < POINTS / 2 ? 0.5 : k > POINTS / 2 ? -0.5 : 0.0) * missing * px[k];
      if (points[3 * i] < points[3 * nose]) {
        nose = i;
      }
    }
    // One side strays from the chord by half the thickness at least: finer than that, no section closes onto itself.
    double fine = Math.min(tolerance, COARSEST * section.maximumThickness());
    int[] kept = Curves.simplify(new double[][] {points}, new int[] {0, nose, POINTS - 1}, fine);
    double gap = Math.hypot(points[0] - points[3 * POINTS - 3], points[1] - points[3 * POINTS - 2]);
    int n = gap > 1e-9 ? kept.length : kept.length - 1;
    double[] x = new double[n];
    double[] z = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = points[3 * kept[i]];
      z[i] = points[3 * kept[i] + 1];
    }
    return new SectionLoop(x, z);
  }

  int size() {
    return x.length;
  }

  double x(int i) {
    return x[i];
  }

  double z(int i) {
    return z[i];
  }

  /** Lowest and highest ordinate at a chord station. */
  double[] heights(double at) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      int j = (i + 1) % x.length;
      double a = Math.min(x[i], x[j]);
      double b = Math.max(x[i], x[j]);
      if (at >= a && at <= b) {
        double t = b > a ? (at - x[i]) / (x[j] - x[i]) : 0.0;
        double height = z[i] + t * (z[j] - z[i]);
        low = Math.min(low, height);
        high = Math.max(high, height);
      }
    }
    return new double[] {low, high};
  }

  /** The longest side, in chords. */
  double longest() {
    double longest = 0.0;
    for (int i = 0; i < x.length; i++) {
      int j = (i + 1) % x.length;
      longest = Math.max(longest, Math.hypot(x[j] - x[i], z[j] - z[i]));
    }
    return longest;
  }

  /** The least ordinate. */
  double lowest() {
    double low = 0.0;
    for (double height : z) {
      low = Math.min(low, height);
    }
    return low;
  }

  /** How far inside a point lies: the distance to the outline, negative outside. */
  double depth(double px, double pz) {
    double nearest = Double.POSITIVE_INFINITY;
    boolean inside = false;
    double[] p = new double[9];
    p[0] = px;
    p[1] = pz;
    for (int i = 0; i < x.length; i++) {
      int j = (i + 1) % x.length;
      p[3] = x[i];
      p[4] = z[i];
      p[6] = x[j];
      p[7] = z[j];
      nearest = Math.min(nearest, Curves.distance(p, 0, 1, 2));
      if (z[i] > pz != z[j] > pz && px < x[i] + (pz - z[i]) / (z[j] - z[i]) * (x[j] - x[i])) {
        inside = !inside;
      }
    }
    return (inside ? 1.0 : -1.0) * Math.sqrt(nearest);
  }
}
