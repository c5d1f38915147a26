// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.quantity.Mass;
import java.util.Objects;

/**
 * The equations of a flight in a vertical plane, on plain numbers: whoever has forces can have them flown.
 *
 * <p>The first two states are the distance ahead [m] and the height above the floor [m], so that their rates are the speed
 * over the ground; the others are the affair of the equations. An implementation must be safe from several threads and
 * should not allocate.
 */
public interface FlightEquations {
  /**
   * Number of states.
   *
   * @return 3 or more
   */
  int size();

  /**
   * Rates of change of the states.
   *
   * @param state the states, not to be changed
   * @param rates where the rates go [1/s times the unit of the state]
   */
  void rates(double[] state, double[] rates);

  /**
   * Airspeed.
   *
   * @param state the states
   * @return V [m/s]
   */
  double airspeed(double[] state);

  /**
   * Whether the wing is stalled.
   *
   * @param state the states
   * @return true beyond its greatest lift
   */
  boolean stalled(double[] state);

  /**
   * Whether it is upside down, or flies tail first.
   *
   * @param state the states
   * @return true if so; never, unless the equations say otherwise
   */
  default boolean overturned(double[] state) {
    Objects.requireNonNull(state, "state");
    return false;
  }

  /**
   * How long a step may be that begins at an airspeed; a smooth function of it.
   *
   * @param airspeed airspeed at the start of the step [m/s]
   * @return step [s]
   */
  double step(double airspeed);

  /**
   * Mass.
   *
   * @return m
   */
  Mass mass();

  /**
   * Acceleration of gravity.
   *
   * @return g [m/s²]
   */
  double gravity();

  /**
   * Airspeed of the steady glide that it would settle to.
   *
   * @return V [m/s], NaN if there is none
   */
  double glideSpeed();

  /**
   * Angle of descent of the steady glide that it would settle to, through the air.
   *
   * @return γ [rad], positive down, NaN if there is none
   */
  double glideAngle();
}
