// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * One piece of a part that is made in pieces.
 *
 * @param from where it begins, along the part from its first end
 * @param to where it ends, without the tongue that may stick out of it
 * @param orientation how it lies in the machine
 */
public record Segment(Length from, Length to, Orientation orientation) implements Serializable {
  /** Refuses a piece without length. */
  public Segment {
    Objects.requireNonNull(to, "to");
    Door.notNegative(from, "beginning of the segment");
    Door.positive(to.minus(from), "length of the segment");
  }

  /**
   * Its length.
   *
   * @return the length without a tongue
   */
  public Length length() {
    return to.minus(from);
  }

  @Override
  public String toString() {
    return from.format(Length.MILLIMETRE, 4) + " to " + to.format(Length.MILLIMETRE, 4) + ", " + orientation;
  }
}
