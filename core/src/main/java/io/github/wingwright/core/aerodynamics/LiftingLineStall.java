// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import java.util.Locale;

/**
 * Where a wing reaches the limit of its sections first.
 *
 * @param station |2y/b| of the first section at its limit [-], 0 at the root, 1 at the tip
 * @param wingLiftCoefficient C_L of the wing at that moment [-]
 * @param sectionLiftCoefficient c_l of that section, its limit [-]
 */
public record LiftingLineStall(double station, double wingLiftCoefficient, double sectionLiftCoefficient) {
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "first at %.0f %% of the half span, c_l %.3f, wing C_L %.3f",
        100 * station, sectionLiftCoefficient, wingLiftCoefficient);
  }
}
