// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;

/**
 * Something that can be thrown: a glider with its air and the hall it flies in.
 *
 * <p>{@link LaunchTrajectory} is the quick one, a point with a lift and a drag. A model with pitch belongs to whoever knows
 * the moments.
 */
public interface FlightModel {
  /**
   * Its equations.
   *
   * @return the equations
   */
  FlightEquations equations();

  /**
   * The states at the throw.
   *
   * @param speed speed over the ground [m/s]
   * @param angle angle above the horizon [rad]
   * @param height height of the hand [m]
   * @return the states in a new array
   */
  double[] start(double speed, double angle, double height);

  /**
   * The room it flies in.
   *
   * @return the hall
   */
  Hall hall();

  /**
   * One flight with its track.
   *
   * @param how how it leaves the hand, below the ceiling
   * @return the flight
   */
  default Flight thrown(Throw how) {
    hall().holds(how.height());
    return Flight.of(equations(), start(how.speed().si(), how.angle().si(), how.height().si()), hall());
  }

  /**
   * How far or how long it flies, on plain numbers, without objects per step.
   *
   * @param goal what counts
   * @param speed speed over the ground [m/s], positive
   * @param angle angle above the horizon [rad]
   * @param height height of the hand [m], positive
   * @return distance [m] or time [s] up to the floor, the ceiling or a wall, whichever it meets first
   */
  default double value(GlideGoal goal, double speed, double angle, double height) {
    FlightRun run = new FlightRun(equations(), false);
    run.fly(start(speed, angle, height), hall(), 0);
    return goal == GlideGoal.DISTANCE ? run.distance() : run.time;
  }

  /**
   * How long a flight is stalled, on plain numbers.
   *
   * @param speed speed over the ground [m/s], positive
   * @param angle angle above the horizon [rad]
   * @param height height of the hand [m], positive
   * @return time [s], 0 if it does not stall
   */
  default double stalledTime(double speed, double angle, double height) {
    FlightRun run = new FlightRun(equations(), false);
    run.fly(start(speed, angle, height), hall(), 0);
    return run.stalledTime;
  }

  /**
   * The best angles to throw at. There may be several, and the best one of a fast throw may point downwards.
   *
   * @param goal what counts
   * @param speed speed over the ground, positive
   * @param height height of the hand, positive, below the ceiling
   * @return every angle that is better than those beside it, and the one for a hand that is not quite true
   */
  default ThrowAngles bestAngles(GlideGoal goal, Speed speed, Length height) {
    hall().holds(height);
    return ThrowOptimum.among(this, goal, Throw.level(speed, height));
  }
}
