// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.BodyShape;

/** How steeply a tail closes, and where. */
final class TailEnd {
  private TailEnd() {}

  /** Where the aft section has come down to a height [m]. */
  static double aftPlace(BodyShape shape, double length, double diameter, double height) {
    double low = 0.5 * length;
    double high = length;
    for (int i = 0; i < 40; i++) {
      double middle = 0.5 * (low + high);
      if (shape.height(middle, length, diameter) > height) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Slope of the top line (1) or the underside (−1), positive where the body narrows. */
  static double lineSlope(BodyShape shape, double length, double diameter, double at, double side) {
    double from = at - 1e-5 * length;
    double to = Math.min(length, at + 1e-5 * length);
    double fall =
        side > 0.0
            ? Contour.top(shape, from, length, diameter) - Contour.top(shape, to, length, diameter)
            : Contour.bottom(shape, to, length, diameter) - Contour.bottom(shape, from, length, diameter);
    return fall / (to - from);
  }

  /**
   * Slope of the contour where the aft radius is half the greatest.
   *
   * @param shape family of the body
   * @param length length L [m]
   * @param diameter diameter d [m]
   * @return −dr/dx; of a spheroid √3·d/L
   */
  static double closureSlope(BodyShape shape, double length, double diameter) {
    double at = placeOf(shape, length, diameter, 0.25 * diameter);
    double step = 1e-5 * length;
    double before = shape.radius(at - step, length, diameter);
    double after = shape.radius(Math.min(length, at + step), length, diameter);
    return (before - after) / (Math.min(length, at + step) - (at - step));
  }

  /** The same slope from five points over a wider stretch. */
  static double fivePoints(BodyShape shape, double length, double diameter, double at, double side) {
    double h = 1e-3 * length;
    double near = line(shape, at + h, length, diameter, side) - line(shape, at - h, length, diameter, side);
    double far = line(shape, at + 2.0 * h, length, diameter, side) - line(shape, at - 2.0 * h, length, diameter, side);
    return -side * (8.0 * near - far) / (12.0 * h);
  }

  private static double line(BodyShape shape, double x, double length, double diameter, double side) {
    double inside = Math.min(x, length);
    return side > 0.0 ? Contour.top(shape, inside, length, diameter) : Contour.bottom(shape, inside, length, diameter);
  }

  /** The slope of {@link #closureSlope} from the two places where the radius is a thousandth more and less. */
  static double slopeBetweenRadii(BodyShape shape, double length, double diameter) {
    double half = 0.25 * diameter;
    double more = half * 1.001;
    double less = half * 0.999;
    return (more - less) / (placeOf(shape, length, diameter, less) - placeOf(shape, length, diameter, more));
  }

  private static double placeOf(BodyShape shape, double length, double diameter, double radius) {
    double low = 0.5 * length;
    double high = length;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (shape.radius(middle, length, diameter) > radius) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
