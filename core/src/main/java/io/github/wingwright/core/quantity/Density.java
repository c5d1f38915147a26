// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The mass of a material or of air per volume.
 *
 * <p>Held as one {@code double} in kg/m³. Made by the named factories, such as
 * {@code Density.gramsPerCubicCentimetre(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Density extends AdditiveQuantity<Density> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Density ZERO = new Density(0.0);

  /** The unit kg/m³. */
  public static final NamedUnit<Density> KILOGRAM_PER_CUBIC_METRE =
      new NamedUnit<>("kg/m³", 1.0, 1.0, 0.0, "kg/m3");

  /** The unit g/cm³. */
  public static final NamedUnit<Density> GRAM_PER_CUBIC_CENTIMETRE =
      new NamedUnit<>("g/cm³", 1_000.0, 1.0, 0.0, "g/cm3", "kg/L");

  /** The unit lb/ft³. */
  public static final NamedUnit<Density> POUND_PER_CUBIC_FOOT =
      new NamedUnit<>("lb/ft³", 0.45359237, 0.3048 * 0.3048 * 0.3048, 0.0, "lb/ft3");

  /** The unit slug/ft³. */
  public static final NamedUnit<Density> SLUG_PER_CUBIC_FOOT =
      new NamedUnit<>("slug/ft³", 0.45359237 * 9.80665, 0.3048 * 0.3048 * 0.3048 * 0.3048, 0.0, "slug/ft3");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Density> KIND =
      new QuantityKind<>(
          "density",
          new Dimension(1, -3, 0, 0, 0),
          Density::new,
          List.of(KILOGRAM_PER_CUBIC_METRE, GRAM_PER_CUBIC_CENTIMETRE, POUND_PER_CUBIC_FOOT, SLUG_PER_CUBIC_FOOT),
          List.of(KILOGRAM_PER_CUBIC_METRE));

  private Density(double si) {
    super(si);
  }

  /**
   * A density in kilograms per cubic metre.
   *
   * @param value the number of kilograms per cubic metre [kg/m³], finite
   * @return the density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Density kilogramsPerCubicMetre(double value) {
    return new Density(Check.finite(value, value, KIND, KILOGRAM_PER_CUBIC_METRE));
  }

  /**
   * A density in grams per cubic centimetre.
   *
   * @param value the number of grams per cubic centimetre [g/cm³], finite
   * @return the density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Density gramsPerCubicCentimetre(double value) {
    return new Density(Check.finite(value * 1_000.0, value, KIND, GRAM_PER_CUBIC_CENTIMETRE));
  }

  /**
   * A density in pounds per cubic foot.
   *
   * @param value the number of pounds per cubic foot [lb/ft³], finite
   * @return the density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Density poundsPerCubicFoot(double value) {
    return new Density(Check.finite(value * 0.45359237 / (0.3048 * 0.3048 * 0.3048), value, KIND, POUND_PER_CUBIC_FOOT));
  }

  /**
   * A density in slugs per cubic foot.
   *
   * @param value the number of slugs per cubic foot [slug/ft³], finite
   * @return the density
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Density slugsPerCubicFoot(double value) {
    return new Density(Check.finite(value * (0.45359237 * 9.80665) / (0.3048 * 0.3048 * 0.3048 * 0.3048), value, KIND, SLUG_PER_CUBIC_FOOT));
  }

  /**
   * Reads a density from text such as {@code "1.2 kg/m³"}.
   *
   * @param text a number and a unit; locale-free
   * @return the density
   * @throws IllegalArgumentException if the text is not a density; the message lists what is accepted
   */
  public static Density parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a density over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a density
   * @return the density
   * @throws IllegalArgumentException if its unit is not of a density, or its value is not finite
   */
  public static Density from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this density to JSR-385, in kg/m³.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a density
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a density
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This density in kilograms per cubic metre.
   *
   * @return the number of kilograms per cubic metre [kg/m³]
   */
  public double kilogramsPerCubicMetre() {
    return si;
  }

  /**
   * This density in grams per cubic centimetre.
   *
   * @return the number of grams per cubic centimetre [g/cm³]
   */
  public double gramsPerCubicCentimetre() {
    return si / 1_000.0;
  }

  /**
   * This density in pounds per cubic foot.
   *
   * @return the number of pounds per cubic foot [lb/ft³]
   */
  public double poundsPerCubicFoot() {
    return si * (0.3048 * 0.3048 * 0.3048) / 0.45359237;
  }

  /**
   * This density in slugs per cubic foot.
   *
   * @return the number of slugs per cubic foot [slug/ft³]
   */
  public double slugsPerCubicFoot() {
    return si * (0.3048 * 0.3048 * 0.3048 * 0.3048) / (0.45359237 * 9.80665);
  }

  /**
   * This density times a volume.
   *
   * @param volume the factor
   * @return the product, a mass
   */
  public Mass times(Volume volume) {
    Objects.requireNonNull(volume, "volume");
    return Mass.trusted(si * volume.si);
  }

  /**
   * This density times a length.
   *
   * @param length the factor
   * @return the product, an areal density
   */
  public ArealDensity times(Length length) {
    Objects.requireNonNull(length, "length");
    return ArealDensity.trusted(si * length.si);
  }

  /** Makes a density of an SI value that comes from arithmetic and is trusted. */
  static Density trusted(double si) {
    return new Density(si);
  }

  @Override
  Density same(double si) {
    return new Density(si);
  }

  @Override
  public QuantityKind<Density> kind() {
    return KIND;
  }
}
