// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import java.util.Objects;

/**
 * The likely drag of an aircraft at any lift and speed, on doubles: all that the kernels of a glide ask of it.
 *
 * <p>{@link AircraftDrag} is one; a study that builds no objects per point brings its own.
 */
public interface DragLaw {
  /**
   * The likely drag coefficient, without allocation.
   *
   * @param lift lift coefficient C_L
   * @param speed airspeed [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return C_D
   */
  double likelyCoefficient(double lift, double speed, double kinematicViscosity);

  /**
   * The likely usable lift in a glide: the lift that the section offers at the Reynolds number that this lift leads to.
   *
   * @param unitSpeed speed at which a lift coefficient of 1 carries the weight [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return C_L
   */
  double usableLift(double unitSpeed, double kinematicViscosity);

  /**
   * The lift that a section offers at the Reynolds number that this lift leads to, by repetition.
   *
   * <p>The usable lift varies so slowly with the Reynolds number that four or five rounds close it to twelve digits.
   *
   * @param section polar of the section
   * @param reynoldsAtUnitLift Reynolds number at a lift coefficient of 1, positive
   * @return C_L
   */
  static double usableLift(SectionPolar section, double reynoldsAtUnitLift) {
    Objects.requireNonNull(section, "section");
    double lift = 1.0;
    for (int i = 0; i < 20; i++) {
      double next = section.likelyUsableLift(reynoldsAtUnitLift / Math.sqrt(lift));
      if (Math.abs(next - lift) <= 1e-12 * lift) {
        return next;
      }
      lift = next;
    }
    return lift;
  }
}
