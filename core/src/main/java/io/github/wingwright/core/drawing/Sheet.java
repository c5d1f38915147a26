// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

/** The white sheet of a chart, with its title in the first line. */
final class Sheet {
  /** Free room at the edges of a sheet [mm]. */
  static final double MARGIN = 6.0;

  private static final double FIRST_LINE = 8.5;
  private static final Lettering TITLE = Lettering.start(Lettering.TITLE).heavy();

  private Sheet() {}

  /** A white sheet; its title is told to readers who cannot see it, and not written yet. */
  static Svg blank(double width, double height, String title) {
    Svg svg = new Svg(width, height, title);
    svg.rectangle(0, 0, width, height, Pen.fill(Pen.PAPER));
    return svg;
  }

  /** A white sheet with its title. */
  static Svg titled(double width, double height, String title) {
    Svg svg = blank(width, height, title);
    headline(svg, title);
    return svg;
  }

  /** Writes the title, or as much of it as the sheet is wide. */
  static void headline(Svg svg, String title) {
    svg.text(MARGIN, FIRST_LINE, TextWidth.cut(title, svg.width() - 2.0 * MARGIN, TITLE), TITLE);
  }
}
