// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Mass;

/**
 * A point with a lift and a drag. States: distance, height, and the two parts of the velocity through the air, forward and
 * up; written so, nothing is special about standing still in the air.
 *
 * <pre>{@code
 * k = ½·ρ·S/m      dv_x/dt = −k·V·(C_D·v_x + C_L·v_z)      dv_z/dt = −k·V·(C_D·v_z − C_L·v_x) − g
 * }</pre>
 */
final class PointFlight implements FlightEquations {
  /** Steps in the time in which the path curves by one radian. */
  private static final double STEPS_PER_RADIAN = 40.0;

  private final DragLaw drag;
  private final Mass mass;
  private final double k;
  private final double nu;
  private final double lift;
  private final double wind;
  private final boolean beyondUsable;
  private final double glideSpeed;
  private final double glideAngle;
  private final double g = Acceleration.STANDARD_GRAVITY.si();

  PointFlight(DragLaw drag, double area, Mass mass, double rho, double nu, double lift, double wind) {
    this.drag = drag;
    this.mass = mass;
    this.k = 0.5 * rho * area / mass.si();
    this.nu = nu;
    this.lift = lift;
    this.wind = wind;
    double p = SteadyGlide.weightOverArea(mass.si(), g, area);
    if (lift > 0.0) {
      beyondUsable = lift > GlideKernel.usableLift(drag, p, rho, nu) * (1.0 + 1e-9);
      glideSpeed = GlideKernel.speed(drag, lift, p, rho, nu);
      glideAngle = SteadyGlide.angle(drag.likelyCoefficient(lift, glideSpeed, nu), lift);
    } else {
      beyondUsable = false;
      glideSpeed = Double.NaN;
      glideAngle = Double.NaN;
    }
  }

  @Override
  public int size() {
    return 4;
  }

  @Override
  public void rates(double[] state, double[] rates) {
    double vx = state[2];
    double vz = state[3];
    double v = Math.sqrt(vx * vx + vz * vz);
    double cd = v > 0.0 ? drag.likelyCoefficient(lift, v, nu) : 0.0;
    rates[0] = vx + wind;
    rates[1] = vz;
    rates[2] = -k * v * (cd * vx + lift * vz);
    rates[3] = -k * v * (cd * vz - lift * vx) - g;
  }

  @Override
  public double airspeed(double[] state) {
    return Math.sqrt(state[2] * state[2] + state[3] * state[3]);
  }

  @Override
  public boolean stalled(double[] state) {
    return beyondUsable;
  }

  @Override
  public boolean overturned(double[] state) {
    return state[2] < 0.0;
  }

  @Override
  public double step(double airspeed) {
    double fast = Double.isNaN(glideSpeed) ? airspeed : Math.max(airspeed, glideSpeed);
    double turning = Math.max(k * lift * fast, g / Math.max(fast, 1.0));
    return 1.0 / (STEPS_PER_RADIAN * turning);
  }

  @Override
  public Mass mass() {
    return mass;
  }

  @Override
  public double gravity() {
    return g;
  }

  @Override
  public double glideSpeed() {
    return glideSpeed;
  }

  @Override
  public double glideAngle() {
    return glideAngle;
  }
}
