// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that speaks for or against a length and a diameter: a machine, a guideline, what must fit inside.
 *
 * <p>A consideration is a margin over length and diameter. Where the margin is zero or more it is satisfied. An interval
 * of diameters at a fixed length, an interval of lengths at a fixed diameter and a region of both all come from the same
 * margin. Anybody may write one: the margin is enough, the intervals are found from it; a closed form is quicker.
 */
public interface Consideration {

  /**
   * What is considered, in words, with its numbers.
   *
   * @return for example {@code "fineness ratio 6 to 10"}
   */
  String name();

  /**
   * The same words with their quantities in units of choice: what a reader is shown, where {@link #name()} is what a
   * consideration is known by.
   *
   * @param units at most one for each kind of quantity, such as {@code Length.INCH}
   * @return for example {@code "length at most 9 in"}; the plain name of a consideration that keeps no quantities
   */
  default String nameIn(NamedUnit<?>... units) {
    Objects.requireNonNull(units, "units");
    return name();
  }

  /**
   * How binding it is.
   *
   * @return the strength
   */
  Strength strength();

  /**
   * Who says so.
   *
   * @return the source
   */
  Source source();

  /**
   * How well a body satisfies it.
   *
   * @param length length of the body [m], positive
   * @param diameter diameter of the body [m], positive
   * @return zero or more where satisfied; a relative distance where that makes sense; finite and continuous
   */
  double margin(double length, double diameter);

  /**
   * The diameters that satisfy it at one length, as one interval.
   *
   * @param length length of the body [m]
   * @param search the diameters to look at [m], positive and finite
   * @return the interval; empty if no diameter in the search satisfies it; an end at the end of the search is open
   */
  default Interval diametersAt(double length, Interval search) {
    Objects.requireNonNull(search, "search");
    return MarginSearch.interval(d -> margin(length, d), search);
  }

  /**
   * The same where only a part of the search matters, because others leave no more: whoever needs time to find an end may
   * first look whether it lies there.
   *
   * @param length length of the body [m]
   * @param search the diameters to look at [m], positive and finite
   * @param part the part of the search that matters
   * @return an interval that has the same diameters in common with the part; empty only if none in the search satisfies it
   */
  default Interval diametersAt(double length, Interval search, Interval part) {
    Objects.requireNonNull(part, "part");
    return diametersAt(length, search);
  }

  /**
   * The lengths that satisfy it at one diameter, as one interval.
   *
   * @param diameter diameter of the body [m]
   * @param search the lengths to look at [m], positive and finite
   * @return the interval; empty if no length in the search satisfies it; an end at the end of the search is open
   */
  default Interval lengthsAt(double diameter, Interval search) {
    Objects.requireNonNull(search, "search");
    return MarginSearch.interval(l -> margin(l, diameter), search);
  }

  /**
   * How its margin comes about: the given numbers, what the body attains, and the margin as the last line.
   *
   * @param length a step that gives the length of the body
   * @param diameter a step that gives its diameter
   * @return the margin of that body as a step; empty if the consideration is a margin and nothing more
   */
  default Optional<Step> workings(Step length, Step diameter) {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    return Optional.empty();
  }

  /**
   * How it would have to give way to be satisfied with a body that it refuses.
   *
   * @param length length of the body [m]
   * @param diameter diameter of the body [m]
   * @param unit the unit to show lengths in
   * @return for example {@code "\"fineness ratio 6 to 10\" widened to 12.5"}
   */
  default String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    Objects.requireNonNull(unit, "unit");
    double miss = -margin(length, diameter);
    return "\"" + nameIn(unit) + "\" missed by " + NamedUnit.NUMBER.format(100.0 * miss, 2) + " %";
  }

  /**
   * The diameter it would like best at one length.
   *
   * @param length length of the body [m]
   * @return the diameter [m] for a target, else empty
   */
  default OptionalDouble preferredDiameter(double length) {
    return OptionalDouble.empty();
  }
}
