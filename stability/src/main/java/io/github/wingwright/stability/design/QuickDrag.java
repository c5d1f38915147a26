// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.DragBuildUp;
import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.aerodynamics.InducedDrag;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.atmosphere.Air;

/**
 * The drag of a glider with two tails on plain numbers: what {@code AircraftDrag} adds up from its components.
 *
 * @param section polar of the wing's section
 * @param area reference area S [m²]
 * @param chord mean aerodynamic chord [m]
 * @param aspectRatio A
 * @param loss δ
 * @param length length of the fuselage [m]
 * @param fineness its fineness ratio
 * @param wetted its wetted area [m²]
 * @param tailChord mean aerodynamic chord of the horizontal tail [m]
 * @param tailFactor its wetted area times form factor and interference [m²]
 * @param finChord mean aerodynamic chord of the fin [m]
 * @param finFactor its wetted area times form factor and interference [m²]
 */
record QuickDrag(
    SectionPolar section,
    double area,
    double chord,
    double aspectRatio,
    double loss,
    double length,
    double fineness,
    double wetted,
    double tailChord,
    double tailFactor,
    double finChord,
    double finFactor)
    implements DragLaw {

  @Override
  public double likelyCoefficient(double lift, double speed, double kinematicViscosity) {
    double profile = section.likelyProfileDrag(lift, Air.reynoldsNumber(speed, chord, kinematicViscosity));
    double friction = friction(length, speed, kinematicViscosity);
    double body =
        DragBuildUp.frictionDragArea(friction, PartGeometry.BODY_FORM.factor(fineness, friction), 1.0, wetted);
    double tails =
        tailFactor * friction(tailChord, speed, kinematicViscosity)
            + finFactor * friction(finChord, speed, kinematicViscosity);
    return profile + InducedDrag.coefficient(lift, loss, aspectRatio) + (body + tails) / area;
  }

  private static double friction(double length, double speed, double kinematicViscosity) {
    return PartGeometry.FRICTION.coefficient(Air.reynoldsNumber(speed, length, kinematicViscosity), length, 0.0);
  }

  @Override
  public double usableLift(double unitSpeed, double kinematicViscosity) {
    return DragLaw.usableLift(section, Air.reynoldsNumber(unitSpeed, chord, kinematicViscosity));
  }
}
