// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds room for the names of lines beside them: never on another text, and across as few lines as possible. A name
 * that
 * would run across too many lines gives way to its number, which a key explains.
 */
final class LineLabels {
  /** Parts of a line to stand at, in the order of preference. */
  private static final double[] PARTS = {
    0.5, 0.35, 0.65, 0.22, 0.78, 0.12, 0.88, 0.04, 0.96, 0.43, 0.57, 0.28, 0.72
  };

  /** Where the label stands seen from the line, x to the right and y down: beside it first, on it last. */
  private static final double[][] SIDES = {
    {0, -1}, {0, 1}, {1, 0}, {-1, 0}, {1, -1}, {1, 1}, {-1, -1}, {-1, 1}, {0, 0}
  };

  /** Distances from the line, the nearest first. */
  private static final double[] GAPS = {1.1, 3.5, 7.0};

  private static final double CROSSING = 10.0;
  private static final int MOST_CROSSINGS = 1;

  private final Sketch sketch;
  private final Box room;

  LineLabels(Sketch sketch, Box room) {
    this.sketch = sketch;
    this.room = room;
  }

  private record Place(double x, double baseline, double cost, long crossings) {}

  /** Writes the name beside one of the lines, or the number if the name finds no good place. */
  void place(List<double[][]> lines, String name, String number, Lettering look) {
    Lettering lettering =
        new Lettering(look.size(), Lettering.Anchor.START, look.colour(), look.bold(), look.halo());
    @Nullable Place named = best(lines, name, lettering);
    if (named != null && named.crossings() <= MOST_CROSSINGS) {
      sketch.text(named.x(), named.baseline(), name, lettering);
      return;
    }
    Lettering heavy = number.equals(name) ? lettering : lettering.heavy();
    @Nullable Place numbered = best(lines, number, heavy);
    if (numbered != null) {
      sketch.text(numbered.x(), numbered.baseline(), number, heavy);
    }
  }

  private @Nullable Place best(List<double[][]> lines, String text, Lettering lettering) {
    Place best = null;
    for (double[][] line : lines) {
      for (int i = 0; i < PARTS.length; i++) {
        double[] at = along(line, PARTS[i]);
        for (int side = 0; side < SIDES.length; side++) {
          for (double gap : GAPS) {
            Place place =
                at(at, SIDES[side], gap, 0.6 * i + 0.3 * side + 2.0 * gap, text, lettering);
            if (place != null && (best == null || place.cost() < best.cost())) {
              best = place;
            }
          }
        }
      }
    }
    return best;
  }

  private @Nullable Place at(
      double[] at, double[] side, double gap, double preference, String text, Lettering lettering) {
    Box own = lettering.box(0.0, 0.0, text);
    double left = at[0] + side[0] * gap + 0.5 * (side[0] - 1.0) * own.width();
    double middle = at[1] + side[1] * (gap + 0.5 * own.height());
    double baseline = middle - 0.5 * (own.top() + own.bottom());
    Box box = lettering.box(left, baseline, text);
    if (!box.within(room) || !sketch.isFree(box.grownBy(0.5))) {
      return null;
    }
    long crossings = sketch.linesThrough(box);
    return new Place(left, baseline, preference + CROSSING * Math.min(crossings, 9), crossings);
  }

  /** The point of a line at a part of its length. */
  private static double[] along(double[][] line, double part) {
    double[] x = line[0];
    double[] y = line[1];
    double whole = 0.0;
    for (int i = 1; i < x.length; i++) {
      whole += Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
    }
    double rest = part * whole;
    for (int i = 1; i < x.length; i++) {
      double piece = Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
      if (rest <= piece && piece > 0.0) {
        double t = rest / piece;
        return new double[] {x[i - 1] + t * (x[i] - x[i - 1]), y[i - 1] + t * (y[i] - y[i - 1])};
      }
      rest -= piece;
    }
    return new double[] {x[x.length - 1], y[y.length - 1]};
  }
}
