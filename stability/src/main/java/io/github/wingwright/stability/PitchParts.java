// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.quantity.Length;

/**
 * Lift and pitching moment part by part, as plain numbers: what a flight with pitch needs of a {@link PitchModel}.
 *
 * <p>Places are fractions of the mean aerodynamic chord behind its leading edge; coefficients are on wing area and mean
 * chord; angles are against the fuselage reference line.
 *
 * @param wingSlope a_w [1/rad]
 * @param wingZeroLift zero-lift angle of the wing's root chord α_0 [rad]
 * @param wingIncidence i_w [rad]
 * @param wingMoment C_m,ac about the aerodynamic centre
 * @param wingCentre h_w
 * @param wingAspectRatio A
 * @param wingUsableLift usable lift of the wing's section at its Reynolds number
 * @param fuselageSlope C_mα,f [1/rad]
 * @param tailShare η_h·S_h/S, which turns the tail's own lift coefficient into one on the wing area
 * @param tailSlope a_h [1/rad]
 * @param tailZeroLift α_h0 [rad]
 * @param tailCentre h_h
 * @param tailAspectRatio A_h
 * @param tailUsableLift usable lift of the tail's section at its Reynolds number
 * @param downwash ε_α
 * @param centreOfGravity h
 */
public record PitchParts(
    double wingSlope,
    double wingZeroLift,
    double wingIncidence,
    double wingMoment,
    double wingCentre,
    double wingAspectRatio,
    double wingUsableLift,
    double fuselageSlope,
    double tailShare,
    double tailSlope,
    double tailZeroLift,
    double tailCentre,
    double tailAspectRatio,
    double tailUsableLift,
    double downwash,
    double centreOfGravity) {

  /**
   * The parts of a model.
   *
   * @param model wing, fuselage and a tail behind the wing, with section data of both
   * @param centreOfGravity aft of the nose tip
   * @return its parts
   * @throws IllegalStateException if there is no tail behind the wing, or section data are missing
   */
  public static PitchParts of(PitchModel model, Length centreOfGravity) {
    PitchTerms t = model.terms();
    if (!t.hasTail || t.hasForeplane) {
      throw new IllegalStateException("the parts of pitch need a horizontal tail behind the wing, the airframe has none");
    }
    TrimInputs inputs = new TrimInputs(model, t);
    PitchChoices.Section wing = inputs.wing;
    PitchChoices.Section tail = model.choices.neededTailSection();
    return new PitchParts(
        t.wingAlone.value(),
        inputs.zeroLift.value(),
        model.airframe().wing().incidence().si(),
        inputs.moment.value(),
        t.wingCentre.value(),
        t.aspectRatio.value(),
        wing.polar().usableLift(wing.reynolds()).likely(),
        t.fuselageSlope.value(),
        t.efficiency.value() * t.areaRatio.value(),
        t.tailSlope.value(),
        tail.polar().zeroLiftAngle(tail.reynolds()).likely(),
        t.tailCentre.value(),
        model.airframe().horizontalTail().orElseThrow().planform().aspectRatio(),
        tail.polar().usableLift(tail.reynolds()).likely(),
        t.downwash.value(),
        t.fraction("centre of gravity", centreOfGravity).value());
  }

  /**
   * What the tail lifts per radian of the aircraft's angle of attack, downwash taken off.
   *
   * @return slope on the wing area [1/rad]
   */
  public double tailOnWing() {
    return tailShare * tailSlope * (1.0 - downwash);
  }

  /**
   * Lift slope of the aircraft.
   *
   * @return C_Lα [1/rad]
   */
  public double liftSlope() {
    return wingSlope + tailOnWing();
  }

  /**
   * Moment slope of the aircraft about its centre of gravity.
   *
   * @return C_mα [1/rad], negative when stable
   */
  public double momentSlope() {
    return wingSlope * (centreOfGravity - wingCentre) + fuselageSlope - tailOnWing() * tailArm();
  }

  /**
   * Arm of the tail from the centre of gravity.
   *
   * @return fraction of the mean aerodynamic chord
   */
  public double tailArm() {
    return tailCentre - centreOfGravity;
  }
}
