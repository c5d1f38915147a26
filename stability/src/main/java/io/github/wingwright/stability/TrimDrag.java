// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * What it costs to hold the aircraft in trim with a tail.
 *
 * <pre>{@code
 * C_D,trim = T·ε + T²·(1 + δ_h)/(π·A_h·η_h·S_h/S)
 * }</pre>
 *
 * <p>The first part is the tail's lift tilted back by the wing's downwash: a tail that lifts up costs, one that presses
 * down gains a little, which never makes up for the lift that the wing must carry in addition. The second is the tail's own
 * induced drag. With the far downwash of an elliptic wing the sum with the wing's own is Munk's and Prandtl's drag of two
 * coplanar lifting lines.
 */
public final class TrimDrag {
  private static final Source MUTUAL =
      Source.fromMemory("Munk, The Minimum Induced Drag of Aerofoils, NACA Report 121, 1921", "");

  /** Loss against elliptic loading that is reckoned for a tail. */
  public static final double TAIL_LOSS = 0.05;

  /** Drag of the tail's lift in the downwash. */
  public static final Formula TILTED_LIFT =
      Formula.named("tail lift tilted by the downwash")
          .gives("C_D,ε", NamedUnit.NUMBER)
          .as("T·ε")
          .where("T", "tail lift on the wing area", -1, 1)
          .where("ε", "downwash at the tail", Angle.RADIAN, -0.3, 0.4)
          .from(MUTUAL)
          .computedBy(TrimDrag::tiltedLift);

  /** Induced drag of the tail itself. */
  public static final Formula TAIL_INDUCED =
      Formula.named("induced drag of the tail")
          .gives("C_D,h", NamedUnit.NUMBER)
          .as("T²·(1 + δ_h) / (π·A_h·η_h·s_h)")
          .where("T", "tail lift on the wing area", -1, 1)
          .where("δ_h", "loss of the tail against elliptic loading", 0, 0.5)
          .where("A_h", "aspect ratio of the tail", 0.5, 15)
          .where("η_h", "tail efficiency", 0.3, 1.2)
          .where("s_h", "tail area over wing area", 0.01, 1.5)
          .from(MUTUAL)
          .computedBy(TrimDrag::tailInduced);

  private TrimDrag() {}

  /**
   * Drag of the tail's lift in the downwash.
   *
   * @param tailLift T, positive up
   * @param downwash ε [rad], positive down
   * @return drag coefficient on the wing area; negative for a download behind a lifting wing
   */
  public static double tiltedLift(double tailLift, double downwash) {
    return tailLift * downwash;
  }

  /**
   * Induced drag of the tail itself.
   *
   * <p>Example: T = −0.05, δ_h = 0.05, A_h = 4, η_h = 0.9, S_h/S = 0.2 give 0.00116.
   *
   * @param tailLift T
   * @param loss δ_h
   * @param aspectRatio A_h, positive
   * @param efficiency η_h
   * @param areaRatio S_h/S, positive
   * @return drag coefficient on the wing area
   */
  public static double tailInduced(
      double tailLift, double loss, double aspectRatio, double efficiency, double areaRatio) {
    return tailLift * tailLift * (1.0 + loss) / (Math.PI * aspectRatio * efficiency * areaRatio);
  }
}
