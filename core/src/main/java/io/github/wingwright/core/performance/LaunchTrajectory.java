// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import java.util.Locale;
import java.util.Objects;

/**
 * The flight of a glider that holds one lift coefficient, as a point: what happens between the hand and the steady glide.
 *
 * <pre>{@code
 * m·dV/dt = −D − m·g·sin γ        m·V·dγ/dt = L − m·g·cos γ        dx/dt = V·cos γ        dh/dt = V·sin γ
 * }</pre>
 *
 * <p>A glider with a fixed tail holds its angle of attack, and with it its lift coefficient, once its quick nod is over. What
 * is left is Lanchester's phugoid with the drag of the design at each speed. The nod, and the stall that comes with it, need
 * the moments of the aircraft.
 *
 * <pre>{@code
 * LaunchTrajectory model = LaunchTrajectory.of(glide).in(Hall.of(metres(27), metres(7)));
 * Flight flight = model.thrown(Throw.level(metresPerSecond(6.5), metres(1.5)));
 * model.bestAngles(GlideGoal.DISTANCE, metresPerSecond(6.5), metres(1.5));
 * }</pre>
 *
 * <p>It is a specification: each call gives a new one.
 */
public final class LaunchTrajectory implements FlightModel {
  /** No wing lifts more, slotted flaps and blowing included. */
  private static final double MOST_LIFT = 10.0;

  private final DragLaw drag;
  private final Area area;
  private final Mass mass;
  private final AirState air;
  private final double lift;
  private final double wind;
  private final Hall hall;
  private final PointFlight equations;

  private LaunchTrajectory(DragLaw drag, Area area, Mass mass, AirState air, double lift, double wind, Hall hall) {
    this.drag = drag;
    this.area = area;
    this.mass = mass;
    this.air = air;
    this.lift = lift;
    this.wind = wind;
    this.hall = hall;
    equations = new PointFlight(drag, area.si(), mass, air.density().si(), air.kinematicViscosity().si(), lift, wind);
  }

  /**
   * The flight of an aircraft, at the lift coefficient of its best glide, outdoors in still air.
   *
   * @param glide how it glides
   * @return its flight
   */
  public static LaunchTrajectory of(GlidePerformance glide) {
    Objects.requireNonNull(glide, "glide");
    return of(glide.drag(), glide.drag().area(), glide.mass(), glide.air(), glide.bestGlide().liftCoefficient());
  }

  /**
   * The flight of anything with a drag.
   *
   * @param drag its drag; a trimmed polar is one
   * @param area the wing area that the coefficients refer to, positive
   * @param mass mass, positive
   * @param air the air
   * @param liftCoefficient lift coefficient that it holds, 0 to 10
   * @return its flight, outdoors in still air
   */
  public static LaunchTrajectory of(DragLaw drag, Area area, Mass mass, AirState air, double liftCoefficient) {
    Objects.requireNonNull(drag, "drag");
    Objects.requireNonNull(air, "air");
    return new LaunchTrajectory(
        drag,
        Door.positive(area, "wing area"),
        Door.positive(mass, "mass"),
        air,
        Door.within(liftCoefficient, 0.0, MOST_LIFT, "lift coefficient"),
        0.0,
        Hall.OUTDOORS);
  }

  /**
   * Trimmed for another lift: by the elevator or the decalage.
   *
   * @param liftCoefficient lift coefficient that it holds, 0 to 10; beyond the usable lift all of the flight counts as
   *     stalled
   * @return the flight
   */
  public LaunchTrajectory atLift(double liftCoefficient) {
    return new LaunchTrajectory(
        drag, area, mass, air, Door.within(liftCoefficient, 0.0, MOST_LIFT, "lift coefficient"), wind, hall);
  }

  /**
   * In a hall.
   *
   * @param other the hall
   * @return the flight in it
   */
  public LaunchTrajectory in(Hall other) {
    Objects.requireNonNull(other, "other");
    return new LaunchTrajectory(drag, area, mass, air, lift, wind, other);
  }

  /**
   * In a steady wind.
   *
   * @param other speed of the wind over the ground, positive in the direction of the throw
   * @return the flight in it
   */
  public LaunchTrajectory inWind(Speed other) {
    return new LaunchTrajectory(drag, area, mass, air, lift, Door.finite(other, "wind").si(), hall);
  }

  @Override
  public FlightEquations equations() {
    return equations;
  }

  @Override
  public double[] start(double speed, double angle, double height) {
    return new double[] {0.0, height, speed * Math.cos(angle) - wind, speed * Math.sin(angle)};
  }

  @Override
  public Hall hall() {
    return hall;
  }

  /**
   * Lift coefficient that it holds.
   *
   * @return C_L
   */
  public double liftCoefficient() {
    return lift;
  }

  /**
   * Flies a map of distances over throw speed and trimmed lift.
   *
   * @param goal what counts
   * @param speeds throw speeds [m/s], rising
   * @param lifts lift coefficients, rising
   * @param angle angle of all throws above the horizon [rad]
   * @param height height of the hand [m]
   * @return the map
   */
  public RangeMap map(GlideGoal goal, double[] speeds, double[] lifts, double angle, double height) {
    Objects.requireNonNull(goal, "goal");
    Objects.requireNonNull(speeds, "speeds");
    Objects.requireNonNull(lifts, "lifts");
    return RangeMap.of(speeds, lifts, cl -> {
      LaunchTrajectory row = atLift(cl);
      return speed -> row.value(goal, speed, angle, height);
    });
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "flight at C_L %.2f, %s, %s", lift, mass, hall);
  }
}
