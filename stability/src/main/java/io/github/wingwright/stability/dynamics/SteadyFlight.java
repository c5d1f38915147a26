// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import java.util.Locale;
import java.util.Objects;

/**
 * The steady flight that is disturbed: wings level, straight, with the reference lengths of the coefficients.
 *
 * @param speed airspeed u₀ [m/s], positive
 * @param density air density ρ [kg/m³], positive
 * @param pathAngle climb angle θ₀ [rad]; negative in a glide
 * @param area wing area S [m²], positive
 * @param chord mean aerodynamic chord c̄ [m], positive
 * @param span span b [m], positive
 * @param gravity acceleration of gravity g [m/s²], positive
 */
public record SteadyFlight(double speed, double density, double pathAngle, double area, double chord, double span,
    double gravity) {
  /** Standard acceleration of gravity [m/s²]. */
  public static final double STANDARD_GRAVITY = 9.80665;

  public SteadyFlight {
    positive("speed", speed, "m/s");
    positive("density", density, "kg/m³");
    positive("area", area, "m²");
    positive("chord", chord, "m");
    positive("span", span, "m");
    positive("gravity", gravity, "m/s²");
    if (!(Math.abs(pathAngle) < Math.PI / 2)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "path angle must lie within -90° and 90°, was %.4g°", Math.toDegrees(pathAngle)));
    }
  }

  /**
   * From quantities, under standard gravity.
   *
   * @param speed airspeed
   * @param density air density
   * @param pathAngle climb angle, negative in a glide
   * @param area wing area
   * @param chord mean aerodynamic chord
   * @param span span
   */
  public static SteadyFlight of(Speed speed, Density density, Angle pathAngle, Area area, Length chord, Length span) {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(density, "density");
    Objects.requireNonNull(pathAngle, "pathAngle");
    Objects.requireNonNull(area, "area");
    Objects.requireNonNull(chord, "chord");
    Objects.requireNonNull(span, "span");
    return new SteadyFlight(speed.metresPerSecond(), density.kilogramsPerCubicMetre(), pathAngle.radians(),
        area.squareMetres(), chord.metres(), span.metres(), STANDARD_GRAVITY);
  }

  /** Dynamic pressure ½·ρ·u₀² [Pa]. */
  public double dynamicPressure() {
    return density * speed * speed / 2;
  }

  private static void positive(String name, double value, String unit) {
    if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "%s must be positive, was %.6g %s", name, value, unit));
    }
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.4g m/s at %.4g kg/m³, path %.2f°, S %.4g m²", speed, density,
        Math.toDegrees(pathAngle), area);
  }
}
