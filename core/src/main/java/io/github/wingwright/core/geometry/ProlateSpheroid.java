// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Step;
import java.io.Serializable;

/**
 * An ellipse turned about its long axis: a = L/2, R = d/2, e = √(1 − R²/a²).
 *
 * <pre>{@code
 * V = 4/3·π·a·R²        S_wet = 2π·R²·(1 + a/(R·e)·asin e)        S_side = π·a·R
 * }</pre>
 */
final class ProlateSpheroid implements BodyShape, Serializable {
  private static final long serialVersionUID = 1L;
  static final ProlateSpheroid INSTANCE = new ProlateSpheroid();

  private ProlateSpheroid() {}

  @Override
  public String name() {
    return "prolate spheroid";
  }

  @Override
  public double leastFinenessRatio() {
    return 1.0;
  }

  @Override
  public double volume(double length, double diameter) {
    return BodiesOfRevolution.spheroidVolume(length, diameter);
  }

  @Override
  public double wettedArea(double length, double diameter) {
    return BodiesOfRevolution.spheroidWettedArea(diameter, length / diameter);
  }

  @Override
  public double sideArea(double length, double diameter) {
    return 0.25 * Math.PI * length * diameter;
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
  public double greatestSection(double length, double diameter) {
    return 0.5 * length;
  }

  @Override
  public double radius(double x, double length, double diameter) {
    double t = x / length;
    return diameter * Math.sqrt(Math.max(0.0, t * (1.0 - t)));
  }

  @Override
  public Step volumeStep(Step length, Step diameter) {
    return Step.of("volume", "V", BodiesOfRevolution.SPHEROID_VOLUME, length, diameter);
  }

  @Override
  public Step wettedAreaStep(Step length, Step diameter) {
    Step fineness = Step.of(BodiesOfRevolution.FINENESS_RATIO, length, diameter);
    return Step.of("wetted area", "S_wet", BodiesOfRevolution.SPHEROID_WETTED_AREA, diameter, fineness);
  }

  private Object readResolve() {
    return INSTANCE;
  }

  @Override
  public String toString() {
    return name();
  }
}
