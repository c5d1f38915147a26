// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.quantity.Angle;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * A condition of flight for the lattice. Rates are about the stability axes, nondimensional in the usual way.
 *
 * @param angleOfAttack α of the x axis [rad], nose up positive
 * @param sideslip β [rad], positive when the wind comes from starboard
 * @param rollRate p·b/(2V) [-], starboard wing going down positive
 * @param pitchRate q·c̄/(2V) [-], nose going up positive
 * @param yawRate r·b/(2V) [-], nose going to starboard positive
 * @param deflections deflection of controls by name [rad]; those not named are zero
 */
public record LatticeCondition(double angleOfAttack, double sideslip, double rollRate, double pitchRate,
    double yawRate, Map<String, Double> deflections) {
  public LatticeCondition {
    Objects.requireNonNull(deflections, "deflections");
    angle("angle of attack", angleOfAttack);
    angle("sideslip", sideslip);
    finite("roll rate", rollRate);
    finite("pitch rate", pitchRate);
    finite("yaw rate", yawRate);
    deflections = Map.copyOf(deflections);
    deflections.forEach((name, value) -> finite("deflection of '" + name + "'", value));
  }

  private static void angle(String name, double value) {
    if (!(Math.abs(value) < Math.PI / 2)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT, "%s must lie within -90° and 90°, was %.4g°",
          name, Math.toDegrees(value)));
    }
  }

  private static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be finite, was " + value);
    }
  }

  /**
   * Straight flight without sideslip.
   *
   * @param angleOfAttack α of the x axis [rad]
   */
  public static LatticeCondition at(double angleOfAttack) {
    return new LatticeCondition(angleOfAttack, 0, 0, 0, 0, Map.of());
  }

  /** Straight flight without sideslip at this angle of attack of the x axis. */
  public static LatticeCondition at(Angle angleOfAttack) {
    Objects.requireNonNull(angleOfAttack, "angleOfAttack");
    return at(angleOfAttack.si());
  }

  /** The same with this sideslip [rad], positive when the wind comes from starboard. */
  public LatticeCondition sideslip(double angle) {
    return new LatticeCondition(angleOfAttack, angle, rollRate, pitchRate, yawRate, deflections);
  }

  /** The same with this sideslip, positive when the wind comes from starboard. */
  public LatticeCondition sideslip(Angle angle) {
    Objects.requireNonNull(angle, "sideslip");
    return sideslip(angle.si());
  }

  /** The same with these rates: p·b/(2V), q·c̄/(2V), r·b/(2V). */
  public LatticeCondition rates(double roll, double pitch, double yaw) {
    return new LatticeCondition(angleOfAttack, sideslip, roll, pitch, yaw, deflections);
  }

  /** The same with one control deflected by this angle [rad]. */
  public LatticeCondition deflect(String control, double angle) {
    Objects.requireNonNull(control, "control");
    Map<String, Double> more = new TreeMap<>(deflections);
    more.put(control, angle);
    return new LatticeCondition(angleOfAttack, sideslip, rollRate, pitchRate, yawRate, more);
  }

  /** The same with one control deflected by this angle. */
  public LatticeCondition deflect(String control, Angle angle) {
    Objects.requireNonNull(angle, "deflection");
    return deflect(control, angle.si());
  }
}
