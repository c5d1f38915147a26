// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.io.Serializable;
import java.util.Objects;

/**
 * To what a dimension and a mass can be made: sized values are rounded to these before the design is reckoned again.
 *
 * @param length step of lengths, positive; zero leaves lengths as they are
 * @param mass step of masses, positive; zero leaves masses as they are
 */
public record Making(Length length, Mass mass) implements Serializable {
  /** No rounding: the design as it was sized. */
  public static final Making EXACT = new Making(Length.ZERO, Mass.ZERO);

  private static final Source RULE = Source.library("what is sized is rounded to what can be made");

  /** Refuses negative steps. */
  public Making {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(mass, "mass");
    if (!(length.si() >= 0.0) || !(mass.si() >= 0.0)) {
      throw new IllegalArgumentException("steps of making must not be negative, were " + length + " and " + mass);
    }
  }

  /** The length as it is made, as a step after the one that sized it. */
  Step made(Step sized) {
    Step made = madePlace(sized);
    if (made.value() == 0.0 && sized.value() > 0.0) {
      throw new NoArrangementException(
          NoArrangementException.Matter.ROUNDING,
          sized.name()
              + " must be at least half a step of "
              + length
              + " to be made, was sized to "
              + sized.unit().format(sized.value(), 4));
    }
    return made;
  }

  /** A place as it is marked, which may round to zero. */
  Step madePlace(Step sized) {
    return made(sized, length.si(), length.toString());
  }

  /** The mass as it is made, as a step after the one that sized it. */
  Step madeMass(Step sized) {
    return made(sized, mass.si(), mass.toString());
  }

  private static Step made(Step sized, double step, String words) {
    if (step == 0.0) {
      return sized;
    }
    return Step.solution(
        sized.name() + ", as made",
        sized.symbol(),
        sized.unit(),
        "rounding to whole steps of " + words,
        sized.symbol() + " within half of " + words + " of its sized value",
        v -> nearest(v[0], step),
        v -> v[1] - v[0],
        RULE,
        sized);
  }

  /** The nearest multiple; as a quotient of whole numbers where the step is one, so that 0.5 mm gives clean decimals. */
  private static double nearest(double value, double step) {
    double steps = Math.rint(value / step);
    double perUnit = Math.rint(1.0 / step);
    return Math.abs(perUnit * step - 1.0) < 1e-9 ? steps / perUnit : steps * step;
  }
}
