// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * A consideration, and what the designer decided about it.
 *
 * @param consideration what is considered
 * @param decision whether it applies
 */
public record Weighed(Consideration consideration, Decision decision) {

  /** Refuses null. */
  public Weighed {
    Objects.requireNonNull(consideration, "consideration");
    Objects.requireNonNull(decision, "decision");
  }

  /**
   * Whether it pulls and does not bind.
   *
   * @return true for a target
   */
  public boolean isTarget() {
    return consideration.strength() == Strength.TARGET;
  }

  /**
   * Whether it cannot be otherwise.
   *
   * @return true for a limit
   */
  public boolean isLimit() {
    return consideration.strength() == Strength.LIMIT;
  }

  /**
   * Whether it takes part in ranges and regions.
   *
   * @return true if it applies and is not a target
   */
  public boolean binds() {
    return decision.applies() && !isTarget();
  }

  /**
   * What it leaves of the diameter.
   *
   * @param length length of the body [m]
   * @param search the diameters to look at [m]
   * @param units units to name it in
   * @return the bound
   */
  public Bound onDiameter(double length, Interval search, NamedUnit<?>... units) {
    Objects.requireNonNull(search, "search");
    Objects.requireNonNull(units, "units");
    Interval interval = isTarget() ? Interval.ALL : consideration.diametersAt(length, search);
    double preferred = isTarget() ? consideration.preferredDiameter(length).orElse(Double.NaN) : Double.NaN;
    return new Bound(
        consideration.nameIn(units), consideration.strength(), consideration.source(), interval, preferred, decision);
  }

  /**
   * What it leaves of the length.
   *
   * @param lengths the lengths that it leaves [m]
   * @param units units to name it in
   * @return the bound
   */
  public Bound onLength(Interval lengths, NamedUnit<?>... units) {
    return new Bound(
        consideration.nameIn(units), consideration.strength(), consideration.source(), lengths, Double.NaN, decision);
  }

  /**
   * What is considered and what was decided about it, in units of choice.
   *
   * @param units at most one for each kind of quantity
   * @return for example {@code "length at most 9 in"}
   */
  public String nameIn(NamedUnit<?>... units) {
    return consideration.nameIn(units) + (decision.kind() == Decision.Kind.CHOSEN ? "" : ", " + decision);
  }

  @Override
  public String toString() {
    return nameIn();
  }
}
