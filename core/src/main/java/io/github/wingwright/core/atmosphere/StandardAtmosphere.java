// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.atmosphere;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Temperature;

/**
 * The International Standard Atmosphere from −5 km to 47 km geopotential altitude, as static methods on SI
 * {@code double}s.
 *
 * <p>Temperature is linear in each layer; pressure follows from the balance of a column of air, dp = −ρ·g₀·dH.
 *
 * <pre>{@code
 * H_b [km]    −5 to 0     11        20        32        47
 * L  [K/km]     −6.5       0        +1        +2.8
 * T_b [K]      288.15    216.65    216.65    228.65    270.65
 *
 * T = T_b + L·h                                   h = H − H_b
 * p = p_b·(1 + L·h/T_b)^(−g₀/(R·L))               L ≠ 0
 * p = p_b·exp(−g₀·h/(R·T_b))                      L = 0
 * H = r₀·Z/(r₀ + Z)                               r₀ = 6,356,766 m, Z geometric altitude
 * }</pre>
 *
 * <p>Sources, from memory: ISO 2533:1975 (its tables begin at −2 km), ICAO Doc 7488/3 (begins at −5 km, with the lapse
 * rate of the lowest layer going on below sea level); the same up to 32 km as the U.S. Standard Atmosphere 1976. The
 * layer table was also read in public restatements. An altitude outside −5 to 47 km is refused: there is no standard to
 * answer with. Example: at 11,000 m 216.65 K and 22,632.0 Pa.
 */
public final class StandardAtmosphere {
  /** The lowest geopotential altitude that the standard covers [m]. */
  public static final double LOWEST_ALTITUDE = -5_000.0;

  /** The highest geopotential altitude that this library covers [m]. */
  public static final double HIGHEST_ALTITUDE = 47_000.0;

  /** The temperature at sea level T₀ [K]. */
  public static final double SEA_LEVEL_TEMPERATURE = 288.15;

  /** The pressure at sea level p₀ [Pa]. */
  public static final double SEA_LEVEL_PRESSURE = 101_325.0;

  /** The standard acceleration of free fall g₀ [m/s²]. */
  public static final double STANDARD_GRAVITY = 9.80665;

  /** The radius r₀ of the earth that relates geometric and geopotential altitude [m]. */
  public static final double EARTH_RADIUS = 6_356_766.0;

  private static final double[] BASE = {0.0, 11_000.0, 20_000.0, 32_000.0};
  private static final double[] LAPSE = {-0.0065, 0.0, 0.001, 0.0028};
  private static final double[] BASE_TEMPERATURE = new double[BASE.length];
  private static final double[] BASE_PRESSURE = new double[BASE.length];

  static {
    BASE_TEMPERATURE[0] = SEA_LEVEL_TEMPERATURE;
    BASE_PRESSURE[0] = SEA_LEVEL_PRESSURE;
    for (int i = 1; i < BASE.length; i++) {
      double height = BASE[i] - BASE[i - 1];
      BASE_TEMPERATURE[i] = layerTemperature(BASE_TEMPERATURE[i - 1], LAPSE[i - 1], height);
      BASE_PRESSURE[i] = pressureAbove(i - 1, height);
    }
  }

  private static final Source ISA =
      Source.fromMemory("ISO 2533:1975, Standard Atmosphere", "barometric formulas and layer table");

  /** The temperature in a layer: {@link #layerTemperature}. */
  public static final Formula LAYER_TEMPERATURE =
      Formula.named("temperature in a layer of the standard atmosphere")
          .gives("T", Temperature.KELVIN)
          .as("T_b + L·h")
          .where("T_b", "temperature at the base of the layer", Temperature.KELVIN, 216.65, 288.15)
          .where("L", "temperature gradient [K/m]", -0.0065, 0.0028)
          .where("h", "geopotential height above the base", Length.METRE, -5_000, 15_000)
          .from(ISA)
          .computedBy(StandardAtmosphere::layerTemperature);

  /** The pressure in a layer with a temperature gradient: {@link #gradientLayerPressure}. */
  public static final Formula GRADIENT_LAYER_PRESSURE =
      Formula.named("pressure in a layer with a temperature gradient")
          .gives("p", Pressure.PASCAL)
          .as("p_b·(1 + L·h/T_b)^(−9.80665/(287.05287·L))")
          .where("p_b", "pressure at the base of the layer", Pressure.PASCAL, 800, 101_325)
          .where("T_b", "temperature at the base of the layer", Temperature.KELVIN, 216.65, 288.15)
          .where("L", "temperature gradient, not zero [K/m]", -0.0065, 0.0028)
          .where("h", "geopotential height above the base", Length.METRE, -5_000, 15_000)
          .from(ISA)
          .computedBy(StandardAtmosphere::gradientLayerPressure);

