// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.atmosphere;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.DynamicViscosity;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Air at rest: its pressure and its temperature, and what follows from them.
 *
 * <p>Example: {@code AirState.of(Pressure.hectopascals(1013.25), Temperature.degreesCelsius(20))}, the air of a hall at
 * 20 °C, has a density of 1.20411 kg/m³.
 *
 * @param pressure static pressure p, positive
 * @param temperature static temperature T, above absolute zero
 */
public record AirState(Pressure pressure, Temperature temperature) implements Serializable {

  /** Refuses what is not air. */
  public AirState {
    Objects.requireNonNull(pressure, "pressure");
    Objects.requireNonNull(temperature, "temperature");
    if (!(pressure.pascals() > 0.0 && pressure.pascals() <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("air pressure must be positive and finite, was " + pressure);
    }
    if (!(temperature.kelvins() > 0.0 && temperature.kelvins() <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("air temperature must be above 0 K and finite, was " + temperature);
    }
  }

  /**
   * Air as it was measured.
   *
   * @param pressure static pressure at the place itself, not reduced to sea level; positive
   * @param temperature air temperature, above absolute zero
   * @return the air
   * @throws IllegalArgumentException if the pressure or the absolute temperature is not positive
   */
  public static AirState of(Pressure pressure, Temperature temperature) {
    return new AirState(pressure, temperature);
  }

  /**
   * The density by the law of perfect gases.
   *
   * @return ρ = p/(R·T)
   */
  public Density density() {
    return Density.kilogramsPerCubicMetre(rho());
  }

  /**
   * The speed of sound.
   *
   * @return a = √(γ·R·T)
   */
  public Speed speedOfSound() {
    return Speed.metresPerSecond(Air.speedOfSound(temperature.kelvins()));
  }

  /**
   * The dynamic viscosity by Sutherland's law.
   *
   * @return μ
   */
  public DynamicViscosity dynamicViscosity() {
    return DynamicViscosity.pascalSeconds(Air.dynamicViscosity(temperature.kelvins()));
  }

  /**
   * The kinematic viscosity.
   *
   * @return ν = μ/ρ
   */
  public KinematicViscosity kinematicViscosity() {
    return KinematicViscosity.squareMetresPerSecond(
        Air.kinematicViscosity(Air.dynamicViscosity(temperature.kelvins()), rho()));
  }

  /**
   * The pressure altitude: where the standard atmosphere has this pressure.
   *
   * @return the altitude, −5 to 47 km
   * @throws IllegalArgumentException if the standard has no such pressure
   */
  public Length pressureAltitude() {
    return Length.metres(StandardAtmosphere.pressureAltitude(pressure.pascals()));
  }

  /**
   * The density altitude: where the standard atmosphere has this density. An aircraft flies in this air as it would
   * there on a standard day.
   *
   * @return the altitude, −5 to 47 km
   * @throws IllegalArgumentException if the standard has no such density
   */
  public Length densityAltitude() {
    return Length.metres(StandardAtmosphere.densityAltitude(rho()));
  }

  /**
   * What is remarkable: a temperature outside the range of the viscosity law.
   *
   * @return findings, usually none
   */
  public List<Finding> findings() {
    return Air.DYNAMIC_VISCOSITY.outsideDomain(temperature.kelvins());
  }

  /**
   * The density as a line of the workings.
   *
   * @param origin who gave pressure and temperature
   * @return the step; its value is that of {@link #density()} to the last bit
   */
  public Step densityStep(Source origin) {
    return densityStep(origin, Step.given("air temperature", "T", temperature, origin));
  }

  private Step densityStep(Source origin, Step temperatureStep) {
    return Step.of(Air.DENSITY, Step.given("air pressure", "p", pressure, origin), temperatureStep);
  }

  /**
   * The kinematic viscosity as a line of the workings.
   *
   * @param origin who gave pressure and temperature
   * @return the step; its value is that of {@link #kinematicViscosity()} to the last bit
   */
  public Step kinematicViscosityStep(Source origin) {
    Step t = Step.given("air temperature", "T", temperature, origin);
    return Step.of(Air.KINEMATIC_VISCOSITY, Step.of(Air.DYNAMIC_VISCOSITY, t), densityStep(origin, t));
  }

  private double rho() {
    return Air.density(pressure.pascals(), temperature.kelvins());
  }

  @Override
  public String toString() {
    return pressure.format(Pressure.HECTOPASCAL, 6)
        + ", "
        + temperature.format(Temperature.DEGREE_CELSIUS, 4)
        + ", "
        + density().format(Density.KILOGRAM_PER_CUBIC_METRE, 5);
  }
}
