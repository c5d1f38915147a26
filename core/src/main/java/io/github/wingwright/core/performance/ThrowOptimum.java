// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Time;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * An angle of the throw that is better than those beside it.
 *
 * <p>How far a thrown glider goes has jumps: where the bottom of a swing just clears the floor another swing is won. So the
 * angles from −60° to 75° are flown in steps of half a degree, and each that is better than its neighbours is refined
 * between them. Next to a jump the best angle is of little use to a thrower, and {@link #nearby()} says so.
 *
 * @param angle angle of the throw
 * @param value distance [m] or time [s]
 * @param nearby the least of the values within {@value #CARE_DEGREES}° of it [m] or [s]
 * @param goal what counts
 */
public record ThrowOptimum(Angle angle, double value, double nearby, GlideGoal goal) implements Serializable {
  /** How truly a hand throws [°] (common practice, no source). */
  public static final double CARE_DEGREES = 2.0;

  private static final double LOWEST = -60.0;
  private static final int STEPS = 270;
  private static final double WIDTH = 0.5;

  /** Steps of a tenth of a degree where a hand should aim. */
  private static final int FINER = 5;

  private static final double EQUAL = 1e-9;
  private static final Tolerance FINE = Tolerance.absolute(Math.toRadians(1e-3));

  /** Refuses numbers that are none. */
  public ThrowOptimum {
    Door.finite(angle, "angle of the throw");
    Door.finite(value, "value");
    Door.finite(nearby, "least value nearby");
    Objects.requireNonNull(goal, "goal");
  }

  static ThrowAngles among(FlightModel model, GlideGoal goal, Throw how) {
    double speed = how.speed().si();
    double height = how.height().si();
    double[] values = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      values[i] = model.value(goal, speed, degrees(i), height);
    }
    List<ThrowOptimum> optima = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      int last = i;
      while (last < STEPS && Math.abs(values[last + 1] - values[i]) <= EQUAL * Math.abs(values[i])) {
        last++;
      }
      boolean rises = i == 0 || values[i - 1] < values[i];
      boolean falls = last == STEPS || values[last + 1] < values[last];
      if (rises && falls) {
        optima.add(optimum(model, goal, how, values, i, last));
      }
      i = last;
    }
    optima.sort(Comparator.comparingDouble(ThrowOptimum::value).reversed());
    return new ThrowAngles(optima, careful(model, goal, how, values));
  }

  /** The angle whose worst neighbour within the care of a hand is best: of the angles flown, then to a tenth of a degree. */
  private static ThrowOptimum careful(FlightModel model, GlideGoal goal, Throw how, double[] values) {
    int reach = (int) Math.rint(CARE_DEGREES / WIDTH);
    int coarse = steadiest(values, reach);
    int first = Math.max(0, coarse - reach - 1);
    double[] fine = new double[Math.min(STEPS, coarse + reach + 1) * FINER - first * FINER + 1];
    for (int i = 0; i < fine.length; i++) {
      fine[i] =
          i % FINER == 0
              ? values[first + i / FINER]
              : model.value(goal, how.speed().si(), finer(first, i), how.height().si());
    }
    int best = steadiest(fine, reach * FINER);
    return new ThrowOptimum(Angle.radians(finer(first, best)), fine[best], worst(fine, best, reach * FINER), goal);
  }

  private static double finer(int first, int i) {
    return Math.toRadians(LOWEST + WIDTH * first + WIDTH / FINER * i);
  }

  /** Where the least of the values within reach is greatest. */
  private static int steadiest(double[] values, int reach) {
    int best = reach;
    for (int i = reach + 1; i < values.length - reach; i++) {
      if (worst(values, i, reach) > worst(values, best, reach)) {
        best = i;
      }
    }
    return best;
  }

  private static double worst(double[] values, int centre, int reach) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = centre - reach; i <= centre + reach; i++) {
      least = Math.min(least, values[i]);
    }
    return least;
  }

  private static double degrees(int i) {
    return Math.toRadians(LOWEST + WIDTH * i);
  }

  private static ThrowOptimum optimum(FlightModel model, GlideGoal goal, Throw how, double[] values, int first, int last) {
    double speed = how.speed().si();
    double height = how.height().si();
    double angle = 0.5 * (degrees(first) + degrees(last));
    double value = values[first];
    if (first == last) {
      double from = degrees(Math.max(0, first - 1));
      double to = degrees(Math.min(STEPS, first + 1));
      Minimum best = Minimum.within(a -> -model.value(goal, speed, a, height), from, to, FINE);
      if (-best.value() > value) {
        value = -best.value();
        angle = best.argument();
      }
    }
    double nearby = value;
    for (double off : new double[] {-CARE_DEGREES, -0.5 * CARE_DEGREES, 0.5 * CARE_DEGREES, CARE_DEGREES}) {
      nearby = Math.min(nearby, model.value(goal, speed, angle + Math.toRadians(off), height));
    }
    return new ThrowOptimum(Angle.radians(angle), value, nearby, goal);
  }

  /**
   * Whether a throw that is not quite true loses much: more than a fifth within {@value #CARE_DEGREES}°.
   *
   * @return true next to a jump
   */
  public boolean isDelicate() {
    return nearby < 0.8 * value;
  }

  @Override
  public String toString() {
    String unit = goal == GlideGoal.DISTANCE ? Length.METRE.symbol() : Time.SECOND.symbol();
    return String.format(Locale.ROOT, "%.1f°: %.2f %s (%.2f within %.0f°)", angle.degrees(), value, unit, nearby, CARE_DEGREES);
  }
}
