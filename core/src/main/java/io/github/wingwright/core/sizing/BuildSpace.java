// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.geometry.Inscribed;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;

/**
 * The space of the machine, as far as it concerns one long round part: lying on the bed, straight or at a slant, or
 * standing.
 *
 * <p>A part of length p and width w lying at an angle θ to the side a takes p·cos θ + w·sin θ of a and p·sin θ + w·cos θ of
 * b. The longest part of a width is found where both sides are used up:
 *
 * <pre>{@code
 * a·sin θ − b·cos θ = w·(sin²θ − cos²θ)        p = (a − w·sin θ)/cos θ
 * }</pre>
 *
 * <p>On a square bed θ = 45° and p = √2·a − w. Subtract what skirts and clips take before.
 */
public final class BuildSpace {
  private BuildSpace() {}

  /**
   * The longest part of a width that lies on a bed, straight or at a slant.
   *
   * @param a one side of the bed [m], positive
   * @param b the other side of the bed [m], positive
   * @param width width of the part [m], not negative
   * @return p [m]; 0 if the part is wider than the bed. A bed of 250 mm × 210 mm takes 297.1082 mm of 30 mm width
   */
  public static double longestLying(double a, double b, double width) {
    return Inscribed.longestRectangle(a, b, width);
  }

  /** The longest piece that lies or stands in the space [m]. */
  static double longestPiece(double a, double b, double height, double width) {
    double lying = width > height ? 0.0 : longestLying(a, b, width);
    double standing = width <= Math.min(a, b) ? height : 0.0;
    return Math.max(lying, standing);
  }

  /**
   * The body must come out of the machine: a limit that couples length and diameter, because a thicker part lies less
   * slanted.
   *
   * @param a one side of the bed, positive
   * @param b the other side of the bed, positive
   * @param height height of the space, positive
   * @param segments greatest number of pieces, at least 1
   * @param joint length by which two pieces overlap in a joint, not negative
   * @return length ≤ segments·longest(d) − (segments − 1)·joint
   */
  public static Consideration fitsInto(Length a, Length b, Length height, int segments, Length joint) {
    Door.positive(a, "side of the bed");
    Door.positive(b, "side of the bed");
    Door.positive(height, "height of the build space");
    Door.notNegative(joint, "overlap of a joint");
    if (segments < 1) {
      throw new IllegalArgumentException("segments must be at least 1, was " + segments);
    }
    String pieces = segments == 1 ? "in one piece" : "in " + segments + " segments";
    return new BodyMargin(
        Wording.of("fits into ").and(a).and(" × ").and(b).and(" × ").and(height).and(" " + pieces),
        Strength.LIMIT,
        Source.BRIEF,
        (length, diameter) -> {
          double piece = longestPiece(a.si(), b.si(), height.si(), diameter);
          return MarginFormulas.above(MarginFormulas.segmented(segments, piece, joint.si()), length);
        },
        (length, diameter, unit) -> {
          double piece = (length + (segments - 1) * joint.si()) / segments;
          double most = longestPiece(a.si(), b.si(), height.si(), diameter);
          String longer = "with pieces of " + Advised.up(piece, unit, 4);
          if (!(most > joint.si())) {
            return longer;
          }
          int more = (int) Math.ceil((length - joint.si()) / (most - joint.si()) - 1e-9);
          return longer + ", or with " + more + " segments";
        })
        .reckonedBy((length, diameter) -> FitSteps.machine(a, b, height, segments, joint, length, diameter));
  }
}
