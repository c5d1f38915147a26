// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.atmosphere;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.DynamicViscosity;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;

/**
 * Dry air as a perfect gas, and the numbers that describe a stream of it.
 *
 * <pre>{@code
 * ρ = p/(R·T)                     R = 287.05287 J/(kg·K)
 * a = √(γ·R·T)                    γ = 1.4
 * μ = βₛ·T^1.5/(T + S)            βₛ = 1.458·10⁻⁶ kg/(m·s·√K), S = 110.4 K
 * ν = μ/ρ
 * q = ½·ρ·V²     Re = V·l/ν     M = V/a
 * }</pre>
 *
 * <p>The constants are those of the International Standard Atmosphere (ISO 2533:1975 and ICAO Doc 7488, from memory).
 * Sutherland's law for the viscosity was fitted between about 100 and 1,900 K and keeps within some 2 % there (White,
 * Viscous Fluid Flow, from memory); the formula states 150 to 400 K, which holds every flight of this library. Moisture
 * is left out: air saturated at 20 °C is 0.9 % lighter than dry air.
 *
 * <p>The methods take and give SI {@code double}s, trust their arguments and create no objects.
 */
public final class Air {
  /** The specific gas constant R of dry air [J/(kg·K)]. */
  public static final double GAS_CONSTANT = 287.05287;

  /** The ratio γ of the specific heats of air. */
  public static final double RATIO_OF_SPECIFIC_HEATS = 1.4;

  /** Sutherland's coefficient βₛ [kg/(m·s·√K)]. */
  public static final double SUTHERLAND_COEFFICIENT = 1.458e-6;

  /** Sutherland's temperature S [K]. */
  public static final double SUTHERLAND_TEMPERATURE = 110.4;

  private static final Source ISA =
      Source.fromMemory("ISO 2533:1975, Standard Atmosphere", "defining constants and formulas");

  /** The density of air from pressure and temperature: {@link #density}. */
  public static final Formula DENSITY =
      Formula.named("air density")
          .gives("ρ", Density.KILOGRAM_PER_CUBIC_METRE)
          .as("p/(287.05287·T)")
          .where("p", "air pressure", Pressure.PASCAL, 100, 200_000)
          .where("T", "air temperature", Temperature.KELVIN, 150, 400)
          .from(ISA)
          .computedBy(Air::density);

  /** The speed of sound: {@link #speedOfSound}. */
  public static final Formula SPEED_OF_SOUND =
      Formula.named("speed of sound")
          .gives("a", Speed.METRE_PER_SECOND)
          .as("√(1.4·287.05287·T)")
          .where("T", "air temperature", Temperature.KELVIN, 150, 400)
          .from(ISA)
          .computedBy(Air::speedOfSound);

  /** The dynamic viscosity by Sutherland's law: {@link #dynamicViscosity}. */
  public static final Formula DYNAMIC_VISCOSITY =
      Formula.named("dynamic viscosity")
          .gives("μ", DynamicViscosity.PASCAL_SECOND)
          .as("1.458·10^(−6)·T^1.5/(T + 110.4)")
          .where("T", "air temperature", Temperature.KELVIN, 150, 400)
          .from(ISA)
          .computedBy(Air::dynamicViscosity);

