// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.atmosphere;

import io.github.wingwright.core.numerics.Roots;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.core.quantity.TemperatureDifference;
import java.io.Serializable;
import java.util.Objects;

/**
 * The standard atmosphere, or one that is warmer or colder than it by the same number of kelvins everywhere.
 *
 * <pre>{@code
 * AirState hotDay = Atmosphere.standard()
 *     .withOffset(TemperatureDifference.kelvins(15))
 *     .at(Length.metres(2000));                        // ρ = 0.954457 kg/m³
 * }</pre>
 *
 * <p>On an offset day the pressure at a <em>pressure altitude</em> stays that of the standard, by definition, and the
 * temperature is the standard one plus the offset (common practice, no source). Warm air stands higher: the same
 * pressure is found at a greater height, by dH = (T/T_ISA)·dH_p, which {@link #atGeometric} takes into account with
 * the standard pressure at mean sea level.
 *
 * <p>For a hall or a field whose pressure and temperature were measured, {@link AirState#of} needs no atmosphere.
 */
public final class Atmosphere implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Atmosphere STANDARD = new Atmosphere(0.0);

  /** In metres: at sea level this is a millionth of a pascal. */
  private static final Tolerance ALTITUDE = Tolerance.absolute(1e-7);

  private final double offset;

  private Atmosphere(double offset) {
    this.offset = offset;
  }

  /**
   * The International Standard Atmosphere.
   *
   * @return the standard day
   */
  public static Atmosphere standard() {
    return STANDARD;
  }

  /**
   * The standard atmosphere with an offset; it replaces an earlier one.
   *
   * @param difference how much warmer than standard the air is at every pressure altitude, finite
   * @return the offset day
   * @throws IllegalArgumentException if the offset is not finite or leaves no air above absolute zero
   */
  public Atmosphere withOffset(TemperatureDifference difference) {
    Objects.requireNonNull(difference, "difference");
    double kelvins = difference.kelvins();
    double coldest = StandardAtmosphere.temperature(11_000.0);
    if (!(kelvins > -coldest && kelvins <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "temperature offset must be above " + TemperatureDifference.kelvins(-coldest) + ", was " + difference);
    }
    return new Atmosphere(kelvins);
  }

  /**
   * How much warmer than standard the air is.
   *
   * @return the offset, zero on a standard day
   */
  public TemperatureDifference offset() {
    return TemperatureDifference.kelvins(offset);
  }

  /**
   * The air at a pressure altitude, which on a standard day is the geopotential altitude.
   *
   * @param pressureAltitude altitude of the standard day that has this pressure, −5 to 47 km
   * @return the air there
   * @throws IllegalArgumentException if the altitude is outside the range
   */
  public AirState at(Length pressureAltitude) {
    Objects.requireNonNull(pressureAltitude, "pressure altitude");
    double altitude = pressureAltitude.metres();
    return AirState.of(
        Pressure.pascals(StandardAtmosphere.pressure(altitude)),
        Temperature.kelvins(StandardAtmosphere.temperature(altitude) + offset));
  }

  /**
   * The air at a height above mean sea level, as surveyed or measured by satellite.
   *
   * @param geometricAltitude height above mean sea level; its geopotential must be reached by this atmosphere between
   *     the pressure altitudes −5 and 47 km
   * @return the air there
   * @throws IllegalArgumentException if the altitude is outside the range
   */
  public AirState atGeometric(Length geometricAltitude) {
    Objects.requireNonNull(geometricAltitude, "geometric altitude");
    return at(Length.metres(pressureAltitude(geopotential(geometricAltitude).metres())));
  }

  /**
   * Geopotential from geometric altitude.
   *
   * @param geometricAltitude height above mean sea level
   * @return the height in a field of gravity of standard strength throughout
   */
  public static Length geopotential(Length geometricAltitude) {
    Objects.requireNonNull(geometricAltitude, "geometric altitude");
    requireAboveCentre(geometricAltitude, geometricAltitude.metres() > -StandardAtmosphere.EARTH_RADIUS);
    return Length.metres(StandardAtmosphere.geopotentialAltitude(geometricAltitude.metres()));
  }

  /**
   * Geometric from geopotential altitude.
   *
   * @param geopotentialAltitude the geopotential altitude
   * @return height above mean sea level
   */
  public static Length geometric(Length geopotentialAltitude) {
    Objects.requireNonNull(geopotentialAltitude, "geopotential altitude");
    requireAboveCentre(geopotentialAltitude, geopotentialAltitude.metres() < StandardAtmosphere.EARTH_RADIUS);
    return Length.metres(StandardAtmosphere.geometricAltitude(geopotentialAltitude.metres()));
  }

  private static void requireAboveCentre(Length altitude, boolean holds) {
    if (!holds) {
      throw new IllegalArgumentException("altitude must be less than an earth radius from the ground, was " + altitude);
    }
  }

  /** The pressure altitude at a geopotential altitude: H = H_p + ΔT·∫dH_p/T_ISA, solved for H_p. */
  private double pressureAltitude(double geopotential) {
    if (offset == 0.0) {
      return geopotential;
    }
    double lowest = geopotentialOf(StandardAtmosphere.LOWEST_ALTITUDE);
    double highest = geopotentialOf(StandardAtmosphere.HIGHEST_ALTITUDE);
    if (!(geopotential >= lowest && geopotential <= highest)) {
      throw new IllegalArgumentException(
          "geopotential altitude must be " + Length.metres(lowest) + " to " + Length.metres(highest)
              + " (the range of the standard atmosphere on this day), was " + Length.metres(geopotential));
    }
    return Roots.find(
        altitude -> geopotentialOf(altitude) - geopotential,
        StandardAtmosphere.LOWEST_ALTITUDE,
        StandardAtmosphere.HIGHEST_ALTITUDE,
        ALTITUDE);
  }

  private double geopotentialOf(double pressureAltitude) {
    return pressureAltitude + offset * StandardAtmosphere.heightPerKelvin(pressureAltitude);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Atmosphere that && offset == that.offset;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(offset + 0.0);
  }

  @Override
  public String toString() {
    return offset == 0.0
        ? "standard atmosphere"
        : "standard atmosphere " + (offset > 0.0 ? "plus " : "minus ") + offset().magnitude();
  }
}
