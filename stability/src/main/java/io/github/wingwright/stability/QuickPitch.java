// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.aerodynamics.LiftSlope;

/**
 * Neutral point and trim for studies that evaluate thousands of designs: handbook methods on {@code double}s, without
 * workings and without allocation. {@link PitchModel} gives the same bits with everything that defends them.
 *
 * <p>Symbols as in the package description: A, λ, Λ aspect ratio, taper ratio and sweep of the wing; a₀ slopes of sections;
 * l = l_h/b and z = z_h/b arm and height of the tail over span; s = S_h/S; c̄ over b follows from A and λ of a
 * straight-tapered wing.
 */
public final class QuickPitch {
  private static final double WING_CENTRE = 0.25;

  private QuickPitch() {}

  /**
   * Lift-curve slope of a surface, by the handbook.
   *
   * @param aspectRatio A
   * @param sectionSlope a₀ [1/rad]
   * @param halfChordSweep sweep of the half-chord line [rad]
   * @return a [1/rad]
   */
  public static double slope(double aspectRatio, double sectionSlope, double halfChordSweep) {
    return LiftSlope.handbook(aspectRatio, 1.0, sectionSlope / (2.0 * Math.PI), halfChordSweep);
  }

  /**
   * Mean aerodynamic chord of a straight-tapered wing over its span.
   *
   * @param aspectRatio A, positive
   * @param taperRatio λ
   * @return c̄/b
   */
  public static double chordOverSpan(double aspectRatio, double taperRatio) {
    double sum = 1.0 + taperRatio;
    return 4.0 / 3.0 * (1.0 + taperRatio + taperRatio * taperRatio) / (aspectRatio * sum * sum);
  }

  /**
   * Neutral point with the handbook's downwash.
   *
   * @param wingSlope a_w [1/rad], from {@link #slope}
   * @param aspectRatio A of the wing
   * @param taperRatio λ of the wing
   * @param sweep Λ of the quarter-chord line [rad]
   * @param fuselageSlope C_mα,f [1/rad], from {@link FuselageMoment}
   * @param tailEfficiency η_h
   * @param areaRatio S_h/S
   * @param tailSlope a_h [1/rad]
   * @param arm l_h/b, positive
   * @param height z_h/b
   * @return h_n, fraction of c̄
   */
  public static double neutralPoint(
      double wingSlope,
      double aspectRatio,
      double taperRatio,
      double sweep,
      double fuselageSlope,
      double tailEfficiency,
      double areaRatio,
      double tailSlope,
      double arm,
      double height) {
    double downwash = DownwashFormulas.handbook(aspectRatio, taperRatio, sweep, arm, height);
    double tailCentre = WING_CENTRE + arm / chordOverSpan(aspectRatio, taperRatio);
    return NeutralPoint.position(
        wingSlope, WING_CENTRE, fuselageSlope, tailEfficiency, areaRatio, tailSlope, downwash, tailCentre);
  }

  /**
   * Decalage for trim.
   *
   * @param liftCoefficient C_L to trim at
   * @param centreOfGravity h, fraction of c̄
   * @param momentCoefficient C_m of the wing about its aerodynamic centre
   * @param zeroLiftAngle α_0 of the wing [rad]
   * @param tailZeroLiftAngle α_h0 of the tail [rad]
   * @param wingIncidence i_w [rad]
   * @param wingSlope a_w [1/rad]
   * @param fuselageSlope C_mα,f [1/rad]
   * @param tailEfficiency η_h
   * @param areaRatio S_h/S, positive
   * @param tailSlope a_h [1/rad]
   * @param downwash ε_α
   * @param tailCentre h_h
   * @return i_w − i_h [rad]
   */
  public static double decalage(
      double liftCoefficient,
      double centreOfGravity,
      double momentCoefficient,
      double zeroLiftAngle,
      double tailZeroLiftAngle,
      double wingIncidence,
      double wingSlope,
      double fuselageSlope,
      double tailEfficiency,
      double areaRatio,
      double tailSlope,
      double downwash,
      double tailCentre) {
    double t =
        TrimFormulas.tailLift(
            momentCoefficient,
            liftCoefficient,
            centreOfGravity,
            WING_CENTRE,
            fuselageSlope,
            wingSlope,
            zeroLiftAngle - wingIncidence,
            tailCentre);
    return TrimFormulas.decalage(
        zeroLiftAngle,
        tailZeroLiftAngle,
        downwash,
        TrimFormulas.wingAngle(liftCoefficient, t, wingSlope),
        TrimFormulas.tailAngle(t, tailEfficiency, areaRatio, tailSlope));
  }
}
