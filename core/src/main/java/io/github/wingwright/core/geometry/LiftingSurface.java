// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;

/** A wing or a tail: a planform with a section, set on the airframe. */
public sealed interface LiftingSurface permits Wing, Tail {

  /**
   * Its outline.
   *
   * @return the planform
   */
  Planform planform();

  /**
   * Its section.
   *
   * @return the section, the same along the span
   */
  AirfoilSection section();

  /**
   * Where the leading edge of its root sits.
   *
   * @return the place
   */
  Placement placement();

  /**
   * Angle of its root chord against the fuselage reference line.
   *
   * @return incidence, nose-up positive
   */
  Angle incidence();

  /**
   * Greatest thickness, at the root.
   *
   * @return t/c times the root chord
   */
  default Length maximumThickness() {
    return planform().rootChord().times(section().maximumThickness());
  }

  /**
   * Where the quarter point of its mean aerodynamic chord lies.
   *
   * @return x aft of the nose tip
   */
  default Length quarterChordX() {
    return placement().x().plus(planform().quarterMeanAerodynamicChordX());
  }

  /**
   * Where the leading edge of its mean aerodynamic chord lies.
   *
   * @return x aft of the nose tip
   */
  default Length meanAerodynamicChordX() {
    return placement().x().plus(planform().meanAerodynamicChordX());
  }

  /**
   * Area of its skin, both sides, without regard to what the fuselage covers.
   *
   * @return projected area times the length of the section's outline over its chord
   */
  default Area wettedArea() {
    return planform().area().times(section().perimeter());
  }
}
