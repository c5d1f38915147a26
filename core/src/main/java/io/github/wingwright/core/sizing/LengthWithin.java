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

/**
 * A length on one side of an end, whatever the diameter.
 *
 * @param concession how it would have to give way, after its name
 * @param end how its one end comes about; empty if no length will do
 */
record LengthWithin(Wording wording, Strength strength, Source source, Interval lengths, Concession concession, Optional<Step> end)
    implements Worded {

  LengthWithin(Wording wording, Strength strength, Source source, Interval lengths, Step end) {
    this(wording, strength, source, lengths, (length, diameter, unit) -> relaxed(length, lengths, unit), Optional.of(end));
  }

  /** An end that lets a value pass, of an interval with one end. */
  static String relaxed(double value, Interval interval, NamedUnit<Length> unit) {
    boolean most = interval.upper() < Double.POSITIVE_INFINITY;
    return "relaxed to " + (most ? Advised.up(value, unit, 4) : Advised.down(value, unit, 4));
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
  public Optional<Step> workings(Step length, Step diameter) {
    return end.map(
        limit ->
            Step.of(
                lengths.upper() < Double.POSITIVE_INFINITY ? MarginFormulas.LENGTH_BELOW : MarginFormulas.LENGTH_ABOVE,
                length,
                limit));
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return quoted(unit) + " " + concession.words(length, diameter, unit);
  }
}
