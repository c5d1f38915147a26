// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

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
 * @param downwash ε_α, negative for the upwash that a foreplane feels
 * @param wake what the lift of a foreplane on the wing area takes of the wing's angle of attack, 2/(π·A) [rad]; 0 behind
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
    double wake,
    double centreOfGravity) {

  /**
   * The parts of a model.
   *
   * @param model wing, fuselage, and a tail or foreplane if there is one, with section data of all surfaces
   * @param centreOfGravity aft of the nose tip
   * @return its parts
   * @throws IllegalStateException if section data are missing
   */
  public static PitchParts of(PitchModel model, Length centreOfGravity) {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(centreOfGravity, "centre of gravity");
    PitchTerms t = model.terms();
    TrimInputs inputs = new TrimInputs(model, t);
    PitchChoices.Section wing = inputs.wing;
    Tailplane tail = t.hasTail ? Tailplane.of(model, t) : Tailplane.NONE;
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
        tail.zeroLift,
        t.tailCentre.value(),
        tail.aspectRatio,
        tail.usableLift,
        t.downwash.value(),
        t.hasForeplane ? Foreplane.downwash(1.0, t.aspectRatio.value()) : 0.0,
        t.fraction("centre of gravity", centreOfGravity).value());
  }

  /** What is taken of the tail's section and shape. */
  private record Tailplane(double zeroLift, double aspectRatio, double usableLift) {
    static final Tailplane NONE = new Tailplane(0.0, 1.0, 0.0);

    static Tailplane of(PitchModel model, PitchTerms terms) {
      PitchChoices.Section section = model.choices.neededTailSection();
      return new Tailplane(
          section.polar().zeroLiftAngle(section.reynolds()).likely(),
          model.airframe().pitchTail().orElseThrow().planform().aspectRatio(),
          terms.tailUpright * section.polar().usableLift(section.reynolds()).likely());
    }
  }

  /**
   * Whether there is a tail or a foreplane.
   *
   * @return false for a wing and a body alone
   */
  public boolean hasTail() {
    return tailShare > 0.0;
  }

  /**
   * Whether the tail stands ahead of the wing.
   *
   * @return true for a foreplane
   */
  public boolean hasForeplane() {
    return wake > 0.0;
  }

  /**
   * With another moment of the wing, as reflex or elevons give it.
   *
   * @param moment C_m,ac about the aerodynamic centre, nose-up positive
   * @return the parts with it
   */
  public PitchParts withWingMoment(double moment) {
    return new PitchParts(
        wingSlope, wingZeroLift, wingIncidence, moment, wingCentre, wingAspectRatio, wingUsableLift, fuselageSlope,
        tailShare, tailSlope, tailZeroLift, tailCentre, tailAspectRatio, tailUsableLift, downwash, wake, centreOfGravity);
  }

  /**
   * What the wing lifts per radian of the aircraft's angle of attack, in the wake of a foreplane.
   *
   * @return slope on the wing area [1/rad]
   */
  public double wingOnAircraft() {
    return wingSlope * (1.0 - wake * tailOnWing());
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
    return wingOnAircraft() + tailOnWing();
  }

  /**
   * Moment slope of the aircraft about its centre of gravity.
   *
   * @return C_mα [1/rad], negative when stable
   */
  public double momentSlope() {
    return wingOnAircraft() * (centreOfGravity - wingCentre) + fuselageSlope - tailOnWing() * tailArm();
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
