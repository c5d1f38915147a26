// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A difference of two temperatures. In text its unit is the kelvin; a rise of 1 K is a rise of 1 °C.
 *
 * <p>Held as one {@code double} in K. Made by the named factories, such as
 * {@code TemperatureDifference.fahrenheitSteps(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class TemperatureDifference extends AdditiveQuantity<TemperatureDifference> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final TemperatureDifference ZERO = new TemperatureDifference(0.0);

  /** The unit K. */
  public static final NamedUnit<TemperatureDifference> KELVIN =
      new NamedUnit<>("K", 1.0, 1.0, 0.0);

  /** The unit Δ°F. */
  public static final NamedUnit<TemperatureDifference> RANKINE_STEP =
      new NamedUnit<>("Δ°F", 5.0, 9.0, 0.0);

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<TemperatureDifference> KIND =
      new QuantityKind<>(
          "temperature difference",
          new Dimension(0, 0, 0, 1, 0),
          TemperatureDifference::new,
          List.of(KELVIN, RANKINE_STEP),
          List.of(KELVIN));

  private TemperatureDifference(double si) {
    super(si);
  }

  /**
   * A temperature difference in kelvins.
   *
   * @param value the number of kelvins [K], finite
   * @return the temperature difference
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static TemperatureDifference kelvins(double value) {
    return new TemperatureDifference(Check.finite(value, value, KIND, KELVIN));
  }

  /**
   * A temperature difference in steps of one degree Fahrenheit.
   *
   * @param value the number of steps of one degree Fahrenheit [Δ°F], finite
   * @return the temperature difference
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static TemperatureDifference fahrenheitSteps(double value) {
    return new TemperatureDifference(Check.finite(value * 5.0 / 9.0, value, KIND, RANKINE_STEP));
  }

  /**
   * Reads a temperature difference from text such as {@code "1.2 K"}.
   *
   * @param text a number and a unit; locale-free
   * @return the temperature difference
   * @throws IllegalArgumentException if the text is not a temperature difference; the message lists what is accepted
   */
  public static TemperatureDifference parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a temperature difference over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a temperature difference
   * @return the temperature difference
   * @throws IllegalArgumentException if its unit is not of a temperature difference, or its value is not finite, or it is
   *     a temperature in a unit such as °C and not marked as a difference
   */
  public static TemperatureDifference from(Quantity<javax.measure.quantity.Temperature> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.temperatureDifference(quantity);
  }

  /**
   * Hands this temperature difference to JSR-385, in K and on the relative scale.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Temperature> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Temperature.class, Quantity.Scale.RELATIVE);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a temperature difference
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a temperature difference
   */
  public double in(Unit<javax.measure.quantity.Temperature> unit) {
    Objects.requireNonNull(unit, "unit");
    return Jsr385.steps(this, unit);
  }

  /**
   * This temperature difference in kelvins.
   *
   * @return the number of kelvins [K]
   */
  public double kelvins() {
    return si;
  }

  /**
   * This temperature difference in steps of one degree Fahrenheit.
   *
   * @return the number of steps of one degree Fahrenheit [Δ°F]
   */
  public double fahrenheitSteps() {
    return si * 9.0 / 5.0;
  }

  /** Makes a temperature difference of an SI value that comes from arithmetic and is trusted. */
  static TemperatureDifference trusted(double si) {
    return new TemperatureDifference(si);
  }

  @Override
  TemperatureDifference same(double si) {
    return new TemperatureDifference(si);
  }

  @Override
  public QuantityKind<TemperatureDifference> kind() {
    return KIND;
  }
}
