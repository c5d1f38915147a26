// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;

/**
 * A glide without acceleration, at one lift and one drag coefficient. Exact: no angle is taken as small.
 *
 * <pre>{@code
 * L = W·cos γ      D = W·sin γ      tan γ = C_D/C_L      V² = 2·(W/S)·cos γ/(ρ·C_L)      w = V·sin γ
 * }</pre>
 *
 * <p>γ is the angle of descent, positive down; w the sink rate, positive down; W/S the weight over the wing's area [Pa].
 */
public final class SteadyGlide {
  private static final Source GLIDE =
      Source.restated("Raymer, Aircraft Design: A Conceptual Approach, 6th ed., AIAA 2018", "eqs 17.62 to 17.74");
  private static final Source TURN =
      Source.restated("Raymer, Aircraft Design: A Conceptual Approach, 6th ed., AIAA 2018", "eqs 17.75 to 17.81");

  /** Angle of descent. */
  public static final Formula ANGLE =
      Formula.named("angle of descent")
          .gives("γ", Angle.RADIAN)
          .as("atan(C_D / C_L)")
          .where("C_D", "drag coefficient", 1e-3, 1)
          .where("C_L", "lift coefficient", 0.05, 3)
          .from(GLIDE)
          .computedBy(SteadyGlide::angle);

