// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.BodyShape;

/** A cylinder with flat ends: the plainest body of all. */
record Tube() implements BodyShape {
  @Override
  public String name() {
    return "tube";
  }

  @Override
  public double leastFinenessRatio() {
    return 0.5;
  }

  @Override
  public double volume(double length, double diameter) {
    return 0.25 * Math.PI * diameter * diameter * length;
  }

  @Override
  public double wettedArea(double length, double diameter) {
    return Math.PI * diameter * (length + 0.5 * diameter);
  }

  @Override
  public double sideArea(double length, double diameter) {
    return length * diameter;
  }

  @Override
  public double volumeCentroid(double length, double diameter) {
    return 0.5 * length;
  }

  @Override
  public double surfaceCentroid(double length, double diameter) {
    return 0.5 * length;
  }

  @Override
  public double radius(double x, double length, double diameter) {
    return 0.5 * diameter;
  }
}
