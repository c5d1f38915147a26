// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The picture of a feasible range: a bar for each consideration over the axis of the dimension, the part that all of them
 * leave, and the choice.
 *
 * <p>A full bar is a limit, an outlined one a guideline, a lozenge a target; an end drawn to a point is open. What was set
 * aside is pale and dashed.
 */
public final class RangePicture {
  static final double WIDTH = 185.0;
  static final double LEFT = 6.0;
  static final double AXIS_LEFT = 84.0;
  static final double AXIS_RIGHT = WIDTH - 8.0;
  static final double BAR = 5.0;
  /** Upper ends beyond this many times the greatest value that matters are not shown. */
  private static final double FAR = 2.0;

  private static final double TOP = 20.0;
  private static final double CHOICE_Y = 16.0;
  private static final double LAST_ROW = 13.0;
  private static final double FOOT = 13.0;
  private static final Lettering FIGURE = Lettering.start(Lettering.SMALL);

  private final FeasibleRange range;
  private final Axis axis;
  private final Sketch sketch = new Sketch();
  private final double bottom;

  private RangePicture(FeasibleRange range, double choice) {
    this.range = range;
    this.axis = axis(range, choice);
    double rows = range.bounds().stream().mapToDouble(BoundRow::height).sum();
    this.bottom = TOP + rows + LAST_ROW;
  }

  /**
   * Draws a range and a choice.
   *
   * @param range the range
   * @param choice the chosen value [SI]
   * @param choiceLabel what stands at the choice, such as {@code "chosen: 24 mm"}
   * @return the picture
   */
  public static Svg draw(FeasibleRange range, double choice, String choiceLabel) {
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(choiceLabel, "choice label");
    RangePicture picture = new RangePicture(range, choice);
    picture.ground();
    picture.scale();
    double y = TOP;
    for (Bound bound : range.bounds()) {
      BoundRow.draw(picture.sketch, picture.axis, range.unit(), bound, y);
      y += BoundRow.height(bound);
    }
    picture.result(y + 0.38 * LAST_ROW);
    picture.choice(choice, choiceLabel);
    Svg svg = new Svg(WIDTH, picture.bottom + FOOT, "Feasible range of " + range.variable());
    picture.sketch.onto(svg, 0.0, 0.0);
    return svg;
  }

  private void ground() {
    sketch.rectangle(0, 0, WIDTH, bottom + FOOT, Pen.fill(Pen.PAPER));
    Lettering title = Lettering.start(Lettering.TITLE).heavy();
    sketch.text(LEFT, 8.5, TextWidth.cut(range.variable(), WIDTH - 2.0 * LEFT, title), title);
    Interval feasible = range.interval();
    if (!feasible.isEmpty()) {
      double from = axis.clamped(feasible.lower());
      double to = axis.clamped(feasible.upper());
      sketch.rectangle(from, TOP - 2.0, Math.max(0.4, to - from), bottom - TOP + 2.0, Pen.fill(Pen.ACCENT_TINT));
    }
  }

  /** The axis shows every finite end, every target and the choice, with room on both sides. */
  private static Axis axis(FeasibleRange range, double choice) {
    List<Double> shown = new ArrayList<>(List.of(choice));
    for (Bound bound : range.bounds()) {
      if (Double.isFinite(bound.interval().lower())) {
        shown.add(bound.interval().lower());
      }
      bound.preference().ifPresent(shown::add);
    }
    range
        .upperBinding()
        .map(bound -> bound.interval().upper())
        .filter(Double::isFinite)
        .ifPresent(shown::add);
    // An upper end far beyond all that matters would squeeze the rest: its bar runs out of the picture instead.
    double far = FAR * shown.stream().mapToDouble(Double::doubleValue).max().orElse(choice);
    for (Bound bound : range.bounds()) {
      if (Double.isFinite(bound.interval().upper()) && bound.interval().upper() <= Math.max(far, 0.0)) {
        shown.add(bound.interval().upper());
      }
    }
    double low = shown.stream().mapToDouble(range.unit()::fromSi).min().orElse(0.0);
    double high = shown.stream().mapToDouble(range.unit()::fromSi).max().orElse(1.0);
    double room = Math.max(0.14 * (high - low), Math.max(1e-9, 0.02 * Math.abs(high)));
    double from = low > 0.0 ? Math.max(0.0, low - room) : low - room;
    return new Axis(range.unit().toSi(from), range.unit().toSi(high + room), AXIS_LEFT, AXIS_RIGHT);
  }

