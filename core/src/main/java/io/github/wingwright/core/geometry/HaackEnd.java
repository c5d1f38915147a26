// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Step;

/**
 * The Haack series, π·(r/R)² = θ − ½·sin 2θ + C·sin³θ with t = ½·(1 − cos θ).
 *
 * <p>From the definition: ∫ r² dt = ½ + 3C/16 and ∫ t·r² dt = (11 + 3C)/32, both over R².
 */
final class HaackEnd extends EndProfile {
  private static final long serialVersionUID = 1L;

  /** Below this angle the difference θ − ½·sin 2θ is taken from its series, which is exact to 1e-17 there. */
  private static final double SMALL = 0.05;

  private final double parameter;

  HaackEnd(double parameter) {
    super("Haack series", parameter, 0.05, 50.0);
    this.parameter = parameter;
  }

  /** θ − ½·sin 2θ, which is 2/3·θ³ near zero. */
  private static double area(double theta) {
    if (theta < SMALL) {
      double q = 4.0 * theta * theta;
      return q * theta / 6.0 * (1.0 - q / 20.0 * (1.0 - q / 42.0 * (1.0 - q / 72.0 * (1.0 - q / 110.0))));
    }
    return theta - 0.5 * Math.sin(2.0 * theta);
  }

  private double radiusAtAngle(double theta) {
    double sine = Math.sin(theta);
    return Math.sqrt(Math.max(0.0, (area(theta) + parameter * sine * sine * sine) / Math.PI));
  }

  @Override
  public boolean isTangent() {
    return true;
  }

  @Override
  public double radius(double t, double fineness) {
    // 2·asin √t is acos(1 − 2t) without the loss of digits at the tip.
    return radiusAtAngle(2.0 * Math.asin(Math.sqrt(Math.min(1.0, Math.max(0.0, t)))));
  }

  @Override
  public double fullness(double fineness) {
    return EndFormulas.haackFullness(parameter);
  }

  @Override
  public double volumeCentroid(double fineness) {
    return (11.0 + 3.0 * parameter) / (16.0 + 6.0 * parameter);
  }

  @Override
  Step fullnessStep(double fineness) {
    return Step.of(EndFormulas.HAACK_FULLNESS, given("parameter of the Haack series", "C", parameter));
  }

  @Override
  double t(double s, double k) {
    return square(Math.sin(0.5 * Math.PI * s));
  }

  @Override
  double r(double s, double k) {
    return radiusAtAngle(Math.PI * s);
  }

  @Override
  double dt(double s, double k) {
    return 0.5 * Math.PI * Math.sin(Math.PI * s);
  }

  @Override
  double dr(double s, double k) {
    double theta = Math.PI * s;
    double sine = Math.sin(theta);
    double slope = sine * sine * (2.0 + 3.0 * parameter * Math.cos(theta));
    return s == 0.0 ? 0.0 : slope / (2.0 * radiusAtAngle(theta));
  }
}
