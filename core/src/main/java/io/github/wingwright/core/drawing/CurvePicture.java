// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.ArrayList;
import java.util.Comparator;
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
  private static final double WIDTH = 170.0;
  private static final double HEIGHT = 112.0;
  private static final double RIGHT = WIDTH - 8.0;
  private static final double TOP = 15.0;
  private static final double BOTTOM = HEIGHT - 17.0;

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
    Axis vertical = axis(false, BOTTOM, TOP);
    double left = ChartFrame.left(vertical);
    Axis horizontal = axis(true, left, RIGHT);
    Svg svg = new Svg(WIDTH, HEIGHT, title);
    svg.rectangle(0, 0, WIDTH, HEIGHT, Pen.fill("#ffffff"));
    new ChartFrame(title, xLabel, yLabel, horizontal, vertical).draw(svg);
    Sketch sketch = new Sketch();
    curves.forEach(curve -> curve(sketch, horizontal, vertical, curve));
    labels(sketch, horizontal, vertical, new Box(left + 1.0, TOP, RIGHT + 4.0, BOTTOM - 0.5));
    sketch.onto(svg, 0.0, 0.0);
    return svg;
  }

  private static void curve(Sketch sketch, Axis horizontal, Axis vertical, Curve curve) {
    double[] px = new double[curve.x().size()];
    double[] py = new double[px.length];
    for (int i = 0; i < px.length; i++) {
      px[i] = horizontal.at(curve.x().get(i));
      py[i] = vertical.at(curve.y().get(i));
    }
    sketch.polyline(px, py, pen(curve.style()));
  }

  /** Points first, for they cannot be anywhere else; then the curves, at their ends. */
  private void labels(Sketch sketch, Axis horizontal, Axis vertical, Box room) {
    for (Point point : points) {
      double x = horizontal.at(point.x());
      double y = vertical.at(point.y());
      sketch.circle(x, y, 1.1, new Pen(Pen.WARM, 0.4, "#ffffff", ""));
      sketch.reserve(new Box(x - 1.3, y - 1.3, x + 1.3, y + 1.3));
    }
    LabelPlacer placer = new LabelPlacer(sketch, room);
    points.forEach(point -> placer.expect(horizontal.at(point.x()), vertical.at(point.y())));
    Lettering pointLabel = Lettering.start(Lettering.NOTE).in(Pen.WARM).heavy().onto("#ffffff");
    // From the right, so that leaders pass the labels of their neighbours on the left.
    for (Point point : points.stream().sorted(Comparator.comparingDouble(Point::x).reversed()).toList()) {
      placer.place(horizontal.at(point.x()), vertical.at(point.y()), point.label(), pointLabel);
    }
    for (Curve curve : curves) {
      if (!curve.label().isEmpty()) {
        int last = curve.x().size() - 1;
        Lettering lettering = Lettering.start(Lettering.SMALL).in(pen(curve.style()).stroke()).onto("#ffffff");
        if (curve.style() == Style.OTHER) {
          lettering = lettering.in(Pen.QUIET);
        }
        placer.place(horizontal.at(curve.x().get(last)), vertical.at(curve.y().get(last)), curve.label(), lettering);
      }
    }
  }

  private Axis axis(boolean horizontal, double start, double end) {
    List<Double> values = new ArrayList<>();
    curves.forEach(c -> values.addAll(horizontal ? c.x() : c.y()));
    points.forEach(p -> values.add(horizontal ? p.x() : p.y()));
    double low = values.stream().mapToDouble(Double::doubleValue).min().orElse(0.0);
    double high = values.stream().mapToDouble(Double::doubleValue).max().orElse(1.0);
    double share = horizontal || points.isEmpty() ? 0.06 : 0.16;
    double room = high > low ? share * (high - low) : Math.max(1e-9, 0.1 * Math.abs(high));
    return new Axis(low - room, high + room, start, end);
  }

  private static Pen pen(Style style) {
    return switch (style) {
      case MAIN -> Pen.stroke(Pen.ACCENT, 0.6);
      case EDGE -> Pen.stroke(Pen.ACCENT, 0.3).dashed("1.6 1.2");
      case OTHER -> Pen.stroke(Pen.SHADOW, 0.45);
    };
  }
}
