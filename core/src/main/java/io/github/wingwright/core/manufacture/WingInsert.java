// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Length;

/** Something of one shape along a straight axis that is cut out of a wing, or sticks out of its end: a hole, a tongue, a slot. */
final class WingInsert {
  /** What must be left around a hole [m]: half of a usual line of print. */
  private static final double LEAST_SKIN = 0.2e-3;

  /** Steps along a hole or a tongue at which its skin is looked at. */
  private static final int CHECKS = 8;

  private final int first;
  private final double from;
  private final double to;
  private final double[] origin;
  private final double slopeX;
  private final double slopeZ;
  private final double[] dx;
  private final double[] dz;

  private WingInsert(int first, double from, double to, double[] origin, double slopeX, double slopeZ, double[] dx, double[] dz) {
    this.first = first;
    this.from = from;
    this.to = to;
    this.origin = origin;
    this.slopeX = slopeX;
    this.slopeZ = slopeZ;
    this.dx = dx;
    this.dz = dz;
  }

  private double station(int step) {
    return from + (to - from) * step / CHECKS;
  }

  boolean has(int key) {
    return key >= first && key < first + dx.length;
  }

  void place(int key, double y, double[] p) {
    p[0] = origin[0] + slopeX * (y - origin[1]) + dx[key - first];
    p[1] = y;
    p[2] = origin[2] + slopeZ * (y - origin[1]) + dz[key - first];
  }

  /** Inside the piece it is a hole, which runs the other way round. */
  int[] keys(boolean hole) {
    int n = dx.length;
    int[] keys = new int[n];
    for (int i = 0; i < n; i++) {
      keys[i] = first + (hole ? n - 1 - i : i);
    }
    return keys;
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  boolean reaches(double y) {
    return y > from && y < to;
  }

  /** A hole as a polygon of some sides that aims at the middle of the section there, cut off where the piece ends. */
  static WingInsert hole(
      WingFrame frame, SectionLoop loop, Bore bore, double aim, double from, double to, int key, int sides) {
    double r = 0.5 * bore.diameter().si();
    double[] dz = new double[sides];
    double[] dx = new double[sides];
    for (int i = 0; i < sides; i++) {
      dz[i] = r * Math.cos(2.0 * Math.PI * i / sides);
      dx[i] = r * Math.sin(2.0 * Math.PI * i / sides);
    }
    double[] first = middle(frame, loop, bore.from().si(), bore.chordPosition());
    double[] last = middle(frame, loop, aim, bore.chordPosition());
    double reach = last[1] - first[1];
    double slopeX = bore.level() ? 0.0 : (last[0] - first[0]) / reach;
    double slopeZ = bore.level() ? 0.0 : (last[2] - first[2]) / reach;
    double begin = Math.max(bore.from().si(), from);
    double end = Math.min(bore.to().si(), to);
    return new WingInsert(key, begin, end, first, slopeX, slopeZ, dx, dz);
  }

  /** The middle of the section at a station and a place along the chord. */
  private static double[] middle(WingFrame frame, SectionLoop loop, double y, double at) {
    double[] heights = loop.heights(at);
    double[] p = new double[3];
    frame.place(y, at, 0.5 * (heights[0] + heights[1]), p);
    return p;
  }

  /** A tongue along the panel that holds the cut; its slot is as much larger as the play, and deeper by it. */
  static WingInsert tongue(WingFrame frame, SectionLoop loop, Tongue tongue, double cut, Length play, int key) {
    double extra = play.si();
    double at = 0.5 * (tongue.chordFrom() + tongue.chordTo());
    double[] here = middle(frame, loop, cut, at);
    double[] there = middle(frame, loop, cut + 0.5 * tongue.length().si(), at);
    double reach = there[1] - here[1];
    double halfChord = 0.5 * (tongue.chordTo() - tongue.chordFrom()) * frame.chord(cut) + extra;
    double halfHeight = 0.5 * tongue.thickness().si() + extra;
    // Across the tapering panel the tongue keeps its size, and its tilt is that of the middle of the section.
    double[] fore = middle(frame, loop, cut, tongue.chordFrom());
    double[] aft = middle(frame, loop, cut, tongue.chordTo());
    double tilt = (aft[2] - fore[2]) / (aft[0] - fore[0]);
    double[] dx = {halfChord, -halfChord, -halfChord, halfChord};
    double[] dz = {
      -halfHeight + tilt * halfChord, -halfHeight - tilt * halfChord, halfHeight - tilt * halfChord, halfHeight + tilt * halfChord
    };
    return new WingInsert(
        key,
        cut,
        cut + tongue.length().si() + extra,
        here,
        (there[0] - here[0]) / reach,
        (there[2] - here[2]) / reach,
        dx,
        dz);
  }

  /** Whether enough is left around it everywhere. */
  boolean hasSkin(WingFrame frame, SectionLoop loop) {
    for (int s = 0; s <= CHECKS; s++) {
      if (skin(frame, loop, station(s)) < LEAST_SKIN) {
        return false;
      }
    }
    return true;
  }

  /** What is cut out or stuck in must lie inside the section, at its beginning, its end and between. */
  void check(WingFrame frame, SectionLoop loop, String what) {
    for (int s = 0; s <= CHECKS; s++) {
      double y = station(s);
      double skin = skin(frame, loop, y);
      if (skin < LEAST_SKIN) {
        throw new IllegalStateException(
            what
                + " must leave a skin of "
                + Length.metres(LEAST_SKIN)
                + " of the section, leaves "
                + Length.micrometres(Math.floor(1e6 * skin))
                + " at y "
                + Length.metres(y));
      }
    }
  }

  /** How much is left around it at a station [m], negative where it sticks out. */
  private double skin(WingFrame frame, SectionLoop loop, double y) {
    double[] p = new double[3];
    double[] local = new double[2];
    double skin = Double.POSITIVE_INFINITY;
    for (int i = 0; i < dx.length; i++) {
      place(first + i, y, p);
      frame.local(y, p, local);
      skin = Math.min(skin, loop.depth(local[0], local[1]) * frame.chord(y));
    }
    return skin;
  }
}
