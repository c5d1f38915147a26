// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;

/**
 * The balance along the mean aerodynamic chord: centre of gravity, neutral point, and the range that the centre of gravity
 * is allowed. Stations are given aft of the nose tip and in percent of the chord.
 *
 * <p>Bars below show more ranges on the same axis, one to a row: who sets which limit, where first flights should lie, how
 * the centre of gravity travels. A full bar is a limit, an outlined one a guideline, a warm one what happens; an end drawn
 * to a point is open.
 */
public final class BalancePicture {
  private static final double WIDTH = 185.0;
  private static final double HEIGHT = 62.0;
  private static final double CHORD_Y = 38.0;
  private static final double UPPER_ROW = 17.5;
  private static final double LOWER_ROW = 23.5;
  private static final double BAND = 5.5;
  private static final Lettering LABEL = Lettering.start(Lettering.NOTE).heavy().in(Pen.WARM).onto(Pen.PAPER);

  private static final double ROW = 10.0;
  private static final double BAR = 3.0;
  private static final double POINT = 3.0;
  private static final double FOOT = 2.0;

  private final Svg svg;
  private final double start;
  private final double chord;
  private final NamedUnit<Length> unit;
  private final Axis axis;

  private BalancePicture(double start, double chord, NamedUnit<Length> unit, Axis axis, int rows) {
    double height = HEIGHT + (rows == 0 ? 0.0 : rows * ROW + FOOT);
    this.svg = Sheet.blank(WIDTH, height, "Balance along the mean aerodynamic chord");
    Sheet.headline(svg, "balance along the mean aerodynamic chord");
    this.start = start;
    this.chord = chord;
    this.unit = unit;
    this.axis = axis;
  }

  /**
   * Draws the balance.
   *
   * @param chordStart leading edge of the mean aerodynamic chord, aft of the nose tip
   * @param chord mean aerodynamic chord
   * @param centreOfGravity centre of gravity, aft of the nose tip
   * @param neutralPoint stick-fixed neutral point, aft of the nose tip
   * @param allowed allowed centres of gravity [m] aft of the nose tip
   * @param unit unit of the figures
   * @return the picture
   */
  public static Svg draw(
      Length chordStart,
      Length chord,
      Length centreOfGravity,
      Length neutralPoint,
      Interval allowed,
      NamedUnit<Length> unit) {
    return draw(chordStart, chord, centreOfGravity, neutralPoint, allowed, List.of(), unit);
  }

  /** What a bar stands for. */
  public enum Kind {
    /** What must not be passed. */
    LIMIT,
    /** What is advised. */
    GUIDELINE,
    /** What happens, such as the travel of the centre of gravity. */
    TRAVEL
  }

  /**
   * A range in a row of its own.
   *
   * @param label what it is; its ends are written behind it
   * @param places stations aft of the nose tip [m]; may be open
   * @param kind what it stands for
   */
  public record Bar(String label, Interval places, Kind kind) {
    public Bar {
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(places, "places");
      Objects.requireNonNull(kind, "kind");
    }
  }

  /**
   * Draws the balance with more ranges below it.
   *
   * @param chordStart leading edge of the mean aerodynamic chord, aft of the nose tip
   * @param chord mean aerodynamic chord
   * @param centreOfGravity centre of gravity, aft of the nose tip
   * @param neutralPoint stick-fixed neutral point, aft of the nose tip
   * @param allowed allowed centres of gravity [m] aft of the nose tip
   * @param bars more ranges, from the top
   * @param unit unit of the figures
   * @return the picture
   */
  public static Svg draw(
      Length chordStart,
      Length chord,
      Length centreOfGravity,
      Length neutralPoint,
      Interval allowed,
      List<Bar> bars,
      NamedUnit<Length> unit) {
    Objects.requireNonNull(chordStart, "chord start");
    Objects.requireNonNull(chord, "chord");
    Objects.requireNonNull(centreOfGravity, "centre of gravity");
    Objects.requireNonNull(neutralPoint, "neutral point");
    Objects.requireNonNull(allowed, "allowed");
    Objects.requireNonNull(bars, "bars");
    Objects.requireNonNull(unit, "unit");
    double start = chordStart.si();
    double cg = centreOfGravity.si();
    double np = neutralPoint.si();
    double[] stations = DoubleStream.concat(DoubleStream.of(start, start + chord.si(), cg, np), ends(bars)).toArray();
    Axis axis = axis(allowed, stations);
    BalancePicture picture = new BalancePicture(start, chord.si(), unit, axis, bars.size());
    picture.band(allowed);
    picture.chordLine();
    picture.rows(bars, cg, np);
    picture.marks(cg, np);
    return picture.svg;
  }

