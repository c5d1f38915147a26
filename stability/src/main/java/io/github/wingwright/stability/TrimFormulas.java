// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * The formulas of trim: what the tail must lift, and how it must be set to lift that.
 *
 * <p>T is the lift coefficient of the tail on the wing area, T = η_h·(S_h/S)·C_Lh, positive up. Moments about the centre
 * of gravity at h vanish when
 *
 * <pre>{@code
 * C_m,ac + C_mα,f·α + (C_L − T)·(h − h_w) − T·(h_h − h) = 0        α = (C_L − T)/a_w + α_0 − i_w
 * }</pre>
 *
 * <p>with α the angle of the fuselage reference line, α_0 the zero-lift angle and i_w the incidence of the wing.
 */
public final class TrimFormulas {
  /** Tail lift for trim. */
  public static final Formula TAIL_LIFT =
      Formula.named("tail lift for trim, on the wing area")
          .gives("T")
          .as("(C_m + C_L·(h − h_w) + C_f·(C_L/a_w + α_b)) / (h_h − h_w + C_f/a_w)")
          .where("C_m", "moment coefficient of the wing about its aerodynamic centre", -0.5, 0.2)
          .where("C_L", "lift coefficient", -1, 3)
          .where("h", "centre of gravity, fraction of c̄", -1, 2)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("α_b", "angle of the fuselage when the wing has no lift", Angle.RADIAN, -0.4, 0.4)
          .where("h_h", "aerodynamic centre of the tail", -15, 20)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(TrimFormulas::tailLift);

  /** Angle of the wing above its zero-lift angle. */
  public static final Formula WING_ANGLE =
      Formula.named("angle of the wing above its zero-lift angle")
          .gives("α_wa", Angle.RADIAN)
          .as("(C_L − T) / a_w")
          .where("C_L", "lift coefficient", -1, 3)
          .where("T", "tail lift on the wing area", -1, 1)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(TrimFormulas::wingAngle);

  /** Angle of the tail above its zero-lift angle. */
  public static final Formula TAIL_ANGLE =
      Formula.named("angle of the tail above its zero-lift angle")
          .gives("α_ha", Angle.RADIAN)
          .as("T / (η_h·s_h·a_h)")
          .where("T", "tail lift on the wing area", -1, 1)
          .where("η_h", "tail efficiency", 0.3, 1.2)
          .where("s_h", "tail area over wing area", 0.01, 1.5)
          .where("a_h", "lift-curve slope of the tail", NamedUnit.PER_RADIAN, 0.5, 7)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(TrimFormulas::tailAngle);

  /** Decalage. */
  public static final Formula DECALAGE =
      Formula.named("decalage, incidence of the wing less that of the tail")
          .gives("δ", Angle.RADIAN)
          .as("α_0 − α_h0 + (1 − ε_α)·α_wa − α_ha")
          .where("α_0", "zero-lift angle of the wing", Angle.RADIAN, -0.2, 0.1)
          .where("α_h0", "zero-lift angle of the tail", Angle.RADIAN, -0.2, 0.2)
          .where("ε_α", "downwash gradient at the tail", -1, 0.95)
          .where("α_wa", "angle of the wing above its zero-lift angle", Angle.RADIAN, -0.3, 0.6)
          .where("α_ha", "angle of the tail above its zero-lift angle", Angle.RADIAN, -0.6, 0.6)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(TrimFormulas::decalage);

  /** Decalage of a foreplane. */
  public static final Formula FOREPLANE_DECALAGE =
      Formula.named("decalage, incidence of the wing less that of the foreplane")
          .gives("δ", Angle.RADIAN)
          .as("α_0 − α_h0 + (1 − ε_α)·α_wa − α_ha + ε_w")
          .where("α_0", "zero-lift angle of the wing", Angle.RADIAN, -0.2, 0.1)
          .where("α_h0", "zero-lift angle of the foreplane", Angle.RADIAN, -0.2, 0.2)
          .where("ε_α", "downwash gradient at the foreplane, negative", -1, 0)
          .where("α_wa", "angle of the wing above its zero-lift angle", Angle.RADIAN, -0.3, 0.6)
          .where("α_ha", "angle of the foreplane above its zero-lift angle", Angle.RADIAN, -0.6, 0.6)
          .where("ε_w", "downwash of the foreplane at the wing", Angle.RADIAN, -0.2, 0.2)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(TrimFormulas::foreplaneDecalage);

