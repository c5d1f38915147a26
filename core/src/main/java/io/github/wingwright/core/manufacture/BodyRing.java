// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The vertices around a body. The outline of every section is divided at the same breaks, where the edges of rib, slots and
 * seat meet it; each stretch between breaks has the same number of points all along, evenly apart or, where fewer do, close
 * together at the corners of the section. Ahead and aft of a feature its breaks stay where they were at its end, so that they
 * never jump: then neighbours in one section are neighbours in the next.
 */
final class BodyRing {
  static final double RIB_HALF_LENGTH = 0.5e-3;
  private static final double RIB_HALF_WIDTH = 2e-3;
  static final double RIB_HEIGHT = 0.4e-3;
  private static final double LEAST_ANGLE = 1e-4;

  /** From so many points between two breaks on it is tried whether fewer would do. */
  private static final int MANY = 64;

  /** Sections that are looked at, and those among them from which the points are chosen, of so many. */
  private static final int SECTIONS = 60;

  private static final int CURVES = 16;

  /** From so many points of each the fewest are chosen: more where a corner is too small for the first. */
  private static final int[] FINE = {4096, 32_768};

  /** Breaks to starboard, from below to above; −1 where the feature is missing. */
  private final int rib;

  private final int slot;
  private final int seatBreak;
  private final int fin;
  private final int breaks;
  private final BodyFrame frame;
  private final @Nullable WingSeat seat;
  private final @Nullable TailSlots slots;
  private final double mark;
  private final double end;
  private final double ribAngle;
  private int[] firstKey = new int[0];
  private int[] parts = new int[0];

  /** Where the points of each stretch are, from 0 at its break to 1 at the next. */
  private double[][] fractions = new double[0][];
  private int ringKeys;
  private double cachedStation = Double.NaN;
  private double[] cached = new double[0];

  BodyRing(BodyFrame frame, @Nullable WingSeat seat, @Nullable TailSlots slots, double mark, double end) {
    this.frame = frame;
    this.seat = seat;
    this.slots = slots;
    this.mark = mark;
    this.end = end;
    // The lowest point is break 0, the highest is in the middle.
    int next = 1;
    rib = Double.isNaN(mark) ? -1 : next++;
    slot = slots == null ? -1 : next;
    next += slots == null ? 0 : 2;
    seatBreak = seat == null ? -1 : next++;
    fin = slots == null ? -1 : next++;
    breaks = 2 * next;
    ribAngle = Double.isNaN(mark) ? 0.0 : Math.min(0.5, RIB_HALF_WIDTH / frame.halfWidth(mark));
    if (seat != null && slots != null && slotStart() < seat.to().si()) {
      throw new IllegalStateException(
          "the wing seat must end ahead of the tail slots, it ends at " + seat.to() + " and they begin at "
              + Length.metres(slotStart()));
    }
  }

  private int other(int starboard) {
    return breaks - starboard;
  }

  private TailSlots cut() {
    if (slots == null) {
      throw new IllegalStateException("there are no slots");
    }
    return slots;
  }

  private double slotStart() {
    return Math.min(cut().tailplaneFrom().si(), cut().finFrom().si());
  }

  private double slotBottom() {
    return cut().height().si() - 0.5 * cut().width().si();
  }

  private double slotTop() {
    return cut().height().si() + 0.5 * cut().width().si();
  }

  /** The angles of all breaks at a station, anticlockwise from the lowest point. */
  private double[] angles(double x) {
    if (x == cachedStation) {
      return cached;
    }
    double[] a = new double[breaks + 1];
    a[0] = -0.5 * Math.PI;
    a[breaks / 2] = 0.5 * Math.PI;
    a[breaks] = 1.5 * Math.PI;
    if (slots != null) {
      double at = Math.max(x, slots.tailplaneFrom().si());
      slots.leaveSkin(frame, at);
      a[slot] = frame.crossing(at, slotBottom(), 0.0, "the tailplane's slot");
      a[slot + 1] = frame.crossing(at, slotTop(), 0.0, "the tailplane's slot");
      a[fin] = frame.beside(Math.max(x, slots.finFrom().si()), 0.5 * slots.width().si(), "the fin's slot");
    }
    if (rib > 0) {
      a[rib] = ribAngle(x, a);
    }
    if (seat != null) {
      a[seatBreak] = seatAngle(x, a);
    }
    for (int i = 1; i < breaks / 2; i++) {
      a[breaks - i] = Math.PI - a[i];
    }
    for (int i = 0; i < breaks; i++) {
      if (!(a[i + 1] - a[i] > LEAST_ANGLE)) {
        throw new IllegalStateException(
            edge(Math.min(i, breaks - i - 1)) + " and " + edge(Math.min(i, breaks - i - 1) + 1)
                + " must lie apart around the body, at " + Length.millimetres(Math.rint(1e5 * x) / 100.0)
                + " from the nose they overlap by " + Angle.radians(a[i] - a[i + 1]).format(Angle.DEGREE, 2));
      }
    }
    cachedStation = x;
    cached = a;
    return a;
  }

