// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.BodyShape;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;

/**
 * Where the things of {@link Contents} go in a body, and what room they leave: on plain numbers in SI.
 *
 * @param things the things in the given order
 * @param wall thickness of the wall [m]
 * @param clearance room around each thing [m]
 * @param gap from one thing to the next [m]
 * @param anyOrder whether they may go in any order
 */
record Stowage(List<Thing> things, double wall, double clearance, double gap, boolean anyOrder) {
  private static final int ROOM_STATIONS = 48;
  private static final int HALVINGS = 30;

  /** Keeps a copy. */
  Stowage {
    things = List.copyOf(things);
  }

  /** The given order, or every one, the given one first. */
  List<int[]> orders() {
    int[] given = new int[things.size()];
    for (int i = 0; i < given.length; i++) {
      given[i] = i;
    }
    List<int[]> orders = new ArrayList<>();
    orders.add(given.clone());
    if (anyOrder) {
      permute(given, 0, orders);
    }
    return orders;
  }

  private static void permute(int[] order, int from, List<int[]> all) {
    if (from == order.length - 1) {
      all.add(order.clone());
      return;
    }
    for (int i = from; i < order.length; i++) {
      swap(order, from, i);
      permute(order, from + 1, all);
      swap(order, from, i);
    }
  }

  private static void swap(int[] order, int i, int j) {
    int kept = order[i];
    order[i] = order[j];
    order[j] = kept;
  }

  /** Where the front of each thing lies in the given order, whether or not everything fits. */
  double[] fronts(BodyShape shape, double length, double diameter) {
    double widest = widest(shape, length, diameter);
    double[] fronts = new double[things.size()];
    double start = wall;
    for (int i = 0; i < fronts.length; i++) {
      fronts[i] = frontOf(things.get(i), start, widest, shape, length, diameter);
      start = fronts[i] + things.get(i).length().si() + gap;
    }
    return fronts;
  }

  /** Where the front of one thing lies, whether or not everything fits. */
  double frontOf(int thing, BodyShape shape, double length, double diameter) {
    return fronts(shape, length, diameter)[thing];
  }

  /** The least of what is left to the contour at the front of a thing and to what lies ahead of it [m]. */
  double roomAhead(int at, BodyShape shape, double length, double diameter, double front) {
    double ahead = at == 0 ? wall : frontOf(at - 1, shape, length, diameter) + things.get(at - 1).length().si() + gap;
    double toContour = room(things.get(at), front, 0.0, 0.5, shape, length, diameter);
    return Math.abs(toContour) < front - ahead ? toContour : front - ahead;
  }

