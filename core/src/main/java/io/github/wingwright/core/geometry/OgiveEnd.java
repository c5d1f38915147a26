// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

/**
 * A tangent ogive: an arc of radius ρ = (R² + n²)/(2R) whose centre lies in the plane of the base.
 *
 * <p>With φ the angle at that centre, 0 at the base and α at the tip (cos α = 1 − R/ρ), the radius is
 * r = ρ·(cos φ − cos α) and the distance from the base ρ·sin φ. Written as a product of sines the radius does not lose
 * digits on a slender nose, as the closed forms do, so the integrals run over φ and are good to rounding.
 */
final class OgiveEnd extends EndProfile {
  private static final long serialVersionUID = 1L;

  OgiveEnd() {
    super("tangent ogive", Double.NaN, 0.5, 50.0);
  }

  @Override
  public boolean isTangent() {
    return true;
  }

  @Override
  public double radius(double t, double fineness) {
    double k = 2.0 * fineness;
    double arc = 0.5 * (1.0 + k * k);
    double fromBase = Math.min(1.0, Math.max(0.0, 1.0 - t)) * k;
    // ρ·(cos φ − 1) + 1 without the difference of large numbers: 1 − cos φ = sin²φ/(1 + cos φ).
    double sine = fromBase / arc;
    double cosine = Math.sqrt(Math.max(0.0, 1.0 - sine * sine));
    return Math.max(0.0, 1.0 - fromBase * sine / (1.0 + cosine));
  }

  private static double arc(double k) {
    return 0.5 * (1.0 + k * k);
  }

  private static double tipAngle(double k) {
    // tan(α/2) = R/n, from the chord between tip and base.
    return 2.0 * Math.atan(1.0 / k);
  }

  @Override
  double t(double s, double k) {
    double alpha = tipAngle(k);
    // sin α − sin φ as a product.
    double phi = alpha * (1.0 - s);
    return 2.0 * arc(k) / k * Math.cos(0.5 * (alpha + phi)) * Math.sin(0.5 * (alpha - phi));
  }

  @Override
  double r(double s, double k) {
    double alpha = tipAngle(k);
    double phi = alpha * (1.0 - s);
    return 2.0 * arc(k) * Math.sin(0.5 * (alpha + phi)) * Math.sin(0.5 * (alpha - phi));
  }

  @Override
  double dt(double s, double k) {
    double alpha = tipAngle(k);
    return arc(k) / k * alpha * Math.cos(alpha * (1.0 - s));
  }

  @Override
  double dr(double s, double k) {
    double alpha = tipAngle(k);
    return arc(k) * alpha * Math.sin(alpha * (1.0 - s));
  }
}
