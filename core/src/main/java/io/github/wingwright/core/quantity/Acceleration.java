// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * An acceleration.
 *
 * <p>Held as one {@code double} in m/s². Made by the named factories, such as
 * {@code Acceleration.feetPerSecondSquared(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Acceleration extends AdditiveQuantity<Acceleration> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Acceleration ZERO = new Acceleration(0.0);

  /** The unit m/s². */
  public static final NamedUnit<Acceleration> METRE_PER_SECOND_SQUARED =
      new NamedUnit<>("m/s²", 1.0, 1.0, 0.0, "m/s2");

  /** The standard acceleration of free fall, 9.80665 m/s² exactly (NIST SP 811, 2008 edition, appendix B.8). */
  public static final Acceleration STANDARD_GRAVITY = new Acceleration(9.80665);

  /** The unit ft/s². */
  public static final NamedUnit<Acceleration> FOOT_PER_SECOND_SQUARED =
      new NamedUnit<>("ft/s²", 3_048.0, 10_000.0, 0.0, "ft/s2");

  /** The unit g₀. */
  public static final NamedUnit<Acceleration> STANDARD_GRAVITY_UNIT =
      new NamedUnit<>("g₀", 980_665.0, 100_000.0, 0.0, "gn", "g0");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Acceleration> KIND =
      new QuantityKind<>(
          "acceleration",
          new Dimension(0, 1, -2, 0, 0),
          Acceleration::new,
          List.of(METRE_PER_SECOND_SQUARED, FOOT_PER_SECOND_SQUARED, STANDARD_GRAVITY_UNIT),
          List.of(METRE_PER_SECOND_SQUARED));

  private Acceleration(double si) {
    super(si);
  }

  /**
   * An acceleration in metres per second squared.
   *
   * @param value the number of metres per second squared [m/s²], finite
   * @return the acceleration
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Acceleration metresPerSecondSquared(double value) {
    return new Acceleration(Check.finite(value, value, KIND, METRE_PER_SECOND_SQUARED));
  }

  /**
   * An acceleration in feet per second squared.
   *
   * @param value the number of feet per second squared [ft/s²], finite
   * @return the acceleration
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Acceleration feetPerSecondSquared(double value) {
    return new Acceleration(Check.finite(value * 3_048.0 / 10_000.0, value, KIND, FOOT_PER_SECOND_SQUARED));
  }

  /**
   * An acceleration in standard gravities.
   *
   * @param value the number of standard gravities [g₀], finite
   * @return the acceleration
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Acceleration standardGravities(double value) {
    return new Acceleration(Check.finite(value * 980_665.0 / 100_000.0, value, KIND, STANDARD_GRAVITY_UNIT));
  }

  /**
   * Reads an acceleration from text such as {@code "1.2 m/s²"}.
   *
   * @param text a number and a unit; locale-free
   * @return the acceleration
   * @throws IllegalArgumentException if the text is not an acceleration; the message lists what is accepted
   */
  public static Acceleration parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes an acceleration over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of an acceleration
   * @return the acceleration
   * @throws IllegalArgumentException if its unit is not of an acceleration, or its value is not finite
   */
  public static Acceleration from(Quantity<javax.measure.quantity.Acceleration> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this acceleration to JSR-385, in m/s².
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Acceleration> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Acceleration.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of an acceleration
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of an acceleration
   */
  public double in(Unit<javax.measure.quantity.Acceleration> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This acceleration in metres per second squared.
   *
   * @return the number of metres per second squared [m/s²]
   */
  public double metresPerSecondSquared() {
    return si;
  }

  /**
   * This acceleration in feet per second squared.
   *
   * @return the number of feet per second squared [ft/s²]
   */
  public double feetPerSecondSquared() {
    return si * 10_000.0 / 3_048.0;
  }

  /**
   * This acceleration in standard gravities.
   *
   * @return the number of standard gravities [g₀]
   */
  public double standardGravities() {
    return si * 100_000.0 / 980_665.0;
  }

  /**
   * This acceleration times a time.
   *
   * @param time the factor
   * @return the product, a speed
   */
  public Speed times(Time time) {
    Objects.requireNonNull(time, "time");
    return Speed.trusted(si * time.si);
  }

  /**
   * This acceleration times a mass.
   *
   * @param mass the factor
   * @return the product, a force
   */
  public Force times(Mass mass) {
    Objects.requireNonNull(mass, "mass");
    return Force.trusted(si * mass.si);
  }

  /** Makes an acceleration of an SI value that comes from arithmetic and is trusted. */
  static Acceleration trusted(double si) {
    return new Acceleration(si);
  }

  @Override
  Acceleration same(double si) {
    return new Acceleration(si);
  }

  @Override
  public QuantityKind<Acceleration> kind() {
    return KIND;
  }
}
