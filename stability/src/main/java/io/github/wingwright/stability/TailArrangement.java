// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Tail;

/**
 * How the tails stand together. Some arrangements do the same work with a little less tail volume: a handbook takes 5 to
 * 15 % off the coefficient.
 */
public enum TailArrangement {
  /** Horizontal tail on the fuselage, one fin. */
  CONVENTIONAL("conventional tail", 1.0, 1.0),
  /** Horizontal tail on top of the fin: in clean air, and an end plate for the fin. */
  T_TAIL("T-tail", 0.95, 0.95),
  /** Two fins at the tips of the horizontal tail: out of the wake of the fuselage. */
  TWIN_FINS("twin fins", 1.0, 0.95),
  /** A horizontal tail that turns as a whole: more control for its area. */
  ALL_MOVING("all-moving horizontal tail", 0.875, 1.0);

  private static final Source REDUCTIONS =
      Source.fromMemory("Raymer, Aircraft Design: A Conceptual Approach", "section 6.4, beside table 6.4");

  private final String words;
  private final double level;
  private final double upright;

  TailArrangement(String words, double level, double upright) {
    this.words = words;
    this.level = level;
    this.upright = upright;
  }

  /**
   * The arrangement in words.
   *
   * @return for example {@code "T-tail"}
   */
  public String words() {
    return words;
  }

  /**
   * What part of the usual tail volume coefficient is enough.
   *
   * @param role horizontal or vertical tail
   * @return 0.875 to 1
   */
  public double factor(Tail.Role role) {
    return role == Tail.Role.HORIZONTAL ? level : upright;
  }

  /**
   * The range of tail volume coefficients of a class in this arrangement.
   *
   * @param aircraftClass the class
   * @param role horizontal or vertical tail
   * @return the range of the class, lowered by the factor
   */
  public Guideline tailVolume(AircraftClass aircraftClass, Tail.Role role) {
    Guideline usual = aircraftClass.tailVolume(role);
    double factor = factor(role);
    if (factor == 1.0) {
      return usual;
    }
    return new Guideline(
        usual.name(),
        Interval.between(factor * usual.range().lower(), factor * usual.range().upper()),
        usual.unit(),
        usual.appliesTo() + " with a " + words,
        usual.advice(),
        REDUCTIONS);
  }
}
