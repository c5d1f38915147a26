// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.MarginSearch;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * All considerations on one family of bodies, weighed together.
 *
 * <p>Every family has a stoutest body (a capsule is at least as long as it is thick); that stands among the limits, so a
 * range never offers a body that does not exist.
 */
final class Negotiation {
  /** Lengths that are looked at where nothing else is known [m]. */
  private static final Interval ANY_LENGTH = Interval.between(1e-3, 1e3);

  /** The most slender body that is looked at. */
  private static final double MOST_SLENDER = 500.0;

  /** So much further than where a consideration is first met a window reaches. */
  private static final double BEYOND = 1.2;

  private static final int LEAST_BAD_STEPS = 400;

  /** A limit missed by a millionth weighs as much as a guideline missed altogether. */
  private static final double LIMITS_FIRST = 1e6;

  private final BodyShape shape;
  private final List<Weighed> weighed;
  private final NamedUnit<Length> unit;

  /** What was found once is kept; finding it again would give the same, so it does not matter who is first. */
  private final Map<Boolean, Interval> lengthsFound = new ConcurrentHashMap<>();

  private final Map<String, Interval> lengthsLeft;

  Negotiation(BodyShape shape, List<Weighed> weighed, NamedUnit<Length> unit) {
    this(shape, weighed, unit, new ConcurrentHashMap<>());
  }

  private Negotiation(
      BodyShape shape, List<Weighed> weighed, NamedUnit<Length> unit, Map<String, Interval> lengthsLeft) {
    this.shape = shape;
    this.lengthsLeft = lengthsLeft;
    List<Weighed> all = new ArrayList<>(weighed.size() + 1);
    all.addAll(weighed);
    all.add(new Weighed(stoutest(shape), Decision.chosen()));
    this.weighed = List.copyOf(all);
    this.unit = unit;
  }

  private static FinenessWithin stoutest(BodyShape shape) {
    double least = shape.leastFinenessRatio();
    String name = "fineness ratio at least " + Considerations.number(least) + " for the shape " + shape.name();
    return new FinenessWithin(Wording.of(name), Strength.LIMIT, Source.DEFINITION, least, Double.POSITIVE_INFINITY);
  }

  List<Weighed> all() {
    return weighed;
  }

  Interval diameterSearch(double length) {
    return Interval.between(length / MOST_SLENDER, length / shape.leastFinenessRatio());
  }

  /** What limits and guidelines leave of the diameter, without telling who. */
  Interval diameters(double length, boolean limitsOnly) {
    Interval search = diameterSearch(length);
    double low = 0.0;
    double high = Double.POSITIVE_INFINITY;
    for (Weighed one : weighed) {
      if (one.binds() && (one.isLimit() || !limitsOnly)) {
        Interval interval = one.consideration().diametersAt(length, search);
        low = Math.max(low, interval.lower());
        high = Math.min(high, interval.upper());
      }
    }
    return new Interval(low, high);
  }

  FeasibleRange diameterRange(double length) {
    Interval search = diameterSearch(length);
    List<Bound> bounds = new ArrayList<>(weighed.size());
    for (Weighed one : weighed) {
      bounds.add(one.onDiameter(length, search, unit));
    }
    return FeasibleRange.of("fuselage diameter", unit, bounds);
  }

  /** What limits and guidelines leave of the length if the diameter is free. */
  FeasibleRange lengthRange() {
    List<Bound> bounds = new ArrayList<>(weighed.size() + 1);
    Interval all = Interval.ALL;
    for (Weighed one : weighed) {
      Interval lengths = one.isTarget() ? Interval.ALL : lengthsLeftBy(one);
      bounds.add(one.onLength(lengths, unit));
      all = one.binds() ? all.intersect(lengths) : all;
    }
    if (!all.isEmpty()) {
      Interval together = lengthsLeftTogether(all, false);
      Source source = Source.library("lengths at which the intervals of the diameter still meet");
      bounds.add(Bound.of("some diameter satisfies all of them together", Strength.GUIDELINE, source, together));
    }
    return FeasibleRange.of("fuselage length", unit, bounds);
  }

