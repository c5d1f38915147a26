// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A speed, without direction: an airspeed, a sink rate, a throw speed.
 *
 * <p>Held as one {@code double} in m/s. Made by the named factories, such as
 * {@code Speed.kilometresPerHour(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Speed extends AdditiveQuantity<Speed> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Speed ZERO = new Speed(0.0);

  /** The unit m/s. */
  public static final NamedUnit<Speed> METRE_PER_SECOND =
      new NamedUnit<>("m/s", 1.0, 1.0, 0.0);

  /** The unit km/h. */
  public static final NamedUnit<Speed> KILOMETRE_PER_HOUR =
      new NamedUnit<>("km/h", 10.0, 36.0, 0.0, "kph", "kmh");

  /** The unit kt. */
  public static final NamedUnit<Speed> KNOT =
      new NamedUnit<>("kt", 1_852.0, 3_600.0, 0.0, "kn", "kts");

  /** The unit ft/s. */
  public static final NamedUnit<Speed> FOOT_PER_SECOND =
      new NamedUnit<>("ft/s", 3_048.0, 10_000.0, 0.0, "fps");

  /** The unit mi/h. */
  public static final NamedUnit<Speed> MILE_PER_HOUR =
      new NamedUnit<>("mi/h", 1_609_344.0, 3_600_000.0, 0.0, "mph");

  /** The unit ft/min. */
  public static final NamedUnit<Speed> FOOT_PER_MINUTE =
      new NamedUnit<>("ft/min", 3_048.0, 600_000.0, 0.0, "fpm");

  /** The unit cm/s. */
  public static final NamedUnit<Speed> CENTIMETRE_PER_SECOND =
      new NamedUnit<>("cm/s", 1.0, 100.0, 0.0);

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Speed> KIND =
      new QuantityKind<>(
          "speed",
          new Dimension(0, 1, -1, 0, 0),
          Speed::new,
          List.of(
              METRE_PER_SECOND,
              KILOMETRE_PER_HOUR,
              KNOT,
              FOOT_PER_SECOND,
              MILE_PER_HOUR,
              FOOT_PER_MINUTE,
              CENTIMETRE_PER_SECOND),
          List.of(METRE_PER_SECOND));

  private Speed(double si) {
    super(si);
  }

  /**
   * A speed in metres per second.
   *
   * @param value the number of metres per second [m/s], finite
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Speed metresPerSecond(double value) {
    return new Speed(Check.finite(value, value, KIND, METRE_PER_SECOND));
  }

  /**
   * A speed in kilometres per hour.
   *
   * @param value the number of kilometres per hour [km/h], finite
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Speed kilometresPerHour(double value) {
    return new Speed(Check.finite(value * 10.0 / 36.0, value, KIND, KILOMETRE_PER_HOUR));
  }

  /**
   * A speed in knots.
   *
   * @param value the number of knots [kt], finite
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Speed knots(double value) {
    return new Speed(Check.finite(value * 1_852.0 / 3_600.0, value, KIND, KNOT));
  }

  /**
   * A speed in feet per second.
   *
   * @param value the number of feet per second [ft/s], finite
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Speed feetPerSecond(double value) {
    return new Speed(Check.finite(value * 3_048.0 / 10_000.0, value, KIND, FOOT_PER_SECOND));
  }

  /**
   * A speed in miles per hour.
   *
   * @param value the number of miles per hour [mi/h], finite
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Speed milesPerHour(double value) {
    return new Speed(Check.finite(value * 1_609_344.0 / 3_600_000.0, value, KIND, MILE_PER_HOUR));
  }

  /**
   * A speed in feet per minute.
   *
   * @param value the number of feet per minute [ft/min], finite
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Speed feetPerMinute(double value) {
    return new Speed(Check.finite(value * 3_048.0 / 600_000.0, value, KIND, FOOT_PER_MINUTE));
  }

  /**
   * A speed in centimetres per second.
   *
   * @param value the number of centimetres per second [cm/s], finite
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Speed centimetresPerSecond(double value) {
    return new Speed(Check.finite(value / 100.0, value, KIND, CENTIMETRE_PER_SECOND));
  }

  /**
   * Reads a speed from text such as {@code "1.2 m/s"}.
   *
   * @param text a number and a unit; locale-free
   * @return the speed
   * @throws IllegalArgumentException if the text is not a speed; the message lists what is accepted
   */
  public static Speed parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a speed over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a speed
   * @return the speed
   * @throws IllegalArgumentException if its unit is not of a speed, or its value is not finite
   */
  public static Speed from(Quantity<javax.measure.quantity.Speed> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this speed to JSR-385, in m/s.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Speed> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Speed.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a speed
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a speed
   */
  public double in(Unit<javax.measure.quantity.Speed> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This speed in metres per second.
   *
   * @return the number of metres per second [m/s]
   */
  public double metresPerSecond() {
    return si;
  }

  /**
   * This speed in kilometres per hour.
   *
   * @return the number of kilometres per hour [km/h]
   */
  public double kilometresPerHour() {
    return si * 36.0 / 10.0;
  }

  /**
   * This speed in knots.
   *
   * @return the number of knots [kt]
   */
  public double knots() {
    return si * 3_600.0 / 1_852.0;
  }

  /**
   * This speed in feet per second.
   *
   * @return the number of feet per second [ft/s]
   */
  public double feetPerSecond() {
    return si * 10_000.0 / 3_048.0;
  }

  /**
   * This speed in miles per hour.
   *
   * @return the number of miles per hour [mi/h]
   */
  public double milesPerHour() {
    return si * 3_600_000.0 / 1_609_344.0;
  }

  /**
   * This speed in feet per minute.
   *
   * @return the number of feet per minute [ft/min]
   */
  public double feetPerMinute() {
    return si * 600_000.0 / 3_048.0;
  }

  /**
   * This speed in centimetres per second.
   *
   * @return the number of centimetres per second [cm/s]
   */
  public double centimetresPerSecond() {
    return si * 100.0;
  }

  /**
   * This speed times a time.
   *
   * @param time the factor
   * @return the product, a length
   */
  public Length times(Time time) {
    Objects.requireNonNull(time, "time");
    return Length.trusted(si * time.si);
  }

  /**
   * This speed times a force.
   *
   * @param force the factor
   * @return the product, a power
   */
  public Power times(Force force) {
    Objects.requireNonNull(force, "force");
    return Power.trusted(si * force.si);
  }

  /**
   * This speed over a time.
   *
   * @param time the divisor, not zero
   * @return the quotient, an acceleration
   * @throws ArithmeticException if the divisor is zero
   */
  public Acceleration dividedBy(Time time) {
    Objects.requireNonNull(time, "time");
    return Acceleration.trusted(si / Check.divisor(time.si, time));
  }

  /**
   * This speed over an acceleration.
   *
   * @param acceleration the divisor, not zero
   * @return the quotient, a time
   * @throws ArithmeticException if the divisor is zero
   */
  public Time dividedBy(Acceleration acceleration) {
    Objects.requireNonNull(acceleration, "acceleration");
    return Time.trusted(si / Check.divisor(acceleration.si, acceleration));
  }

  /** Makes a speed of an SI value that comes from arithmetic and is trusted. */
  static Speed trusted(double si) {
    return new Speed(si);
  }

  @Override
  Speed same(double si) {
    return new Speed(si);
  }

  @Override
  public QuantityKind<Speed> kind() {
    return KIND;
  }
}
