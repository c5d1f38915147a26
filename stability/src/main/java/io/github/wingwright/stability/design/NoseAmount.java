// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.mass.Ballast;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.StaticMargin;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How much more or less in the nose brings the static margin into its range.
 *
 * <pre>{@code m_n = m·(x_cg − x_t)/(x_t − x_b),   x_t = x_np − K·c̄}</pre>
 *
 * <p>with K the nearer end of the range. Rounded up, so that the margin lies inside.
 */
final class NoseAmount {
  private static final MathContext SHOWN = new MathContext(3, RoundingMode.UP);

  private NoseAmount() {}

  /** The finding about a margin with the mass in the nose that mends it; as it was where none does. */
  static Finding added(Finding finding, StaticMargin margin, Aircraft aircraft) {
    if (finding.range().isEmpty() || !finding.subject().startsWith("static margin")) {
      return finding;
    }
    double chord = margin.neutralPoint().meanAerodynamicChord().si();
    double target = margin.neutralPoint().x().si() - finding.range().get().clamp(margin.value()) * chord;
    double place = PartGeometry.ballastPlace(aircraft.airframe().fuselage()).si();
    if (target <= place) {
      return ModeAmounts.reworded(
          finding, finding.message() + " No mass in the nose does it: the balance that is wanted lies ahead of it.");
    }
    double more = Ballast.ballastMass(aircraft.mass().si(), aircraft.centreOfGravity().x().si(), target, place);
    double grams = new BigDecimal(Mass.GRAM.fromSi(Math.abs(more))).round(SHOWN).doubleValue();
    String amount = Mass.GRAM.format(Mass.GRAM.toSi(grams), 3);
    if (more >= 0.0) {
      return ModeAmounts.reworded(finding, finding.message() + " In the nose it takes " + amount + " more.");
    }
    boolean there = ModeAmounts.ballast(aircraft.masses()) > Mass.GRAM.toSi(grams);
    return ModeAmounts.reworded(
        finding,
        finding.message()
            + (there
                ? " In the nose it takes " + amount + " less."
                : " The nose has no ballast of " + amount + " to take out: move the wing forward or carry something further aft."));
  }
}
