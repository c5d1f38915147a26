// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds room for the labels of points: near the point first, further away on a leader if it must be, never on another label,
 * and across as few lines as possible.
 */
final class LabelPlacer {
  private static final double[] REACHES = {2.0, 5.0, 9.0, 14.0, 20.0, 27.0, 35.0};

  /** Directions in the order of preference, x to the right and y down. */
  private static final double[][] DIRECTIONS = {
    {1, -1}, {1, 0}, {1, 1}, {-1, -1}, {-1, 0}, {-1, 1}, {0, -1}, {0, 1}, {1, -2}, {1, 2}, {-1, -2}, {-1, 2}
  };

  /** What a line through a label costs, against what distance costs per millimetre. */
  private static final double CROSSING = 12.0;

  /** What it costs if the leader runs through a label or across another leader. */
  private static final double TANGLE = 60.0;

  /** What it costs to stand where the leader of a point that has no label yet would go. */
  private static final double IN_THE_WAY = 25.0;

  /** How far above or below a point its leader goes. */
  private static final double LEADER_ROOM = 15.0;

  /** Where a leader begins, clear of its own point. */
  private static final double CLEAR = 1.9;

  private final Sketch sketch;
  private final Box room;
  private final List<double[]> leaders = new ArrayList<>();
  private final List<double[]> expected = new ArrayList<>();

  LabelPlacer(Sketch sketch, Box room) {
    this.sketch = sketch;
    this.room = room;
  }

  /** Announces a point that will ask for a label, so that the labels before it leave it a way out. */
  void expect(double x, double y) {
    expected.add(new double[] {x, y});
  }

  /** A place that a label may take. */
  private record Place(double x, double baseline, Box box, double cost) {}

  /** Writes a label near a point; a leader joins them if they are apart. */
  void place(double x, double y, String label, Lettering look) {
    Lettering lettering = new Lettering(look.size(), Lettering.Anchor.START, look.colour(), look.bold(), look.halo());
    expected.removeIf(point -> point[0] == x && point[1] == y);
    Place best = null;
    for (Place place : candidates(x, y, label, lettering)) {
      if (best == null || place.cost() < best.cost()) {
        best = place;
      }
    }
    if (best == null) {
      return;
    }
    double[] leader = leader(x, y, best.box());
    if (leader.length > 0) {
      sketch.line(leader[0], leader[1], leader[2], leader[3], Pen.stroke(look.colour(), 0.2));
      leaders.add(leader);
    }
    sketch.text(best.x(), best.baseline(), label, lettering);
  }

  /** From the point to the nearest place of the box; none if they are close. */
  private static double[] leader(double x, double y, Box box) {
    double nearX = Math.max(box.left(), Math.min(box.right(), x));
    double nearY = Math.max(box.top(), Math.min(box.bottom(), y));
    double length = Math.hypot(nearX - x, nearY - y);
    if (length <= REACHES[0] + 1.0) {
      return new double[0];
    }
    double part = CLEAR / length;
    return new double[] {x + part * (nearX - x), y + part * (nearY - y), nearX, nearY};
  }

  private double cost(double x, double y, Box box) {
    double cost = CROSSING * Math.min(3, sketch.linesThrough(box));
    cost += TANGLE * leaders.stream().filter(l -> box.crossedBy(l[0], l[1], l[2], l[3])).count();
    Box ways = new Box(box.left() - 2.0, box.top() - LEADER_ROOM, box.right() + 2.0, box.bottom() + LEADER_ROOM);
    cost += IN_THE_WAY * expected.stream().filter(p -> new Box(p[0], p[1], p[0], p[1]).within(ways)).count();
    double[] leader = leader(x, y, box);
    if (leader.length > 0) {
      cost += TANGLE * sketch.textsThrough(leader);
      cost += TANGLE * leaders.stream().filter(other -> meet(leader, other)).count();
    }
    return cost;
  }

  /** Whether two straight lines cross: the ends of each lie on different sides of the other. */
  private static boolean meet(double[] a, double[] b) {
    return side(a, b[0], b[1]) * side(a, b[2], b[3]) <= 0.0 && side(b, a[0], a[1]) * side(b, a[2], a[3]) <= 0.0;
  }

  private static double side(double[] line, double x, double y) {
    return Math.signum((line[2] - line[0]) * (y - line[1]) - (line[3] - line[1]) * (x - line[0]));
  }

  private List<Place> candidates(double x, double y, String label, Lettering lettering) {
    List<Place> places = new ArrayList<>();
    Box own = lettering.box(0.0, 0.0, label);
    for (double reach : REACHES) {
      for (int i = 0; i < DIRECTIONS.length; i++) {
        double left = x + DIRECTIONS[i][0] * reach + 0.5 * (DIRECTIONS[i][0] - 1.0) * own.width();
        double middle = y + DIRECTIONS[i][1] * (0.7 * reach + 0.5 * own.height());
        double baseline = middle - 0.5 * (own.top() + own.bottom());
        Box box = lettering.box(left, baseline, label);
        if (box.within(room) && sketch.isFree(box.grownBy(0.4))) {
          places.add(new Place(left, baseline, box, reach + 0.2 * i + cost(x, y, box)));
        }
      }
    }
    return places;
  }
}