  /** Lift coefficient of the tail on its own area. */
  public static final Formula TAIL_LIFT_COEFFICIENT =
      Formula.named("lift coefficient of the tail on its own area")
          .gives("C_Lh")
          .as("T / (η_h·s_h)")
          .where("T", "tail lift on the wing area", -1, 1)
          .where("η_h", "tail efficiency", 0.3, 1.2)
          .where("s_h", "tail area over wing area", 0.01, 1.5)
          .from(Source.DEFINITION)
          .computedBy(TrimFormulas::tailLiftCoefficient);

  /** Zero-lift angle of a twisted wing. */
  public static final Formula ZERO_LIFT_ANGLE =
      Formula.named("zero-lift angle of the wing against its root chord")
          .gives("α_0", Angle.RADIAN)
          .as("α_s − θ")
          .where("α_s", "zero-lift angle of the section", Angle.RADIAN, -0.2, 0.1)
          .where("θ", "mean twist over the area, negative for washout", Angle.RADIAN, -0.2, 0.2)
          .from(Source.library("the mean twist weighted with chord; a lifting line weights the middle a little more"))
          .computedBy((double section, double twist) -> section - twist);

  static final Formula BODY_ANGLE =
      Formula.named("angle of the fuselage when the wing has no lift")
          .gives("α_b", Angle.RADIAN)
          .as("α_0 − i_w")
          .where("α_0", "zero-lift angle of the wing", Angle.RADIAN, -0.2, 0.1)
          .where("i_w", "incidence of the wing", Angle.RADIAN, -0.2, 0.3)
          .from(Source.DEFINITION)
          .computedBy((double zeroLift, double incidence) -> zeroLift - incidence);

  /** Elevator angle that trims. */
  public static final Formula ELEVATOR =
      Formula.named("elevator angle for trim, trailing edge down positive")
          .gives("δ_e", Angle.RADIAN)
          .as("(C_m0 + C_mα·α) / (V·a_e)")
          .where("C_m0", "moment coefficient at zero angle of attack, elevator neutral", -0.5, 0.5)
          .where("C_mα", "moment slope", NamedUnit.PER_RADIAN, -10, 3)
          .where("α", "angle of attack", Angle.RADIAN, -0.3, 0.5)
          .where("V", "tail volume coefficient about the centre of gravity, times tail efficiency", 0.02, 2)
          .where("a_e", "lift slope of the tail against elevator angle", NamedUnit.PER_RADIAN, 0.2, 6)
          .from(
              Source.fromMemory("Anderson, Introduction to Flight", "chapter 7"))
          .computedBy(TrimFormulas::elevator);

  /** The most forward centre of gravity. */
  public static final Formula FORWARD_LIMIT =
      Formula.named("most forward centre of gravity that the tail can trim, fraction of c̄")
          .gives("h_f")
          .as("h_w + (T·(h_h − h_w + C_f/a_w) − C_m − C_f·(C_L/a_w + α_b)) / C_L")
          .where("T", "least tail lift on the wing area, negative down", -1, 1)
          .where("C_m", "moment coefficient of the wing about its aerodynamic centre", -0.5, 0.2)
          .where("C_L", "greatest lift coefficient", 0.2, 3)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("α_b", "angle of the fuselage when the wing has no lift", Angle.RADIAN, -0.4, 0.4)
          .where("h_h", "aerodynamic centre of the tail", -15, 20)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(TrimFormulas::forwardLimit);

  private TrimFormulas() {}

  /**
   * What the tail must lift, on the wing area.
   *
   * <p>Example: C_m −0.05, C_L 0.6, h 0.35, h_w 0.25, no fuselage, h_h 3.25 give T = 0.0033: a tail that hardly lifts.
   *
   * @param momentCoefficient C_m,ac of the wing, nose-up positive
   * @param liftCoefficient C_L of the aircraft
   * @param centreOfGravity h
   * @param wingCentre h_w
   * @param fuselageSlope C_mα,f [1/rad]
   * @param wingSlope a_w [1/rad], positive
   * @param bodyAngle angle of the fuselage when the wing has no lift, α_0 − i_w [rad]
   * @param tailCentre h_h
   * @return T, positive up
   */
  public static double tailLift(
      double momentCoefficient,
      double liftCoefficient,
      double centreOfGravity,
      double wingCentre,
      double fuselageSlope,
      double wingSlope,
      double bodyAngle,
      double tailCentre) {
    double moment =
        momentCoefficient
            + liftCoefficient * (centreOfGravity - wingCentre)
            + fuselageSlope * (liftCoefficient / wingSlope + bodyAngle);
    return moment / (tailCentre - wingCentre + fuselageSlope / wingSlope);
  }

  /**
   * Angle of the wing above its zero-lift angle.
   *
   * @param liftCoefficient C_L
   * @param tailLift T
   * @param wingSlope a_w [1/rad], positive
   * @return α_wa [rad]
   */
  public static double wingAngle(double liftCoefficient, double tailLift, double wingSlope) {
    return (liftCoefficient - tailLift) / wingSlope;
  }

