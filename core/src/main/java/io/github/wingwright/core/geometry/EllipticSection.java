// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;


/**
 * An ellipse with half axes a ≥ b.
 *
 * <pre>{@code A = π·a·b        U = 2π/M·(a² − Σ 2^(n−1)·c_n²)}</pre>
 *
 * <p>with M the arithmetic-geometric mean of a and b, c_0² = a² − b² and c_n half the difference of the means before: exact to
 * rounding after four or five steps. Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 17.6, from memory.
 */
final class EllipticSection implements CrossSection {
  private static final long serialVersionUID = 1L;
  static final EllipticSection INSTANCE = new EllipticSection();

  private EllipticSection() {}

  @Override
  public String name() {
    return "ellipse";
  }

  @Override
  public double radial(double angle, double width, double height) {
    return 1.0;
  }

  @Override
  public double area(double width, double height) {
    return 0.25 * Math.PI * width * height;
  }

  @Override
  public double perimeter(double width, double height) {
    double a = 0.5 * Math.max(width, height);
    double b = 0.5 * Math.min(width, height);
    double square = a * a;
    double sum = 0.5 * (a - b) * (a + b);
    double weight = 0.5;
    while (a - b > 1e-15 * a) {
      double c = 0.5 * (a - b);
      double mean = 0.5 * (a + b);
      b = Math.sqrt(a * b);
      a = mean;
      weight *= 2.0;
      sum += weight * c * c;
    }
    return 2.0 * Math.PI * (square - sum) / a;
  }

  private Object readResolve() {
    return INSTANCE;
  }

  @Override
  public String toString() {
    return name();
  }
}
