// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;

/**
 * A flat tongue by which the outer end of one piece of a wing reaches into the next.
 *
 * @param chordFrom where it begins along the chord, as a fraction
 * @param chordTo where it ends
 * @param thickness its thickness, positive
 * @param length how far it reaches, positive
 * @param play how much wider the slot for it is on every side, not negative
 */
public record Tongue(double chordFrom, double chordTo, Length thickness, Length length, Length play)
    implements Serializable {
  /** Where the tongue of a wing begins along the chord, as a fraction. */
  static final double FROM = 0.22;

  /** Where it ends. */
  static final double TO = 0.5;

  /** Its thickness over that of the section. */
  static final double THICKNESS = 0.4;

  /** Refuses a tongue without size. */
  public Tongue {
    Door.within(chordFrom, 0.01, 0.99, "beginning of a tongue");
    Door.within(chordTo, chordFrom + 0.01, 0.99, "end of a tongue");
    Door.positive(thickness, "thickness of a tongue");
    Door.positive(length, "length of a tongue");
    Door.notNegative(play, "play of a tongue");
  }

  Tongue withThickness(Length other) {
    return new Tongue(chordFrom, chordTo, other, length, play);
  }
}
