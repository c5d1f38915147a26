// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Step;

/** A cone, or a frustum that ends in a flat base of radius β·R: r/R = β + (1 − β)·t. All its integrals are closed. */
final class ConeEnd extends EndProfile {
  private static final long serialVersionUID = 1L;

  private final double base;

  ConeEnd(String name, double base) {
    super(name, base == 0.0 ? Double.NaN : base, 0.05, 50.0);
    this.base = base;
  }

  @Override
  public double tipRatio() {
    return base;
  }

  @Override
  public boolean isTangent() {
    return false;
  }

  @Override
  public double radius(double t, double fineness) {
    return base + (1.0 - base) * t;
  }

  @Override
  public double fullness(double fineness) {
    return EndFormulas.boatTailFullness(base);
  }

  @Override
  public double volumeCentroid(double fineness) {
    double rise = 1.0 - base;
    return (base * base / 2.0 + 2.0 / 3.0 * base * rise + rise * rise / 4.0) / fullness(fineness);
  }

  @Override
  public double curvedArea(double fineness) {
    return EndFormulas.boatTailArea(base, fineness);
  }

  @Override
  public double surfaceCentroid(double fineness) {
    return (2.0 + base) / (3.0 * (1.0 + base));
  }

  @Override
  public double sideFullness(double fineness) {
    return 0.5 * (1.0 + base);
  }

  @Override
  Step fullnessStep(double fineness) {
    return Step.of(EndFormulas.BOAT_TAIL_FULLNESS, given("diameter of the end over that of the base", "β", base));
  }

  @Override
  Step areaStep(double fineness) {
    return Step.of(
        EndFormulas.BOAT_TAIL_AREA,
        given("diameter of the end over that of the base", "β", base),
        given("fineness", "f", fineness));
  }

  @Override
  double t(double s, double k) {
    return s;
  }

  @Override
  double r(double s, double k) {
    return radius(s, k);
  }

  @Override
  double dt(double s, double k) {
    return 1.0;
  }

  @Override
  double dr(double s, double k) {
    return 1.0 - base;
  }
}
