// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.AngularRate;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;

/**
 * The classical approximations of the natural motions: short formulas that show what each motion depends on, and how far
 * they are from the full roots.
 *
 * <p>Dimensional derivatives here are per mass or per inertia, as in the texts: Z_w is Z_w/m, M_q is M_q/I_y and so on;
 * in an entry of a {@link StateMatrix} they can be read off directly.
 *
 * <p>How good they are: for a large jet transport (Etkin and Reid, section 6.3) Lanchester gives a phugoid of 107 s
 * against 93 s, and one degree of freedom a roll of −0.434 against −0.562 per second. The short-period formula is the best
 * of them, the simple spiral formula the worst.
 */
public final class ModeApproximations {
  private static final Source ETKIN_6_3 =
      Source.published("B. Etkin and L. D. Reid, Dynamics of Flight, 3rd ed.", "section 6.3");
  private static final Source ETKIN_6_8 =
      Source.published("B. Etkin and L. D. Reid, Dynamics of Flight, 3rd ed.", "section 6.8");

  /** Period of the phugoid when drag and damping are left out. */
  public static final Formula LANCHESTER_PERIOD = Formula.named("period of the phugoid, drag and damping left out")
      .gives("T", Time.SECOND)
      .as("√(2)·π·u_0/g")
      .where("u_0", "airspeed", Speed.METRE_PER_SECOND, 1, 300)
      .where("g", "acceleration of gravity", Acceleration.METRE_PER_SECOND_SQUARED, 1, 20)
      .from(ETKIN_6_3)
      .computedBy(ModeApproximations::lanchesterPeriod);

  /** Damping ratio of the phugoid from the glide ratio. */
  public static final Formula LANCHESTER_DAMPING = Formula.named("damping ratio of the phugoid")
      .gives("ζ")
      .as("1/(√(2)·E)")
      .where("E", "lift-to-drag ratio", 1, 60)
      .from(ETKIN_6_3)
      .computedBy(ModeApproximations::lanchesterDamping);

  /** Natural frequency of the short period. */
  public static final Formula SHORT_PERIOD_FREQUENCY = Formula.named("natural frequency of the short period")
      .gives("ω_n", AngularRate.RADIAN_PER_SECOND)
      .as("√(z_w·m_q − u_0·m_w)")
      .where("z_w", "Z_w per mass", -50, -0.1)
      .where("m_q", "M_q per pitch inertia", -100, -0.1)
      .where("m_w", "M_w per pitch inertia", -100, 0)
      .where("u_0", "airspeed", Speed.METRE_PER_SECOND, 1, 300)
      .from(ETKIN_6_3)
      .computedBy(ModeApproximations::shortPeriodFrequency);

  /** Damping ratio of the short period. */
  public static final Formula SHORT_PERIOD_DAMPING = Formula.named("damping ratio of the short period")
      .gives("ζ")
      .as("−(m_q + z_w + m_wdot·u_0)/(2·ω_n)")
      .where("z_w", "Z_w per mass", -50, -0.1)
      .where("m_q", "M_q per pitch inertia", -100, -0.1)
      .where("m_wdot", "M_ẇ per pitch inertia", -5, 0)
      .where("u_0", "airspeed", Speed.METRE_PER_SECOND, 1, 300)
      .where("ω_n", "natural frequency", AngularRate.RADIAN_PER_SECOND, 0.1, 100)
      .from(ETKIN_6_3)
      .computedBy(ModeApproximations::shortPeriodDamping);

