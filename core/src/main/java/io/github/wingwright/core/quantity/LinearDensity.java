// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The mass of a rod, a tube or a line per length.
 *
 * <p>Held as one {@code double} in kg/m. Made by the named factories, such as
 * {@code LinearDensity.gramsPerMetre(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class LinearDensity extends AdditiveQuantity<LinearDensity> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final LinearDensity ZERO = new LinearDensity(0.0);

  /** The unit kg/m. */
  public static final NamedUnit<LinearDensity> KILOGRAM_PER_METRE =
      new NamedUnit<>("kg/m", 1.0, 1.0, 0.0);

  /** The unit g/m. */
  public static final NamedUnit<LinearDensity> GRAM_PER_METRE =
      new NamedUnit<>("g/m", 1.0, 1_000.0, 0.0);

  /** The unit g/cm. */
  public static final NamedUnit<LinearDensity> GRAM_PER_CENTIMETRE =
      new NamedUnit<>("g/cm", 1.0, 10.0, 0.0);

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<LinearDensity> KIND =
      new QuantityKind<>(
          "linear density",
          new Dimension(1, -1, 0, 0, 0),
          LinearDensity::new,
          List.of(KILOGRAM_PER_METRE, GRAM_PER_METRE, GRAM_PER_CENTIMETRE),
          List.of(GRAM_PER_METRE, KILOGRAM_PER_METRE));

  private LinearDensity(double si) {
    super(si);
  }

  /**
   * A linear density in kilograms per metre.
   *
   * @param value the number of kilograms per metre [kg/m], finite
   * @return the linear density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static LinearDensity kilogramsPerMetre(double value) {
    return new LinearDensity(Check.finite(value, value, KIND, KILOGRAM_PER_METRE));
  }

  /**
   * A linear density in grams per metre.
   *
   * @param value the number of grams per metre [g/m], finite
   * @return the linear density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static LinearDensity gramsPerMetre(double value) {
    return new LinearDensity(Check.finite(value / 1_000.0, value, KIND, GRAM_PER_METRE));
  }

  /**
   * A linear density in grams per centimetre.
   *
   * @param value the number of grams per centimetre [g/cm], finite
   * @return the linear density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static LinearDensity gramsPerCentimetre(double value) {
    return new LinearDensity(Check.finite(value / 10.0, value, KIND, GRAM_PER_CENTIMETRE));
  }

  /**
   * Reads a linear density from text such as {@code "1.2 kg/m"}.
   *
   * @param text a number and a unit; locale-free
   * @return the linear density
   * @throws IllegalArgumentException if the text is not a linear density; the message lists what is accepted
   */
  public static LinearDensity parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a linear density over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a linear density
   * @return the linear density
   * @throws IllegalArgumentException if its unit is not of a linear density, or its value is not finite
   */
  public static LinearDensity from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this linear density to JSR-385, in kg/m.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a linear density
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a linear density
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This linear density in kilograms per metre.
   *
   * @return the number of kilograms per metre [kg/m]
   */
  public double kilogramsPerMetre() {
    return si;
  }

  /**
   * This linear density in grams per metre.
   *
   * @return the number of grams per metre [g/m]
   */
  public double gramsPerMetre() {
    return si * 1_000.0;
  }

  /**
   * This linear density in grams per centimetre.
   *
   * @return the number of grams per centimetre [g/cm]
   */
  public double gramsPerCentimetre() {
    return si * 10.0;
  }

  /**
   * This linear density times a length.
   *
   * @param length the factor
   * @return the product, a mass
   */
  public Mass times(Length length) {
    Objects.requireNonNull(length, "length");
    return Mass.trusted(si * length.si);
  }

  /** Makes a linear density of an SI value that comes from arithmetic and is trusted. */
  static LinearDensity trusted(double si) {
    return new LinearDensity(si);
  }

  @Override
  LinearDensity same(double si) {
    return new LinearDensity(si);
  }

  @Override
  public QuantityKind<LinearDensity> kind() {
    return KIND;
  }
}
