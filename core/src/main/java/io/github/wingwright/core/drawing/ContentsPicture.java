// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.Objects;

/**
 * A body from the side with what is inside: boxes, cylinders, spheres and seats, each with the clearance around it,
 * and the
 * lines that a layout is judged by: the sight over the nose, the ground, the rotation about the wheels.
 *
 * <p>Stations x are measured aft of the nose tip, heights z up from the axis of the nose.
 *
 * <pre>{@code
 * new ContentsPicture("survey aeroplane", BodyProfile.of(body).withWall(millimetres(1.2)),
 *     List.of(Item.box("battery 62 g", millimetres(30), Length.ZERO, millimetres(70), millimetres(18))),
 *     List.of(SightLine.ground("ground", millimetres(-90), Length.ZERO, millimetres(900))),
 *     List.of(Mark.centreOfGravity("contents", millimetres(120), Length.ZERO)),
 *     Length.MILLIMETRE).draw();
 * }</pre>
 *
 * @param title what is shown
 * @param body the body
 * @param items what is inside, or hangs below
 * @param lines lines to judge it by
 * @param marks marked points
 * @param unit unit of the dimensions
 */
public record ContentsPicture(
    String title,
    BodyProfile body,
    List<Item> items,
    List<SightLine> lines,
    List<Mark> marks,
    NamedUnit<Length> unit) {

  /** Keeps its own lists. */
  public ContentsPicture {
    Objects.requireNonNull(items, "items");
    Objects.requireNonNull(lines, "lines");
    Objects.requireNonNull(marks, "marks");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(unit, "unit");
    items = List.copyOf(items);
    lines = List.copyOf(lines);
    marks = List.copyOf(marks);
  }

  /** What an item looks like from the side. */
  public enum Form {
    /** A box. */
    BOX,
    /** A cylinder along the axis. */
    CYLINDER,
    /** A sphere. */
    SPHERE,
    /** A seat with somebody on it, facing forward. */
    SEAT,
    /** A wheel. */
    WHEEL
  }

  /**
   * Something inside the body.
   *
   * @param name what stands at it; may be empty
   * @param form what it looks like
   * @param front distance of its front from the nose tip
   * @param middle height of its middle
   * @param length its length, positive
   * @param height its height, positive
   * @param clearance room to keep around it, not negative
   */
  public record Item(
      String name,
      Form form,
      Length front,
      Length middle,
      Length length,
      Length height,
      Length clearance) {
    /** Refuses what has no size. */
    public Item {
      Objects.requireNonNull(length, "length");
      Objects.requireNonNull(height, "height");
      Objects.requireNonNull(clearance, "clearance");
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(form, "form");
      Objects.requireNonNull(front, "front");
      Objects.requireNonNull(middle, "middle");
      Door.positive(length, "length of the item");
      Door.positive(height, "height of the item");
      Door.notNegative(clearance, "clearance");
    }

    /**
     * A box.
     *
     * @param name what stands at it
     * @param front distance of its front from the nose tip
     * @param middle height of its middle
     * @param length its length
     * @param height its height
     * @return the item, without clearance
     */
    public static Item box(String name, Length front, Length middle, Length length, Length height) {
      Objects.requireNonNull(length, "length");
      Objects.requireNonNull(height, "height");
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(front, "front");
      Objects.requireNonNull(middle, "middle");
      return new Item(name, Form.BOX, front, middle, length, height, Length.ZERO);
    }

    /**
     * A cylinder along the axis.
     *
     * @param name what stands at it
     * @param front distance of its front from the nose tip
     * @param middle height of its axis
     * @param length its length
     * @param diameter its diameter
     * @return the item, without clearance
     */
    public static Item cylinder(
        String name, Length front, Length middle, Length length, Length diameter) {
      Objects.requireNonNull(length, "length");
      Objects.requireNonNull(diameter, "diameter");
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(front, "front");
      Objects.requireNonNull(middle, "middle");
      return new Item(name, Form.CYLINDER, front, middle, length, diameter, Length.ZERO);
    }

    /**
     * A sphere.
     *
     * @param name what stands at it
     * @param front distance of its front from the nose tip
     * @param middle height of its middle
     * @param diameter its diameter
     * @return the item, without clearance
     */
    public static Item sphere(String name, Length front, Length middle, Length diameter) {
      Objects.requireNonNull(diameter, "diameter");
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(front, "front");
      Objects.requireNonNull(middle, "middle");
      return new Item(name, Form.SPHERE, front, middle, diameter, diameter, Length.ZERO);
    }

    /**
     * A seat with somebody on it.
     *
     * @param name what stands at it
     * @param front where the feet are, from the nose tip
     * @param floor height of the floor
     * @param length from the feet to behind the back
     * @param height from the floor to the top of the head
     * @return the item, without clearance
     */
    public static Item seat(String name, Length front, Length floor, Length length, Length height) {
      Objects.requireNonNull(floor, "floor");
      Objects.requireNonNull(length, "length");
      Objects.requireNonNull(height, "height");
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(front, "front");
      return new Item(
          name, Form.SEAT, front, floor.plus(height.times(0.5)), length, height, Length.ZERO);
    }

    /**
     * A wheel.
     *
     * @param name what stands at it
     * @param axle distance of the axle from the nose tip
     * @param ground height of the ground that it stands on
     * @param diameter its diameter
     * @return the item
     */
    public static Item wheel(String name, Length axle, Length ground, Length diameter) {
      Objects.requireNonNull(axle, "axle");
      Objects.requireNonNull(ground, "ground");
      Objects.requireNonNull(diameter, "diameter");
      Objects.requireNonNull(name, "name");
      Length radius = diameter.times(0.5);
      return new Item(
          name,
          Form.WHEEL,
          axle.minus(radius),
          ground.plus(radius),
          diameter,
          diameter,
          Length.ZERO);
    }

    /**
     * The same with room around it, drawn dashed.
     *
     * @param room room to keep, not negative
     * @return the item
     */
    public Item withClearance(Length room) {
      Objects.requireNonNull(room, "room");
      return new Item(name, form, front, middle, length, height, room);
    }
  }

  /** What a line is about. */
  public enum Style {
    /** A line of sight. */
    SIGHT,
    /** The ground. */
    GROUND,
    /** The ground as the aeroplane rotates. */
    ROTATION
  }

  /**
   * A straight line with a name.
   *
   * @param label its name
   * @param style what it is about
   * @param fromX station where it begins
   * @param fromZ height where it begins
   * @param toX station where it ends
   * @param toZ height where it ends
   */
  public record SightLine(
      String label, Style style, Length fromX, Length fromZ, Length toX, Length toZ) {
    public SightLine {
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(style, "style");
      Objects.requireNonNull(fromX, "fromX");
      Objects.requireNonNull(fromZ, "fromZ");
      Objects.requireNonNull(toX, "toX");
      Objects.requireNonNull(toZ, "toZ");
    }

    /**
     * The lowest line of sight over the nose.
     *
     * @param label its name, such as {@code "10° over the nose"}
     * @param eyeX station of the eye
     * @param eyeZ height of the eye
     * @param down angle below the horizon
     * @param toX station to draw it to, ahead of the eye; ahead of the nose tip if negative
     * @return the line
     */
    public static SightLine vision(String label, Length eyeX, Length eyeZ, Angle down, Length toX) {
      Objects.requireNonNull(eyeX, "eyeX");
      Objects.requireNonNull(eyeZ, "eyeZ");
      Objects.requireNonNull(down, "down");
      Objects.requireNonNull(toX, "toX");
      Objects.requireNonNull(label, "label");
      Length drop = eyeX.minus(toX).times(down.tangent());
      return new SightLine(label, Style.SIGHT, eyeX, eyeZ, toX, eyeZ.minus(drop));
    }

    /**
     * The ground below the aeroplane.
     *
     * @param label its name
     * @param z its height
     * @param fromX station where it begins
     * @param toX station where it ends
     * @return the line
     */
    public static SightLine ground(String label, Length z, Length fromX, Length toX) {
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(z, "z");
      Objects.requireNonNull(fromX, "fromX");
      Objects.requireNonNull(toX, "toX");
      return new SightLine(label, Style.GROUND, fromX, z, toX, z);
    }

    /**
     * The ground as it is seen from an aeroplane that rotates about its wheels: nothing may reach below.
     *
     * @param label its name, such as {@code "rotation 12°"}
     * @param wheelX station where the wheels touch
     * @param groundZ height of the ground
     * @param angle angle of rotation
     * @param toX station to draw it to, aft of the wheels
     * @return the line
     */
    public static SightLine rotation(
        String label, Length wheelX, Length groundZ, Angle angle, Length toX) {
      Objects.requireNonNull(wheelX, "wheelX");
      Objects.requireNonNull(groundZ, "groundZ");
      Objects.requireNonNull(angle, "angle");
      Objects.requireNonNull(toX, "toX");
      Objects.requireNonNull(label, "label");
      Length rise = toX.minus(wheelX).times(angle.tangent());
      return new SightLine(label, Style.ROTATION, wheelX, groundZ, toX, groundZ.plus(rise));
    }
  }

  /**
   * A marked point.
   *
   * @param label what stands at it
   * @param x its station
   * @param z its height
   * @param centreOfGravity whether it carries the symbol of a centre of gravity
   */
  public record Mark(String label, Length x, Length z, boolean centreOfGravity) {
    public Mark {
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(z, "z");
    }

    /**
     * A point, such as the pilot's eye.
     *
     * @param label what stands at it
     * @param x its station
     * @param z its height
     * @return the mark
     */
    public static Mark point(String label, Length x, Length z) {
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(z, "z");
      return new Mark(label, x, z, false);
    }

    /**
     * A centre of gravity.
     *
     * @param label what stands at it
     * @param x its station
     * @param z its height
     * @return the mark
     */
    public static Mark centreOfGravity(String label, Length x, Length z) {
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(x, "x");
      Objects.requireNonNull(z, "z");
      return new Mark(label, x, z, true);
    }
  }

  /**
   * Draws the picture, at the largest of the recommended scales at which it keeps within a page.
   *
   * @return the picture
   */
  public Svg draw() {
    return ContentsSheet.draw(this);
  }
}
