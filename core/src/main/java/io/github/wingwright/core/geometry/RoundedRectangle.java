// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Door;


/**
 * A rectangle w × h with corners of radius r, a multiple of half its shorter side.
 *
 * <pre>{@code A = w·h − (4 − π)·r²        U = 2·(w + h) − (8 − 2π)·r}</pre>
 *
 * @param rounding r over half the shorter side, 0 to 1
 */
record RoundedRectangle(double rounding) implements CrossSection {

  RoundedRectangle {
    Door.within(rounding, 0.0, 1.0, "rounding of a rectangle");
  }

  private double corner(double width, double height) {
    return 0.5 * rounding * Math.min(width, height);
  }

  /** Angle at which the side ends and the corner begins. */
  double cornerBegins(double width, double height) {
    return Math.atan2(0.5 * height - corner(width, height), 0.5 * height);
  }

  /** Angle at which the corner ends and the top begins. */
  double cornerEnds(double width, double height) {
    return Math.atan2(0.5 * width, 0.5 * width - corner(width, height));
  }

  @Override
  public String name() {
    return "rounded rectangle";
  }

  @Override
  public double radial(double angle, double width, double height) {
    double a = 0.5 * width;
    double b = 0.5 * height;
    double r = corner(width, height);
    double c = Math.abs(Math.cos(angle));
    double s = Math.abs(Math.sin(angle));
    if (b * s <= (b - r) * c) {
      return 1.0 / c;
    }
    if (a * c <= (a - r) * s) {
      return 1.0 / s;
    }
    // The ray meets the circle about the middle of the corner at the farther of two places.
    double square = a * a * c * c + b * b * s * s;
    double half = a * c * (a - r) + b * s * (b - r);
    double rest = (a - r) * (a - r) + (b - r) * (b - r) - r * r;
    return (half + Math.sqrt(Math.max(0.0, half * half - square * rest))) / square;
  }

  @Override
  public double area(double width, double height) {
    double r = corner(width, height);
    return width * height - (4.0 - Math.PI) * r * r;
  }

  @Override
  public double perimeter(double width, double height) {
    return 2.0 * (width + height) - (8.0 - 2.0 * Math.PI) * corner(width, height);
  }

  @Override
  public String toString() {
    return name() + " " + rounding;
  }
}