  private static DoubleStream ends(List<Bar> bars) {
    return bars.stream()
        .filter(bar -> !bar.places().isEmpty())
        .flatMapToDouble(bar -> DoubleStream.of(bar.places().lower(), bar.places().upper()))
        .filter(Double::isFinite);
  }

  /** The bars, crossed by the places of centre of gravity and neutral point. */
  private void rows(List<Bar> bars, double cg, double np) {
    if (bars.isEmpty()) {
      return;
    }
    for (double x : new double[] {cg, np}) {
      double end = HEIGHT + bars.size() * ROW;
      svg.line(axis.at(x), HEIGHT, axis.at(x), end, Pen.stroke(Pen.WARM, 0.2).dashed("1 1"));
    }
    for (int i = 0; i < bars.size(); i++) {
      row(bars.get(i), HEIGHT + i * ROW);
    }
  }

  private void row(Bar bar, double top) {
    Lettering lettering = Lettering.start(Lettering.SMALL).in(bar.kind() == Kind.TRAVEL ? Pen.WARM : Pen.INK).onto(Pen.PAPER);
    String ends = bar.places().isEmpty() ? "nowhere" : bar.places().format(unit);
    svg.text(Sheet.MARGIN, top + 3.4, TextWidth.cut(bar.label() + ": " + ends, WIDTH - 2.0 * Sheet.MARGIN, lettering), lettering);
    if (bar.places().isEmpty()) {
      return;
    }
    double from = axis.clamped(bar.places().lower());
    double to = Math.max(axis.clamped(bar.places().upper()), from + 0.6);
    double middle = top + 6.8;
    boolean open = to - from > 2.0 * POINT;
    double left = open && !Double.isFinite(bar.places().lower()) ? POINT : 0.0;
    double right = open && !Double.isFinite(bar.places().upper()) ? POINT : 0.0;
    double upper = middle - 0.5 * BAR;
    double lower = middle + 0.5 * BAR;
    svg.polygon(
        new double[] {from, from + left, to - right, to, to - right, from + left},
        new double[] {left > 0.0 ? middle : lower, upper, upper, right > 0.0 ? middle : upper, lower, lower},
        pen(bar.kind()));
  }

  private static Pen pen(Kind kind) {
    return switch (kind) {
      case LIMIT -> Pen.fill(Pen.ACCENT);
      case GUIDELINE -> new Pen(Pen.ACCENT, 0.35, Pen.ACCENT_TINT, "");
      case TRAVEL -> Pen.fill(Pen.WARM);
    };
  }

