// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;

/**
 * A consideration without a closed form whose margin only rises, or only falls, with the diameter: one bisection finds
 * the end of its interval.
 */
record Monotone(String name, Strength strength, Source source, boolean rising, OfBody ofBody)
    implements Consideration {
  private static final int HALVINGS = 64;

  /** The margin. */
  @FunctionalInterface
  interface OfBody {
    double margin(double length, double diameter);
  }

  @Override
  public double margin(double length, double diameter) {
    return ofBody.margin(length, diameter);
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    boolean atLower = margin(length, search.lower()) >= 0.0;
    boolean atUpper = margin(length, search.upper()) >= 0.0;
    if (atLower && atUpper) {
      return Interval.ALL;
    }
    if (!atLower && !atUpper) {
      return Interval.NONE;
    }
    double holds = atLower ? search.lower() : search.upper();
    double fails = atLower ? search.upper() : search.lower();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (holds + fails);
      if (middle == holds || middle == fails) {
        break;
      }
      if (margin(length, middle) >= 0.0) {
        holds = middle;
      } else {
        fails = middle;
      }
    }
    return rising ? Interval.atLeast(holds) : Interval.atMost(holds);
  }
}
