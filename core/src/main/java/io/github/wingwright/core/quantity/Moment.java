// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The moment of a force. It has the dimension of an energy and is not one.
 *
 * <p>Held as one {@code double} in N·m. Made by the named factories, such as
 * {@code Moment.newtonMillimetres(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Moment extends AdditiveQuantity<Moment> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Moment ZERO = new Moment(0.0);

  /** The unit N·m. */
  public static final NamedUnit<Moment> NEWTON_METRE =
      new NamedUnit<>("N·m", 1.0, 1.0, 0.0, "Nm");

  /** The unit N·mm. */
  public static final NamedUnit<Moment> NEWTON_MILLIMETRE =
      new NamedUnit<>("N·mm", 1.0, 1_000.0, 0.0, "Nmm");

  /** The unit kgf·cm. */
  public static final NamedUnit<Moment> KILOGRAM_FORCE_CENTIMETRE =
      new NamedUnit<>("kgf·cm", 980_665.0, 10_000_000.0, 0.0, "kg·cm");

  /** The unit lbf·ft. */
  public static final NamedUnit<Moment> POUND_FORCE_FOOT =
      new NamedUnit<>("lbf·ft", 0.45359237 * 9.80665 * 0.3048, 1.0, 0.0);

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Moment> KIND =
      new QuantityKind<>(
          "moment",
          new Dimension(1, 2, -2, 0, 0),
          Moment::new,
          List.of(NEWTON_METRE, NEWTON_MILLIMETRE, KILOGRAM_FORCE_CENTIMETRE, POUND_FORCE_FOOT),
          List.of(NEWTON_MILLIMETRE, NEWTON_METRE));

  private Moment(double si) {
    super(si);
  }

  /**
   * A moment in newton metres.
   *
   * @param value the number of newton metres [N·m], finite
   * @return the moment
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Moment newtonMetres(double value) {
    return new Moment(Check.finite(value, value, KIND, NEWTON_METRE));
  }

  /**
   * A moment in newton millimetres.
   *
   * @param value the number of newton millimetres [N·mm], finite
   * @return the moment
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Moment newtonMillimetres(double value) {
    return new Moment(Check.finite(value / 1_000.0, value, KIND, NEWTON_MILLIMETRE));
  }

  /**
   * A moment in kilogram force centimetres.
   *
   * @param value the number of kilogram force centimetres [kgf·cm], finite
   * @return the moment
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Moment kilogramForceCentimetres(double value) {
    return new Moment(Check.finite(value * 980_665.0 / 10_000_000.0, value, KIND, KILOGRAM_FORCE_CENTIMETRE));
  }

  /**
   * A moment in pound force feet.
   *
   * @param value the number of pound force feet [lbf·ft], finite
   * @return the moment
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Moment poundForceFeet(double value) {
    return new Moment(Check.finite(value * (0.45359237 * 9.80665 * 0.3048), value, KIND, POUND_FORCE_FOOT));
  }

  /**
   * Reads a moment from text such as {@code "1.2 N·m"}.
   *
   * @param text a number and a unit; locale-free
   * @return the moment
   * @throws IllegalArgumentException if the text is not a moment; the message lists what is accepted
   */
  public static Moment parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a moment over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a moment
   * @return the moment
   * @throws IllegalArgumentException if its unit is not of a moment, or its value is not finite
   */
  public static Moment from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this moment to JSR-385, in N·m.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a moment
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a moment
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This moment in newton metres.
   *
   * @return the number of newton metres [N·m]
   */
  public double newtonMetres() {
    return si;
  }

  /**
   * This moment in newton millimetres.
   *
   * @return the number of newton millimetres [N·mm]
   */
  public double newtonMillimetres() {
    return si * 1_000.0;
  }

  /**
   * This moment in kilogram force centimetres.
   *
   * @return the number of kilogram force centimetres [kgf·cm]
   */
  public double kilogramForceCentimetres() {
    return si * 10_000_000.0 / 980_665.0;
  }

  /**
   * This moment in pound force feet.
   *
   * @return the number of pound force feet [lbf·ft]
   */
  public double poundForceFeet() {
    return si / (0.45359237 * 9.80665 * 0.3048);
  }

  /**
   * This moment over a length.
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
   * This moment over a force.
   *
   * @param force the divisor, not zero
   * @return the quotient, a length
   * @throws ArithmeticException if the divisor is zero
   */
  public Length dividedBy(Force force) {
    Objects.requireNonNull(force, "force");
    return Length.trusted(si / Check.divisor(force.si, force));
  }

  /** Makes a moment of an SI value that comes from arithmetic and is trusted. */
  static Moment trusted(double si) {
    return new Moment(si);
  }

  @Override
  Moment same(double si) {
    return new Moment(si);
  }

  @Override
  public QuantityKind<Moment> kind() {
    return KIND;
  }
}
