// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;
import java.util.function.BinaryOperator;

/**
 * A consideration without a closed form whose margin only rises, or only falls, with the diameter: one search between
 * a diameter that holds and one that fails finds the end of its interval.
 */
record Monotone(
    Wording wording, Strength strength, Source source, boolean rising, OfBody ofBody, Concession concession, Reckoning reckoning)
    implements Worded {
  private static final int MOST_STEPS = 200;

  /** Relative width at which an end counts as found. */
  private static final double FINE = 1e-13;

  Monotone(
      Wording wording, Strength strength, Source source, boolean rising, OfBody ofBody, Concession concession) {
    this(wording, strength, source, rising, ofBody, concession, (length, diameter) -> Optional.empty());
  }

  /** The same with its margin as a line of the workings. */
  Monotone reckonedBy(BinaryOperator<Step> steps) {
    return new Monotone(
        wording, strength, source, rising, ofBody, concession, (length, diameter) -> Optional.of(steps.apply(length, diameter)));
  }

  /** How the margin comes about. */
  @FunctionalInterface
  interface Reckoning {
    Optional<Step> of(Step length, Step diameter);
  }

  /** The margin. */
  @FunctionalInterface
  interface OfBody {
    double margin(double length, double diameter);
  }

  @Override
  public Optional<Step> workings(Step length, Step diameter) {
    return reckoning.of(length, diameter);
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return quoted(unit) + " " + concession.words(length, diameter, unit);
  }

  @Override
  public double margin(double length, double diameter) {
    return ofBody.margin(length, diameter);
  }

  @Override
  public Interval diametersAt(double length, Interval search, Interval part) {
    boolean inside = part.lower() < part.upper() && part.lower() >= search.lower() && part.upper() <= search.upper();
    Interval there = inside ? diametersAt(length, part) : Interval.NONE;
    return there.isEmpty() ? diametersAt(length, search) : there;
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    double marginLower = margin(length, search.lower());
    double marginUpper = margin(length, search.upper());
    boolean atLower = marginLower >= 0.0;
    boolean atUpper = marginUpper >= 0.0;
    if (atLower && atUpper) {
      return Interval.ALL;
    }
    if (!atLower && !atUpper) {
      return Interval.NONE;
    }
    double holds = atLower ? search.lower() : search.upper();
    double fails = atLower ? search.upper() : search.lower();
    double marginHolds = atLower ? marginLower : marginUpper;
    double marginFails = atLower ? marginUpper : marginLower;
    boolean halve = false;
    for (int i = 0; i < MOST_STEPS && Math.abs(holds - fails) > FINE * Math.abs(holds); i++) {
      double width = Math.abs(holds - fails);
      // The secant where it gains, else the middle: a kink must not hold it up.
      double between = marginHolds / (marginHolds - marginFails);
      double at = halve || !(between > 0.0 && between < 1.0) ? 0.5 * (holds + fails) : holds + between * (fails - holds);
      if (at == holds || at == fails) {
        at = 0.5 * (holds + fails);
      }
      double margin = margin(length, at);
      if (margin >= 0.0) {
        holds = at;
        marginHolds = margin;
        marginFails *= 0.5;
      } else {
        fails = at;
        marginFails = margin;
        marginHolds *= 0.5;
      }
      halve = Math.abs(holds - fails) > 0.5 * width;
    }
    return rising ? Interval.atLeast(holds) : Interval.atMost(holds);
  }
}
