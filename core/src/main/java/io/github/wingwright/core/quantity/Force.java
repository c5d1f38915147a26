// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A force: a lift, a drag, a weight.
 *
 * <p>Held as one {@code double} in N. Made by the named factories, such as
 * {@code Force.millinewtons(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Force extends AdditiveQuantity<Force> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Force ZERO = new Force(0.0);

  /** The unit N. */
  public static final NamedUnit<Force> NEWTON =
      new NamedUnit<>("N", 1.0, 1.0, 0.0);

  /** The unit mN. */
  public static final NamedUnit<Force> MILLINEWTON =
      new NamedUnit<>("mN", 1.0, 1_000.0, 0.0);

  /** The unit kN. */
  public static final NamedUnit<Force> KILONEWTON =
      new NamedUnit<>("kN", 1_000.0, 1.0, 0.0);

  /** The unit lbf. */
  public static final NamedUnit<Force> POUND_FORCE =
      new NamedUnit<>("lbf", 0.45359237 * 9.80665, 1.0, 0.0);

  /** The unit kgf. */
  public static final NamedUnit<Force> KILOGRAM_FORCE =
      new NamedUnit<>("kgf", 980_665.0, 100_000.0, 0.0, "kp");

  /** The unit gf. */
  public static final NamedUnit<Force> GRAM_FORCE =
      new NamedUnit<>("gf", 980_665.0, 100_000_000.0, 0.0);

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Force> KIND =
      new QuantityKind<>(
          "force",
          new Dimension(1, 1, -2, 0, 0),
          Force::new,
          List.of(NEWTON, MILLINEWTON, KILONEWTON, POUND_FORCE, KILOGRAM_FORCE, GRAM_FORCE),
          List.of(MILLINEWTON, NEWTON, KILONEWTON));

  private Force(double si) {
    super(si);
  }

  /**
   * A force in newtons.
   *
   * @param value the number of newtons [N], finite
   * @return the force
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Force newtons(double value) {
    return new Force(Check.finite(value, value, KIND, NEWTON));
  }

  /**
   * A force in millinewtons.
   *
   * @param value the number of millinewtons [mN], finite
   * @return the force
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Force millinewtons(double value) {
    return new Force(Check.finite(value / 1_000.0, value, KIND, MILLINEWTON));
  }

  /**
   * A force in kilonewtons.
   *
   * @param value the number of kilonewtons [kN], finite
   * @return the force
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Force kilonewtons(double value) {
    return new Force(Check.finite(value * 1_000.0, value, KIND, KILONEWTON));
  }

  /**
   * A force in pounds-force.
   *
   * @param value the number of pounds-force [lbf], finite
   * @return the force
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Force poundsForce(double value) {
    return new Force(Check.finite(value * (0.45359237 * 9.80665), value, KIND, POUND_FORCE));
  }

  /**
   * A force in kilograms-force.
   *
   * @param value the number of kilograms-force [kgf], finite
   * @return the force
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Force kilogramsForce(double value) {
    return new Force(Check.finite(value * 980_665.0 / 100_000.0, value, KIND, KILOGRAM_FORCE));
  }

  /**
   * A force in grams-force.
   *
   * @param value the number of grams-force [gf], finite
   * @return the force
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Force gramsForce(double value) {
    return new Force(Check.finite(value * 980_665.0 / 100_000_000.0, value, KIND, GRAM_FORCE));
  }

  /**
   * Reads a force from text such as {@code "1.2 N"}.
   *
   * @param text a number and a unit; locale-free
   * @return the force
   * @throws IllegalArgumentException if the text is not a force; the message lists what is accepted
   */
  public static Force parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a force over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a force
   * @return the force
   * @throws IllegalArgumentException if its unit is not of a force, or its value is not finite
   */
  public static Force from(Quantity<javax.measure.quantity.Force> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this force to JSR-385, in N.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Force> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Force.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a force
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a force
   */
  public double in(Unit<javax.measure.quantity.Force> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This force in newtons.
   *
   * @return the number of newtons [N]
   */
  public double newtons() {
    return si;
  }

  /**
   * This force in millinewtons.
   *
   * @return the number of millinewtons [mN]
   */
  public double millinewtons() {
    return si * 1_000.0;
  }

  /**
   * This force in kilonewtons.
   *
   * @return the number of kilonewtons [kN]
   */
  public double kilonewtons() {
    return si / 1_000.0;
  }

  /**
   * This force in pounds-force.
   *
   * @return the number of pounds-force [lbf]
   */
  public double poundsForce() {
    return si / (0.45359237 * 9.80665);
  }

  /**
   * This force in kilograms-force.
   *
   * @return the number of kilograms-force [kgf]
   */
  public double kilogramsForce() {
    return si * 100_000.0 / 980_665.0;
  }

  /**
   * This force in grams-force.
   *
   * @return the number of grams-force [gf]
   */
  public double gramsForce() {
    return si * 100_000_000.0 / 980_665.0;
  }

  /**
   * This force times a speed.
   *
   * @param speed the factor
   * @return the product, a power
   */
  public Power times(Speed speed) {
    Objects.requireNonNull(speed, "speed");
    return Power.trusted(si * speed.si);
  }

  /**
   * This force over an area.
   *
   * @param area the divisor, not zero
   * @return the quotient, a pressure
   * @throws ArithmeticException if the divisor is zero
   */
  public Pressure dividedBy(Area area) {
    Objects.requireNonNull(area, "area");
    return Pressure.trusted(si / Check.divisor(area.si, area));
  }

  /**
   * This force over a pressure.
   *
   * @param pressure the divisor, not zero
   * @return the quotient, an area
   * @throws ArithmeticException if the divisor is zero
   */
  public Area dividedBy(Pressure pressure) {
    Objects.requireNonNull(pressure, "pressure");
    return Area.trusted(si / Check.divisor(pressure.si, pressure));
  }

  /**
   * This force over a mass.
   *
   * @param mass the divisor, not zero
   * @return the quotient, an acceleration
   * @throws ArithmeticException if the divisor is zero
   */
  public Acceleration dividedBy(Mass mass) {
    Objects.requireNonNull(mass, "mass");
    return Acceleration.trusted(si / Check.divisor(mass.si, mass));
  }

  /**
   * This force over an acceleration.
   *
   * @param acceleration the divisor, not zero
   * @return the quotient, a mass
   * @throws ArithmeticException if the divisor is zero
   */
  public Mass dividedBy(Acceleration acceleration) {
    Objects.requireNonNull(acceleration, "acceleration");
    return Mass.trusted(si / Check.divisor(acceleration.si, acceleration));
  }

  /**
   * The moment of this force at an arm. Moment and energy have the same dimension and are different things, so the
   * product of a force and a length is asked for by name.
   *
   * @param arm lever arm, perpendicular to the force
   * @return F·l as a moment
   */
  public Moment moment(Length arm) {
    Objects.requireNonNull(arm, "arm");
    return Moment.trusted(si * arm.si);
  }

  /**
   * The work of this force along a path.
   *
   * @param path distance along the force
   * @return F·s as an energy
   */
  public Energy work(Length path) {
    Objects.requireNonNull(path, "path");
    return Energy.trusted(si * path.si);
  }

  /** Makes a force of an SI value that comes from arithmetic and is trusted. */
  static Force trusted(double si) {
    return new Force(si);
  }

  @Override
  Force same(double si) {
    return new Force(si);
  }

  @Override
  public QuantityKind<Force> kind() {
    return KIND;
  }
}