  /** The pressure in a layer of one temperature: {@link #isothermalLayerPressure}. */
  public static final Formula ISOTHERMAL_LAYER_PRESSURE =
      Formula.named("pressure in a layer of one temperature")
          .gives("p", Pressure.PASCAL)
          .as("p_b·exp(−9.80665·h/(287.05287·T_b))")
          .where("p_b", "pressure at the base of the layer", Pressure.PASCAL, 5_000, 30_000)
          .where("T_b", "temperature of the layer", Temperature.KELVIN, 180, 300)
          .where("h", "geopotential height above the base", Length.METRE, 0, 9_000)
          .from(ISA)
          .computedBy(StandardAtmosphere::isothermalLayerPressure);

  /** Geopotential from geometric altitude: {@link #geopotentialAltitude}. */
  public static final Formula GEOPOTENTIAL_ALTITUDE =
      Formula.named("geopotential altitude")
          .gives("H", Length.METRE)
          .as("6356766·Z/(6356766 + Z)")
          .where("Z", "geometric altitude", Length.METRE, -5_000, 47_400)
          .from(ISA)
          .computedBy(StandardAtmosphere::geopotentialAltitude);

  private StandardAtmosphere() {}

  /**
   * The temperature on a standard day.
   *
   * @param altitude geopotential altitude H [m], −5,000 to 47,000
   * @return T [K]
   * @throws IllegalArgumentException if the altitude is outside the range
   */
  public static double temperature(double altitude) {
    int layer = layerAt(altitude);
    return layerTemperature(BASE_TEMPERATURE[layer], LAPSE[layer], altitude - BASE[layer]);
  }

  /**
   * The pressure on a standard day.
   *
   * @param altitude geopotential altitude H [m], −5,000 to 47,000
   * @return p [Pa]
   * @throws IllegalArgumentException if the altitude is outside the range
   */
  public static double pressure(double altitude) {
    int layer = layerAt(altitude);
    return pressureAbove(layer, altitude - BASE[layer]);
  }

  /**
   * The density on a standard day.
   *
   * @param altitude geopotential altitude H [m], −5,000 to 47,000
   * @return ρ [kg/m³]
   * @throws IllegalArgumentException if the altitude is outside the range
   */
  public static double density(double altitude) {
    return Air.density(pressure(altitude), temperature(altitude));
  }

  /**
   * The altitude at which a standard day has some pressure: 11,000 m for 22,632.04 Pa.
   *
   * @param pressure p [Pa], that of −5,000 to 47,000 m (177,687 to 110.9 Pa)
   * @return pressure altitude H_p [m]
   * @throws IllegalArgumentException if the standard has no such pressure
   */
  public static double pressureAltitude(double pressure) {
    if (!(pressure <= pressure(LOWEST_ALTITUDE) && pressure >= pressure(HIGHEST_ALTITUDE))) {
      throw outside("pressure", pressure, pressure(HIGHEST_ALTITUDE), pressure(LOWEST_ALTITUDE), "Pa");
    }
    int layer = BASE.length - 1;
    while (layer > 0 && pressure > BASE_PRESSURE[layer]) {
      layer--;
    }
    double ratio = pressure / BASE_PRESSURE[layer];
    double lapse = LAPSE[layer];
    double temperature = BASE_TEMPERATURE[layer];
    double height =
        lapse == 0.0
            ? -Math.log(ratio) * Air.GAS_CONSTANT * temperature / STANDARD_GRAVITY
            : temperature / lapse * (Math.pow(ratio, -Air.GAS_CONSTANT * lapse / STANDARD_GRAVITY) - 1.0);
    return within(BASE[layer] + height);
  }

  /**
   * The altitude at which a standard day has some density: 2,524.69 m for 0.954457 kg/m³.
   *
   * @param density ρ [kg/m³], that of −5,000 to 47,000 m (1.930 to 0.001428 kg/m³)
   * @return density altitude H_ρ [m]
   * @throws IllegalArgumentException if the standard has no such density
   */
  public static double densityAltitude(double density) {
    if (!(density <= density(LOWEST_ALTITUDE) && density >= density(HIGHEST_ALTITUDE))) {
      throw outside("density", density, density(HIGHEST_ALTITUDE), density(LOWEST_ALTITUDE), "kg/m³");
    }
    int layer = BASE.length - 1;
    while (layer > 0 && density > Air.density(BASE_PRESSURE[layer], BASE_TEMPERATURE[layer])) {
      layer--;
    }
    double temperature = BASE_TEMPERATURE[layer];
    double ratio = density / Air.density(BASE_PRESSURE[layer], temperature);
    double lapse = LAPSE[layer];
    double height =
        lapse == 0.0
            ? -Math.log(ratio) * Air.GAS_CONSTANT * temperature / STANDARD_GRAVITY
            : temperature / lapse
                * (Math.pow(ratio, -1.0 / (1.0 + STANDARD_GRAVITY / (Air.GAS_CONSTANT * lapse))) - 1.0);
    return within(BASE[layer] + height);
  }

