// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import java.io.Serializable;

/**
 * How a glider leaves the hand.
 *
 * @param speed speed over the ground, positive
 * @param angle angle of the path above the horizon, within −90° and 90°
 * @param height height of the hand above the floor, positive
 */
public record Throw(Speed speed, Angle angle, Length height) implements Serializable {
  /** Refuses a throw that is none. */
  public Throw {
    Door.positive(speed, "throw speed");
    Door.within(angle, Angle.degrees(-90), Angle.degrees(90), "throw angle");
    Door.positive(height, "height of the hand");
  }

  /**
   * A level throw.
   *
   * @param speed speed over the ground, positive
   * @param height height of the hand above the floor, positive
   * @return the throw
   */
  public static Throw level(Speed speed, Length height) {
    return new Throw(speed, Angle.ZERO, height);
  }

  /**
   * The same at another angle.
   *
   * @param other angle above the horizon
   * @return the throw
   */
  public Throw at(Angle other) {
    return new Throw(speed, other, height);
  }

  @Override
  public String toString() {
    return "throw at " + speed.format(Speed.METRE_PER_SECOND, 3) + ", " + angle.format(Angle.DEGREE, 3) + ", from "
        + height.format(Length.METRE, 3);
  }
}
