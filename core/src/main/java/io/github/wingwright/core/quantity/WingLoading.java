// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The mass of an aircraft over its wing reference area, m/S. Not a pressure: a loading that is a weight per area is
 * {@link #weight(Acceleration)}.
 *
 * <p>Held as one {@code double} in kg/m². Made by the named factories, such as
 * {@code WingLoading.gramsPerSquareDecimetre(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class WingLoading extends AdditiveQuantity<WingLoading> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final WingLoading ZERO = new WingLoading(0.0);

  /** The unit kg/m². */
  public static final NamedUnit<WingLoading> KILOGRAM_PER_SQUARE_METRE =
      new NamedUnit<>("kg/m²", 1.0, 1.0, 0.0, "kg/m2");

  /** The unit g/dm². */
  public static final NamedUnit<WingLoading> GRAM_PER_SQUARE_DECIMETRE =
      new NamedUnit<>("g/dm²", 1.0, 10.0, 0.0, "g/dm2");

  /** The unit lb/ft². */
  public static final NamedUnit<WingLoading> POUND_PER_SQUARE_FOOT =
      new NamedUnit<>("lb/ft²", 0.45359237, 0.3048 * 0.3048, 0.0, "lb/ft2");

  /** The unit oz/ft². */
  public static final NamedUnit<WingLoading> OUNCE_PER_SQUARE_FOOT =
      new NamedUnit<>("oz/ft²", 0.028349523125, 0.3048 * 0.3048, 0.0, "oz/ft2");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<WingLoading> KIND =
      new QuantityKind<>(
          "wing loading",
          new Dimension(1, -2, 0, 0, 0),
          WingLoading::new,
          List.of(
              KILOGRAM_PER_SQUARE_METRE,
              GRAM_PER_SQUARE_DECIMETRE,
              POUND_PER_SQUARE_FOOT,
              OUNCE_PER_SQUARE_FOOT),
          List.of(KILOGRAM_PER_SQUARE_METRE));

  private WingLoading(double si) {
    super(si);
  }

  /**
   * A wing loading in kilograms per square metre.
   *
   * @param value the number of kilograms per square metre [kg/m²], finite
   * @return the wing loading
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static WingLoading kilogramsPerSquareMetre(double value) {
    return new WingLoading(Check.finite(value, value, KIND, KILOGRAM_PER_SQUARE_METRE));
  }

  /**
   * A wing loading in grams per square decimetre.
   *
   * @param value the number of grams per square decimetre [g/dm²], finite
   * @return the wing loading
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static WingLoading gramsPerSquareDecimetre(double value) {
    return new WingLoading(Check.finite(value / 10.0, value, KIND, GRAM_PER_SQUARE_DECIMETRE));
  }

  /**
   * A wing loading in pounds per square foot.
   *
   * @param value the number of pounds per square foot [lb/ft²], finite
   * @return the wing loading
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static WingLoading poundsPerSquareFoot(double value) {
    return new WingLoading(Check.finite(value * 0.45359237 / (0.3048 * 0.3048), value, KIND, POUND_PER_SQUARE_FOOT));
  }

  /**
   * A wing loading in ounces per square foot.
   *
   * @param value the number of ounces per square foot [oz/ft²], finite
   * @return the wing loading
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static WingLoading ouncesPerSquareFoot(double value) {
    return new WingLoading(Check.finite(value * 0.028349523125 / (0.3048 * 0.3048), value, KIND, OUNCE_PER_SQUARE_FOOT));
  }

  /**
   * Reads a wing loading from text such as {@code "1.2 kg/m²"}.
   *
   * @param text a number and a unit; locale-free
   * @return the wing loading
   * @throws IllegalArgumentException if the text is not a wing loading; the message lists what is accepted
   */
  public static WingLoading parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a wing loading over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a wing loading
   * @return the wing loading
   * @throws IllegalArgumentException if its unit is not of a wing loading, or its value is not finite
   */
  public static WingLoading from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this wing loading to JSR-385, in kg/m².
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a wing loading
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a wing loading
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This wing loading in kilograms per square metre.
   *
   * @return the number of kilograms per square metre [kg/m²]
   */
  public double kilogramsPerSquareMetre() {
    return si;
  }

  /**
   * This wing loading in grams per square decimetre.
   *
   * @return the number of grams per square decimetre [g/dm²]
   */
  public double gramsPerSquareDecimetre() {
    return si * 10.0;
  }

  /**
   * This wing loading in pounds per square foot.
   *
   * @return the number of pounds per square foot [lb/ft²]
   */
  public double poundsPerSquareFoot() {
    return si * (0.3048 * 0.3048) / 0.45359237;
  }

  /**
   * This wing loading in ounces per square foot.
   *
   * @return the number of ounces per square foot [oz/ft²]
   */
  public double ouncesPerSquareFoot() {
    return si * (0.3048 * 0.3048) / 0.028349523125;
  }

  /**
   * This wing loading times an area.
   *
   * @param area the factor
   * @return the product, a mass
   */
  public Mass times(Area area) {
    Objects.requireNonNull(area, "area");
    return Mass.trusted(si * area.si);
  }

  /**
   * The loading of a mass on a reference area.
   *
   * @param mass mass of the aircraft
   * @param referenceArea wing reference area, not zero
   * @return m/S
   * @throws ArithmeticException if the area is zero
   */
  public static WingLoading of(Mass mass, Area referenceArea) {
    Objects.requireNonNull(mass, "mass");
    Objects.requireNonNull(referenceArea, "reference area");
    return new WingLoading(mass.si / Check.divisor(referenceArea.si, referenceArea));
  }

  /**
   * The loading as a weight per area.
   *
   * @param gravity acceleration of free fall
   * @return (m/S)·g
   */
  public Pressure weight(Acceleration gravity) {
    Objects.requireNonNull(gravity, "gravity");
    return Pressure.trusted(si * gravity.si);
  }

  /** Makes a wing loading of an SI value that comes from arithmetic and is trusted. */
  static WingLoading trusted(double si) {
    return new WingLoading(si);
  }

  @Override
  WingLoading same(double si) {
    return new WingLoading(si);
  }

  @Override
  public QuantityKind<WingLoading> kind() {
    return KIND;
  }
}
