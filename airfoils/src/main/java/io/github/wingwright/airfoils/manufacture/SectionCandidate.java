// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.manufacture;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.viscous.ComputedPolar;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.LinearDensity;
import java.util.Locale;
import java.util.Objects;

/**
 * One section in a comparison: how it flies at the wing's Reynolds number, and what it is to make at the wing's chord.
 *
 * @param section the section
 * @param polar its polar, computed with boundary layers
 * @param reynolds Reynolds number of the comparison [1]
 * @param liftToDrag greatest ratio of lift to drag of the section alone up to the likely usable lift: with the greatest, the
 *     likely and the least drag
 * @param bestLift lift coefficient at the likely one [1]
 * @param greatestLift lift coefficient up to which the section is computed to be usable, as a band [1]
 * @param trailingEdge thickness of the trailing edge at the wing's chord
 * @param sparDepth height between the walls at 30 % of the chord; zero where they meet
 * @param massPerSpan mass of the walls per length of span
 */
public record SectionCandidate(
    ComposedSection section,
    ComputedPolar polar,
    double reynolds,
    Band liftToDrag,
    double bestLift,
    Band greatestLift,
    Length trailingEdge,
    Length sparDepth,
    LinearDensity massPerSpan) {
  public SectionCandidate {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(polar, "polar");
    Objects.requireNonNull(liftToDrag, "liftToDrag");
    Objects.requireNonNull(greatestLift, "greatestLift");
    Objects.requireNonNull(trailingEdge, "trailingEdge");
    Objects.requireNonNull(sparDepth, "sparDepth");
    Objects.requireNonNull(massPerSpan, "massPerSpan");
  }

  static final double SPAR_STATION = 0.3;
  private static final int STEPS = 100;

  static SectionCandidate of(
      ComposedSection section, ComputedPolar polar, double reynolds, Length chord, SectionShell shell,
      LinearDensity massPerSpan) {
    Band lift = polar.usableLift(reynolds);
    double low = 0;
    double likely = 0;
    double high = 0;
    double best = 0;
    for (int i = 1; i <= STEPS; i++) {
      double cl = lift.likely() * i / STEPS;
      Band drag = polar.profileDrag(cl, reynolds);
      low = Math.max(low, cl / drag.high());
      high = Math.max(high, cl / drag.low());
      if (cl / drag.likely() > likely) {
        likely = cl / drag.likely();
        best = cl;
      }
    }
    return new SectionCandidate(section, polar, reynolds, new Band(low, likely, high), best, lift,
        chord.times(section.trailingEdgeThickness()), shell.clearHeight(SPAR_STATION), massPerSpan);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s: section L/D %.0f (%.0f to %.0f), %.2f g/m", section.name(),
        liftToDrag.likely(), liftToDrag.low(), liftToDrag.high(), massPerSpan.gramsPerMetre());
  }
}
