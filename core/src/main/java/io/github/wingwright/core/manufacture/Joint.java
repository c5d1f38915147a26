// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Moment;
import java.io.Serializable;
import java.util.Objects;

/**
 * A joint between two segments of a part.
 *
 * @param kind tongue, dowels or tube
 * @param at where the seam is, along the part from its first end
 * @param overlap how deep it goes into each segment
 * @param size diameter of the dowels or the tube; thickness of a tongue
 * @param clearance gap all around, per side
 * @param added mass that it adds to the part
 * @param bending bending moment that it has to carry
 * @param capacity bending moment at which it would break
 */
public record Joint(
    JointKind kind,
    Length at,
    Length overlap,
    Length size,
    Length clearance,
    Mass added,
    Moment bending,
    Moment capacity)
    implements Serializable {

  /** Refuses what has no size. */
  public Joint {
    Objects.requireNonNull(kind, "kind");
    Door.notNegative(at, "place of the joint");
    Door.positive(overlap, "overlap of the joint");
    Door.positive(size, "size of the joint");
    Door.notNegative(clearance, "clearance of the joint");
    Door.notNegative(added, "mass of the joint");
    Door.finite(bending, "bending moment at the joint");
    Door.notNegative(capacity, "moment that the joint carries");
  }

  /**
   * The lightest joint that fits into a part at a place and carries twice what bends it there; the strongest that fits if
   * none does.
   *
   * @param part the part
   * @param at where, along the part from its first end
   * @return the joint
   */
  public static Joint lightest(SlenderPart part, Length at) {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(at, "at");
    return new JointChoice(part).at(at.si(), part.length().si());
  }

  /**
   * How far it goes into the piece behind the seam.
   *
   * @return the end of its hole, along the part from its first end
   */
  public Length reach() {
    return at.plus(overlap).plus(clearance);
  }

  /**
   * How many times its bending moment it carries.
   *
   * @return the reserve; infinite where nothing bends it
   */
  public double reserve() {
    return bending.si() == 0.0 ? Double.POSITIVE_INFINITY : capacity.si() / Math.abs(bending.si());
  }

  @Override
  public String toString() {
    return kind.words()
        + " of "
        + size.format(Length.MILLIMETRE, 3)
        + " at "
        + at.format(Length.MILLIMETRE, 4)
        + ", "
        + overlap.format(Length.MILLIMETRE, 3)
        + " deep each side";
  }
}
