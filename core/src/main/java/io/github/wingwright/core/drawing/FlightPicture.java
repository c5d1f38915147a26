// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Flights seen from the side, in the room they take place in, at the same scale along and up.
 *
 * <p>Where a flight is stalled its line is dotted. Open circles along the first flight are marks of time.
 *
 * @param title what is shown
 * @param unit unit of the figures
 * @param room floor, ceiling and walls
 * @param paths the flights, the first one first in importance
 */
public record FlightPicture(String title, NamedUnit<Length> unit, Room room, List<Path> paths) {
  private static final double WIDTH = 185.0;
  private static final double TALLEST = 110.0;
  private static final double LOWEST = 24.0;
  private static final double HEAD = 12.0;
  private static final double LEGEND_ROW = 5.6;
  private static final double FOOT = 15.5;
  private static final double SAMPLE = 9.0;
  private static final double CLOSE = 0.35;
  private static final Lettering KEY = Lettering.start(Lettering.SMALL);
  private static final Pen STALLED = Pen.stroke(Pen.WARM, 0.7).dashed("0.7 0.9");

  /** Keeps its own list and refuses an empty picture. */
  public FlightPicture {
    paths = List.copyOf(paths);
    if (paths.isEmpty()) {
      throw new IllegalArgumentException("a picture needs at least one flight, got none");
    }
  }

  /**
   * Where the flights take place. The floor is at height 0, the hand at distance 0.
   *
   * @param behind place of the wall behind [m], zero or negative; −∞ for none
   * @param ahead place of the wall ahead [m], positive; ∞ for none
   * @param ceiling height of the ceiling [m], positive; ∞ for none
   */
  public record Room(double behind, double ahead, double ceiling) {
    /** A field without walls and ceiling. */
    public static final Room OUTDOORS =
        new Room(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Refuses a room that nothing can be thrown in. */
    public Room {
      if (!(behind <= 0.0 && ahead > 0.0 && ceiling > 0.0)) {
        throw new IllegalArgumentException(
            "a room needs its walls behind and ahead of the hand and its ceiling above the floor, were " + behind + ", "
                + ahead + " and " + ceiling + " m");
      }
    }
  }

  /**
   * One flight.
   *
   * @param label what it is, for the key
   * @param end what stands at its end; may be empty
   * @param seconds times [s], rising
   * @param distances distances from the hand [m], as many
   * @param heights heights above the floor [m], as many
   * @param stalled whether it is stalled, as many
   * @param style how it looks
   */
  public record Path(
      String label,
      String end,
      List<Double> seconds,
      List<Double> distances,
      List<Double> heights,
      List<Boolean> stalled,
      Style style) {
    /** Keeps its own lists and refuses what cannot be drawn. */
    public Path {
      Objects.requireNonNull(seconds, "seconds");
      Objects.requireNonNull(distances, "distances");
      Objects.requireNonNull(heights, "heights");
      Objects.requireNonNull(stalled, "stalled");
      seconds = List.copyOf(seconds);
      distances = List.copyOf(distances);
      heights = List.copyOf(heights);
      stalled = List.copyOf(stalled);
      int n = seconds.size();
      if (n < 2 || distances.size() != n || heights.size() != n || stalled.size() != n) {
        throw new IllegalArgumentException(
            "a flight needs as many times, distances, heights and stalls, at least two, got " + n + ", "
                + distances.size() + ", " + heights.size() + " and " + stalled.size());
      }
    }
  }

  /** How a flight looks. */
  public enum Style {
    /** What the picture is about: a full line. */
    MAIN,
    /** Another flight, for comparison: a thin dashed line. */
    OTHER
  }

