// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Weighed;

/** Short strokes along a boundary on the side that it refuses. */
final class RegionHatching {
  private static final double SPACING = 2.6;
  private static final double STROKE = 1.3;

  /** How far beside the line the margin is asked [mm]. */
  private static final double ASIDE = 0.5;

  private RegionHatching() {}

  static void draw(Sketch sketch, Weighed one, double[][] line, RegionChart chart, Pen pen) {
    if (!one.binds()) {
      return;
    }
    double rest = 0.5 * SPACING;
    for (int i = 1; i < line[0].length; i++) {
      double dx = line[0][i] - line[0][i - 1];
      double dy = line[1][i] - line[1][i - 1];
      double piece = Math.hypot(dx, dy);
      while (rest < piece) {
        double x = line[0][i - 1] + rest / piece * dx;
        double y = line[1][i - 1] + rest / piece * dy;
        stroke(sketch, one.consideration(), x, y, dx / piece, dy / piece, chart, pen);
        rest += SPACING;
      }
      rest -= piece;
    }
  }

  /** Leans forward along the line, to the side where the margin is negative; none where both sides are alike. */
  private static void stroke(
      Sketch sketch,
      Consideration c,
      double x,
      double y,
      double alongX,
      double alongY,
      RegionChart chart,
      Pen pen) {
    boolean left = refuses(c, x + ASIDE * alongY, y - ASIDE * alongX, chart);
    boolean right = refuses(c, x - ASIDE * alongY, y + ASIDE * alongX, chart);
    if (left == right) {
      return;
    }
    double side = left ? 1.0 : -1.0;
    double toX = x + STROKE * (0.6 * alongX + 0.8 * side * alongY);
    double toY = y + STROKE * (0.6 * alongY - 0.8 * side * alongX);
    if (new Box(toX, toY, toX, toY).within(chart.plot())) {
      sketch.tick(x, y, toX, toY, Pen.stroke(pen.stroke(), 0.2));
    }
  }

  private static boolean refuses(Consideration c, double x, double y, RegionChart chart) {
    double length = chart.lengthAt(x);
    double diameter = chart.diameterAt(y);
    return !(length > 0.0 && diameter > 0.0) || c.margin(length, diameter) < 0.0;
  }
}
