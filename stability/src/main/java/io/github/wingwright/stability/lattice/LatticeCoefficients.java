// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.Locale;
import java.util.Objects;

/**
 * Coefficients of one condition, in stability axes about the moment reference.
 *
 * @param lift C_L, across the flight path in the plane of symmetry, up positive
 * @param sideForce C_Y, to starboard positive
 * @param nearFieldDrag drag from the forces on the panels, C_D; the far wake's figure is the better one
 * @param rollingMoment C_l on span, starboard wing down positive
 * @param pitchingMoment C_m on mean chord, nose up positive
 * @param yawingMoment C_n on span, nose to starboard positive
 */
public record LatticeCoefficients(double lift, double sideForce, double nearFieldDrag, double rollingMoment,
    double pitchingMoment, double yawingMoment) {
  /** One of the six, by its name. */
  public double of(Coefficient coefficient) {
    Objects.requireNonNull(coefficient, "coefficient");
    return switch (coefficient) {
      case LIFT -> lift;
      case SIDE_FORCE -> sideForce;
      case NEAR_FIELD_DRAG -> nearFieldDrag;
      case ROLLING_MOMENT -> rollingMoment;
      case PITCHING_MOMENT -> pitchingMoment;
      case YAWING_MOMENT -> yawingMoment;
    };
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "C_L %.4f C_Y %.4f C_D %.5f C_l %.4f C_m %.4f C_n %.5f", lift, sideForce,
        nearFieldDrag, rollingMoment, pitchingMoment, yawingMoment);
  }
}
