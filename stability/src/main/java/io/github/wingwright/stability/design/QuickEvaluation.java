// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import java.util.Locale;

/**
 * What a complete quick evaluation gives, on plain numbers in SI: the balance with its mass settled, and the glide.
 *
 * <p>Each number agrees with that of the full {@code Design} made of the same dimensions.
 *
 * @param station leading edge of the wing's root, aft of the nose tip [m]
 * @param horizontalArm l_h [m]
 * @param horizontalArea S_h [m²]
 * @param verticalArm l_v [m]
 * @param verticalArea S_v [m²]
 * @param mass mass with ballast [kg]
 * @param ballast ballast in the nose [kg]
 * @param centreOfGravity x_cg with ballast [m]
 * @param neutralPoint x_np [m]
 * @param staticMargin (x_np − x_cg)/c̄
 * @param wingLoading mass over wing area [kg/m²]
 * @param usableLift lift coefficient at which the polar ends
 * @param stallSpeed V_s [m/s]
 * @param bestGlideLift lift coefficient of the best glide
 * @param bestLiftToDrag lift over drag there
 * @param bestGlideSpeed speed there [m/s]
 * @param leastSinkSpeed speed of the least sink [m/s]
 * @param leastSinkRate sink rate there [m/s]
 */
public record QuickEvaluation(
    double station,
    double horizontalArm,
    double horizontalArea,
    double verticalArm,
    double verticalArea,
    double mass,
    double ballast,
    double centreOfGravity,
    double neutralPoint,
    double staticMargin,
    double wingLoading,
    double usableLift,
    double stallSpeed,
    double bestGlideLift,
    double bestLiftToDrag,
    double bestGlideSpeed,
    double leastSinkSpeed,
    double leastSinkRate) {

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%.4g g, margin %.3g, stall %.3g m/s, L/D %.3g at %.3g m/s, sink %.3g m/s",
        1e3 * mass,
        staticMargin,
        stallSpeed,
        bestLiftToDrag,
        bestGlideSpeed,
        leastSinkRate);
  }
}
