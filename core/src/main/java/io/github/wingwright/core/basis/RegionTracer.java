// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.basis.FeasibleRegion.Outline;
import io.github.wingwright.core.basis.FeasibleRegion.Point;
import io.github.wingwright.core.basis.FeasibleRegion.Side;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;

/** Walks around a region: cuts it at many lengths, finds where the cuts begin, end and change hands. */
final class RegionTracer {
  static final int WINDOW = -1;

  /** From a step of the grid down to the last bit. */
  private static final int HALVINGS = 46;


  /** A smooth edge is straight enough after four or five halvings; this many pin down where an edge jumps. */
  private static final int DEEPEST = 26;

  private static final double STRAIGHT = 2e-4;
  private static final double POINT = 1e-9;

  /** On the very end of a consideration on the length rounding decides what is left; a little before it does not. */
  private static final double BEFORE_THE_END = 1e-12;

  /** Over so little of the length nothing but rounding changes a diameter by so much. */
  private static final double JUMP = 1e-6;

  final List<Weighed> binding;
  final PlaneWindow window;
  final RegionGrid grid;
  private final Map<Double, Cut> cuts = new HashMap<>();

  /** What is left at one length, and whose the two ends are. */
  record Cut(double low, double high, int lowBy, int highBy) {
    boolean isEmpty() {
      return low > high;
    }

    /** The gap as a logarithm: positive where something is left. */
    double gap() {
      return high > 0.0 && low < Double.POSITIVE_INFINITY ? Math.log(high / low) : Double.NEGATIVE_INFINITY;
    }
  }

  RegionTracer(List<Weighed> considerations, PlaneWindow window) {
    this.binding = considerations.stream().filter(Weighed::binds).toList();
    this.window = window;
    this.grid = new RegionGrid(binding, window);
  }

  Cut cut(double length, IntPredicate takesPart) {
    double low = window.diameters().lower();
    double high = window.diameters().upper();
    int lowBy = WINDOW;
    int highBy = WINDOW;
    Interval search = window.search(length);
    for (int k = 0; k < binding.size(); k++) {
      if (!takesPart.test(k)) {
        continue;
      }
      Interval part = new Interval(Math.max(low, search.lower()), Math.min(high, search.upper()));
      Interval interval = binding.get(k).consideration().diametersAt(length, search, part);
      if (interval.isEmpty()) {
        return new Cut(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, k, k);
      }
      if (interval.lower() > low) {
        low = interval.lower();
        lowBy = k;
      }
      if (interval.upper() < high) {
        high = interval.upper();
        highBy = k;
      }
    }
    return new Cut(low, high, lowBy, highBy);
  }

  /** Each length is cut once: both edges and the corners ask for the same ones. */
  private Cut cut(double length) {
    return cuts.computeIfAbsent(length, l -> cut(l, k -> true));
  }

  List<Outline> outlines() {
    List<Outline> outlines = new ArrayList<>();
    double[] gaps = Arrays.stream(grid.lengths).map(l -> cut(l).gap()).toArray();
    double[] at = grid.lengths;
    int j = 0;
    while (j < at.length) {
      if (gaps[j] < 0.0) {
        double between = sliver(j, gaps);
        if (!Double.isNaN(between)) {
          outlines.add(outline(between, at[j - 1], between, at[j + 1]));
        }
        j++;
        continue;
      }
      int last = j;
      while (last + 1 < at.length && gaps[last + 1] >= 0.0) {
        last++;
      }
      double before = j == 0 ? Double.NaN : at[j - 1];
      double after = last == at.length - 1 ? Double.NaN : at[last + 1];
      outlines.add(outline(at[j], before, at[last], after));
      j = last + 1;
    }
    return List.copyOf(outlines);
  }

  /** A length between cuts at which something is left although the cuts themselves are empty; NaN if there is none. */
  private double sliver(int j, double[] gaps) {
    boolean dip = j > 0 && j + 1 < gaps.length && gaps[j - 1] < 0.0 && gaps[j + 1] < 0.0;
    boolean peak = dip && gaps[j] >= gaps[j - 1] && gaps[j] > gaps[j + 1] && gaps[j] > -0.2;
    if (!peak) {
      return Double.NaN;
    }
    double best = greatest(l -> cut(l).gap(), grid.lengths[j - 1], grid.lengths[j + 1]);
    return cut(best).isEmpty() ? Double.NaN : best;
  }

  /** Golden section towards the greatest value. */
  static double greatest(DoubleUnaryOperator function, double from, double to) {
    double golden = 0.5 * (Math.sqrt(5.0) - 1.0);
    double a = from;
    double b = to;
    double x = b - golden * (b - a);
    double y = a + golden * (b - a);
    double fx = function.applyAsDouble(x);
    double fy = function.applyAsDouble(y);
    for (int i = 0; i < 48; i++) {
      if (fx >= fy) {
        b = y;
        y = x;
        fy = fx;
        x = b - golden * (b - a);
        fx = function.applyAsDouble(x);
      } else {
        a = x;
        x = y;
        fx = fy;
        y = a + golden * (b - a);
        fy = function.applyAsDouble(y);
      }
    }
    return fx >= fy ? x : y;
  }

  private Outline outline(double first, double before, double last, double after) {
    double[] left = Double.isNaN(before) ? new double[] {first, first} : edge(first, before);
    double[] right = Double.isNaN(after) ? new double[] {last, last} : edge(last, after);
    double start = left[0];
    left[0] = clear(start, right[0]);
    right[0] = clear(right[0], start);
    List<Side> sides = new ArrayList<>(edgeSides(left[0], right[0], true));
    end(right, Double.isNaN(after), true).ifPresent(sides::add);
    sides.addAll(edgeSides(left[0], right[0], false));
    end(left, Double.isNaN(before), false).ifPresent(sides::add);
    return new Outline(sides.isEmpty() ? point(left[0]) : sides);
  }

