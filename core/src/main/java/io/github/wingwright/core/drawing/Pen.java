// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.Objects;

/**
 * How a shape looks.
 *
 * @param stroke colour of the outline, or {@code "none"}
 * @param width width of the outline [mm]
 * @param fill colour of the inside, or {@code "none"}
 * @param dash lengths of dashes and gaps [mm] separated by blanks, empty for a full line
 */
public record Pen(String stroke, double width, String fill, String dash) {
  public Pen {
    Objects.requireNonNull(stroke, "stroke");
    Objects.requireNonNull(fill, "fill");
    Objects.requireNonNull(dash, "dash");
  }

  /** What everything is drawn on. */
  public static final String PAPER = "#ffffff";

  /** Ink of outlines and text. */
  public static final String INK = "#1d2b36";

  /** Thin lines that help reading. */
  public static final String SHADOW = "#9aa5ad";

  /** Text of lesser weight, dark enough to read. */
  public static final String QUIET = "#5b6b76";

  /** What the drawing is about. */
  public static final String ACCENT = "#00695f";

  /** A pale tint of the accent. */
  public static final String ACCENT_TINT = "#d3ebe6";

  /** What needs attention. */
  public static final String WARM = "#b5451b";

  /** A pale tint of the warm colour. */
  public static final String WARM_TINT = "#f6ddd0";

  /** A pale neutral. */
  public static final String PALE = "#eef1f2";

  /** A visible outline. */
  public static final Pen OUTLINE = new Pen(INK, 0.35, PAPER, "");

  /** A thin line: dimensions, axes. */
  public static final Pen THIN = new Pen(INK, 0.18, "none", "");

  /** A centre line. */
  public static final Pen CENTRE = new Pen(SHADOW, 0.18, "none", "6 1.2 0.6 1.2");

  /** A grid line. */
  public static final Pen GRID = new Pen("#d5dbdf", 0.15, "none", "");

  /** A solid shape without outline in the colour of ink. */
  public static final Pen SOLID = new Pen("none", 0.0, INK, "");

  /**
   * An outline of one colour.
   *
   * @param colour colour
   * @param width width [mm]
   * @return the pen
   */
  public static Pen stroke(String colour, double width) {
    Objects.requireNonNull(colour, "colour");
    return new Pen(colour, width, "none", "");
  }

  /**
   * A filled shape without outline.
   *
   * @param colour colour
   * @return the pen
   */
  public static Pen fill(String colour) {
    Objects.requireNonNull(colour, "colour");
    return new Pen("none", 0.0, colour, "");
  }

  /**
   * The same pen with dashes.
   *
   * @param pattern lengths of dashes and gaps [mm]
   * @return the pen
   */
  public Pen dashed(String pattern) {
    Objects.requireNonNull(pattern, "pattern");
    return new Pen(stroke, width, fill, pattern);
  }

  String attributes() {
    String line = stroke.equals("none") ? "" : " stroke-width=\"" + Svg.number(width) + "\" stroke-linejoin=\"round\"";
    String dashes = dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"";
    return " fill=\"" + fill + "\" stroke=\"" + stroke + "\"" + line + dashes;
  }
}
