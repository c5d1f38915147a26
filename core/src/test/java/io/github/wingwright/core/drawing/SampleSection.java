// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.geometry.AirfoilSection;
import java.io.Serializable;

/** An invented section for pictures: an ellipse-nosed thickness on a parabolic mean line. */
record SampleSection(double maximumThickness, double maximumCamber, double trailingEdgeThickness)
    implements AirfoilSection, Serializable {
  @Override
  public String name() {
    return "sample section";
  }

  @Override
  public double maximumThicknessPosition() {
    // Where √x·(1 − x) is greatest.
    return 1.0 / 3.0;
  }

  @Override
  public double area() {
    return 0.69 * maximumThickness;
  }

  @Override
  public double perimeter() {
    return 2.03;
  }

  @Override
  public double thickness(double x) {
    return maximumThickness * 1.5 * Math.sqrt(3.0) * Math.sqrt(x) * (1.0 - x) + trailingEdgeThickness * x;
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
    int last = x.length - 1;
    for (int i = 0; i <= last; i++) {
      double angle = 2.0 * Math.PI * i / last;
      x[i] = 0.5 * (1.0 + Math.cos(angle));
      y[i] = camber(x[i]) + (2 * i <= last ? 0.5 : -0.5) * thickness(x[i]);
    }
  }
}
