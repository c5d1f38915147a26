// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * An energy: kinetic, potential, in a battery.
 *
 * <p>Held as one {@code double} in J. Made by the named factories, such as
 * {@code Energy.millijoules(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Energy extends AdditiveQuantity<Energy> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Energy ZERO = new Energy(0.0);

  /** The unit J. */
  public static final NamedUnit<Energy> JOULE =
      new NamedUnit<>("J", 1.0, 1.0, 0.0);

  /** The unit mJ. */
  public static final NamedUnit<Energy> MILLIJOULE =
      new NamedUnit<>("mJ", 1.0, 1_000.0, 0.0);

  /** The unit kJ. */
  public static final NamedUnit<Energy> KILOJOULE =
      new NamedUnit<>("kJ", 1_000.0, 1.0, 0.0);

  /** The unit W·h. */
  public static final NamedUnit<Energy> WATT_HOUR =
      new NamedUnit<>("W·h", 3_600.0, 1.0, 0.0, "Wh");

  /** The unit ft·lbf. */
  public static final NamedUnit<Energy> FOOT_POUND_FORCE =
      new NamedUnit<>("ft·lbf", 0.45359237 * 9.80665 * 0.3048, 1.0, 0.0, "ft·lb");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Energy> KIND =
      new QuantityKind<>(
          "energy",
          new Dimension(1, 2, -2, 0, 0),
          Energy::new,
          List.of(JOULE, MILLIJOULE, KILOJOULE, WATT_HOUR, FOOT_POUND_FORCE),
          List.of(MILLIJOULE, JOULE, KILOJOULE));

  private Energy(double si) {
    super(si);
  }

  /**
   * An energy in joules.
   *
   * @param value the number of joules [J], finite
   * @return the energy
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Energy joules(double value) {
    return new Energy(Check.finite(value, value, KIND, JOULE));
  }

  /**
   * An energy in millijoules.
   *
   * @param value the number of millijoules [mJ], finite
   * @return the energy
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Energy millijoules(double value) {
    return new Energy(Check.finite(value / 1_000.0, value, KIND, MILLIJOULE));
  }

  /**
   * An energy in kilojoules.
   *
   * @param value the number of kilojoules [kJ], finite
   * @return the energy
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Energy kilojoules(double value) {
    return new Energy(Check.finite(value * 1_000.0, value, KIND, KILOJOULE));
  }

  /**
   * An energy in watt hours.
   *
   * @param value the number of watt hours [W·h], finite
   * @return the energy
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Energy wattHours(double value) {
    return new Energy(Check.finite(value * 3_600.0, value, KIND, WATT_HOUR));
  }

  /**
   * An energy in foot pounds-force.
   *
   * @param value the number of foot pounds-force [ft·lbf], finite
   * @return the energy
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Energy footPoundsForce(double value) {
    return new Energy(Check.finite(value * (0.45359237 * 9.80665 * 0.3048), value, KIND, FOOT_POUND_FORCE));
  }

  /**
   * Reads an energy from text such as {@code "1.2 J"}.
   *
   * @param text a number and a unit; locale-free
   * @return the energy
   * @throws IllegalArgumentException if the text is not an energy; the message lists what is accepted
   */
  public static Energy parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes an energy over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of an energy
   * @return the energy
   * @throws IllegalArgumentException if its unit is not of an energy, or its value is not finite
   */
  public static Energy from(Quantity<javax.measure.quantity.Energy> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this energy to JSR-385, in J.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Energy> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Energy.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of an energy
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of an energy
   */
  public double in(Unit<javax.measure.quantity.Energy> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This energy in joules.
   *
   * @return the number of joules [J]
   */
  public double joules() {
    return si;
  }

  /**
   * This energy in millijoules.
   *
   * @return the number of millijoules [mJ]
   */
  public double millijoules() {
    return si * 1_000.0;
  }

  /**
   * This energy in kilojoules.
   *
   * @return the number of kilojoules [kJ]
   */
  public double kilojoules() {
    return si / 1_000.0;
  }

  /**
   * This energy in watt hours.
   *
   * @return the number of watt hours [W·h]
   */
  public double wattHours() {
    return si / 3_600.0;
  }

  /**
   * This energy in foot pounds-force.
   *
   * @return the number of foot pounds-force [ft·lbf]
   */
  public double footPoundsForce() {
    return si / (0.45359237 * 9.80665 * 0.3048);
  }

  /**
   * This energy over a time.
   *
   * @param time the divisor, not zero
   * @return the quotient, a power
   * @throws ArithmeticException if the divisor is zero
   */
  public Power dividedBy(Time time) {
    Objects.requireNonNull(time, "time");
    return Power.trusted(si / Check.divisor(time.si, time));
  }

  /**
   * This energy over a power.
   *
   * @param power the divisor, not zero
   * @return the quotient, a time
   * @throws ArithmeticException if the divisor is zero
   */
  public Time dividedBy(Power power) {
    Objects.requireNonNull(power, "power");
    return Time.trusted(si / Check.divisor(power.si, power));
  }

  /**
   * This energy over a length.
   *
   * @param length the divisor, not zero
   * @return the quotient, a force
   * @throws ArithmeticException if the divisor is zero
   */
  public Force dividedBy(Length length) {
    Objects.requireNonNull(length, "length");
    return Force.trusted(si / Check.divisor(length.si, length));
  }

  /**
   * This energy over a force.
   *
   * @param force the divisor, not zero
   * @return the quotient, a length
   * @throws ArithmeticException if the divisor is zero
   */
  public Length dividedBy(Force force) {
    Objects.requireNonNull(force, "force");
    return Length.trusted(si / Check.divisor(force.si, force));
  }

  /** Makes an energy of an SI value that comes from arithmetic and is trusted. */
  static Energy trusted(double si) {
    return new Energy(si);
  }

  @Override
  Energy same(double si) {
    return new Energy(si);
  }

  @Override
  public QuantityKind<Energy> kind() {
    return KIND;
  }
}
