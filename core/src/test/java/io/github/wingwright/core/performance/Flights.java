// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import static io.github.wingwright.core.quantity.Length.metres;

import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;

/** Flights with simple laws of drag. */
final class Flights {
  static final double G = Acceleration.STANDARD_GRAVITY.si();
  static final AirState AIR = Atmosphere.standard().at(metres(0));
  static final Mass MASS = Mass.grams(10);

  private Flights() {}

  /** Drag as a fixed part of the lift. */
  record FixedRatio(double dragOverLift) implements DragLaw {
    @Override
    public double likelyCoefficient(double lift, double speed, double kinematicViscosity) {
      return dragOverLift * lift;
    }

    @Override
    public double usableLift(double unitSpeed, double kinematicViscosity) {
      return 10.0;
    }
  }

  /** C_D0 + K·C_L². */
  record Parabola(double zeroLift, double factor) implements DragLaw {
    @Override
    public double likelyCoefficient(double lift, double speed, double kinematicViscosity) {
      return zeroLift + factor * lift * lift;
    }

    @Override
    public double usableLift(double unitSpeed, double kinematicViscosity) {
      return 1.0;
    }
  }

  /** A glider that carries its weight in level flight at a trim speed, with a given ratio of lift to drag. */
  static LaunchTrajectory trimmed(double trimSpeed, double dragOverLift) {
    double area = 2.0 * MASS.si() * G / (AIR.density().si() * trimSpeed * trimSpeed);
    return LaunchTrajectory.of(new FixedRatio(dragOverLift), Area.squareMetres(area), MASS, AIR, 1.0);
  }

  static Throw thrown(double speed, double degrees, double height) {
    return new Throw(Speed.metresPerSecond(speed), Angle.degrees(degrees), metres(height));
  }
}
