// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.basis.Conflict.GivingWay;
import io.github.wingwright.core.basis.FeasibleRegion.Point;
import io.github.wingwright.core.basis.RegionTracer.Cut;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the smallest set of considerations that clash, and what each of them would have to give up.
 *
 * <p>Sets of one, two and three are tried in that order. In the plane more than three are rarely needed: of convex regions
 * never (Helly's theorem). Where they are, considerations are dropped one by one as long as the rest still clashes.
 */
final class ConflictSearch {
  private static final double ROUNDING = 1e-12;

  private final RegionTracer tracer;
  private final int count;
  private final double[][] low;
  private final double[][] high;

  ConflictSearch(RegionTracer tracer) {
    this.tracer = tracer;
    this.count = tracer.binding.size();
    this.low = new double[count][tracer.grid.length];
    this.high = new double[count][tracer.grid.length];
    for (int k = 0; k < count; k++) {
      for (int j = 0; j < tracer.grid.length; j++) {
        Interval interval =
            tracer.binding.get(k).consideration().diametersAt(tracer.grid[j], tracer.diameters).intersect(tracer.diameters);
        low[k][j] = interval.isEmpty() ? Double.POSITIVE_INFINITY : interval.lower();
        high[k][j] = interval.isEmpty() ? Double.NEGATIVE_INFINITY : interval.upper();
      }
    }
  }

  Conflict find() {
    int[] all = IntStream.range(0, count).toArray();
    int[] limits = IntStream.of(all).filter(k -> tracer.binding.get(k).isLimit()).toArray();
    // If the limits clash among themselves, that is what must be known first.
    int[] set = smallest(agree(limits) ? all : limits);
    List<GivingWay> ways = new ArrayList<>();
    for (int k : set) {
      givingWay(k).ifPresent(ways::add);
    }
    return new Conflict(names(set), ways, ways.isEmpty() ? further(all, set) : List.of());
  }

  private List<Weighed> names(int[] set) {
    return IntStream.of(set).mapToObj(tracer.binding::get).toList();
  }

  /** Sets that clash although nobody in them belongs to a set found before. */
  private List<List<Weighed>> further(int[] all, int[] first) {
    List<List<Weighed>> found = new ArrayList<>();
    int[] rest = IntStream.of(all).filter(k -> !contains(first, k)).toArray();
    while (!agree(rest)) {
      int[] next = smallest(rest);
      found.add(names(next));
      rest = IntStream.of(rest).filter(k -> !contains(next, k)).toArray();
    }
    return found;
  }

  private int[] smallest(int[] from) {
    for (int a : from) {
      if (!agree(a)) {
        return new int[] {a};
      }
    }
    for (int i = 0; i < from.length; i++) {
      for (int j = i + 1; j < from.length; j++) {
        if (!agree(from[i], from[j])) {
          return new int[] {from[i], from[j]};
        }
      }
    }
    for (int i = 0; i < from.length; i++) {
      for (int j = i + 1; j < from.length; j++) {
        for (int k = j + 1; k < from.length; k++) {
          if (!agree(from[i], from[j], from[k])) {
            return new int[] {from[i], from[j], from[k]};
          }
        }
      }
    }
    int[] rest = from;
    for (int a : from) {
      int[] fewer = IntStream.of(rest).filter(k -> k != a).toArray();
      if (!agree(fewer)) {
        rest = fewer;
      }
    }
    return rest;
  }

  /** Whether some body satisfies all of a set: looks at the cuts first, then closely around the narrowest miss. */
  private boolean agree(int... set) {
    int best = 0;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < tracer.grid.length; j++) {
      double lower = tracer.diameters.lower();
      double upper = tracer.diameters.upper();
      for (int k : set) {
        lower = Math.max(lower, low[k][j]);
        upper = Math.min(upper, high[k][j]);
      }
      if (lower <= upper) {
        return true;
      }
      double ratio = upper > 0.0 && lower < Double.POSITIVE_INFINITY ? upper / lower : 0.0;
      if (ratio > greatest) {
        greatest = ratio;
        best = j;
      }
    }
    if (greatest <= 0.0) {
      return false;
    }
    double from = tracer.grid[Math.max(0, best - 1)];
    double to = tracer.grid[Math.min(tracer.grid.length - 1, best + 1)];
    double at = RegionTracer.greatest(l -> cut(l, set).gap(), from, to);
    return cut(at, set).gap() >= -ROUNDING;
  }

  private Cut cut(double length, int... set) {
    return tracer.cut(length, k -> contains(set, k));
  }

  private static boolean contains(int[] set, int k) {
    for (int member : set) {
      if (member == k) {
        return true;
      }
    }
    return false;
  }

  /** The body inside all others' region that one consideration minds least. */
  private Optional<GivingWay> givingWay(int k) {
    int best = -1;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < tracer.grid.length; j++) {
      double margin = margin(k, tracer.grid[j]);
      if (margin > greatest) {
        greatest = margin;
        best = j;
      }
    }
    if (best < 0) {
      return Optional.empty();
    }
    double from = tracer.grid[Math.max(0, best - 1)];
    double to = tracer.grid[Math.min(tracer.grid.length - 1, best + 1)];
    double fine = RegionTracer.greatest(l -> margin(k, l), from, to);
    double length = margin(k, fine) > greatest ? fine : tracer.grid[best];
    double diameter = bestDiameter(k, length, tracer.cut(length, other -> other != k));
    double miss = -tracer.binding.get(k).consideration().margin(length, diameter);
    return Optional.of(new GivingWay(tracer.binding.get(k), new Point(length, diameter), miss));
  }

  private double margin(int k, double length) {
    Cut others = tracer.cut(length, other -> other != k);
    return others.isEmpty()
        ? Double.NEGATIVE_INFINITY
        : tracer.binding.get(k).consideration().margin(length, bestDiameter(k, length, others));
  }

  private double bestDiameter(int k, double length, Cut others) {
    Consideration one = tracer.binding.get(k).consideration();
    double best = others.low();
    if (one.margin(length, others.high()) > one.margin(length, best)) {
      best = others.high();
    }
    double inner = RegionTracer.greatest(d -> one.margin(length, d), others.low(), others.high());
    return one.margin(length, inner) > one.margin(length, best) ? inner : best;
  }
}
