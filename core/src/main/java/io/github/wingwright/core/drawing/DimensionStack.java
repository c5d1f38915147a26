// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Parallel dimensions beside a view, the shorter ones nearer to it (ISO 129-1), each in the first row where it touches no
 * other.
 */
final class DimensionStack {
  private static final double FIRST = 7.0;
  private static final double STEP = 7.0;

  private final DimensionLine.Direction direction;
  private final double base;
  private final double sense;
  private final List<DimensionLine> waiting = new ArrayList<>();
  private final List<List<double[]>> rows = new ArrayList<>();

  /**
   * A stack that grows away from a view.
   *
   * @param direction which way the dimensions run
   * @param base edge of the view, across
   * @param sense +1 to grow down or right, −1 to grow up or left
   */
  DimensionStack(DimensionLine.Direction direction, double base, double sense) {
    this.direction = direction;
    this.base = base;
    this.sense = sense;
  }

  DimensionStack add(double from, double to, double featureFrom, double featureTo, String figure) {
    waiting.add(new DimensionLine(from, to, featureFrom, featureTo, figure));
    return this;
  }

  /** Draws all of them. */
  void draw(Sketch sketch) {
    waiting.sort(Comparator.comparingDouble(DimensionLine::size).thenComparingDouble(DimensionLine::from));
    for (int i = 0; i < waiting.size(); i++) {
      DimensionLine dimension = waiting.get(i);
      DimensionLine.FigurePlace place = place(dimension, waiting.subList(i + 1, waiting.size()));
      int row = row(dimension.extent(place));
      dimension.draw(sketch, direction, base + sense * (FIRST + STEP * row), place);
    }
  }

  /** Beside the line rather than on an extension line of a longer dimension, which runs through to a row further out. */
  private static DimensionLine.FigurePlace place(DimensionLine dimension, List<DimensionLine> longer) {
    if (dimension.figureFitsInside()) {
      return DimensionLine.FigurePlace.INSIDE;
    }
    boolean after = isCrossed(dimension.figureExtent(DimensionLine.FigurePlace.AFTER), longer);
    boolean before = isCrossed(dimension.figureExtent(DimensionLine.FigurePlace.BEFORE), longer);
    return after && !before ? DimensionLine.FigurePlace.BEFORE : DimensionLine.FigurePlace.AFTER;
  }

  private static boolean isCrossed(double[] extent, List<DimensionLine> longer) {
    return longer.stream().anyMatch(d -> inside(d.from(), extent) || inside(d.to(), extent));
  }

  private static boolean inside(double value, double[] extent) {
    return value > extent[0] && value < extent[1];
  }

  private int row(double[] extent) {
    for (int row = 0; row < rows.size(); row++) {
      // Chained dimensions share an end, so touching is allowed.
      boolean free = rows.get(row).stream().noneMatch(e -> extent[0] < e[1] - 1e-6 && e[0] < extent[1] - 1e-6);
      if (free) {
        rows.get(row).add(extent);
        return row;
      }
    }
    rows.add(new ArrayList<>(List.of(extent)));
    return rows.size() - 1;
  }
}
