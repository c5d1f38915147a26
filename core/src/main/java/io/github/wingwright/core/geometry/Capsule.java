// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import java.io.Serializable;

/**
 * A cylinder between two hemispheres, R = d/2.
 *
 * <pre>{@code
 * V = π·R²·(L − 2R) + 4/3·π·R³        S_wet = 2π·R·L        S_side = 2R·(L − 2R) + π·R²
 * }</pre>
 */
final class Capsule implements BodyShape, Serializable {
  private static final long serialVersionUID = 1L;
  static final Capsule INSTANCE = new Capsule();

  private Capsule() {}

  @Override
  public String name() {
    return "capsule";
  }

  @Override
  public double leastFinenessRatio() {
    return 1.0;
  }

  @Override
  public double volume(double length, double diameter) {
    double r = 0.5 * diameter;
    return Math.PI * r * r * (length - diameter) + 4.0 / 3.0 * Math.PI * r * r * r;
  }

  @Override
  public double wettedArea(double length, double diameter) {
    return Math.PI * diameter * length;
  }

  @Override
  public double sideArea(double length, double diameter) {
    return diameter * (length - diameter) + 0.25 * Math.PI * diameter * diameter;
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
    double r = 0.5 * diameter;
    double fromEnd = Math.min(x, length - x);
    return fromEnd >= r ? r : Math.sqrt(Math.max(0.0, fromEnd * (diameter - fromEnd)));
  }

  private Object readResolve() {
    return INSTANCE;
  }

  @Override
  public String toString() {
    return name();
  }
}
