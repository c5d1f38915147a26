// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRegion.Boundary;
import io.github.wingwright.core.basis.Weighed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The key below the picture of a region: every consideration with its number, its line, and what becomes of it. */
final class RegionKey {
  private static final double LINE = 9.0;
  private static final double BELOW_ADVICE = 2.0;
  private static final double TEXT = 9.0 + LINE;
  private static final int MOST_LINES = 4;
  private static final Lettering SMALL = Lettering.start(Lettering.SMALL);

  private final RegionChart chart;
  private final double top;
  private final double row;
  private final double width;
  private final List<String> advice;

  RegionKey(RegionChart chart, double top, double row, double width) {
    this.chart = chart;
    this.top = top;
    this.row = row;
    this.width = width;
    this.advice = new ArrayList<>();
    chart
        .region()
        .conflict()
        .ifPresent(
            c ->
                advice.addAll(
                    TextWidth.wrap(
                        "Nothing is feasible. " + c.describe(chart.region().unit()),
                        width,
                        SMALL,
                        8)));
  }

  double bottom() {
    return top
        + row * (advice.size() + chart.boundaries().stream().mapToInt(b -> wrapped(b).size()).sum())
        + (advice.isEmpty() ? 0.0 : BELOW_ADVICE);
  }

  void draw(Svg svg, double left) {
    double y = top;
    for (String line : advice) {
      svg.text(left, y, line, SMALL.in(Pen.WARM));
      y += row;
    }
    y += advice.isEmpty() ? 0.0 : BELOW_ADVICE;
    for (Boundary boundary : chart.boundaries()) {
      Weighed one = boundary.consideration();
      Lettering lettering = chart.lettering(one);
      svg.text(
          left + 5.0,
          y,
          chart.number(boundary),
          Lettering.end(Lettering.SMALL).heavy().in(lettering.colour()));
      svg.line(left + 7.0, y - 1.1, left + 7.0 + LINE, y - 1.1, chart.pen(one));
      for (String text : wrapped(boundary)) {
        svg.text(left + TEXT, y, text, name(one));
        y += row;
      }
    }
  }

  private Lettering name(Weighed one) {
    Lettering lettering = chart.lettering(one);
    return chart.binds(one) || chart.clashes(one) ? lettering.heavy() : lettering;
  }

  private List<String> wrapped(Boundary boundary) {
    return TextWidth.wrap(words(boundary), width - TEXT, name(boundary.consideration()), MOST_LINES);
  }

  private String words(Boundary boundary) {
    Weighed one = boundary.consideration();
    String strength = one.consideration().strength().name().toLowerCase(Locale.ROOT);
    return one.consideration().nameIn(chart.region().unit()) + ": " + strength + ", " + fate(boundary);
  }

  private String fate(Boundary boundary) {
    Weighed one = boundary.consideration();
    if (!one.decision().applies()) {
      return one.decision().toString();
    }
    String provisional = one.decision().kind() == Decision.Kind.CHOSEN ? "" : ", " + one.decision();
    if (one.isTarget()) {
      return (boundary.lines().isEmpty() ? "outside the picture" : "pulls") + provisional;
    }
    if (chart.clashes(one)) {
      return "clashes" + provisional;
    }
    if (chart.binds(one)) {
      return "binds" + provisional;
    }
    if (!boundary.lines().isEmpty()) {
      return (chart.region().isEmpty() ? "no part in the clash" : "does not bind") + provisional;
    }
    RegionWindow shown = chart.window();
    double length = 0.5 * (shown.lengths().lower() + shown.lengths().upper());
    double diameter = 0.5 * (shown.diameters().lower() + shown.diameters().upper());
    boolean holds = one.consideration().margin(length, diameter) >= 0.0;
    return (holds ? "holds everywhere in the picture" : "holds nowhere in the picture")
        + provisional;
  }
}
