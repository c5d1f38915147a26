// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;

/**
 * What it costs to hold the aircraft in trim with a tail.
 *
 * <pre>{@code
 * C_D,trim = 2·T·C_L,w/(π·A) + T²·(1 + δ_h)/(π·A_h·η_h·S_h/S)
 * }</pre>
 *
 * <p>The first part is the mutual induced drag of wing and tail: one stands in the flow that the other turns. A tail that
 * lifts up costs, one that presses down gains a little, which never makes up for the lift that the wing must carry in
 * addition. By Munk's theorem on stagger it depends on the far wake alone, not on the arm, and is the same for a tail and a
 * foreplane. The second part is the tail's own induced drag. With the wing's own the sum is the drag of two coplanar
 * lifting lines with elliptic loads, the shorter of them the tail.
 */
public final class TrimDrag {
  private static final Source MUTUAL =
      Source.fromMemory("Munk, The Minimum Induced Drag of Aerofoils, NACA Report 121, 1921", "the theorem on stagger");

  /** Loss against elliptic loading that is reckoned for a tail. */
  public static final double TAIL_LOSS = 0.05;

  /** Mutual induced drag. */
  public static final Formula MUTUAL_INDUCED =
      Formula.named("mutual induced drag of wing and tail")
          .gives("C_D,wh")
          .as("2·T·C_w / (π·A)")
          .where("T", "tail lift on the wing area", -1, 1)
          .where("C_w", "lift coefficient of the wing", -1, 3)
          .where("A", "aspect ratio of the wing", 2, 40)
          .from(MUTUAL)
          .computedBy(TrimDrag::mutualInduced);

  /** Induced drag of the tail itself. */
  public static final Formula TAIL_INDUCED =
      Formula.named("induced drag of the tail")
          .gives("C_D,h")
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
   * Mutual induced drag of wing and tail.
   *
   * <p>Example: T = −0.05, C_L,w = 0.65, A = 8 give −0.00259.
   *
   * @param tailLift T, positive up
   * @param wingLift lift coefficient of the wing
   * @param aspectRatio A of the wing, positive
   * @return drag coefficient on the wing area; negative for a download behind a lifting wing
   */
  public static double mutualInduced(double tailLift, double wingLift, double aspectRatio) {
    return 2.0 * tailLift * wingLift / (Math.PI * aspectRatio);
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
