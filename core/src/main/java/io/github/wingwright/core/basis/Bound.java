// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What one consideration leaves of one variable.
 *
 * @param name the consideration, in words
 * @param strength how binding it is
 * @param source who says so
 * @param interval the values it allows [SI]; for a target all values
 * @param preferred the value it would like best [SI], NaN if none
 * @param decision what the designer decided about it
 */
public record Bound(
    String name, Strength strength, Source source, Interval interval, double preferred, Decision decision)
    implements Serializable {

  /** Refuses null. */
  public Bound {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(interval, "interval");
    Objects.requireNonNull(decision, "decision");
  }

  /**
   * A bound that applies.
   *
   * @param name the consideration, in words
   * @param strength limit or guideline
   * @param source who says so
   * @param interval the values it allows [SI]
   * @return the bound
   */
  public static Bound of(String name, Strength strength, Source source, Interval interval) {
    return new Bound(name, strength, source, interval, Double.NaN, Decision.chosen());
  }

  /**
   * A value to be near to.
   *
   * @param name the consideration, in words
   * @param source who says so
   * @param preferred the value [SI]
   * @return the bound
   */
  public static Bound target(String name, Source source, double preferred) {
    if (!Double.isFinite(preferred)) {
      throw new IllegalArgumentException("preferred value of \"" + name + "\" must be finite, was " + preferred);
    }
    return new Bound(name, Strength.TARGET, source, Interval.ALL, preferred, Decision.chosen());
  }

  /**
   * The same bound under another decision.
   *
   * @param other the decision
   * @return the bound
   */
  public Bound under(Decision other) {
    return new Bound(name, strength, source, interval, preferred, other);
  }

  /**
   * The value it would like best.
   *
   * @return the value [SI], empty if it has none
   */
  public OptionalDouble preference() {
    return Double.isNaN(preferred) ? OptionalDouble.empty() : OptionalDouble.of(preferred);
  }

  /**
   * Whether it takes part in the range.
   *
   * @return whether it applies and is not a mere target
   */
  public boolean binds() {
    return decision.applies() && strength != Strength.TARGET;
  }

  @Override
  public String toString() {
    String what = strength.toString().toLowerCase(Locale.ROOT) + " " + name + ": ";
    String where = strength == Strength.TARGET ? preferred(NamedUnit.NUMBER) : interval.format(NamedUnit.NUMBER);
    return what + where + (decision.kind() == Decision.Kind.CHOSEN ? "" : ", " + decision);
  }

  private String preferred(NamedUnit<?> unit) {
    return Double.isNaN(preferred) ? "no preference" : "near " + unit.format(preferred, 4);
  }
}
