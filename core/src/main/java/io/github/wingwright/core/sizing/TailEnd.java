// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.BodyShape;
import java.util.function.DoubleUnaryOperator;

/**
 * How steeply a tail closes, and where: at the first place behind the greatest section where it has come down to half. A
 * tail that ends in a base or a boom thicker than that closes as steeply as the steepest place behind the greatest section.
 */
final class TailEnd {
  /** Pieces of the aft part among which the steepest is looked for. */
  private static final int PIECES = 512;

  private TailEnd() {}

  /** Where the aft section has come down to a height, or the end if it stays above it [m]. */
  static double aftPlace(BodyShape shape, double length, double diameter, double height) {
    return placeOf(shape, length, diameter, height, x -> shape.height(x, length, diameter), 40);
  }

  /** Whether the tail comes down to a height before it ends. */
  static boolean comesDownTo(BodyShape shape, double length, double diameter, double height) {
    return shape.height(length, length, diameter) <= height;
  }

  /** Slope of the top line (1) or the underside (−1), positive where the body narrows. */
  static double lineSlope(BodyShape shape, double length, double diameter, double at, double side) {
    double from = at - 1e-5 * length;
    double to = Math.min(length, at + 1e-5 * length);
    return (line(shape, from, length, diameter, side) - line(shape, to, length, diameter, side)) / (to - from);
  }

  /** The slope of {@link #lineSlope} where the section has come down to a height, or the steepest if it does not. */
  static double closureOfLine(BodyShape shape, double length, double diameter, double height, double side) {
    return comesDownTo(shape, length, diameter, height)
        ? lineSlope(shape, length, diameter, aftPlace(shape, length, diameter, height), side)
        : steepestLine(shape, length, diameter, side, 1);
  }

  /** The steepest slope of the line behind the greatest section, with so many times the usual number of pieces. */
  static double steepestLine(BodyShape shape, double length, double diameter, double side, int finer) {
    return steepest(shape, length, diameter, x -> line(shape, x, length, diameter, side), finer * PIECES);
  }

  /**
   * Slope of the contour where the aft radius is half the greatest, or its steepest if the tail ends thicker than that.
   *
   * @param shape family of the body
   * @param length length L [m]
   * @param diameter diameter d [m]
   * @return −dr/dx; of a spheroid √3·d/L
   */
  static double closureSlope(BodyShape shape, double length, double diameter) {
    if (endsThick(shape, length, diameter)) {
      return steepest(shape, length, diameter, x -> shape.radius(x, length, diameter), PIECES);
    }
    double at = placeOfRadius(shape, length, diameter, 0.25 * diameter);
    double step = 1e-5 * length;
    double before = shape.radius(at - step, length, diameter);
    double after = shape.radius(Math.min(length, at + step), length, diameter);
    return (before - after) / (Math.min(length, at + step) - (at - step));
  }

  private static boolean endsThick(BodyShape shape, double length, double diameter) {
    return shape.radius(length, length, diameter) > 0.25 * diameter;
  }

  /** The same slope from five points over a wider stretch. */
  static double fivePoints(BodyShape shape, double length, double diameter, double at, double side) {
    double h = 1e-3 * length;
    double near = line(shape, at + h, length, diameter, side) - line(shape, at - h, length, diameter, side);
    double far = line(shape, at + 2.0 * h, length, diameter, side) - line(shape, at - 2.0 * h, length, diameter, side);
    return (far - 8.0 * near) / (12.0 * h);
  }

  /** Distance of the top line (1) or the underside (−1) from the axis, outward. */
  private static double line(BodyShape shape, double x, double length, double diameter, double side) {
    double inside = Math.min(x, length);
    return side > 0.0 ? Contour.top(shape, inside, length, diameter) : -Contour.bottom(shape, inside, length, diameter);
  }

  /**
   * The slope of {@link #closureSlope} by another way: from the two places where the radius is a thousandth more and less,
   * or the steepest of twice as many pieces.
   */
  static double closureOtherwise(BodyShape shape, double length, double diameter) {
    double less = 0.25 * diameter * 0.999;
    double more = 0.25 * diameter * 1.001;
    if (endsThick(shape, length, diameter)) {
      return steepest(shape, length, diameter, x -> shape.radius(x, length, diameter), 2 * PIECES);
    }
    double from = placeOfRadius(shape, length, diameter, more);
    double to = placeOfRadius(shape, length, diameter, less);
    // A tail that ends in a base of nearly that radius does not come down to the lesser one.
    return (more - shape.radius(to, length, diameter)) / (to - from);
  }

  private static double steepest(
      BodyShape shape, double length, double diameter, DoubleUnaryOperator outward, int pieces) {
    double from = Contour.greatestSection(shape, length, diameter);
    double step = (length - from) / pieces;
    if (!(step > 0.0)) {
      return 0.0;
    }
    double before = outward.applyAsDouble(from);
    double steepest = 0.0;
    for (int i = 1; i <= pieces; i++) {
      double after = outward.applyAsDouble(i == pieces ? length : from + i * step);
      steepest = Math.max(steepest, (before - after) / step);
      before = after;
    }
    return steepest;
  }

  private static double placeOfRadius(BodyShape shape, double length, double diameter, double radius) {
    return placeOf(shape, length, diameter, radius, x -> shape.radius(x, length, diameter), 60);
  }

  private static double placeOf(
      BodyShape shape, double length, double diameter, double value, DoubleUnaryOperator falling, int halvings) {
    double low = Contour.greatestSection(shape, length, diameter);
    double high = length;
    for (int i = 0; i < halvings; i++) {
      double middle = 0.5 * (low + high);
      if (falling.applyAsDouble(middle) > value) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
