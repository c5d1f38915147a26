// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.DragBuildUp;
import io.github.wingwright.core.aerodynamics.SkinFriction;
import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.DragArea;

/** Drag area of a small body in laminar flow, as the design reckons it. */
final class BodyDragArea {
  private BodyDragArea() {}

  static DragArea at(Speed speed, AirState air) {
    double v = speed.si();
    double nu = air.kinematicViscosity().si();
    return (shape, length, diameter) -> {
      double friction = SkinFriction.laminar(Air.reynoldsNumber(v, length, nu));
      double form = BodyFormFactor.HOERNER_LAMINAR.factor(length / diameter, friction);
      return DragBuildUp.frictionDragArea(friction, form, 1.0, shape.wettedArea(length, diameter));
    };
  }
}