  /**
   * Angle of the tail above its zero-lift angle.
   *
   * @param tailLift T
   * @param tailEfficiency η_h
   * @param areaRatio S_h/S, positive
   * @param tailSlope a_h [1/rad], positive
   * @return α_ha [rad]
   */
  public static double tailAngle(double tailLift, double tailEfficiency, double areaRatio, double tailSlope) {
    return tailLift / (tailEfficiency * areaRatio * tailSlope);
  }

  /**
   * Decalage: how much more incidence the wing's root chord has than the tail's.
   *
   * @param zeroLiftAngle α_0 of the wing [rad], negative with camber
   * @param tailZeroLiftAngle α_h0 of the tail [rad], zero for a flat one
   * @param downwash ε_α
   * @param wingAngle α_wa [rad]
   * @param tailAngle α_ha [rad]
   * @return i_w − i_h [rad], positive: the tail is set leading edge down against the wing
   */
  public static double decalage(
      double zeroLiftAngle, double tailZeroLiftAngle, double downwash, double wingAngle, double tailAngle) {
    return zeroLiftAngle - tailZeroLiftAngle + (1.0 - downwash) * wingAngle - tailAngle;
  }

  /**
   * Decalage of a foreplane, which presses the wing down and feels its upwash.
   *
   * @param zeroLiftAngle α_0 of the wing [rad]
   * @param foreplaneZeroLiftAngle α_h0 of the foreplane [rad]
   * @param downwash ε_α at the foreplane, negative: upwash
   * @param wingAngle α_wa [rad]
   * @param foreplaneAngle α_ha [rad]
   * @param downwashAtWing ε_w of the foreplane at the wing [rad]
   * @return i_w − i_h [rad], negative as a rule: the foreplane is set leading edge up against the wing
   */
  public static double foreplaneDecalage(
      double zeroLiftAngle,
      double foreplaneZeroLiftAngle,
      double downwash,
      double wingAngle,
      double foreplaneAngle,
      double downwashAtWing) {
    return decalage(zeroLiftAngle, foreplaneZeroLiftAngle, downwash, wingAngle, foreplaneAngle) + downwashAtWing;
  }

  /**
   * Lift coefficient of the tail on its own area.
   *
   * @param tailLift T
   * @param tailEfficiency η_h
   * @param areaRatio S_h/S, positive
   * @return C_Lh
   */
  public static double tailLiftCoefficient(double tailLift, double tailEfficiency, double areaRatio) {
    return tailLift / (tailEfficiency * areaRatio);
  }

  /**
   * Elevator angle that trims: trailing edge down is positive and pitches the nose down.
   *
   * <p>Example: C_m0 = 0.06, C_mα = −0.0133 per degree, α = 6.5°, V = 0.34, a_e = 0.04 per degree give −1.94°: a little up.
   *
   * @param momentAtZero C_m0, elevator neutral
   * @param momentSlope C_mα [1/rad]
   * @param angleOfAttack α [rad]
   * @param tailVolume tail volume coefficient about the centre of gravity, times tail efficiency
   * @param elevatorSlope lift slope of the tail against elevator angle [1/rad]
   * @return δ_e [rad]
   */
  public static double elevator(
      double momentAtZero, double momentSlope, double angleOfAttack, double tailVolume, double elevatorSlope) {
    return (momentAtZero + momentSlope * angleOfAttack) / (tailVolume * elevatorSlope);
  }

  /**
   * The most forward centre of gravity at which the tail can still hold the nose up at the greatest lift.
   *
   * @param leastTailLift T at the tail's greatest download, negative
   * @param momentCoefficient C_m,ac of the wing
   * @param liftCoefficient greatest C_L, positive
   * @param wingCentre h_w
   * @param fuselageSlope C_mα,f [1/rad]
   * @param wingSlope a_w [1/rad]
   * @param bodyAngle α_0 − i_w [rad]
   * @param tailCentre h_h
   * @return h_f, fraction of c̄
   */
  public static double forwardLimit(
      double leastTailLift,
      double momentCoefficient,
      double liftCoefficient,
      double wingCentre,
      double fuselageSlope,
      double wingSlope,
      double bodyAngle,
      double tailCentre) {
    double tail = leastTailLift * (tailCentre - wingCentre + fuselageSlope / wingSlope);
    double body = fuselageSlope * (liftCoefficient / wingSlope + bodyAngle);
    return wingCentre + (tail - momentCoefficient - body) / liftCoefficient;
  }
}
