// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

/**
 * A dimension as draughtsmen draw it (ISO 129-1): two extension lines, a dimension line with closed filled arrow heads, the
 * figure above the line, reading from below or from the right. Where the figure or the heads find no room between the
 * extension lines they stand outside.
 *
 * <p>The dimension is thought along one axis; {@link Direction} says which. {@code along} runs with the dimension line,
 * {@code across} away from the feature.
 *
 * @param from one end along the dimension line [mm]
 * @param to the other end [mm], not less
 * @param featureFrom where the first extension line comes from, across
 * @param featureTo where the second extension line comes from, across
 * @param figure the figure
 */
record DimensionLine(double from, double to, double featureFrom, double featureTo, String figure) {
  private static final double HEAD = 2.5;
  private static final double HALF_HEAD = 0.42;
  private static final double OVERSHOOT = 1.2;
  private static final double GAP = 0.8;

  /** The line beyond a head that points inwards from outside. */
  private static final double TAIL = 5.0;

  private static final double LIFT = 0.9;
  private static final Lettering LETTERING = Lettering.middle(Lettering.NOTE).onto(Pen.PAPER);

  /** Which way a dimension runs. */
  enum Direction {
    HORIZONTAL,
    VERTICAL
  }

  /** Where the figure stands. */
  enum FigurePlace {
    INSIDE,
    AFTER,
    BEFORE
  }

  /** Orders the ends. */
  DimensionLine {
    if (from > to) {
      double end = from;
      from = to;
      to = end;
      double feature = featureFrom;
      featureFrom = featureTo;
      featureTo = feature;
    }
  }

  double size() {
    return to - from;
  }

  private boolean headsInside() {
    return size() >= 2.0 * HEAD + 1.0;
  }

  boolean figureFitsInside() {
    return size() >= LETTERING.width(figure) + (headsInside() ? 2.0 * HEAD : 1.0);
  }

  /** Where the figure begins and ends along the line. */
  double[] figureExtent(FigurePlace place) {
    double half = 0.5 * LETTERING.width(figure);
    double middle =
        switch (place) {
          case INSIDE -> 0.5 * (from + to);
          case AFTER -> to + TAIL + half;
          case BEFORE -> from - TAIL - half;
        };
    return new double[] {middle - half, middle + half};
  }

  /** Everything along the line: ends, heads, figure. */
  double[] extent(FigurePlace place) {
    double[] figureExtent = figureExtent(place);
    double outside = headsOutside(place) ? TAIL : 0.0;
    return new double[] {Math.min(from - outside, figureExtent[0]), Math.max(to + outside, figureExtent[1])};
  }

  private boolean headsOutside(FigurePlace place) {
    return place != FigurePlace.INSIDE || !headsInside();
  }

  /**
   * Draws the dimension.
   *
   * @param sketch what to draw into
   * @param direction which way it runs
   * @param at where the dimension line lies, across
   * @param place where the figure stands
   */
  void draw(Sketch sketch, Direction direction, double at, FigurePlace place) {
    extension(sketch, direction, from, featureFrom, at);
    extension(sketch, direction, to, featureTo, at);
    double[] extent = headsOutside(place) ? extent(place) : new double[] {from, to};
    line(sketch, direction, extent[0], at, extent[1], at);
    double outwards = headsOutside(place) ? -1.0 : 1.0;
    head(sketch, direction, from, at, -outwards);
    head(sketch, direction, to, at, outwards);
    double[] text = figureExtent(place);
    double middle = 0.5 * (text[0] + text[1]);
    if (direction == Direction.HORIZONTAL) {
      sketch.text(middle, at - LIFT, figure, LETTERING);
    } else {
      sketch.upwardText(at - LIFT, middle, figure, LETTERING);
    }
  }

  private static void extension(Sketch sketch, Direction direction, double along, double feature, double at) {
    double sense = Math.signum(at - feature);
    line(sketch, direction, along, feature + sense * GAP, along, at + sense * OVERSHOOT);
  }

  private static void line(
      Sketch sketch, Direction direction, double along1, double across1, double along2, double across2) {
    if (direction == Direction.HORIZONTAL) {
      sketch.line(along1, across1, along2, across2, Pen.THIN);
    } else {
      sketch.line(across1, along1, across2, along2, Pen.THIN);
    }
  }

  private static void head(Sketch sketch, Direction direction, double tip, double at, double sense) {
    double back = tip - sense * HEAD;
    double[] along = {tip, back, back};
    double[] across = {at, at - HALF_HEAD, at + HALF_HEAD};
    if (direction == Direction.HORIZONTAL) {
      sketch.polygon(along, across, Pen.SOLID);
    } else {
      sketch.polygon(across, along, Pen.SOLID);
    }
  }
}
