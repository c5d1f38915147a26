// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.List;
import java.util.Objects;

/**
 * Curves over two axes with marked points and tinted bands. Values are given in the units that the axis labels name.
 *
 * @param title what is shown
 * @param xLabel label of the horizontal axis, with its unit
 * @param yLabel label of the vertical axis, with its unit
 * @param curves the curves, drawn in this order
 * @param points the marked points
 * @param bands tinted bands behind the curves
 */
public record CurvePicture(
    String title, String xLabel, String yLabel, List<Curve> curves, List<Point> points, List<Band> bands) {
  private static final double WIDTH = 170.0;
  private static final double HEIGHT = 112.0;
  private static final double RIGHT = WIDTH - 8.0;
  private static final double TOP = 15.0;
  private static final double BOTTOM = HEIGHT - 17.0;
  private static final int FIGURES = 6;

  /** Keeps its own lists and refuses an empty picture. */
  public CurvePicture {
    Objects.requireNonNull(curves, "curves");
    Objects.requireNonNull(points, "points");
    Objects.requireNonNull(bands, "bands");
    curves = List.copyOf(curves);
    points = List.copyOf(points);
    bands = List.copyOf(bands);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a picture needs at least one curve, got none");
    }
  }

  /**
   * Curves and points without bands.
   *
   * @param title what is shown
   * @param xLabel label of the horizontal axis, with its unit
   * @param yLabel label of the vertical axis, with its unit
   * @param curves the curves, drawn in this order
   * @param points the marked points
   */
  public CurvePicture(String title, String xLabel, String yLabel, List<Curve> curves, List<Point> points) {
    this(title, xLabel, yLabel, curves, points, List.of());
  }

  /**
   * One curve.
   *
   * @param label what stands at its end; may be empty
   * @param x abscissae
   * @param y ordinates, as many
   * @param style how it looks
   */
  public record Curve(String label, List<Double> x, List<Double> y, Style style) {
    /** Keeps its own lists and refuses what cannot be drawn. */
    public Curve {
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(y, "y");
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(style, "style");
      x = List.copyOf(x);
      y = List.copyOf(y);
      if (x.size() != y.size() || x.size() < 2) {
        throw new IllegalArgumentException(
            "a curve needs as many x as y, at least two, got " + x.size() + " and " + y.size());
      }
    }
  }

  /**
   * A marked point.
   *
   * @param label what stands at it
   * @param x abscissa
   * @param y ordinate
   */
  public record Point(String label, double x, double y) {
    public Point {
      Objects.requireNonNull(label, "label");
    }
  }

  /**
   * What lies between two curves, tinted.
   *
   * @param label what stands in it; may be empty
   * @param x abscissae
   * @param lower lower ordinates, as many
   * @param upper upper ordinates, as many
   */
  public record Band(String label, List<Double> x, List<Double> lower, List<Double> upper) {
    /** Keeps its own lists and refuses what cannot be drawn. */
    public Band {
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(lower, "lower");
      Objects.requireNonNull(upper, "upper");
      Objects.requireNonNull(label, "label");
      x = List.copyOf(x);
      lower = List.copyOf(lower);
      upper = List.copyOf(upper);
      if (x.size() != lower.size() || x.size() != upper.size() || x.size() < 2) {
        throw new IllegalArgumentException(
            "a band needs as many lower and upper values as x, at least two, got "
                + x.size()
                + ", "
                + lower.size()
                + " and "
                + upper.size());
      }
    }
  }

  /** How a curve looks. */
  public enum Style {
    /** What the picture is about. */
    MAIN,
    /** One end of a band. */
    EDGE,
    /** Another case, for comparison. */
    OTHER,
    /** What must not be passed. */
    LIMIT
  }

  /**
   * Draws the picture.
   *
   * @return the picture
   */
  public Svg draw() {
    Axis vertical = Plot.axis(Plot.values(false, curves, points, bands), points.isEmpty() ? 0.06 : 0.16, BOTTOM, TOP);
    double left = Plot.left(Sheet.MARGIN, vertical, FIGURES);
    Axis horizontal = Plot.axis(Plot.values(true, curves, points, bands), 0.06, left, RIGHT);
    Svg svg = Sheet.titled(WIDTH, HEIGHT, title);
    Plot plot = new Plot(svg, horizontal, vertical);
    bands.forEach(plot::band);
    plot.grid(FIGURES, true);
    plot.names(xLabel, HEIGHT - 5.5, yLabel, Sheet.MARGIN + 2.5);
    curves.forEach(plot::curve);
    plot.labels(points, curves, bands, new Box(left + 1.0, TOP, RIGHT + 4.0, BOTTOM - 0.5));
    plot.finish();
    return svg;
  }
}
