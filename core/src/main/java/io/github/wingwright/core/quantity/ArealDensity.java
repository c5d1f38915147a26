// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The mass of a sheet, a skin or a covering per area.
 *
 * <p>Held as one {@code double} in kg/m². Made by the named factories, such as
 * {@code ArealDensity.gramsPerSquareMetre(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class ArealDensity extends AdditiveQuantity<ArealDensity> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final ArealDensity ZERO = new ArealDensity(0.0);

  /** The unit kg/m². */
  public static final NamedUnit<ArealDensity> KILOGRAM_PER_SQUARE_METRE =
      new NamedUnit<>("kg/m²", 1.0, 1.0, 0.0, "kg/m2");

  /** The unit g/m². */
  public static final NamedUnit<ArealDensity> GRAM_PER_SQUARE_METRE =
      new NamedUnit<>("g/m²", 1.0, 1_000.0, 0.0, "g/m2", "gsm");

  /** The unit oz/yd². */
  public static final NamedUnit<ArealDensity> OUNCE_PER_SQUARE_YARD =
      new NamedUnit<>("oz/yd²", 0.028349523125, 0.9144 * 0.9144, 0.0, "oz/yd2");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<ArealDensity> KIND =
      new QuantityKind<>(
          "areal density",
          new Dimension(1, -2, 0, 0, 0),
          ArealDensity::new,
          List.of(KILOGRAM_PER_SQUARE_METRE, GRAM_PER_SQUARE_METRE, OUNCE_PER_SQUARE_YARD),
          List.of(GRAM_PER_SQUARE_METRE, KILOGRAM_PER_SQUARE_METRE));

  private ArealDensity(double si) {
    super(si);
  }

  /**
   * An areal density in kilograms per square metre.
   *
   * @param value the number of kilograms per square metre [kg/m²], finite
   * @return the areal density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static ArealDensity kilogramsPerSquareMetre(double value) {
    return new ArealDensity(Check.finite(value, value, KIND, KILOGRAM_PER_SQUARE_METRE));
  }

  /**
   * An areal density in grams per square metre.
   *
   * @param value the number of grams per square metre [g/m²], finite
   * @return the areal density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static ArealDensity gramsPerSquareMetre(double value) {
    return new ArealDensity(Check.finite(value / 1_000.0, value, KIND, GRAM_PER_SQUARE_METRE));
  }

  /**
   * An areal density in ounces per square yard.
   *
   * @param value the number of ounces per square yard [oz/yd²], finite
   * @return the areal density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static ArealDensity ouncesPerSquareYard(double value) {
    return new ArealDensity(Check.finite(value * 0.028349523125 / (0.9144 * 0.9144), value, KIND, OUNCE_PER_SQUARE_YARD));
  }

  /**
   * Reads an areal density from text such as {@code "1.2 kg/m²"}.
   *
   * @param text a number and a unit; locale-free
   * @return the areal density
   * @throws IllegalArgumentException if the text is not an areal density; the message lists what is accepted
   */
  public static ArealDensity parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes an areal density over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of an areal density
   * @return the areal density
   * @throws IllegalArgumentException if its unit is not of an areal density, or its value is not finite
   */
  public static ArealDensity from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this areal density to JSR-385, in kg/m².
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of an areal density
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of an areal density
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This areal density in kilograms per square metre.
   *
   * @return the number of kilograms per square metre [kg/m²]
   */
  public double kilogramsPerSquareMetre() {
    return si;
  }

  /**
   * This areal density in grams per square metre.
   *
   * @return the number of grams per square metre [g/m²]
   */
  public double gramsPerSquareMetre() {
    return si * 1_000.0;
  }

  /**
   * This areal density in ounces per square yard.
   *
   * @return the number of ounces per square yard [oz/yd²]
   */
  public double ouncesPerSquareYard() {
    return si * (0.9144 * 0.9144) / 0.028349523125;
  }

  /**
   * This areal density times an area.
   *
   * @param area the factor
   * @return the product, a mass
   */
  public Mass times(Area area) {
    Objects.requireNonNull(area, "area");
    return Mass.trusted(si * area.si);
  }

  /**
   * This areal density over a length.
   *
   * @param length the divisor, not zero
   * @return the quotient, a density
   * @throws ArithmeticException if the divisor is zero
   */
  public Density dividedBy(Length length) {
    Objects.requireNonNull(length, "length");
    return Density.trusted(si / Check.divisor(length.si, length));
  }

  /**
   * This areal density over a density.
   *
   * @param density the divisor, not zero
   * @return the quotient, a length
   * @throws ArithmeticException if the divisor is zero
   */
  public Length dividedBy(Density density) {
    Objects.requireNonNull(density, "density");
    return Length.trusted(si / Check.divisor(density.si, density));
  }

  /** Makes an areal density of an SI value that comes from arithmetic and is trusted. */
  static ArealDensity trusted(double si) {
    return new ArealDensity(si);
  }

  @Override
  ArealDensity same(double si) {
    return new ArealDensity(si);
  }

  @Override
  public QuantityKind<ArealDensity> kind() {
    return KIND;
  }
}
