// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Conflict;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.FeasibleRegion.Boundary;
import io.github.wingwright.core.basis.FeasibleRegion.Outline;
import io.github.wingwright.core.basis.FeasibleRegion.Point;
import io.github.wingwright.core.basis.FeasibleRegion.Side;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Lays out one {@link RegionPicture}. */
final class RegionChart {
  /** More crosses are no help. */
  private static final int MOST_WAYS = 4;

  private static final double WIDTH = 185.0;
  private static final double RIGHT = WIDTH - 8.0;
  private static final double TOP = 14.0;
  private static final double BOTTOM = 119.0;
  private static final double KEY = BOTTOM + 19.0;
  private static final double ROW = 4.7;
  private static final int FIGURES = 6;
  private static final double LONGEST_LABEL = 72.0;
  private static final Lettering SMALL = Lettering.start(Lettering.SMALL);

  private final RegionPicture picture;
  private final FeasibleRegion region;
  private final NamedUnit<Length> unit;
  private final RegionWindow window;
  private final List<Boundary> boundaries;
  private final Set<Weighed> binding;
  private final Sketch sketch = new Sketch();
  private final Axis across;
  private final Axis up;

  RegionChart(RegionPicture picture) {
    this.picture = picture;
    this.region = picture.region();
    this.unit = region.unit();
    this.window = RegionWindow.around(picture);
    this.boundaries = region.boundaries(window.lengths(), window.diameters());
    this.binding =
        region.outlines().stream()
            .flatMap(o -> o.sides().stream())
            .flatMap(s -> s.boundBy().stream())
            .collect(Collectors.toUnmodifiableSet());
    this.up = new Axis(window.diameters().lower(), window.diameters().upper(), BOTTOM, TOP);
    double left = Plot.left(Sheet.MARGIN, inUnit(up), FIGURES);
    this.across = new Axis(window.lengths().lower(), window.lengths().upper(), left, RIGHT);
  }

  Svg draw() {
    region.outlines().forEach(this::fill);
    for (Boundary boundary : boundaries) {
      for (List<Point> line : boundary.lines()) {
        RegionHatching.draw(
            sketch, boundary.consideration(), onPaper(line), this, pen(boundary.consideration()));
        sketch.polyline(onPaper(line)[0], onPaper(line)[1], pen(boundary.consideration()));
      }
    }
    region.outlines().forEach(o -> o.sides().forEach(this::side));
    marks();
    names();
    RegionKey key = new RegionKey(this, KEY, ROW, WIDTH - 2.0 * Sheet.MARGIN);
    Svg svg = Sheet.blank(WIDTH, key.bottom() + Sheet.MARGIN, picture.title());
    Plot plot = new Plot(svg, inUnit(across), inUnit(up));
    plot.grid(FIGURES, true);
    Sheet.headline(svg, picture.title());
    String symbol = unit.symbol();
    plot.names("length in " + symbol, BOTTOM + 11.5, "diameter in " + symbol, Sheet.MARGIN + 2.5);
    sketch.onto(svg, 0.0, 0.0);
    key.draw(svg, Sheet.MARGIN);
    return svg;
  }

  FeasibleRegion region() {
    return region;
  }

  List<Boundary> boundaries() {
    return boundaries;
  }

  boolean binds(Weighed one) {
    return binding.contains(one);
  }

  boolean clashes(Weighed one) {
    return region.conflict().map(c -> c.concerns(one)).orElse(false);
  }

  RegionWindow window() {
    return window;
  }

  /** The length at a place on paper [m]. */
  double lengthAt(double x) {
    return across.low()
        + (x - across.start()) / (across.end() - across.start()) * (across.high() - across.low());
  }

  /** The diameter at a place on paper [m]. */
  double diameterAt(double y) {
    return up.low() + (y - up.start()) / (up.end() - up.start()) * (up.high() - up.low());
  }

  Box plot() {
    return new Box(across.start(), TOP, RIGHT, BOTTOM);
  }