  /**
   * Draws the picture.
   *
   * @return the picture
   */
  public Svg draw() {
    double per = unit.fromSi(1.0);
    double low = 0.0;
    double high = 0.0;
    double top = 0.0;
    for (Path path : paths) {
      low = Math.min(low, path.distances().stream().mapToDouble(d -> d).min().orElse(0.0));
      high = Math.max(high, path.distances().stream().mapToDouble(d -> d).max().orElse(0.0));
      top = Math.max(top, path.heights().stream().mapToDouble(h -> h).max().orElse(0.0));
    }
    double span = high - low;
    low -= 0.03 * span + 0.2;
    high += 0.04 * span + 0.2;
    top = Math.max(1.15 * top, 0.4);
    // A wall or ceiling that is near, or is hit, is in the picture.
    if (room.ahead() < 1.35 * high) {
      high = Math.max(high, room.ahead() + 0.02 * span);
    }
    if (room.behind() > low - 0.2 * span) {
      low = Math.min(low, room.behind() - 0.02 * span);
    }
    if (room.ceiling() < 2.5 * top) {
      top = 1.06 * room.ceiling();
    }
    double left = Sheet.MARGIN + 14.0;
    double right = WIDTH - Sheet.MARGIN;
    double scale = Math.min((right - left) / (high - low), TALLEST / top);
    top = Math.max(top, LOWEST / scale);
    high = Math.max(high, low + (right - left) / scale);
    List<double[]> keys = keys();
    double under = HEAD + LEGEND_ROW * (1 + keys.get(keys.size() - 1)[1]) + 1.0;
    double bottom = under + scale * top;
    Axis x = new Axis(per * low, per * high, left, right);
    Axis y = new Axis(0.0, per * top, bottom, under);
    Svg svg = Sheet.titled(WIDTH, bottom + FOOT, title);
    key(svg, keys);
    Plot plot = new Plot(svg, x, y);
    plot.grid(5, true);
    plot.names("distance from the launch in " + unit.symbol(), bottom + 10.8, "height in " + unit.symbol(), Sheet.MARGIN + 2.5);
    Sketch sketch = plot.sketch();
    room(sketch, x, y, per);
    for (int i = paths.size() - 1; i >= 0; i--) {
      path(sketch, x, y, per, paths.get(i));
    }
    marks(sketch, x, y, per, new Box(left + 0.6, under + 0.4, right - 0.4, bottom - 0.6));
    plot.finish();
    return svg;
  }

  private boolean anyStall() {
    return paths.stream().anyMatch(p -> p.stalled().contains(true));
  }

  private List<String> keyWords() {
    List<String> words = new ArrayList<>();
    paths.forEach(p -> words.add(TextWidth.cut(p.label(), WIDTH - 2.0 * Sheet.MARGIN - SAMPLE - 4.0, KEY)));
    if (anyStall()) {
      words.add("stalled");
    }
    return words;
  }

  /** Place and row of each entry of the key. */
  private List<double[]> keys() {
    List<double[]> places = new ArrayList<>();
    double x = Sheet.MARGIN;
    int row = 0;
    for (String words : keyWords()) {
      double width = SAMPLE + 2.0 + KEY.width(words) + 6.0;
      if (x > Sheet.MARGIN && x + width > WIDTH - Sheet.MARGIN) {
        x = Sheet.MARGIN;
        row++;
      }
      places.add(new double[] {x, row});
      x += width;
    }
    return places;
  }

  private void key(Svg svg, List<double[]> places) {
    List<String> words = keyWords();
    for (int i = 0; i < words.size(); i++) {
      double x = places.get(i)[0];
      double y = HEAD + LEGEND_ROW * (places.get(i)[1] + 0.55);
      Pen pen = i < paths.size() ? pen(paths.get(i).style()) : STALLED;
      svg.line(x, y, x + SAMPLE, y, pen);
      svg.text(x + SAMPLE + 2.0, y + 1.1, words.get(i), KEY);
    }
  }

  private void room(Sketch sketch, Axis x, Axis y, double per) {
    Pen solid = Pen.stroke(Pen.INK, 0.6);
    double from = Math.max(x.start(), x.clamped(per * room.behind()));
    double to = x.clamped(per * room.ahead());
    double up = per * room.ceiling() <= y.high() ? y.at(per * room.ceiling()) : y.end();
    sketch.line(from, y.start(), to, y.start(), solid);
    if (per * room.ceiling() <= y.high()) {
      sketch.line(from, up, to, up, solid);
    }
    if (per * room.ahead() <= x.high()) {
      sketch.line(to, up, to, y.start(), solid);
    }
    if (per * room.behind() >= x.low()) {
      sketch.line(from, up, from, y.start(), solid);
    }
  }

