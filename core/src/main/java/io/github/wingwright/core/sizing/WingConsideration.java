// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;

/**
 * Something that speaks for or against a chord, at a given span: a machine, the air, the arm that throws. Anybody may
 * write one.
 */
public interface WingConsideration {

  /**
   * What is considered, in words, with its numbers.
   *
   * @return for example {@code "Reynolds number at least 30000 at 6 m/s"}
   */
  String name();

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
}
