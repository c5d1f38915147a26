// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.AirfoilSection;
import java.io.Serializable;

/** Two parabolas back to back, t(x) = 4·τ·x·(1 − x): everything about it is known without a computer. */
record BiconvexSection(double maximumThickness) implements AirfoilSection, Serializable {
  @Override
  public String name() {
    return "biconvex";
  }

  @Override
  public double maximumThicknessPosition() {
    return 0.5;
  }

  @Override
  public double maximumCamber() {
    return 0.0;
  }

  @Override
  public double trailingEdgeThickness() {
    return 0.0;
  }

  @Override
  public double area() {
    return 2.0 / 3.0 * maximumThickness;
  }

  @Override
  public double perimeter() {
    return 2.0 * (1.0 + 2.0 / 3.0 * maximumThickness * maximumThickness);
  }

  @Override
  public double thickness(double x) {
    return 4.0 * maximumThickness * x * (1.0 - x);
  }

  @Override
  public double camber(double x) {
    return 0.0;
  }

  @Override
  public double camberSlope(double x) {
    return 0.0;
  }

  @Override
  public void outline(double[] x, double[] y) {
    throw new UnsupportedOperationException("no test here draws it");
  }
}
