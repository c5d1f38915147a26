// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

/** A body shape as a user of the library would write one: a cone, its base left open. */
final class OwnCone implements BodyShape {
  @Override
  public String name() {
    return "cone";
  }

  @Override
  public double leastFinenessRatio() {
    return 0.1;
  }

  @Override
  public double volume(double length, double diameter) {
    return Math.PI / 12 * diameter * diameter * length;
  }

  @Override
  public double wettedArea(double length, double diameter) {
    return 0.5 * Math.PI * diameter * Math.hypot(0.5 * diameter, length);
  }

  @Override
  public double sideArea(double length, double diameter) {
    return 0.5 * length * diameter;
  }

  @Override
  public double volumeCentroid(double length, double diameter) {
    return 0.75 * length;
  }

  @Override
  public double surfaceCentroid(double length, double diameter) {
    return 2.0 / 3.0 * length;
  }

  @Override
  public double radius(double x, double length, double diameter) {
    return 0.5 * diameter * x / length;
  }
}
