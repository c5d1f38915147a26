// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * What a tailplane adds to the derivatives with pitch rate and with rate of angle of attack.
 *
 * <p>The tail feels a pitch rate as a change of angle q·l/V, and feels the wing's downwash late, by the time l/V that the
 * air takes to reach it.
 * <pre>{@code
 * C_Lq = 2·η·V_h·a_t            C_mq = −2·η·V_h·a_t·l/c̄
 * C_Lα̇ = 2·η·V_h·a_t·ε_α        C_mα̇ = −2·η·V_h·a_t·(l/c̄)·ε_α
 * }</pre>
 * with the volume coefficient V_h = S_t·l/(S·c̄) and the arm l both from the <em>centre of gravity</em>, and rates
 * nondimensional with c̄/(2V). The wing's own part of C_mq is often covered by ten per cent more.
 */
public final class TailPitchRate {
  private static final Source NELSON = Source.fromMemory(
      "R. C. Nelson, Flight Stability and Automatic Control, 2nd ed., 1998", "table 3.3");

  /** Pitch damping of the tail. */
  public static final Formula PITCH_DAMPING = Formula.named("pitch damping of the tailplane")
      .gives("C_mq", NamedUnit.NUMBER)
      .as("−2·η·V_h·a_t·l_c")
      .where("η", "tail efficiency", 0.5, 1.2)
      .where("V_h", "tail volume coefficient from the centre of gravity", 0, 1.5)
      .where("a_t", "lift slope of the tailplane", NamedUnit.PER_RADIAN, 1, 6.3)
      .where("l_c", "arm from the centre of gravity over mean chord", 0, 10)
      .from(NELSON)
      .computedBy(TailPitchRate::pitchDamping);

  /** Pitching moment due to rate of angle of attack. */
  public static final Formula DOWNWASH_LAG = Formula.named("pitching moment of the downwash lag at the tailplane")
      .gives("C_mα̇", NamedUnit.NUMBER)
      .as("−2·η·V_h·a_t·l_c·ε_α")
      .where("η", "tail efficiency", 0.5, 1.2)
      .where("V_h", "tail volume coefficient from the centre of gravity", 0, 1.5)
      .where("a_t", "lift slope of the tailplane", NamedUnit.PER_RADIAN, 1, 6.3)
      .where("l_c", "arm from the centre of gravity over mean chord", 0, 10)
      .where("ε_α", "downwash gradient", 0, 1)
      .from(NELSON)
      .computedBy(TailPitchRate::downwashLag);

  private TailPitchRate() {}

  /**
   * Pitch damping of the tail.
   *
   * @param efficiency tail efficiency η [-]
   * @param volume tail volume coefficient V_h from the centre of gravity [-]
   * @param liftSlope lift slope of the tailplane a_t [1/rad]
   * @param arm arm from the centre of gravity over mean chord l/c̄ [-]
   * @return C_mq [-], negative: −8.6 for η 0.9, V_h 0.5, slope 3.2, three chords
   */
  public static double pitchDamping(double efficiency, double volume, double liftSlope, double arm) {
    return -2 * efficiency * volume * liftSlope * arm;
  }

  /**
   * Pitching moment due to the rate of angle of attack.
   *
   * @param efficiency tail efficiency η [-]
   * @param volume tail volume coefficient V_h from the centre of gravity [-]
   * @param liftSlope lift slope of the tailplane a_t [1/rad]
   * @param arm arm from the centre of gravity over mean chord l/c̄ [-]
   * @param downwashGradient ε_α [-]
   * @return C_mα̇ [-], negative
   */
  public static double downwashLag(double efficiency, double volume, double liftSlope, double arm,
      double downwashGradient) {
    return -2 * efficiency * volume * liftSlope * arm * downwashGradient;
  }

  /**
   * Lift due to pitch rate of the tail.
   *
   * @param efficiency tail efficiency η [-]
   * @param volume tail volume coefficient V_h from the centre of gravity [-]
   * @param liftSlope lift slope of the tailplane a_t [1/rad]
   * @return C_Lq [-], positive
   */
  public static double liftDueToPitchRate(double efficiency, double volume, double liftSlope) {
    return 2 * efficiency * volume * liftSlope;
  }

  /**
   * Lift due to the rate of angle of attack of the tail.
   *
   * @param efficiency tail efficiency η [-]
   * @param volume tail volume coefficient V_h from the centre of gravity [-]
   * @param liftSlope lift slope of the tailplane a_t [1/rad]
   * @param downwashGradient ε_α [-]
   * @return C_Lα̇ [-], positive
   */
  public static double liftDueToAngleRate(double efficiency, double volume, double liftSlope,
      double downwashGradient) {
    return 2 * efficiency * volume * liftSlope * downwashGradient;
  }
}
