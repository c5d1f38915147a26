// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import java.util.List;

/**
 * What the air does to a wing section in two-dimensional flow, each number with the range in which it is known.
 *
 * <p>Coefficients are on the chord; angles are from the chord line [rad]; moments are about the quarter chord, nose-up
 * positive. At the Reynolds numbers of small models handbook values mislead, so every answer is a {@link Band}: its
 * likely value is what the design reckons with, its ends are what may be.
 *
 * <p>The {@code likely…} methods are the same numbers without allocation, for loops.
 */
public interface SectionPolar {

  /**
   * The section and where its data come from.
   *
   * @return for example {@code "NACA 4406, friction and form"}
   */
  String name();

  /**
   * Where the data come from.
   *
   * @return the source
   */
  Source source();

  /**
   * Reynolds numbers on the chord between which the data hold.
   *
   * @return the range
   */
  Interval reynoldsRange();

  /**
   * Profile drag.
   *
   * @param cl lift coefficient
   * @param reynolds Reynolds number on the chord, positive
   * @return the drag coefficient c_d
   */
  Band profileDrag(double cl, double reynolds);

  /**
   * The likely profile drag.
   *
   * @param cl lift coefficient
   * @param reynolds Reynolds number on the chord, positive
   * @return c_d
   */
  double likelyProfileDrag(double cl, double reynolds);

  /**
   * Angle of attack without lift.
   *
   * @param reynolds Reynolds number on the chord, positive
   * @return α₀ [rad]
   */
  Band zeroLiftAngle(double reynolds);

  /**
   * Slope of the lift curve.
   *
   * @param reynolds Reynolds number on the chord, positive
   * @return a₀ [1/rad]
   */
  Band liftSlope(double reynolds);

  /**
   * Moment about the quarter chord.
   *
   * @param reynolds Reynolds number on the chord, positive
   * @return c_m, nose-up positive
   */
  Band moment(double reynolds);

  /**
   * Greatest lift coefficient that a flight can use.
   *
   * @param reynolds Reynolds number on the chord, positive
   * @return c_l
   */
  Band usableLift(double reynolds);

  /**
   * What to know about the answer at one point: outside the data, separated flow, a band instead of a value.
   *
   * @param cl lift coefficient
   * @param reynolds Reynolds number on the chord, positive
   * @return findings, none where the data simply hold
   */
  List<Finding> findings(double cl, double reynolds);

  /**
   * The likely lift slope, for loops: a section in which it costs an object otherwise says it without one.
   *
   * @param reynolds Reynolds number on the chord, positive
   * @return a₀ [1/rad], {@code liftSlope(reynolds).likely()}
   */
  default double likelyLiftSlope(double reynolds) {
    return liftSlope(reynolds).likely();
  }

  /**
   * The likely usable lift, for loops.
   *
   * @param reynolds Reynolds number on the chord, positive
   * @return c_l, {@code usableLift(reynolds).likely()}
   */
  default double likelyUsableLift(double reynolds) {
    return usableLift(reynolds).likely();
  }
}
