// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * What changes when the horizontal tail stands ahead of the wing, as a foreplane or canard.
 *
 * <p>The foreplane feels the wing's upwash: the gradient ε_α is negative there and comes from the elliptic lifting line,
 * F(−x) = 1 − F(x), whatever method is chosen for tails behind. The wing in turn stands in the wake of the foreplane. Two
 * coplanar elliptic loads share the far flow so that the mean downwash over the wing, weighted with its own load, is
 *
 * <pre>{@code ε_w = 2·L_c/(π·q·b²) = 2·T/(π·A)}</pre>
 *
 * <p>with the foreplane's lift coefficient T on the wing area: inside its span the wake presses the wing down, outside it
 * lifts it up. So the wing lifts with a slope that is less by the foreplane's share. This is the most that a foreplane
 * costs: one that stands higher or lower than the wing costs less.
 *
 * <p>A foreplane must stall before the wing does, and it must carry more lift for its area than the wing: both follow from
 * stability, since the centre of gravity lies ahead of the neutral point.
 */
public final class Foreplane {
  private static final Source MUTUAL =
      Source.fromMemory(
          "Munk, The Minimum Induced Drag of Aerofoils, NACA Report 121, 1921", "mutual drag of coplanar elliptic loads");

  /** Lift-curve slope of a wing behind a foreplane. */
  public static final Formula WING_SLOPE =
      Formula.named("lift-curve slope of the wing behind the foreplane")
          .gives("a_w", NamedUnit.PER_RADIAN)
          .as("a·(1 − 2·t / (π·A))")
          .where("a", "lift-curve slope of the wing alone", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("t", "lift slope of the foreplane on the wing area", NamedUnit.PER_RADIAN, 0, 3)
          .where("A", "aspect ratio of the wing", 2, 40)
          .from(MUTUAL)
          .computedBy(Foreplane::wingSlope);

  /** Mean downwash angle of the foreplane at the wing. */
  public static final Formula DOWNWASH =
      Formula.named("downwash of the foreplane at the wing")
          .gives("ε_w", Angle.RADIAN)
          .as("2·T / (π·A)")
          .where("T", "lift of the foreplane on the wing area", -1, 1)
          .where("A", "aspect ratio of the wing", 2, 40)
          .from(MUTUAL)
          .computedBy(Foreplane::downwash);

  /** Where the lift of a foreplane acts in trim. */
  public static final Formula TRIM_CENTRE =
      Formula.named("where the lift of the foreplane acts in trim, fraction of c̄")
          .gives("h_t")
          .as("h_h − 2·C_f / (π·A)")
          .where("h_h", "aerodynamic centre of the foreplane", -15, 0)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("A", "aspect ratio of the wing", 2, 40)
          .from(MUTUAL)
          .computedBy(Foreplane::trimCentre);

  private Foreplane() {}

  /**
   * Lift-curve slope of a wing behind a foreplane.
   *
   * <p>Example: a = 4.8, t = 0.9, A = 8 give 4.456.
   *
   * @param wingSlope a of the wing alone [1/rad]
   * @param foreplaneSlope t of the foreplane on the wing area [1/rad]
   * @param aspectRatio A of the wing, positive
   * @return a_w [1/rad]
   */
  public static double wingSlope(double wingSlope, double foreplaneSlope, double aspectRatio) {
    return wingSlope * (1.0 - 2.0 * foreplaneSlope / (Math.PI * aspectRatio));
  }

  /**
   * Mean downwash angle of the foreplane at the wing, weighted with an elliptic load.
   *
   * @param foreplaneLift T, lift coefficient of the foreplane on the wing area
   * @param aspectRatio A of the wing, positive
   * @return ε_w [rad]
   */
  public static double downwash(double foreplaneLift, double aspectRatio) {
    return 2.0 * foreplaneLift / (Math.PI * aspectRatio);
  }

  /**
   * Where the lift of a foreplane acts in trim. Its wake turns the whole aircraft nose up for the wing to lift the same, and
   * the fuselage with it: at one lift coefficient that is a moment C_mα,f·ε_w, as if the foreplane lifted further ahead.
   *
   * <p>Example: h_h = −2.25, C_mα,f = 0.4, A = 8 give −2.282.
   *
   * @param foreplaneCentre h_h
   * @param fuselageSlope C_mα,f [1/rad]
   * @param aspectRatio A of the wing, positive
   * @return h_t, to be used for h_h in the formulas of {@link TrimFormulas}
   */
  public static double trimCentre(double foreplaneCentre, double fuselageSlope, double aspectRatio) {
    return foreplaneCentre - fuselageSlope * downwash(1.0, aspectRatio);
  }
}
