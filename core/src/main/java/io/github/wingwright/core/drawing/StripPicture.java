// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Several quantities over one axis, each on a strip of its own, one above the other: how a motion goes on in time.
 *
 * @param title what is shown
 * @param xLabel label of the common axis, with its unit
 * @param strips the strips from the top
 * @param marks instants that are marked on all of them
 */
public record StripPicture(String title, String xLabel, List<Strip> strips, List<Mark> marks) {
  private static final double WIDTH = 170.0;
  private static final double RIGHT = WIDTH - 8.0;
  private static final double TOP = 20.0;
  private static final double STRIP = 34.0;
  private static final double GAP = 6.0;
  private static final double FOOT = 15.0;
  private static final int FIGURES = 4;

  /** Keeps its own lists and refuses an empty picture. */
  public StripPicture {
    Objects.requireNonNull(strips, "strips");
    Objects.requireNonNull(marks, "marks");
    strips = List.copyOf(strips);
    marks = List.copyOf(marks);
    if (strips.isEmpty()) {
      throw new IllegalArgumentException("a picture needs at least one strip, got none");
    }
  }

  /**
   * One strip.
   *
   * @param yLabel label of its axis, with its unit
   * @param curves its curves, at least one
   */
  public record Strip(String yLabel, List<CurvePicture.Curve> curves) {
    /** Keeps its own list and refuses an empty strip. */
    public Strip {
      Objects.requireNonNull(curves, "curves");
      curves = List.copyOf(curves);
      if (curves.isEmpty()) {
        throw new IllegalArgumentException("a strip needs at least one curve, got none");
      }
    }
  }

  /**
   * A marked instant.
   *
   * @param label what happens then
   * @param x when, on the common axis
   */
  public record Mark(String label, double x) {
    public Mark {
      Objects.requireNonNull(label, "label");
    }
  }

  /**
   * Draws the picture.
   *
   * @return the picture
   */
  public Svg draw() {
    double height = TOP + strips.size() * (STRIP + GAP) - GAP + FOOT;
    Svg svg = Sheet.titled(WIDTH, height, title);
    List<Axis> verticals = new ArrayList<>();
    double left = 0.0;
    for (int i = 0; i < strips.size(); i++) {
      double top = TOP + i * (STRIP + GAP);
      Axis vertical =
          Plot.axis(
              Plot.values(false, strips.get(i).curves(), List.of(), List.of()),
              0.08,
              top + STRIP,
              top);
      verticals.add(vertical);
      left = Math.max(left, Plot.left(Sheet.MARGIN, vertical, FIGURES));
    }
    List<CurvePicture.Curve> all = strips.stream().flatMap(s -> s.curves().stream()).toList();
    Axis horizontal = tight(Plot.values(true, all, List.of(), List.of()), left);
    for (int i = 0; i < strips.size(); i++) {
      Strip strip = strips.get(i);
      Axis vertical = verticals.get(i);
      Plot plot = new Plot(svg, horizontal, vertical);
      plot.grid(FIGURES, i == strips.size() - 1);
      zero(svg, horizontal, vertical);
      strip.curves().forEach(plot::curve);
      for (Mark mark : shown(horizontal)) {
        double x = horizontal.at(mark.x());
        plot.line(
            x, vertical.end(), x, vertical.start(), Pen.stroke(Pen.WARM, 0.3).dashed("1.6 1.2"));
      }
      plot.labels(
          List.of(),
          strip.curves(),
          List.of(),
          new Box(left + 1.0, vertical.end() + 0.5, RIGHT, vertical.start() - 0.5));
      plot.upward(strip.yLabel(), Sheet.MARGIN + 2.5);
      plot.finish();
    }
    Lettering name = Lettering.end(Lettering.NOTE);
    svg.text(RIGHT, height - 4.5, TextWidth.cut(xLabel, RIGHT - left, name), name);
    labels(svg, horizontal);
    return svg;
  }

  /** The common axis begins and ends with the curves. */
  private static Axis tight(List<Double> values, double left) {
    double low = values.stream().mapToDouble(Double::doubleValue).min().orElse(0.0);
    double high = values.stream().mapToDouble(Double::doubleValue).max().orElse(1.0);
    return high > low ? new Axis(low, high, left, RIGHT) : Plot.axis(values, 0.1, left, RIGHT);
  }

  private static void zero(Svg svg, Axis horizontal, Axis vertical) {
    if (vertical.low() < 0.0 && vertical.high() > 0.0) {
      svg.line(
          horizontal.start(),
          vertical.at(0.0),
          horizontal.end(),
          vertical.at(0.0),
          Pen.stroke(Pen.SHADOW, 0.25));
    }
  }

  private List<Mark> shown(Axis horizontal) {
    return marks.stream()
        .filter(m -> m.x() >= horizontal.low() && m.x() <= horizontal.high())
        .toList();
  }

  /** Labels of the marks above the strips, each where its neighbours leave room. */
  private void labels(Svg svg, Axis horizontal) {
    Lettering lettering = Lettering.middle(Lettering.SMALL).in(Pen.WARM);
    List<Box> taken = new ArrayList<>();
    for (Mark mark : shown(horizontal)) {
      String label = TextWidth.cut(mark.label(), 0.4 * WIDTH, lettering);
      double half = 0.5 * lettering.width(label);
      double x = Math.max(Sheet.MARGIN + half, Math.min(WIDTH - Sheet.MARGIN - half, horizontal.at(mark.x())));
      for (double y : new double[] {TOP - 1.6, TOP - 5.4}) {
        Box box = lettering.box(x, y, label);
        if (taken.stream().noneMatch(box.grownBy(0.4)::overlaps)) {
          svg.text(x, y, label, lettering);
          taken.add(box);
          break;
        }
      }
    }
  }
}