  private void result(double y) {
    Interval feasible = range.interval();
    Lettering name = Lettering.start(Lettering.NOTE).heavy();
    if (feasible.isEmpty()) {
      sketch.text(LEFT, y + 1.2, "feasible: nothing", name.in(Pen.WARM));
      clash(y);
      return;
    }
    sketch.text(LEFT, y + 1.2, "feasible", name.in(Pen.ACCENT));
    double from = axis.clamped(feasible.lower());
    double to = axis.clamped(feasible.upper());
    sketch.rectangle(from, y - 0.5 * BAR, Math.max(0.6, to - from), BAR, Pen.fill(Pen.ACCENT));
    words(feasible.format(range.unit()), 0.5 * (from + to), y + 6.2, Pen.ACCENT);
  }

  private void clash(double y) {
    FeasibleRange.Clash worst = range.clashes().stream().findFirst().orElse(null);
    if (worst == null || !Double.isFinite(worst.gap())) {
      words("a consideration cannot be met at all", 0.5 * (AXIS_LEFT + AXIS_RIGHT), y + 1.2, Pen.WARM);
      return;
    }
    double from = axis.clamped(worst.high().interval().upper());
    double to = axis.clamped(worst.low().interval().lower());
    Pen pen = new Pen(Pen.WARM, 0.3, Pen.WARM_TINT, "0.8 0.8");
    sketch.rectangle(from, y - 0.5 * BAR, Math.max(0.4, to - from), BAR, pen);
    words("apart by " + range.unit().format(worst.gap(), 3), 0.5 * (from + to), y + 6.2, Pen.WARM);
  }

  /** Words centred where they belong, but within the axis. */
  private void words(String words, double x, double y, String colour) {
    String ground = range.isEmpty() ? Pen.PAPER : Pen.ACCENT_TINT;
    Lettering lettering = Lettering.middle(Lettering.SMALL).in(colour).onto(ground);
    String fitting = TextWidth.cut(words, AXIS_RIGHT - AXIS_LEFT, lettering);
    double half = 0.5 * lettering.width(fitting);
    sketch.text(Math.max(AXIS_LEFT + half, Math.min(AXIS_RIGHT - half, x)), y, fitting, lettering);
  }

  private void scale() {
    NamedUnit<?> unit = range.unit();
    Axis inUnit = new Axis(unit.fromSi(axis.low()), unit.fromSi(axis.high()), axis.start(), axis.end());
    sketch.line(AXIS_LEFT, bottom, AXIS_RIGHT, bottom, Pen.THIN);
    for (Axis.Tick tick : inUnit.labelledTicks(FIGURE)) {
      sketch.line(tick.at(), bottom, tick.at(), bottom + 1.2, Pen.THIN);
      sketch.text(tick.at(), bottom + 4.8, tick.label(), Lettering.middle(Lettering.SMALL));
    }
    String symbol = unit.symbol().isEmpty() ? "dimensionless" : "in " + unit.symbol();
    sketch.text(AXIS_RIGHT, bottom + 9.6, symbol, Lettering.end(Lettering.SMALL));
  }

  private void choice(double choice, String label) {
    double x = axis.clamped(choice);
    sketch.line(x, CHOICE_Y + 1.4, x, bottom + 1.2, Pen.stroke(Pen.WARM, 0.5));
    Lettering lettering = Lettering.middle(Lettering.NOTE).heavy().in(Pen.WARM);
    String fitting = TextWidth.cut(label, WIDTH - 2.0 * LEFT, lettering);
    double half = 0.5 * lettering.width(fitting);
    double at = Math.max(LEFT + half, Math.min(WIDTH - LEFT - half, x));
    sketch.text(at, CHOICE_Y, fitting, lettering);
  }
}
