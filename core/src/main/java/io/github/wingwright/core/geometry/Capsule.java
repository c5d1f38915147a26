// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Step;
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
    return BodiesOfRevolution.capsuleVolume(length, diameter);
  }

  @Override
  public double wettedArea(double length, double diameter) {
    return BodiesOfRevolution.capsuleWettedArea(length, diameter);
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

  /** π·(L + d): π·(L − d) of the cylinder and 2π·d of the sphere that the ends make. */
  @Override
  public double curvatureIntegral(double length, double diameter) {
    return Math.PI * (length + diameter);
  }

  @Override
  public double greatestSection(double length, double diameter) {
    return 0.5 * diameter;
  }

  @Override
  public double radius(double x, double length, double diameter) {
    double r = 0.5 * diameter;
    double fromEnd = Math.min(x, length - x);
    return fromEnd >= r ? r : Math.sqrt(Math.max(0.0, fromEnd * (diameter - fromEnd)));
  }

  @Override
  public Step volumeStep(Step length, Step diameter) {
    return Step.of("volume", "V", BodiesOfRevolution.CAPSULE_VOLUME, length, diameter);
  }

  @Override
  public Step wettedAreaStep(Step length, Step diameter) {
    return Step.of("wetted area", "S_wet", BodiesOfRevolution.CAPSULE_WETTED_AREA, length, diameter);
  }

  private Object readResolve() {
    return INSTANCE;
  }

  @Override
  public String toString() {
    return name();
  }
}
