// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.Locale;

/** One consideration in the picture of a range: its name and source at the left, its bar over the axis. */
final class BoundRow {
  private static final double LABEL_WIDTH = RangePicture.AXIS_LEFT - RangePicture.LEFT - 5.0;
  private static final double NAME_LINE = 4.3;
  private static final double SOURCE_LINE = 3.7;
  private static final double PAD = 3.4;
  private static final int MOST_LINES = 4;
  private static final double FIGURE_SIZE = Lettering.SMALL;
  private static final double SOURCE_SIZE = 2.9;
  private static final double LOZENGE = 2.3;

  private final Sketch sketch;
  private final Axis axis;
  private final NamedUnit<?> unit;
  private final Bound bound;
  private final String colour;

  private BoundRow(Sketch sketch, Axis axis, NamedUnit<?> unit, Bound bound) {
    this.sketch = sketch;
    this.axis = axis;
    this.unit = unit;
    this.bound = bound;
    this.colour = bound.decision().applies() ? colour(bound.strength()) : Pen.SHADOW;
  }

  /** How tall the row is: as tall as its label. */
  static double height(Bound bound) {
    return NAME_LINE * nameLines(bound).size() + SOURCE_LINE * sourceLines(bound).size() + PAD;
  }

  static void draw(Sketch sketch, Axis axis, NamedUnit<?> unit, Bound bound, double top) {
    BoundRow row = new BoundRow(sketch, axis, unit, bound);
    double height = height(bound);
    sketch.line(RangePicture.LEFT, top + height, RangePicture.AXIS_RIGHT, top + height, Pen.GRID);
    row.label(top + 0.5 * PAD);
    double y = top + 0.5 * height;
    if (bound.strength() == Strength.TARGET) {
      row.target(y);
    } else {
      row.bar(y);
    }
  }

  private static Lettering nameLettering() {
    return Lettering.start(Lettering.NOTE);
  }

  private static Lettering sourceLettering() {
    return Lettering.start(SOURCE_SIZE);
  }

  private static List<String> nameLines(Bound bound) {
    return TextWidth.wrap(bound.name(), LABEL_WIDTH, nameLettering(), MOST_LINES);
  }

  private static List<String> sourceLines(Bound bound) {
    String strength = bound.strength().name().toLowerCase(Locale.ROOT);
    String decision = bound.decision().kind() == Decision.Kind.CHOSEN ? "" : " · " + bound.decision();
    return TextWidth.wrap(strength + decision + " · " + bound.source().cite(), LABEL_WIDTH, sourceLettering(), MOST_LINES);
  }

  private void label(double top) {
    double y = top - 0.9;
    for (String line : nameLines(bound)) {
      y += NAME_LINE;
      sketch.text(RangePicture.LEFT, y, line, nameLettering().in(bound.decision().applies() ? Pen.INK : Pen.QUIET));
    }
    for (String line : sourceLines(bound)) {
      y += SOURCE_LINE;
      sketch.text(RangePicture.LEFT, y, line, sourceLettering().in(bound.decision().applies() ? colour : Pen.QUIET));
    }
  }

  private void target(double y) {
    if (bound.preference().isEmpty()) {
      return;
    }
    double preferred = bound.preferred();
    double x = axis.clamped(preferred);
    double[] px = {x - LOZENGE, x, x + LOZENGE, x};
    double[] py = {y, y - LOZENGE, y, y + LOZENGE};
    sketch.polygon(px, py, new Pen(colour, 0.4, bound.decision().applies() ? Pen.WARM_TINT : Pen.PAPER, ""));
    String figure = unit.format(preferred, 4);
    Lettering lettering = figureLettering(Lettering.start(FIGURE_SIZE));
    boolean right = x + LOZENGE + 1.0 + lettering.width(figure) <= RangePicture.AXIS_RIGHT;
    if (right) {
      sketch.text(x + LOZENGE + 1.0, y + 1.1, figure, lettering);
    } else {
      sketch.text(x - LOZENGE - 1.0, y + 1.1, figure, figureLettering(Lettering.end(FIGURE_SIZE)));
    }
  }

