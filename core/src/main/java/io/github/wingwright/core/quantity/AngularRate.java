// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * An angular rate: of pitch, roll or yaw, or of a shaft.
 *
 * <p>Held as one {@code double} in rad/s. Made by the named factories, such as
 * {@code AngularRate.degreesPerSecond(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class AngularRate extends AdditiveQuantity<AngularRate> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final AngularRate ZERO = new AngularRate(0.0);

  /** The unit rad/s. */
  public static final NamedUnit<AngularRate> RADIAN_PER_SECOND =
      new NamedUnit<>("rad/s", 1.0, 1.0, 0.0);

  /** The unit °/s. */
  public static final NamedUnit<AngularRate> DEGREE_PER_SECOND =
      new NamedUnit<>("°/s", Math.PI, 180.0, 0.0, "deg/s");

  /** The unit rpm. */
  public static final NamedUnit<AngularRate> REVOLUTION_PER_MINUTE =
      new NamedUnit<>("rpm", Math.PI, 30.0, 0.0, "rev/min");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<AngularRate> KIND =
      new QuantityKind<>(
          "angular rate",
          new Dimension(0, 0, -1, 0, 1),
          AngularRate::new,
          List.of(RADIAN_PER_SECOND, DEGREE_PER_SECOND, REVOLUTION_PER_MINUTE),
          List.of(DEGREE_PER_SECOND));

  private AngularRate(double si) {
    super(si);
  }

  /**
   * An angular rate in radians per second.
   *
   * @param value the number of radians per second [rad/s], finite
   * @return the angular rate
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static AngularRate radiansPerSecond(double value) {
    return new AngularRate(Check.finite(value, value, KIND, RADIAN_PER_SECOND));
  }

  /**
   * An angular rate in degrees per second.
   *
   * @param value the number of degrees per second [°/s], finite
   * @return the angular rate
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static AngularRate degreesPerSecond(double value) {
    return new AngularRate(Check.finite(value * Math.PI / 180.0, value, KIND, DEGREE_PER_SECOND));
  }

  /**
   * An angular rate in revolutions per minute.
   *
   * @param value the number of revolutions per minute [rpm], finite
   * @return the angular rate
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static AngularRate revolutionsPerMinute(double value) {
    return new AngularRate(Check.finite(value * Math.PI / 30.0, value, KIND, REVOLUTION_PER_MINUTE));
  }

  /**
   * Reads an angular rate from text such as {@code "1.2 rad/s"}.
   *
   * @param text a number and a unit; locale-free
   * @return the angular rate
   * @throws IllegalArgumentException if the text is not an angular rate; the message lists what is accepted
   */
  public static AngularRate parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes an angular rate over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of an angular rate
   * @return the angular rate
   * @throws IllegalArgumentException if its unit is not of an angular rate, or its value is not finite
   */
  public static AngularRate from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this angular rate to JSR-385, in rad/s.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of an angular rate
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of an angular rate
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This angular rate in radians per second.
   *
   * @return the number of radians per second [rad/s]
   */
  public double radiansPerSecond() {
    return si;
  }

  /**
   * This angular rate in degrees per second.
   *
   * @return the number of degrees per second [°/s]
   */
  public double degreesPerSecond() {
    return si * 180.0 / Math.PI;
  }

  /**
   * This angular rate in revolutions per minute.
   *
   * @return the number of revolutions per minute [rpm]
   */
  public double revolutionsPerMinute() {
    return si * 30.0 / Math.PI;
  }

  /**
   * This angular rate times a time.
   *
   * @param time the factor
   * @return the product, an angle
   */
  public Angle times(Time time) {
    Objects.requireNonNull(time, "time");
    return Angle.trusted(si * time.si);
  }

  /** Makes an angular rate of an SI value that comes from arithmetic and is trusted. */
  static AngularRate trusted(double si) {
    return new AngularRate(si);
  }

  @Override
  AngularRate same(double si) {
    return new AngularRate(si);
  }

  @Override
  public QuantityKind<AngularRate> kind() {
    return KIND;
  }
}
