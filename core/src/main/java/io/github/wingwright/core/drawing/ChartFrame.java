// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

/**
 * What stands around a chart: title, axes with their figures and names, grid lines.
 *
 * @param title what is shown
 * @param xLabel name of the horizontal axis, with its unit
 * @param yLabel name of the vertical axis, with its unit
 * @param horizontal the horizontal axis
 * @param vertical the vertical axis
 */
record ChartFrame(String title, String xLabel, String yLabel, Axis horizontal, Axis vertical) {
  static final double MARGIN = 6.0;
  private static final Lettering FIGURE = Lettering.end(Lettering.SMALL);

  /** Where the horizontal axis begins so that the figures of the vertical one have room. */
  static double left(Axis vertical) {
    double left = MARGIN + 6.0;
    for (Axis.Tick tick : vertical.figures(6)) {
      left = Math.max(left, MARGIN + 6.0 + FIGURE.width(tick.label()));
    }
    return left;
  }

  void draw(Svg svg) {
    double left = horizontal.start();
    double right = horizontal.end();
    double top = vertical.end();
    double bottom = vertical.start();
    for (Axis.Tick tick : horizontal.labelledTicks(FIGURE)) {
      svg.line(tick.at(), top, tick.at(), bottom, Pen.GRID);
      svg.text(tick.at(), bottom + 4.6, tick.label(), Lettering.middle(Lettering.SMALL));
    }
    for (Axis.Tick tick : vertical.figures(6)) {
      svg.line(left, tick.at(), right, tick.at(), Pen.GRID);
      svg.text(left - 1.5, tick.at() + 1.1, tick.label(), FIGURE);
    }
    svg.line(left, top, left, bottom, Pen.THIN);
    svg.line(left, bottom, right, bottom, Pen.THIN);
    Lettering large = Lettering.start(Lettering.TITLE).heavy();
    svg.text(MARGIN, 8.5, TextWidth.cut(title, svg.width() - 2.0 * MARGIN, large), large);
    Lettering name = Lettering.end(Lettering.NOTE);
    svg.text(right, bottom + 11.5, TextWidth.cut(xLabel, right - left, name), name);
    svg.upwardText(MARGIN + 2.5, top, TextWidth.cut(yLabel, bottom - top, name), name);
  }
}
