// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;

/** A fineness ratio L/d between two ends. */
record FinenessWithin(Wording wording, Strength strength, Source source, double least, double most)
    implements Worded {

  @Override
  public double margin(double length, double diameter) {
    double fineness = length / diameter;
    double above = fineness / least - 1.0;
    // Without a greatest ratio there is nothing to be below: 1 − f/∞ would cap the margin at 1.
    return most == Double.POSITIVE_INFINITY ? above : Math.min(above, 1.0 - fineness / most);
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    return Interval.between(length / most, length / least);
  }

  @Override
  public Interval lengthsAt(double diameter, Interval search) {
    return Interval.between(diameter * least, diameter * most);
  }

  @Override
  public Optional<Step> workings(Step length, Step diameter) {
    Step fineness = Step.of(FuselageFormulas.FINENESS_RATIO, length, diameter);
    Step stoutest = Step.given("least fineness ratio", "f_min", least, source);
    if (Double.isInfinite(most)) {
      return Optional.of(Step.of(MarginFormulas.FINENESS_ABOVE, fineness, stoutest));
    }
    return Optional.of(
        Step.of(
            MarginFormulas.FINENESS_MARGIN,
            fineness,
            stoutest,
            Step.given("greatest fineness ratio", "f_max", most, source)));
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    double fineness = length / diameter;
    return quoted(unit)
        + " widened to "
        + (fineness < least ? Advised.down(fineness, NamedUnit.NUMBER, 4) : Advised.up(fineness, NamedUnit.NUMBER, 4));
  }
}
