// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of a picture in coordinates of its own, which knows how much room it takes. Views are sketched first, measured,
 * and then put onto the sheet.
 *
 * <p>Text comes to lie above everything else, and knows its box, so that labels can keep clear of each other.
 */
final class Sketch {
  /** An element that can be drawn anywhere. */
  private interface Element {
    void onto(Svg svg, double dx, double dy);
  }

  private final List<Element> shapes = new ArrayList<>();
  private final List<Element> texts = new ArrayList<>();
  private final List<Box> textBoxes = new ArrayList<>();
  private final List<double[]> lines = new ArrayList<>();
  private Box bounds = Box.NOTHING;

  Box bounds() {
    return bounds;
  }

  /** Whether no text stands in a box. */
  boolean isFree(Box box) {
    return textBoxes.stream().noneMatch(box::overlaps);
  }

  /** How many of the lines that labels should avoid run through a box. */
  long linesThrough(Box box) {
    return lines.stream().filter(l -> box.crossedBy(l[0], l[1], l[2], l[3])).count();
  }

  /** How many texts a straight line runs through. */
  long textsThrough(double[] line) {
    return textBoxes.stream().filter(box -> box.crossedBy(line[0], line[1], line[2], line[3])).count();
  }

  /** Keeps a box free of labels that are placed later. */
  void reserve(Box box) {
    textBoxes.add(box);
  }

  void line(double x1, double y1, double x2, double y2, Pen pen) {
    bounds = bounds.including(x1, y1).including(x2, y2);
    lines.add(new double[] {x1, y1, x2, y2});
    shapes.add((svg, dx, dy) -> svg.line(x1 + dx, y1 + dy, x2 + dx, y2 + dy, pen));
  }

  /** Asks labels to keep clear of an outline, as far as there is room elsewhere. */
  void avoid(double[] x, double[] y) {
    for (int i = 1; i < x.length; i++) {
      lines.add(new double[] {x[i - 1], y[i - 1], x[i], y[i]});
    }
  }

  /** A short line that labels may cover. */
  void tick(double x1, double y1, double x2, double y2, Pen pen) {
    bounds = bounds.including(x1, y1).including(x2, y2);
    shapes.add((svg, dx, dy) -> svg.line(x1 + dx, y1 + dy, x2 + dx, y2 + dy, pen));
  }

  /** Adds a polygon and tells the room it takes. */
  Box polygon(double[] x, double[] y, Pen pen) {
    Box box = boxOf(x, y);
    bounds = bounds.including(box);
    shapes.add((svg, dx, dy) -> svg.polygon(moved(x, dx), moved(y, dy), pen));
    return box;
  }

  void polyline(double[] x, double[] y, Pen pen) {
    bounds = bounds.including(boxOf(x, y));
    for (int i = 1; i < x.length; i++) {
      lines.add(new double[] {x[i - 1], y[i - 1], x[i], y[i]});
    }
    shapes.add((svg, dx, dy) -> svg.polyline(moved(x, dx), moved(y, dy), pen));
  }

  void circle(double x, double y, double radius, Pen pen) {
    bounds = bounds.including(x - radius, y - radius).including(x + radius, y + radius);
    shapes.add((svg, dx, dy) -> svg.circle(x + dx, y + dy, radius, pen));
  }

  /** A round mark of a place, which labels keep clear of as far as the clearance [mm] reaches from its middle. */
  void mark(double x, double y, double radius, double clearance, Pen pen) {
    circle(x, y, radius, pen);
    reserve(new Box(x - clearance, y - clearance, x + clearance, y + clearance));
  }

  void rectangle(double x, double y, double w, double h, Pen pen) {
    bounds = bounds.including(x, y).including(x + w, y + h);
    shapes.add((svg, dx, dy) -> svg.rectangle(x + dx, y + dy, w, h, pen));
  }

  void text(double x, double y, String text, Lettering lettering) {
    Box box = lettering.box(x, y, text);
    bounds = bounds.including(box);
    textBoxes.add(box);
    texts.add((svg, dx, dy) -> svg.text(x + dx, y + dy, text, lettering));
  }

  void upwardText(double x, double y, String text, Lettering lettering) {
    Box box = lettering.upwardBox(x, y, text);
    bounds = bounds.including(box);
    textBoxes.add(box);
    texts.add((svg, dx, dy) -> svg.upwardText(x + dx, y + dy, text, lettering));
  }

  /** Draws everything, moved by a distance. */
  void onto(Svg svg, double dx, double dy) {
    shapes.forEach(e -> e.onto(svg, dx, dy));
    texts.forEach(e -> e.onto(svg, dx, dy));
  }

  private static Box boxOf(double[] x, double[] y) {
    Box box = Box.NOTHING;
    for (int i = 0; i < x.length; i++) {
      box = box.including(x[i], y[i]);
    }
    return box;
  }

  private static double[] moved(double[] values, double by) {
    double[] moved = values.clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] += by;
    }
    return moved;
  }
}