  private Lettering figureLettering(Lettering lettering) {
    return lettering.in(bound.decision().applies() ? colour : Pen.QUIET).onto(Pen.PAPER);
  }

  private void bar(double y) {
    Interval interval = bound.interval();
    if (interval.isEmpty()) {
      sketch.text(RangePicture.AXIS_LEFT + 2.0, y + 1.1, "no value satisfies it", Lettering.start(FIGURE_SIZE).in(Pen.WARM));
      return;
    }
    double from = axis.clamped(interval.lower());
    double to = Math.max(axis.clamped(interval.upper()), from + 0.4);
    boolean applies = bound.decision().applies();
    Pen pen = new Pen(colour, 0.35, applies ? tint(bound.strength()) : Pen.PAPER, applies ? "" : "1.2 0.8");
    double half = 0.5 * RangePicture.BAR;
    double point = Math.min(half, 0.5 * (to - from));
    double inLeft = isOpen(interval.lower()) ? point : 0.0;
    double inRight = isOpen(interval.upper()) ? point : 0.0;
    // An end drawn to a point is open.
    double[] x = {from, from + inLeft, to - inRight, to, to - inRight, from + inLeft};
    double[] py = {y, y - half, y - half, y, y + half, y + half};
    sketch.polygon(x, py, pen);
    figures(interval, from, to, y);
  }

  /** Both ends inside the bar if there is room, else beside it, else both on one side. */
  private void figures(Interval interval, double from, double to, double y) {
    String low = end(interval.lower());
    String high = end(interval.upper());
    Lettering start = figureLettering(Lettering.start(FIGURE_SIZE)).onto(ground());
    Lettering end = figureLettering(Lettering.end(FIGURE_SIZE)).onto(ground());
    double lowWidth = start.width(low);
    double highWidth = start.width(high);
    double baseline = y + 1.1;
    if (to - from > lowWidth + highWidth + 4.0) {
      text(from + 1.2, baseline, low, start);
      text(to - 1.2, baseline, high, end);
      return;
    }
    Lettering outside = start.onto(Pen.PAPER);
    if (from - 1.2 - lowWidth >= RangePicture.AXIS_LEFT && to + 1.2 + highWidth <= RangePicture.AXIS_RIGHT) {
      text(from - 1.2, baseline, low, end.onto(Pen.PAPER));
      text(to + 1.2, baseline, high, outside);
      return;
    }
    String both = low.isEmpty() || high.isEmpty() ? low + high : low + " to " + high;
    if (to + 1.2 + outside.width(both) <= RangePicture.AXIS_RIGHT) {
      text(to + 1.2, baseline, both, outside);
    } else {
      text(from - 1.2, baseline, both, end.onto(Pen.PAPER));
    }
  }

  private void text(double x, double y, String figure, Lettering lettering) {
    if (!figure.isEmpty()) {
      sketch.text(x, y, figure, lettering);
    }
  }

  /** An end that lies outside the picture is drawn like one that is not there. */
  private boolean isOpen(double end) {
    return Double.isInfinite(end) || end > axis.high() || end < axis.low();
  }

  private String end(double value) {
    return isOpen(value) ? "" : NamedUnit.NUMBER.format(unit.fromSi(value), 4);
  }

  private String ground() {
    return bound.decision().applies() ? tint(bound.strength()) : Pen.PAPER;
  }

  private static String colour(Strength strength) {
    return switch (strength) {
      case LIMIT -> Pen.INK;
      case GUIDELINE -> Pen.ACCENT;
      case TARGET -> Pen.WARM;
    };
  }

  private static String tint(Strength strength) {
    return switch (strength) {
      case LIMIT -> "#dfe3e6";
      case GUIDELINE -> Pen.PAPER;
      case TARGET -> Pen.WARM_TINT;
    };
  }
}
