// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * What a running propeller does to pitch, in three terms.
 *
 * <p>C_T = T/(q·S) is the thrust coefficient on the wing's area, T_d = T/(q·S_d) that on the disc.
 *
 * <pre>{@code
 * thrust line     C_m,T = −C_T·z_T/c̄           Δh_T = (3/2)·(C_T/C_L)·z_T/c̄
 * normal force    n = C_N·(S_d/S)·(1 − ε_p)     Δh_N = n·(h_p − h_n)/(a_w + t + n)
 * slipstream      η_s = η_h·(1 + k·T_d)         the tail works in faster air
 * }</pre>
 *
 * <p>A thrust line above the centre of gravity pitches the nose down, and more so slowly, where a propeller of constant
 * power pulls harder for the dynamic pressure (C_T grows as C_L to the power of 3/2): that is stable. A disc that meets the
 * air at an angle is pushed sideways, upwards here: ahead of the centre of gravity that is a foreplane.
 */
public final class PropellerFormulas {
  private static final Source PERKINS =
      Source.fromMemory("Perkins and Hage, Airplane Performance, Stability and Control, 1949", "chapter 5, power effects");
  private static final Source NORMAL =
      Source.fromMemory(
          "Wolowicz and Yancey, Longitudinal Aerodynamic Characteristics of Light, Twin-Engine, Propeller-Driven Airplanes,"
              + " NASA TN D-6800, 1972",
          "normal force of a propeller, after De Young");
  private static final Source DISC = Source.library("momentum of an actuator disc, slipstream fully contracted");

