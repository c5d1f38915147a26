// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.io.Serializable;
import java.util.List;

/**
 * A unit that the library can read and write, with the exact ratio by which it converts to SI.
 *
 * <p>The factor is kept as a ratio of two numbers, {@code 254/10000} for the inch, because a product and a quotient of
 * whole numbers round once: twelve inches are 0.3048 m to the last bit, which {@code 12 × 0.0254} is not.
 *
 * @param <Q> the kind of quantity it measures
 */
public final class NamedUnit<Q extends ScalarQuantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The unit of a plain number: a coefficient, a ratio, a Reynolds number. */
  public static final NamedUnit<?> NUMBER = new NamedUnit<>("", 1.0, 1.0, 0.0);

  /** The unit of a slope against an angle. */
  public static final NamedUnit<?> PER_RADIAN = new NamedUnit<>("1/rad", 1.0, 1.0, 0.0);

  /** The unit of a curvature or of a stiffness in length. */
  public static final NamedUnit<?> PER_METRE = new NamedUnit<>("1/m", 1.0, 1.0, 0.0);

  /** Mass times arm: the moment of a balance. */
  public static final NamedUnit<?> KILOGRAM_METRE = new NamedUnit<>("kg·m", 1.0, 1.0, 0.0);

  private final String symbol;
  private final double numerator;
  private final double denominator;
  private final double offset;
  private final List<String> aliases;

  NamedUnit(String symbol, double numerator, double denominator, double offset, String... aliases) {
    this.symbol = symbol;
    this.numerator = numerator;
    this.denominator = denominator;
    this.offset = offset;
    this.aliases = List.of(aliases);
  }

  /**
   * The symbol as it is printed.
   *
   * @return for example {@code "mm²"}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Other spellings that are read but not printed.
   *
   * @return for example {@code "mm2"}
   */
  public List<String> aliases() {
    return aliases;
  }

  /**
   * Converts a number of this unit to SI. The value is trusted.
   *
   * @param value a number of this unit
   * @return the value in the coherent SI unit
   */
  public double toSi(double value) {
    return value * numerator / denominator + offset;
  }

  /**
   * Converts an SI value to a number of this unit.
   *
   * @param si a value in the coherent SI unit
   * @return the number of this unit
   */
  public double fromSi(double si) {
    return (si - offset) * denominator / numerator;
  }

  /**
   * A value as text in this unit.
   *
   * @param si a value in the coherent SI unit; infinite values are written as ∞
   * @param significantDigits 1 to 17
   * @return for example {@code "24.5 mm"}
   */
  public String format(double si, int significantDigits) {
    return QuantityText.format(si, this, significantDigits);
  }

  /** Units are equal if they are written and converted alike: a unit that went through serialization stays equal. */
  @Override
  public boolean equals(Object other) {
    return other instanceof NamedUnit<?> that
        && symbol.equals(that.symbol)
        && numerator == that.numerator
        && denominator == that.denominator
        && offset == that.offset;
  }

  @Override
  public int hashCode() {
    return symbol.hashCode();
  }

  @Override
  public String toString() {
    return symbol;
  }
}
