// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

/**
 * Volume and area of a body of revolution from its radius alone: a fine polygon turned about the axis, its points drawn
 * together at both ends. Good to about 1 part in 10⁶, independent of the closed forms that it checks.
 */
final class Revolution {
  private static final int POINTS = 2000;

  private Revolution() {}

  static double volume(BodyShape shape, double length, double diameter) {
    double sum = 0.0;
    double x1 = 0.0;
    double r1 = shape.radius(0.0, length, diameter);
    for (int i = 1; i <= POINTS; i++) {
      double x2 = station(i, length);
      double r2 = shape.radius(x2, length, diameter);
      sum += (x2 - x1) * (r1 * r1 + r1 * r2 + r2 * r2);
      x1 = x2;
      r1 = r2;
    }
    return Math.PI / 3.0 * sum;
  }

  static double wettedArea(BodyShape shape, double length, double diameter) {
    double sum = 0.0;
    double x1 = 0.0;
    double r1 = shape.radius(0.0, length, diameter);
    for (int i = 1; i <= POINTS; i++) {
      double x2 = station(i, length);
      double r2 = shape.radius(x2, length, diameter);
      sum += (r1 + r2) * Math.hypot(x2 - x1, r2 - r1);
      x1 = x2;
      r1 = r2;
    }
    return Math.PI * sum;
  }

  /** The ends are taken as closed by a flat disc; 64 points are good to about 1 part in 10³. */
  static double curvatureIntegral(BodyShape shape, double length, double diameter, int points) {
    double first = shape.radius(0.0, length, diameter);
    double sum = 0.5 * Math.PI * first;
    double x1 = 0.0;
    double r1 = first;
    for (int i = 1; i <= points; i++) {
      double x2 = 0.5 * length * (1.0 - Math.cos(Math.PI * i / points));
      double r2 = shape.radius(x2, length, diameter);
      sum += (r2 - r1) * Math.atan2(r2 - r1, x2 - x1);
      x1 = x2;
      r1 = r2;
    }
    return Math.PI * (length + sum + 0.5 * Math.PI * r1);
  }

  /** Height of the centroid of the volume: of the section areas, weighted with the heights of their middles. */
  static double volumeCentroidHeight(BodyShape shape, double length, double diameter) {
    double volume = 0.0;
    double moment = 0.0;
    double x1 = 0.0;
    double a1 = shape.sectionArea(0.0, length, diameter);
    double z1 = shape.centreHeight(0.0, length, diameter);
    for (int i = 1; i <= POINTS; i++) {
      double x2 = station(i, length);
      double a2 = shape.sectionArea(x2, length, diameter);
      double z2 = shape.centreHeight(x2, length, diameter);
      volume += (x2 - x1) * (a1 + a2);
      moment += (x2 - x1) * (a1 * z1 + a2 * z2);
      x1 = x2;
      a1 = a2;
      z1 = z2;
    }
    return moment / volume;
  }

  /** Height of the centroid of the surface, by meshes of the whole; zero without looking for a straight body. */
  static double surfaceCentroidHeight(BodyShape shape, double length, double diameter) {
    for (int i = 0; i <= POINTS; i++) {
      if (shape.centreHeight(station(i, length), length, diameter) != 0.0) {
        PatchArea half =
            PatchArea.aftOf(shape, 0.0, length, diameter, x -> shape.centreHeight(x, length, diameter));
        return half.rise / half.area;
      }
    }
    return 0.0;
  }

  /** The first place at which the section comes within rounding of its greatest. */
  static double greatestSection(BodyShape shape, double length, double diameter) {
    int steps = 10_000;
    double best = 0.0;
    double at = 0.0;
    for (int i = 0; i <= steps; i++) {
      double x = length * i / steps;
      double r = shape.radius(x, length, diameter);
      if (r > best * (1.0 + 1e-12)) {
        best = r;
        at = x;
      }
    }
    return at;
  }

  private static double station(int i, double length) {
    return 0.5 * length * (1.0 - Math.cos(Math.PI * i / POINTS));
  }
}
