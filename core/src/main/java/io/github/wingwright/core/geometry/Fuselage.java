// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import java.io.Serializable;

/**
 * The fuselage: a body of revolution, its nose tip at the origin.
 *
 * @param shape its family
 * @param length its length
 * @param diameter its greatest diameter
 */
public record Fuselage(BodyShape shape, Length length, Length diameter) implements Serializable {

  /** Refuses a body that its family cannot form. */
  public Fuselage {
    Door.body(shape, length, diameter);
  }

  /**
   * Fineness ratio.
   *
   * @return length over diameter
   */
  public double finenessRatio() {
    return length.dividedBy(diameter);
  }

  /**
   * Enclosed volume.
   *
   * @return V
   */
  public Volume volume() {
    return shape.volume(length, diameter);
  }

  /**
   * Area of the surface.
   *
   * @return S_wet
   */
  public Area wettedArea() {
    return shape.wettedArea(length, diameter);
  }

  /**
   * Area of the greatest cross-section.
   *
   * @return π·d²/4
   */
  public Area frontalArea() {
    return diameter.times(diameter).times(0.25 * Math.PI);
  }

  /**
   * Radius at a station.
   *
   * @param x distance from the nose tip, 0 to the length
   * @return the radius
   */
  public Length radiusAt(Length x) {
    Door.within(x, Length.ZERO, length, "station");
    return Length.metres(shape.radius(x.si(), length.si(), diameter.si()));
  }

  @Override
  public String toString() {
    return "fuselage " + length + " × " + diameter + ", " + shape.name();
  }
}