  /** What a break to starboard is the edge of. */
  private String edge(int b) {
    if (b == 0) {
      return "the lowest line";
    }
    if (b == rib) {
      return "the mark";
    }
    if (b == slot || b == slot + 1 && slot > 0) {
      return "the tailplane's slot";
    }
    if (b == seatBreak) {
      return "the wing seat";
    }
    return b == fin ? "the fin's slot" : "the highest line";
  }

  private double ribAngle(double x, double[] a) {
    double last = Math.max(mark + RIB_HALF_LENGTH, slots == null ? 0.0 : slots.tailplaneFrom().si());
    if (slots == null || x <= last) {
      return a[0] + ribAngle;
    }
    // Its break keeps its share of the stretch below the tailplane's slot, whose break comes down on a tail that rises.
    return a[0] + ribAngle * (a[slot] - a[0]) / (frame.crossing(last, slotBottom(), 0.0, "the tailplane's slot") - a[0]);
  }

  private double seatAngle(double x, double[] a) {
    if (seat == null) {
      throw new IllegalStateException("there is no seat");
    }
    double at = Math.max(seat.from().si(), Math.min(seat.to().si(), x));
    double angle = frame.crossing(at, seat.floor().si(), seat.dihedral().tangent(), "the wing seat");
    if (slots == null || x <= seat.to().si()) {
      return angle;
    }
    // Aft of the seat its break moves into the middle between the slots, whose breaks draw apart on a body that closes.
    double middle = 0.5 * (a[slot + 1] + a[fin]);
    double way = Math.min(1.0, (x - seat.to().si()) / Math.max(1e-6, slotStart() - seat.to().si()));
    return angle + way * (middle - angle);
  }

  /** Gives each stretch as many parts as the tolerance asks for at the stations, and numbers the keys. */
  void divide(double[] dense, double from, double to, double tol) {
    parts = new int[breaks];
    Arrays.fill(parts, 1);
    for (double x : stations(dense, from, to)) {
      double[] a = angles(x);
      for (int b = 0; b < breaks; b++) {
        while (parts[b] < 2000 && strays(x, a[b], a[b + 1], parts[b], tol)) {
          parts[b] += Math.max(1, parts[b] / 8);
        }
      }
    }
    // Both sides alike, so that the mesh is as symmetric as the body.
    fractions = new double[breaks][];
    for (int b = 0; b < breaks / 2; b++) {
      int most = Math.max(parts[b], parts[breaks - 1 - b]);
      fractions[b] = most < MANY ? even(most) : fewest(b, even(most), stations(dense, from, to), tol);
      fractions[breaks - 1 - b] = reversed(fractions[b]);
    }
    firstKey = new int[breaks + 1];
    for (int b = 0; b < breaks; b++) {
      parts[b] = fractions[b].length - 1;
      firstKey[b + 1] = firstKey[b] + parts[b];
    }
    ringKeys = firstKey[breaks];
  }

  private static double[] even(int n) {
    return IntStream.rangeClosed(0, n).mapToDouble(i -> (double) i / n).toArray();
  }

  private static double[] reversed(double[] fractions) {
    int n = fractions.length - 1;
    return IntStream.rangeClosed(0, n).mapToDouble(i -> 1.0 - fractions[n - i]).toArray();
  }

  /** Stations at which the points around are held to the tolerance. */
  private double[] stations(double[] dense, double from, double to) {
    int step = Math.max(1, dense.length / SECTIONS);
    return IntStream.iterate(0, i -> i < dense.length, i -> i + step)
        .mapToDouble(i -> dense[i])
        .filter(x -> x >= from && x <= to && !frame.isPoint(x))
        .toArray();
  }

