// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * Slope of the lift curve of a whole wing, from that of its section.
 *
 * <pre>{@code a = dC_L/dα     a₀ = dc_l/dα of the section     A = b²/S}</pre>
 *
 * <p>Three closed forms. The lifting line's is exact for high aspect ratio; Helmbold's also meets the limit of a very low
 * one, πA/2; the handbook's adds sweep and Mach number and is Helmbold's without them. Use Helmbold's for tails of aspect
 * ratio 3 to 4.
 */
public final class LiftSlope {
  /** Helmbold's equation. */
  public static final Formula HELMBOLD =
      Formula.named("lift slope, Helmbold")
          .gives("a", NamedUnit.PER_RADIAN)
          .as("a_0 / (√(1 + (a_0/(π·A))²) + a_0/(π·A))")
          .where("a_0", "lift slope of the section", NamedUnit.PER_RADIAN, 2, 8)
          .where("A", "aspect ratio", 0.2, 60)
          .from(Source.published("Anderson, Aircraft Performance and Design, 1999", "p. 91, after Helmbold 1942"))
          .computedBy(LiftSlope::helmbold);

  /** The lifting line's formula. */
  public static final Formula LIFTING_LINE =
      Formula.named("lift slope, lifting line")
          .gives("a", NamedUnit.PER_RADIAN)
          .as("a_0 / (1 + a_0/(π·A)·(1 + τ))")
          .where("a_0", "lift slope of the section", NamedUnit.PER_RADIAN, 2, 8)
          .where("A", "aspect ratio", 4, 60)
          .where("τ", "correction for the shape of the planform", 0, 0.4)
          .from(Source.published("Glauert, The Elements of Aerofoil and Airscrew Theory, 2nd ed., 1947", "ch. XI"))
          .computedBy(LiftSlope::liftingLine);

  /** The handbook's formula. */
  public static final Formula HANDBOOK =
      Formula.named("lift slope, handbook")
          .gives("a", NamedUnit.PER_RADIAN)
          .as("2·π·A / (2 + √(4 + A²·β²/κ²·(1 + tan(Λ)²/β²)))")
          .where("A", "aspect ratio", 0.2, 60)
          .where("β", "√(1 − M²)", 0.4, 1)
          .where("κ", "section slope times β over 2π", 0.5, 1.2)
          .where("Λ", "sweep of the half-chord line", Angle.RADIAN, -1.0, 1.0)
          .from(Source.published("Leifsson, AAE 451 course book, Purdue", "after USAF DATCOM sec. 4.1.3.2"))
          .computedBy(LiftSlope::handbook);

  private LiftSlope() {}

  /**
   * Helmbold's equation, for unswept wings of any aspect ratio.
   *
   * <pre>{@code a = a₀/(√(1 + (a₀/πA)²) + a₀/πA)}</pre>
   *
   * <p>Example: a₀ = 2π, A = 4 gives 3.88322.
   *
   * @param sectionSlope a₀ [1/rad], positive
   * @param aspectRatio A, positive
   * @return a [1/rad]
   */
  public static double helmbold(double sectionSlope, double aspectRatio) {
    double part = sectionSlope / (Math.PI * aspectRatio);
    return sectionSlope / (Math.sqrt(1.0 + part * part) + part);
  }

  /**
   * The lifting line's formula, for unswept wings of aspect ratio 4 or more.
   *
   * <pre>{@code a = a₀/(1 + (a₀/πA)·(1 + τ))}</pre>
   *
   * <p>Example: a₀ = 2π, A = 8, τ = 0.0632 (taper ratio 0.5) gives 4.9638.
   *
   * @param sectionSlope a₀ [1/rad], positive
   * @param aspectRatio A, positive
   * @param planformCorrection τ, 0 for elliptic loading
   * @return a [1/rad]
   */
  public static double liftingLine(double sectionSlope, double aspectRatio, double planformCorrection) {
    return sectionSlope / (1.0 + sectionSlope / (Math.PI * aspectRatio) * (1.0 + planformCorrection));
  }

  /**
   * The handbook's formula, for swept wings below the speed of sound.
   *
   * <pre>{@code
   * a = 2πA/(2 + √(4 + (A²β²/κ²)·(1 + tan²Λ/β²)))        β² = 1 − M²        κ = a₀·β/2π
   * }</pre>
   *
   * <p>Example: A = 8, β = κ = 1, Λ = 30° gives 4.38937.
   *
   * @param aspectRatio A, positive
   * @param beta β = √(1 − M²), positive
   * @param kappa section slope at that Mach number times β over 2π, positive
   * @param halfChordSweep sweep Λ of the half-chord line [rad]
   * @return a [1/rad]
   */
  public static double handbook(double aspectRatio, double beta, double kappa, double halfChordSweep) {
    double tangent = Math.tan(halfChordSweep);
    double stretched = aspectRatio * beta / kappa;
    return 2.0
        * Math.PI
        * aspectRatio
        / (2.0 + Math.sqrt(4.0 + stretched * stretched * (1.0 + tangent * tangent / (beta * beta))));
  }
}
