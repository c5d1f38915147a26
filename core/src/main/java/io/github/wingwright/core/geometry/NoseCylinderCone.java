// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Door;
import java.io.Serializable;

/**
 * A half ellipsoid of length n = f_n·d, a cylinder of length L − n − t, and a cone of length t = f_t·d; R = d/2.
 *
 * <pre>{@code
 * V = 2/3·π·R²·n + π·R²·(L − n − t) + 1/3·π·R²·t
 * S_wet = π·R²·(1 + n/(R·e)·asin e) + 2π·R·(L − n − t) + π·R·√(R² + t²),   e² = 1 − R²/n²
 * }</pre>
 *
 * @param noseFineness f_n, at least 0.5 (a hemisphere)
 * @param tailFineness f_t, positive
 */
record NoseCylinderCone(double noseFineness, double tailFineness) implements BodyShape, Serializable {
  private static final Source CHOICE = Source.taken("proportion of the chosen body shape");

  NoseCylinderCone {
    Door.within(noseFineness, 0.5, 20.0, "nose fineness");
    Door.within(tailFineness, 0.05, 50.0, "tail fineness");
  }

  @Override
  public String name() {
    return "elliptic nose, cylinder, cone";
  }

  @Override
  public double leastFinenessRatio() {
    return noseFineness + tailFineness;
  }

  @Override
  public double volume(double length, double diameter) {
    return BodiesOfRevolution.noseCylinderConeVolume(length, diameter, noseFineness, tailFineness);
  }

  @Override
  public double wettedArea(double length, double diameter) {
    return BodiesOfRevolution.noseCylinderConeWettedArea(length, diameter, noseFineness, tailFineness);
  }

  @Override
  public double sideArea(double length, double diameter) {
    double n = noseFineness * diameter;
    double t = tailFineness * diameter;
    return 0.25 * Math.PI * n * diameter + diameter * (length - n - t) + 0.5 * t * diameter;
  }

  @Override
  public double volumeCentroid(double length, double diameter) {
    double n = noseFineness * diameter;
    double t = tailFineness * diameter;
    double middle = length - n - t;
    double nose = 2.0 / 3.0 * n;
    double tail = t / 3.0;
    // Centroids: of the half ellipsoid 3/8 n ahead of its base, of the cone t/4 behind its base.
    return (nose * 0.625 * n + middle * (n + 0.5 * middle) + tail * (length - 0.75 * t)) / (nose + middle + tail);
  }

  @Override
  public double surfaceCentroid(double length, double diameter) {
    double r = 0.5 * diameter;
    double n = noseFineness * diameter;
    double t = tailFineness * diameter;
    double middle = length - n - t;
    double nose = BodiesOfRevolution.halfEllipsoidArea(diameter, noseFineness);
    double cylinder = Math.PI * diameter * middle;
    double cone = BodiesOfRevolution.coneArea(diameter, tailFineness);
    double noseX = n - noseMoment(r, n) / nose;
    return (nose * noseX + cylinder * (n + 0.5 * middle) + cone * (length - 2.0 / 3.0 * t)) / (nose + cylinder + cone);
  }

  /** ∫ z dS over the half ellipsoid, z from its base: 2/3·π·R·n²·(1 − k³)/(1 − k²) with k = R/n; also right at k = 1. */
  private static double noseMoment(double r, double n) {
    double k = r / n;
    return 2.0 / 3.0 * Math.PI * r * n * n * (1.0 + k + k * k) / (1.0 + k);
  }

  @Override
  public double greatestSection(double length, double diameter) {
    return noseFineness * diameter;
  }

  @Override
  public double radius(double x, double length, double diameter) {
    double r = 0.5 * diameter;
    double n = noseFineness * diameter;
    double t = tailFineness * diameter;
    if (x < n) {
      double u = x / n;
      return r * Math.sqrt(Math.max(0.0, u * (2.0 - u)));
    }
    return x <= length - t ? r : r * Math.max(0.0, (length - x) / t);
  }

  @Override
  public Step volumeStep(Step length, Step diameter) {
    return Step.of("volume", "V", BodiesOfRevolution.NOSE_CYLINDER_CONE_VOLUME, inputs(length, diameter));
  }

  @Override
  public Step wettedAreaStep(Step length, Step diameter) {
    return Step.of("wetted area", "S_wet", BodiesOfRevolution.NOSE_CYLINDER_CONE_WETTED_AREA, inputs(length, diameter));
  }

  private Step[] inputs(Step length, Step diameter) {
    Step nose = Step.given("nose length over diameter", "f_n", noseFineness, CHOICE);
    Step tail = Step.given("tail length over diameter", "f_t", tailFineness, CHOICE);
    return new Step[] {length, diameter, nose, tail};
  }

  @Override
  public String toString() {
    return name();
  }
}