  /** Points close together only where some section turns, if these are fewer and no section strays from them. */
  private double[] fewest(int b, double[] even, double[] stations, double tol) {
    for (int fine : FINE) {
      double[] chosen = chosen(b, fine, stations, tol);
      if (chosen.length >= even.length) {
        return even;
      }
      if (Arrays.stream(stations).noneMatch(x -> strays(x, b, chosen, tol))) {
        return chosen;
      }
    }
    return even;
  }

  private double[] chosen(int b, int fine, double[] stations, double tol) {
    int every = Math.max(1, stations.length / CURVES);
    double[][] curves = new double[(stations.length + every - 1) / every][3 * (fine + 1)];
    double[] yz = new double[2];
    for (int c = 0; c < curves.length; c++) {
      double x = stations[c * every];
      double[] a = angles(x);
      for (int i = 0; i <= fine; i++) {
        frame.at(x, a[b] + (a[b + 1] - a[b]) * i / fine, yz);
        curves[c][3 * i] = yz[0];
        curves[c][3 * i + 1] = yz[1];
      }
    }
    int[] kept = Curves.simplify(curves, new int[] {0, fine}, 0.9 * tol);
    return Arrays.stream(kept).mapToDouble(i -> (double) i / fine).toArray();
  }

  /** Whether the outline is farther from a chord than the tolerance at one of three places along it. */
  private boolean strays(double x, int b, double[] at, double tol) {
    double[] a = angles(x);
    double[] p = new double[15];
    double[] yz = new double[2];
    for (int i = 1; i < at.length; i++) {
      for (int k = 0; k <= 4; k++) {
        frame.at(x, a[b] + (a[b + 1] - a[b]) * (at[i - 1] + 0.25 * k * (at[i] - at[i - 1])), yz);
        p[3 * k] = yz[0];
        p[3 * k + 1] = yz[1];
      }
      for (int k = 1; k < 4; k++) {
        if (Curves.distance(p, k, 0, 4) > tol * tol) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean strays(double x, double from, double to, int n, double tol) {
    double[] p = new double[9];
    double[] yz = new double[2];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < 3; k++) {
        frame.at(x, from + (to - from) * (i + 0.5 * k) / n, yz);
        p[3 * k] = yz[0];
        p[3 * k + 1] = yz[1];
      }
      if (Curves.distance(p, 1, 0, 2) > tol * tol) {
        return true;
      }
    }
    return false;
  }

  /** Number of keys: the ring, the raised rib, the bottom of the seat, and two corners of the slots. */
  int keys() {
    return ringKeys + ribKeys() + 3;
  }

  private int ribKeys() {
    return rib > 0 ? parts[0] + parts[breaks - 1] + 1 : 0;
  }

  private int seatKey() {
    return ringKeys + ribKeys();
  }

  void locate(int key, double x, double[] p) {
    p[0] = x;
    if (key >= seatKey()) {
      boolean floor = key == seatKey();
      p[1] = floor ? 0.0 : (key == seatKey() + 1 ? 0.5 : -0.5) * cut().width().si();
      p[2] = floor && seat != null ? seat.floor().si() : slotTop();
      return;
    }
    boolean raised = key >= ringKeys;
    // The rib's keys begin at port.
    int on = raised ? (firstKey[breaks - 1] + key - ringKeys) % ringKeys : key;
    double[] a = angles(x);
    int b = Arrays.binarySearch(firstKey, on);
    b = b >= 0 ? b : -b - 2;
    double angle = a[b] + (a[b + 1] - a[b]) * fractions[b][on - firstKey[b]];
    double[] yz = new double[2];
    frame.at(x, angle, yz);
    p[1] = yz[0] + (raised ? RIB_HEIGHT * Math.cos(angle) : 0.0);
    p[2] = yz[1] + (raised ? RIB_HEIGHT * Math.sin(angle) : 0.0);
  }

  /** The loops of the section between two events. */
  List<int[]> loops(double x) {
    boolean tailplane = slots != null && x > slots.tailplaneFrom().si();
    boolean finHere = slots != null && x > slots.finFrom().si();
    int starboardCorner = seatKey() + 1;
    int portCorner = seatKey() + 2;
    List<int[]> loops = new ArrayList<>();
    if (!tailplane) {
      Loop loop = new Loop();
      if (finHere) {
        loop.arc(other(fin), breaks, x).arc(0, fin, x).at(breakKey(fin)).at(starboardCorner).at(portCorner);
      } else if (seat != null && x > seat.from().si() && x < seat.to().si()) {
        loop.arc(other(seatBreak), breaks, x).arc(0, seatBreak, x).at(breakKey(seatBreak)).at(seatKey());
      } else {
        loop.arc(0, breaks, x);
      }
      loops.add(loop.keys());
      return loops;
    }
    loops.add(new Loop().arc(other(slot), breaks, x).arc(0, slot, x).at(breakKey(slot)).keys());
    if (finHere) {
      loops.add(new Loop().arc(slot + 1, fin, x).at(breakKey(fin)).at(starboardCorner).keys());
      loops.add(new Loop().arc(other(fin), other(slot + 1), x).at(breakKey(other(slot + 1))).at(portCorner).keys());
    } else {
      Loop upper = new Loop().arc(slot + 1, other(slot + 1), x).at(breakKey(other(slot + 1)));
      loops.add(upper.at(portCorner).at(starboardCorner).keys());
    }
    return loops;
  }

  private int breakKey(int b) {
    return firstKey[b % breaks];
  }

  /** A row of keys in the making. */
  private final class Loop {
    private final List<Integer> keys = new ArrayList<>();

    /** The points from one break to another, without the last; where the rib is, over the rib. */
    Loop arc(int from, int to, double x) {
      boolean ribHere = rib > 0 && Math.abs(x - mark) < RIB_HALF_LENGTH;
      for (int b = from; b < to; b++) {
        if (ribHere && b == breaks - 1) {
          keys.add(firstKey[b]);
          for (int i = 0; i < parts[b]; i++) {
            keys.add(ringKeys + i);
          }
        } else if (ribHere && b == 0) {
          for (int i = 0; i <= parts[0]; i++) {
            keys.add(ringKeys + parts[breaks - 1] + i);
          }
        } else {
          for (int i = 0; i < parts[b]; i++) {
            keys.add(firstKey[b] + i);
          }
        }
      }
      return this;
    }

    Loop at(int key) {
      keys.add(key);
      return this;
    }

    int[] keys() {
      return keys.stream().mapToInt(Integer::intValue).toArray();
    }
  }

  /** The stations of a slab: the fewest between which straight lines stay close to every line of keys. */
  double[] stations(double[] dense, double start, double stop, double tol) {
    int first = Arrays.binarySearch(dense, start);
    int last = Arrays.binarySearch(dense, stop);
    int n = last - first + 1;
    int every = Math.max(1, ringKeys / 24);
    List<Integer> lines = new ArrayList<>();
    for (int k = 0; k < ringKeys; k += every) {
      lines.add(k);
    }
    for (int b = 0; b < breaks; b++) {
      lines.add(firstKey[b]);
    }
    double[][] points = new double[lines.size()][3 * n];
    double[] p = new double[3];
    for (int i = 0; i < n; i++) {
      for (int c = 0; c < points.length; c++) {
        locate(lines.get(c), dense[first + i], p);
        System.arraycopy(p, 0, points[c], 3 * i, 3);
      }
    }
    int[] kept = Curves.simplify(points, new int[] {0, n - 1}, tol);
    return Arrays.stream(kept).mapToDouble(i -> dense[first + i]).toArray();
  }

  /** How far a point is inside the section that a slab has at a station. */
  double room(double slab, double x, double aside, double height) {
    if (slots != null && slab > slotStart()) {
      return 0.0;
    }
    double room = Double.POSITIVE_INFINITY;
    double[] yz = new double[2];
    for (int i = 0; i < 72; i++) {
      frame.at(Math.min(x, end), 2.0 * Math.PI * i / 72.0, yz);
      room = Math.min(room, Math.hypot(yz[0] - aside, yz[1] - height));
    }
    if (seat != null && slab > seat.from().si() && slab < seat.to().si()) {
      double above = seat.floor().si() + Math.abs(aside) * seat.dihedral().tangent() - height;
      room = Math.min(room, above * Math.cos(seat.dihedral().si()));
    }
    return room;
  }
}
