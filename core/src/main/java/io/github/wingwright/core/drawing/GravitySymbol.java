// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

/** The quartered circle of a centre of gravity (common practice, no source). */
final class GravitySymbol {
  static final double RADIUS = 1.4;

  private GravitySymbol() {}

  static void draw(Sketch sketch, double x, double y) {
    sketch.circle(x, y, RADIUS, new Pen(Pen.WARM, 0.3, Pen.PAPER, ""));
    sector(sketch, x, y, -0.5 * Math.PI);
    sector(sketch, x, y, 0.5 * Math.PI);
  }

  private static void sector(Sketch sketch, double x, double y, double from) {
    int n = 7;
    double[] px = new double[n + 1];
    double[] py = new double[n + 1];
    px[n] = x;
    py[n] = y;
    for (int i = 0; i < n; i++) {
      double angle = from + 0.5 * Math.PI * i / (n - 1);
      px[i] = x + RADIUS * Math.cos(angle);
      py[i] = y + RADIUS * Math.sin(angle);
    }
    sketch.polygon(px, py, Pen.fill(Pen.WARM));
  }
}
