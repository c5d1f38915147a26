// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A power.
 *
 * <p>Held as one {@code double} in W. Made by the named factories, such as
 * {@code Power.milliwatts(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Power extends AdditiveQuantity<Power> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Power ZERO = new Power(0.0);

  /** The unit W. */
  public static final NamedUnit<Power> WATT =
      new NamedUnit<>("W", 1.0, 1.0, 0.0);

  /** The unit mW. */
  public static final NamedUnit<Power> MILLIWATT =
      new NamedUnit<>("mW", 1.0, 1_000.0, 0.0);

  /** The unit kW. */
  public static final NamedUnit<Power> KILOWATT =
      new NamedUnit<>("kW", 1_000.0, 1.0, 0.0);

  /** The unit hp. */
  public static final NamedUnit<Power> HORSEPOWER =
      new NamedUnit<>("hp", 550 * 0.45359237 * 9.80665 * 0.3048, 1.0, 0.0);

  /** The unit PS. */
  public static final NamedUnit<Power> METRIC_HORSEPOWER =
      new NamedUnit<>("PS", 75 * 980665, 100_000.0, 0.0);

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Power> KIND =
      new QuantityKind<>(
          "power",
          new Dimension(1, 2, -3, 0, 0),
          Power::new,
          List.of(WATT, MILLIWATT, KILOWATT, HORSEPOWER, METRIC_HORSEPOWER),
          List.of(MILLIWATT, WATT, KILOWATT));

  private Power(double si) {
    super(si);
  }

  /**
   * A power in watts.
   *
   * @param value the number of watts [W], finite
   * @return the power
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Power watts(double value) {
    return new Power(Check.finite(value, value, KIND, WATT));
  }

  /**
   * A power in milliwatts.
   *
   * @param value the number of milliwatts [mW], finite
   * @return the power
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Power milliwatts(double value) {
    return new Power(Check.finite(value / 1_000.0, value, KIND, MILLIWATT));
  }

  /**
   * A power in kilowatts.
   *
   * @param value the number of kilowatts [kW], finite
   * @return the power
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Power kilowatts(double value) {
    return new Power(Check.finite(value * 1_000.0, value, KIND, KILOWATT));
  }

  /**
   * A power in horsepower.
   *
   * @param value the number of horsepower [hp], finite
   * @return the power
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Power horsepower(double value) {
    return new Power(Check.finite(value * (550 * 0.45359237 * 9.80665 * 0.3048), value, KIND, HORSEPOWER));
  }

  /**
   * A power in metric horsepower.
   *
   * @param value the number of metric horsepower [PS], finite
   * @return the power
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Power metricHorsepower(double value) {
    return new Power(Check.finite(value * (75 * 980665) / 100_000.0, value, KIND, METRIC_HORSEPOWER));
  }

  /**
   * Reads a power from text such as {@code "1.2 W"}.
   *
   * @param text a number and a unit; locale-free
   * @return the power
   * @throws IllegalArgumentException if the text is not a power; the message lists what is accepted
   */
  public static Power parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a power over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a power
   * @return the power
   * @throws IllegalArgumentException if its unit is not of a power, or its value is not finite
   */
  public static Power from(Quantity<javax.measure.quantity.Power> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this power to JSR-385, in W.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Power> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Power.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a power
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a power
   */
  public double in(Unit<javax.measure.quantity.Power> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This power in watts.
   *
   * @return the number of watts [W]
   */
  public double watts() {
    return si;
  }

  /**
   * This power in milliwatts.
   *
   * @return the number of milliwatts [mW]
   */
  public double milliwatts() {
    return si * 1_000.0;
  }

  /**
   * This power in kilowatts.
   *
   * @return the number of kilowatts [kW]
   */
  public double kilowatts() {
    return si / 1_000.0;
  }

  /**
   * This power in horsepower.
   *
   * @return the number of horsepower [hp]
   */
  public double horsepower() {
    return si / (550 * 0.45359237 * 9.80665 * 0.3048);
  }

  /**
   * This power in metric horsepower.
   *
   * @return the number of metric horsepower [PS]
   */
  public double metricHorsepower() {
    return si * 100_000.0 / (75 * 980665);
  }

  /**
   * This power times a time.
   *
   * @param time the factor
   * @return the product, an energy
   */
  public Energy times(Time time) {
    Objects.requireNonNull(time, "time");
    return Energy.trusted(si * time.si);
  }

  /**
   * This power over a speed.
   *
   * @param speed the divisor, not zero
   * @return the quotient, a force
   * @throws ArithmeticException if the divisor is zero
   */
  public Force dividedBy(Speed speed) {
    Objects.requireNonNull(speed, "speed");
    return Force.trusted(si / Check.divisor(speed.si, speed));
  }

  /**
   * This power over a force.
   *
   * @param force the divisor, not zero
   * @return the quotient, a speed
   * @throws ArithmeticException if the divisor is zero
   */
  public Speed dividedBy(Force force) {
    Objects.requireNonNull(force, "force");
    return Speed.trusted(si / Check.divisor(force.si, force));
  }

  /** Makes a power of an SI value that comes from arithmetic and is trusted. */
  static Power trusted(double si) {
    return new Power(si);
  }

  @Override
  Power same(double si) {
    return new Power(si);
  }

  @Override
  public QuantityKind<Power> kind() {
    return KIND;
  }
}
