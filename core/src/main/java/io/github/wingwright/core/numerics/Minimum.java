// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import io.github.wingwright.core.ConvergenceException;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * The least value of a function on an interval, and where it is. For a maximum, negate the function.
 *
 * <p>Near a smooth minimum a function is flat: to first order, moving the argument by √ε of itself (about 1.5e-8) does
 * not change the value at all. So the place of a minimum is good to about 1e-8 of its size at best, while the value is
 * good to nearly all its digits. A relative tolerance below {@value #LEAST_RELATIVE} is treated as that, and an absolute
 * one below 1e-15 of the interval's width as that, so that a search towards zero ends.
 *
 * <p>Source: R. P. Brent, <i>Algorithms for Minimization without Derivatives</i>, Prentice-Hall 1973, chapter 5.
 *
 * @param argument where the minimum is
 * @param value    the function there
 */
public record Minimum(double argument, double value) {
  /** The finest relative tolerance of the argument that a search honours. */
  public static final double LEAST_RELATIVE = 1e-9;

  private static final int MOST_EVALUATIONS = 1_000;

  /**
   * The minimum of a function that falls and then rises (or only does one of the two), by Brent's method.
   *
   * <p>Both ends count: the minimum of a rising function is its lower end, exactly. If the function has several minima
   * the answer is one of them; {@link #amongSeveral} looks for the least. Example:
   * {@code within(x -> (x - 3) * (x - 3), 0, 10, Tolerance.relative(1e-8))} is at 3 with value 0.
   *
   * @param function  the function, finite on the interval
   * @param lower     the lower end of the interval
   * @param upper     the upper end of the interval, above the lower
   * @param tolerance how far the argument may be from the true one, in its unit
   * @return the minimum
   * @throws IllegalArgumentException if the interval is none
   * @throws ConvergenceException     if the function is not finite somewhere
   */
  public static Minimum within(DoubleUnaryOperator function, double lower, double upper, Tolerance tolerance) {
    Checks.interval(lower, upper);
    Checks.Guarded guarded = new Checks.Guarded(function, MOST_EVALUATIONS, lower, upper);
    Minimum least = new Minimum(lower, guarded.value(lower));
    least = least.orBelow(upper, guarded.value(upper));
    return refine(guarded, lower, upper, tolerance, least);
  }

  /**
   * The least of several minima: a scan at even spacing, then Brent's method around every dip the scan has seen.
   *
   * <p>A dip narrower than the spacing may be missed: the number of steps is the caller's statement of how narrow a dip
   * can be.
   *
   * @param function  the function, finite on the interval
   * @param lower     the lower end of the interval
   * @param upper     the upper end of the interval, above the lower
   * @param steps     the number of steps of the scan, at least 2
   * @param tolerance how far the argument may be from the true one, in its unit
   * @return the least minimum found
   * @throws IllegalArgumentException if the interval is none or there are fewer than two steps
   * @throws ConvergenceException     if the function is not finite somewhere
   */
  public static Minimum amongSeveral(
      DoubleUnaryOperator function, double lower, double upper, int steps, Tolerance tolerance) {
    Checks.interval(lower, upper);
    if (steps < 2) {
      throw new IllegalArgumentException("scan must have at least 2 steps, was " + steps);
    }
    double[] x = new double[steps + 1];
    double[] y = new double[steps + 1];
    Checks.Guarded scan = new Checks.Guarded(function, steps + 1, lower, upper);
    for (int i = 0; i <= steps; i++) {
      x[i] = i == steps ? upper : lower + (upper - lower) * i / steps;
      y[i] = scan.value(x[i]);
    }
    Minimum least = new Minimum(x[0], y[0]);
    for (int i = 0; i <= steps; i++) {
      int before = Math.max(i - 1, 0);
      int after = Math.min(i + 1, steps);
      least = least.orBelow(x[i], y[i]);
      if (y[i] <= y[before] && y[i] <= y[after] && x[before] < x[after]) {
        Checks.Guarded dip = new Checks.Guarded(function, MOST_EVALUATIONS, x[before], x[after]);
        least = refine(dip, x[before], x[after], tolerance, least);
      }
    }
    return least;
  }

  private static Minimum refine(
      Checks.Guarded function, double lower, double upper, Tolerance tolerance, Minimum known) {
    double relative = Math.max(tolerance.relative(), LEAST_RELATIVE);
    double absolute = Math.max(tolerance.absolute(), 1e-15 * (upper - lower));
    UnivariatePointValuePair found = new BrentOptimizer(relative, absolute).optimize(
        new MaxEval(Integer.MAX_VALUE),
        new UnivariateObjectiveFunction(function::value),
        GoalType.MINIMIZE,
        new SearchInterval(lower, upper));
    return known.orBelow(found.getPoint(), found.getValue());
  }

  private Minimum orBelow(double otherArgument, double otherValue) {
    return otherValue < value ? new Minimum(otherArgument, otherValue) : this;
  }
}
