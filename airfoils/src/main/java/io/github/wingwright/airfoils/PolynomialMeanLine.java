// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A mean line given by a polynomial of the chord station that is zero at both ends of the chord.
 *
 * <pre>{@code y = c1·x + c2·x² + … + cn·xⁿ,   c1 + … + cn = 0}</pre>
 *
 * <p>Example: {@code PolynomialMeanLine.of(0.2, -0.2)} is the parabola with 5 % camber at half chord.
 */
public final class PolynomialMeanLine implements MeanLine {
  private static final long serialVersionUID = 1L;

  private final double[] coefficients;

  private PolynomialMeanLine(double[] coefficients) {
    this.coefficients = coefficients;
  }

  /**
   * The line with these coefficients of x, x², and so on.
   *
   * @param coefficients at least two, finite, with a sum of zero (to 10⁻⁹) so that the line ends on the chord
   */
  public static PolynomialMeanLine of(double... coefficients) {
    Objects.requireNonNull(coefficients, "coefficients");
    if (coefficients.length < 2) {
      throw new IllegalArgumentException(
          "a polynomial mean line needs at least two coefficients (of x and x²), got " + coefficients.length);
    }
    double sum = 0;
    for (double c : coefficients) {
      sum += Checks.finite("a coefficient of the mean line", c);
    }
    if (Math.abs(sum) > 1e-9) {
      throw new IllegalArgumentException(
          "the coefficients of a mean line must sum to zero so that it ends on the chord, sum was " + sum);
    }
    return new PolynomialMeanLine(coefficients.clone());
  }

  @Override
  public String name() {
    return "polynomial mean line of degree " + coefficients.length;
  }

  @Override
  public double ordinate(double x) {
    double y = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      y = x * (y + coefficients[i]);
    }
    return y;
  }

  @Override
  public double slope(double x) {
    double y = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      y = y * x + (i + 1) * coefficients[i];
    }
    return y;
  }

  @Override
  public double secondDerivative(double x) {
    double y = 0;
    for (int i = coefficients.length - 1; i >= 1; i--) {
      y = y * x + (i + 1) * i * coefficients[i];
    }
    return y;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PolynomialMeanLine line && Arrays.equals(coefficients, line.coefficients);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(coefficients);
  }

  @Override
  public String toString() {
    return name();
  }
}
