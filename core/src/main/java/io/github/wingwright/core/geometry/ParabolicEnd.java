// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Step;

/** A parabola with its axis across the body, r/R = (2t − K·t²)/(2 − K). */
final class ParabolicEnd extends EndProfile {
  private static final long serialVersionUID = 1L;

  private final double parameter;

  ParabolicEnd(double parameter) {
    super("parabolic series", parameter, 0.05, 50.0);
    this.parameter = parameter;
  }

  @Override
  public boolean isTangent() {
    return parameter == 1.0;
  }

  @Override
  public double radius(double t, double fineness) {
    return t * (2.0 - parameter * t) / (2.0 - parameter);
  }

  @Override
  public double fullness(double fineness) {
    return EndFormulas.parabolicFullness(parameter);
  }

  @Override
  public double volumeCentroid(double fineness) {
    return (1.0 - 0.8 * parameter + parameter * parameter / 6.0) / square(2.0 - parameter) / fullness(fineness);
  }

  @Override
  public double sideFullness(double fineness) {
    return (1.0 - parameter / 3.0) / (2.0 - parameter);
  }

  @Override
  Step fullnessStep(double fineness) {
    return Step.of(EndFormulas.PARABOLIC_FULLNESS, given("parameter of the parabolic series", "K", parameter));
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
    return 2.0 * (1.0 - parameter * s) / (2.0 - parameter);
  }
}
