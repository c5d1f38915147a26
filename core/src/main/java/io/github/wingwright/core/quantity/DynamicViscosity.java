// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The dynamic viscosity μ of a fluid.
 *
 * <p>Held as one {@code double} in Pa·s. Made by the named factories, such as
 * {@code DynamicViscosity.millipascalSeconds(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class DynamicViscosity extends AdditiveQuantity<DynamicViscosity> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final DynamicViscosity ZERO = new DynamicViscosity(0.0);

  /** The unit Pa·s. */
  public static final NamedUnit<DynamicViscosity> PASCAL_SECOND =
      new NamedUnit<>("Pa·s", 1.0, 1.0, 0.0);

  /** The unit mPa·s. */
  public static final NamedUnit<DynamicViscosity> MILLIPASCAL_SECOND =
      new NamedUnit<>("mPa·s", 1.0, 1_000.0, 0.0, "cP");

  /** The unit µPa·s. */
  public static final NamedUnit<DynamicViscosity> MICROPASCAL_SECOND =
      new NamedUnit<>("µPa·s", 1.0, 1_000_000.0, 0.0, "uPa·s");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<DynamicViscosity> KIND =
      new QuantityKind<>(
          "dynamic viscosity",
          new Dimension(1, -1, -1, 0, 0),
          DynamicViscosity::new,
          List.of(PASCAL_SECOND, MILLIPASCAL_SECOND, MICROPASCAL_SECOND),
          List.of(MICROPASCAL_SECOND, PASCAL_SECOND));

  private DynamicViscosity(double si) {
    super(si);
  }

  /**
   * A dynamic viscosity in pascal seconds.
   *
   * @param value the number of pascal seconds [Pa·s], finite
   * @return the dynamic viscosity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static DynamicViscosity pascalSeconds(double value) {
    return new DynamicViscosity(Check.finite(value, value, KIND, PASCAL_SECOND));
  }

  /**
   * A dynamic viscosity in millipascal seconds.
   *
   * @param value the number of millipascal seconds [mPa·s], finite
   * @return the dynamic viscosity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static DynamicViscosity millipascalSeconds(double value) {
    return new DynamicViscosity(Check.finite(value / 1_000.0, value, KIND, MILLIPASCAL_SECOND));
  }

  /**
   * A dynamic viscosity in micropascal seconds.
   *
   * @param value the number of micropascal seconds [µPa·s], finite
   * @return the dynamic viscosity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static DynamicViscosity micropascalSeconds(double value) {
    return new DynamicViscosity(Check.finite(value / 1_000_000.0, value, KIND, MICROPASCAL_SECOND));
  }

  /**
   * Reads a dynamic viscosity from text such as {@code "1.2 Pa·s"}.
   *
   * @param text a number and a unit; locale-free
   * @return the dynamic viscosity
   * @throws IllegalArgumentException if the text is not a dynamic viscosity; the message lists what is accepted
   */
  public static DynamicViscosity parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a dynamic viscosity over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a dynamic viscosity
   * @return the dynamic viscosity
   * @throws IllegalArgumentException if its unit is not of a dynamic viscosity, or its value is not finite
   */
  public static DynamicViscosity from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this dynamic viscosity to JSR-385, in Pa·s.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a dynamic viscosity
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a dynamic viscosity
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This dynamic viscosity in pascal seconds.
   *
   * @return the number of pascal seconds [Pa·s]
   */
  public double pascalSeconds() {
    return si;
  }

  /**
   * This dynamic viscosity in millipascal seconds.
   *
   * @return the number of millipascal seconds [mPa·s]
   */
  public double millipascalSeconds() {
    return si * 1_000.0;
  }

  /**
   * This dynamic viscosity in micropascal seconds.
   *
   * @return the number of micropascal seconds [µPa·s]
   */
  public double micropascalSeconds() {
    return si * 1_000_000.0;
  }

  /**
   * This dynamic viscosity over a density.
   *
   * @param density the divisor, not zero
   * @return the quotient, a kinematic viscosity
   * @throws ArithmeticException if the divisor is zero
   */
  public KinematicViscosity dividedBy(Density density) {
    Objects.requireNonNull(density, "density");
    return KinematicViscosity.trusted(si / Check.divisor(density.si, density));
  }

  /** Makes a dynamic viscosity of an SI value that comes from arithmetic and is trusted. */
  static DynamicViscosity trusted(double si) {
    return new DynamicViscosity(si);
  }

  @Override
  DynamicViscosity same(double si) {
    return new DynamicViscosity(si);
  }

  @Override
  public QuantityKind<DynamicViscosity> kind() {
    return KIND;
  }
}
