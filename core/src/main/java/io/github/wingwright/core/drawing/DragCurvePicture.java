// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * The drag of a body against its diameter or its fineness ratio, while one thing stays as it is: a curve for each
 * thing
 * that may stay, its least marked, and the part of it that costs no more than one per cent more drawn broad, so that
 * one
 * sees whether the least is flat or sharp. The drag axis begins at zero: what looks flat is flat.
 *
 * <p>Values are given in the units that the axis labels name.
 *
 * @param title what is shown
 * @param method what the drag depends on: the friction and the form factor, by name
 * @param xLabel label of the horizontal axis, with its unit
 * @param yLabel label of the vertical axis, with its unit
 * @param curves the curves, at least one
 * @param points bodies to mark, such as the choice
 */
public record DragCurvePicture(
    String title,
    String method,
    String xLabel,
    String yLabel,
    List<Curve> curves,
    List<CurvePicture.Point> points) {
  private static final double WIDTH = 170.0;
  private static final double RIGHT = WIDTH - 8.0;
  private static final double TOP = 20.0;
  private static final double BOTTOM = 100.0;
  private static final double HEIGHT = BOTTOM + 17.0;
  private static final double BROAD = 2.6;
  private static final int FIGURES = 6;

  /** One look for each thing that stays: full, dashed, dotted. */
  private static final List<Pen> PENS =
      List.of(
          Pen.stroke(Pen.ACCENT, 0.6),
          Pen.stroke(Pen.INK, 0.6).dashed("3.2 1.2"),
          Pen.stroke(Pen.QUIET, 0.7).dashed("0.9 0.9"));

  /** Keeps its own lists and refuses an empty picture. */
  public DragCurvePicture {
    Objects.requireNonNull(curves, "curves");
    Objects.requireNonNull(points, "points");
    curves = List.copyOf(curves);
    points = List.copyOf(points);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a picture needs at least one curve, got none");
    }
  }

  /** How the least lies in its surroundings. */
  public enum Shape {
    /** It can be left at no price to speak of. */
    FLAT,
    /** It is worth being met. */
    SHARP,
    /** It lies at an end of the curve: something else must say stop. */
    AT_END
  }

  /**
   * The least drag of a curve.
   *
   * @param x where it lies
   * @param y the drag there
   * @param within the part of the curve within one per cent of it
   * @param shape how it lies in its surroundings
   */
  public record Least(double x, double y, Interval within, Shape shape) {
    public Least {
      Objects.requireNonNull(within, "within");
      Objects.requireNonNull(shape, "shape");
    }

    String words() {
      String at = NamedUnit.NUMBER.format(x, 3);
      String range =
          NamedUnit.NUMBER.format(within.lower(), 3)
              + " to "
              + NamedUnit.NUMBER.format(within.upper(), 3);
      return switch (shape) {
        case FLAT -> "flat: least at " + at + ", within 1 % from " + range;
        case SHARP -> "sharp: least at " + at + ", within 1 % from " + range;
        case AT_END -> "falls all the way to " + at;
      };
    }
  }

  /**
   * One curve.
   *
   * @param label what stays as it is, such as {@code "volume 60 cm³"}
   * @param x abscissae, rising or falling
   * @param y ordinates, as many, not negative
   * @param least the least drag
   */
  public record Curve(String label, List<Double> x, List<Double> y, Least least) {
    /** Keeps its own lists and refuses what cannot be drawn. */
    public Curve {
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(y, "y");
      x = List.copyOf(x);
      y = List.copyOf(y);
      if (x.size() != y.size() || x.size() < 2) {
        throw new IllegalArgumentException(
            "a curve needs as many x as y, at least two, got " + x.size() + " and " + y.size());
      }
    }
  }

  /**
   * Draws the picture.
   *
   * @return the picture
   */
  public Svg draw() {
    Axis vertical = new Axis(0.0, 1.08 * greatest(), BOTTOM, TOP);
    double left = Plot.left(Sheet.MARGIN, vertical, FIGURES);
    Axis horizontal = horizontal(left);
    Svg svg = Sheet.blank(WIDTH, HEIGHT, title);
    Plot plot = new Plot(svg, horizontal, vertical);
    plot.grid(FIGURES, true);
    Sheet.headline(svg, title);
    plot.names(xLabel, HEIGHT - 5.5, yLabel, Sheet.MARGIN + 2.5);
    Lettering small = Lettering.start(Lettering.SMALL).in(Pen.QUIET);
    svg.text(Sheet.MARGIN, 14.0, TextWidth.cut(method, WIDTH - 2.0 * Sheet.MARGIN, small), small);
    Sketch sketch = plot.sketch();
    for (Curve curve : curves) {
      broad(sketch, horizontal, vertical, curve);
    }
    for (int i = 0; i < curves.size(); i++) {
      line(sketch, horizontal, vertical, curves.get(i), pen(i));
    }
    labels(plot, horizontal, vertical, new Box(left + 1.0, TOP, RIGHT + 4.0, BOTTOM - 0.5));
    plot.finish();
    return svg;
  }

  private static Pen pen(int i) {
    return PENS.get(i % PENS.size());
  }

  private double greatest() {
    double most = points.stream().mapToDouble(CurvePicture.Point::y).max().orElse(0.0);
    for (Curve curve : curves) {
      most = Math.max(most, curve.y().stream().mapToDouble(Double::doubleValue).max().orElse(0.0));
    }
    if (!(most > 0.0) || Double.isInfinite(most)) {
      throw new IllegalArgumentException(
          "drag must be positive and finite somewhere, was at most " + most);
    }
    return most;
  }

  private Axis horizontal(double left) {
    List<Double> all = new ArrayList<>();
    curves.forEach(c -> all.addAll(c.x()));
    points.forEach(p -> all.add(p.x()));
    double low = all.stream().mapToDouble(Double::doubleValue).min().orElse(0.0);
    double high = all.stream().mapToDouble(Double::doubleValue).max().orElse(1.0);
    double room = high > low ? 0.04 * (high - low) : Math.max(1e-9, 0.1 * Math.abs(high));
    return new Axis(low - room, high + room, left, RIGHT);
  }

  private static void line(Sketch sketch, Axis horizontal, Axis vertical, Curve curve, Pen pen) {
    double[] x = curve.x().stream().mapToDouble(horizontal::at).toArray();
    double[] y = curve.y().stream().mapToDouble(vertical::at).toArray();
    sketch.polyline(x, y, pen);
  }

  /** The part within one per cent, under the line: between the points of the curve that lie in it. */
  private static void broad(Sketch sketch, Axis horizontal, Axis vertical, Curve curve) {
    List<double[]> inside = new ArrayList<>();
    for (int i = 0; i < curve.x().size(); i++) {
      double x = curve.x().get(i);
      if (i > 0) {
        crossings(curve, i, inside);
      }
      if (curve.least().within().contains(x)) {
        inside.add(new double[] {x, curve.y().get(i)});
      }
    }
    for (int i = 1; i < inside.size(); i++) {
      double[] a = inside.get(i - 1);
      double[] b = inside.get(i);
      Pen pen = Pen.stroke(Pen.WARM_TINT, BROAD);
      sketch.tick(
          horizontal.at(a[0]), vertical.at(a[1]), horizontal.at(b[0]), vertical.at(b[1]), pen);
    }
  }

  /** Where a piece of the curve enters or leaves the part. */
  private static void crossings(Curve curve, int i, List<double[]> inside) {
    double from = curve.x().get(i - 1);
    double to = curve.x().get(i);
    Interval within = curve.least().within();
    double[] ends =
        to > from
            ? new double[] {within.lower(), within.upper()}
            : new double[] {within.upper(), within.lower()};
    for (double end : ends) {
      double part = (end - from) / (to - from);
      if (part > 0.0 && part < 1.0) {
        inside.add(
            new double[] {
              end, curve.y().get(i - 1) + part * (curve.y().get(i) - curve.y().get(i - 1))
            });
      }
    }
  }

  private void labels(Plot plot, Axis horizontal, Axis vertical, Box room) {
    Sketch sketch = plot.sketch();
    for (int i = 0; i < curves.size(); i++) {
      Least least = curves.get(i).least();
      plot.mark(horizontal.at(least.x()), vertical.at(least.y()), new Pen(pen(i).stroke(), 0.4, Pen.PAPER, ""));
    }
    for (CurvePicture.Point point : points) {
      plot.mark(horizontal.at(point.x()), vertical.at(point.y()), Pen.fill(Pen.WARM));
    }
    LabelPlacer placer = new LabelPlacer(sketch, room);
    Lettering choice = Lettering.start(Lettering.SMALL).in(Pen.WARM).heavy().onto(Pen.PAPER);
    for (CurvePicture.Point point :
        points.stream().sorted(Comparator.comparingDouble(CurvePicture.Point::x)).toList()) {
      placer.place(horizontal.at(point.x()), vertical.at(point.y()), point.label(), choice);
    }
    for (int i = 0; i < curves.size(); i++) {
      Least least = curves.get(i).least();
      Lettering lettering = Lettering.start(Lettering.SMALL).in(pen(i).stroke()).onto(Pen.PAPER);
      placer.place(horizontal.at(least.x()), vertical.at(least.y()), least.words(), lettering);
    }
    LineLabels names = new LineLabels(sketch, room);
    for (int i = 0; i < curves.size(); i++) {
      Curve curve = curves.get(i);
      double[] x = curve.x().stream().mapToDouble(horizontal::at).toArray();
      double[] y = curve.y().stream().mapToDouble(vertical::at).toArray();
      Lettering lettering =
          Lettering.start(Lettering.SMALL).heavy().in(pen(i).stroke()).onto(Pen.PAPER);
      names.place(
          List.<double[][]>of(new double[][] {x, y}), curve.label(), curve.label(), lettering);
    }
  }
}
