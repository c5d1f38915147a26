// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.numerics.GoldenSection;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;
import java.util.function.BinaryOperator;

/**
 * A consideration without a closed form. Its margin mostly rises, or falls, all the way with the diameter: then one search
 * between a diameter that holds and one that fails finds the end of its interval. Where both ends of the search say the
 * same, diameters between them are asked as well, because a pod, or a loft that bends, can be too thin and too thick.
 */
record BodyMargin(
    Wording wording, Strength strength, Source source, OfBody ofBody, Concession concession, Reckoning reckoning)
    implements Worded {
  private static final int MOST_STEPS = 200;

  /** Diameters between the ends, by equal ratios, that are asked where both say the same. */
  private static final int BETWEEN = 24;

  private static final int SECTIONS = 40;

  /** Relative width at which an end counts as found. */
  private static final double FINE = 1e-13;

  BodyMargin(Wording wording, Strength strength, Source source, OfBody ofBody, Concession concession) {
    this(wording, strength, source, ofBody, concession, (length, diameter) -> Optional.empty());
  }

  /** The same with its margin as a line of the workings. */
  BodyMargin reckonedBy(BinaryOperator<Step> steps) {
    return new BodyMargin(
        wording, strength, source, ofBody, concession, (length, diameter) -> Optional.of(steps.apply(length, diameter)));
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
    if (marginLower >= 0.0 != marginUpper >= 0.0) {
      return marginUpper >= 0.0
          ? Interval.atLeast(end(length, search.upper(), search.lower()))
          : Interval.atMost(end(length, search.lower(), search.upper()));
    }
    return between(length, search, marginLower, marginUpper);
  }

  /** The interval where both ends of the search hold, or both fail; of two parts that of the thicker bodies. */
  private Interval between(double length, Interval search, double marginLower, double marginUpper) {
    boolean hold = marginLower >= 0.0;
    double most = Math.max(marginLower, marginUpper);
    double ratio = Math.pow(search.upper() / search.lower(), 1.0 / (BETWEEN + 1));
    double first = Double.NaN;
    double last = Double.NaN;
    double peak = Double.NaN;
    for (int i = 1; i <= BETWEEN; i++) {
      double at = search.lower() * Math.pow(ratio, i);
      double margin = margin(length, at);
      if (margin >= 0.0 != hold) {
        first = Double.isNaN(first) ? at : first;
        last = at;
      }
      if (margin > most) {
        most = margin;
        peak = at;
      }
    }
    if (!hold && Double.isNaN(first) && !Double.isNaN(peak)) {
      double top = GoldenSection.greatest(d -> margin(length, d), peak / ratio, peak * ratio, SECTIONS);
      first = margin(length, top) >= 0.0 ? top : first;
      last = first;
    }
    if (Double.isNaN(first)) {
      return hold ? Interval.ALL : Interval.NONE;
    }
    return hold
        ? Interval.atLeast(end(length, search.upper(), last))
        : new Interval(end(length, first, search.lower()), end(length, last, search.upper()));
  }

  /** Where it changes between a diameter that holds and one that fails: the last that holds. */
  private double end(double length, double holding, double failing) {
    double holds = holding;
    double fails = failing;
    double marginHolds = margin(length, holds);
    double marginFails = margin(length, fails);
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
    return holds;
  }
}
