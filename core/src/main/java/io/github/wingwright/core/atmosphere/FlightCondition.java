// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.atmosphere;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import java.io.Serializable;
import java.util.Objects;
import java.util.List;

/**
 * Air and a speed through it: what a method of aerodynamics needs to know of a flight.
 *
 * <p>Example: at 6 m/s in standard air at sea level, q = 22.05 Pa and a chord of 50 mm has a Reynolds number of 20,538.
 *
 * @param air the undisturbed air
 * @param airspeed true airspeed V, zero or more
 */
public record FlightCondition(AirState air, Speed airspeed) implements Serializable {

  /** Refuses null and a speed that is not one. */
  public FlightCondition {
    Objects.requireNonNull(airspeed, "airspeed");
    Objects.requireNonNull(air, "air");
    if (!(airspeed.metresPerSecond() >= 0.0 && airspeed.metresPerSecond() <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("airspeed must be zero or more and finite, was " + airspeed);
    }
  }

  /**
   * A flight in some air.
   *
   * @param air the undisturbed air
   * @param airspeed true airspeed, zero or more
   * @return the condition
   * @throws IllegalArgumentException if the airspeed is negative
   */
  public static FlightCondition of(AirState air, Speed airspeed) {
    return new FlightCondition(air, airspeed);
  }

  /**
   * The same air at another speed.
   *
   * @param other true airspeed, zero or more
   * @return the condition
   */
  public FlightCondition withAirspeed(Speed other) {
    return new FlightCondition(air, other);
  }

  /**
   * The dynamic pressure.
   *
   * @return q = ½·ρ·V²
   */
  public Pressure dynamicPressure() {
    return Pressure.pascals(
        Air.dynamicPressure(air.density().kilogramsPerCubicMetre(), airspeed.metresPerSecond()));
  }

  /**
   * The Reynolds number of a length.
   *
   * @param length reference length, such as a chord; positive
   * @return Re = V·l/ν
   * @throws IllegalArgumentException if the length is not positive
   */
  public double reynoldsNumber(Length length) {
    Objects.requireNonNull(length, "length");
    if (!(length.metres() > 0.0 && length.metres() <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("reference length must be positive and finite, was " + length);
    }
    return Air.reynoldsNumber(
        airspeed.metresPerSecond(), length.metres(), air.kinematicViscosity().squareMetresPerSecond());
  }

  /**
   * The Mach number.
   *
   * @return M = V/a
   */
  public double machNumber() {
    return Air.machNumber(airspeed.metresPerSecond(), air.speedOfSound().metresPerSecond());
  }

  /**
   * The Mach number as a line of the workings.
   *
   * @param speed step of the airspeed
   * @param origin who gave the air
   * @return the step; its value is that of {@link #machNumber()} to the last bit
   */
  public Step machNumberStep(Step speed, Source origin) {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(origin, "origin");
    Step temperature = Step.given("air temperature", "T", air.temperature(), origin);
    return Step.of(Air.MACH_NUMBER, speed, Step.of(Air.SPEED_OF_SOUND, temperature));
  }

  /**
   * What is remarkable about the air.
   *
   * @return findings, usually none
   */
  public List<Finding> findings() {
    return air.findings();
  }

  @Override
  public String toString() {
    return airspeed + " in " + air;
  }
}
