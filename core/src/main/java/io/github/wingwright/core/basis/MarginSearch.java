// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * Finds the interval on which a continuous margin is not negative: for considerations that have no closed form.
 *
 * <p>The margin is looked at on 257 points spaced by equal ratios, then the ends are refined by bisection.
 */
public final class MarginSearch {
  /** Points of the first scan, spaced by equal ratios. */
  private static final int SCAN = 257;

  /** Golden sections of two scan steps: enough to reach neighbouring doubles. */
  private static final int SECTIONS = 90;

  private static final double GOLDEN = 0.5 * (Math.sqrt(5.0) - 1.0);

  /** Bisection halves the step until the ends are exact to a few units in the last place. */
  private static final int HALVINGS = 60;

  private MarginSearch() {}

  /**
   * The widest run of satisfied scan points, its ends refined. An end that lies at the end of the search is reported as
   * unbounded, because the margin does not bind there. Where no scan point is satisfied, an interval narrower than a
   * step is looked for around the point with the greatest margin.
   *
   * @param margin zero or more where satisfied
   * @param search where to look, positive and finite
   * @return the interval, empty if no value was found that satisfies the margin
   */
  public static Interval interval(DoubleUnaryOperator margin, Interval search) {
    Objects.requireNonNull(margin, "margin");
    Objects.requireNonNull(search, "search");
    double lower = search.lower();
    double upper = search.upper();
    if (!(lower > 0.0) || !(upper > lower) || Double.isInfinite(upper)) {
      throw new IllegalArgumentException("search must be positive, finite and not empty, was " + search);
    }
    double ratio = Math.pow(upper / lower, 1.0 / (SCAN - 1));
    int bestFrom = -1;
    int bestTo = -2;
    int from = -1;
    int peak = 0;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < SCAN; i++) {
      double value = at(margin, point(lower, ratio, i, upper));
      if (value > greatest) {
        greatest = value;
        peak = i;
      }
      boolean satisfied = value >= 0.0;
      if (satisfied && from < 0) {
        from = i;
      }
      if (satisfied && i - from > bestTo - bestFrom) {
        bestFrom = from;
        bestTo = i;
      }
      if (!satisfied) {
        from = -1;
      }
    }
    if (bestFrom < 0) {
      double left = point(lower, ratio, Math.max(peak - 1, 0), upper);
      double right = point(lower, ratio, Math.min(peak + 1, SCAN - 1), upper);
      double top = peakBetween(margin, left, right);
      return at(margin, top) >= 0.0
          ? new Interval(edge(margin, top, left), edge(margin, top, right))
          : Interval.NONE;
    }
    double low =
        bestFrom == 0
            ? Double.NEGATIVE_INFINITY
            : edge(margin, point(lower, ratio, bestFrom, upper), point(lower, ratio, bestFrom - 1, upper));
    double high =
        bestTo == SCAN - 1
            ? Double.POSITIVE_INFINITY
            : edge(margin, point(lower, ratio, bestTo, upper), point(lower, ratio, bestTo + 1, upper));
    return new Interval(low, high);
  }

  private static double at(DoubleUnaryOperator margin, double x) {
    double value = margin.applyAsDouble(x);
    if (Double.isNaN(value)) {
      throw new IllegalArgumentException("margin must be a number, was NaN at " + x + " m");
    }
    return value;
  }

  private static double peakBetween(DoubleUnaryOperator margin, double left, double right) {
    double a = left;
    double b = right;
    for (int i = 0; i < SECTIONS; i++) {
      double low = b - GOLDEN * (b - a);
      double high = a + GOLDEN * (b - a);
      if (at(margin, low) >= at(margin, high)) {
        b = high;
      } else {
        a = low;
      }
    }
    return 0.5 * (a + b);
  }

  private static double point(double lower, double ratio, int i, double upper) {
    return i == SCAN - 1 ? upper : lower * Math.pow(ratio, i);
  }

  private static double edge(DoubleUnaryOperator margin, double satisfied, double violated) {
    double inside = satisfied;
    double outside = violated;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (inside + outside);
      if (at(margin, middle) >= 0.0) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }
}
