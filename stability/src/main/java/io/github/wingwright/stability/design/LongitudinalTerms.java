// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.stability.AirframeDerivatives;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.PitchSlopes;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import java.util.List;

/**
 * The longitudinal derivatives of an aircraft in trim: those of its shape, with the drag that it has in flight.
 *
 * <p>At the Reynolds numbers of models the drag coefficient falls as the speed grows; that takes damping from the phugoid.
 */
final class LongitudinalTerms {
  private static final double SMALL = 1e-3;

  final Step lift;
  final Step moment;
  final Step tailDamping;
  final Step lag;
  final LongitudinalDerivatives derivatives;

  LongitudinalTerms(
      PitchModel model,
      AirframeDerivatives shape,
      Placement centreOfGravity,
      AircraftDrag drag,
      TrimmedPolar.Point flight,
      double viscosity) {
    PitchSlopes slopes = model.slopes();
    lift = slopes.lift();
    moment = slopes.moment(centreOfGravity.x());
    tailDamping = shape.tailPitchDamping();
    lag = shape.downwashLag();
    double cl = flight.liftCoefficient();
    double v = flight.speed().si();
    double byLift =
        (drag.likelyCoefficient(cl + SMALL, v, viscosity)
                - drag.likelyCoefficient(cl - SMALL, v, viscosity))
            / (2.0 * SMALL);
    double bySpeed =
        (drag.likelyCoefficient(cl, v * (1.0 + SMALL), viscosity)
                - drag.likelyCoefficient(cl, v * (1.0 - SMALL), viscosity))
            / (2.0 * SMALL);
    LongitudinalDerivatives d = shape.longitudinal();
    derivatives =
        new LongitudinalDerivatives(
            -bySpeed,
            d.zSpeed(),
            d.mSpeed(),
            cl - byLift * lift.value(),
            -(lift.value() + flight.dragCoefficient()),
            moment.value(),
            d.zPitchRate(),
            d.mPitchRate(),
            d.zAngleRate(),
            d.mAngleRate());
  }

  List<Step> steps() {
    return List.of(lift, moment, tailDamping, lag);
  }
}
