// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * The seat that is cut into the top of a body for its wing: a trough with a flat bottom along the body, in which the wing can
 * be moved, its two halves as steep as the wing's dihedral.
 *
 * @param from where it begins, aft of the nose tip: the root's leading edge less the travel forward
 * @param to where it ends: the root's trailing edge and the travel aft
 * @param floor height of its lowest line above the reference line
 * @param dihedral slope of its two halves, 0° to 45°
 */
public record WingSeat(Length from, Length to, Length floor, Angle dihedral) implements Serializable {

  /** Refuses a seat without length. */
  public WingSeat {
    Objects.requireNonNull(to, "to");
    Door.positive(from, "beginning of the wing seat");
    if (!(from.si() < to.si())) {
      throw new IllegalArgumentException("a wing seat must begin before it ends, was " + from + " to " + to);
    }
    Door.finite(floor, "floor of the wing seat");
    Door.within(dihedral, Angle.ZERO, Angle.degrees(45), "slope of the wing seat");
  }
}
