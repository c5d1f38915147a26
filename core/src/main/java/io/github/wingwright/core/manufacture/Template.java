// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * A drawing in full size, for those who cut by hand: to be printed at 100 %, laid on the material and cut along its lines.
 *
 * <p>Coordinates are millimetres, x to the right and y up, wherever the shape happens to lie. Each drawing carries a bar of
 * 50 mm that is measured before anything is cut.
 *
 * @param title what it shows, not blank
 * @param lines its lines, at least one
 * @param labels its words
 */
public record Template(String title, List<Line> lines, List<Label> labels) {

  /**
   * A point.
   *
   * @param x to the right [mm]
   * @param y up [mm]
   */
  public record Point(double x, double y) {
    /** Refuses what is not a number. */
    public Point {
      Door.finite(x, "x of a point");
      Door.finite(y, "y of a point");
    }
  }

  /** What a line is for. */
  public enum Kind {
    /** Cut along it. */
    CUT,
    /** Only draw it: an axis, a station, a fold. */
    MARK
  }

  /**
   * A line through points.
   *
   * @param kind what it is for
   * @param closed whether the last point is joined to the first
   * @param points at least two
   */
  public record Line(Kind kind, boolean closed, List<Point> points) {
    /** Keeps its own list. */
    public Line {
      Objects.requireNonNull(points, "points");
      points = List.copyOf(points);
      if (points.size() < 2) {
        throw new IllegalArgumentException("a line needs at least two points, got " + points.size());
      }
    }
  }

  /**
   * A word at a place.
   *
   * @param at where it begins
   * @param text what it says
   */
  public record Label(Point at, String text) {
    public Label {
      Objects.requireNonNull(at, "at");
      Objects.requireNonNull(text, "text");
    }
  }

  /** Keeps its own lists. */
  public Template {
    Objects.requireNonNull(lines, "lines");
    Objects.requireNonNull(labels, "labels");
    Door.said(title, "title of a template");
    lines = List.copyOf(lines);
    labels = List.copyOf(labels);
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("a template needs at least one line, got none");
    }
  }

  /** Least x, least y, greatest x, greatest y [mm] of the lines. */
  double[] box() {
    double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (Line line : lines) {
      for (Point p : line.points()) {
        box[0] = Math.min(box[0], p.x());
        box[1] = Math.min(box[1], p.y());
        box[2] = Math.max(box[2], p.x());
        box[3] = Math.max(box[3], p.y());
      }
    }
    return box;
  }

  /** Size of the letters [mm], in Helvetica or what stands in for it. */
  static final double LETTERS = 3.0;

  /** Width of a letter over its size: generous, so that no word is cut off (capitals and digits have 0.56 to 0.72). */
  private static final double LETTER_WIDTH = 0.6;

  /** What hangs below the line of writing, over the size of the letters. */
  private static final double BELOW = 0.3;

  /** About how wide a word is [mm]. */
  static double width(String text) {
    return text.length() * LETTER_WIDTH * LETTERS;
  }

  /** The box around lines and words [mm]: what has to be on the sheet. */
  double[] sheet() {
    double[] box = box();
    for (Label label : labels) {
      box[0] = Math.min(box[0], label.at().x());
      box[1] = Math.min(box[1], label.at().y() - BELOW * LETTERS);
      box[2] = Math.max(box[2], label.at().x() + width(label.text()));
      box[3] = Math.max(box[3], label.at().y() + LETTERS);
    }
    return box;
  }

  /**
   * The drawing as SVG, in which one unit is one millimetre on paper.
   *
   * @return the text, the same for the same drawing
   */
  public String svg() {
    return TemplateSvg.of(this);
  }

  /**
   * The drawing as PDF on sheets of A4, with an overlap and marks to join them where it takes several.
   *
   * @return the bytes, the same for the same drawing
   */
  public byte[] pdf() {
    return new TemplatePdf(this).bytes();
  }

  /**
   * Writes the drawing as SVG; what was there before is replaced only when all is written.
   *
   * @param file where
   * @throws IOException if it cannot be written; then nothing has changed
   */
  public void writeSvg(Path file) throws IOException {
    WholeFile.write(file, svg().getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes the drawing as PDF; what was there before is replaced only when all is written.
   *
   * @param file where
   * @throws IOException if it cannot be written; then nothing has changed
   */
  public void writePdf(Path file) throws IOException {
    WholeFile.write(file, pdf());
  }

  @Override
  public String toString() {
    double[] b = box();
    return title + ", " + Math.round(b[2] - b[0]) + " × " + Math.round(b[3] - b[1]) + " mm";
  }
}
