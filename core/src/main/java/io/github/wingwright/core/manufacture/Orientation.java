// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import java.io.Serializable;
import java.util.Objects;

/**
 * How one part lies in the machine: its length first turned on the bed from the machine's longer side, then raised from the
 * bed; before both it may be rolled about its length: by 90° its width stands up.
 *
 * @param lay how it lies
 * @param turned angle on the bed from the longer side, 0 to 90°
 * @param raised angle from the bed, 0 to 90°; 90° for a part that stands
 * @param rolled angle about its own length, 0 to 180°; at 0 its width is level
 */
public record Orientation(Lay lay, Angle turned, Angle raised, Angle rolled) implements Serializable {
  /** Lying along the longer side of the bed, its depth up. */
  public static final Orientation STRAIGHT = new Orientation(Lay.STRAIGHT, Angle.ZERO, Angle.ZERO, Angle.ZERO);

  /** Standing on its first end. */
  public static final Orientation UPRIGHT = new Orientation(Lay.UPRIGHT, Angle.ZERO, Angle.degrees(90), Angle.ZERO);

  /** Refuses angles beyond a right one. */
  public Orientation {
    Objects.requireNonNull(lay, "lay");
    Door.within(turned, Angle.ZERO, Angle.degrees(90), "angle on the bed");
    Door.within(raised, Angle.ZERO, Angle.degrees(90), "angle from the bed");
    Door.within(rolled, Angle.ZERO, Angle.degrees(180), "roll about the length");
  }

  @Override
  public String toString() {
    String by =
        switch (lay) {
          case STRAIGHT, UPRIGHT -> "";
          case DIAGONAL -> " of " + turned.format(Angle.DEGREE, 3);
          case ON_EDGE -> turned.si() == 0.0 ? "" : " across the bed at a slant of " + turned.format(Angle.DEGREE, 3);
          case RAISED -> ", " + turned.format(Angle.DEGREE, 3) + " across and " + raised.format(Angle.DEGREE, 3) + " up";
        };
    return lay.words() + by;
  }
}