  private static Axis axis(Interval allowed, double... stations) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double station : stations) {
      low = Math.min(low, station);
      high = Math.max(high, station);
    }
    if (!allowed.isEmpty()) {
      low = Math.min(low, Double.isFinite(allowed.lower()) ? allowed.lower() : low);
      high = Math.max(high, Double.isFinite(allowed.upper()) ? allowed.upper() : high);
    }
    double room = 0.05 * (high - low);
    return new Axis(low - room, high + room, Sheet.MARGIN, WIDTH - Sheet.MARGIN);
  }

  private void band(Interval allowed) {
    Lettering lettering = Lettering.middle(Lettering.NOTE);
    if (allowed.isEmpty()) {
      svg.text(0.5 * WIDTH, CHORD_Y + 19.0, "no centre of gravity is allowed", lettering.in(Pen.WARM));
      return;
    }
    double from = axis.clamped(allowed.lower());
    double to = Math.max(axis.clamped(allowed.upper()), from + 0.4);
    svg.rectangle(from, CHORD_Y - BAND, to - from, 2.0 * BAND, Pen.fill(Pen.ACCENT_TINT));
    String words = "centre of gravity allowed: " + allowed.format(unit);
    double middle = 0.5 * (from + to);
    svg.line(middle, CHORD_Y + BAND, middle, CHORD_Y + BAND + 7.5, Pen.stroke(Pen.ACCENT, 0.2));
    double half = 0.5 * lettering.width(words);
    double at = Math.max(Sheet.MARGIN + half, Math.min(WIDTH - Sheet.MARGIN - half, middle));
    svg.text(at, CHORD_Y + BAND + 11.5, words, lettering.in(Pen.ACCENT));
  }

  private void chordLine() {
    svg.line(axis.at(start), CHORD_Y, axis.at(start + chord), CHORD_Y, Pen.stroke(Pen.INK, 0.9));
    double previous = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= 4; i++) {
      double x = axis.at(start + 0.25 * i * chord);
      String figure = 25 * i + " %";
      Lettering lettering = Lettering.middle(Lettering.SMALL).onto(Pen.PAPER);
      svg.line(x, CHORD_Y - 1.5, x, CHORD_Y + 1.5, Pen.stroke(Pen.INK, 0.4));
      Box box = lettering.box(x, CHORD_Y + BAND + 4.0, figure);
      if (box.left() > previous && box.within(new Box(0, 0, WIDTH, HEIGHT))) {
        svg.text(x, CHORD_Y + BAND + 4.0, figure, lettering);
        previous = box.right() + 1.5;
      }
    }
  }

  /** Two labels whose leaders pass each other: the one ahead to the left, the one aft to the right where there is room. */
  private void marks(double cg, double np) {
    String cgLabel = "centre of gravity " + station(cg);
    String npLabel = "neutral point " + station(np);
    boolean cgAhead = cg <= np;
    double ahead = axis.at(Math.min(cg, np));
    double aft = axis.at(Math.max(cg, np));
    String aheadLabel = cgAhead ? cgLabel : npLabel;
    String aftLabel = cgAhead ? npLabel : cgLabel;
    boolean aheadFits = ahead - 1.2 - LABEL.width(aheadLabel) >= Sheet.MARGIN;
    boolean aftFits = aft + 1.2 + LABEL.width(aftLabel) <= WIDTH - Sheet.MARGIN;
    // A label that must run across the other leader stands above the one that does not.
    label(ahead, aheadFits, aheadLabel, aftFits ? UPPER_ROW : LOWER_ROW);
    label(aft, !aftFits, aftLabel, aftFits ? LOWER_ROW : UPPER_ROW);
    symbol(axis.at(np), Pen.WARM);
    symbol(axis.at(cg), Pen.PAPER);
  }

  private void symbol(double x, String fill) {
    svg.circle(x, CHORD_Y, 1.6, new Pen(Pen.WARM, 0.5, fill, ""));
  }

  private String station(double x) {
    return unit.format(x, 4) + " (" + NamedUnit.NUMBER.format(100.0 * (x - start) / chord, 3) + " %)";
  }

  private void label(double x, boolean toTheLeft, String label, double y) {
    svg.line(x, y - 2.6, x, CHORD_Y, Pen.stroke(Pen.WARM, 0.3));
    double width = LABEL.width(label);
    double left = toTheLeft ? x - 1.2 - width : x + 1.2;
    svg.text(Math.max(Sheet.MARGIN, Math.min(WIDTH - Sheet.MARGIN - width, left)), y, label, LABEL);
  }
}
