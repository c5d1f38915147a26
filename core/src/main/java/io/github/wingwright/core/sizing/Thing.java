// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.io.Serializable;

/**
 * Something that goes inside a body: a box, a cylinder or a sphere, its middle on the axis.
 *
 * @param name what it is
 * @param length length along the axis
 * @param radius radius of the circle around its greatest section
 * @param round whether it is a sphere, so that its ends need less room
 * @param mass its mass, not negative
 */
public record Thing(String name, Length length, Length radius, boolean round, Mass mass) implements Serializable {

  /** Refuses what has no size. */
  public Thing {
    Door.said(name, "name of the thing");
    Door.positive(length, "length of " + name);
    Door.positive(radius, "radius of " + name);
    Door.notNegative(mass, "mass of " + name);
  }

  /**
   * A box, its longest side along the axis if it is given first.
   *
   * @param name what it is
   * @param length length along the axis, positive
   * @param width width across, positive
   * @param height height across, positive
   * @param mass its mass
   * @return the thing; its section needs the circle over its diagonal
   */
  public static Thing box(String name, Length length, Length width, Length height, Mass mass) {
    Door.positive(width, "width of " + name);
    Door.positive(height, "height of " + name);
    Length around = Length.metres(0.5 * Math.hypot(width.si(), height.si()));
    return new Thing(name, length, around, false, mass);
  }

  /**
   * A cylinder along the axis.
   *
   * @param name what it is
   * @param length its length, positive
   * @param diameter its diameter, positive
   * @param mass its mass
   * @return the thing
   */
  public static Thing cylinder(String name, Length length, Length diameter, Mass mass) {
    return new Thing(name, length, diameter.times(0.5), false, mass);
  }

  /**
   * A sphere.
   *
   * @param name what it is
   * @param diameter its diameter, positive
   * @param mass its mass
   * @return the thing
   */
  public static Thing sphere(String name, Length diameter, Mass mass) {
    return new Thing(name, diameter, diameter.times(0.5), true, mass);
  }

  /**
   * The radius that it needs at a distance from its front.
   *
   * @param from distance from its front [m], 0 to its length
   * @return radius [m]
   */
  double radiusAt(double from) {
    double r = radius.si();
    return round ? Math.sqrt(Math.max(0.0, from * (2.0 * r - from))) : r;
  }

  @Override
  public String toString() {
    return name + " " + length + " × " + radius.times(2.0) + ", " + mass;
  }
}
