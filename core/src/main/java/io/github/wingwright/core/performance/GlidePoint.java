// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import java.io.Serializable;
import java.util.Objects;

/**
 * One steady glide.
 *
 * @param liftCoefficient C_L
 * @param dragCoefficient C_D at the Reynolds numbers of this glide
 * @param speed airspeed V along the path
 * @param angle angle of descent γ, positive down
 * @param sinkRate sink rate w, positive down
 * @param reynolds Reynolds number on the mean aerodynamic chord
 */
public record GlidePoint(
    double liftCoefficient, double dragCoefficient, Speed speed, Angle angle, Speed sinkRate, double reynolds)
    implements Serializable {
  /** Refuses numbers that are none. */
  public GlidePoint {
    Door.finite(liftCoefficient, "lift coefficient");
    Door.finite(dragCoefficient, "drag coefficient");
    Door.finite(speed, "airspeed");
    Door.finite(angle, "angle of descent");
    Door.finite(sinkRate, "sink rate");
    Door.finite(reynolds, "Reynolds number");
  }

  /**
   * Ratio of lift to drag: in a straight glide the glide ratio in still air.
   *
   * @return C_L/C_D
   */
  public double liftToDrag() {
    return SteadyGlide.liftToDrag(liftCoefficient, dragCoefficient);
  }

  /**
   * The point in a unit of choice, for a reader who thinks in knots or in feet per second.
   *
   * @param unit unit of speed and sink rate
   * @return for example {@code "L/D 9.3 at 22 ft/s, sink 2.1 ft/s, C_L 0.53"}
   */
  public String format(NamedUnit<Speed> unit) {
    Objects.requireNonNull(unit, "unit");
    return "L/D " + NamedUnit.NUMBER.format(liftToDrag(), 3) + " at " + speed.format(unit, 3)
        + ", sink " + sinkRate.format(unit, 3) + ", C_L "
        + NamedUnit.NUMBER.format(liftCoefficient, 3);
  }

  @Override
  public String toString() {
    return format(Speed.METRE_PER_SECOND);
  }
}
