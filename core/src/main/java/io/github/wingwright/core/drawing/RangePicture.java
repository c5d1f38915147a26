// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The picture of a feasible range: a bar for each consideration over the axis of the dimension, the part that all of them
 * leave, and the choice.
 */
public final class RangePicture {
  private static final double WIDTH = 190.0;
  private static final double LEFT = 6.0;
  private static final double AXIS_LEFT = 78.0;
  private static final double RIGHT = 8.0;
  private static final double ROW = 11.0;
  private static final double BAR = 4.4;
  private static final double TOP = 16.0;

  /** Longest line of a label; longer ones are cut. */
  private static final int LABEL_LENGTH = 42;

  private RangePicture() {}

  /**
   * Draws a range and a choice.
   *
   * @param range the range
   * @param choice the chosen value [SI]
   * @param choiceLabel what stands at the choice, such as {@code "chosen: 24 mm"}
   * @return the picture
   */
  public static Svg draw(FeasibleRange range, double choice, String choiceLabel) {
    List<Bound> bounds = range.bounds();
    double bottom = TOP + ROW * (bounds.size() + 1);
    Svg svg = new Svg(WIDTH, bottom + 16.0, "Feasible range of " + range.variable());
    svg.rectangle(0, 0, WIDTH, svg.height(), Pen.fill("#ffffff"));
    Axis axis = axis(range, choice);
    svg.text(LEFT, 7.0, range.variable(), Lettering.start(4.0).heavy());
    Interval feasible = range.interval();
    if (!feasible.isEmpty()) {
      double from = axis.clamped(feasible.lower());
      double to = axis.clamped(feasible.upper());
      svg.rectangle(from, TOP - 3.0, Math.max(0.4, to - from), bottom - TOP + 3.0, Pen.fill(Pen.ACCENT_TINT));
    }
    for (int i = 0; i < bounds.size(); i++) {
      row(svg, axis, range.unit(), bounds.get(i), TOP + ROW * i + 0.5 * ROW);
    }
    feasibleRow(svg, axis, range, TOP + ROW * bounds.size() + 0.5 * ROW);
    scale(svg, axis, range.unit(), bottom);
    choice(svg, axis, choice, choiceLabel, bottom);
    return svg;
  }

  /** The axis shows every finite end, every target and the choice, with room on both sides. */
  private static Axis axis(FeasibleRange range, double choice) {
    List<Double> shown = new ArrayList<>(List.of(choice));
    for (Bound bound : range.bounds()) {
      Interval interval = bound.interval();
      if (Double.isFinite(interval.lower()) && !interval.isEmpty()) {
        shown.add(interval.lower());
      }
      if (Double.isFinite(interval.upper()) && !interval.isEmpty()) {
        shown.add(interval.upper());
      }
      bound.preference().ifPresent(shown::add);
    }
    double low = shown.stream().mapToDouble(range.unit()::fromSi).min().orElse(0.0);
    double high = shown.stream().mapToDouble(range.unit()::fromSi).max().orElse(1.0);
    double room = Math.max(0.12 * (high - low), 0.02 * Math.abs(high));
    double from = low > 0.0 ? Math.max(0.0, low - room) : low - room;
    return new Axis(range.unit().toSi(from), range.unit().toSi(high + room), AXIS_LEFT, WIDTH - RIGHT);
  }

  private static void row(Svg svg, Axis axis, NamedUnit<?> unit, Bound bound, double y) {
    boolean applies = bound.decision().applies();
    String colour = applies ? colour(bound.strength()) : Pen.SHADOW;
    svg.line(AXIS_LEFT, y + 0.5 * ROW, WIDTH - RIGHT, y + 0.5 * ROW, Pen.GRID);
    svg.text(LEFT, y - 0.6, cut(bound.name()), Lettering.start(2.9).in(applies ? Pen.INK : Pen.SHADOW));
    String strength = bound.strength().name().toLowerCase(Locale.ROOT);
    String second = bound.decision().kind() == Decision.Kind.CHOSEN ? bound.source().cite() : bound.decision().toString();
    svg.text(LEFT, y + 3.0, cut(strength + " · " + second), Lettering.start(2.4).in(colour));
    if (bound.strength() == Strength.TARGET) {
      bound.preference().ifPresent(
          preferred -> {
            double x = axis.clamped(preferred);
            double[] px = {x - 2.0, x, x + 2.0, x};
            double[] py = {y, y - 2.0, y, y + 2.0};
            svg.polygon(px, py, new Pen(colour, 0.4, "#ffffff", ""));
            String figure = unit.format(preferred, 3);
            if (x + 4.0 + 1.5 * figure.length() < WIDTH - RIGHT) {
              svg.text(x + 3.2, y + 1.0, figure, Lettering.start(2.6).in(colour));
            } else {
              svg.text(x - 3.2, y + 1.0, figure, Lettering.end(2.6).in(colour));
            }
          });
      return;
    }
    Interval interval = bound.interval();
    if (interval.isEmpty()) {
      svg.text(AXIS_LEFT + 2.0, y + 1.0, "no value satisfies it", Lettering.start(2.6).in(Pen.WARM));
      return;
    }
    double from = axis.clamped(interval.lower());
    double to = axis.clamped(interval.upper());
    Pen bar = new Pen(colour, 0.3, applies ? tint(bound.strength()) : "#ffffff", applies ? "" : "1.2 0.8");
    svg.rectangle(from, y - 0.5 * BAR, Math.max(0.4, to - from), BAR, bar);
    figures(svg, unit, interval, from, to, y, colour);
  }

