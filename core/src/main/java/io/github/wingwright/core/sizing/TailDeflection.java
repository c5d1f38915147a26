// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;

/** A tail load that must not bend the free part of the body, a share of its length, by more than a part of that. */
record TailDeflection(
    Wording wording,
    Strength strength,
    Source source,
    double load,
    double freeShare,
    double deflection,
    BodyShell shell,
    double wall,
    double modulus)
    implements Worded {

  @Override
  public double margin(double length, double diameter) {
    double needed = BodyShell.neededStiffness(load, freeShare * length, deflection);
    return modulus * BodyShell.secondMoment(diameter, wall) / needed - 1.0;
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    double needed = BodyShell.neededStiffness(load, freeShare * length, deflection);
    return Interval.atLeast(BodyShell.diameterOf(needed / modulus, wall));
  }

  @Override
  public Interval lengthsAt(double diameter, Interval search) {
    double stiffness = modulus * BodyShell.secondMoment(diameter, wall);
    return Interval.atMost(Math.sqrt(3.0 * deflection * stiffness / load) / freeShare);
  }

  @Override
  public Optional<Step> workings(Step length, Step diameter) {
    Step share = Step.given("share of the length from wing to tail", "k", freeShare, Source.BRIEF);
    Step needed =
        Step.of(
            BodyShell.NEEDED_STIFFNESS,
            Step.given("load at the tail", "F", Force.newtons(load), Source.BRIEF),
            Step.of("free length from wing to tail", "a", MarginFormulas.SHARE_OF_LENGTH, share, length),
            Step.given("movement that is allowed, over the arm", "δ", deflection, Source.BRIEF));
    return Optional.of(Step.of(MarginFormulas.STIFFNESS_MARGIN, shell.stiffnessStep(diameter), needed));
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return quoted(unit) + " with " + Advised.percentDown(1.0 + margin(length, diameter)) + " of the load";
  }
}
