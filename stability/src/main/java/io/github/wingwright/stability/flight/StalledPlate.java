// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;

/**
 * Lift and drag of a wing behind its stall: a plate that the flow has left, joined to the wing at the stall.
 *
 * <pre>{@code
 * C_D,max = 1.11 + 0.018·A
 * C_L = ½·C_D,max·sin 2α + k_L·cos²α/sin α     k_L = (C_L,s − C_D,max·sin α_s·cos α_s)·sin α_s/cos²α_s
 * C_D = C_D,max·sin²α + k_D·cos α              k_D = (C_D,s − C_D,max·sin²α_s)/cos α_s
 * }</pre>
 *
 * <p>α_s is the angle of the chord at the stall, C_L,s and C_D,s what the wing has there. The formulas were made for blades
 * of full size at α from the stall to 90°; for a small glider they say that lift is lost and drag gained, and roughly how
 * much. A finding of a stall is worth more than the path after it.
 *
 * <p>How much: against a published section 15 % thick at a Reynolds number of 160,000, which stalls at 10°, the lift is 3.3 times
 * what was measured at 15°, 1.8 times at 20°, 1.2 times at 25°, within a tenth from 30° on; the drag is half at 15°, two thirds
 * at 20°, three quarters at 25° and 30° and within a fifth from 45° on (Sheldahl and Klimas, Sandia 1981; the tests hold these
 * factors). Such a section loses its lift at once. A thin plate lets it go slowly, as the formulas do: against a flat one of
 * aspect ratio 2 at a Reynolds number of 140,000, which stalls at 15°, lift and drag are within a sixth at 20° and a tenth at 25°
 * (Pelletier and Mueller 2000; the tests hold these factors too). Thin wings of small gliders are taken to be of this kind.
 *
 * <p>Source: L. A. Viterna, R. D. Corrigan, <i>Fixed pitch rotor performance of large horizontal axis wind turbines</i>,
 * NASA Lewis 1981 (from memory).
 */
public final class StalledPlate {
  private static final Source VITERNA =
      Source.fromMemory("Viterna and Corrigan, Fixed pitch rotor performance of large wind turbines, NASA 1981", "");

  /** Drag of the wing broadside on. */
  public static final Formula BROADSIDE_DRAG =
      Formula.named("drag coefficient of a wing broadside on")
          .gives("C_D,max")
          .as("1.11 + 0.018·A")
          .where("A", "aspect ratio", 1, 30)
          .from(VITERNA)
          .computedBy(StalledPlate::broadsideDrag);

  /** Lift behind the stall. */
  public static final Formula LIFT =
      Formula.named("lift coefficient behind the stall")
          .gives("C_L")
          .as("D/2·sin(2·α) + (C_s − D·sin(α_s)·cos(α_s))·sin(α_s)/cos(α_s)²·cos(α)²/sin(α)")
          .where("D", "drag coefficient broadside on C_D,max", 1, 2)
          .where("C_s", "lift coefficient at the stall", 0.1, 2)
          .where("α_s", "angle of the chord at the stall", Angle.RADIAN, 0.03, 0.5)
          .where("α", "angle of the chord", Angle.RADIAN, 0.03, 1.57)
          .from(VITERNA)
          .computedBy(StalledPlate::lift);

  private StalledPlate() {}

  /**
   * Drag of the wing broadside on.
   *
   * @param aspectRatio A, positive
   * @return C_D,max: 1.218 for A = 6
   */
  public static double broadsideDrag(double aspectRatio) {
    return 1.11 + 0.018 * aspectRatio;
  }

  /**
   * Lift behind the stall.
   *
   * @param broadside C_D,max
   * @param stallLift C_L at the stall, positive
   * @param stallAngle α_s [rad], positive
   * @param angle α [rad], from the stall to π/2
   * @return C_L
   */
  public static double lift(double broadside, double stallLift, double stallAngle, double angle) {
    double sin = Math.sin(stallAngle);
    double cos = Math.cos(stallAngle);
    double k = (stallLift - broadside * sin * cos) * sin / (cos * cos);
    double c = Math.cos(angle);
    return 0.5 * broadside * Math.sin(2.0 * angle) + k * c * c / Math.sin(angle);
  }

  /**
   * Drag behind the stall.
   *
   * @param broadside C_D,max
   * @param stallDrag C_D at the stall
   * @param stallAngle α_s [rad], positive
   * @param angle α [rad], from the stall to π/2
   * @return C_D
   */
  public static double drag(double broadside, double stallDrag, double stallAngle, double angle) {
    double sin = Math.sin(stallAngle);
    double s = Math.sin(angle);
    return broadside * s * s + (stallDrag - broadside * sin * sin) / Math.cos(stallAngle) * Math.cos(angle);
  }
}