  /** What is left beside the tightest point of a part of a thing, measured at many stations [m]. */
  private double room(
      Thing thing, double front, double from, double to, BodyShape shape, double length, double diameter) {
    double along = thing.length().si();
    double level = level(thing, front, shape, length, diameter);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= ROOM_STATIONS; i++) {
      double part = (from + (to - from) * i / ROOM_STATIONS) * along;
      double x = Math.min(front + part, length);
      double aside = Math.abs(shape.centreHeight(x, length, diameter) - level);
      double wide = 0.5 * shape.width(x, length, diameter) - wall - clearance;
      double high = 0.5 * shape.height(x, length, diameter) - wall - clearance - aside;
      double needed =
          thing.form() == Thing.Form.BOX
              ? Math.hypot(0.5 * thing.width().si(), 0.5 * thing.height().si() * wide / high)
              : thing.radiusAt(part);
      least = Math.min(least, (thing.form() == Thing.Form.BOX ? wide : Math.min(wide, high)) - needed);
    }
    return least;
  }

  /** What is left beside the aft half of the tightest thing and behind the last one, in the first order that fits [m]. */
  double roomBehind(BodyShape shape, double length, double diameter) {
    double[] fronts = new double[things.size()];
    for (int[] order : orders()) {
      if (fits(shape, length, diameter, order, fronts)) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < order.length; i++) {
          Thing thing = things.get(order[i]);
          least = Math.min(least, room(thing, fronts[i], 0.5, 1.0, shape, length, diameter));
          least = Math.min(least, length - wall - fronts[i] - thing.length().si());
        }
        return least;
      }
    }
    return -diameter;
  }

  /** Whether everything fits in one of some orders. */
  boolean fitsAnyhow(BodyShape shape, double length, double diameter, List<int[]> orders) {
    double[] fronts = new double[things.size()];
    for (int[] order : orders) {
      if (fits(shape, length, diameter, order, fronts)) {
        return true;
      }
    }
    return false;
  }

  /** Whether everything fits in an order; where each front lies is written into the array. */
  boolean fits(BodyShape shape, double length, double diameter, int[] order, double[] fronts) {
    double widest = widest(shape, length, diameter);
    double start = wall;
    for (int i = 0; i < order.length; i++) {
      Thing thing = things.get(order[i]);
      double front = frontOf(thing, start, widest, shape, length, diameter);
      if (!fitsAlong(thing, front, false, shape, length, diameter)
          || front + thing.length().si() > length - wall) {
        return false;
      }
      fronts[i] = front;
      start = front + thing.length().si() + gap;
    }
    return true;
  }

  /** About where the most room is. */
  private static double widest(BodyShape shape, double length, double diameter) {
    double best = 0.5 * length;
    for (int i = 1; i < 16; i++) {
      double x = length * i / 16.0;
      if (room(shape, x, length, diameter) > room(shape, best, length, diameter)) {
        best = x;
      }
    }
    return best;
  }

  /** Radius of the circle inside the section. */
  static double room(BodyShape shape, double x, double length, double diameter) {
    double width = shape.width(x, length, diameter);
    double height = shape.height(x, length, diameter);
    return 0.5 * Math.min(width, height);
  }

  /** The first place from the start on at which the fore half of a thing fits; the widest place if there is none. */
  private double frontOf(Thing thing, double start, double widest, BodyShape shape, double length, double diameter) {
    if (start >= widest || fitsAlong(thing, start, true, shape, length, diameter)) {
      return start;
    }
    double in = widest;
    if (thing.form() == Thing.Form.SPHERE && !fitsAlong(thing, widest, true, shape, length, diameter)) {
      // The fore half of a ball that fits nowhere else may fit with its middle at the widest place.
      double middled = Math.max(start, Contour.greatestSection(shape, length, diameter) - 0.5 * thing.length().si());
      in = fitsAlong(thing, middled, true, shape, length, diameter) ? middled : widest;
    }
    double from = start;
    if (!fitsAtEnds(thing, start, true, shape, length, diameter)) {
      // No place is ahead of the first at which the ends fit, and on most bodies it is that one.
      double first = first(x -> fitsAtEnds(thing, x, true, shape, length, diameter), start, in);
      if (fitsAlong(thing, first, true, shape, length, diameter)) {
        return first;
      }
      from = first;
    }
    return first(x -> fitsAlong(thing, x, true, shape, length, diameter), from, in);
  }

  /** The first place that fits, by halving. */
  private static double first(DoublePredicate fits, double from, double to) {
    double out = from;
    double in = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (in + out);
      if (fits.test(middle)) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  /**
   * Whether the fore half, or the whole, of a thing fits: asked all the way along, because a contour may have a waist and a
   * middle line may bend.
   */
  private boolean fitsAlong(Thing thing, double front, boolean foreHalf, BodyShape shape, double length, double diameter) {
    if (!fitsAtEnds(thing, front, foreHalf, shape, length, diameter)) {
      return false;
    }
    int points = foreHalf ? ROOM_STATIONS / 2 : ROOM_STATIONS;
    double end = foreHalf ? 0.5 : 1.0;
    double level = level(thing, front, shape, length, diameter);
    for (int i = 1; i < points; i++) {
      if (!fitsAt(thing, front, end * i / points, level, shape, length, diameter)) {
        return false;
      }
    }
    return true;
  }

  private boolean fitsAtEnds(Thing thing, double front, boolean foreHalf, BodyShape shape, double length, double diameter) {
    double level = level(thing, front, shape, length, diameter);
    return fitsAt(thing, front, 0.0, level, shape, length, diameter)
        && fitsAt(thing, front, foreHalf ? 0.5 : 1.0, level, shape, length, diameter);
  }

  /** How high a thing lies: on the middle line in its own middle. */
  private static double level(Thing thing, double front, BodyShape shape, double length, double diameter) {
    return shape.centreHeight(Math.min(front + 0.5 * thing.length().si(), length), length, diameter);
  }

  /** Whether a thing fits at some part of its length. */
  private boolean fitsAt(
      Thing thing, double front, double part, double level, BodyShape shape, double length, double diameter) {
    double along = part * thing.length().si();
    double x = front + along;
    if (x > length) {
      return false;
    }
    double lost = 2.0 * (wall + clearance);
    double width = shape.width(x, length, diameter) - lost;
    double height = shape.height(x, length, diameter) - lost;
    return thing.fits(along, width, height, Math.abs(shape.centreHeight(x, length, diameter) - level));
  }

  /** The least length of the stoutest body that holds everything. */
  double leastLength(BodyShape shape) {
    List<int[]> orders = orders();
    double stout = 1.0 / shape.leastFinenessRatio();
    double in = 2.0 * wall;
    for (Thing thing : things) {
      in += thing.length().si() + gap + 4.0 * (thing.radius().si() + wall + clearance) * shape.leastFinenessRatio();
    }
    while (!fitsAnyhow(shape, in, in * stout, orders)) {
      in *= 2.0;
    }
    double out = 0.0;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (in + out);
      if (middle > 0.0 && fitsAnyhow(shape, middle, middle * stout, orders)) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }
}
