// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Step;

/** Half an ellipsoid, r/R = √(1 − (1 − t)²), of any length; with a length of one radius a hemisphere. All is closed. */
final class EllipsoidEnd extends EndProfile {
  private static final long serialVersionUID = 1L;

  EllipsoidEnd(String name, double leastFineness, double greatestFineness) {
    super(name, Double.NaN, leastFineness, greatestFineness);
  }

  @Override
  public boolean isTangent() {
    return true;
  }

  @Override
  public double radius(double t, double fineness) {
    return Math.sqrt(Math.max(0.0, t * (2.0 - t)));
  }

  @Override
  public double fullness(double fineness) {
    return 2.0 / 3.0;
  }

  @Override
  public double volumeCentroid(double fineness) {
    return 0.625;
  }

  @Override
  public double curvedArea(double fineness) {
    return EndFormulas.ellipsoidArea(fineness);
  }

  @Override
  public double surfaceCentroid(double fineness) {
    // ∫ z dS from the base is 2/3·π·R·n²·(1 + q + q²)/(1 + q) with q = R/n.
    double q = 0.5 / fineness;
    return 1.0 - 2.0 / 3.0 / q * (1.0 + q + q * q) / (1.0 + q) / curvedArea(fineness);
  }

  @Override
  public double sideFullness(double fineness) {
    return 0.25 * Math.PI;
  }

  @Override
  Step areaStep(double fineness) {
    if (EndFormulas.ELLIPSOID_AREA.inputs().get(0).domain().contains(fineness)) {
      return Step.of(EndFormulas.ELLIPSOID_AREA, given("fineness", "f", fineness));
    }
    // The printed formula divides zero by zero for the hemisphere; the method gives its limit, 2.
    return super.areaStep(fineness);
  }

  @Override
  double t(double s, double k) {
    return 1.0 - Math.cos(0.5 * Math.PI * s);
  }

  @Override
  double r(double s, double k) {
    return Math.sin(0.5 * Math.PI * s);
  }

  @Override
  double dt(double s, double k) {
    return 0.5 * Math.PI * Math.sin(0.5 * Math.PI * s);
  }

  @Override
  double dr(double s, double k) {
    return 0.5 * Math.PI * Math.cos(0.5 * Math.PI * s);
  }
}