  FeasibleRange lengthRange(double diameter) {
    List<Bound> bounds = new ArrayList<>(weighed.size());
    for (Weighed one : weighed) {
      bounds.add(one.onLength(one.isTarget() ? Interval.ALL : one.consideration().lengthsAt(diameter, ANY_LENGTH), unit));
    }
    return FeasibleRange.of("fuselage length", unit, bounds);
  }

  /** Lengths at which some diameter satisfies all limits, or all limits and guidelines; ends may be infinite. */
  Interval lengths(boolean limitsOnly) {
    Interval known = lengthsFound.get(limitsOnly);
    if (known == null) {
      known = searchLengths(limitsOnly);
      lengthsFound.put(limitsOnly, known);
    }
    return known;
  }

  private Interval searchLengths(boolean limitsOnly) {
    Interval all = Interval.ALL;
    for (Weighed one : weighed) {
      if (one.binds() && (one.isLimit() || !limitsOnly)) {
        all = all.intersect(lengthsLeftBy(one));
      }
    }
    return all.isEmpty() ? Interval.NONE : all.intersect(lengthsLeftTogether(all, limitsOnly));
  }

  private Interval lengthsLeftBy(Weighed one) {
    return one.consideration() instanceof LengthWithin closed
        ? closed.lengths()
        : lengthsLeft.computeIfAbsent(one.consideration().name(), name -> searchLengthsLeftBy(one));
  }

  private Interval searchLengthsLeftBy(Weighed one) {
    return MarginSearch.interval(
        length -> {
          Interval search = diameterSearch(length);
          return one.consideration().diametersAt(length, search).intersect(search).width();
        },
        ANY_LENGTH);
  }

  private Interval lengthsLeftTogether(Interval within, boolean limitsOnly) {
    Interval search = within.intersect(ANY_LENGTH);
    if (search.width() <= 1e-12 * search.upper()) {
      return diameters(search.lower(), limitsOnly).isEmpty() ? Interval.NONE : within;
    }
    return MarginSearch.interval(length -> diameters(length, limitsOnly).width(), search);
  }

  /**
   * What limits and guidelines leave of the diameter at a length, apart from those that no diameter satisfies there: what
   * cannot be had must not spoil the rest.
   */
  Interval workableDiameters(double length) {
    double[] ends = spread(length);
    return new Interval(ends[0], ends[1]);
  }

  /**
   * The diameter that is least bad at a length where limits and guidelines clash: inside the limits if they leave anything,
   * missing the two guidelines that clash most by the same ratio.
   */
  double leastBadDiameter(double length) {
    double stoutest = length / shape.leastFinenessRatio();
    double[] ends = spread(length);
    double wanted = middle(ends[0], ends[1]);
    if (ends[2] > ends[3]) {
      wanted = middle(ends[2], ends[3]);
    } else {
      wanted = Math.max(ends[2], Math.min(ends[3], wanted));
    }
    return Math.min(wanted, stoutest);
  }

  private static double middle(double low, double high) {
    if (low > 0.0 && high < Double.POSITIVE_INFINITY) {
      return Math.sqrt(low * high);
    }
    return low > 0.0 ? low : high;
  }

  /** Greatest lower and least upper end, leaving out those that leave nothing at all: of all, then of the limits. */
  private double[] spread(double length) {
    Interval search = diameterSearch(length);
    double[] ends = {0.0, Double.POSITIVE_INFINITY, 0.0, Double.POSITIVE_INFINITY};
    for (Weighed one : weighed) {
      Interval interval = one.binds() ? one.consideration().diametersAt(length, search) : Interval.NONE;
      if (!interval.isEmpty()) {
        for (int i = 0; i <= (one.isLimit() ? 2 : 0); i += 2) {
          ends[i] = Math.max(ends[i], interval.lower());
          ends[i + 1] = Math.min(ends[i + 1], interval.upper());
        }
      }
    }
    return ends;
  }

