// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Step;

/** A power of the distance from the tip, r/R = t^m; with r/R = s² the outline has no singular slope in s. */
final class PowerEnd extends EndProfile {
  private static final long serialVersionUID = 1L;

  private final double exponent;

  PowerEnd(double exponent) {
    super("power series", exponent, 0.05, 50.0);
    this.exponent = exponent;
  }

  @Override
  public boolean isTangent() {
    return false;
  }

  @Override
  public double radius(double t, double fineness) {
    return Math.pow(Math.max(0.0, t), exponent);
  }

  @Override
  public double fullness(double fineness) {
    return EndFormulas.powerFullness(exponent);
  }

  @Override
  public double volumeCentroid(double fineness) {
    return (2.0 * exponent + 1.0) / (2.0 * exponent + 2.0);
  }

  @Override
  public double sideFullness(double fineness) {
    return 1.0 / (exponent + 1.0);
  }

  @Override
  Step fullnessStep(double fineness) {
    return Step.of(EndFormulas.POWER_FULLNESS, given("exponent of the power series", "m", exponent));
  }

  @Override
  double t(double s, double k) {
    return Math.pow(s, 2.0 / exponent);
  }

  @Override
  double r(double s, double k) {
    return s * s;
  }

  @Override
  double dt(double s, double k) {
    return 2.0 / exponent * Math.pow(s, 2.0 / exponent - 1.0);
  }

  @Override
  double dr(double s, double k) {
    return 2.0 * s;
  }
}
