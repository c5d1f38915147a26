// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A mass moment of inertia.
 *
 * <p>Held as one {@code double} in kg·m². Made by the named factories, such as
 * {@code MomentOfInertia.gramSquareCentimetres(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class MomentOfInertia extends AdditiveQuantity<MomentOfInertia> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final MomentOfInertia ZERO = new MomentOfInertia(0.0);

  /** The unit kg·m². */
  public static final NamedUnit<MomentOfInertia> KILOGRAM_SQUARE_METRE =
      new NamedUnit<>("kg·m²", 1.0, 1.0, 0.0, "kg·m2");

  /** The unit g·cm². */
  public static final NamedUnit<MomentOfInertia> GRAM_SQUARE_CENTIMETRE =
      new NamedUnit<>("g·cm²", 1.0, 10_000_000.0, 0.0, "g·cm2");

  /** The unit slug·ft². */
  public static final NamedUnit<MomentOfInertia> SLUG_SQUARE_FOOT =
      new NamedUnit<>("slug·ft²", 0.45359237 * 9.80665 * 0.3048, 1.0, 0.0, "slug·ft2");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<MomentOfInertia> KIND =
      new QuantityKind<>(
          "moment of inertia",
          new Dimension(1, 2, 0, 0, 0),
          MomentOfInertia::new,
          List.of(KILOGRAM_SQUARE_METRE, GRAM_SQUARE_CENTIMETRE, SLUG_SQUARE_FOOT),
          List.of(GRAM_SQUARE_CENTIMETRE, KILOGRAM_SQUARE_METRE));

  private MomentOfInertia(double si) {
    super(si);
  }

  /**
   * A moment of inertia in kilogram square metres.
   *
   * @param value the number of kilogram square metres [kg·m²], finite
   * @return the moment of inertia
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static MomentOfInertia kilogramSquareMetres(double value) {
    return new MomentOfInertia(Check.finite(value, value, KIND, KILOGRAM_SQUARE_METRE));
  }

  /**
   * A moment of inertia in gram square centimetres.
   *
   * @param value the number of gram square centimetres [g·cm²], finite
   * @return the moment of inertia
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static MomentOfInertia gramSquareCentimetres(double value) {
    return new MomentOfInertia(Check.finite(value / 10_000_000.0, value, KIND, GRAM_SQUARE_CENTIMETRE));
  }

  /**
   * A moment of inertia in slug square feet.
   *
   * @param value the number of slug square feet [slug·ft²], finite
   * @return the moment of inertia
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static MomentOfInertia slugSquareFeet(double value) {
    return new MomentOfInertia(Check.finite(value * (0.45359237 * 9.80665 * 0.3048), value, KIND, SLUG_SQUARE_FOOT));
  }

  /**
   * Reads a moment of inertia from text such as {@code "1.2 kg·m²"}.
   *
   * @param text a number and a unit; locale-free
   * @return the moment of inertia
   * @throws IllegalArgumentException if the text is not a moment of inertia; the message lists what is accepted
   */
  public static MomentOfInertia parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a moment of inertia over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a moment of inertia
   * @return the moment of inertia
   * @throws IllegalArgumentException if its unit is not of a moment of inertia, or its value is not finite
   */
  public static MomentOfInertia from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this moment of inertia to JSR-385, in kg·m².
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a moment of inertia
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a moment of inertia
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This moment of inertia in kilogram square metres.
   *
   * @return the number of kilogram square metres [kg·m²]
   */
  public double kilogramSquareMetres() {
    return si;
  }

  /**
   * This moment of inertia in gram square centimetres.
   *
   * @return the number of gram square centimetres [g·cm²]
   */
  public double gramSquareCentimetres() {
    return si * 10_000_000.0;
  }

  /**
   * This moment of inertia in slug square feet.
   *
   * @return the number of slug square feet [slug·ft²]
   */
  public double slugSquareFeet() {
    return si / (0.45359237 * 9.80665 * 0.3048);
  }

  /**
   * This moment of inertia over a mass.
   *
   * @param mass the divisor, not zero
   * @return the quotient, an area
   * @throws ArithmeticException if the divisor is zero
   */
  public Area dividedBy(Mass mass) {
    Objects.requireNonNull(mass, "mass");
    return Area.trusted(si / Check.divisor(mass.si, mass));
  }

  /** Makes a moment of inertia of an SI value that comes from arithmetic and is trusted. */
  static MomentOfInertia trusted(double si) {
    return new MomentOfInertia(si);
  }

  @Override
  MomentOfInertia same(double si) {
    return new MomentOfInertia(si);
  }

  @Override
  public QuantityKind<MomentOfInertia> kind() {
    return KIND;
  }
}
