// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import io.github.wingwright.core.ConvergenceException;
import java.util.Objects;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Where a function is zero, and where a condition stops holding.
 *
 * <p>Both searches start from a bracket, so they cannot wander off: the answer lies between the two ends given. Neither
 * has a default tolerance. A root search takes about ten evaluations, a boundary search one per halving (about 40 for a
 * relative tolerance of 1e-12).
 *
 * <p>Source: R. P. Brent, <i>Algorithms for Minimization without Derivatives</i>, Prentice-Hall 1973, chapter 4.
 */
public final class Roots {
  /** More evaluations than any bracket of doubles can need by halving, and room for Brent's detours. */
  private static final int MOST_EVALUATIONS = 2_000;

  private Roots() {
  }

  /**
   * The zero of a continuous function within a bracket, by Brent's method.
   *
   * <p>Example: {@code find(x -> x * x - 2, 1, 2, Tolerance.relative(1e-14))} is 1.41421356237310.
   *
   * <p>If the function has several zeros in the bracket, one of them is returned. A change of sign through a pole
   * (1/x at 0) is not a zero and is refused.
   *
   * @param function  the function, continuous and finite on the bracket
   * @param lower     the lower end of the bracket
   * @param upper     the upper end of the bracket, above the lower
   * @param tolerance how far the answer may be from the zero, in the unit of the argument
   * @return the zero
   * @throws IllegalArgumentException if the bracket is not an interval, or the function does not change sign on it
   * @throws ConvergenceException     if the function is not finite somewhere, or the change of sign is a pole
   */
  public static double find(DoubleUnaryOperator function, double lower, double upper, Tolerance tolerance) {
    Checks.interval(lower, upper);
    double atLower = function.applyAsDouble(lower);
    double atUpper = function.applyAsDouble(upper);
    if (!(Double.isFinite(atLower) && Double.isFinite(atUpper))) {
      throw new IllegalArgumentException("function must be finite at both ends of the bracket, was "
          + ends(lower, atLower, upper, atUpper));
    }
    if (atLower == 0) {
      return lower;
    }
    if (atUpper == 0) {
      return upper;
    }
    if ((atLower > 0) == (atUpper > 0)) {
      throw new IllegalArgumentException("function must change sign between the ends of the bracket, was "
          + ends(lower, atLower, upper, atUpper));
    }
    Checks.Guarded guarded = new Checks.Guarded(function, MOST_EVALUATIONS, lower, upper);
    // function value accuracy 0: a small function value alone is no reason to stop
    BrentSolver solver = new BrentSolver(tolerance.relative(), tolerance.absolute(), 0);
    double root = solver.solve(Integer.MAX_VALUE, guarded::value, lower, upper);
    double residual = guarded.value(root);
    if (!(root >= lower && root <= upper) || Math.abs(residual) > Math.max(Math.abs(atLower), Math.abs(atUpper))) {
      throw ConvergenceException.inBracket("sign changes without a zero near " + root, guarded.calls(), residual,
          lower, upper);
    }
    return root;
  }

  private static String ends(double lower, double atLower, double upper, double atUpper) {
    return "f(" + lower + ") = " + atLower + " and f(" + upper + ") = " + atUpper;
  }

  /**
   * The last place where a condition holds, on the way from where it holds to where it fails, by halving.
   *
   * <p>The condition must change once on the way. The answer is always a place where it was seen to hold, no farther
   * from a place where it was seen to fail than the tolerance: of the two sides, the safe one. The place of failure may
   * lie above or below. Example: {@code boundary(x -> x * x <= 2, 0, 2, Tolerance.relative(1e-12))} is just below √2.
   *
   * @param condition the condition
   * @param holdsAt   a place where the condition holds
   * @param failsAt   a place where it does not
   * @param tolerance how far the answer may be from the change, in the unit of the argument
   * @return the last place where the condition holds
   * @throws IllegalArgumentException if a place is not finite, or the condition is not as said at one of them
   */
  public static double boundary(DoublePredicate condition, double holdsAt, double failsAt, Tolerance tolerance) {
    Objects.requireNonNull(condition, "condition");
    if (holdsAt != failsAt) {
      Checks.interval(Math.min(holdsAt, failsAt), Math.max(holdsAt, failsAt));
    }
    if (!condition.test(holdsAt)) {
      throw new IllegalArgumentException("condition must hold at " + holdsAt + ", did not");
    }
    if (condition.test(failsAt)) {
      throw new IllegalArgumentException("condition must fail at " + failsAt + ", held");
    }
    double holds = holdsAt;
    double fails = failsAt;
    while (Math.abs(fails - holds) > tolerance.allowance(holds)) {
      double middle = holds + (fails - holds) / 2;
      if (middle == holds || middle == fails) {
        break; // neighbouring doubles: nothing between them
      }
      if (condition.test(middle)) {
        holds = middle;
      } else {
        fails = middle;
      }
    }
    return holds;
  }
}
