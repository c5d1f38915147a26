// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

/**
 * Lift of one surface all the way round: a straight line up to its usable lift either way, a {@link StalledPlate} behind.
 * Between 90° and 180° it is the plate seen from behind.
 *
 * @param slope slope of the line [1/rad], positive
 * @param zeroLift zero-lift angle of the chord [rad]
 * @param usable usable lift, positive; upside down it is taken as the same
 * @param broadside drag coefficient broadside on
 */
record LiftCurve(double slope, double zeroLift, double usable, double broadside) {
  /** A chord angle at the stall below this would make the plate's formulas blow up [rad]. */
  private static final double LEAST_STALL_ANGLE = 0.03;

  /** Chord angle at the stall, upright or upside down, as a positive number. */
  double stallAngle(boolean upright) {
    double angle = usable / slope + (upright ? zeroLift : -zeroLift);
    return Math.max(LEAST_STALL_ANGLE, angle);
  }

  boolean stalled(double chordAngle) {
    return chordAngle > stallAngle(true) || chordAngle < -stallAngle(false);
  }

  /**
   * Lift coefficient.
   *
   * @param chordAngle angle of the chord to the flow, −π to π
   */
  double lift(double chordAngle) {
    if (!stalled(chordAngle)) {
      return slope * (chordAngle - zeroLift);
    }
    double sign = Math.signum(chordAngle);
    double angle = Math.abs(chordAngle);
    if (angle > 0.5 * Math.PI) {
      return sign * 0.5 * broadside * Math.sin(2.0 * angle);
    }
    double stall = stallAngle(chordAngle > 0.0);
    double edge = slope * (sign * stall - zeroLift) * sign;
    return sign * StalledPlate.lift(broadside, edge, stall, angle);
  }

  /**
   * What a stalled surface drags more than at the edge of its stall; 0 if it is not stalled.
   *
   * @param chordAngle angle of the chord to the flow, −π to π
   * @param edgeDrag drag coefficient at the edge
   */
  double dragBehindStall(double chordAngle, double edgeDrag) {
    double angle = Math.abs(chordAngle);
    double stall = stallAngle(chordAngle > 0.0);
    if (angle > 0.5 * Math.PI) {
      double s = Math.sin(angle);
      return broadside * s * s + edgeDrag * Math.abs(Math.cos(angle));
    }
    return StalledPlate.drag(broadside, edgeDrag, stall, angle);
  }
}
