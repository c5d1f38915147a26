// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.numerics.GoldenSection;
import java.util.function.DoubleUnaryOperator;

/** Lines along a body: its top, its belly, and how far it is thick. */
final class Contour {
  private static final int SECTIONS = 40;

  private Contour() {}

  /**
   * The least value along a line: at the lowest of so many stations, and then between its neighbours by golden sections.
   *
   * @param value what is wanted small
   * @param station places by their share of the line, rising
   * @param stations how many pieces the stations make
   * @return the least value
   */
  static double least(DoubleUnaryOperator value, DoubleUnaryOperator station, int stations) {
    int lowest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= stations; i++) {
      double here = value.applyAsDouble(station.applyAsDouble((double) i / stations));
      if (here < least) {
        least = here;
        lowest = i;
      }
    }
    double low = station.applyAsDouble(Math.max(0.0, (lowest - 1.0) / stations));
    double high = station.applyAsDouble(Math.min(1.0, (lowest + 1.0) / stations));
    double between = GoldenSection.greatest(x -> -value.applyAsDouble(x), low, high, SECTIONS);
    return Math.min(least, value.applyAsDouble(between));
  }

  /** Top (1) or belly (−1) of the greatest section over the diameter: in every family it stays the same. */
  static double greatest(BodyShape shape, double side) {
    double length = 10.0 + 2.0 * shape.leastFinenessRatio();
    double x = shape.greatestSection(length, 1.0);
    return shape.centreHeight(x, length, 1.0) + side * 0.5 * shape.height(x, length, 1.0);
  }

  /** Place of the greatest section; of a body that is shorter than its family's stoutest the end at most. */
  static double greatestSection(BodyShape shape, double length, double diameter) {
    return Math.min(length, shape.greatestSection(length, diameter));
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
    double widest = greatestSection(shape, length, diameter);
    return crossing(shape, length, diameter, radius, widest, length) - crossing(shape, length, diameter, radius, widest, 0.0);
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
