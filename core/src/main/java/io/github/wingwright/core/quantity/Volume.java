// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A volume: what a fuselage encloses, what a part displaces.
 *
 * <p>Held as one {@code double} in m³. Made by the named factories, such as
 * {@code Volume.cubicMillimetres(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Volume extends AdditiveQuantity<Volume> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Volume ZERO = new Volume(0.0);

  /** The unit m³. */
  public static final NamedUnit<Volume> CUBIC_METRE =
      new NamedUnit<>("m³", 1.0, 1.0, 0.0, "m3");

  /** The unit mm³. */
  public static final NamedUnit<Volume> CUBIC_MILLIMETRE =
      new NamedUnit<>("mm³", 1.0, 1_000_000_000.0, 0.0, "mm3");

  /** The unit cm³. */
  public static final NamedUnit<Volume> CUBIC_CENTIMETRE =
      new NamedUnit<>("cm³", 1.0, 1_000_000.0, 0.0, "cm3", "mL", "ml");

  /** The unit L. */
  public static final NamedUnit<Volume> LITRE =
      new NamedUnit<>("L", 1.0, 1_000.0, 0.0, "l", "dm³", "dm3");

  /** The unit in³. */
  public static final NamedUnit<Volume> CUBIC_INCH =
      new NamedUnit<>("in³", 16_387_064.0, 1_000_000_000_000.0, 0.0, "in3");

  /** The unit ft³. */
  public static final NamedUnit<Volume> CUBIC_FOOT =
      new NamedUnit<>("ft³", 28_316_846_592.0, 1_000_000_000_000.0, 0.0, "ft3");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Volume> KIND =
      new QuantityKind<>(
          "volume",
          new Dimension(0, 3, 0, 0, 0),
          Volume::new,
          List.of(CUBIC_METRE, CUBIC_MILLIMETRE, CUBIC_CENTIMETRE, LITRE, CUBIC_INCH, CUBIC_FOOT),
          List.of(CUBIC_MILLIMETRE, CUBIC_CENTIMETRE, LITRE, CUBIC_METRE));

  private Volume(double si) {
    super(si);
  }

  /**
   * A volume in cubic metres.
   *
   * @param value the number of cubic metres [m³], finite
   * @return the volume
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Volume cubicMetres(double value) {
    return new Volume(Check.finite(value, value, KIND, CUBIC_METRE));
  }

  /**
   * A volume in cubic millimetres.
   *
   * @param value the number of cubic millimetres [mm³], finite
   * @return the volume
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Volume cubicMillimetres(double value) {
    return new Volume(Check.finite(value / 1_000_000_000.0, value, KIND, CUBIC_MILLIMETRE));
  }

  /**
   * A volume in cubic centimetres.
   *
   * @param value the number of cubic centimetres [cm³], finite
   * @return the volume
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Volume cubicCentimetres(double value) {
    return new Volume(Check.finite(value / 1_000_000.0, value, KIND, CUBIC_CENTIMETRE));
  }

  /**
   * A volume in litres.
   *
   * @param value the number of litres [L], finite
   * @return the volume
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Volume litres(double value) {
    return new Volume(Check.finite(value / 1_000.0, value, KIND, LITRE));
  }

  /**
   * A volume in cubic inches.
   *
   * @param value the number of cubic inches [in³], finite
   * @return the volume
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Volume cubicInches(double value) {
    return new Volume(Check.finite(value * 16_387_064.0 / 1_000_000_000_000.0, value, KIND, CUBIC_INCH));
  }

  /**
   * A volume in cubic feet.
   *
   * @param value the number of cubic feet [ft³], finite
   * @return the volume
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Volume cubicFeet(double value) {
    return new Volume(Check.finite(value * 28_316_846_592.0 / 1_000_000_000_000.0, value, KIND, CUBIC_FOOT));
  }

  /**
   * Reads a volume from text such as {@code "1.2 m³"}.
   *
   * @param text a number and a unit; locale-free
   * @return the volume
   * @throws IllegalArgumentException if the text is not a volume; the message lists what is accepted
   */
  public static Volume parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a volume over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a volume
   * @return the volume
   * @throws IllegalArgumentException if its unit is not of a volume, or its value is not finite
   */
  public static Volume from(Quantity<javax.measure.quantity.Volume> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this volume to JSR-385, in m³.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Volume> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Volume.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a volume
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a volume
   */
  public double in(Unit<javax.measure.quantity.Volume> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This volume in cubic metres.
   *
   * @return the number of cubic metres [m³]
   */
  public double cubicMetres() {
    return si;
  }

  /**
   * This volume in cubic millimetres.
   *
   * @return the number of cubic millimetres [mm³]
   */
  public double cubicMillimetres() {
    return si * 1_000_000_000.0;
  }

  /**
   * This volume in cubic centimetres.
   *
   * @return the number of cubic centimetres [cm³]
   */
  public double cubicCentimetres() {
    return si * 1_000_000.0;
  }

  /**
   * This volume in litres.
   *
   * @return the number of litres [L]
   */
  public double litres() {
    return si * 1_000.0;
  }

  /**
   * This volume in cubic inches.
   *
   * @return the number of cubic inches [in³]
   */
  public double cubicInches() {
    return si * 1_000_000_000_000.0 / 16_387_064.0;
  }

  /**
   * This volume in cubic feet.
   *
   * @return the number of cubic feet [ft³]
   */
  public double cubicFeet() {
    return si * 1_000_000_000_000.0 / 28_316_846_592.0;
  }

  /**
   * This volume times a density.
   *
   * @param density the factor
   * @return the product, a mass
   */
  public Mass times(Density density) {
    Objects.requireNonNull(density, "density");
    return Mass.trusted(si * density.si);
  }

  /**
   * This volume over an area.
   *
   * @param area the divisor, not zero
   * @return the quotient, a length
   * @throws ArithmeticException if the divisor is zero
   */
  public Length dividedBy(Area area) {
    Objects.requireNonNull(area, "area");
    return Length.trusted(si / Check.divisor(area.si, area));
  }

  /**
   * This volume over a length.
   *
   * @param length the divisor, not zero
   * @return the quotient, an area
   * @throws ArithmeticException if the divisor is zero
   */
  public Area dividedBy(Length length) {
    Objects.requireNonNull(length, "length");
    return Area.trusted(si / Check.divisor(length.si, length));
  }

  /**
   * The edge of the cube that has this volume.
   *
   * @return ∛V, negative for a negative volume
   */
  public Length cubeRoot() {
    return Length.trusted(Math.cbrt(si));
  }

  /** Makes a volume of an SI value that comes from arithmetic and is trusted. */
  static Volume trusted(double si) {
    return new Volume(si);
  }

  @Override
  Volume same(double si) {
    return new Volume(si);
  }

  @Override
  public QuantityKind<Volume> kind() {
    return KIND;
  }
}
