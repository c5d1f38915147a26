// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/** A diameter between two ends, whatever the length. */
record DiameterWithin(String name, Strength strength, Source source, Interval diameters) implements Consideration {

  @Override
  public double margin(double length, double diameter) {
    return Margins.within(diameter, diameters);
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    return diameters;
  }

  @Override
  public Interval lengthsAt(double diameter, Interval search) {
    return diameters.contains(diameter) ? Interval.ALL : Interval.NONE;
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return "\"" + name + "\" relaxed to " + unit.format(diameter, 4);
  }
}
