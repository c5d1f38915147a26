// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;

/**
 * A diameter on one side of an end, whatever the length.
 *
 * @param concession how it would have to give way, after its name
 * @param end how the end comes about
 */
record DiameterWithin(Wording wording, Strength strength, Source source, Interval diameters, Concession concession, Step end)
    implements Worded {

  DiameterWithin(Wording wording, Strength strength, Source source, Interval diameters, Step end) {
    this(
        wording,
        strength,
        source,
        diameters,
        (length, diameter, unit) -> LengthWithin.relaxed(diameter, diameters, unit),
        end);
  }

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
  public Optional<Step> workings(Step length, Step diameter) {
    return Optional.of(
        Step.of(
            diameters.upper() < Double.POSITIVE_INFINITY ? MarginFormulas.DIAMETER_BELOW : MarginFormulas.DIAMETER_ABOVE,
            diameter,
            end));
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return quoted(unit) + " " + concession.words(length, diameter, unit);
  }
}
