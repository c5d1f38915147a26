// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/** A bending stiffness EI that the body's ring must have. */
record StiffnessFloor(String name, Strength strength, Source source, double stiffness, double wall, double modulus)
    implements Consideration {

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
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return "\"" + name + "\" with " + Margins.percent(1.0 + margin(length, diameter)) + " of the stiffness";
  }
}