  /**
   * The length where no length satisfies everything. Considerations that no body satisfies within the limits on the length
   * are left out: to come a little nearer to what cannot be had is worth no other consideration. If the rest agrees it is the longest at which it does, else the one at which the worst miss is smallest, limits first.
   */
  double leastBadLength() {
    Negotiation rest = possible();
    Interval agreed = rest.lengths(false);
    if (!agreed.isEmpty()) {
      return bounded(agreed).upper();
    }
    Interval search = bounded(rest.searchOfLeastBad());
    double best = search.upper();
    double least = Double.POSITIVE_INFINITY;
    for (int i = LEAST_BAD_STEPS; i >= 0; i--) {
      double length = search.lower() * Math.pow(search.upper() / search.lower(), (double) i / LEAST_BAD_STEPS);
      double diameter = rest.leastBadDiameter(length);
      double miss = LIMITS_FIRST * rest.worstMiss(length, diameter, true) + rest.worstMiss(length, diameter, false);
      // Of lengths that are as good as each other the longest is taken, as everywhere.
      if (miss < least - 1e-9) {
        least = miss;
        best = length;
      }
    }
    return best;
  }

  /** A part of the plane of length and diameter. */
  record Window(Interval lengths, Interval diameters) {}

  /** The window around a length, widened until every consideration for itself is met by some body in it. */
  Window windowAround(double scale) {
    double shortest = 0.25 * scale;
    double longest = 1.5 * scale;
    double stoutest = Math.max(1.0, shape.leastFinenessRatio());
    double thinnest = 0.01 * scale;
    double thickest = longest / stoutest;
    for (Weighed one : weighed) {
      Interval met = one.binds() ? lengthsLeftBy(one).intersect(ANY_LENGTH) : Interval.NONE;
      if (met.isEmpty()) {
        continue;
      }
      shortest = Math.min(shortest, met.upper() / BEYOND);
      longest = Math.max(longest, met.lower() * BEYOND);
      double length = met.clamp(scale);
      Interval diameters = one.consideration().diametersAt(length, diameterSearch(length));
      if (!diameters.isEmpty()) {
        thinnest = Math.min(thinnest, diameters.upper() / BEYOND);
        thickest = Math.max(thickest, diameters.lower() * BEYOND);
      }
    }
    return new Window(Interval.between(shortest, longest), Interval.between(thinnest, thickest));
  }

  /** Lengths at which some diameter satisfies everything that any body satisfies; ends may be infinite. */
  Interval workableLengths() {
    return possible().lengths(false);
  }

  /** Without those that no body satisfies of a length that the limits allow; itself if there are none. */
  private Negotiation possible() {
    Interval limits = lengths(true);
    Interval allowed = limits.isEmpty() ? Interval.ALL : limits;
    List<Weighed> rest =
        weighed.stream().filter(w -> w.binds() && !lengthsLeftBy(w).intersect(allowed).isEmpty()).toList();
    boolean all = rest.size() == weighed.stream().filter(Weighed::binds).count();
    return all ? this : new Negotiation(shape, rest, unit, lengthsLeft);
  }

  /** Where limits leave a length they are kept; where they clash the least bad length lies between those that do. */
  private Interval searchOfLeastBad() {
    Interval limits = lengths(true);
    if (!limits.isEmpty()) {
      Interval guided = limits;
      for (Weighed one : weighed) {
        Interval both = guided.intersect(lengthsLeftBy(one));
        guided = one.binds() && !both.isEmpty() ? both : guided;
      }
      return Double.isInfinite(limits.upper()) ? guided : limits;
    }
    double low = 0.0;
    double high = Double.POSITIVE_INFINITY;
    for (Weighed one : weighed) {
      if (one.binds() && one.isLimit()) {
        Interval lengths = lengthsLeftBy(one);
        low = Math.max(low, lengths.lower());
        high = Math.min(high, lengths.upper());
      }
    }
    return Interval.between(Math.min(low, high), Math.max(low, high));
  }

  /** Refuses an interval without an upper end: nothing would stop a body from growing. */
  static Interval bounded(Interval lengths) {
    if (Double.isInfinite(lengths.upper())) {
      throw new IllegalStateException(
          "fuselage length must be fixed or bounded: give length(…), or consider lengthAtMost(…), was neither");
    }
    return lengths.lower() > 0.0 ? lengths : Interval.between(0.01 * lengths.upper(), lengths.upper());
  }

  private double worstMiss(double length, double diameter, boolean limitsOnly) {
    double worst = 0.0;
    for (Weighed one : weighed) {
      if (one.binds() && (one.isLimit() || !limitsOnly)) {
        worst = Math.max(worst, -one.consideration().margin(length, diameter));
      }
    }
    return worst;
  }
}
