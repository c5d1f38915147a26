// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;

/**
 * The mean line of the NACA 4-digit sections: two parabolas that meet with a common horizontal tangent.
 *
 * <pre>{@code
 * y = m/p²·(2·p·x − x²)                     0 ≤ x ≤ p
 * y = m/(1−p)²·(1 − 2·p + 2·p·x − x²)       p ≤ x ≤ 1
 * }</pre>
 * with the greatest camber m at the station p. The second derivative jumps at p (from −2·m/p² to −2·m/(1−p)²), so
 * the perpendicular construction has a tiny true corner there: do not expect a smooth surface slope at p.
 *
 * <p>Source: Jacobs, Ward and Pinkerton, NACA Report 460, 1933 (from memory; it reproduces the public coordinate
 * tables). Example: m = 0.02, p = 0.4 at x = 0.7 gives y = 0.015.
 *
 * @param maximumCamber greatest ordinate m [chords], 0 to 0.1
 * @param position its station p [chords], 0.05 to 0.95
 */
public record FourDigitMeanLine(double maximumCamber, double position) implements MeanLine {
  private static final Source REPORT =
      Source.fromMemory("Jacobs, Ward and Pinkerton, NACA Report 460, 1933", "");

  /** Ordinate ahead of the greatest camber. */
  public static final Formula FORWARD = Formula.named("4-digit mean line ahead of its greatest camber")
      .gives("y_c")
      .as("m/p^2·x·(2·p − x)")
      .where("m", "greatest camber", 0, 0.1)
      .where("p", "position of the greatest camber", 0.5, 0.95)
      .where("x", "chord station", 0, 0.5)
      .from(REPORT)
      .computedBy((m, p, x) -> ordinate(m, p, x));

  /** Ordinate behind the greatest camber. */
  public static final Formula AFT = Formula.named("4-digit mean line behind its greatest camber")
      .gives("y_c")
      .as("m/(1 − p)^2·(1 − 2·p + 2·p·x − x^2)")
      .where("m", "greatest camber", 0, 0.1)
      .where("p", "position of the greatest camber", 0.05, 0.5)
      .where("x", "chord station", 0.5, 1)
      .from(REPORT)
      .computedBy((m, p, x) -> ordinate(m, p, x));

  public FourDigitMeanLine {
    Checks.within("maximum camber", maximumCamber, 0, 0.1);
    Checks.within("position of maximum camber", position, 0.05, 0.95);
  }

  @Override
  public String name() {
    return "4-digit mean line, camber " + Text.percent(maximumCamber) + " at " + Text.percent(position);
  }

  @Override
  public double ordinate(double x) {
    return ordinate(maximumCamber, position, x);
  }

  /**
   * Ordinate of the 4-digit mean line.
   *
   * @param m greatest camber [chords]
   * @param p its position [chords], between 0 and 1
   * @param x chord station [chords], 0 to 1
   * @return ordinate [chords]
   */
  public static double ordinate(double m, double p, double x) {
    return x <= p
        ? m / (p * p) * x * (2 * p - x)
        : m / ((1 - p) * (1 - p)) * (1 - x) * (1 + x - 2 * p);
  }

  @Override
  public double slope(double x) {
    return slope(maximumCamber, position, x);
  }

  /**
   * Slope of the 4-digit mean line.
   *
   * @param m greatest camber [chords]
   * @param p its position [chords], between 0 and 1
   * @param x chord station [chords], 0 to 1
   * @return dy/dx [1]
   */
  public static double slope(double m, double p, double x) {
    double span = x <= p ? p : 1 - p;
    return 2 * m / (span * span) * (p - x);
  }

  @Override
  public double secondDerivative(double x) {
    double span = x < position ? position : 1 - position;
    return -2 * maximumCamber / (span * span);
  }

  @Override
  public double[] breaks() {
    return new double[] {position};
  }
}
