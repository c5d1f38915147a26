// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * The wing.
 *
 * @param planform its outline, mirrored
 * @param section its section
 * @param placement where the leading edge of its root sits
 * @param incidence angle of its root chord against the fuselage reference line
 */
public record Wing(Planform planform, AirfoilSection section, Placement placement, Angle incidence)
    implements LiftingSurface, Serializable {

  /** Refuses a planform of one half. */
  public Wing {
    Objects.requireNonNull(planform, "planform");
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(placement, "placement");
    Objects.requireNonNull(incidence, "incidence");
    if (!planform.isMirrored()) {
      throw new IllegalArgumentException("planform of a wing must have two halves, was " + planform);
    }
  }

  /**
   * A wing that is not yet placed: its root leading edge at the nose, without incidence.
   *
   * @param planform its outline
   * @param section its section
   * @return the wing
   */
  public static Wing of(Planform planform, AirfoilSection section) {
    return new Wing(planform, section, Placement.at(Length.ZERO, Length.ZERO), Angle.ZERO);
  }

  /**
   * The same wing somewhere else.
   *
   * @param place where the leading edge of its root sits
   * @return the wing
   */
  public Wing placedAt(Placement place) {
    return new Wing(planform, section, place, incidence);
  }

  /**
   * The same wing at another incidence.
   *
   * @param angle angle of its root chord against the fuselage reference line
   * @return the wing
   */
  public Wing withIncidence(Angle angle) {
    return new Wing(planform, section, placement, angle);
  }

  @Override
  public String toString() {
    return "wing " + planform.span() + " × " + planform.meanGeometricChord() + ", " + section.name();
  }
}
