// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.numerics.Quadrature;
import java.io.Serializable;

/**
 * The closed body of least wave drag for its length and volume: r = R·(4t·(1 − t))^¾, t = x/L.
 *
 * <pre>{@code
 * V = 3π²/16·R²·L        S_side = R·L·∫ sin^2.5 θ dθ = 1.437768…·R·L
 * S_wet = 4π·R·∫ sin²θ·√(¼·L²·sin θ + 9/4·R²·cos²θ) dθ from 0 to π/2
 * }</pre>
 *
 * <p>The area is integrated over θ, t = ½·(1 − cos θ), on panels that halve towards the tip, where a slender body turns.
 */
final class SearsHaack implements BodyShape, Serializable {
  private static final long serialVersionUID = 1L;
  static final SearsHaack INSTANCE = new SearsHaack();

  /** ∫ sin^2.5 θ dθ from 0 to π: √π·Γ(7/4)/Γ(9/4). */
  private static final double SIDE = 1.437768281682710649;

  private static final int PANELS = 10;

  private SearsHaack() {}

  @Override
  public String name() {
    return "Sears-Haack body";
  }

  @Override
  public double leastFinenessRatio() {
    return 1.0;
  }

  @Override
  public double volume(double length, double diameter) {
    return BodiesOfRevolution.searsHaackVolume(length, diameter);
  }

  @Override
  public double wettedArea(double length, double diameter) {
    double l = 0.25 * length * length;
    double r = 0.5625 * diameter * diameter;
    double sum = 0.0;
    double upper = 0.5 * Math.PI;
    for (int panel = 1; panel <= PANELS; panel++) {
      double lower = panel == PANELS ? 0.0 : 0.5 * upper;
      sum += Quadrature.onPanels(theta -> element(theta, l, r), lower, upper, 1);
      upper = lower;
    }
    return 2.0 * Math.PI * diameter * sum;
  }

  private static double element(double theta, double l, double r) {
    double sine = Math.sin(theta);
    double cosine = Math.cos(theta);
    return sine * sine * Math.sqrt(l * sine + r * cosine * cosine);
  }

  @Override
  public double sideArea(double length, double diameter) {
    return 0.5 * SIDE * diameter * length;
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
    double q = Math.sqrt(Math.max(0.0, 4.0 * t * (1.0 - t)));
    return 0.5 * diameter * q * Math.sqrt(q);
  }

  @Override
  public double relativeError() {
    return EndProfile.QUADRATURE_ERROR;
  }

  @Override
  public Step volumeStep(Step length, Step diameter) {
    return Step.of("volume", "V", BodiesOfRevolution.SEARS_HAACK_VOLUME, length, diameter);
  }

  private Object readResolve() {
    return INSTANCE;
  }

  @Override
  public String toString() {
    return name();
  }
}
