// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.stability.derivatives.LatticeDerivatives;
import io.github.wingwright.stability.dynamics.BodyInertia;
import io.github.wingwright.stability.dynamics.LateralForces;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import io.github.wingwright.stability.dynamics.LongitudinalForces;
import io.github.wingwright.stability.dynamics.Mode;
import io.github.wingwright.stability.dynamics.SteadyFlight;
import io.github.wingwright.stability.dynamics.WingApparentMass;
import io.github.wingwright.stability.lattice.LatticeSolution;
import java.util.ArrayList;
import java.util.List;

/** The natural motions of a glide with the derivatives of a lattice, where the lattice has them. */
final class LatticeMotions {
  private LatticeMotions() {}

  /** Drag against the angle, and the rate of the angle, stay those of the handbook: a lattice knows neither. */
  static List<Mode> of(
      LatticeSolution flow,
      LongitudinalDerivatives hand,
      double dragCoefficient,
      SteadyFlight flight,
      BodyInertia body,
      WingApparentMass air) {
    LongitudinalDerivatives d =
        LatticeDerivatives.longitudinal(
            flow,
            dragCoefficient - flow.inducedDragCoefficient(),
            0.0,
            -hand.zAngleRate(),
            hand.mAngleRate());
    LongitudinalDerivatives withDrag =
        new LongitudinalDerivatives(
            hand.xSpeed(),
            d.zSpeed(),
            d.mSpeed(),
            hand.xAngle(),
            d.zAngle(),
            d.mAngle(),
            d.zPitchRate(),
            d.mPitchRate(),
            d.zAngleRate(),
            d.mAngleRate());
    BodyInertia heavier = air.addedTo(body);
    List<Mode> modes =
        new ArrayList<>(
            LongitudinalForces.of(flight, body.mass(), withDrag)
                .with(air)
                .stateMatrix(flight, heavier)
                .modes()
                .all());
    modes.addAll(
        LateralForces.of(flight, LatticeDerivatives.lateral(flow))
            .stateMatrix(flight, heavier)
            .modes()
            .all());
    return List.copyOf(modes);
  }
}
