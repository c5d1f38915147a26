// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One pair of axes with what is drawn between them: grid, bands, curves, marked points and their labels. The grid goes
 * onto the sheet at once; the rest is sketched, so that labels find room.
 */
final class Plot {
  static final Lettering FIGURE = Lettering.end(Lettering.SMALL);
  private static final Lettering NAME = Lettering.end(Lettering.NOTE);

  /** Room between the label of the vertical axis and its figures. */
  private static final double LABEL_ROOM = 6.0;

  private final Svg svg;
  private final Sketch sketch = new Sketch();
  private final Axis horizontal;
  private final Axis vertical;

  Plot(Svg svg, Axis horizontal, Axis vertical) {
    this.svg = svg;
    this.horizontal = horizontal;
    this.vertical = vertical;
  }

  /** An axis that takes in all values, with some room beside them. */
  static Axis axis(List<Double> values, double share, double start, double end) {
    double low = values.stream().mapToDouble(Double::doubleValue).min().orElse(0.0);
    double high = values.stream().mapToDouble(Double::doubleValue).max().orElse(1.0);
    double size = Math.max(Math.abs(low), Math.abs(high));
    // values that differ by rounding alone are level
    boolean level = !(high - low > 1e-9 * size);
    double room = level ? Math.max(1e-9, 0.1 * size) : share * (high - low);
    return new Axis(low - room, high + room, start, end);
  }

  /** Where the plot begins beside the figures of its vertical axis. */
  static double left(double margin, Axis vertical, int figures) {
    double left = margin + LABEL_ROOM;
    for (Axis.Tick tick : vertical.figures(figures)) {
      left = Math.max(left, margin + LABEL_ROOM + FIGURE.width(tick.label()));
    }
    return left;
  }

  /** Grid, figures and axes. A line of the grid too close to its neighbour goes without its figure. */
  void grid(int verticalFigures, boolean figuresBelow) {
    double top = vertical.end();
    double bottom = vertical.start();
    double left = horizontal.start();
    double right = horizontal.end();
    for (Axis.Tick tick : horizontal.labelledTicks(FIGURE)) {
      svg.line(tick.at(), top, tick.at(), bottom, Pen.GRID);
      if (figuresBelow) {
        svg.text(tick.at(), bottom + 4.6, tick.label(), Lettering.middle(Lettering.SMALL));
      }
    }
    double last = Double.POSITIVE_INFINITY;
    for (Axis.Tick tick : vertical.figures(verticalFigures)) {
      svg.line(left, tick.at(), right, tick.at(), Pen.GRID);
      if (last - tick.at() > Lettering.SMALL + 1.0) {
        svg.text(left - 1.5, tick.at() + 1.1, tick.label(), FIGURE);
        last = tick.at();
      }
    }
    svg.line(left, top, left, bottom, Pen.THIN);
    svg.line(left, bottom, right, bottom, Pen.THIN);
  }

  /** Names of the axes: the horizontal one at a height below the plot, the vertical one at a distance from the edge. */
  void names(String x, double atY, String y, double atX) {
    svg.text(horizontal.end(), atY, TextWidth.cut(x, horizontal.end() - horizontal.start(), NAME), NAME);
    upward(y, atX);
  }

  void upward(String y, double atX) {
    svg.upwardText(atX, vertical.end(), TextWidth.cut(y, vertical.start() - vertical.end(), NAME), NAME);
  }

  void band(CurvePicture.Band band) {
    int n = band.x().size();
    double[] px = new double[2 * n];
    double[] py = new double[2 * n];
    for (int i = 0; i < n; i++) {
      px[i] = horizontal.at(band.x().get(i));
      py[i] = vertical.at(band.lower().get(i));
      px[2 * n - 1 - i] = px[i];
      py[2 * n - 1 - i] = vertical.at(band.upper().get(i));
    }
    sketch.polygon(px, py, Pen.fill(Pen.ACCENT_TINT));
  }

