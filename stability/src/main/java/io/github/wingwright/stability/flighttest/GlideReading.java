// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.quantity.Acceleration;
import java.util.function.ToDoubleFunction;

/**
 * What was measured in one steady glide, and what follows from it: each number as a function of all that was measured, so
 * that an error of the clock that makes speed, lift and drag wrong together is counted once.
 *
 * @param distance d [m]
 * @param height h [m]
 * @param time t [s]
 * @param launch V_l [m/s], or where nobody measured it by how much it was faster than the flight
 * @param thrown whether the launch speed was measured
 * @param mass m [kg]
 * @param density ρ [kg/m³]
 * @param area S [m²]
 */
record GlideReading(
    Measured distance,
    Measured height,
    Measured time,
    Measured launch,
    boolean thrown,
    Measured mass,
    double density,
    double area) {
  /** How well a hand finds the speed of the flight when nobody measures it [m/s] (choice of this library). */
  static final double UNMEASURED_LAUNCH = 0.5;

  private static final double GRAVITY = Acceleration.STANDARD_GRAVITY.si();

  static GlideReading of(FlightTest flight, Measured mass, double density, double area) {
    boolean thrown = flight.launchSpeed().isPresent();
    return new GlideReading(
        flight.distance(),
        flight.height(),
        flight.time().orElseThrow(),
        flight.launchSpeed().orElse(new Measured(0.0, UNMEASURED_LAUNCH)),
        thrown,
        mass,
        density,
        area);
  }

  /** The same with a mass that errs with the other flights, not by itself. */
  GlideReading weighing(double kilograms) {
    return new GlideReading(distance, height, time, launch, thrown, new Measured(kilograms, 0.0), density, area);
  }

  /**
   * The same flight at the speeds of all flights. Its uncertainties are free of its own noise: weights that go with what was
   * read would pull a mean towards the flights that err to one side.
   */
  GlideReading atSpeeds(double flight, double launched) {
    Measured typicalTime = new Measured(Math.hypot(distance.value(), height.value()) / flight, time.uncertainty());
    Measured typicalLaunch = new Measured(thrown ? launched : 0.0, launch.uncertainty());
    return new GlideReading(distance, height, typicalTime, typicalLaunch, thrown, mass, density, area);
  }

  private Measured of(ToDoubleFunction<double[]> function) {
    return Measured.propagated(function, distance, height, time, launch, mass);
  }

  Measured speed() {
    return of(GlideReading::speed);
  }

  /** Height used up over distance, 1/E. */
  Measured slope() {
    return of(v -> used(v) / v[0]);
  }

  Measured liftToDrag() {
    return of(v -> v[0] / used(v));
  }

  Measured sinkRate() {
    return of(v -> used(v) / v[2]);
  }

  Measured lift() {
    return of(this::lift);
  }

  Measured drag() {
    return of(v -> lift(v) * used(v) / v[0]);
  }

  /** Drag coefficient beyond that of a law at the same lift and speed. */
  Measured excess(DragLaw law, double viscosity) {
    return of(v -> {
      double lift = lift(v);
      return lift * used(v) / v[0] - law.likelyCoefficient(lift, speed(v), viscosity);
    });
  }

  private static double speed(double[] v) {
    return Math.hypot(v[0], v[1]) / v[2];
  }

  private double used(double[] v) {
    double launched = thrown ? v[3] : speed(v) + v[3];
    return GlideResult.energyHeight(v[0], v[1], v[2], launched);
  }

  private double lift(double[] v) {
    double slope = used(v) / v[0];
    double speed = speed(v);
    return v[4] * GRAVITY / Math.sqrt(1.0 + slope * slope) / (0.5 * density * speed * speed * area);
  }
}
