// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.List;

/**
 * A wedge that goes between a wing and its seat and raises the leading edge, or the trailing edge by a negative angle:
 * decalage by trial. It is as wide as the seat and bent as the wing is; it begins below the leading edge, at x = 0.
 */
public final class ShimSolid implements Solid {
  /** A steeper wedge is as thick as a fifth of its length: the wing then belongs onto another seat. */
  public static final Angle STEEPEST = Angle.degrees(10);

  private final double length;
  private final double halfWidth;
  private final double thin;
  private final double angle;
  private final double dihedral;

  private ShimSolid(double length, double halfWidth, double thin, double angle, double dihedral) {
    this.length = length;
    this.halfWidth = halfWidth;
    this.thin = thin;
    this.angle = angle;
    this.dihedral = dihedral;
  }

  /**
   * A shim.
   *
   * @param length its length along the chord, positive
   * @param width its width, positive
   * @param thinEnd thickness of its thin end, positive
   * @param angle how much it raises the leading edge, −10° to 10°; a negative one is thickest aft
   * @param dihedral slope of the seat it lies in, 0° to 45°
   * @return the shim
   */
  public static ShimSolid of(Length length, Length width, Length thinEnd, Angle angle, Angle dihedral) {
    Door.positive(length, "length of a shim");
    Door.positive(width, "width of a shim");
    Door.positive(thinEnd, "thin end of a shim");
    Door.within(angle, Angle.degrees(-10), STEEPEST, "angle of a shim");
    Door.within(dihedral, Angle.ZERO, Angle.degrees(45), "slope of a shim");
    return new ShimSolid(length.si(), 0.5 * width.si(), thinEnd.si(), angle.tangent(), dihedral.tangent());
  }

  @Override
  public TriangleMesh mesh(Length tolerance) {
    Curves.tolerance(tolerance);
    // Below from port to starboard, above back.
    int[] loop = {0, 1, 2, 3, 4, 5};
    return SlabStack.mesh(
        0,
        List.of(new SlabStack.Slab(new double[] {0.0, length}, List.of(loop))),
        false,
        false,
        (key, x, p) -> {
          double side = key == 1 || key == 4 ? 0.0 : key == 2 || key == 3 ? 1.0 : -1.0;
          p[0] = x;
          p[1] = side * halfWidth;
          p[2] = Math.abs(side) * halfWidth * dihedral + (key < 3 ? 0.0 : thin + (angle > 0.0 ? length - x : -x) * angle);
        });
  }

  @Override
  public String toString() {
    return "shim of " + Angle.radians(Math.atan(angle)) + ", " + Length.metres(length) + " long";
  }
}