  /** Moment of the thrust. */
  public static final Formula THRUST_MOMENT =
      Formula.named("pitching moment of the thrust")
          .gives("C_m,T")
          .as("−C_T·z_T / c̄")
          .where("C_T", "thrust over dynamic pressure and wing area", -0.5, 2)
          .where("z_T", "height of the thrust line above the centre of gravity", Length.METRE, -20, 20)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Source.DEFINITION)
          .computedBy((double thrust, double height, double chord) -> -thrust * height / chord);

  /** Shift of the neutral point by the thrust line. */
  public static final Formula THRUST_SHIFT =
      Formula.named("shift of the neutral point by the thrust line")
          .gives("Δh_T")
          .as("1.5·C_T/C_L·z_T / c̄")
          .where("C_T", "thrust over dynamic pressure and wing area", -0.5, 2)
          .where("C_L", "lift coefficient at which it pulls so", 0.1, 3)
          .where("z_T", "height of the thrust line above the centre of gravity", Length.METRE, -20, 20)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(PERKINS)
          .computedBy((double thrust, double lift, double height, double chord) -> 1.5 * thrust / lift * height / chord);

  /** Effective solidity. */
  public static final Formula SOLIDITY =
      Formula.named("effective solidity of the propeller")
          .gives("σ")
          .as("2·B·c_b / (3·π·D)")
          .where("B", "number of blades", 2, 6)
          .where("c_b", "blade chord at three quarters of the radius", Length.METRE, 0.002, 1)
          .where("D", "diameter of the propeller", Length.METRE, 0.05, 6)
          .from(NORMAL)
          .computedBy(
              (double blades, double chord, double diameter) -> 2.0 * blades * chord / (3.0 * Math.PI * diameter));

  /** Slope of the normal force. */
  public static final Formula NORMAL_SLOPE =
      Formula.named("normal-force slope of the propeller on its disc")
          .gives("C_N", NamedUnit.PER_RADIAN)
          .as("4.25·σ/(1 + 2·σ)·sin(θ + 0.1396)·(1 + 0.5·(√(1 + T_d) − 1) + T_d/(4·(2 + T_d)))")
          .where("σ", "effective solidity of the propeller", 0.01, 0.25)
          .where("θ", "blade angle at three quarters of the radius", Angle.RADIAN, 0.1, 0.9)
          .where("T_d", "thrust over dynamic pressure and disc area", 0, 4)
          .from(NORMAL)
          .computedBy(PropellerFormulas::normalSlope);

  static final Formula DISC_SHARE =
      Formula.named("disc area over wing area")
          .gives("s_d")
          .as("π·D·D / (4·S)")
          .where("D", "diameter of the propeller", Length.METRE, 0.05, 6)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .from(Source.DEFINITION)
          .computedBy((double diameter, double area) -> Math.PI * diameter * diameter / (4.0 * area));

  static final Formula DISC_THRUST =
      Formula.named("thrust over dynamic pressure and disc area")
          .gives("T_d")
          .as("C_T / s_d")
          .where("C_T", "thrust over dynamic pressure and wing area", 0, 2)
          .where("s_d", "disc area over wing area", 0.005, 2)
          .from(Source.DEFINITION)
          .computedBy((double thrust, double share) -> thrust / share);

  static final Formula LIFT_SLOPE =
      Formula.named("normal-force slope of the propeller on the wing area")
          .gives("n", NamedUnit.PER_RADIAN)
          .as("C_N·s_d·(1 − ε_p)")
          .where("C_N", "normal-force slope on the disc", NamedUnit.PER_RADIAN, 0, 2)
          .where("s_d", "disc area over wing area", 0.005, 2)
          .where("ε_p", "downwash gradient at the propeller, negative ahead of the wing", -2, 1)
          .from(Source.DEFINITION)
          .computedBy((double normal, double share, double downwash) -> normal * share * (1.0 - downwash));

  /** Shift of the neutral point by the normal force. */
  public static final Formula NORMAL_SHIFT =
      Formula.named("shift of the neutral point by the normal force of the propeller")
          .gives("Δh_N")
          .as("n·(h_p − h_n) / (a_w + t + n)")
          .where("n", "normal-force slope of the propeller on the wing area", NamedUnit.PER_RADIAN, 0, 2)
          .where("h_p", "propeller, fraction of c̄", -15, 20)
          .where("h_n", "neutral point without it", -2, 3)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("t", "lift slope of the tail on the wing area", NamedUnit.PER_RADIAN, 0, 7)
          .from(Sources.NEUTRAL_POINT)
          .computedBy(
              (double n, double place, double point, double wing, double tail) ->
                  n * (place - point) / (wing + tail + n));

  /** Tail efficiency in the slipstream. */
  public static final Formula SLIPSTREAM_EFFICIENCY =
      Formula.named("tail efficiency in the slipstream")
          .gives("η_s")
          .as("η_h·(1 + k·T_d)")
          .where("η_h", "tail efficiency without power", 0.3, 1.2)
          .where("k", "part of the tail in the slipstream", 0, 1)
          .where("T_d", "thrust over dynamic pressure and disc area", 0, 4)
          .from(DISC)
          .computedBy((double eta, double part, double thrust) -> eta * (1.0 + part * thrust));

  static final Formula SLIPSTREAM_SHIFT =
      Formula.named("shift of the neutral point by the slipstream on the tail")
          .gives("Δh_s")
          .as("h_s − h_u")
          .where("h_s", "neutral point with the tail in the slipstream", -2, 3)
          .where("h_u", "neutral point without", -2, 3)
          .from(Source.DEFINITION)
          .computedBy((double with, double without) -> with - without);

  private PropellerFormulas() {}

  /**
   * Slope of the normal force of a propeller against its angle to the air.
   *
   * <pre>{@code C_N = 4.25·σ/(1 + 2·σ)·sin(θ + 8°)·f        f = 1 + ½·(√(1 + T_d) − 1) + T_d/(4·(2 + T_d))}</pre>
   *
   * <p>Example: σ = 0.04, θ = 20°, no thrust give 0.0739; with T_d = 1 the factor f is 1.290.
   *
   * @param solidity σ, effective solidity
   * @param bladeAngle θ at three quarters of the radius [rad]
   * @param discThrust T_d, not negative
   * @return C_N on the disc area [1/rad]
   */
  public static double normalSlope(double solidity, double bladeAngle, double discThrust) {
    double factor = 1.0 + 0.5 * (Math.sqrt(1.0 + discThrust) - 1.0) + discThrust / (4.0 * (2.0 + discThrust));
    return 4.25 * solidity / (1.0 + 2.0 * solidity) * Math.sin(bladeAngle + 0.1396) * factor;
  }
}
