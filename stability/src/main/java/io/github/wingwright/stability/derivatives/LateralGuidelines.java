// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Ranges that the static lateral derivatives of good aircraft keep to, and what to change outside them.
 *
 * <p>Two sets: piloted light aeroplanes, and small models that fly by themselves, which carry more dihedral for their
 * size because nobody levels their wings.
 */
public final class LateralGuidelines {
  private static final Source STABLE = Source.published("14 CFR 23.177, static directional and lateral stability", "");

  private final Guideline weathercock;
  private final Guideline dihedralEffect;

  private LateralGuidelines(Guideline weathercock, Guideline dihedralEffect) {
    this.weathercock = weathercock;
    this.dihedralEffect = dihedralEffect;
  }

  /** Piloted light aeroplanes. */
  public static LateralGuidelines lightAeroplane() {
    String who = "light aeroplanes";
    return new LateralGuidelines(
        new Guideline("directional stability C_nβ", Interval.between(0.08, 0.12), NamedUnit.PER_RADIAN, who,
            "Below it, enlarge the fin or lengthen its arm; above it, the fin may be smaller.",
            Source.fromMemory("D. P. Raymer, Aircraft Design: A Conceptual Approach", "near fig. 16.20")),
        new Guideline("dihedral effect C_lβ", Interval.between(-0.15, -0.02), NamedUnit.PER_RADIAN, who,
            "Nearer to zero, add dihedral; further from it, take some away or the tail will wag.",
            Source.COMMON_PRACTICE));
  }

  /** Small models thrown by hand, without anybody steering. */
  public static LateralGuidelines handLaunchedModel() {
    String who = "hand-launched models";
    return new LateralGuidelines(
        new Guideline("directional stability C_nβ", Interval.between(0.03, 0.20), NamedUnit.PER_RADIAN, who,
            "Below it, enlarge the fin or lengthen its arm; above it, a smaller fin needs less dihedral.",
            Source.COMMON_PRACTICE),
        new Guideline("dihedral effect C_lβ", Interval.between(-0.30, -0.06), NamedUnit.PER_RADIAN, who,
            "Nearer to zero, add dihedral; further from it, take some away or the tail will wag.",
            Source.COMMON_PRACTICE));
  }

  /** The guidelines. */
  public List<Guideline> guidelines() {
    return List.of(weathercock, dihedralEffect);
  }

  /**
   * Holds derivatives against the guidelines.
   *
   * @param derivatives of the whole aircraft
   * @return what a builder should know, heaviest first; an aircraft that leaves the wind or rolls into it is serious
   */
  public List<Finding> check(LateralDerivatives derivatives) {
    Objects.requireNonNull(derivatives, "derivatives");
    List<Finding> findings = new ArrayList<>();
    weathercock.check(derivatives.yawSideslip()).ifPresent(findings::add);
    dihedralEffect.check(derivatives.rollSideslip()).ifPresent(findings::add);
    if (derivatives.yawSideslip() <= 0) {
      findings.add(Finding.of(Severity.SERIOUS, "directional stability",
          "The nose turns away from the wind. Enlarge the fin or lengthen its arm.", STABLE));
    }
    if (derivatives.rollSideslip() > 0) {
      findings.add(Finding.of(Severity.SERIOUS, "lateral stability",
          "The aircraft rolls into the wind that comes from the side. Add dihedral.", STABLE));
    }
    return Finding.inOrderOfWeight(findings);
  }

  @Override
  public String toString() {
    return "lateral guidelines for " + weathercock.appliesTo();
  }
}
