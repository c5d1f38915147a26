// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/**
 * A kind of quantity as a value: its name, its units, its text. Code that serves every kind alike (a reader of files, a
 * table of results) takes one of these; all other code uses the types.
 *
 * @param <Q> the type of the quantity
 */
public final class QuantityKind<Q extends ScalarQuantity<Q>> {
  private final String name;
  private final Dimension dimension;
  private final DoubleFunction<Q> trusted;
  private final List<NamedUnit<Q>> units;
  private final List<NamedUnit<Q>> handy;

  QuantityKind(
      String name,
      Dimension dimension,
      DoubleFunction<Q> trusted,
      List<NamedUnit<Q>> units,
      List<NamedUnit<Q>> handy) {
    this.name = name;
    this.dimension = dimension;
    this.trusted = trusted;
    this.units = units;
    this.handy = handy;
  }

  /**
   * The name of the kind.
   *
   * @return for example {@code "wing loading"}
   */
  public String name() {
    return name;
  }

  /**
   * The units that are read and written, the coherent SI unit first.
   *
   * @return the units
   */
  public List<NamedUnit<Q>> units() {
    return units;
  }

  /**
   * The coherent SI unit.
   *
   * @return the first of {@link #units()}
   */
  public NamedUnit<Q> siUnit() {
    return units.get(0);
  }

  /**
   * Makes a quantity from a value in the coherent SI unit.
   *
   * @param si the SI value, finite
   * @return the quantity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public Q ofSi(double si) {
    return trusted.apply(Check.finite(si, si, this, siUnit()));
  }

  /**
   * Makes a quantity from a number of one of its units.
   *
   * @param value the number, finite
   * @param unit a unit of this kind
   * @return the quantity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public Q of(double value, NamedUnit<Q> unit) {
    return trusted.apply(Check.finite(unit.toSi(value), value, this, unit));
  }

  /**
   * Reads a quantity from text.
   *
   * @param text a number and a unit, as in {@code "1.2 m"}, {@code "1e-3 m"} or {@code "5 ft 3 in"}
   * @return the quantity
   * @throws IllegalArgumentException if the text is not of this kind; the message lists what is accepted
   */
  public Q parse(String text) {
    return parseWithUnit(text).value();
  }

  /**
   * Reads a quantity and remembers the unit it was written in, so that results can be shown in the reader's own units.
   *
   * @param text a number and a unit
   * @return the quantity and the first unit in the text
   * @throws IllegalArgumentException if the text is not of this kind; the message lists what is accepted
   */
  public Written<Q> parseWithUnit(String text) {
    Objects.requireNonNull(text, "text");
    return QuantityText.parse(text, this);
  }

  /**
   * The symbols of the units, for messages.
   *
   * @return for example {@code "m, mm, cm"}
   */
  public String unitSymbols() {
    return units.stream().map(NamedUnit::symbol).collect(Collectors.joining(", "));
  }

  Dimension dimension() {
    return dimension;
  }

  /** The handy unit, smallest first in the list, in which the number is at least one, or else the smallest. */
  NamedUnit<Q> handiestUnit(double si) {
    NamedUnit<Q> best = si == 0.0 ? siUnit() : handy.get(0);
    for (NamedUnit<Q> unit : handy) {
      if (Math.abs(unit.fromSi(si)) >= least(unit)) {
        best = unit;
      }
    }
    return best;
  }

  /** A unit serves from one of it upwards; the millimetre, in which drawings give hundredths, from a hundredth. */
  private static double least(NamedUnit<?> unit) {
    return unit.equals(Length.MILLIMETRE) ? 0.01 : 1.0;
  }

  @Override
  public String toString() {
    return name + " [" + siUnit().symbol() + "]";
  }

  /**
   * A quantity together with the unit in which it was written.
   *
   * @param value the quantity
   * @param unit the unit of its first term
   * @param <Q> the type of the quantity
   */
  public record Written<Q extends ScalarQuantity<Q>>(Q value, NamedUnit<Q> unit) {
    /** Refuses null. */
    public Written {
      Objects.requireNonNull(value, "value");
      Objects.requireNonNull(unit, "unit");
    }
  }
}
