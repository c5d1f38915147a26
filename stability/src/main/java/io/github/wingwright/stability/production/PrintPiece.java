// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.manufacture.Lay;
import io.github.wingwright.core.manufacture.MeshBox;
import io.github.wingwright.core.manufacture.Orientation;
import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.PrintItem;
import io.github.wingwright.core.quantity.Angle;
import java.util.EnumSet;

/**
 * A part or a piece of one, and how it is printed.
 *
 * @param part the part in the axes of the airframe
 * @param making how it is made; the same words go on the same bed
 * @param laid the part as it lies in the machine
 */
record PrintPiece(Part part, String making, Part laid) {
  /** On a flat side: below, a shim is bent as the wing is. */
  private static final Orientation ON_ITS_SIDE =
      new Orientation(Lay.ON_EDGE, Angle.ZERO, Angle.ZERO, Angle.degrees(90));

  static final String SOLID = "all layers solid";

  /** Straight on the bed, or at a slant where the shim is longer than that. */
  static PrintPiece shim(Part part, BuildVolume machine) {
    MeshBox box = part.check().box();
    Orientation lying =
        machine.orientation(box.length(), box.width(), box.height(), EnumSet.of(Lay.ON_EDGE)).orElse(ON_ITS_SIDE);
    return new PrintPiece(part, SOLID, part.lying(lying, 0));
  }

  /** A part in one piece; one that the machine cannot make at all lies flat. */
  static PrintPiece whole(Part part, PrintItem item) {
    return item.pieces().segments().isEmpty()
        ? new PrintPiece(part, making(item), part.lying(Orientation.STRAIGHT, axis(item)))
        : of(part, item, 0);
  }

  static PrintPiece of(Part part, PrintItem item, int number) {
    Orientation lying = item.pieces().segments().get(number).orientation();
    return new PrintPiece(part, making(item), part.lying(lying, axis(item)));
  }

  private static String making(PrintItem item) {
    return item.pieces().part().wall().isPositive() ? item.making() : SOLID;
  }

  /** A body is long aft, everything else along the span. */
  private static int axis(PrintItem item) {
    return item.name().equals("fuselage") ? 0 : 1;
  }
}
