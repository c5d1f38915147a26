// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

/**
 * A body seen from the side: its upper and lower contour, its wall, and an upsweep that a layout gives it beyond what
 * its
 * family has of its own.
 *
 * @param body the body
 * @param wall thickness of its wall, zero for none to show
 * @param upsweepStart where the upsweep begins, as a share of the length
 * @param upsweep angle of the centre line from there on
 */
public record BodyProfile(Fuselage body, Length wall, double upsweepStart, Angle upsweep) {

  /** Refuses what is no part of the body. */
  public BodyProfile {
    Objects.requireNonNull(body, "body");
    Door.notNegative(wall, "wall");
    Door.within(upsweepStart, 0.0, 1.0, "start of the upsweep");
    Door.notNegative(upsweep, "upsweep");
  }

  /**
   * A body as it is.
   *
   * @param body the body
   * @return its profile, without wall or further upsweep
   */
  public static BodyProfile of(Fuselage body) {
    Objects.requireNonNull(body, "body");
    return new BodyProfile(body, Length.ZERO, 1.0, Angle.ZERO);
  }

  /**
   * The same with a wall.
   *
   * @param thickness thickness, not negative
   * @return the profile
   */
  public BodyProfile withWall(Length thickness) {
    Objects.requireNonNull(thickness, "thickness");
    return new BodyProfile(body, thickness, upsweepStart, upsweep);
  }

  /**
   * The same with an upsweep.
   *
   * @param start where it begins, as a share of the length, 0 to 1
   * @param angle angle of the centre line from there on, not negative
   * @return the profile
   */
  public BodyProfile withUpsweep(double start, Angle angle) {
    Objects.requireNonNull(angle, "angle");
    return new BodyProfile(body, wall, start, angle);
  }

  /** Height of the centre line at a station [m]. */
  double centre(double x) {
    double length = body.length().si();
    double own = body.shape().centreHeight(x, length, body.diameter().si());
    return own + upsweep.tangent() * Math.max(0.0, x - upsweepStart * length);
  }

  /** Half the height at a station [m]. */
  double half(double x) {
    return 0.5 * body.shape().height(x, body.length().si(), body.diameter().si());
  }
}
