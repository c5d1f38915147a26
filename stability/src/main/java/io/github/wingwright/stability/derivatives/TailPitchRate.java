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
 * C_Lq = 2·η_h·V_g·a_h            C_mq = −2·η_h·V_g·a_h·l_c
 * C_Lα̇ = 2·η_h·V_g·a_h·ε_α        C_mα̇ = −2·η_h·V_g·a_h·l_c·ε_α
 * }</pre>
 * with the arm l_c = l_g/c̄ = h_h − h in mean chords and the volume coefficient V_g = (S_h/S)·l_c both from the <em>centre of
 * gravity</em> (V_h and l_h are from the wing's quarter chord), and rates nondimensional with c̄/(2V). The wing's own part
 * of C_mq, often covered by ten per cent more, is {@link WingPitchRate}. C_Lα̇ and C_mα̇ are quasi-steady: the downwash at
 * the tail is that of the wing's angle a time l/V ago. A lattice in steady flow has neither.
 */
public final class TailPitchRate {
  private static final Source NELSON = Source.fromMemory(
      "R. C. Nelson, Flight Stability and Automatic Control, 2nd ed., 1998", "table 3.3");

  /** Arm of the tail from the centre of gravity. */
  public static final Formula ARM = Formula.named("arm of the tail behind the centre of gravity, in mean chords")
      .gives("l_c")
      .as("h_h − h")
      .where("h_h", "aerodynamic centre of the tail, fraction of c̄", -15, 20)
      .where("h", "centre of gravity, fraction of c̄", -1, 2)
      .from(Source.DEFINITION)
      .computedBy((double tail, double centre) -> tail - centre);

  /** Volume coefficient about the centre of gravity. */
  public static final Formula VOLUME = Formula.named("tail volume coefficient about the centre of gravity")
      .gives("V_g")
      .as("s_h·l_c")
      .where("s_h", "tail area over wing area", 0, 1.5)
      .where("l_c", "arm behind the centre of gravity over mean chord", -10, 20)
      .from(Source.DEFINITION)
      .computedBy((double ratio, double arm) -> ratio * arm);

  /** Pitch damping of the tail. */
  public static final Formula PITCH_DAMPING = Formula.named("pitch damping of the tailplane")
      .gives("C_mq")
      .as("−2·η_h·V_g·a_h·l_c")
      .where("η_h", "tail efficiency", 0.3, 1.2)
      .where("V_g", "tail volume coefficient about the centre of gravity, negative for a foreplane", -1.5, 1.5)
      .where("a_h", "lift slope of the tailplane", NamedUnit.PER_RADIAN, 0, 7)
      .where("l_c", "arm behind the centre of gravity over mean chord", -10, 20)
      .from(NELSON)
      .computedBy(TailPitchRate::pitchDamping);

  /** Pitching moment due to rate of angle of attack. */
  public static final Formula DOWNWASH_LAG = Formula.named("pitching moment of the downwash lag at the tailplane")
      .gives("C_mα̇")
      .as("−2·η_h·V_g·a_h·l_c·ε_α")
      .where("η_h", "tail efficiency", 0.3, 1.2)
      .where("V_g", "tail volume coefficient about the centre of gravity, negative for a foreplane", -1.5, 1.5)
      .where("a_h", "lift slope of the tailplane", NamedUnit.PER_RADIAN, 0, 7)
      .where("l_c", "arm behind the centre of gravity over mean chord", -10, 20)
      .where("ε_α", "downwash gradient", 0, 1)
      .from(NELSON)
      .computedBy(TailPitchRate::downwashLag);

  private TailPitchRate() {}

  /**
   * Pitch damping of the tail.
   *
   * @param efficiency tail efficiency η_h [-]
   * @param volume tail volume coefficient V_g about the centre of gravity [-]
   * @param liftSlope lift slope of the tailplane a_h [1/rad]
   * @param arm arm behind the centre of gravity over mean chord l_c [-]
   * @return C_mq [-], negative: −8.6 for η_h 0.9, V_g 0.5, slope 3.2, three chords
   */
  public static double pitchDamping(double efficiency, double volume, double liftSlope, double arm) {
    return -2 * efficiency * volume * liftSlope * arm;
  }

  /**
   * Pitching moment due to the rate of angle of attack.
   *
   * @param efficiency tail efficiency η_h [-]
   * @param volume tail volume coefficient V_g about the centre of gravity [-]
   * @param liftSlope lift slope of the tailplane a_h [1/rad]
   * @param arm arm behind the centre of gravity over mean chord l_c [-]
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
   * @param efficiency tail efficiency η_h [-]
   * @param volume tail volume coefficient V_g about the centre of gravity [-]
   * @param liftSlope lift slope of the tailplane a_h [1/rad]
   * @return C_Lq [-], positive
   */
  public static double liftDueToPitchRate(double efficiency, double volume, double liftSlope) {
    return 2 * efficiency * volume * liftSlope;
  }

  /**
   * Lift due to the rate of angle of attack of the tail.
   *
   * @param efficiency tail efficiency η_h [-]
   * @param volume tail volume coefficient V_g about the centre of gravity [-]
   * @param liftSlope lift slope of the tailplane a_h [1/rad]
   * @param downwashGradient ε_α [-]
   * @return C_Lα̇ [-], positive
   */
  public static double liftDueToAngleRate(double efficiency, double volume, double liftSlope,
      double downwashGradient) {
    return 2 * efficiency * volume * liftSlope * downwashGradient;
  }
}
