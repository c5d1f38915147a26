// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.Comparator;
import java.util.List;

/** Marks along the body, each with a label on a leader; labels that would meet step aside or further out. */
final class StationMarks {
  private static final double RADIUS = GravitySymbol.RADIUS;
  private static final double CLEAR = 6.0;
  private static final double STEP = 5.0;
  private static final int MOST_ROWS = 40;
  private static final Pen LEADER = Pen.stroke(Pen.WARM, 0.2);
  private static final Lettering START = Lettering.start(Lettering.NOTE).in(Pen.WARM).heavy().onto(Pen.PAPER);
  private static final Lettering END = Lettering.end(Lettering.NOTE).in(Pen.WARM).heavy().onto(Pen.PAPER);
  private static final List<Lettering> STARTING = List.of(START);
  private static final List<Lettering> STARTING_OR_ENDING = List.of(START, END);

  private final Sketch sketch;
  private final double clearance;

  private StationMarks(Sketch sketch, double halfDiameter) {
    this.sketch = sketch;
    this.clearance = Math.max(halfDiameter, RADIUS) + CLEAR;
  }

  /**
   * Draws marks on the axis of the body.
   *
   * @param halfDiameter half the diameter of the body on paper [mm]
   */
  static void draw(Sketch sketch, SheetScale scale, double halfDiameter, List<ThreeView.Mark> marks) {
    StationMarks drawing = new StationMarks(sketch, halfDiameter);
    drawing.side(scale, marks.stream().filter(ThreeView.Mark::above).toList(), -1.0);
    drawing.side(scale, marks.stream().filter(mark -> !mark.above()).toList(), 1.0);
    // The centre of gravity comes last, to lie above its neighbours.
    marks.stream()
        .sorted(Comparator.comparing(StationMarks::isCentreOfGravity))
        .forEach(mark -> drawing.symbol(scale.paper(mark.x()), isCentreOfGravity(mark)));
  }

  private static boolean isCentreOfGravity(ThreeView.Mark mark) {
    return mark.label().equals("CG");
  }

  /**
   * Labels from the aftmost forwards, each at the right of its leader: a leader then passes all earlier labels on their
   * left. Only the foremost may stand at the left of its own.
   */
  private void side(SheetScale scale, List<ThreeView.Mark> marks, double side) {
    List<ThreeView.Mark> sorted = marks.stream().sorted(Comparator.comparing(ThreeView.Mark::x).reversed()).toList();
    for (int i = 0; i < sorted.size(); i++) {
      boolean foremost = i > 0 && i == sorted.size() - 1;
      label(scale.paper(sorted.get(i).x()), sorted.get(i).label(), side, foremost ? STARTING_OR_ENDING : STARTING);
    }
  }

  private void label(double x, String label, double side, List<Lettering> candidates) {
    for (int row = 0; row < MOST_ROWS; row++) {
      double level = side * (clearance + STEP * row);
      double baseline = side > 0.0 ? level + 2.6 : level;
      for (Lettering lettering : candidates) {
        double textX = x + (lettering.anchor() == Lettering.Anchor.START ? 0.8 : -0.8);
        Box box = lettering.box(textX, baseline, label);
        if (sketch.isFree(box.grownBy(0.3)) || row == MOST_ROWS - 1) {
          sketch.line(x, 0.0, x, side > 0.0 ? box.bottom() : box.top(), LEADER);
          sketch.text(textX, baseline, label, lettering);
          return;
        }
      }
    }
  }

  /** The symbol of a centre of gravity, a point for any other station. */
  private void symbol(double x, boolean centreOfGravity) {
    if (!centreOfGravity) {
      sketch.circle(x, 0.0, 0.6 * RADIUS, new Pen(Pen.WARM, 0.4, Pen.PAPER, ""));
      return;
    }
    GravitySymbol.draw(sketch, x, 0.0);
  }
}
