// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Curves over two axes with marked points. Values are given in the units that the axis labels name.
 *
 * @param title what is shown
 * @param xLabel label of the horizontal axis, with its unit
 * @param yLabel label of the vertical axis, with its unit
 * @param curves the curves, drawn in this order
 * @param points the marked points
 */
public record CurvePicture(String title, String xLabel, String yLabel, List<Curve> curves, List<Point> points) {
  private static final double WIDTH = 150.0;
  private static final double HEIGHT = 95.0;
  private static final double LEFT = 20.0;
  private static final double RIGHT = 8.0;
  private static final double TOP = 14.0;
  private static final double BOTTOM = 16.0;

  /** Keeps its own lists and refuses an empty picture. */
  public CurvePicture {
    curves = List.copyOf(curves);
    points = List.copyOf(points);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a picture needs at least one curve, got none");
    }
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
  public record Point(String label, double x, double y) {}

  /** How a curve looks. */
  public enum Style {
    /** What the picture is about. */
    MAIN,
    /** One end of a band. */
    EDGE,
    /** Another case, for comparison. */
    OTHER
  }

  /**
   * Draws the picture.
   *
   * @return the picture
   */
  public Svg draw() {
    Svg svg = new Svg(WIDTH, HEIGHT, title);
    svg.rectangle(0, 0, WIDTH, HEIGHT, Pen.fill("#ffffff"));
    svg.text(6.0, 7.0, title, Lettering.start(4.0).heavy());
    Axis horizontal = axis(true, LEFT, WIDTH - RIGHT);
    Axis vertical = axis(false, HEIGHT - BOTTOM, TOP);
    grid(svg, horizontal, vertical);
    for (Curve curve : curves) {
      double[] px = new double[curve.x().size()];
      double[] py = new double[px.length];
      for (int i = 0; i < px.length; i++) {
        px[i] = horizontal.at(curve.x().get(i));
        py[i] = vertical.at(curve.y().get(i));
      }
      svg.polyline(px, py, pen(curve.style()));
      if (!curve.label().isEmpty()) {
        int last = px.length - 1;
        boolean right = px[last] > WIDTH - RIGHT - 1.5 * curve.label().length();
        Lettering lettering = right ? Lettering.end(2.5) : Lettering.start(2.5);
        svg.text(px[last] + (right ? -0.5 : 1.0), py[last] - 1.2, curve.label(), lettering.in(pen(curve.style()).stroke()));
      }
    }
    for (Point point : points) {
      double x = horizontal.at(point.x());
      double y = vertical.at(point.y());
      svg.circle(x, y, 1.0, new Pen(Pen.WARM, 0.4, "#ffffff", ""));
      boolean right = x > WIDTH - RIGHT - 1.7 * point.label().length();
      svg.text(
          right ? x - 2.0 : x + 2.0,
          y - 1.6,
          point.label(),
          (right ? Lettering.end(2.7) : Lettering.start(2.7)).in(Pen.WARM).heavy());
    }
    return svg;
  }

  private Axis axis(boolean horizontal, double start, double end) {
    List<Double> values = new ArrayList<>();
    curves.forEach(c -> values.addAll(horizontal ? c.x() : c.y()));
    points.forEach(p -> values.add(horizontal ? p.x() : p.y()));
    double low = values.stream().mapToDouble(Double::doubleValue).min().orElse(0.0);
    double high = values.stream().mapToDouble(Double::doubleValue).max().orElse(1.0);
    double room = high > low ? 0.07 * (high - low) : Math.max(1e-9, 0.1 * Math.abs(high));
    return new Axis(low - room, high + room, start, end);
  }

  private void grid(Svg svg, Axis horizontal, Axis vertical) {
    for (double tick : horizontal.ticks(7)) {
      double x = horizontal.at(tick);
      svg.line(x, TOP, x, HEIGHT - BOTTOM, Pen.GRID);
      svg.text(x, HEIGHT - BOTTOM + 4.2, NamedUnit.NUMBER.format(tick, 4), Lettering.middle(2.6));
    }
    for (double tick : vertical.ticks(6)) {
      double y = vertical.at(tick);
      svg.line(LEFT, y, WIDTH - RIGHT, y, Pen.GRID);
      svg.text(LEFT - 1.5, y + 0.9, NamedUnit.NUMBER.format(tick, 4), Lettering.end(2.6));
    }
    svg.line(LEFT, TOP, LEFT, HEIGHT - BOTTOM, Pen.THIN);
    svg.line(LEFT, HEIGHT - BOTTOM, WIDTH - RIGHT, HEIGHT - BOTTOM, Pen.THIN);
    svg.text(WIDTH - RIGHT, HEIGHT - 5.5, xLabel, Lettering.end(2.9));
    svg.upwardText(5.5, TOP, yLabel, Lettering.end(2.9));
  }

  private static Pen pen(Style style) {
    return switch (style) {
      case MAIN -> Pen.stroke(Pen.ACCENT, 0.6);
      case EDGE -> Pen.stroke(Pen.ACCENT, 0.3).dashed("1.6 1.2");
      case OTHER -> Pen.stroke(Pen.SHADOW, 0.45);
    };
  }
}
