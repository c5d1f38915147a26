// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * A length between two ends, whatever the diameter.
 *
 * @param asked what was asked for over the length of the body: 1, or the part that a tail arm is of it
 */
record LengthWithin(String name, Strength strength, Source source, Interval lengths, double asked)
    implements Consideration {

  LengthWithin(String name, Strength strength, Source source, Interval lengths) {
    this(name, strength, source, lengths, 1.0);
  }

  @Override
  public double margin(double length, double diameter) {
    return Margins.within(length, lengths);
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    return lengths.contains(length) ? Interval.ALL : Interval.NONE;
  }

  @Override
  public Interval lengthsAt(double diameter, Interval search) {
    return lengths;
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return "\"" + name + "\" relaxed to " + unit.format(asked * length, 4);
  }
}
