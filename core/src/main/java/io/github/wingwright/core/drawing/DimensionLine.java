// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

/** Dimension lines as draughtsmen draw them: two extension lines, a line with closed arrow heads, the figure on it. */
final class DimensionLine {
  private static final double HEAD = 2.2;
  private static final double HALF_HEAD = 0.4;
  private static final double OVERSHOOT = 1.2;
  private static final double GAP = 0.8;
  private static final double LETTER = 3.0;

  private DimensionLine() {}

  /**
   * A horizontal dimension.
   *
   * @param from x of one end [mm]
   * @param to x of the other end [mm]
   * @param featureFrom y from which the first extension line comes
   * @param featureTo y from which the second extension line comes
   * @param at y of the dimension line
   */
  static void horizontal(
      Svg svg, double from, double to, double featureFrom, double featureTo, double at, String figure) {
    double sense = Math.signum(at - featureFrom);
    svg.line(from, featureFrom + sense * GAP, from, at + sense * OVERSHOOT, Pen.THIN);
    svg.line(to, featureTo + sense * GAP, to, at + sense * OVERSHOOT, Pen.THIN);
    double middle = 0.5 * (from + to);
    double textWidth = 0.56 * LETTER * figure.length();
    if (Math.abs(to - from) > textWidth + 2.0 * HEAD) {
      svg.line(from, at, to, at, Pen.THIN);
      headX(svg, from, at, Math.signum(from - to));
      headX(svg, to, at, Math.signum(to - from));
      svg.text(middle, at - 1.0, figure, Lettering.middle(LETTER));
    } else {
      double left = Math.min(from, to);
      double right = Math.max(from, to);
      svg.line(left - 2.5 * HEAD, at, right + 2.5 * HEAD + textWidth, at, Pen.THIN);
      headX(svg, left, at, 1.0);
      headX(svg, right, at, -1.0);
      svg.text(right + 2.5 * HEAD + 0.5 * textWidth, at - 1.0, figure, Lettering.middle(LETTER));
    }
  }

  /** A vertical dimension, its figure reading upwards. */
  static void vertical(
      Svg svg, double from, double to, double featureFrom, double featureTo, double at, String figure) {
    double sense = Math.signum(at - featureFrom);
    svg.line(featureFrom + sense * GAP, from, at + sense * OVERSHOOT, from, Pen.THIN);
    svg.line(featureTo + sense * GAP, to, at + sense * OVERSHOOT, to, Pen.THIN);
    double textWidth = 0.56 * LETTER * figure.length();
    if (Math.abs(to - from) > textWidth + 2.0 * HEAD) {
      svg.line(at, from, at, to, Pen.THIN);
      headY(svg, at, from, Math.signum(from - to));
      headY(svg, at, to, Math.signum(to - from));
      svg.upwardText(at - 1.0, 0.5 * (from + to), figure, Lettering.middle(LETTER));
    } else {
      double top = Math.min(from, to);
      double bottom = Math.max(from, to);
      svg.line(at, top - 2.5 * HEAD - textWidth, at, bottom + 2.5 * HEAD, Pen.THIN);
      headY(svg, at, top, 1.0);
      headY(svg, at, bottom, -1.0);
      svg.upwardText(at - 1.0, top - 2.5 * HEAD - 0.5 * textWidth, figure, Lettering.middle(LETTER));
    }
  }

  private static void headX(Svg svg, double tip, double y, double sense) {
    double back = tip - sense * HEAD;
    svg.polygon(new double[] {tip, back, back}, new double[] {y, y - HALF_HEAD, y + HALF_HEAD}, Pen.SOLID);
  }

  private static void headY(Svg svg, double x, double tip, double sense) {
    double back = tip - sense * HEAD;
    svg.polygon(new double[] {x, x - HALF_HEAD, x + HALF_HEAD}, new double[] {tip, back, back}, Pen.SOLID);
  }
}
