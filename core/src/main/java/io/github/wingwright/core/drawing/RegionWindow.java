// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.FeasibleRegion.Point;
import io.github.wingwright.core.basis.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The part of the plane that a region's picture shows: the region and all marks, with room around them.
 *
 * @param lengths lengths [m]
 * @param diameters diameters [m]
 */
record RegionWindow(Interval lengths, Interval diameters) {
  /** Room on each side as a part of what is shown. */
  private static final double ROOM = 0.3;

  /** A wish this many times away from what is shown is left out. */
  private static final double FAR = 1.8;

  /** The least room on each side as a part of the value. */
  private static final double LEAST = 0.08;

  static RegionWindow around(RegionPicture picture) {
    FeasibleRegion region = picture.region();
    List<Point> shown = new ArrayList<>();
    picture.marks().forEach(m -> shown.add(m.body()));
    region.outlines().forEach(o -> o.sides().forEach(s -> shown.addAll(s.points())));
    region.conflict().ifPresent(c -> c.waysOut().forEach(way -> shown.add(way.get(0).body())));
    if (shown.isEmpty()) {
      return new RegionWindow(region.lengthWindow(), region.diameterWindow());
    }
    shown.addAll(clashing(region, shown.get(0)));
    shown.addAll(wishes(region, shown));
    double[] lengths = shown.stream().mapToDouble(Point::length).toArray();
    double[] diameters = shown.stream().mapToDouble(Point::diameter).toArray();
    return new RegionWindow(
        around(lengths, region.lengthWindow()), around(diameters, region.diameterWindow()));
  }

  /** What targets would like best, unless that is far from everything else. */
  private static List<Point> wishes(FeasibleRegion region, List<Point> shown) {
    double low = shown.stream().mapToDouble(Point::diameter).min().orElse(0.0) / FAR;
    double high = shown.stream().mapToDouble(Point::diameter).max().orElse(0.0) * FAR;
    double length = shown.get(0).length();
    return region.considerations().stream()
        .filter(one -> one.isTarget() && one.decision().applies())
        .map(one -> new Point(length, one.consideration().preferredDiameter(length).orElse(0.0)))
        .filter(wish -> wish.diameter() > low && wish.diameter() < high)
        .toList();
  }

  /** Of every boundary that clashes the point nearest to a body, by ratio, so that the picture shows who clashes. */
  private static List<Point> clashing(FeasibleRegion region, Point body) {
    List<Point> nearest = new ArrayList<>();
    region
        .conflict()
        .ifPresent(
            conflict ->
                region.boundaries().stream()
                    .filter(boundary -> conflict.concerns(boundary.consideration()))
                    .map(boundary -> boundary.lines().stream().map(line -> nearest(line, body)))
                    .forEach(
                        points ->
                            points
                                .min(Comparator.comparingDouble(p -> apart(p, body)))
                                .ifPresent(nearest::add)));
    return nearest;
  }

  private static Point nearest(List<Point> line, Point body) {
    Point best = line.get(0);
    for (int i = 1; i < line.size(); i++) {
      Point foot = foot(line.get(i - 1), line.get(i), body);
      best = apart(foot, body) < apart(best, body) ? foot : best;
    }
    return best;
  }

  /** The point of a piece nearest to a body, both coordinates as ratios to the body's. */
  private static Point foot(Point from, Point to, Point body) {
    double ux = (to.length() - from.length()) / body.length();
    double uy = (to.diameter() - from.diameter()) / body.diameter();
    double wx = 1.0 - from.length() / body.length();
    double wy = 1.0 - from.diameter() / body.diameter();
    double t =
        Math.max(0.0, Math.min(1.0, (ux * wx + uy * wy) / Math.max(1e-300, ux * ux + uy * uy)));
    return new Point(
        from.length() + t * (to.length() - from.length()),
        from.diameter() + t * (to.diameter() - from.diameter()));
  }

  private static double apart(Point a, Point b) {
    return Math.hypot(a.length() / b.length() - 1.0, a.diameter() / b.diameter() - 1.0);
  }

  /** A mark outside the window that the region was searched in widens the picture. */
  private static Interval around(double[] values, Interval searched) {
    double low = Double.POSITIVE_INFINITY;
    double high = 0.0;
    for (double value : values) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    double room = Math.max(ROOM * (high - low), LEAST * high);
    double from = Math.max(low - room, Math.min(0.98 * low, searched.lower()));
    double to = Math.min(high + room, Math.max(1.02 * high, searched.upper()));
    return Interval.between(from, to);
  }
}
