// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Length;

/** A round spigot or socket along a body. */
final class BodyPin {
  /** What must be left around a socket [m]: half of a usual line of print. */
  static final double LEAST_SKIN = 0.2e-3;

  private final double from;
  private final double to;
  private final double aside;
  private final double centre;
  private final double radius;
  private final int sides;
  private int first;

  BodyPin(double from, double to, double aside, double centre, double radius, double tol) {
    this.from = from;
    this.to = to;
    this.aside = aside;
    this.centre = centre;
    this.radius = radius;
    sides = Math.max(8, (int) Math.ceil(Math.PI / Math.acos(Math.max(0.0, 1.0 - tol / radius))));
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  int sides() {
    return sides;
  }

  void numberedFrom(int key) {
    first = key;
  }

  boolean has(int key) {
    return key >= first && key < first + sides;
  }

  int[] loop(boolean hole) {
    int[] keys = new int[sides];
    for (int i = 0; i < sides; i++) {
      keys[i] = first + (hole ? sides - 1 - i : i);
    }
    return keys;
  }

  void locate(int key, double x, double[] p) {
    double angle = 2.0 * Math.PI * (key - first) / sides;
    p[0] = x;
    p[1] = aside + radius * Math.cos(angle);
    p[2] = centre + radius * Math.sin(angle);
  }

  /** It must lie inside the section, seat and slots considered. */
  void check(BodyRing ring, double start, double stop, boolean inside) {
    double[] stations = inside ? new double[] {start, 0.5 * (start + stop), stop} : new double[] {from};
    for (double x : stations) {
      double skin = ring.room(inside ? 0.5 * (start + stop) : from - 1e-9, x, aside, centre) - radius;
      if (skin < LEAST_SKIN) {
        throw new IllegalStateException(
            "a joint of "
                + Length.metres(2.0 * radius)
                + " must leave a skin of "
                + Length.metres(LEAST_SKIN)
                + " of the body, leaves "
                + Length.micrometres(Math.rint(1e6 * skin))
                + " at x "
                + Length.metres(x));
      }
    }
  }
}
