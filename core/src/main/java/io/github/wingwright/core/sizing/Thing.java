// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.io.Serializable;
import java.util.Objects;

/**
 * Something that goes inside a body: a box, a cylinder or a sphere, its middle on the middle line of the body.
 *
 * <p>In a section W × H, inside wall and clearance, a box w × h fits where its corners lie in the ellipse W × H,
 *
 * <pre>{@code (w/W)² + (h/H)² ≤ 1}</pre>
 *
 * <p>which in a round section is the circle over its diagonal; a cylinder or a sphere fits into the circle inside the section.
 *
 * @param name what it is
 * @param form its form
 * @param length length along the axis
 * @param width greatest width across
 * @param height greatest height across
 * @param mass its mass, not negative
 */
public record Thing(String name, Form form, Length length, Length width, Length height, Mass mass)
    implements Serializable {

  /** The forms. */
  public enum Form {
    /** A box, level. */
    BOX,
    /** A cylinder along the axis. */
    CYLINDER,
    /** A sphere, whose ends need less room. */
    SPHERE
  }

  /** Refuses what has no size, and what is round but not as wide as high. */
  public Thing {
    Objects.requireNonNull(form, "form");
    Door.said(name, "name of the thing");
    Door.positive(length, "length of " + name);
    Door.positive(width, "width of " + name);
    Door.positive(height, "height of " + name);
    Door.notNegative(mass, "mass of " + name);
    if (form != Form.BOX && !width.equals(height)) {
      throw new IllegalArgumentException("width and height of " + name + " must be equal, were " + width + " and " + height);
    }
  }

  /**
   * A box, its longest side along the axis if it is given first.
   *
   * @param name what it is
   * @param length length along the axis, positive
   * @param width width across, positive
   * @param height height across, positive
   * @param mass its mass
   * @return the thing
   */
  public static Thing box(String name, Length length, Length width, Length height, Mass mass) {
    return new Thing(name, Form.BOX, length, width, height, mass);
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
    return new Thing(name, Form.CYLINDER, length, diameter, diameter, mass);
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
    return new Thing(name, Form.SPHERE, diameter, diameter, diameter, mass);
  }

  /**
   * The radius that it needs in a round section.
   *
   * @return of a box half its diagonal across
   */
  public Length radius() {
    return form == Form.BOX ? Length.metres(0.5 * Math.hypot(width.si(), height.si())) : width.times(0.5);
  }

  /**
   * The radius that it needs in a round section at a distance from its front.
   *
   * @param from distance from its front [m], 0 to its length
   * @return radius [m]
   */
  double radiusAt(double from) {
    double r = radius().si();
    return form == Form.SPHERE ? Math.sqrt(Math.max(0.0, from * (2.0 * r - from))) : r;
  }

  /**
   * Whether it fits into a section at a distance from its front.
   *
   * @param from distance from its front [m], 0 to its length
   * @param clearWidth width of the section inside wall and clearance [m]
   * @param clearHeight height of the section inside wall and clearance [m]
   * @param aside how far the section lies above or below its own middle [m], not negative
   * @return true if it does
   */
  boolean fits(double from, double clearWidth, double clearHeight, double aside) {
    double free = clearHeight - 2.0 * aside;
    if (!(clearWidth > 0.0) || !(free > 0.0)) {
      return false;
    }
    if (form == Form.BOX) {
      double w = width.si() / clearWidth;
      double h = height.si() / free;
      return w * w + h * h <= 1.0;
    }
    double needed = form == Form.SPHERE ? 2.0 * Math.sqrt(Math.max(0.0, from * (width.si() - from))) : width.si();
    return needed <= Math.min(clearWidth, free);
  }

  @Override
  public String toString() {
    String across = form == Form.BOX ? width + " × " + height : "⌀ " + width;
    return name + " " + length + " × " + across + ", " + mass;
  }
}