  /** A single body is a region too: two sides of no length, each with its binder. */
  private List<Side> point(double length) {
    Cut cut = cut(length);
    Point body = new Point(length, cut.low());
    return List.of(new Side(who(cut.lowBy()), List.of(body, body)), new Side(who(cut.highBy()), List.of(body, body)));
  }

  /** The last length at which something is left, and the first at which nothing is. */
  private double[] edge(double inside, double outside) {
    double in = inside;
    double out = outside;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (in + out);
      if (cut(middle).isEmpty()) {
        out = middle;
      } else {
        in = middle;
      }
    }
    return new double[] {in, out};
  }

  /** The end itself, or where rounding leaves less there than a little before it, that place. */
  private double clear(double end, double otherEnd) {
    double before = end + BEFORE_THE_END * (otherEnd - end);
    Cut here = cut(end);
    Cut there = cut(before);
    boolean less = here.high() < there.high() * (1.0 - JUMP) || here.low() > there.low() * (1.0 + JUMP);
    return less ? before : end;
  }

  /** The side across the region where it ends at one length, unless its two edges meet there. */
  private Optional<Side> end(double[] edge, boolean atWindow, boolean upwards) {
    Cut cut = cut(edge[0]);
    if (cut.high() <= cut.low() * (1.0 + POINT)) {
      return Optional.empty();
    }
    int by = atWindow ? WINDOW : endedBy(cut, cut(edge[1]));
    Point low = new Point(edge[0], cut.low());
    Point high = new Point(edge[0], cut.high());
    return Optional.of(new Side(who(by), upwards ? List.of(low, high) : List.of(high, low)));
  }

  /** Of the two that clash beyond the end: the one that has jumped. The other is where it was. */
  private static int endedBy(Cut inside, Cut outside) {
    double low = Math.abs(outside.low() / inside.low() - 1.0);
    double high = Math.abs(outside.high() / inside.high() - 1.0);
    return high > low ? outside.highBy() : outside.lowBy();
  }

  private Optional<Weighed> who(int by) {
    return by == WINDOW ? Optional.empty() : Optional.of(binding.get(by));
  }

  /** The lower edge from left to right, or the upper edge from right to left, in pieces of one binder each. */
  private List<Side> edgeSides(double left, double right, boolean lower) {
    List<Side> sides = new ArrayList<>();
    double start = left;
    int by = binder(left, lower);
    for (double next : stops(left, right)) {
      // Between two stops the edge may change hands more than once; each turn of this loop settles one change.
      while (binder(next, lower) != by) {
        double in = start;
        double out = next;
        for (int i = 0; i < HALVINGS; i++) {
          double middle = 0.5 * (in + out);
          if (binder(middle, lower) == by) {
            in = middle;
          } else {
            out = middle;
          }
        }
        addSide(sides, start, in, by, lower);
        addJump(sides, in, out, lower);
        start = out;
        by = binder(out, lower);
      }
    }
    addSide(sides, start, right, by, lower);
    if (!lower) {
      Collections.reverse(sides);
    }
    return sides;
  }

  private double[] stops(double left, double right) {
    double[] inner = Arrays.stream(grid.lengths).filter(l -> l > left && l < right).toArray();
    double[] stops = Arrays.copyOf(inner, inner.length + 1);
    stops[inner.length] = right;
    return stops;
  }

  private int binder(double length, boolean lower) {
    Cut cut = cut(length);
    return lower ? cut.lowBy() : cut.highBy();
  }

  private double edgeAt(double length, boolean lower) {
    Cut cut = cut(length);
    return lower ? cut.low() : cut.high();
  }

  private void addSide(List<Side> sides, double from, double to, int by, boolean lower) {
    if (to - from <= POINT * to) {
      return;
    }
    List<Point> points = new ArrayList<>();
    points.add(new Point(from, edgeAt(from, lower)));
    bend(points, from, edgeAt(from, lower), to, edgeAt(to, lower), lower, DEEPEST);
    if (!lower) {
      Collections.reverse(points);
    }
    sides.add(new Side(who(by), points));
  }

  /** Where the edge jumps as it changes hands, the side across: bound by the one who leaves less beyond it. */
  private void addJump(List<Side> sides, double in, double out, boolean lower) {
    double before = edgeAt(in, lower);
    double after = edgeAt(out, lower);
    if (Math.abs(after - before) <= JUMP * before) {
      return;
    }
    double narrower = after > before == lower ? out : in;
    List<Point> points = new ArrayList<>(List.of(new Point(in, before), new Point(out, after)));
    if (!lower) {
      Collections.reverse(points);
    }
    sides.add(new Side(who(binder(narrower, lower)), points));
  }

  /** Adds points until the straight pieces follow the edge; looks at three places so that an S is not taken for straight. */
  private void bend(List<Point> points, double l1, double d1, double l2, double d2, boolean lower, int depth) {
    double middle = 0.5 * (l1 + l2);
    double at = edgeAt(middle, lower);
    boolean straight =
        near(at, 0.5 * (d1 + d2))
            && near(edgeAt(0.75 * l1 + 0.25 * l2, lower), 0.75 * d1 + 0.25 * d2)
            && near(edgeAt(0.25 * l1 + 0.75 * l2, lower), 0.25 * d1 + 0.75 * d2);
    if (straight || depth == 0) {
      points.add(new Point(l2, d2));
      return;
    }
    bend(points, l1, d1, middle, at, lower, depth - 1);
    bend(points, middle, at, l2, d2, lower, depth - 1);
  }

  private static boolean near(double value, double expected) {
    return Math.abs(value - expected) <= STRAIGHT * expected;
  }
}