  /** Slow root of the lateral system. */
  public static final Formula SPIRAL_ROOT = Formula.named("root of the spiral")
      .gives("λ", AngularRate.RADIAN_PER_SECOND)
      .as("g·(l_r·n_v − l_v·n_r)/(u_0·(l_v·n_p − l_p·n_v) − g·l_v)")
      .where("l_v", "L_v per roll inertia", -200, -0.001)
      .where("l_p", "L_p per roll inertia", -100, -0.1)
      .where("l_r", "L_r per roll inertia", 0.01, 50)
      .where("n_v", "N_v per yaw inertia", 0.001, 50)
      .where("n_p", "N_p per yaw inertia", -5, 0)
      .where("n_r", "N_r per yaw inertia", -20, -0.01)
      .where("u_0", "airspeed", Speed.METRE_PER_SECOND, 1, 300)
      .where("g", "acceleration of gravity", Acceleration.METRE_PER_SECOND_SQUARED, 1, 20)
      .from(ETKIN_6_8)
      .computedBy(ModeApproximations::spiralRoot);

  private ModeApproximations() {}

  /**
   * Lanchester's period of the phugoid.
   *
   * <pre>{@code T = √2·π·u₀/g}</pre>
   *
   * <p>At 5 m/s it is 2.27 s: a small glider crosses a hall in about two of them.
   *
   * @param speed airspeed u₀ [m/s]
   * @param gravity acceleration of gravity g [m/s²]
   * @return period T [s]
   */
  public static double lanchesterPeriod(double speed, double gravity) {
    return Math.sqrt(2) * Math.PI * speed / gravity;
  }

  /**
   * Damping ratio of the phugoid from the glide ratio: a good glider has a badly damped phugoid.
   *
   * <pre>{@code ζ = 1/(√2·E)}</pre>
   *
   * @param liftToDrag lift-to-drag ratio E [-]
   * @return damping ratio ζ [-]: 0.088 at a glide ratio of 8
   */
  public static double lanchesterDamping(double liftToDrag) {
    return 1 / (Math.sqrt(2) * liftToDrag);
  }

  /**
   * Natural frequency of the short period at constant speed.
   *
   * <pre>{@code ω_n = √(Z_w·M_q − u₀·M_w)}</pre>
   *
   * @param zw Z_w/m [1/s]
   * @param mq M_q/I_y [1/s]
   * @param mw M_w/I_y [1/(m·s)]
   * @param speed airspeed u₀ [m/s]
   * @return ω_n [rad/s]; NaN when the motion does not swing because the aircraft is unstable
   */
  public static double shortPeriodFrequency(double zw, double mq, double mw, double speed) {
    return Math.sqrt(zw * mq - speed * mw);
  }

  /**
   * Damping ratio of the short period at constant speed.
   *
   * <pre>{@code ζ = −(M_q + Z_w + M_ẇ·u₀)/(2·ω_n)}</pre>
   *
   * @param zw Z_w/m [1/s]
   * @param mq M_q/I_y [1/s]
   * @param mwDot M_ẇ/I_y [1/m]
   * @param speed airspeed u₀ [m/s]
   * @param frequency natural frequency ω_n [rad/s], positive
   * @return ζ [-]
   */
  public static double shortPeriodDamping(double zw, double mq, double mwDot, double speed, double frequency) {
    return -(mq + zw + mwDot * speed) / (2 * frequency);
  }

  /**
   * The slow root of the lateral system, from the last two terms of its characteristic polynomial.
   *
   * <pre>{@code
   * λ = g·(L_r·N_v − L_v·N_r)/(u₀·(L_v·N_p − L_p·N_v) − g·L_v)
   * }</pre>
   * The numerator decides the sign: dihedral and yaw damping (L_v·N_r) against fin and the faster outer wing
   * (L_r·N_v). Small terms with Y_v are left out.
   *
   * @param lv L_v/I_x′ [1/(m·s)]
   * @param lp L_p/I_x′ [1/s]
   * @param lr L_r/I_x′ [1/s]
   * @param nv N_v/I_z′ [1/(m·s)]
   * @param np N_p/I_z′ [1/s]
   * @param nr N_r/I_z′ [1/s]
   * @param speed airspeed u₀ [m/s]
   * @param gravity acceleration of gravity g [m/s²]
   * @return root λ [1/s], positive when the spiral tightens
   */
  public static double spiralRoot(double lv, double lp, double lr, double nv, double np, double nr, double speed,
      double gravity) {
    return gravity * (lr * nv - lv * nr) / (speed * (lv * np - lp * nv) - gravity * lv);
  }

