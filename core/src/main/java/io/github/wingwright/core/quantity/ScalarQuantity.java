// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.io.Serializable;
import java.util.Objects;

/**
 * A physical quantity with one real value, held as a {@code double} in the coherent SI unit of its kind.
 *
 * <p>Equality compares the SI value bit by bit, except that −0.0 and 0.0 are equal; order is that of the SI values. Two
 * quantities that went through different arithmetic are compared with {@link AdditiveQuantity#isCloseTo}.
 *
 * @param <Q> the kind of quantity itself
 */
public abstract sealed class ScalarQuantity<Q extends ScalarQuantity<Q>> implements Comparable<Q>, Serializable
    permits AdditiveQuantity, Temperature {
  private static final long serialVersionUID = 1L;

  /** The value in the coherent SI unit. */
  final double si;

  ScalarQuantity(double si) {
    this.si = si;
  }

  /**
   * The kind of this quantity: its name, units and text.
   *
   * @return the one kind of this type
   */
  public abstract QuantityKind<Q> kind();

  /**
   * The value in the coherent SI unit, for formulas that run on {@code double}s.
   *
   * @return the SI value
   */
  public final double si() {
    return si;
  }

  /**
   * The value in one of the units of this kind.
   *
   * @param unit a unit of this kind
   * @return the number of that unit
   */
  public final double in(NamedUnit<Q> unit) {
    Objects.requireNonNull(unit, "unit");
    return unit.fromSi(si);
  }

  /**
   * The quantity as text in a given unit, rounded to six significant digits.
   *
   * @param unit a unit of this kind
   * @return for example {@code "11.811 in"}
   */
  public final String format(NamedUnit<Q> unit) {
    Objects.requireNonNull(unit, "unit");
    return QuantityText.format(si, unit, QuantityText.DIGITS);
  }

  /**
   * The quantity as text in a given unit and precision.
   *
   * @param unit a unit of this kind
   * @param significantDigits 1 to 17
   * @return for example {@code "11.8 in"}
   */
  public final String format(NamedUnit<Q> unit, int significantDigits) {
    Objects.requireNonNull(unit, "unit");
    return QuantityText.format(si, unit, significantDigits);
  }

  /**
   * The quantity as text in the unit that suits its size.
   *
   * @param significantDigits 1 to 17
   * @return for example {@code "75.4 mN"}
   */
  public final String format(int significantDigits) {
    return QuantityText.format(si, kind().handiestUnit(si), significantDigits);
  }

  /**
   * The quantity as text in its SI unit with every digit it has: parsing the text gives an equal quantity.
   *
   * @return for example {@code "0.30479999999999996 m"}
   */
  public final String toExactText() {
    return QuantityText.exact(si, kind().units().get(0));
  }

  /**
   * The quantity as text in the unit of its kind that gives the handiest number, to six significant digits.
   *
   * @return for example {@code "300 mm"}
   */
  @Override
  public final String toString() {
    return QuantityText.format(si, kind().handiestUnit(si), QuantityText.DIGITS);
  }

  @Override
  public final int compareTo(Q other) {
    Objects.requireNonNull(other, "other");
    return Double.compare(si + 0.0, other.si + 0.0);
  }

  @Override
  public final boolean equals(Object other) {
    return other instanceof ScalarQuantity<?> that
        && kind() == that.kind()
        && Double.doubleToLongBits(si + 0.0) == Double.doubleToLongBits(that.si + 0.0);
  }

  @Override
  public final int hashCode() {
    return Double.hashCode(si + 0.0);
  }
}
