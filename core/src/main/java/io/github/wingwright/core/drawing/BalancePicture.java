// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * The balance along the mean aerodynamic chord: centre of gravity, neutral point, and the range that the centre of
 * gravity is allowed.
 */
public final class BalancePicture {
  private static final double WIDTH = 190.0;
  private static final double HEIGHT = 62.0;
  private static final double LEFT = 20.0;
  private static final double CHORD_Y = 34.0;

  private BalancePicture() {}

  /**
   * Draws the balance.
   *
   * @param chordStart leading edge of the mean aerodynamic chord, aft of the nose tip
   * @param chord mean aerodynamic chord
   * @param centreOfGravity centre of gravity, aft of the nose tip
   * @param neutralPoint stick-fixed neutral point, aft of the nose tip
   * @param allowed allowed centres of gravity [m] aft of the nose tip
   * @param unit unit of the figures
   * @return the picture
   */
  public static Svg draw(
      Length chordStart,
      Length chord,
      Length centreOfGravity,
      Length neutralPoint,
      Interval allowed,
      NamedUnit<Length> unit) {
    Svg svg = new Svg(WIDTH, HEIGHT, "Balance along the mean aerodynamic chord");
    svg.rectangle(0, 0, WIDTH, HEIGHT, Pen.fill("#ffffff"));
    svg.text(6.0, 7.0, "balance along the mean aerodynamic chord", Lettering.start(4.0).heavy());
    double start = chordStart.si();
    double end = start + chord.si();
    double low = Math.min(Math.min(start, centreOfGravity.si()), Math.min(neutralPoint.si(), finite(allowed.lower(), start)));
    double high = Math.max(Math.max(end, centreOfGravity.si()), Math.max(neutralPoint.si(), finite(allowed.upper(), end)));
    double room = 0.08 * (high - low);
    Axis axis = new Axis(low - room, high + room, LEFT, WIDTH - LEFT);
    double from = axis.clamped(allowed.lower());
    double to = axis.clamped(allowed.upper());
    svg.rectangle(from, CHORD_Y - 7.0, Math.max(0.4, to - from), 14.0, Pen.fill(Pen.ACCENT_TINT));
    svg.text(0.5 * (from + to), CHORD_Y + 21.0, "allowed " + allowed.format(unit), Lettering.middle(2.8).in(Pen.ACCENT));
    svg.line(0.5 * (from + to), CHORD_Y + 18.0, 0.5 * (from + to), CHORD_Y + 7.0, Pen.stroke(Pen.ACCENT, 0.2));
    svg.line(axis.at(start), CHORD_Y, axis.at(end), CHORD_Y, Pen.stroke(Pen.INK, 0.9));
    for (int i = 0; i <= 4; i++) {
      double x = axis.at(start + 0.25 * i * chord.si());
      svg.line(x, CHORD_Y - 1.5, x, CHORD_Y + 1.5, Pen.stroke(Pen.INK, 0.4));
      svg.text(x, CHORD_Y + 12.0, 25 * i + " %", Lettering.middle(2.6));
    }
    mark(svg, axis.at(centreOfGravity.si()), "centre of gravity " + unit.format(centreOfGravity.si(), 4), 1);
    mark(svg, axis.at(neutralPoint.si()), "neutral point " + unit.format(neutralPoint.si(), 4), 2);
    return svg;
  }

  private static double finite(double value, double otherwise) {
    return Double.isFinite(value) ? value : otherwise;
  }

  private static void mark(Svg svg, double x, String label, int row) {
    double y = 9.0 + 5.0 * row;
    svg.line(x, y + 1.0, x, CHORD_Y, Pen.stroke(Pen.WARM, 0.3));
    svg.circle(x, CHORD_Y, 1.6, new Pen(Pen.WARM, 0.5, row == 1 ? "#ffffff" : Pen.WARM, ""));
    boolean right = x > WIDTH - 1.6 * label.length() - 6.0;
    svg.text(right ? x - 1.5 : x + 1.5, y + 1.5, label, (right ? Lettering.end(2.9) : Lettering.start(2.9)).in(Pen.WARM).heavy());
  }
}
