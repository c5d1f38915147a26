// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import java.util.Locale;

/**
 * The slopes that a pitch model is made of, each as a step: for whoever needs more of it than the neutral point, such as
 * the equations of motion.
 */
public final class PitchSlopes {
  private final PitchTerms terms;

  PitchSlopes(PitchTerms terms) {
    this.terms = terms;
  }

  /**
   * Lift-curve slope of the wing as it lifts on the aircraft.
   *
   * @return a_w [1/rad]
   */
  public Step wing() {
    return terms.wingSlope;
  }

  /**
   * Lift-curve slope of the horizontal tail on its own area.
   *
   * @return a_h [1/rad], zero without a tail
   */
  public Step tail() {
    return terms.tailSlope;
  }

  /**
   * Lift slope of the tail on the wing area, with tail efficiency and downwash.
   *
   * @return t [1/rad], zero without a tail
   */
  public Step tailOnWing() {
    return terms.tailOnWing;
  }

  /**
   * Downwash gradient at the tail.
   *
   * @return ε_α
   */
  public Step downwash() {
    return terms.downwash;
  }

  /**
   * Tail efficiency.
   *
   * @return η_h
   */
  public Step tailEfficiency() {
    return terms.efficiency;
  }

  /**
   * Moment slope of fuselage and nacelles.
   *
   * @return C_mα,f [1/rad]
   */
  public Step fuselage() {
    return terms.fuselageSlope;
  }

  /**
   * Moment slope about a centre of gravity.
   *
   * @param centreOfGravity aft of the nose tip
   * @return C_mα [1/rad], negative when statically stable
   */
  public Step moment(Length centreOfGravity) {
    return Step.of(
        NeutralPoint.MOMENT_SLOPE,
        terms.wingSlope,
        terms.fraction("centre of gravity", centreOfGravity),
        terms.wingCentre,
        terms.fuselageSlope,
        terms.tailOnWing,
        terms.tailCentre);
  }

  /**
   * Lift slope of the whole aircraft.
   *
   * @return C_Lα = a_w + t [1/rad]
   */
  public Step lift() {
    return Step.sum("lift slope of the aircraft", "C_Lα", List.of(terms.wingSlope, terms.tailOnWing));
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "slopes per rad: wing %.3f, tail %.3f, aircraft %.3f", wing().value(), tail().value(), lift().value());
  }
}