  private double[][] onPaper(List<Point> points) {
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = across.clamped(points.get(i).length());
      y[i] = up.clamped(points.get(i).diameter());
    }
    return new double[][] {x, y};
  }

  private void fill(Outline outline) {
    double[][] polygon = onPaper(outline.polygon());
    sketch.polygon(polygon[0], polygon[1], Pen.fill(Pen.ACCENT_TINT));
  }

  private void side(Side side) {
    side.boundBy()
        .ifPresent(
            who -> {
              double[][] line = onPaper(side.points());
              sketch.polyline(line[0], line[1], Pen.stroke(colour(who), 0.8));
            });
  }

  Pen pen(Weighed one) {
    if (!one.decision().applies()) {
      return Pen.stroke(Pen.SHADOW, 0.3).dashed("1.2 1.2");
    }
    if (clashes(one)) {
      return Pen.stroke(Pen.WARM, 0.9);
    }
    Pen line = Pen.stroke(colour(one), 0.35);
    return one.isTarget() ? line.dashed("2.4 1.2") : line;
  }

  private String colour(Weighed one) {
    if (!one.decision().applies()) {
      return Pen.QUIET;
    }
    if (clashes(one) || one.isTarget()) {
      return Pen.WARM;
    }
    return one.isLimit() ? Pen.INK : Pen.ACCENT;
  }

  Lettering lettering(Weighed one) {
    return SMALL.in(colour(one));
  }

  private void marks() {
    LabelPlacer placer = new LabelPlacer(sketch, plot().grownBy(-0.8));
    List<RegionPicture.Mark> all = new ArrayList<>(picture.marks());
    for (RegionPicture.Mark mark : all) {
      double x = across.clamped(mark.body().length());
      double y = up.clamped(mark.body().diameter());
      boolean choice = mark.kind() == RegionPicture.Kind.CHOICE;
      Pen pen = new Pen(choice ? Pen.WARM : Pen.ACCENT, 0.5, choice ? Pen.WARM : Pen.PAPER, "");
      sketch.mark(x, y, choice ? 1.1 : 1.6, 1.7, pen);
      placer.expect(x, y);
    }
    concessions(placer);
    all.sort(Comparator.comparingDouble((RegionPicture.Mark m) -> m.body().length()).reversed());
    for (RegionPicture.Mark mark : all) {
      boolean choice = mark.kind() == RegionPicture.Kind.CHOICE;
      Lettering lettering = SMALL.heavy().in(choice ? Pen.WARM : Pen.ACCENT).onto(Pen.PAPER);
      String label = TextWidth.cut(mark.label(), 80.0, lettering);
      placer.place(
          across.clamped(mark.body().length()),
          up.clamped(mark.body().diameter()),
          label,
          lettering);
    }
  }

  /** The bodies at which the clash would end: a cross at each, a label at the smallest concession. */
  private void concessions(LabelPlacer placer) {
    List<Conflict.GivingWay> ways =
        region.conflict().stream().flatMap(c -> c.waysOut().stream()).map(way -> way.get(0)).limit(MOST_WAYS).toList();
    for (Conflict.GivingWay way : ways) {
      double x = across.clamped(way.body().length());
      double y = up.clamped(way.body().diameter());
      Pen cross = Pen.stroke(Pen.WARM, 0.4);
      sketch.tick(x - 1.3, y - 1.3, x + 1.3, y + 1.3, cross);
      sketch.tick(x - 1.3, y + 1.3, x + 1.3, y - 1.3, cross);
      sketch.reserve(new Box(x - 1.5, y - 1.5, x + 1.5, y + 1.5));
    }
    if (!ways.isEmpty()) {
      Point least = ways.get(0).body();
      Lettering lettering = SMALL.in(Pen.WARM).onto(Pen.PAPER);
      placer.place(
          across.clamped(least.length()),
          up.clamped(least.diameter()),
          "least concession: " + least.format(unit),
          lettering);
    }
  }

  /** Who binds or clashes is named first, for there the reader looks. */
  private void names() {
    LineLabels labels = new LineLabels(sketch, plot().grownBy(-0.6));
    List<Boundary> order = new ArrayList<>(boundaries);
    order.sort(
        Comparator.comparing(b -> !(binds(b.consideration()) || clashes(b.consideration()))));
    for (Boundary boundary : order) {
      if (!boundary.lines().isEmpty()) {
        Weighed one = boundary.consideration();
        Lettering lettering = lettering(one).onto(Pen.PAPER);
        String number = number(boundary);
        String name =
            TextWidth.cut(number + " " + one.consideration().nameIn(region.unit()), LONGEST_LABEL, lettering);
        labels.place(
            boundary.lines().stream().map(this::onPaper).toList(), name, number, lettering);
      }
    }
  }

  String number(Boundary boundary) {
    return String.valueOf(boundaries.indexOf(boundary) + 1);
  }

  private Axis inUnit(Axis axis) {
    return new Axis(unit.fromSi(axis.low()), unit.fromSi(axis.high()), axis.start(), axis.end());
  }
}
