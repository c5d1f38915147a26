// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A diameter to be near to: it pulls and does not bind, so its margin is zero there and negative everywhere else.
 *
 * @param wanted how that diameter comes about
 */
record DiameterNear(Wording wording, Source source, double diameter, Step wanted) implements Worded {

  @Override
  public Strength strength() {
    return Strength.TARGET;
  }

  @Override
  public double margin(double length, double chosen) {
    return -Math.abs(chosen / diameter - 1.0);
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    return Interval.between(diameter, diameter);
  }

  @Override
  public Interval lengthsAt(double chosen, Interval search) {
    return chosen == diameter ? Interval.ALL : Interval.NONE;
  }

  @Override
  public Optional<Step> workings(Step length, Step chosen) {
    return Optional.of(Step.of(MarginFormulas.DIAMETER_NEAR, chosen, wanted));
  }

  @Override
  public OptionalDouble preferredDiameter(double length) {
    return OptionalDouble.of(diameter);
  }
}
