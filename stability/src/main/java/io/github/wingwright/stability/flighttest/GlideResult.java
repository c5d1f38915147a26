// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import java.io.Serializable;
import java.util.Objects;

/**
 * What a timed, straight and steady glide says.
 *
 * <p>The flight uses up its height, and what it was thrown faster than it flies; with V = √(d² + h²)/t:
 *
 * <pre>{@code
 * h_e = h + (V_l² − V²)/(2·g)     E = d/h_e     w = h_e/t     tan γ = 1/E
 * C_L = m·g·cos γ/(½·ρ·V²·S)      C_D = C_L/E
 * }</pre>
 *
 * @param flight the flight
 * @param liftToDrag E
 * @param sinkRate w [m/s]
 * @param speed V [m/s]
 * @param liftCoefficient C_L on the wing area
 * @param dragCoefficient C_D on the wing area
 */
public record GlideResult(
    FlightTest flight,
    Measured liftToDrag,
    Measured sinkRate,
    Measured speed,
    Measured liftCoefficient,
    Measured dragCoefficient)
    implements Serializable {
  public GlideResult {
    Objects.requireNonNull(flight, "flight");
    Objects.requireNonNull(liftToDrag, "liftToDrag");
    Objects.requireNonNull(sinkRate, "sinkRate");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(liftCoefficient, "liftCoefficient");
    Objects.requireNonNull(dragCoefficient, "dragCoefficient");
  }

  private static final double GRAVITY = Acceleration.STANDARD_GRAVITY.si();
  private static final Source ENERGY = Source.library("balance of energy of a steady glide");

  /** The height that a flight uses up. */
  public static final Formula ENERGY_HEIGHT =
      Formula.named("height used up, with what the launch was faster than the flight")
          .gives("h_e", Length.METRE)
          .as("h + (V_l² − (d² + h²)/t²)/(2·9.80665)")
          .where("d", "distance", Length.METRE, 0.5, 500)
          .where("h", "height", Length.METRE, 0.1, 100)
          .where("t", "time", Time.SECOND, 0.2, 300)
          .where("V_l", "launch speed", Speed.METRE_PER_SECOND, 0, 40)
          .from(ENERGY)
          .computedBy(GlideResult::energyHeight);

  /** Lift to drag. */
  public static final Formula LIFT_TO_DRAG =
      Formula.named("lift to drag of a measured glide")
          .gives("E")
          .as("d/h_e")
          .where("d", "distance", Length.METRE, 0.5, 500)
          .where("h_e", "height used up", Length.METRE, 0.05, 100)
          .from(ENERGY)
          .computedBy((double d, double h) -> d / h);

  /**
   * The height that a flight uses up.
   *
   * <pre>{@code h_e = h + (V_l² − (d² + h²)/t²)/(2·g)}</pre>
   *
   * @param distance d [m]
   * @param height h [m]
   * @param time t [s]
   * @param launchSpeed V_l [m/s]
   * @return h_e [m]; 12 m from 1.5 m in 2 s, thrown at 7 m/s, use up 2.1341 m
   */
  public static double energyHeight(double distance, double height, double time, double launchSpeed) {
    double speed = (distance * distance + height * height) / (time * time);
    return height + (launchSpeed * launchSpeed - speed) / (2.0 * GRAVITY);
  }

  /** Reads a flight; where the launch speed was not measured it counts as the speed of the flight, roughly. */
  static GlideResult of(FlightTest flight, Measured mass, double density, double area) {
    GlideReading read = GlideReading.of(flight, mass, density, area);
    return new GlideResult(flight, read.liftToDrag(), read.sinkRate(), read.speed(), read.lift(), read.drag());
  }

  @Override
  public String toString() {
    return "flight " + flight.name() + ": lift to drag " + liftToDrag + " at " + speed.format(Speed.METRE_PER_SECOND);
  }
}
