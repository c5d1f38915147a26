// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.basis.FeasibleRegion.Boundary;
import io.github.wingwright.core.basis.FeasibleRegion.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** Follows the boundary of each consideration through a window, for a picture. */
final class BoundaryTracer {
  private static final int STEPS = 96;
  private static final int HALVINGS = 30;

  private final PlaneWindow window;
  private final Interval lengths;
  private final Interval diameters;

  BoundaryTracer(PlaneWindow window) {
    this.window = window;
    this.lengths = window.lengths();
    this.diameters = window.diameters();
  }

  List<Boundary> trace(List<Weighed> considerations) {
    return considerations.stream().map(w -> new Boundary(w, lines(w))).toList();
  }

  private List<List<Point>> lines(Weighed one) {
    Consideration c = one.consideration();
    List<List<Point>> lines = new ArrayList<>();
    if (one.isTarget()) {
      follow(l -> c.preferredDiameter(l).orElse(Double.NaN), (l, d) -> d, lines);
      return lines;
    }
    follow(l -> window.left(c, l).lower(), (l, d) -> Math.min(d, window.left(c, l).upper()), lines);
    follow(l -> window.left(c, l).upper(), (l, d) -> Math.max(d, window.left(c, l).lower()), lines);
    across(c, lines);
    return lines;
  }

  /** A consideration that begins or ceases to hold at one length for all diameters has a boundary across the window. */
  private void across(Consideration c, List<List<Point>> lines) {
    double previous = length(0);
    boolean held = !window.left(c, previous).isEmpty();
    for (int j = 1; j <= STEPS; j++) {
      double next = length(j);
      boolean holds = !window.left(c, next).isEmpty();
      if (holds != held) {
        double in = holds ? next : previous;
        double out = holds ? previous : next;
        for (int i = 0; i < 60; i++) {
          double middle = 0.5 * (in + out);
          if (window.left(c, middle).isEmpty()) {
            out = middle;
          } else {
            in = middle;
          }
        }
        if (window.left(c, in).equals(Interval.ALL)) {
          lines.add(List.of(new Point(in, diameters.lower()), new Point(in, diameters.upper())));
        }
      }
      previous = next;
      held = holds;
    }
  }

  private double length(int j) {
    return j == STEPS ? lengths.upper() : lengths.lower() + lengths.width() * j / STEPS;
  }

  /** Follows a curve; where it jumps, it goes upright to what the other function makes of the length and of its value behind. */
  private void follow(DoubleUnaryOperator curve, DoubleBinaryOperator upright, List<List<Point>> lines) {
    List<Point> line = new ArrayList<>();
    Point previous = new Point(length(0), curve.applyAsDouble(length(0)));
    if (inside(previous)) {
      line.add(previous);
    }
    for (int j = 1; j <= STEPS; j++) {
      Point next = new Point(length(j), curve.applyAsDouble(length(j)));
      if (inside(next) != inside(previous)) {
        boolean beyond = Double.isFinite(next.diameter()) && Double.isFinite(previous.diameter());
        line.addAll(beyond ? List.of(crossing(previous, next)) : jump(curve, upright, previous, next));
      }
      if (inside(next)) {
        line.add(next);
      } else {
        finish(line, lines);
        line = new ArrayList<>();
      }
      previous = next;
    }
    finish(line, lines);
  }

  private static void finish(List<Point> line, List<List<Point>> lines) {
    if (line.size() > 1) {
      lines.add(line);
    }
  }

  private boolean inside(Point p) {
    return diameters.contains(p.diameter());
  }

  /**
   * How a curve leaves or enters the window that has no diameter on the other side: at one length it jumps, and the boundary
   * runs upright from there, to the edge of the window or as far as there are bodies. A line must not end in the open.
   */
  private List<Point> jump(DoubleUnaryOperator curve, DoubleBinaryOperator upright, Point a, Point b) {
    boolean leaves = inside(a);
    Point in = leaves ? a : b;
    Point out = leaves ? b : a;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (in.length() + out.length());
      Point there = new Point(middle, curve.applyAsDouble(middle));
      if (inside(there)) {
        in = there;
      } else {
        out = there;
      }
    }
    double end = window.search(in.length()).clamp(upright.applyAsDouble(in.length(), out.diameter()));
    Point edge = new Point(in.length(), diameters.clamp(end));
    if (Double.isNaN(edge.diameter()) || edge.diameter() == in.diameter()) {
      return List.of(in);
    }
    return leaves ? List.of(in, edge) : List.of(edge, in);
  }

  private Point crossing(Point a, Point b) {
    Point outside = inside(a) ? b : a;
    double edge = diameters.clamp(outside.diameter());
    double part = (edge - a.diameter()) / (b.diameter() - a.diameter());
    return new Point(a.length() + part * (b.length() - a.length()), edge);
  }
}
