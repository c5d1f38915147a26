// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import io.github.wingwright.core.ConvergenceException;
import java.util.Comparator;
import java.util.Objects;
import java.util.PriorityQueue;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The integral of a function, by Gauss and Legendre's rule on panels.
 *
 * <p>The rule takes {@value #POINTS} points in each panel and is exact for polynomials up to degree 19. It never uses the
 * ends of a panel, so a function may be infinite there if its integral is not (1/√x at 0). That costs many panels, and the
 * error estimate is then too small, for 1/√x by a factor of 2.4; a substitution (x = t²) is better.
 */
public final class Quadrature {
  /** The points of the rule in one panel. */
  public static final int POINTS = 10;

  private static final int MOST_PANELS = 4_000;

  /** What rounding alone leaves of a sum of terms, as a part of the sum of their magnitudes. */
  private static final double ROUNDING = 4e-15;

  private static final double[] NODES = new double[POINTS];
  private static final double[] WEIGHTS = new double[POINTS];

  static {
    GaussIntegrator rule = new GaussIntegratorFactory().legendreHighPrecision(POINTS);
    for (int i = 0; i < POINTS; i++) {
      NODES[i] = rule.getPoint(i);
      WEIGHTS[i] = rule.getWeight(i);
    }
  }

  private Quadrature() {
  }

  /**
   * An integral with its estimated error.
   *
   * @param value       the integral, in the unit of the function times that of its argument
   * @param error       an estimate of how far the value may be off, zero or more, for a smooth function far too large
   * @param evaluations how often the function was called
   */
  public record Integral(double value, double error, int evaluations) {
  }

  /**
   * The integral of a function to a tolerance, by halving the worst panel until the whole is good enough.
   *
   * <p>A panel's error is the difference between the rule on the panel and the rule on its two halves; the value of the
   * halves is kept. Turned-around limits change the sign. Example:
   * {@code integrate(Math::sin, 0, Math.PI, Tolerance.relative(1e-12)).value()} is 2.
   *
   * @param function  the function, finite inside the interval
   * @param from      the start of the interval, finite
   * @param to        the end of the interval, finite
   * @param tolerance how far the integral may be off, in its unit
   * @return the integral with its error estimate
   * @throws IllegalArgumentException if a limit is not finite
   * @throws ConvergenceException     if the function is not finite somewhere, or the integral does not settle
   */
  public static Integral integrate(DoubleUnaryOperator function, double from, double to, Tolerance tolerance) {
    Objects.requireNonNull(function, "function");
    Objects.requireNonNull(tolerance, "tolerance");
    if (from == to && Double.isFinite(from)) {
      return new Integral(0, 0, 0);
    }
    double lower = Math.min(from, to);
    double upper = Math.max(from, to);
    Checks.interval(lower, upper);
    Checks.Guarded guarded = new Checks.Guarded(function, Integer.MAX_VALUE, lower, upper);
    PriorityQueue<Panel> panels = new PriorityQueue<>(Comparator.comparingDouble(Panel::error).reversed());
    panels.add(Panel.over(guarded, lower, upper, rule(guarded, lower, upper)));
    while (true) {
      double value = 0;
      double error = 0;
      double magnitude = 0;
      for (Panel panel : panels) {
        value += panel.value();
        error += panel.error();
        magnitude += Math.abs(panel.value());
      }
      if (error <= Math.max(tolerance.allowance(value), ROUNDING * magnitude)) {
        return new Integral(from < to ? value : -value, error, guarded.calls());
      }
      Panel worst = panels.remove();
      double middle = worst.middle();
      if (panels.size() >= MOST_PANELS || !(middle > worst.lower() && middle < worst.upper())) {
        throw ConvergenceException.inBracket("integral from " + lower + " to " + upper + " did not settle",
            guarded.calls(), error, worst.lower(), worst.upper());
      }
      panels.add(Panel.over(guarded, worst.lower(), middle, worst.lowerHalf()));
      panels.add(Panel.over(guarded, middle, worst.upper(), worst.upperHalf()));
    }
  }

  /**
   * The integral of a function on a given number of equal panels: no objects are made and nothing is checked but the
   * arguments and the result, for hot paths whose accuracy is known.
   *
   * <p>Example: {@code onPanels(x -> x * x, 0, 3, 1)} is 9.
   *
   * @param function the function
   * @param from     the start of the interval, finite
   * @param to       the end of the interval, finite
   * @param panels   the number of panels, at least 1
   * @return the integral
   * @throws IllegalArgumentException if a limit is not finite or there is no panel
   * @throws ConvergenceException     if the result is not finite
   */
  public static double onPanels(DoubleUnaryOperator function, double from, double to, int panels) {
    Objects.requireNonNull(function, "function");
    if (panels < 1) {
      throw new IllegalArgumentException("number of panels must be at least 1, was " + panels);
    }
    if (!Double.isFinite(to - from)) {
      throw new IllegalArgumentException("limits of an integral must be finite, was " + from + " to " + to);
    }
    double half = (to - from) / panels / 2;
    double sum = 0;
    for (int panel = 0; panel < panels; panel++) {
      double centre = from + half * (2 * panel + 1);
      for (int i = 0; i < POINTS; i++) {
        sum += WEIGHTS[i] * function.applyAsDouble(centre + half * NODES[i]);
      }
    }
    double integral = half * sum;
    if (!Double.isFinite(integral)) {
      throw ConvergenceException.inBracket("integral is " + integral, panels * POINTS, Double.NaN,
          Math.min(from, to), Math.max(from, to));
    }
    return integral;
  }

  private static double rule(Checks.Guarded function, double lower, double upper) {
    double half = (upper - lower) / 2;
    double centre = lower + half;
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      sum += WEIGHTS[i] * function.value(centre + half * NODES[i]);
    }
    return half * sum;
  }

  /** A panel with the rule's value on each half, and the difference from the rule on the whole. */
  private record Panel(double lower, double upper, double lowerHalf, double upperHalf, double error) {
    static Panel over(Checks.Guarded function, double lower, double upper, double whole) {
      double middle = lower + (upper - lower) / 2;
      double lowerHalf = rule(function, lower, middle);
      double upperHalf = rule(function, middle, upper);
      return new Panel(lower, upper, lowerHalf, upperHalf, Math.abs(lowerHalf + upperHalf - whole));
    }

    double middle() {
      return lower + (upper - lower) / 2;
    }

    double value() {
      return lowerHalf + upperHalf;
    }
  }
}
