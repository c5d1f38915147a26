// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;

/** The handbook's lift-curve slope of a surface from that of its section. */
final class HandbookSlope {
  static final Formula SLOPE =
      Formula.named("lift-curve slope of a finite surface")
          .gives("a", NamedUnit.PER_RADIAN)
          .as("2·π·A / (2 + √(4 + (2·π·A/a_0)²·(1 + tan(Λ)²)))")
          .where("A", "aspect ratio", 0.5, 40)
          .where("a_0", "lift-curve slope of the section", NamedUnit.PER_RADIAN, 2, 8)
          .where("Λ", "sweep of the half-chord line", Angle.RADIAN, -0.9, 0.9)
          .from(
              Source.restated(
                  "Raymer, Aircraft Design: A Conceptual Approach, 6th ed., 2018",
                  "eq. 12.6 after Lowry and Polhamus, as used in Purdue AAE 451 course notes"))
          .computedBy(HandbookSlope::slope);

  private HandbookSlope() {}

  static double slope(double aspectRatio, double sectionSlope, double halfChordSweep) {
    double tangent = Math.tan(halfChordSweep);
    double ratio = 2.0 * Math.PI * aspectRatio / sectionSlope;
    return 2.0 * Math.PI * aspectRatio / (2.0 + Math.sqrt(4.0 + ratio * ratio * (1.0 + tangent * tangent)));
  }
}
