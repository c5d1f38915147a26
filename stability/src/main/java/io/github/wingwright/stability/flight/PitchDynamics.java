// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import io.github.wingwright.core.performance.FlightEquations;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.dynamics.WingApparentMass;

/**
 * The motion in the plane of symmetry with pitch, for any speed and angle. States: distance, height, u, w, q, θ.
 *
 * <p>u, w are the velocity through the air along axes fixed in the body that are the stability axes of the glide (x forward,
 * z down); θ is the angle of x above the horizon.
 *
 * <pre>{@code
 * α = atan(w/u)      L = ½ρV²S·C_L(α)      D = ½ρV²S·(A(α) + B(α)/√V)
 * m·u̇ = −D·cos α + L·sin α − m·g·sin θ − m·q·w
 * (m + m_a + ¼ρSc̄·C_Lα̇)·ẇ = −D·sin α − L·cos α − ¼ρVSc̄·C_Lq·q + m·g·cos θ + m·q·u
 * I·q̇ = ½ρV²Sc̄·C_m(α) + ¼ρVSc̄²·C_mq·q + (¼ρSc̄²·C_mα̇ − m_a·x_a)·ẇ
 * ẋ = u·cos θ + w·sin θ + wind      ḣ = u·sin θ − w·cos θ
 * }</pre>
 *
 * <p>Linearised about the glide these are the equations of {@code stability.dynamics}. The forces that an apparent mass puts
 * on a body that turns are left out with the moment that belongs to them, which keeps the energy.
 */
final class PitchDynamics implements FlightEquations {
  /** Part of the quickest motion's time that a step takes. */
  private static final double STEP = 0.35;

  /** Below this part of the glide speed the friction no longer grows. */
  private static final double SLOWEST_FRICTION = 0.25;

  private final Body body;
  private final CoefficientTable table;
  private final double wind;
  private final PitchTrim trim;
  private final double forcePerQ;
  private final double still;
  private final double heavy;
  private final double coupling;
  private final double leastSpeed;
  private final double sineOfStall;
  private final double sineOfNegativeStall;

  /**
   * The body in its air.
   *
   * @param mass m
   * @param inertia I about the centre of gravity, apparent inertia included [kg·m²]
   * @param apparent air carried along
   * @param density ρ [kg/m³]
   * @param area S [m²]
   * @param chord c̄ [m]
   * @param gravity g [m/s²]
   * @param liftPitchRate C_Lq
   * @param momentPitchRate C_mq
   * @param liftAngleRate C_Lα̇
   * @param momentAngleRate C_mα̇
   * @param liftSlope C_Lα, for the length of a step [1/rad]
   * @param momentSlope C_mα, for the length of a step [1/rad]
   * @param stallAngle angle against the axis at which the wing or the foreplane stalls [rad]
   * @param negativeStallAngle the same upside down, negative [rad]
   */
  record Body(
      Mass mass,
      double inertia,
      WingApparentMass apparent,
      double density,
      double area,
      double chord,
      double gravity,
      double liftPitchRate,
      double momentPitchRate,
      double liftAngleRate,
      double momentAngleRate,
      double liftSlope,
      double momentSlope,
      double stallAngle,
      double negativeStallAngle) {
    /** The same with stalls at other angles: those of a foreplane go with its setting. */
    Body stallingAt(double upright, double inverted) {
      return new Body(
          mass, inertia, apparent, density, area, chord, gravity, liftPitchRate, momentPitchRate, liftAngleRate,
          momentAngleRate, liftSlope, momentSlope, upright, inverted);
    }
  }

  PitchDynamics(Body body, CoefficientTable table, double wind) {
    this.body = body;
    this.table = table;
    this.wind = wind;
    forcePerQ = 0.5 * body.density * body.area;
    still = 0.25 * body.density * body.area * body.chord;
    heavy = body.mass.si() + body.apparent.heave() + still * body.liftAngleRate;
    coupling = still * body.chord * body.momentAngleRate - body.apparent.heave() * body.apparent.centreBehind();
    sineOfStall = Math.sin(Math.min(body.stallAngle, Math.PI / 2));
    sineOfNegativeStall = Math.sin(Math.max(body.negativeStallAngle, -Math.PI / 2));
    trim = PitchTrim.of(table, body, sineOfNegativeStall, sineOfStall);
    leastSpeed = Double.isNaN(trim.speed()) ? 0.5 : SLOWEST_FRICTION * trim.speed();
  }

  PitchTrim trim() {
    return trim;
  }

  Body body() {
    return body;
  }

  @Override
  public int size() {
    return 6;
  }

  @Override
  public void rates(double[] state, double[] rates) {
    double u = state[2];
    double w = state[3];
    double q = state[4];
    double sin = Math.sin(state[5]);
    double cos = Math.cos(state[5]);
    double v = Math.sqrt(u * u + w * w);
    double place = CoefficientTable.place(v > 0.0 ? w / v : 0.0);
    int cell = CoefficientTable.cell(place);
    double part = place - cell;
    int base = CoefficientTable.base(cell, u >= 0.0);
    double perSpeed = forcePerQ * v;
    double lift = perSpeed * table.value(base, CoefficientTable.LIFT, part);
    double drag =
        perSpeed
            * (table.value(base, CoefficientTable.STEADY_DRAG, part)
                + table.value(base, CoefficientTable.FRICTION_DRAG, part) / Math.sqrt(Math.max(v, leastSpeed)));
    double m = body.mass.si();
    double x = lift * w - drag * u;
    double z = -drag * w - lift * u - still * v * body.liftPitchRate * q;
    double wDot = (z + m * (body.gravity * cos + q * u)) / heavy;
    double moment =
        body.chord * (perSpeed * v * table.value(base, CoefficientTable.MOMENT, part) + still * v * body.momentPitchRate * q);
    rates[0] = u * cos + w * sin + wind;
    rates[1] = u * sin - w * cos;
    rates[2] = x / m - body.gravity * sin - q * w;
    rates[3] = wDot;
    rates[4] = (moment + coupling * wDot) / body.inertia;
    rates[5] = q;
  }

  @Override
  public double airspeed(double[] state) {
    return Math.sqrt(state[2] * state[2] + state[3] * state[3]);
  }

  @Override
  public boolean stalled(double[] state) {
    double v = airspeed(state);
    return state[2] <= 0.0 || state[3] > sineOfStall * v || state[3] < sineOfNegativeStall * v;
  }

  @Override
  public boolean overturned(double[] state) {
    return state[2] < 0.0 || Math.cos(state[5]) < 0.0;
  }

  @Override
  public double step(double airspeed) {
    double fast = Double.isNaN(trim.speed()) ? airspeed : Math.max(airspeed, trim.speed());
    double heave = forcePerQ * fast * body.liftSlope / heavy;
    double damping = still * body.chord * fast * (Math.abs(body.momentPitchRate) + Math.abs(body.momentAngleRate)) / body.inertia;
    double nod = fast * Math.sqrt(forcePerQ * body.chord * Math.abs(body.momentSlope) / body.inertia);
    double turning = Math.max(heave + damping + nod, 10.0 * body.gravity / Math.max(fast, 1.0));
    return STEP / turning;
  }

  @Override
  public Mass mass() {
    return body.mass;
  }

  @Override
  public double gravity() {
    return body.gravity;
  }

  @Override
  public double glideSpeed() {
    return trim.speed();
  }

  @Override
  public double glideAngle() {
    return trim.descent();
  }
}
