// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;

/** A bending stiffness EI that the body's ring must have. */
record StiffnessFloor(
    Wording wording,
    Strength strength,
    Source source,
    double stiffness,
    BodyShell shell,
    double wall,
    double modulus)
    implements Worded {

  StiffnessFloor(Wording wording, Strength strength, Source source, double stiffness, BodyShell shell) {
    this(wording, strength, source, stiffness, shell, shell.wall().si(), shell.modulus().si());
  }

  @Override
  public double margin(double length, double diameter) {
    return modulus * BodyShell.secondMoment(diameter, wall) / stiffness - 1.0;
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    return Interval.atLeast(BodyShell.diameterOf(stiffness / modulus, wall));
  }

  @Override
  public Interval lengthsAt(double diameter, Interval search) {
    return margin(1.0, diameter) >= 0.0 ? Interval.ALL : Interval.NONE;
  }

  @Override
  public Optional<Step> workings(Step length, Step diameter) {
    return Optional.of(
        Step.of(
            MarginFormulas.STIFFNESS_MARGIN,
            shell.stiffnessStep(diameter),
            Step.given(
                "bending stiffness that is asked for",
                "EI_min",
                FlexuralRigidity.newtonSquareMetres(stiffness),
                Source.BRIEF)));
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return quoted(unit) + " with " + Advised.percentDown(1.0 + margin(length, diameter)) + " of the stiffness";
  }
}
