// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.AirfoilSection;

/** Two parabolas, y = m ± 2t·x·(1 − x) with the mean line m = 4·f·x·(1 − x): its area is 2t/3, whatever the camber. */
record Lens(double maximumThickness, double maximumCamber) implements AirfoilSection {
  @Override
  public String name() {
    return "lens";
  }

  @Override
  public double maximumThicknessPosition() {
    return 0.5;
  }

  @Override
  public double trailingEdgeThickness() {
    return 0.0;
  }

  @Override
  public double area() {
    return 2.0 * maximumThickness / 3.0;
  }

  @Override
  public double perimeter() {
    return 2.0;
  }

  @Override
  public double thickness(double x) {
    return 4.0 * maximumThickness * x * (1.0 - x);
  }

  @Override
  public double camber(double x) {
    return 4.0 * maximumCamber * x * (1.0 - x);
  }

  @Override
  public double camberSlope(double x) {
    return 4.0 * maximumCamber * (1.0 - 2.0 * x);
  }

  @Override
  public void outline(double[] x, double[] y) {
    int half = (x.length - 1) / 2;
    for (int i = 0; i < x.length; i++) {
      double at = 0.5 * (1.0 + Math.cos(Math.PI * i / half));
      x[i] = at;
      y[i] = camber(at) + (i <= half ? 0.5 : -0.5) * thickness(at);
    }
  }
}
