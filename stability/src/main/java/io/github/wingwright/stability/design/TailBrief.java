// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import java.io.Serializable;

/**
 * What is asked of a tail surface: a plate whose trailing edge ends with the fuselage.
 *
 * <p>With the tail's area S_h or S_v, its arm l from the quarter point of the wing's mean aerodynamic chord to that of the
 * tail's, and the wing's area S, mean aerodynamic chord c̄ and span b. What is usual for a class,
 * {@link io.github.wingwright.stability.AircraftClass#tailVolume} says: V_h of 0.5 to 0.8 for hand-launched gliders.
 *
 * @param volumeCoefficient V_h = S_h·l_h/(S·c̄), or V_v = S_v·l_v/(S·b); 0.001 to 3
 * @param aspectRatio span squared over area, of a fin its height squared over its area; 0.3 to 20
 * @param taperRatio tip chord over root chord, 0.1 to 1.5
 */
public record TailBrief(double volumeCoefficient, double aspectRatio, double taperRatio) implements Serializable {
  /** Refuses what cannot be a tail. */
  public TailBrief {
    within(volumeCoefficient, 0.001, 3.0, "tail volume coefficient");
    within(aspectRatio, 0.3, 20.0, "tail aspect ratio");
    within(taperRatio, 0.1, 1.5, "tail taper ratio");
  }

  private static void within(double value, double lower, double upper, String name) {
    if (!(value >= lower && value <= upper)) {
      throw new IllegalArgumentException(name + " must be " + lower + " to " + upper + ", was " + value);
    }
  }
}
