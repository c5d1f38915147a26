// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A temperature on the thermodynamic scale, not below absolute zero. Two temperatures are not added; their difference is a
 * {@link TemperatureDifference}.
 *
 * <p>Held as one {@code double} in K. Made by the named factories, such as
 * {@code Temperature.degreesCelsius(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Temperature extends ScalarQuantity<Temperature> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Temperature ZERO = new Temperature(0.0);

  /** The unit K. */
  public static final NamedUnit<Temperature> KELVIN =
      new NamedUnit<>("K", 1.0, 1.0, 0.0);

  /** The unit °C. */
  public static final NamedUnit<Temperature> DEGREE_CELSIUS =
      new NamedUnit<>("°C", 1.0, 1.0, 273.15, "degC", "℃");

  /** The unit °F. */
  public static final NamedUnit<Temperature> DEGREE_FAHRENHEIT =
      new NamedUnit<>("°F", 5.0, 9.0, 459.67 * 5 / 9, "degF");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Temperature> KIND =
      new QuantityKind<>(
          "temperature",
          new Dimension(0, 0, 0, 1, 0),
          Temperature::checked,
          List.of(KELVIN, DEGREE_CELSIUS, DEGREE_FAHRENHEIT),
          List.of(DEGREE_CELSIUS));

  private Temperature(double si) {
    super(si);
  }

  /**
   * A temperature in kelvins.
   *
   * @param value the number of kelvins [K], finite, not below absolute zero
   * @return the temperature
   * @throws IllegalArgumentException if the value is NaN, infinite or below absolute zero, not below absolute zero
   */
  public static Temperature kelvins(double value) {
    return checked(Check.finite(value, value, KIND, KELVIN));
  }

  /**
   * A temperature in degrees Celsius.
   *
   * @param value the number of degrees Celsius [°C], finite, not below absolute zero
   * @return the temperature
   * @throws IllegalArgumentException if the value is NaN, infinite or below absolute zero, not below absolute zero
   */
  public static Temperature degreesCelsius(double value) {
    return checked(Check.finite(value + 273.15, value, KIND, DEGREE_CELSIUS));
  }

  /**
   * A temperature in degrees Fahrenheit.
   *
   * @param value the number of degrees Fahrenheit [°F], finite, not below absolute zero
   * @return the temperature
   * @throws IllegalArgumentException if the value is NaN, infinite or below absolute zero, not below absolute zero
   */
  public static Temperature degreesFahrenheit(double value) {
    return checked(Check.finite(value * 5.0 / 9.0 + 459.67 * 5 / 9, value, KIND, DEGREE_FAHRENHEIT));
  }

  /**
   * Reads a temperature from text such as {@code "1.2 K"}.
   *
   * @param text a number and a unit; locale-free
   * @return the temperature
   * @throws IllegalArgumentException if the text is not a temperature; the message lists what is accepted
   */
  public static Temperature parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a temperature over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a temperature
   * @return the temperature
   * @throws IllegalArgumentException if its unit is not of a temperature, or its value is not finite, below
   *     absolute zero or marked as a difference, not below absolute zero
   */
  public static Temperature from(Quantity<javax.measure.quantity.Temperature> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.temperature(quantity);
  }

  /**
   * Hands this temperature to JSR-385, in K.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Temperature> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Temperature.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a temperature
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a temperature
   */
  public double in(Unit<javax.measure.quantity.Temperature> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This temperature in kelvins.
   *
   * @return the number of kelvins [K]
   */
  public double kelvins() {
    return si;
  }

  /**
   * This temperature in degrees Celsius.
   *
   * @return the number of degrees Celsius [°C]
   */
  public double degreesCelsius() {
    return (si - 273.15);
  }

  /**
   * This temperature in degrees Fahrenheit.
   *
   * @return the number of degrees Fahrenheit [°F]
   */
  public double degreesFahrenheit() {
    return (si - 459.67 * 5 / 9) * 9.0 / 5.0;
  }

  /**
   * This temperature made warmer.
   *
   * @param rise what to add, negative for colder
   * @return T + ΔT
   */
  public Temperature plus(TemperatureDifference rise) {
    Objects.requireNonNull(rise, "rise");
    return new Temperature(si + rise.si);
  }

  /**
   * This temperature made colder.
   *
   * @param drop what to take away
   * @return T − ΔT
   */
  public Temperature minus(TemperatureDifference drop) {
    Objects.requireNonNull(drop, "drop");
    return new Temperature(si - drop.si);
  }

  /**
   * How much warmer this temperature is than another.
   *
   * @param other the temperature to compare with
   * @return T − T₀
   */
  public TemperatureDifference minus(Temperature other) {
    Objects.requireNonNull(other, "other");
    return TemperatureDifference.trusted(si - other.si);
  }

  /** Makes a temperature of a finite SI value if there is one so cold. */
  private static Temperature checked(double si) {
    if (si < 0.0) {
      throw new IllegalArgumentException("temperature must be at least 0 K (−273.15 °C), was " + new Temperature(si));
    }
    return new Temperature(si);
  }

  /** Makes a temperature of an SI value that comes from arithmetic and is trusted. */
  static Temperature trusted(double si) {
    return new Temperature(si);
  }

  @Override
  public QuantityKind<Temperature> kind() {
    return KIND;
  }
}