  /**
   * The temperature in a layer, T = T_b + L·h: 216.65 K from 288.15 K, −0.0065 K/m and 11,000 m.
   *
   * @param baseTemperature T_b at the base of the layer [K]
   * @param lapse temperature gradient L [K/m]
   * @param height geopotential height h above the base [m]
   * @return T [K]
   */
  public static double layerTemperature(double baseTemperature, double lapse, double height) {
    return baseTemperature + lapse * height;
  }

  /**
   * The pressure in a layer with a gradient, p = p_b·(1 + L·h/T_b)^(−g₀/(R·L)): 89,874.6 Pa at 1,000 m.
   *
   * @param basePressure p_b at the base of the layer [Pa]
   * @param baseTemperature T_b at the base of the layer [K]
   * @param lapse temperature gradient L [K/m], not zero
   * @param height geopotential height h above the base [m]
   * @return p [Pa]
   */
  public static double gradientLayerPressure(
      double basePressure, double baseTemperature, double lapse, double height) {
    return basePressure
        * Math.pow(1.0 + lapse * height / baseTemperature, -STANDARD_GRAVITY / (Air.GAS_CONSTANT * lapse));
  }

  /**
   * The pressure in a layer of one temperature, p = p_b·exp(−g₀·h/(R·T_b)): 12,044.6 Pa at 15,000 m.
   *
   * @param basePressure p_b at the base of the layer [Pa]
   * @param temperature T_b of the layer [K]
   * @param height geopotential height h above the base [m]
   * @return p [Pa]
   */
  public static double isothermalLayerPressure(double basePressure, double temperature, double height) {
    return basePressure * Math.exp(-STANDARD_GRAVITY * height / (Air.GAS_CONSTANT * temperature));
  }

  /**
   * Geopotential from geometric altitude, H = r₀·Z/(r₀ + Z): 9,984.29 m for 10,000 m.
   *
   * @param geometricAltitude Z above mean sea level [m], above −r₀
   * @return H [m]
   */
  public static double geopotentialAltitude(double geometricAltitude) {
    return EARTH_RADIUS * geometricAltitude / (EARTH_RADIUS + geometricAltitude);
  }

  /**
   * Geometric from geopotential altitude, Z = r₀·H/(r₀ − H): 10,015.76 m for 10,000 m.
   *
   * @param geopotentialAltitude H [m], below r₀
   * @return Z [m]
   */
  public static double geometricAltitude(double geopotentialAltitude) {
    return EARTH_RADIUS * geopotentialAltitude / (EARTH_RADIUS - geopotentialAltitude);
  }

  /**
   * The integral of dH/T from sea level: what one kelvin of offset adds to the height of a column of air [m/K].
   *
   * @param altitude geopotential altitude [m], in the range
   */
  static double heightPerKelvin(double altitude) {
    int layer = layerAt(altitude);
    double sum = heightPerKelvin(layer, altitude - BASE[layer]);
    for (int i = 0; i < layer; i++) {
      sum += heightPerKelvin(i, BASE[i + 1] - BASE[i]);
    }
    return sum;
  }

  private static double heightPerKelvin(int layer, double height) {
    double temperature = BASE_TEMPERATURE[layer];
    return LAPSE[layer] == 0.0
        ? height / temperature
        : Math.log1p(LAPSE[layer] * height / temperature) / LAPSE[layer];
  }

  private static double pressureAbove(int layer, double height) {
    return LAPSE[layer] == 0.0
        ? isothermalLayerPressure(BASE_PRESSURE[layer], BASE_TEMPERATURE[layer], height)
        : gradientLayerPressure(BASE_PRESSURE[layer], BASE_TEMPERATURE[layer], LAPSE[layer], height);
  }

  private static int layerAt(double altitude) {
    if (!(altitude >= LOWEST_ALTITUDE && altitude <= HIGHEST_ALTITUDE)) {
      throw outside("geopotential altitude", altitude, LOWEST_ALTITUDE, HIGHEST_ALTITUDE, "m");
    }
    int layer = BASE.length - 1;
    while (layer > 0 && altitude < BASE[layer]) {
      layer--;
    }
    return layer;
  }

  /** Takes off what rounding adds beyond the ends. */
  private static double within(double altitude) {
    return Math.max(LOWEST_ALTITUDE, Math.min(HIGHEST_ALTITUDE, altitude));
  }

  private static IllegalArgumentException outside(String what, double value, double low, double high, String unit) {
    return new IllegalArgumentException(
        what + " must be " + NamedUnit.NUMBER.format(low, 6) + " to " + NamedUnit.NUMBER.format(high, 6) + " " + unit
            + " (the range of the standard atmosphere), was " + NamedUnit.NUMBER.format(value, 9) + " " + unit);
  }
}