  private static void figures(
      Svg svg, NamedUnit<?> unit, Interval interval, double from, double to, double y, String colour) {
    String low = Double.isFinite(interval.lower()) ? NamedUnit.NUMBER.format(unit.fromSi(interval.lower()), 3) : "";
    String high = Double.isFinite(interval.upper()) ? NamedUnit.NUMBER.format(unit.fromSi(interval.upper()), 3) : "";
    double needed = 1.6 * (low.length() + high.length()) + 4.0;
    Lettering start = Lettering.start(2.6).in(colour);
    Lettering end = Lettering.end(2.6).in(colour);
    if (to - from > needed) {
      svg.text(from + 1.0, y + 1.0, low, start);
      svg.text(to - 1.0, y + 1.0, high, end);
    } else {
      svg.text(from - 1.0, y + 1.0, low, end);
      svg.text(to + 1.0, y + 1.0, high, start);
    }
  }

  private static void feasibleRow(Svg svg, Axis axis, FeasibleRange range, double y) {
    Interval feasible = range.interval();
    if (feasible.isEmpty()) {
      svg.text(LEFT, y + 1.0, "feasible: nothing", Lettering.start(3.1).heavy().in(Pen.WARM));
      range
          .clashes()
          .stream()
          .findFirst()
          .ifPresent(
              clash -> {
                double from = axis.clamped(clash.high().interval().upper());
                double to = axis.clamped(clash.low().interval().lower());
                svg.rectangle(from, y - 0.5 * BAR, to - from, BAR, new Pen(Pen.WARM, 0.3, Pen.WARM_TINT, "0.8 0.8"));
                String gap = "apart by " + range.unit().format(clash.gap(), 3);
                svg.text(0.5 * (from + to), y + 5.0, gap, Lettering.middle(2.6).in(Pen.WARM));
              });
      return;
    }
    svg.text(LEFT, y + 1.0, "feasible", Lettering.start(3.1).heavy().in(Pen.ACCENT));
    double from = axis.clamped(feasible.lower());
    double to = axis.clamped(feasible.upper());
    svg.rectangle(from, y - 0.5 * BAR, Math.max(0.6, to - from), BAR, Pen.fill(Pen.ACCENT));
    String words = feasible.format(range.unit());
    double middle = 0.5 * (from + to);
    double half = 0.8 * words.length();
    double x = Math.max(AXIS_LEFT + half, Math.min(WIDTH - RIGHT - half, middle));
    svg.text(x, y + 5.2, words, Lettering.middle(2.6).in(Pen.ACCENT));
  }

  private static void scale(Svg svg, Axis axis, NamedUnit<?> unit, double y) {
    Axis inUnit = new Axis(unit.fromSi(axis.low()), unit.fromSi(axis.high()), axis.start(), axis.end());
    svg.line(AXIS_LEFT, y, WIDTH - RIGHT, y, Pen.THIN);
    for (double tick : inUnit.ticks(7)) {
      double x = inUnit.at(tick);
      svg.line(x, y, x, y + 1.2, Pen.THIN);
      svg.text(x, y + 4.4, NamedUnit.NUMBER.format(tick, 4), Lettering.middle(2.6));
    }
    svg.text(WIDTH - RIGHT, y + 8.6, "in " + (unit.symbol().isEmpty() ? "1" : unit.symbol()), Lettering.end(2.6));
  }

  private static void choice(Svg svg, Axis axis, double choice, String label, double bottom) {
    double x = axis.clamped(choice);
    svg.line(x, TOP - 4.0, x, bottom + 6.2, Pen.stroke(Pen.WARM, 0.5));
    double half = 0.75 * label.length();
    double at = Math.max(AXIS_LEFT + half, Math.min(WIDTH - RIGHT - half, x));
    svg.text(at, TOP - 5.2, label, Lettering.middle(2.9).heavy().in(Pen.WARM));
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
      case GUIDELINE -> "#ffffff";
      case TARGET -> Pen.WARM_TINT;
    };
  }

  private static String cut(String text) {
    return text.length() <= LABEL_LENGTH ? text : text.substring(0, LABEL_LENGTH - 1) + "…";
  }
}
