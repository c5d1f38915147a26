// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * Drag that comes with lift.
 *
 * <pre>{@code C_Di = (1 + δ)·C_L²/(π·A)        K = (1 + δ)/(π·A) + k_v        e = 1/(π·A·K)}</pre>
 *
 * <p>δ is the loss against elliptic loading; the lifting line gives it for any planform. k_v is the growth of profile drag
 * with lift, a property of the section (see {@link SectionPolar}), not of the aspect ratio. The statistical formulas for
 * Oswald's e lump both for full-size aircraft; they come with a finding.
 */
public final class InducedDrag {
  /** Factor of induced drag. */
  public static final Formula FACTOR =
      Formula.named("factor of drag due to lift")
          .gives("K")
          .as("(1 + δ) / (π·A) + k_v")
          .where("δ", "loss against elliptic loading", 0, 0.5)
          .where("A", "aspect ratio", 1, 60)
          .where("k_v", "growth of profile drag with lift squared", 0, 0.2)
          .from(Source.published("Glauert, The Elements of Aerofoil and Airscrew Theory, 2nd ed., 1947", "ch. XI"))
          .computedBy(InducedDrag::factor);

  /** Induced drag coefficient. */
  public static final Formula COEFFICIENT =
      Formula.named("induced drag")
          .gives("C_Di")
          .as("(1 + δ)·C_L² / (π·A)")
          .where("C_L", "lift coefficient", -3, 3)
          .where("δ", "loss against elliptic loading", 0, 0.5)
          .where("A", "aspect ratio", 1, 60)
          .from(Source.published("Glauert, The Elements of Aerofoil and Airscrew Theory, 2nd ed., 1947", "ch. XI"))
          .computedBy(InducedDrag::coefficient);

  /** Oswald's factor from K. */
  public static final Formula OSWALD =
      Formula.named("Oswald's factor")
          .gives("e")
          .as("1 / (π·A·K)")
          .where("A", "aspect ratio", 1, 60)
          .where("K", "factor of drag due to lift", 0.005, 1)
          .from(Source.DEFINITION)
          .computedBy(InducedDrag::oswald);

  /** A statistical fit for Oswald's factor of straight wings. */
  public static final Formula OSWALD_STATISTICAL =
      Formula.named("Oswald's factor, statistics of straight wings")
          .gives("e")
          .as("1.78·(1 − 0.045·A^0.68) − 0.64")
          .where("A", "aspect ratio", 3, 12)
          .from(Sources.raymer("eq. 12.48"))
          .computedBy(InducedDrag::oswaldStatistical);

  private static final Guideline FULL_SIZE =
      Guideline.ofNumber(
          "Oswald's factor from statistics",
          1e6,
          1e9,
          "full-size aircraft by their Reynolds number",
          "It is a fit to full-size aircraft; take δ from the lifting line and the viscous part from the section.",
          Sources.raymer("sec. 12.6.1"));

  private InducedDrag() {}

  /**
   * Factor of drag due to lift.
   *
   * <pre>{@code K = (1 + δ)/(π·A) + k_v}</pre>
   *
   * <p>Example: δ = 0.0172, A = 8, k_v = 0.01 gives 0.0504731.
   *
   * @param loss δ, not negative
   * @param aspectRatio A, positive
   * @param viscous k_v, not negative
   * @return K
   */
  public static double factor(double loss, double aspectRatio, double viscous) {
    return (1.0 + loss) / (Math.PI * aspectRatio) + viscous;
  }

  /**
   * Induced drag coefficient on the wing area.
   *
   * <pre>{@code C_Di = (1 + δ)·C_L²/(π·A)}</pre>
   *
   * <p>Example: C_L = 0.8, δ = 0.0172, A = 8 gives 0.0259028.
   *
   * @param lift C_L
   * @param loss δ, not negative
   * @param aspectRatio A, positive
   * @return C_Di
   */
  public static double coefficient(double lift, double loss, double aspectRatio) {
    return (1.0 + loss) * lift * lift / (Math.PI * aspectRatio);
  }

  /**
   * Oswald's factor of a parabolic polar.
   *
   * <pre>{@code e = 1/(π·A·K)}</pre>
   *
   * <p>Example: A = 8, K = 0.05 gives 0.795775.
   *
   * @param aspectRatio A, positive
   * @param factor K, positive
   * @return e
   */
  public static double oswald(double aspectRatio, double factor) {
    return 1.0 / (Math.PI * aspectRatio * factor);
  }

  /**
   * Oswald's factor of straight wings from statistics; not for sailplanes (A = 20 would give 0.526) and not for models.
   *
   * <pre>{@code e = 1.78·(1 − 0.045·A^0.68) − 0.64}</pre>
   *
   * <p>Example: A = 4 gives 0.934395.
   *
   * @param aspectRatio A, 3 to 12
   * @return e
   */
  public static double oswaldStatistical(double aspectRatio) {
    return 1.78 * (1.0 - 0.045 * Math.pow(aspectRatio, 0.68)) - 0.64;
  }

  /**
   * What to know about a statistical Oswald factor.
   *
   * @param aspectRatio A
   * @param reynolds Reynolds number on the mean chord
   * @return findings outside the statistics
   */
  public static List<Finding> statisticalFindings(double aspectRatio, double reynolds) {
    List<Finding> findings = new ArrayList<>(OSWALD_STATISTICAL.outsideDomain(aspectRatio));
    FULL_SIZE.check(reynolds).ifPresent(findings::add);
    return List.copyOf(findings);
  }
}
