// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Arrays;

/** Choosing the points of a polygon that stays close to a curve. */
final class Curves {
  private static final Length FINEST = Length.micrometres(1);
  private static final Length COARSEST = Length.millimetres(10);

  private Curves() {}

  /** Refuses a tolerance that makes no sense for a part. */
  static double tolerance(Length tolerance) {
    return Door.within(tolerance, FINEST, COARSEST, "chordal tolerance").si();
  }

  /**
   * The fewest points, halving where a chord strays too far, by the method of Douglas and Peucker: a chord is kept if every
   * point between its ends is near enough, else it is split at the farthest.
   *
   * @param points curves[c][3i…3i+2] is point i of curve c; all curves are split at the same points
   * @param must points that are kept in any case, ascending, the first and the last among them
   * @param tolerance greatest distance
   * @return which points are kept, ascending
   */
  static int[] simplify(double[][] points, int[] must, double tolerance) {
    int n = points[0].length / 3;
    boolean[] kept = new boolean[n];
    for (int i = 0; i < must.length; i++) {
      kept[must[i]] = true;
      if (i > 0) {
        split(points, must[i - 1], must[i], tolerance * tolerance, kept);
      }
    }
    int[] result = new int[n];
    int count = 0;
    for (int i = 0; i < n; i++) {
      if (kept[i]) {
        result[count++] = i;
      }
    }
    return Arrays.copyOf(result, count);
  }

  private static void split(double[][] points, int from, int to, double square, boolean[] kept) {
    double farthest = square;
    int at = -1;
    for (double[] curve : points) {
      for (int i = from + 1; i < to; i++) {
        double d = distance(curve, i, from, to);
        if (d > farthest) {
          farthest = d;
          at = i;
        }
      }
    }
    if (at >= 0) {
      kept[at] = true;
      split(points, from, at, square, kept);
      split(points, at, to, square, kept);
    }
  }

  /** Square of the distance of a point from the straight line between two others, as far as it reaches. */
  static double distance(double[] p, int i, int from, int to) {
    double ux = p[3 * to] - p[3 * from];
    double uy = p[3 * to + 1] - p[3 * from + 1];
    double uz = p[3 * to + 2] - p[3 * from + 2];
    double wx = p[3 * i] - p[3 * from];
    double wy = p[3 * i + 1] - p[3 * from + 1];
    double wz = p[3 * i + 2] - p[3 * from + 2];
    double length = ux * ux + uy * uy + uz * uz;
    double t = length > 0.0 ? Math.max(0.0, Math.min(1.0, (ux * wx + uy * wy + uz * wz) / length)) : 0.0;
    double dx = wx - t * ux;
    double dy = wy - t * uy;
    double dz = wz - t * uz;
    return dx * dx + dy * dy + dz * dz;
  }
}
