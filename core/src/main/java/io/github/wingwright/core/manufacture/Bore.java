// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A straight round hole along the span of a wing: for a spar, a dowel or a tube.
 *
 * <p>It runs from the middle of the section at one station to the middle of the section at the other. A level one keeps the
 * height and the place of its first station, so that one straight pin fits both halves of a wing with dihedral.
 *
 * @param chordPosition place of its axis in fractions of the chord, more than 0 and less than 1
 * @param diameter its diameter, positive: that of the spar and some play
 * @param from where it begins, from the root
 * @param to where it ends, beyond its beginning
 * @param level whether it runs straight across instead of along the panel
 */
public record Bore(double chordPosition, Length diameter, Length from, Length to, boolean level) implements Serializable {

  /** Refuses a hole without size. */
  public Bore {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Door.within(chordPosition, 0.01, 0.99, "chord position of a hole");
    Door.positive(diameter, "diameter of a hole");
    if (!(from.si() < to.si())) {
      throw new IllegalArgumentException("a hole must begin before it ends, was " + from + " to " + to);
    }
  }

  /**
   * A hole along the panels, for a spar.
   *
   * @param chordPosition place of its axis in fractions of the chord
   * @param diameter its diameter
   * @param from where it begins, from the root
   * @param to where it ends
   * @return the hole
   */
  public static Bore along(double chordPosition, Length diameter, Length from, Length to) {
    return new Bore(chordPosition, diameter, from, to, false);
  }

  /**
   * A level hole from the root, for the pin that joins two halves.
   *
   * @param chordPosition place of its axis in fractions of the chord
   * @param diameter its diameter
   * @param depth how deep it is in each half
   * @return the hole
   */
  public static Bore acrossRoot(double chordPosition, Length diameter, Length depth) {
    return new Bore(chordPosition, diameter, Length.ZERO, depth, true);
  }
}
