// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.PitchParts;
import io.github.wingwright.stability.derivatives.TailPitchRate;
import io.github.wingwright.stability.derivatives.WingPitchRate;
import io.github.wingwright.stability.dynamics.WingApparentMass;

/** Mass, inertia, apparent mass and the derivatives that go with rates, of an aircraft that is to be flown with pitch. */
final class PitchBody {
  /** What the wing adds to the pitch damping of the tail (Nelson, from memory). */
  private static final double WING_DAMPING = 1.1;

  private PitchBody() {}

  static PitchDynamics.Body of(PitchParts parts, Aircraft aircraft, double density, double area, double g) {
    Length centreOfGravity = aircraft.centreOfGravity().x();
    Planform wing = aircraft.airframe().wing().planform();
    WingApparentMass apparent = WingApparentMass.of(Density.kilogramsPerCubicMetre(density), aircraft.airframe().wing(), centreOfGravity);
    double volume = parts.tailShare() * parts.tailArm();
    double damping = TailPitchRate.pitchDamping(1.0, volume, parts.tailSlope(), parts.tailArm());
    double lift = TailPitchRate.liftDueToPitchRate(1.0, volume, parts.tailSlope());
    boolean behind = parts.hasTail() && !parts.hasForeplane();
    if (!behind) {
      double root = centreOfGravity.minus(aircraft.airframe().wing().placement().x()).si();
      damping += WingPitchRate.moment(wing, parts.wingOnAircraft(), root);
      lift += WingPitchRate.lift(wing, parts.wingOnAircraft(), root);
    }
    return new PitchDynamics.Body(
        aircraft.mass(),
        aircraft.inertia().pitch().si() + apparent.pitchInertia(),
        apparent,
        density,
        area,
        wing.meanAerodynamicChord().si(),
        g,
        lift,
        behind ? WING_DAMPING * damping : damping,
        behind ? TailPitchRate.liftDueToAngleRate(1.0, volume, parts.tailSlope(), parts.downwash()) : 0.0,
        behind ? TailPitchRate.downwashLag(1.0, volume, parts.tailSlope(), parts.tailArm(), parts.downwash()) : 0.0,
        parts.liftSlope(),
        parts.momentSlope(),
        Double.NaN,
        Double.NaN);
  }
}
