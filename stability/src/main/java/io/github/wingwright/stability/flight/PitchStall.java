// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import io.github.wingwright.stability.PitchParts;

/** At which angle of the fuselage the flow leaves the wing, or the foreplane if that stalls first. */
final class PitchStall {
  private PitchStall() {}

  /**
   * The angle.
   *
   * @param p the parts
   * @param tailIncidence i_h [rad]
   * @param upright upright, or upside down
   * @return angle of the fuselage reference line [rad]
   */
  static double angle(PitchParts p, double tailIncidence, boolean upright) {
    LiftCurve wing = GliderCoefficients.wing(p);
    double stall = upright ? wing.stallAngle(true) : -wing.stallAngle(false);
    if (!p.hasForeplane()) {
      return stall - p.wingIncidence();
    }
    // Of the foreplane: angle = a·body + b, and its lift on the wing area share·slope·(angle − zero).
    double a = 1.0 - p.downwash();
    double b = tailIncidence - p.downwash() * (p.wingIncidence() - p.wingZeroLift());
    // The wake takes from the wing, and so from the upwash at the foreplane.
    double alone = p.wake() * p.tailShare() * p.tailSlope();
    double weaker = 1.0 - p.downwash() * alone;
    double lift = alone / weaker;
    double ofWing = (stall - p.wingIncidence() + lift * (b - p.tailZeroLift())) / (1.0 - lift * a);
    LiftCurve foreplane = GliderCoefficients.tail(p);
    double edge = upright ? foreplane.stallAngle(true) : -foreplane.stallAngle(false);
    double ofForeplane = (p.tailZeroLift() + (edge - p.tailZeroLift()) * weaker - b) / a;
    return upright ? Math.min(ofWing, ofForeplane) : Math.max(ofWing, ofForeplane);
  }
}
