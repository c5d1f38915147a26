// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import io.github.wingwright.stability.PitchParts;

/**
 * Wing, fuselage and tail at any angle of attack, for one setting of the tail.
 *
 * <p>In attached flow these are the straight lines of the design's own {@link PitchParts} and its drag. Behind the stall the
 * wing is a {@link StalledPlate}, its centre of pressure goes back to 0.4 of the chord within ten degrees and to the middle
 * at 90°, and the downwash at the tail goes with the lift of the wing. The tail stalls by itself. A foreplane feels the upwash
 * of the wing's lift, and the wing the wake of the foreplane's, as in trim.
 */
final class GliderCoefficients implements CoefficientTable.Coefficients {
  /** Up to this angle the moment of the fuselage is a straight line [rad]; further on it goes as sin 2α. */
  private static final double STRAIGHT = 0.35;

  private static final int ROUNDS = 12;
  private static final double EARLY_CENTRE = 0.4;
  private static final double EARLY = Math.toRadians(10.0);

  private final PitchParts parts;
  private final Drag polar;
  private final LiftCurve wing;
  private final LiftCurve tail;
  private final double tailIncidence;
  private final double axis;
  private final double slow;
  private final double viscosity;
  private final double bySlow;
  private final double byFast;

  /** The drag in attached flow with any share of lift between wing and tail. */
  interface Drag {
    /**
     * Drag coefficient.
     *
     * @param wingLift lift coefficient of the wing
     * @param tailLift what the tail lifts, on the wing area
     * @param speed airspeed [m/s]
     * @param viscosity ν [m²/s]
     */
    double coefficient(double wingLift, double tailLift, double speed, double viscosity);
  }

  /**
   * Coefficients for a tail incidence.
   *
   * @param parts the parts of the pitch model
   * @param polar the drag
   * @param tailIncidence i_h [rad]
   * @param axis angle of the fuselage reference line when the angle of the table is zero [rad]
   * @param glideSpeed speed at which the drag is exact [m/s]
   * @param viscosity ν [m²/s]
   */
  GliderCoefficients(
      PitchParts parts, Drag polar, double tailIncidence, double axis, double glideSpeed, double viscosity) {
    this.parts = parts;
    this.polar = polar;
    this.tailIncidence = tailIncidence;
    this.axis = axis;
    this.slow = glideSpeed;
    this.viscosity = viscosity;
    bySlow = 1.0 / Math.sqrt(glideSpeed);
    byFast = 1.0 / Math.sqrt(2.0 * glideSpeed);
    wing = wing(parts);
    tail = tail(parts);
  }

  /** The tail; without one it is a surface of no area, whose curve does not matter. */
  static LiftCurve tail(PitchParts parts) {
    return new LiftCurve(
        parts.hasTail() ? parts.tailSlope() : 1.0,
        parts.tailZeroLift(),
        parts.hasTail() ? parts.tailUsableLift() : 1.0,
        StalledPlate.broadsideDrag(parts.tailAspectRatio()));
  }

  static LiftCurve wing(PitchParts parts) {
    return new LiftCurve(
        parts.wingSlope(),
        parts.wingZeroLift(),
        parts.wingUsableLift(),
        StalledPlate.broadsideDrag(parts.wingAspectRatio()));
  }

  @Override
  public void at(double angle, double[] into) {
    double body = wrapped(angle + axis);
    double free = wrapped(body + parts.wingIncidence());
    double chord = free;
    double lift = wing.lift(chord);
    double tailChord = tailChord(body, lift);
    double tailLift = parts.tailShare() * tail.lift(tailChord);
    // A tail behind the wing leaves it alone. Foreplane and wing feel each other, by some hundredths: it settles at once.
    for (int i = 0; i < ROUNDS && parts.hasForeplane(); i++) {
      chord = wrapped(free - parts.wake() * tailLift);
      lift = wing.lift(chord);
      tailChord = tailChord(body, lift);
      tailLift = parts.tailShare() * tail.lift(tailChord);
    }
    into[0] = lift + tailLift;
    into[1] = wingMoment(chord, lift) + parts.fuselageSlope() * fuselage(body) - tailLift * parts.tailArm();
    drag(chord, lift, tailChord, tailLift, into);
  }

  private double tailChord(double body, double wingLift) {
    return wrapped(body + tailIncidence - parts.downwash() * wingLift / parts.wingSlope());
  }

  private double wingMoment(double chord, double lift) {
    double ahead = parts.centreOfGravity() - parts.wingCentre();
    if (!wing.stalled(chord)) {
      return parts.wingMoment() + lift * ahead;
    }
    double sign = Math.signum(chord);
    double stall = wing.stallAngle(chord > 0.0);
    double edge = wing.slope() * (sign * stall - wing.zeroLift());
    double edgeNormal = normal(sign * stall, edge);
    double edgeCentre = parts.centreOfGravity() - (parts.wingMoment() + edge * ahead) / edgeNormal;
    double beyond = Math.abs(chord) - stall;
    double early = edgeCentre + (EARLY_CENTRE - edgeCentre) * Math.min(1.0, beyond / EARLY);
    double late = Math.max(0.0, Math.min(1.0, (beyond - EARLY) / (Math.PI / 2 - stall - EARLY)));
    double centre = early + (0.5 - EARLY_CENTRE) * late;
    return normal(chord, lift) * (parts.centreOfGravity() - centre);
  }

  /** Force across the chord of the stalled wing, with the drag of the plate alone. */
  private double normal(double chord, double lift) {
    return lift * Math.cos(chord) + wing.broadside() * Math.pow(Math.sin(chord), 2) * Math.sin(chord);
  }

  private static double fuselage(double body) {
    if (Math.abs(body) <= STRAIGHT) {
      return body;
    }
    return STRAIGHT * Math.sin(2.0 * body) / Math.sin(2.0 * STRAIGHT);
  }

  private void drag(double chord, double lift, double tailChord, double tailLift, double[] into) {
    boolean stalled = wing.stalled(chord);
    double sign = Math.signum(chord);
    double edge = stalled ? wing.slope() * (sign * wing.stallAngle(chord > 0.0) - wing.zeroLift()) : lift;
    double most = parts.tailShare() * parts.tailUsableLift();
    double load = Math.max(-most, Math.min(most, tailLift));
    double atSlow = polar.coefficient(edge, load, slow, viscosity);
    double atFast = polar.coefficient(edge, load, 2.0 * slow, viscosity);
    double friction = Math.max(0.0, (atSlow - atFast) / (bySlow - byFast));
    double steady = atSlow - friction * bySlow;
    if (stalled) {
      steady = wing.dragBehindStall(chord, steady);
      friction *= Math.abs(Math.cos(chord)) / Math.cos(wing.stallAngle(chord > 0.0));
    }
    if (tail.stalled(tailChord)) {
      steady += parts.tailShare() * Math.max(0.0, tail.dragBehindStall(tailChord, 0.0));
    }
    into[2] = steady;
    into[3] = friction;
  }

  private static double wrapped(double angle) {
    double whole = 2.0 * Math.PI;
    return angle - whole * Math.rint(angle / whole);
  }
}
