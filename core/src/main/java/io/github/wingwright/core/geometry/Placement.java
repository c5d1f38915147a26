// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Where a part sits: x aft of the nose tip, y to starboard, z up.
 *
 * @param x distance aft of the nose tip
 * @param y distance to starboard of the plane of symmetry
 * @param z height above the fuselage reference line
 */
public record Placement(Length x, Length y, Length z) implements Serializable {

  /** Refuses null. */
  public Placement {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    Objects.requireNonNull(z, "z");
  }


  /**
   * A place in the plane of symmetry.
   *
   * @param x distance aft of the nose tip
   * @param z height above the fuselage reference line
   * @return the place
   */
  public static Placement at(Length x, Length z) {
    return new Placement(x, Length.ZERO, z);
  }

  /**
   * The same place moved along the fuselage.
   *
   * @param newX distance aft of the nose tip
   * @return the moved place
   */
  public Placement withX(Length newX) {
    return new Placement(newX, y, z);
  }
}
