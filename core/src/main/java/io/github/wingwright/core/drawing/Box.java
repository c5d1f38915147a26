// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

/**
 * An upright rectangle on paper [mm], y down: the room that a text or a view takes.
 *
 * @param left least x
 * @param top least y
 * @param right greatest x
 * @param bottom greatest y
 */
record Box(double left, double top, double right, double bottom) {

  /** A box that holds nothing and grows with the first thing put into it. */
  static final Box NOTHING =
      new Box(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  boolean within(Box other) {
    return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
  }

  Box including(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  Box including(double x, double y) {
    return new Box(Math.min(left, x), Math.min(top, y), Math.max(right, x), Math.max(bottom, y));
  }

  Box grownBy(double margin) {
    return new Box(left - margin, top - margin, right + margin, bottom + margin);
  }

  /** Whether any part of a straight line lies inside: the line is clipped to the box, edge by edge. */
  boolean crossedBy(double x1, double y1, double x2, double y2) {
    double[] reach = {0.0, 1.0};
    return clip(x1 - x2, x1 - left, reach)
        && clip(x2 - x1, right - x1, reach)
        && clip(y1 - y2, y1 - top, reach)
        && clip(y2 - y1, bottom - y1, reach)
        && reach[0] < reach[1];
  }

  private static boolean clip(double direction, double room, double[] reach) {
    if (direction == 0.0) {
      return room > 0.0;
    }
    double at = room / direction;
    if (direction < 0.0) {
      reach[0] = Math.max(reach[0], at);
    } else {
      reach[1] = Math.min(reach[1], at);
    }
    return reach[0] <= reach[1];
  }
}
