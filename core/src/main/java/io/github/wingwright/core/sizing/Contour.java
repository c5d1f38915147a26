// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.BodyShape;

/** Lines along a body: its top, its belly, and how far it is thick. */
final class Contour {
  private static final int STATIONS = 64;

  private Contour() {}

  /** Top (1) or belly (−1) of the greatest section over the diameter: in every family it stays the same. */
  static double greatest(BodyShape shape, double side) {
    double length = 10.0 + 2.0 * shape.leastFinenessRatio();
    double x = shape.greatestSection(length, 1.0);
    return shape.centreHeight(x, length, 1.0) + side * 0.5 * shape.height(x, length, 1.0);
  }

  static double top(BodyShape shape, double x, double length, double diameter) {
    return shape.centreHeight(x, length, diameter) + 0.5 * shape.height(x, length, diameter);
  }

  static double bottom(BodyShape shape, double x, double length, double diameter) {
    return shape.centreHeight(x, length, diameter) - 0.5 * shape.height(x, length, diameter);
  }

  static double thickPart(BodyShape shape, double length, double diameter, double share) {
    // Rounding at the very radius must not take the cylinder away.
    double radius = 0.5 * diameter * share * (1.0 - 1e-12);
    double widest = widest(shape, length, diameter);
    return crossing(shape, length, diameter, radius, widest, length) - crossing(shape, length, diameter, radius, widest, 0.0);
  }

  private static double widest(BodyShape shape, double length, double diameter) {
    double best = 0.5 * length;
    for (int i = 1; i < STATIONS; i++) {
      double x = length * i / STATIONS;
      if (shape.radius(x, length, diameter) > shape.radius(best, length, diameter)) {
        best = x;
      }
    }
    return best;
  }

  private static double crossing(
      BodyShape shape, double length, double diameter, double radius, double thick, double thin) {
    double in = thick;
    double out = thin;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (in + out);
      if (shape.radius(middle, length, diameter) >= radius) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  /** The same length from stations, with straight pieces between them. */
  static double thickPartByStations(BodyShape shape, double length, double diameter, double share) {
    int stations = 4000;
    double least = 0.5 * diameter * share * (1.0 - 1e-12);
    double step = length / stations;
    double sum = 0.0;
    double before = shape.radius(0.0, length, diameter) - least;
    for (int i = 1; i <= stations; i++) {
      double after = shape.radius(i == stations ? length : i * step, length, diameter) - least;
      double thick = Math.max(before, 0.0) + Math.max(after, 0.0);
      sum += before >= 0.0 && after >= 0.0 ? step : thick > 0.0 ? step * thick / Math.abs(after - before) : 0.0;
      before = after;
    }
    return sum;
  }
}