  /**
   * The phugoid as an exchange of speed and height at constant angle of attack.
   *
   * <pre>{@code λ² − X_u·λ − Z_u·g/u₀ = 0}</pre>
   *
   * @param longitudinal a longitudinal system in level flight
   * @param gravity acceleration of gravity [length unit of the matrix per s²]
   * @return the motion
   */
  public static Mode phugoid(StateMatrix longitudinal, double gravity) {
    expect(longitudinal, false);
    return quadratic(ModeKind.PHUGOID, ModeKind.SPEED_DIVERGENCE, -longitudinal.entry(0, 0),
        -longitudinal.entry(1, 0) * gravity / longitudinal.speed());
  }

  /**
   * The short period at constant speed: the middle two states of the matrix alone.
   *
   * @param longitudinal a longitudinal system
   * @return the motion
   */
  public static Mode shortPeriod(StateMatrix longitudinal) {
    expect(longitudinal, false);
    StateMatrix a = longitudinal;
    return quadratic(ModeKind.SHORT_PERIOD, ModeKind.PITCH_DIVERGENCE, -(a.entry(1, 1) + a.entry(2, 2)),
        a.entry(1, 1) * a.entry(2, 2) - a.entry(1, 2) * a.entry(2, 1));
  }

  /**
   * Roll alone: λ = L_p.
   *
   * @param lateral a lateral system
   * @return the motion
   */
  public static Mode roll(StateMatrix lateral) {
    expect(lateral, true);
    return new Mode(ModeKind.ROLL, lateral.entry(1, 1), 0);
  }

  /**
   * The spiral from the last two terms of the characteristic polynomial.
   *
   * @param lateral a lateral system
   * @param gravity acceleration of gravity [length unit of the matrix per s²]
   * @return the motion
   */
  public static Mode spiral(StateMatrix lateral, double gravity) {
    expect(lateral, true);
    StateMatrix a = lateral;
    return new Mode(ModeKind.SPIRAL, spiralRoot(a.entry(1, 0), a.entry(1, 1), a.entry(1, 2), a.entry(2, 0),
        a.entry(2, 1), a.entry(2, 2), a.speed(), gravity), 0);
  }

  /**
   * The Dutch roll without roll: sideslip and yaw rate alone.
   *
   * <pre>{@code λ² − (Y_v + N_r)·λ + Y_v·N_r + N_v·(u₀ − Y_r) = 0}</pre>
   *
   * @param lateral a lateral system
   * @return the motion
   */
  public static Mode dutchRoll(StateMatrix lateral) {
    expect(lateral, true);
    StateMatrix a = lateral;
    return quadratic(ModeKind.DUTCH_ROLL, ModeKind.YAW_DIVERGENCE, -(a.entry(0, 0) + a.entry(2, 2)),
        a.entry(0, 0) * a.entry(2, 2) - a.entry(0, 2) * a.entry(2, 0));
  }

  /** λ² + bλ + c = 0: the pair, or the greater of two real roots. */
  private static Mode quadratic(ModeKind swinging, ModeKind growing, double b, double c) {
    double discriminant = b * b / 4 - c;
    if (discriminant < 0) {
      return new Mode(swinging, -b / 2, Math.sqrt(-discriminant));
    }
    double greater = -b / 2 + Math.sqrt(discriminant);
    return new Mode(greater > 0 ? growing : swinging, greater, 0);
  }

  private static void expect(StateMatrix matrix, boolean lateral) {
    if (matrix.isLateral() != lateral) {
      throw new IllegalArgumentException("state matrix must be " + (lateral ? "lateral" : "longitudinal") + ", was "
          + matrix);
    }
  }
}