  void curve(CurvePicture.Curve curve) {
    double[] px = new double[curve.x().size()];
    double[] py = new double[px.length];
    for (int i = 0; i < px.length; i++) {
      px[i] = horizontal.at(curve.x().get(i));
      py[i] = vertical.at(curve.y().get(i));
    }
    sketch.polyline(px, py, pen(curve.style()));
  }

  /** A straight line between two places on paper that labels avoid. */
  void line(double x1, double y1, double x2, double y2, Pen pen) {
    sketch.line(x1, y1, x2, y2, pen);
  }

  /** Points first, for they cannot be anywhere else; then curves at their ends, then bands in their middle. */
  void labels(
      List<CurvePicture.Point> points,
      List<CurvePicture.Curve> curves,
      List<CurvePicture.Band> bands,
      Box room) {
    for (CurvePicture.Point point : points) {
      mark(horizontal.at(point.x()), vertical.at(point.y()), new Pen(Pen.WARM, 0.4, Pen.PAPER, ""));
    }
    LabelPlacer placer = new LabelPlacer(sketch, room);
    points.forEach(point -> placer.expect(horizontal.at(point.x()), vertical.at(point.y())));
    Lettering pointLabel = Lettering.start(Lettering.NOTE).in(Pen.WARM).heavy().onto(Pen.PAPER);
    // From the right, so that leaders pass the labels of their neighbours on the left.
    for (CurvePicture.Point point :
        points.stream()
            .sorted(Comparator.comparingDouble(CurvePicture.Point::x).reversed())
            .toList()) {
      placer.place(horizontal.at(point.x()), vertical.at(point.y()), point.label(), pointLabel);
    }
    for (CurvePicture.Curve curve : curves) {
      if (!curve.label().isEmpty()) {
        int last = curve.x().size() - 1;
        placer.place(
            horizontal.at(curve.x().get(last)),
            vertical.at(curve.y().get(last)),
            curve.label(),
            lettering(curve.style()));
      }
    }
    for (CurvePicture.Band band : bands) {
      if (!band.label().isEmpty()) {
        int middle = band.x().size() / 2;
        double y = 0.5 * (band.lower().get(middle) + band.upper().get(middle));
        placer.place(
            horizontal.at(band.x().get(middle)),
            vertical.at(y),
            band.label(),
            Lettering.start(Lettering.SMALL).in(Pen.ACCENT).onto(Pen.ACCENT_TINT));
      }
    }
  }

  /** A round mark that keeps its place free. */
  void mark(double x, double y, Pen pen) {
    sketch.mark(x, y, 1.1, 1.3, pen);
  }

  Sketch sketch() {
    return sketch;
  }

  /** Puts everything that was sketched onto the sheet. */
  void finish() {
    sketch.onto(svg, 0.0, 0.0);
  }

  private static Lettering lettering(CurvePicture.Style style) {
    String colour = style == CurvePicture.Style.OTHER ? Pen.QUIET : pen(style).stroke();
    return Lettering.start(Lettering.SMALL).in(colour).onto(Pen.PAPER);
  }

  static Pen pen(CurvePicture.Style style) {
    return switch (style) {
      case MAIN -> Pen.stroke(Pen.ACCENT, 0.6);
      case EDGE -> Pen.stroke(Pen.ACCENT, 0.3).dashed("1.6 1.2");
      case OTHER -> Pen.stroke(Pen.SHADOW, 0.45);
      case LIMIT -> Pen.stroke(Pen.WARM, 0.5);
    };
  }

  /** The values of one coordinate of everything that is shown. */
  static List<Double> values(
      boolean alongX,
      List<CurvePicture.Curve> curves,
      List<CurvePicture.Point> points,
      List<CurvePicture.Band> bands) {
    List<Double> values = new ArrayList<>();
    curves.forEach(c -> values.addAll(alongX ? c.x() : c.y()));
    points.forEach(p -> values.add(alongX ? p.x() : p.y()));
    for (CurvePicture.Band band : bands) {
      values.addAll(alongX ? band.x() : band.lower());
      values.addAll(alongX ? band.x() : band.upper());
    }
    return values;
  }
}
