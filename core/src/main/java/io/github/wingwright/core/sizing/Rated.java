// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;
import java.util.OptionalDouble;

/** A consideration taken more or less strictly than it comes, or called otherwise. */
record Rated(Wording wording, Consideration rated, Strength strength) implements Worded {

  @Override
  public Source source() {
    return rated.source();
  }

  @Override
  public double margin(double length, double diameter) {
    return rated.margin(length, diameter);
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    return rated.diametersAt(length, search);
  }

  @Override
  public Interval diametersAt(double length, Interval search, Interval part) {
    return rated.diametersAt(length, search, part);
  }

  @Override
  public Interval lengthsAt(double diameter, Interval search) {
    return rated.lengthsAt(diameter, search);
  }

  @Override
  public OptionalDouble preferredDiameter(double length) {
    return rated.preferredDiameter(length);
  }

  @Override
  public Optional<Step> workings(Step length, Step diameter) {
    return rated.workings(length, diameter);
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return rated.givingWayTo(length, diameter, unit).replace("\"" + rated.nameIn(unit) + "\"", quoted(unit));
  }
}
