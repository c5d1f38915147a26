// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A plane angle: an incidence, a sweep, a bank. A number is not an angle here.
 *
 * <p>Held as one {@code double} in rad. Made by the named factories, such as
 * {@code Angle.degrees(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Angle extends AdditiveQuantity<Angle> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Angle ZERO = new Angle(0.0);

  /** The unit rad. */
  public static final NamedUnit<Angle> RADIAN =
      new NamedUnit<>("rad", 1.0, 1.0, 0.0);

  /** The unit °. */
  public static final NamedUnit<Angle> DEGREE =
      new NamedUnit<>("°", Math.PI, 180.0, 0.0, "deg");

  /** The unit arcmin. */
  public static final NamedUnit<Angle> ARCMINUTE =
      new NamedUnit<>("arcmin", Math.PI, 10_800.0, 0.0);

  /** The unit rev. */
  public static final NamedUnit<Angle> TURN =
      new NamedUnit<>("rev", 2 * Math.PI, 1.0, 0.0, "turn");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Angle> KIND =
      new QuantityKind<>(
          "angle",
          new Dimension(0, 0, 0, 0, 1),
          Angle::new,
          List.of(RADIAN, DEGREE, ARCMINUTE, TURN),
          List.of(DEGREE));

  private Angle(double si) {
    super(si);
  }

  /**
   * An angle in radians.
   *
   * @param value the number of radians [rad], finite
   * @return the angle
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Angle radians(double value) {
    return new Angle(Check.finite(value, value, KIND, RADIAN));
  }

  /**
   * An angle in degrees.
   *
   * @param value the number of degrees [°], finite
   * @return the angle
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Angle degrees(double value) {
    return new Angle(Check.finite(value * Math.PI / 180.0, value, KIND, DEGREE));
  }

  /**
   * An angle in arcminutes.
   *
   * @param value the number of arcminutes [arcmin], finite
   * @return the angle
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Angle arcminutes(double value) {
    return new Angle(Check.finite(value * Math.PI / 10_800.0, value, KIND, ARCMINUTE));
  }

  /**
   * An angle in turns.
   *
   * @param value the number of turns [rev], finite
   * @return the angle
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Angle turns(double value) {
    return new Angle(Check.finite(value * (2 * Math.PI), value, KIND, TURN));
  }

  /**
   * Reads an angle from text such as {@code "1.2 rad"}.
   *
   * @param text a number and a unit; locale-free
   * @return the angle
   * @throws IllegalArgumentException if the text is not an angle; the message lists what is accepted
   */
  public static Angle parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes an angle over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of an angle
   * @return the angle
   * @throws IllegalArgumentException if its unit is not of an angle, or its value is not finite
   */
  public static Angle from(Quantity<javax.measure.quantity.Angle> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this angle to JSR-385, in rad.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Angle> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Angle.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of an angle
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of an angle
   */
  public double in(Unit<javax.measure.quantity.Angle> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This angle in radians.
   *
   * @return the number of radians [rad]
   */
  public double radians() {
    return si;
  }

  /**
   * This angle in degrees.
   *
   * @return the number of degrees [°]
   */
  public double degrees() {
    return si * 180.0 / Math.PI;
  }

  /**
   * This angle in arcminutes.
   *
   * @return the number of arcminutes [arcmin]
   */
  public double arcminutes() {
    return si * 10_800.0 / Math.PI;
  }

  /**
   * This angle in turns.
   *
   * @return the number of turns [rev]
   */
  public double turns() {
    return si / (2 * Math.PI);
  }

  /**
   * This angle over a time.
   *
   * @param time the divisor, not zero
   * @return the quotient, an angular rate
   * @throws ArithmeticException if the divisor is zero
   */
  public AngularRate dividedBy(Time time) {
    Objects.requireNonNull(time, "time");
    return AngularRate.trusted(si / Check.divisor(time.si, time));
  }

  /**
   * This angle over an angular rate.
   *
   * @param angularRate the divisor, not zero
   * @return the quotient, a time
   * @throws ArithmeticException if the divisor is zero
   */
  public Time dividedBy(AngularRate angularRate) {
    Objects.requireNonNull(angularRate, "angular rate");
    return Time.trusted(si / Check.divisor(angularRate.si, angularRate));
  }

  /**
   * The sine of this angle.
   *
   * @return sin, −1 to 1
   */
  public double sine() {
    return Math.sin(si);
  }

  /**
   * The cosine of this angle.
   *
   * @return cos, −1 to 1
   */
  public double cosine() {
    return Math.cos(si);
  }

  /**
   * The tangent of this angle.
   *
   * @return tan
   */
  public double tangent() {
    return Math.tan(si);
  }

  /** Makes an angle of an SI value that comes from arithmetic and is trusted. */
  static Angle trusted(double si) {
    return new Angle(si);
  }

  @Override
  Angle same(double si) {
    return new Angle(si);
  }

  @Override
  public QuantityKind<Angle> kind() {
    return KIND;
  }
}
