// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import java.util.List;
import java.util.Objects;

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
    Objects.requireNonNull(how, "how");
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
    Objects.requireNonNull(goal, "goal");
    FlightRun run = FlightRun.of(this, speed, angle, height);
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
    return FlightRun.of(this, speed, angle, height).stalledTime;
  }

  /**
   * Distance, time, stall and manner of one flight, on plain numbers, without objects per step.
   *
   * @param speed speed over the ground [m/s], positive
   * @param angle angle above the horizon [rad], within −π/2 and π/2
   * @param height height of the hand [m], positive
   * @param into where distance [m], time [s], the time for which it is stalled [s] and the number of its
   *     {@linkplain FlightManner#numbered manner} go, in this order
   */
  default void fly(double speed, double angle, double height, double[] into) {
    Objects.requireNonNull(into, "into");
    FlightRun run = FlightRun.of(this, speed, angle, height);
    into[0] = run.distance();
    into[1] = run.time;
    into[2] = run.stalledTime;
    into[3] = run.manner().ordinal();
  }

  /**
   * What a thrower should know about a throw, with how much to change where that can be reckoned: the fastest throw at this
   * angle that does not stall, or does not meet the ceiling.
   *
   * @param how how it leaves the hand, below the ceiling
   * @return the findings of the flight, those on stall and ceiling with an amount, heaviest first
   */
  default List<Finding> advice(Throw how) {
    Objects.requireNonNull(how, "how");
    return FlightAdvice.of(this, how);
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
    Objects.requireNonNull(goal, "goal");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(height, "height");
    hall().holds(height);
    return ThrowOptimum.among(this, goal, Throw.level(speed, height));
  }
}
