// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import java.io.Serializable;
import java.util.Locale;

/**
 * One instant of a flight. Plain numbers, because a flight has hundreds of them; quantities on request.
 *
 * @param seconds time since it left the hand [s]
 * @param x distance from the hand [m]
 * @param h height above the floor [m]
 * @param v airspeed [m/s]
 * @param gamma angle of the path over the ground above the horizon [rad]
 * @param stalled whether the wing is stalled
 */
public record TrackPoint(double seconds, double x, double h, double v, double gamma, boolean stalled)
    implements Serializable {
  /** Refuses numbers that are none. */
  public TrackPoint {
    Door.finite(seconds, "time");
    Door.finite(x, "distance");
    Door.finite(h, "height");
    Door.finite(v, "airspeed");
    Door.finite(gamma, "angle of the path");
  }

  /**
   * Time since it left the hand.
   *
   * @return t
   */
  public Time time() {
    return Time.seconds(seconds);
  }

  /**
   * Distance from the hand.
   *
   * @return x, positive ahead
   */
  public Length distance() {
    return Length.metres(x);
  }

  /**
   * Height above the floor.
   *
   * @return h
   */
  public Length height() {
    return Length.metres(h);
  }

  /**
   * Airspeed.
   *
   * @return V
   */
  public Speed airspeed() {
    return Speed.metresPerSecond(v);
  }

  /**
   * Angle of the path over the ground above the horizon.
   *
   * @return γ, negative in a descent
   */
  public Angle pathAngle() {
    return Angle.radians(gamma);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.2f s: %.2f m far, %.2f m high, %.2f m/s, path %.1f°%s", seconds, x, h, v,
        Math.toDegrees(gamma), stalled ? ", stalled" : "");
  }
}
