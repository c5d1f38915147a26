// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A duration.
 *
 * <p>Held as one {@code double} in s. Made by the named factories, such as
 * {@code Time.milliseconds(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Time extends AdditiveQuantity<Time> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Time ZERO = new Time(0.0);

  /** The unit s. */
  public static final NamedUnit<Time> SECOND =
      new NamedUnit<>("s", 1.0, 1.0, 0.0);

  /** The unit ms. */
  public static final NamedUnit<Time> MILLISECOND =
      new NamedUnit<>("ms", 1.0, 1_000.0, 0.0);

  /** The unit min. */
  public static final NamedUnit<Time> MINUTE =
      new NamedUnit<>("min", 60.0, 1.0, 0.0);

  /** The unit h. */
  public static final NamedUnit<Time> HOUR =
      new NamedUnit<>("h", 3_600.0, 1.0, 0.0);

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Time> KIND =
      new QuantityKind<>(
          "time",
          new Dimension(0, 0, 1, 0, 0),
          Time::new,
          List.of(SECOND, MILLISECOND, MINUTE, HOUR),
          List.of(MILLISECOND, SECOND));

  private Time(double si) {
    super(si);
  }

  /**
   * A time in seconds.
   *
   * @param value the number of seconds [s], finite
   * @return the time
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Time seconds(double value) {
    return new Time(Check.finite(value, value, KIND, SECOND));
  }

  /**
   * A time in milliseconds.
   *
   * @param value the number of milliseconds [ms], finite
   * @return the time
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Time milliseconds(double value) {
    return new Time(Check.finite(value / 1_000.0, value, KIND, MILLISECOND));
  }

  /**
   * A time in minutes.
   *
   * @param value the number of minutes [min], finite
   * @return the time
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Time minutes(double value) {
    return new Time(Check.finite(value * 60.0, value, KIND, MINUTE));
  }

  /**
   * A time in hours.
   *
   * @param value the number of hours [h], finite
   * @return the time
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Time hours(double value) {
    return new Time(Check.finite(value * 3_600.0, value, KIND, HOUR));
  }

  /**
   * Reads a time from text such as {@code "1.2 s"}.
   *
   * @param text a number and a unit; locale-free
   * @return the time
   * @throws IllegalArgumentException if the text is not a time; the message lists what is accepted
   */
  public static Time parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a time over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a time
   * @return the time
   * @throws IllegalArgumentException if its unit is not of a time, or its value is not finite
   */
  public static Time from(Quantity<javax.measure.quantity.Time> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this time to JSR-385, in s.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Time> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Time.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a time
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a time
   */
  public double in(Unit<javax.measure.quantity.Time> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This time in seconds.
   *
   * @return the number of seconds [s]
   */
  public double seconds() {
    return si;
  }

  /**
   * This time in milliseconds.
   *
   * @return the number of milliseconds [ms]
   */
  public double milliseconds() {
    return si * 1_000.0;
  }

  /**
   * This time in minutes.
   *
   * @return the number of minutes [min]
   */
  public double minutes() {
    return si / 60.0;
  }

  /**
   * This time in hours.
   *
   * @return the number of hours [h]
   */
  public double hours() {
    return si / 3_600.0;
  }

  /**
   * This time times a speed.
   *
   * @param speed the factor
   * @return the product, a length
   */
  public Length times(Speed speed) {
    Objects.requireNonNull(speed, "speed");
    return Length.trusted(si * speed.si);
  }

  /**
   * This time times an acceleration.
   *
   * @param acceleration the factor
   * @return the product, a speed
   */
  public Speed times(Acceleration acceleration) {
    Objects.requireNonNull(acceleration, "acceleration");
    return Speed.trusted(si * acceleration.si);
  }

  /**
   * This time times a power.
   *
   * @param power the factor
   * @return the product, an energy
   */
  public Energy times(Power power) {
    Objects.requireNonNull(power, "power");
    return Energy.trusted(si * power.si);
  }

  /**
   * This time times an angular rate.
   *
   * @param angularRate the factor
   * @return the product, an angle
   */
  public Angle times(AngularRate angularRate) {
    Objects.requireNonNull(angularRate, "angular rate");
    return Angle.trusted(si * angularRate.si);
  }

  /** Makes a time of an SI value that comes from arithmetic and is trusted. */
  static Time trusted(double si) {
    return new Time(si);
  }

  @Override
  Time same(double si) {
    return new Time(si);
  }

  @Override
  public QuantityKind<Time> kind() {
    return KIND;
  }
}