  /** Speed of a glide. */
  public static final Formula SPEED =
      Formula.named("speed of the glide")
          .gives("V", Speed.METRE_PER_SECOND)
          .as("√(2·P·cos(γ) / (ρ·C_L))")
          .where("P", "weight over wing area", Pressure.PASCAL, 0.1, 10_000)
          .where("γ", "angle of descent", Angle.RADIAN, 0, 1.5)
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.01, 2)
          .where("C_L", "lift coefficient", 0.05, 3)
          .from(GLIDE)
          .computedBy(SteadyGlide::speed);

  /** Sink rate. */
  public static final Formula SINK_RATE =
      Formula.named("sink rate")
          .gives("w", Speed.METRE_PER_SECOND)
          .as("V·sin(γ)")
          .where("V", "speed of the glide", Speed.METRE_PER_SECOND, 0.1, 300)
          .where("γ", "angle of descent", Angle.RADIAN, 0, 1.5)
          .from(GLIDE)
          .computedBy(SteadyGlide::sinkRate);

  /** Speed at which a lift coefficient carries the weight in level flight; at the greatest lift, the stall speed. */
  public static final Formula LEVEL_SPEED =
      Formula.named("speed at a lift coefficient")
          .gives("V", Speed.METRE_PER_SECOND)
          .as("√(2·P / (ρ·C_L))")
          .where("P", "weight over wing area", Pressure.PASCAL, 0.1, 10_000)
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.01, 2)
          .where("C_L", "lift coefficient", 0.05, 3)
          .from(Source.DEFINITION)
          .computedBy(SteadyGlide::levelSpeed);

  /** Weight over wing area. */
  public static final Formula WEIGHT_OVER_AREA =
      Formula.named("weight over wing area")
          .gives("P", Pressure.PASCAL)
          .as("m·g / S")
          .where("m", "mass", Mass.KILOGRAM, 1e-4, 10_000)
          .where("g", "acceleration of gravity", Acceleration.METRE_PER_SECOND_SQUARED, 1, 30)
          .where("S", "wing area", Area.SQUARE_METRE, 1e-4, 1000)
          .from(Source.DEFINITION)
          .computedBy(SteadyGlide::weightOverArea);

  /** Ratio of lift to drag. */
  public static final Formula LIFT_TO_DRAG =
      Formula.named("ratio of lift to drag")
          .gives("L/D")
          .as("C_L / C_D")
          .where("C_L", "lift coefficient", 0.05, 3)
          .where("C_D", "drag coefficient", 1e-3, 1)
          .from(Source.DEFINITION)
          .computedBy(SteadyGlide::liftToDrag);

  /** Distance glided from a height. */
  public static final Formula DISTANCE =
      Formula.named("distance glided")
          .gives("x", Length.METRE)
          .as("h·E")
          .where("h", "height", Length.METRE, 0, 10_000)
          .where("E", "ratio of lift to drag", 0.1, 100)
          .from(Source.DEFINITION)
          .computedBy(SteadyGlide::distance);

  /** Radius of a turn. */
  public static final Formula TURN_RADIUS =
      Formula.named("radius of a turn")
          .gives("R", Length.METRE)
          .as("V² / (g·tan(φ))")
          .where("V", "speed", Speed.METRE_PER_SECOND, 0.1, 300)
          .where("g", "acceleration of gravity", Acceleration.METRE_PER_SECOND_SQUARED, 1, 30)
          .where("φ", "bank angle", Angle.RADIAN, 0.01, 1.4)
          .from(TURN)
          .computedBy(SteadyGlide::turnRadius);

  private SteadyGlide() {}

  /**
   * Angle of descent.
   *
   * <pre>{@code γ = atan(C_D/C_L)}</pre>
   *
   * <p>Example: C_D = 0.1, C_L = 0.7 gives 0.141897 rad (8.13°).
   *
   * @param drag C_D
   * @param lift C_L, positive
   * @return γ [rad]
   */
  public static double angle(double drag, double lift) {
    return Math.atan(drag / lift);
  }

  /**
   * Speed of a glide.
   *
   * <pre>{@code V = √(2·(W/S)·cos γ/(ρ·C_L))}</pre>
   *
   * <p>Example: 7.84532 Pa, γ = 7.42348°, 1.225 kg/m³, C_L = 0.767495 gives 4.068055 m/s.
   *
   * @param weightOverArea W/S [Pa]
   * @param angle γ [rad]
   * @param density ρ [kg/m³]
   * @param lift C_L, positive
   * @return V [m/s]
   */
  public static double speed(double weightOverArea, double angle, double density, double lift) {
    return Math.sqrt(2.0 * weightOverArea * Math.cos(angle) / (density * lift));
  }

  /**
   * Sink rate.
   *
   * <pre>{@code w = V·sin γ}</pre>
   *
   * <p>Example: 4 m/s at 0.1 rad gives 0.399334 m/s.
   *
   * @param speed V [m/s]
   * @param angle γ [rad]
   * @return w [m/s], positive down
   */
  public static double sinkRate(double speed, double angle) {
    return speed * Math.sin(angle);
  }

  /**
   * Speed at which a lift coefficient carries the weight in level flight: the stall speed, at the greatest lift.
   *
   * <pre>{@code V = √(2·(W/S)/(ρ·C_L))}</pre>
   *
   * <p>Example: 26.5 Pa, 1.2 kg/m³, C_L = 0.8 gives 7.43023 m/s.
   *
   * @param weightOverArea W/S [Pa]
   * @param density ρ [kg/m³]
   * @param lift C_L, positive
   * @return V [m/s]
   */
  public static double levelSpeed(double weightOverArea, double density, double lift) {
    return Math.sqrt(2.0 * weightOverArea / (density * lift));
  }

  /**
   * Weight over wing area.
   *
   * <pre>{@code W/S = m·g/S}</pre>
   *
   * <p>Example: 30 g, 9.80665 m/s², 2 dm² gives 14.709975 Pa.
   *
   * @param mass m [kg]
   * @param gravity g [m/s²]
   * @param area S [m²]
   * @return W/S [Pa]
   */
  public static double weightOverArea(double mass, double gravity, double area) {
    return mass * gravity / area;
  }

  /**
   * Ratio of lift to drag.
   *
   * <pre>{@code L/D = C_L/C_D}</pre>
   *
   * <p>Example: 0.7 and 0.1 give 7.
   *
   * @param lift C_L
   * @param drag C_D, positive
   * @return L/D
   */
  public static double liftToDrag(double lift, double drag) {
    return lift / drag;
  }

  /**
   * Distance glided from a height in a steady glide.
   *
   * <pre>{@code x = h·(L/D)}</pre>
   *
   * <p>Example: 1.8 m at 7 gives 12.6 m.
   *
   * @param height h [m]
   * @param liftToDrag L/D
   * @return x [m]
   */
  public static double distance(double height, double liftToDrag) {
    return height * liftToDrag;
  }

  /**
   * By what factor a bank raises the speed of a shallow glide at the same lift coefficient.
   *
   * <pre>{@code (cos φ)^−½}</pre>
   *
   * <p>Example: 60° gives 1.41421356.
   *
   * @param bank φ [rad]
   * @return the factor
   */
  public static double bankedSpeedFactor(double bank) {
    return 1.0 / Math.sqrt(Math.cos(bank));
  }

  /**
   * By what factor a bank raises the sink rate of a shallow glide at the same lift coefficient.
   *
   * <pre>{@code (cos φ)^−1.5}</pre>
   *
   * <p>Example: 60° gives 2.82842712.
   *
   * @param bank φ [rad]
   * @return the factor
   */
  public static double bankedSinkFactor(double bank) {
    double cosine = Math.cos(bank);
    return 1.0 / (cosine * Math.sqrt(cosine));
  }

  /**
   * Radius of a shallow gliding turn.
   *
   * <pre>{@code R = V²/(g·tan φ)}</pre>
   *
   * <p>Example: 5 m/s, 9.80665 m/s², 30° gives 4.41550 m.
   *
   * @param speed V [m/s]
   * @param gravity g [m/s²]
   * @param bank φ [rad], positive
   * @return R [m]
   */
  public static double turnRadius(double speed, double gravity, double bank) {
    return speed * speed / (gravity * Math.tan(bank));
  }
}
