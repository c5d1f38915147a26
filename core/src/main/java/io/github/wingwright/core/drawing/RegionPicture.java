// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.basis.Conflict;
import io.github.wingwright.core.basis.FeasibleRegion;
import java.util.List;
import java.util.Objects;

/**
 * The picture of a feasible region: length across, diameter up, the boundary of each consideration as a line that
 * carries
 * its name, the region that all of them leave, and marked bodies.
 *
 * <p>A line is in ink for a limit, in the accent for a guideline, warm and dashed for what a target would like best;
 * pale
 * and dashed for what was set aside. It is hatched on the side that it refuses. The sides of the region are heavy. A
 * line
 * whose name finds no room carries its number instead; the key below the picture lists them all.
 *
 * <p>Where nothing is left, the lines that clash are warm and heavy, and the advice of {@link Conflict} stands below,
 * with
 * the bodies marked at which one of them would give way.
 *
 * @param title what is shown
 * @param region the region
 * @param marks marked bodies
 */
public record RegionPicture(String title, FeasibleRegion region, List<Mark> marks) {

  /** Keeps its own list. */
  public RegionPicture {
    Objects.requireNonNull(marks, "marks");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(region, "region");
    marks = List.copyOf(marks);
  }

  /** What is special about a marked body. */
  public enum Kind {
    /** The choice of the designer. */
    CHOICE,
    /** The best body inside the region, to compare a choice with. */
    BEST
  }

  /**
   * A marked body.
   *
   * @param label what stands at it, such as {@code "chosen: 300 mm × 28 mm"}
   * @param body the body
   * @param kind what it is
   */
  public record Mark(String label, FeasibleRegion.Point body, Kind kind) {
    /**
     * The choice.
     *
     * @param label what stands at it
     * @param length length [m], positive
     * @param diameter diameter [m], positive
     * @return the mark
     */
    public static Mark choice(String label, double length, double diameter) {
      Objects.requireNonNull(label, "label");
      return new Mark(label, new FeasibleRegion.Point(length, diameter), Kind.CHOICE);
    }

    /**
     * The best body inside.
     *
     * @param label what stands at it
     * @param length length [m], positive
     * @param diameter diameter [m], positive
     * @return the mark
     */
    public static Mark best(String label, double length, double diameter) {
      Objects.requireNonNull(label, "label");
      return new Mark(label, new FeasibleRegion.Point(length, diameter), Kind.BEST);
    }

    /** Refuses what is no body. */
    public Mark {
      Objects.requireNonNull(label, "label");
      Objects.requireNonNull(body, "body");
      Objects.requireNonNull(kind, "kind");
      if (!(body.length() > 0.0 && body.diameter() > 0.0)
          || Double.isInfinite(body.length() + body.diameter())) {
        throw new IllegalArgumentException(
            "marked body must have a positive length and diameter, was "
                + body.length()
                + " m × "
                + body.diameter()
                + " m");
      }
    }
  }

  /**
   * Draws the picture.
   *
   * @return the picture
   */
  public Svg draw() {
    return new RegionChart(this).draw();
  }
}
