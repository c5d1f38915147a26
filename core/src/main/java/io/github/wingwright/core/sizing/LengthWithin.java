// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.quantity.Length;

/** A length between two ends, whatever the diameter. */
record LengthWithin(String name, Strength strength, Source source, Interval lengths) implements Consideration {

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
  public String givingWayTo(double length, double diameter) {
    return "\"" + name + "\" relaxed to " + Length.MILLIMETRE.format(length, 4);
  }
}
