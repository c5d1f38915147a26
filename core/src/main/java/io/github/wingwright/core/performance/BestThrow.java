// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleFunction;

/**
 * The most that a glider flies when it is thrown at one speed: the best over its trim and over the angle of the throw, so
 * that two designs are compared each at its own best. A figure of merit for those who throw.
 *
 * <pre>{@code
 * BestThrow flown = BestThrow.of(GlideGoal.DISTANCE, speed, height, 0.2, 0.9, cl -> LaunchTrajectory.of(glide).atLift(cl));
 * flown.value();     // metres
 * }</pre>
 *
 * <p>How far a throw goes has jumps over angle and trim, where one more swing clears the floor; the best over both has none
 * over a change of the design, since the place of the jump moves with it. The angles from −30° to 60° are flown in steps of
 * 2° at {@value #SETTINGS} settings, and the best is closed in upon down to {@value #RESOLUTION_DEGREES}°. Next to a jump
 * what is found may be less than the best by what that much of angle is worth: a change of less than about
 * {@value #RESOLUTION} of the value is not to be trusted.
 *
 * @param value distance [m] or time [s]
 * @param setting the best setting, in the unit of the settings
 * @param angle the best angle of the throw
 * @param goal what counts
 */
public record BestThrow(double value, double setting, Angle angle, GlideGoal goal) implements Serializable {
  public BestThrow {
    Objects.requireNonNull(angle, "angle");
    Objects.requireNonNull(goal, "goal");
  }

  /** Settings that are flown at first. */
  public static final int SETTINGS = 24;

  /** How finely the best angle is looked for [°]. */
  public static final double RESOLUTION_DEGREES = 0.01;

  /** Part of the value below which a change is noise, measured by a sweep. */
  public static final double RESOLUTION = 0.001;

  private static final double LOWEST = Math.toRadians(-30.0);
  private static final double WIDTH = Math.toRadians(2.0);
  private static final int ANGLES = 46;
  private static final int REACH = 2;
  private static final double SHRINK = 0.5;

  /**
   * The best throw.
   *
   * @param goal what counts
   * @param speed throw speed, positive
   * @param height height of the hand, positive, below the ceiling
   * @param least the least setting
   * @param most the greatest, more than the least
   * @param trims the flight at a setting: a trimmed lift coefficient, a decalage
   * @return the best over setting and angle
   */
  public static BestThrow of(
      GlideGoal goal, Speed speed, Length height, double least, double most, DoubleFunction<? extends FlightModel> trims) {
    double v = Door.positive(speed, "throw speed").si();
    double h = Door.positive(height, "height of the hand").si();
    Door.finite(least, "least setting");
    Door.finite(most, "greatest setting");
    if (!(most > least)) {
      throw new IllegalArgumentException("greatest setting must be more than the least, " + least + ", was " + most);
    }
    double step = (most - least) / (SETTINGS - 1);
    double[] best = {Double.NEGATIVE_INFINITY, least, 0.0};
    for (int i = 0; i < SETTINGS; i++) {
      double setting = least + i * step;
      FlightModel model = trims.apply(setting);
      for (int k = 0; k < ANGLES; k++) {
        look(model, goal, v, h, setting, LOWEST + k * WIDTH, best);
      }
    }
    double width = WIDTH * SHRINK;
    double across = step * SHRINK;
    while (width > Math.toRadians(RESOLUTION_DEGREES)) {
      double centre = best[1];
      double angle = best[2];
      for (int i = -REACH; i <= REACH; i++) {
        double setting = Math.max(least, Math.min(most, centre + i * across));
        FlightModel model = trims.apply(setting);
        for (int k = -REACH; k <= REACH; k++) {
          look(model, goal, v, h, setting, angle + k * width, best);
        }
      }
      width *= SHRINK;
      across *= SHRINK;
    }
    return new BestThrow(best[0], best[1], Angle.radians(best[2]), goal);
  }

  private static void look(
      FlightModel model, GlideGoal goal, double speed, double height, double setting, double angle, double[] best) {
    double value = model.value(goal, speed, angle, height);
    if (value > best[0]) {
      best[0] = value;
      best[1] = setting;
      best[2] = angle;
    }
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "%.2f %s at %.1f°, setting %.3g", value, goal.unit().symbol(), angle.degrees(), setting);
  }
}
