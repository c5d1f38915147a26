// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;

/**
 * The slots at the aft end of a body into which flat tails are pushed from behind: a level one for the tailplane, and an
 * upright one above it for the fin, which stands on the tailplane.
 *
 * @param tailplaneFrom where the level slot begins, aft of the nose tip
 * @param finFrom where the upright slot begins
 * @param height height of the middle of the tailplane above the reference line
 * @param width width of both slots: the thickness of the plates and some play
 */
public record TailSlots(Length tailplaneFrom, Length finFrom, Length height, Length width) implements Serializable {

  /** Refuses slots without size. */
  public TailSlots {
    Door.positive(tailplaneFrom, "beginning of the tailplane's slot");
    Door.positive(finFrom, "beginning of the fin's slot");
    Door.finite(height, "height of the tailplane's slot");
    Door.positive(width, "width of the tail slots");
  }

  /**
   * Checks that the level slot lies inside a body.
   *
   * @throws IllegalStateException if it leaves too thin a skin below or above it, or none
   */
  void leaveSkin(BodyFrame frame, double x) {
    double below = height.si() - 0.5 * width.si() - (frame.centre(x) - frame.halfHeight(x));
    double above = frame.centre(x) + frame.halfHeight(x) - (height.si() + 0.5 * width.si());
    double skin = Math.min(below, above);
    if (skin < BodyPin.LEAST_SKIN) {
      throw new IllegalStateException(
          "the tailplane's slot must leave a skin of " + Length.metres(BodyPin.LEAST_SKIN) + " of the body, leaves "
              + Length.metres(skin).format(Length.MILLIMETRE, 3) + (below < above ? " below" : " above") + " it at "
              + Length.metres(x).format(Length.MILLIMETRE, 5) + " from the nose");
    }
  }
}
