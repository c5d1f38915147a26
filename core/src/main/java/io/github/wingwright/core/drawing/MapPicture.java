// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A value over two others as a map: cells in steps of one tone, darker for more, with a key of the levels and the value
 * written into some of the cells.
 *
 * @param title what is shown
 * @param xLabel label of the horizontal axis, with its unit
 * @param yLabel label of the vertical axis, with its unit
 * @param valueLabel what the cells are, with its unit
 * @param x abscissae of the cells, rising, at least two
 * @param y ordinates of the cells, rising, at least two
 * @param rows one row for each ordinate, with one value for each abscissa
 * @param marks marked points
 * @param hatchings kinds of cells that are hatched, each in its own way; none for a plain map
 */
public record MapPicture(
    String title,
    String xLabel,
    String yLabel,
    String valueLabel,
    List<Double> x,
    List<Double> y,
    List<List<Double>> rows,
    List<CurvePicture.Point> marks,
    List<Hatching> hatchings) {
  private static final double WIDTH = 185.0;
  private static final double HEIGHT = 122.0;
  private static final double TOP = 15.0;
  private static final double BOTTOM = HEIGHT - 17.0;
  private static final double RIGHT = WIDTH - 34.0;
  private static final int FIGURES = 6;
  private static final double BAR = 6.0;
  private static final double KEY_ROW = 9.0;
  private static final double HATCH_SPACING = 2.6;
  private static final Pen HATCH = Pen.stroke(Pen.INK, 0.22);
  private static final int[] PALE = {0xf2, 0xf7, 0xf6};
  private static final int[] DEEP = {0x1f, 0x7a, 0x70};
  private static final Lettering VALUE = Lettering.middle(Lettering.SMALL).onto(Pen.PAPER);

  /** Keeps its own lists and refuses what is no map. */
  public MapPicture {
    Objects.requireNonNull(x, "x");
    x = rising(x, "abscissae");
    y = rising(y, "ordinates");
    rows = rows.stream().map(List::copyOf).toList();
    marks = List.copyOf(marks);
    hatchings = List.copyOf(hatchings);
    if (hatchings.size() > Strokes.values().length) {
      throw new IllegalArgumentException("a map has at most " + Strokes.values().length + " hatchings, got " + hatchings.size());
    }
    for (Hatching hatching : hatchings) {
      if (!hatching.cells.stream().map(List::size).toList().equals(rows.stream().map(List::size).toList())) {
        throw new IllegalArgumentException("hatching must have as many cells as the map, in as many rows");
      }
    }
    if (rows.size() != y.size()) {
      throw new IllegalArgumentException("a map needs a row for each of " + y.size() + " ordinates, got " + rows.size());
    }
    for (List<Double> row : rows) {
      if (row.size() != x.size()) {
        throw new IllegalArgumentException("each row needs " + x.size() + " values, got " + row.size());
      }
      if (row.stream().anyMatch(v -> !Double.isFinite(v))) {
        throw new IllegalArgumentException("values of a map must be finite, one was not");
      }
    }
  }

  /**
   * A map without hatching.
   *
   * @param title what is shown
   * @param xLabel label of the horizontal axis, with its unit
   * @param yLabel label of the vertical axis, with its unit
   * @param valueLabel what the cells are, with its unit
   * @param x abscissae of the cells, rising, at least two
   * @param y ordinates of the cells, rising, at least two
   * @param rows one row for each ordinate, with one value for each abscissa
   * @param marks marked points
   */
  public MapPicture(
      String title,
      String xLabel,
      String yLabel,
      String valueLabel,
      List<Double> x,
      List<Double> y,
      List<List<Double>> rows,
      List<CurvePicture.Point> marks) {
    this(title, xLabel, yLabel, valueLabel, x, y, rows, marks, List.of());
  }

  /**
   * Cells of one kind.
   *
   * @param cells which cells are, as many as values of the map
   * @param words what they are, a word or two
   */
  public record Hatching(List<List<Boolean>> cells, String words) {
    /** Keeps its own lists. */
    public Hatching {
      Objects.requireNonNull(cells, "cells");
      Objects.requireNonNull(words, "words");
      cells = cells.stream().map(List::copyOf).toList();
      Door.said(words, "words of the hatching");
    }
  }

  /** How the first, the second, … kind is hatched. */
  private enum Strokes {
    RISING,
    FALLING,
    LEVEL,
    UPRIGHT;

    /** One stroke across a box. */
    void draw(Svg svg, double left, double top, double right, double foot) {
      double x = 0.5 * (left + right);
      double y = 0.5 * (top + foot);
      switch (this) {
        case RISING -> svg.line(left, foot, right, top, HATCH);
        case FALLING -> svg.line(left, top, right, foot, HATCH);
        case LEVEL -> svg.line(left, y, right, y, HATCH);
        case UPRIGHT -> svg.line(x, top, x, foot, HATCH);
      }
    }

    /** Which cells carry a stroke, so that the strokes of neighbours meet and their rows are not too close. */
    boolean isAt(int column, int row, int columns, int rows) {
      return switch (this) {
        case RISING -> Math.floorMod(column - row, columns) == 0;
        case FALLING -> Math.floorMod(column + row, columns) == 0;
        case LEVEL -> Math.floorMod(row, rows) == 0;
        case UPRIGHT -> Math.floorMod(column, columns) == 0;
      };
    }
  }

  /**
   * The same map with cells of one kind hatched, beside those that are already.
   *
   * @param cells which cells are, as many as values
   * @param words what hatched cells are, a word or two
   * @return the map with them
   */
  public MapPicture withHatching(List<List<Boolean>> cells, String words) {
    List<Hatching> more = new ArrayList<>(hatchings);
    more.add(new Hatching(cells, words));
    return new MapPicture(title, xLabel, yLabel, valueLabel, x, y, rows, marks, more);
  }

  private static List<Double> rising(List<Double> values, String name) {
    for (int i = 1; i < values.size(); i++) {
      if (!(values.get(i) > values.get(i - 1))) {
        throw new IllegalArgumentException(name + " of a map must rise, were " + values.get(i - 1) + " then " + values.get(i));
      }
    }
    if (values.size() < 2) {
      throw new IllegalArgumentException(name + " of a map must be at least two, got " + values.size());
    }
    return List.copyOf(values);
  }

  /**
   * Draws the picture.
   *
   * @return the picture
   */
  public Svg draw() {
    double[] across = edges(x);
    double[] up = edges(y);
    Axis vertical = new Axis(up[0], up[y.size()], BOTTOM, TOP);
    double left = Plot.left(Sheet.MARGIN, vertical, FIGURES);
    Axis horizontal = new Axis(across[0], across[x.size()], left, RIGHT);
    List<Double> levels = levels();
    Svg svg = Sheet.blank(WIDTH, HEIGHT, title);
    cells(svg, horizontal, vertical, across, up, levels);
    hatch(svg, horizontal, vertical, across, up);
    frame(svg, horizontal, vertical);
    key(svg, levels);
    Sketch sketch = new Sketch();
    Box room = new Box(left + 0.5, TOP + 0.5, RIGHT - 0.5, BOTTOM - 0.5);
    marks(sketch, horizontal, vertical, room);
    values(sketch, horizontal, vertical, room);
    sketch.onto(svg, 0.0, 0.0);
    return svg;
  }

  /** Half way between the middles of the cells, and as far out at the ends. */
  private static double[] edges(List<Double> middles) {
    int n = middles.size();
    double[] edges = new double[n + 1];
    for (int i = 1; i < n; i++) {
      edges[i] = 0.5 * (middles.get(i - 1) + middles.get(i));
    }
    edges[0] = 2.0 * middles.get(0) - edges[1];
    edges[n] = 2.0 * middles.get(n - 1) - edges[n - 1];
    return edges;
  }

  /** Round values between the least and the greatest: where one tone ends and the next begins. */
  private List<Double> levels() {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (List<Double> row : rows) {
      for (double value : row) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    if (!(high - low > 1e-12 * Math.max(Math.abs(low), Math.abs(high)))) {
      return List.of(low);
    }
    return new Axis(low, high, 0.0, 1.0).ticks(7);
  }

  private static int band(double value, List<Double> levels) {
    int band = 0;
    while (band < levels.size() && value >= levels.get(band)) {
      band++;
    }
    return band;
  }

  private static String tone(int band, int bands) {
    double part = bands < 2 ? 0.5 : (double) band / (bands - 1);
    int[] rgb = new int[3];
    for (int i = 0; i < 3; i++) {
      rgb[i] = (int) Math.rint(PALE[i] + part * (DEEP[i] - PALE[i]));
    }
    return String.format(Locale.ROOT, "#%02x%02x%02x", rgb[0], rgb[1], rgb[2]);
  }

  /** Neighbours of one tone in a row are one rectangle. */
  private void cells(Svg svg, Axis horizontal, Axis vertical, double[] across, double[] up, List<Double> levels) {
    int bands = levels.size() + 1;
    for (int row = 0; row < y.size(); row++) {
      double top = vertical.at(up[row + 1]);
      double height = vertical.at(up[row]) - top;
      int start = 0;
      while (start < x.size()) {
        int band = band(rows.get(row).get(start), levels);
        int end = start + 1;
        while (end < x.size() && band(rows.get(row).get(end), levels) == band) {
          end++;
        }
        double from = horizontal.at(across[start]);
        String tone = tone(band, bands);
        // A hair of the same tone closes the seams that a viewer would leave between rectangles.
        svg.rectangle(from, top, horizontal.at(across[end]) - from, height, new Pen(tone, 0.05, tone, ""));
        start = end;
      }
    }
  }

  /** Strokes across the cells, in rows no closer than the eye wants them. */
  private void hatch(Svg svg, Axis horizontal, Axis vertical, double[] across, double[] up) {
    int columns = stride((RIGHT - horizontal.start()) / x.size());
    int lines = stride((BOTTOM - TOP) / y.size());
    for (int kind = 0; kind < hatchings.size(); kind++) {
      Strokes strokes = Strokes.values()[kind];
      List<List<Boolean>> cells = hatchings.get(kind).cells;
      for (int row = 0; row < y.size(); row++) {
        for (int i = 0; i < x.size(); i++) {
          if (cells.get(row).get(i) && strokes.isAt(i, row, columns, lines)) {
            strokes.draw(
                svg, horizontal.at(across[i]), vertical.at(up[row + 1]), horizontal.at(across[i + 1]), vertical.at(up[row]));
          }
        }
      }
    }
  }

  private static int stride(double cell) {
    return Math.max(1, (int) Math.ceil(HATCH_SPACING / cell));
  }

  private void frame(Svg svg, Axis horizontal, Axis vertical) {
    double left = horizontal.start();
    for (Axis.Tick tick : horizontal.labelledTicks(Plot.FIGURE)) {
      svg.line(tick.at(), BOTTOM, tick.at(), BOTTOM + 1.2, Pen.THIN);
      svg.text(tick.at(), BOTTOM + 5.0, tick.label(), Lettering.middle(Lettering.SMALL));
    }
    for (Axis.Tick tick : vertical.figures(FIGURES)) {
      svg.line(left - 1.0, tick.at(), left, tick.at(), Pen.THIN);
      svg.text(left - 1.8, tick.at() + 1.1, tick.label(), Plot.FIGURE);
    }
    svg.rectangle(left, TOP, RIGHT - left, BOTTOM - TOP, Pen.THIN);
    Sheet.headline(svg, title);
    new Plot(svg, horizontal, vertical).names(xLabel, HEIGHT - 5.5, yLabel, Sheet.MARGIN + 2.5);
  }

  private void key(Svg svg, List<Double> levels) {
    int bands = levels.size() + 1;
    double from = RIGHT + 7.0;
    double room = hatchings.isEmpty() ? 0.0 : 3.0 + KEY_ROW * hatchings.size();
    double each = Math.min(9.0, (BOTTOM - TOP - room) / bands);
    double foot = 0.5 * (TOP + BOTTOM - room + bands * each);
    for (int band = 0; band < bands; band++) {
      svg.rectangle(from, foot - (band + 1) * each, BAR, each, new Pen(Pen.INK, 0.12, tone(band, bands), ""));
    }
    Lettering figures = Lettering.start(Lettering.SMALL);
    for (int i = 0; i < levels.size(); i++) {
      svg.text(from + BAR + 1.5, foot - (i + 1) * each + 1.1, figure(levels.get(i), levels), figures);
    }
    for (int kind = 0; kind < hatchings.size(); kind++) {
      double top = foot + 4.0 + KEY_ROW * kind;
      double half = 0.5 * BAR;
      svg.rectangle(from, top, BAR, BAR, new Pen(Pen.INK, 0.12, Pen.PAPER, ""));
      for (int line = 0; line < 2; line++) {
        for (int column = 0; column < 2; column++) {
          double left = from + half * column;
          double upper = top + half * line;
          Strokes.values()[kind].draw(svg, left, upper, left + half, upper + half);
        }
      }
      String words = TextWidth.cut(hatchings.get(kind).words, WIDTH - from - BAR - 2.0, figures);
      svg.text(from + BAR + 1.5, top + half + 1.1, words, figures);
    }
    Lettering name = Lettering.end(Lettering.NOTE);
    svg.upwardText(WIDTH - Sheet.MARGIN, TOP, TextWidth.cut(valueLabel, BOTTOM - TOP, name), name);
  }

  private static String figure(double value, List<Double> levels) {
    double most = levels.stream().mapToDouble(Math::abs).max().orElse(1.0);
    double step = levels.size() > 1 ? levels.get(1) - levels.get(0) : most;
    int digits = 2 + (int) Math.ceil(Math.max(0.0, Math.log10(Math.max(most, 1e-300) / Math.max(step, 1e-300))));
    return NamedUnit.NUMBER.format(value, Math.min(12, digits));
  }

  private void marks(Sketch sketch, Axis horizontal, Axis vertical, Box room) {
    List<CurvePicture.Point> inside = new ArrayList<>();
    for (CurvePicture.Point mark : marks) {
      if (mark.x() >= horizontal.low() && mark.x() <= horizontal.high() && mark.y() >= vertical.low() && mark.y() <= vertical.high()) {
        inside.add(mark);
      }
    }
    for (CurvePicture.Point mark : inside) {
      double px = horizontal.at(mark.x());
      double py = vertical.at(mark.y());
      sketch.mark(px, py, 1.4, 1.8, new Pen(Pen.WARM, 0.6, Pen.PAPER, ""));
    }
    LabelPlacer placer = new LabelPlacer(sketch, room);
    inside.forEach(mark -> placer.expect(horizontal.at(mark.x()), vertical.at(mark.y())));
    Lettering look = Lettering.start(Lettering.NOTE).in(Pen.WARM).heavy().onto(Pen.PAPER);
    for (CurvePicture.Point mark : inside) {
      placer.place(horizontal.at(mark.x()), vertical.at(mark.y()), mark.label(), look);
    }
  }

  /** Values of cells here and there, where nothing else stands. */
  private void values(Sketch sketch, Axis horizontal, Axis vertical, Box room) {
    int columns = Math.min(7, x.size());
    int lines = Math.min(6, y.size());
    for (int j = 0; j < lines; j++) {
      int row = (int) Math.rint((j + 0.5) * y.size() / lines - 0.5);
      for (int i = 0; i < columns; i++) {
        int column = (int) Math.rint((i + 0.5) * x.size() / columns - 0.5);
        double px = horizontal.at(x.get(column));
        double py = vertical.at(y.get(row)) + 1.1;
        String figure = NamedUnit.NUMBER.format(rows.get(row).get(column), 3);
        Box box = VALUE.box(px, py, figure);
        if (box.within(room) && sketch.isFree(box.grownBy(0.6)) && sketch.linesThrough(box) == 0) {
          sketch.text(px, py, figure, VALUE);
        }
      }
    }
  }
}
