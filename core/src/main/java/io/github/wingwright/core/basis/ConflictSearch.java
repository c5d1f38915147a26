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

  ConflictSearch(RegionTracer tracer) {
    this.tracer = tracer;
    this.count = tracer.binding.size();
  }

  Conflict find() {
    int[] all = IntStream.range(0, count).toArray();
    int[] limits = IntStream.of(all).filter(k -> tracer.binding.get(k).isLimit()).toArray();
    // If the limits clash among themselves, that is what must be known first.
    int[] set = amongBodies(smallest(agree(limits) ? all : limits));
    List<GivingWay> ways = new ArrayList<>();
    for (int k : set) {
      givingWay(k).ifPresent(way -> ways.addAll(way));
    }
    return ways.isEmpty()
        ? new Conflict(names(set), List.of(), further(all, set), together(all))
        : new Conflict(names(set), ways, List.of(), List.of());
  }

  private List<Weighed> names(int[] set) {
    return IntStream.of(set).mapToObj(tracer.binding::get).toList();
  }

  /** Every other pair that clashes, then sets that clash although nobody in them belongs to one found before. */
  private List<List<Weighed>> further(int[] all, int[] first) {
    List<List<Weighed>> found = new ArrayList<>();
    int[] rest = IntStream.of(all).filter(k -> !contains(first, k)).toArray();
    int[] possible = IntStream.of(all).filter(k -> agree(k)).toArray();
    for (int i : possible) {
      for (int j : possible) {
        if (i < j && !(contains(first, i) && contains(first, j)) && !agree(i, j)) {
          found.add(names(new int[] {i, j}));
          rest = IntStream.of(rest).filter(k -> k != i && k != j).toArray();
        }
      }
    }
    while (!agree(rest)) {
      int[] next = smallest(rest);
      found.add(names(next));
      rest = IntStream.of(rest).filter(k -> !contains(next, k)).toArray();
    }
    return found;
  }

  /** Concessions that end everything only if all are made: of two if two will do, else of three. */
  private List<List<GivingWay>> together(int[] all) {
    List<List<GivingWay>> found = new ArrayList<>();
    for (int i : all) {
      for (int j = i + 1; j < count; j++) {
        givingWay(i, j).ifPresent(found::add);
      }
    }
    for (int i = 0; i < (found.isEmpty() ? count : 0); i++) {
      for (int j = i + 1; j < count; j++) {
        for (int k = j + 1; k < count; k++) {
          givingWay(i, j, k).ifPresent(found::add);
        }
      }
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

  /**
   * What clashes of a set for bodies that exist. A margin is not asked for beyond the stoutest body, so two that clash may
   * seem to agree there, and a third seem to be needed that forbids it. The one that keeps to the family is named with them.
   */
  private int[] amongBodies(int[] set) {
    if (IntStream.of(set).anyMatch(this::isFamily)) {
      return set;
    }
    int[] rest = set;
    for (int a : set) {
      int[] fewer = IntStream.of(rest).filter(k -> k != a).toArray();
      if (fewer.length > 0 && !agree(true, fewer)) {
        rest = fewer;
      }
    }
    return rest;
  }

  /** Whether it forbids what the family cannot form, and nothing else that is stout. */
  private boolean isFamily(int k) {
    boolean asked = false;
    for (int j = 0; j < tracer.grid.lengths.length; j++) {
      double stoutest = tracer.window.search(tracer.grid.lengths[j]).upper();
      if (stoutest < tracer.window.diameters().upper() && stoutest > 1.01 * tracer.window.diameters().lower()) {
        asked = true;
        if (!(Math.abs(tracer.grid.high(k, j) / stoutest - 1.0) < 1e-6)) {
          return false;
        }
      }
    }
    return asked;
  }

  private boolean agree(int... set) {
    return agree(false, set);
  }

  /**
   * Whether some body satisfies all of a set: looks at the cuts first, then closely around the narrowest miss.
   *
   * @param existing whether only bodies that the family can form count
   */
  private boolean agree(boolean existing, int... set) {
    int best = 0;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < tracer.grid.lengths.length; j++) {
      double lower = tracer.window.diameters().lower();
      double upper = existing ? tracer.window.search(tracer.grid.lengths[j]).upper() : tracer.window.diameters().upper();
      for (int k : set) {
        lower = Math.max(lower, tracer.grid.low(k, j));
        upper = Math.min(upper, tracer.grid.high(k, j));
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
    double from = tracer.grid.lengths[Math.max(0, best - 1)];
    double to = tracer.grid.lengths[Math.min(tracer.grid.lengths.length - 1, best + 1)];
    double at = RegionTracer.greatest(l -> gap(existing, l, set), from, to);
    return gap(existing, at, set) >= -ROUNDING;
  }

  private double gap(boolean existing, double length, int... set) {
    Cut cut = tracer.cut(length, k -> contains(set, k));
    double stoutest = existing ? tracer.window.search(length).upper() : Double.POSITIVE_INFINITY;
    return new Cut(cut.low(), Math.min(cut.high(), stoutest), cut.lowBy(), cut.highBy()).gap();
  }

  private static boolean contains(int[] set, int k) {
    for (int member : set) {
      if (member == k) {
        return true;
      }
    }
    return false;
  }

  /** The body inside all others' region that some considerations mind least; empty if the others have no region. */
  private Optional<List<GivingWay>> givingWay(int... set) {
    int best = -1;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < tracer.grid.lengths.length; j++) {
      double margin = othersAgree(j, set) ? margin(set, tracer.grid.lengths[j]) : Double.NEGATIVE_INFINITY;
      if (margin > greatest) {
        greatest = margin;
        best = j;
      }
    }
    if (best < 0) {
      return Optional.empty();
    }
    double from = tracer.grid.lengths[Math.max(0, best - 1)];
    double to = tracer.grid.lengths[Math.min(tracer.grid.lengths.length - 1, best + 1)];
    double fine = RegionTracer.greatest(l -> margin(set, l), from, to);
    double length = margin(set, fine) > greatest ? fine : tracer.grid.lengths[best];
    double diameter = bestDiameter(set, length, tracer.cut(length, other -> !contains(set, other)));
    if (!tracer.window.exists(length, diameter)) {
      return Optional.empty();
    }
    List<GivingWay> ways = new ArrayList<>();
    for (int k : set) {
      Weighed one = tracer.binding.get(k);
      ways.add(new GivingWay(one, new Point(length, diameter), -one.consideration().margin(length, diameter)));
    }
    return Optional.of(ways);
  }

  private boolean othersAgree(int j, int... set) {
    double lower = tracer.window.diameters().lower();
    double upper = tracer.window.diameters().upper();
    for (int k = 0; k < count; k++) {
      if (!contains(set, k)) {
        lower = Math.max(lower, tracer.grid.low(k, j));
        upper = Math.min(upper, tracer.grid.high(k, j));
      }
    }
    return lower <= upper;
  }

  private double margin(int[] set, double length) {
    Cut others = tracer.cut(length, other -> !contains(set, other));
    return others.isEmpty()
        ? Double.NEGATIVE_INFINITY
        : margin(set, length, bestDiameter(set, length, others));
  }

  /** What all of a set miss together, as a negative number: who is satisfied makes up for nobody. */
  private double margin(int[] set, double length, double diameter) {
    double sum = 0.0;
    for (int k : set) {
      sum += Math.min(0.0, tracer.binding.get(k).consideration().margin(length, diameter));
    }
    return sum;
  }

  private double bestDiameter(int[] set, double length, Cut others) {
    double best = others.low();
    if (margin(set, length, others.high()) > margin(set, length, best)) {
      best = others.high();
    }
    double inner = RegionTracer.greatest(d -> margin(set, length, d), others.low(), others.high());
    return margin(set, length, inner) > margin(set, length, best) ? inner : best;
  }
}
