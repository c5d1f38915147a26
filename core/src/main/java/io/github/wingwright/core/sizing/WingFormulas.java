// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.WingLoading;

/** How mass, loading and speed ask for wing area. The rest of the planform's formulas are in core.geometry. */
public final class WingFormulas {
  /** Area from mass and wing loading. */
  public static final Formula AREA_FROM_LOADING =
      Formula.named("reference area from wing loading")
          .gives("S", Area.SQUARE_METRE)
          .as("m / w")
          .where("m", "mass", Mass.KILOGRAM, 1e-4, 1e6)
          .where("w", "wing loading", WingLoading.KILOGRAM_PER_SQUARE_METRE, 0.01, 1000)
          .from(Source.DEFINITION)
          .computedBy(WingFormulas::areaFromLoading);

  /** Area from a speed at a lift coefficient. */
  public static final Formula AREA_FROM_SPEED =
      Formula.named("reference area from speed at a lift coefficient")
          .gives("S", Area.SQUARE_METRE)
          .as("2·m·g / (ρ·V²·C_L)")
          .where("m", "mass", Mass.KILOGRAM, 1e-4, 1e6)
          .where("g", "acceleration of gravity", Acceleration.METRE_PER_SECOND_SQUARED, 9.7, 9.9)
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.01, 2)
          .where("V", "speed", Speed.METRE_PER_SECOND, 0.5, 150)
          .where("C_L", "lift coefficient", 0.05, 4)
          .from(Source.DEFINITION)
          .computedBy(WingFormulas::areaFromSpeed);

  /** Mean geometric chord. */
  public static final Formula MEAN_CHORD =
      Formula.named("mean geometric chord")
          .gives("c_g", Length.METRE)
          .as("S / b")
          .where("S", "reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("b", "span", Length.METRE, 0.01, 100)
          .from(Source.DEFINITION)
          .computedBy(WingFormulas::meanChord);

  /** Greatest thickness of the root section. */
  public static final Formula MAXIMUM_THICKNESS =
      Formula.named("greatest thickness of the wing")
          .gives("t", Length.METRE)
          .as("τ·c_r")
          .where("τ", "thickness over chord", 0.001, 0.5)
          .where("c_r", "root chord", Length.METRE, 1e-3, 50)
          .from(Source.DEFINITION)
          .computedBy(WingFormulas::maximumThickness);

  private WingFormulas() {}

  /**
   * Area from mass and wing loading.
   *
   * @param mass mass m [kg]
   * @param loading wing loading w [kg/m²], positive
   * @return S [m²]
   */
  public static double areaFromLoading(double mass, double loading) {
    return mass / loading;
  }

  /**
   * The area that carries a mass in level flight: weight = ½·ρ·V²·S·C_L.
   *
   * @param mass mass m [kg]
   * @param gravity acceleration of gravity g [m/s²]
   * @param density air density ρ [kg/m³], positive
   * @param speed speed V [m/s], positive
   * @param liftCoefficient lift coefficient of the wing C_L, positive
   * @return S [m²]; 30 g at 6 m/s, 1.2 kg/m³ and 0.6 need 0.0227005787 m²
   */
  public static double areaFromSpeed(
      double mass, double gravity, double density, double speed, double liftCoefficient) {
    return 2.0 * mass * gravity / (density * speed * speed * liftCoefficient);
  }

  /**
   * Mean geometric chord.
   *
   * @param area reference area S [m²]
   * @param span span b [m], positive
   * @return S/b [m]
   */
  public static double meanChord(double area, double span) {
    return area / span;
  }

  /**
   * Greatest thickness of the wing.
   *
   * @param thickness thickness over chord τ
   * @param rootChord root chord c_r [m]
   * @return τ·c_r [m]
   */
  public static double maximumThickness(double thickness, double rootChord) {
    return thickness * rootChord;
  }
}
