// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

/** Somebody on a seat from the side, facing left, in a box from the feet to behind the back. */
final class SeatFigure {
  /** Knee and hip, shoulders and foot of the seat, as shares of the box: x aft, y down from the top of the head. */
  private static final double[][] PERSON = {
    {0.10, 0.93},
    {0.38, 0.62},
    {0.74, 0.70},
    {0.82, 0.26},
    {0.93, 0.27},
    {0.88, 0.84},
    {0.36, 0.76},
    {0.16, 1.0},
    {0.04, 0.99}
  };

  private static final double[][] SEAT = {{0.46, 1.0}, {0.46, 0.84}, {0.88, 0.87}, {0.97, 0.22}};

  private SeatFigure() {}

  static void draw(Sketch sketch, double left, double top, double width, double height) {
    double[][] person = placed(PERSON, left, top, width, height);
    sketch.polygon(person[0], person[1], new Pen(Pen.ACCENT, 0.3, Pen.ACCENT_TINT, ""));
    double head = Math.min(0.11 * height, 0.16 * width);
    sketch.circle(
        left + 0.82 * width, top + head, head, new Pen(Pen.ACCENT, 0.3, Pen.ACCENT_TINT, ""));
    double[][] seat = placed(SEAT, left, top, width, height);
    sketch.polyline(seat[0], seat[1], Pen.stroke(Pen.QUIET, 0.6));
  }

  private static double[][] placed(
      double[][] shares, double left, double top, double width, double height) {
    double[] x = new double[shares.length];
    double[] y = new double[shares.length];
    for (int i = 0; i < shares.length; i++) {
      x[i] = left + shares[i][0] * width;
      y[i] = top + shares[i][1] * height;
    }
    return new double[][] {x, y};
  }
}
