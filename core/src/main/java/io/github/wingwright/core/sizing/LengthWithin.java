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
 * @param reckoning its margin, not negative at those lengths
 */
record LengthWithin(
    Wording wording, Strength strength, Source source, Interval lengths, Concession concession, Reckoning reckoning)
    implements Worded {

  LengthWithin(Wording wording, Strength strength, Source source, Interval lengths, Step end) {
    this(wording, strength, source, lengths, (length, diameter, unit) -> relaxed(length, lengths, unit), end);
  }

  LengthWithin(Wording wording, Strength strength, Source source, Interval lengths, Concession concession, Step end) {
    this(wording, strength, source, lengths, concession, new End(lengths, end));
  }

  /** How the margin comes about. */
  interface Reckoning {
    double margin(double length);

    Step step(Step length);
  }

  /** The part by which a length keeps from the one end of its interval. */
  private record End(Interval lengths, Step end) implements Reckoning {
    @Override
    public double margin(double length) {
      return Margins.within(length, lengths);
    }

    @Override
    public Step step(Step length) {
      boolean most = lengths.upper() < Double.POSITIVE_INFINITY;
      return Step.of(most ? MarginFormulas.LENGTH_BELOW : MarginFormulas.LENGTH_ABOVE, length, end);
    }
  }

  /** An end that lets a value pass, of an interval with one end. */
  static String relaxed(double value, Interval interval, NamedUnit<Length> unit) {
    boolean most = interval.upper() < Double.POSITIVE_INFINITY;
    return "relaxed to " + (most ? Advised.up(value, unit, 4) : Advised.down(value, unit, 4));
  }

  @Override
  public double margin(double length, double diameter) {
    return reckoning.margin(length);
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
    return Optional.of(reckoning.step(length));
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return quoted(unit) + " " + concession.words(length, diameter, unit);
  }
}
