// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.geometry.AirfoilSection;

/** The shape of a 4-digit section with its camber at 40 % of the chord: as much as tests of this package need. */
public record FourDigitShape(double maximumCamber, double maximumThickness) implements AirfoilSection {
  private static final double P = 0.4;

  @Override
  public String name() {
    return "4-digit shape, " + maximumCamber + " camber, " + maximumThickness + " thick";
  }

  @Override
  public double maximumThicknessPosition() {
    return 0.3;
  }

  @Override
  public double trailingEdgeThickness() {
    return 0.0;
  }

  @Override
  public double area() {
    return 0.6809 * maximumThickness;
  }

  @Override
  public double perimeter() {
    return 2.0 + maximumThickness * maximumThickness;
  }

  @Override
  public double thickness(double x) {
    double polynomial = 0.2969 * Math.sqrt(x) + x * (-0.126 + x * (-0.3516 + x * (0.2843 - 0.1036 * x)));
    return 10.0 * maximumThickness * polynomial;
  }

  @Override
  public double camber(double x) {
    double rest = x < P ? x * (2.0 * P - x) / (P * P) : (1.0 - 2.0 * P + 2.0 * P * x - x * x) / ((1.0 - P) * (1.0 - P));
    return maximumCamber * rest;
  }

  @Override
  public double camberSlope(double x) {
    double side = x < P ? P : 1.0 - P;
    return 2.0 * maximumCamber * (P - x) / (side * side);
  }

  @Override
  public void outline(double[] x, double[] y) {
    throw new UnsupportedOperationException("no test of this package draws it");
  }
}
