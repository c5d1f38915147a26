// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;
import java.util.Optional;

/**
 * Something that speaks for or against a chord, at a given span: a machine, the air, the arm that throws. Anybody may
 * write one: the interval of chords is enough.
 */
public interface WingConsideration {

  /**
   * What is considered, in words, with its numbers.
   *
   * @return for example {@code "Reynolds number at least 30000 at 6 m/s"}
   */
  String name();

  /**
   * The same words with their quantities in units of choice: what a reader is shown, where {@link #name()} is what a
   * consideration is known by.
   *
   * @param units at most one for each kind of quantity, such as {@code Length.INCH}
   * @return for example {@code "root chord at most 4 in"}; the plain name of a consideration that keeps no quantities
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
   * The mean geometric chords that satisfy it.
   *
   * @param frame span, taper and section
   * @return the interval [m]; empty if no chord does
   */
  Interval meanChords(WingFrame frame);

  /**
   * How well a chord satisfies it.
   *
   * @param frame span, taper and section
   * @param chord mean geometric chord [m], positive
   * @return zero or more where satisfied, to rounding; of one that is an interval and nothing more, how far the chord lies
   *     inside as a part of the nearer end
   */
  default double margin(WingFrame frame, double chord) {
    Objects.requireNonNull(frame, "frame");
    return Margins.within(chord, meanChords(frame));
  }

  /**
   * How its margin comes about: the given numbers, what the wing attains, and the margin as the last line.
   *
   * @param frame span, taper and section
   * @param chord a step that gives the mean geometric chord
   * @return the margin of that wing as a step; empty if the consideration is an interval and nothing more
   */
  default Optional<Step> workings(WingFrame frame, Step chord) {
    Objects.requireNonNull(frame, "frame");
    Objects.requireNonNull(chord, "chord");
    return Optional.empty();
  }
}
