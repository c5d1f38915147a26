// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;

/**
 * A consideration on a wing by its interval of chords in closed form, its margin, and the same margin as a step.
 *
 * @param chords mean chords that satisfy it
 * @param miss margin from frame and mean chord, by the kernels that the steps are reckoned with
 * @param reckoned the margin as the last line of workings
 */
record WingMargin(
    Wording wording,
    Strength strength,
    Source source,
    Function<WingFrame, Interval> chords,
    ToDoubleBiFunction<WingFrame, Double> miss,
    BiFunction<WingFrame, Step, Step> reckoned)
    implements WingConsideration {

  @Override
  public String name() {
    return wording.toString();
  }

  @Override
  public String nameIn(NamedUnit<?>... units) {
    return wording.in(units);
  }

  @Override
  public Interval meanChords(WingFrame frame) {
    return chords.apply(frame);
  }

  @Override
  public double margin(WingFrame frame, double chord) {
    return miss.applyAsDouble(frame, chord);
  }

  @Override
  public Optional<Step> workings(WingFrame frame, Step chord) {
    return Optional.of(reckoned.apply(frame, chord));
  }

  @Override
  public String toString() {
    return name();
  }
}
