// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * Ballast in the nose against the rest, by their moments about the wanted centre of gravity.
 *
 * @param most most ballast
 * @param empty mass without ballast
 * @param emptyShare its centre of gravity over the length
 * @param wantedShare wanted centre of gravity over the length, ahead of it
 * @param fromNose distance of the ballast from the nose tip
 */
record NoseBallast(Mass most, Mass empty, double emptyShare, double wantedShare, Length fromNose)
    implements LengthWithin.Reckoning {

  /** Lengths that the ballast balances; none where even in a body without end its lever is too short. */
  Interval lengths() {
    double inHand = wantedShare * most.si() - empty.si() * (emptyShare - wantedShare);
    return inHand > 0.0 ? Interval.atLeast(most.si() * fromNose.si() / inHand) : Interval.NONE;
  }

  @Override
  public double margin(double length) {
    return MarginFormulas.above(
        MarginFormulas.ballastMoment(most.si(), wantedShare, length, fromNose.si()),
        MarginFormulas.momentToBalance(empty.si(), emptyShare, wantedShare, length));
  }

  @Override
  public Step step(Step length) {
    Step wanted = Step.given("wanted centre of gravity over the length", "s_t", wantedShare, Source.BRIEF);
    return Step.of(
        MarginFormulas.BALLAST_MARGIN,
        Step.of(
            MarginFormulas.BALLAST_MOMENT,
            Step.given("most ballast", "m_b", most, Source.BRIEF),
            wanted,
            length,
            Step.given("distance of the ballast from the nose", "x_b", fromNose, Source.BRIEF)),
        Step.of(
            MarginFormulas.MOMENT_TO_BALANCE,
            Step.given("mass without ballast", "m", empty, Source.BRIEF),
            Step.given("centre of gravity without ballast over the length", "s_s", emptyShare, Source.BRIEF),
            wanted,
            length));
  }

  /** How much ballast a body of this length would need. */
  String needed(double length, NamedUnit<Length> unit) {
    double lever = wantedShare * length - fromNose.si();
    double needed = MarginFormulas.momentToBalance(empty.si(), emptyShare, wantedShare, length) / lever;
    return lever > 0.0
        ? "with " + Advised.up(needed, massUnit(needed, unit), 3)
        : "with no amount of ballast in so short a nose: it lies behind the wanted centre of gravity";
  }

  /** Who thinks in inches or feet weighs in ounces and pounds. */
  private static NamedUnit<Mass> massUnit(double mass, NamedUnit<Length> unit) {
    if (unit.equals(Length.INCH) || unit.equals(Length.FOOT)) {
      return mass < Mass.POUND.toSi(1.0) ? Mass.OUNCE : Mass.POUND;
    }
    return mass < 1.0 ? Mass.GRAM : Mass.KILOGRAM;
  }
}
