// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import java.io.Serializable;
import java.util.Objects;

/**
 * How the glider is launched: thrown from the hand, level.
 *
 * @param speed speed at which it leaves the hand, positive
 * @param height height above the ground at which it leaves the hand, positive
 */
public record Launch(Speed speed, Length height) implements Serializable {
  /** Refuses a launch that is none. */
  public Launch {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(height, "height");
    if (!(speed.si() > 0.0) || Double.isInfinite(speed.si())) {
      throw new IllegalArgumentException("launch speed must be positive, was " + speed);
    }
    if (!(height.si() > 0.0) || Double.isInfinite(height.si())) {
      throw new IllegalArgumentException("launch height must be positive, was " + height);
    }
  }
}
