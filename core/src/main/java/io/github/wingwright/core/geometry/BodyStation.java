// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A section of a body at a station.
 *
 * @param x distance aft of the nose tip, positive
 * @param width width, positive
 * @param height height, positive
 * @param centreHeight how high its middle lies above the reference line
 * @param section its shape
 */
public record BodyStation(Length x, Length width, Length height, Length centreHeight, CrossSection section)
    implements Serializable {

  /** Refuses a section without size. */
  public BodyStation {
    Objects.requireNonNull(section, "section");
    Door.positive(x, "station");
    Door.positive(width, "width at station " + x);
    Door.positive(height, "height at station " + x);
    Door.finite(centreHeight, "centre height at station " + x);
  }

  /**
   * A circle on the reference line.
   *
   * @param x distance aft of the nose tip, positive
   * @param diameter its diameter, positive
   * @return the station
   */
  public static BodyStation round(Length x, Length diameter) {
    return new BodyStation(x, diameter, diameter, Length.ZERO, CrossSection.ellipse());
  }
}