  /** The kinematic viscosity: {@link #kinematicViscosity}. */
  public static final Formula KINEMATIC_VISCOSITY =
      Formula.named("kinematic viscosity")
          .gives("ν", KinematicViscosity.SQUARE_METRE_PER_SECOND)
          .as("μ/ρ")
          .where("μ", "dynamic viscosity", DynamicViscosity.PASCAL_SECOND, 1e-6, 1e-4)
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.001, 3)
          .from(Source.DEFINITION)
          .computedBy(Air::kinematicViscosity);

  /** The dynamic pressure: {@link #dynamicPressure}. */
  public static final Formula DYNAMIC_PRESSURE =
      Formula.named("dynamic pressure")
          .gives("q", Pressure.PASCAL)
          .as("½·ρ·V²")
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.001, 3)
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 0, 1000)
          .from(Source.DEFINITION)
          .computedBy(Air::dynamicPressure);

  /** The Reynolds number: {@link #reynoldsNumber}. */
  public static final Formula REYNOLDS_NUMBER =
      Formula.named("Reynolds number")
          .gives("Re")
          .as("V·l/ν")
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 0, 1000)
          .where("l", "reference length", Length.METRE, 0, 100)
          .where("ν", "kinematic viscosity", KinematicViscosity.SQUARE_METRE_PER_SECOND, 1e-6, 0.1)
          .from(Source.DEFINITION)
          .computedBy(Air::reynoldsNumber);

  /** The Mach number: {@link #machNumber}. */
  public static final Formula MACH_NUMBER =
      Formula.named("Mach number")
          .gives("M")
          .as("V/a")
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 0, 1000)
          .where("a", "speed of sound", Speed.METRE_PER_SECOND, 200, 500)
          .from(Source.DEFINITION)
          .computedBy(Air::machNumber);

  private Air() {}

  /**
   * The density of a perfect gas, ρ = p/(R·T): 1.225 kg/m³ at 101,325 Pa and 288.15 K.
   *
   * @param pressure p [Pa], positive
   * @param temperature T [K], positive
   * @return ρ [kg/m³]
   */
  public static double density(double pressure, double temperature) {
    return pressure / (GAS_CONSTANT * temperature);
  }

  /**
   * The speed of sound of a perfect gas, a = √(γ·R·T): 340.294 m/s at 288.15 K.
   *
   * @param temperature T [K], positive
   * @return a [m/s]
   */
  public static double speedOfSound(double temperature) {
    return Math.sqrt(RATIO_OF_SPECIFIC_HEATS * GAS_CONSTANT * temperature);
  }

  /**
   * The dynamic viscosity by Sutherland's law, μ = βₛ·T^1.5/(T + S): 1.78938·10⁻⁵ Pa·s at 288.15 K.
   *
   * @param temperature T [K], 150 to 400
   * @return μ [Pa·s]
   */
  public static double dynamicViscosity(double temperature) {
    return SUTHERLAND_COEFFICIENT * temperature * Math.sqrt(temperature) / (temperature + SUTHERLAND_TEMPERATURE);
  }

  /**
   * The kinematic viscosity, ν = μ/ρ: 1.46072·10⁻⁵ m²/s at sea level on a standard day.
   *
   * @param dynamicViscosity μ [Pa·s]
   * @param density ρ [kg/m³], positive
   * @return ν [m²/s]
   */
  public static double kinematicViscosity(double dynamicViscosity, double density) {
    return dynamicViscosity / density;
  }

  /**
   * The dynamic pressure, q = ½·ρ·V²: 22.05 Pa at 1.225 kg/m³ and 6 m/s.
   *
   * @param density ρ [kg/m³]
   * @param airspeed V [m/s]
   * @return q [Pa]
   */
  public static double dynamicPressure(double density, double airspeed) {
    return 0.5 * density * airspeed * airspeed;
  }

  /**
   * The Reynolds number, Re = V·l/ν: 20,000 at 6 m/s, 50 mm and 1.5·10⁻⁵ m²/s.
   *
   * @param airspeed V [m/s]
   * @param length reference length l [m], such as a chord
   * @param kinematicViscosity ν [m²/s], positive
   * @return Re
   */
  public static double reynoldsNumber(double airspeed, double length, double kinematicViscosity) {
    return airspeed * length / kinematicViscosity;
  }

  /**
   * The Mach number, M = V/a: 0.5 at 170 m/s where sound travels at 340 m/s.
   *
   * @param airspeed V [m/s]
   * @param speedOfSound a [m/s], positive
   * @return M
   */
  public static double machNumber(double airspeed, double speedOfSound) {
    return airspeed / speedOfSound;
  }
}