  private static void path(Sketch sketch, Axis x, Axis y, double per, Path path) {
    int n = path.seconds().size();
    int start = 0;
    while (start < n - 1) {
      boolean stalled = path.stalled().get(start + 1);
      int end = start + 1;
      while (end < n - 1 && path.stalled().get(end + 1) == stalled) {
        end++;
      }
      piece(sketch, x, y, per, path, start, end, stalled ? STALLED : pen(path.style()));
      start = end;
    }
  }

  /** A piece of one look, without points that would lie upon each other. */
  private static void piece(
      Sketch sketch, Axis x, Axis y, double per, Path path, int start, int end, Pen pen) {
    List<double[]> points = new ArrayList<>();
    for (int i = start; i <= end; i++) {
      double[] point = {x.at(per * path.distances().get(i)), y.at(per * path.heights().get(i))};
      double[] last = points.isEmpty() ? null : points.get(points.size() - 1);
      if (last == null || i == end || Math.hypot(point[0] - last[0], point[1] - last[1]) > CLOSE) {
        points.add(point);
      }
    }
    sketch.polyline(
        points.stream().mapToDouble(p -> p[0]).toArray(), points.stream().mapToDouble(p -> p[1]).toArray(), pen);
  }

  private void marks(Sketch sketch, Axis x, Axis y, double per, Box room) {
    Path main = paths.get(0);
    double all = main.seconds().get(main.seconds().size() - 1);
    double every = new Axis(0.0, Math.max(all, 1e-3), 0.0, 1.0).ticks(5).get(1);
    List<double[]> places = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (int i = 0; every * i <= all * (1.0 + 1e-9); i++) {
      double[] at = at(main, every * i);
      places.add(new double[] {x.at(per * at[0]), y.at(per * at[1])});
      words.add(NamedUnit.NUMBER.format(every * i, 3) + " s");
    }
    for (double[] place : places) {
      sketch.mark(place[0], place[1], 0.9, 1.0, new Pen(Pen.ACCENT, 0.3, Pen.PAPER, ""));
    }
    LabelPlacer placer = new LabelPlacer(sketch, room);
    Lettering note = Lettering.start(Lettering.NOTE).heavy().in(Pen.WARM).onto(Pen.PAPER);
    for (Path path : paths) {
      int last = path.seconds().size() - 1;
      if (!path.end().isEmpty()) {
        Lettering look = path.style() == Style.MAIN ? note : note.in(Pen.QUIET);
        placer.place(x.at(per * path.distances().get(last)), y.at(per * path.heights().get(last)), path.end(), look);
      }
    }
    Lettering small = Lettering.start(Lettering.SMALL).in(Pen.ACCENT).onto(Pen.PAPER);
    for (int i = 0; i < places.size(); i++) {
      placer.place(places.get(i)[0], places.get(i)[1], words.get(i), small);
    }
  }

  /** Distance and height at a time, straight between the points. */
  private static double[] at(Path path, double seconds) {
    int i = 1;
    while (i < path.seconds().size() - 1 && path.seconds().get(i) < seconds) {
      i++;
    }
    double from = path.seconds().get(i - 1);
    double to = path.seconds().get(i);
    double part = to > from ? Math.max(0.0, Math.min(1.0, (seconds - from) / (to - from))) : 1.0;
    return new double[] {
      path.distances().get(i - 1) + part * (path.distances().get(i) - path.distances().get(i - 1)),
      path.heights().get(i - 1) + part * (path.heights().get(i) - path.heights().get(i - 1))
    };
  }

  private static Pen pen(Style style) {
    return style == Style.MAIN ? Pen.stroke(Pen.ACCENT, 0.6) : Pen.stroke(Pen.QUIET, 0.35).dashed("2.4 1.2");
  }
}
