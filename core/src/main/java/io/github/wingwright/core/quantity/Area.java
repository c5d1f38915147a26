// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * An area: a wing reference area, a wetted area, a cross-section.
 *
 * <p>Held as one {@code double} in m². Made by the named factories, such as
 * {@code Area.squareMillimetres(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Area extends AdditiveQuantity<Area> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Area ZERO = new Area(0.0);

  /** The unit m². */
  public static final NamedUnit<Area> SQUARE_METRE =
      new NamedUnit<>("m²", 1.0, 1.0, 0.0, "m2");

  /** The unit mm². */
  public static final NamedUnit<Area> SQUARE_MILLIMETRE =
      new NamedUnit<>("mm²", 1.0, 1_000_000.0, 0.0, "mm2");

  /** The unit cm². */
  public static final NamedUnit<Area> SQUARE_CENTIMETRE =
      new NamedUnit<>("cm²", 1.0, 10_000.0, 0.0, "cm2");

  /** The unit dm². */
  public static final NamedUnit<Area> SQUARE_DECIMETRE =
      new NamedUnit<>("dm²", 1.0, 100.0, 0.0, "dm2");

  /** The unit in². */
  public static final NamedUnit<Area> SQUARE_INCH =
      new NamedUnit<>("in²", 64_516.0, 100_000_000.0, 0.0, "in2", "sq in", "sqin");

  /** The unit ft². */
  public static final NamedUnit<Area> SQUARE_FOOT =
      new NamedUnit<>("ft²", 9_290_304.0, 100_000_000.0, 0.0, "ft2", "sq ft", "sqft");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Area> KIND =
      new QuantityKind<>(
          "area",
          new Dimension(0, 2, 0, 0, 0),
          Area::new,
          List.of(SQUARE_METRE, SQUARE_MILLIMETRE, SQUARE_CENTIMETRE, SQUARE_DECIMETRE, SQUARE_INCH, SQUARE_FOOT),
          List.of(SQUARE_MILLIMETRE, SQUARE_CENTIMETRE, SQUARE_METRE));

  private Area(double si) {
    super(si);
  }

  /**
   * An area in square metres.
   *
   * @param value the number of square metres [m²], finite
   * @return the area
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Area squareMetres(double value) {
    return new Area(Check.finite(value, value, KIND, SQUARE_METRE));
  }

  /**
   * An area in square millimetres.
   *
   * @param value the number of square millimetres [mm²], finite
   * @return the area
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Area squareMillimetres(double value) {
    return new Area(Check.finite(value / 1_000_000.0, value, KIND, SQUARE_MILLIMETRE));
  }

  /**
   * An area in square centimetres.
   *
   * @param value the number of square centimetres [cm²], finite
   * @return the area
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Area squareCentimetres(double value) {
    return new Area(Check.finite(value / 10_000.0, value, KIND, SQUARE_CENTIMETRE));
  }

  /**
   * An area in square decimetres.
   *
   * @param value the number of square decimetres [dm²], finite
   * @return the area
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Area squareDecimetres(double value) {
    return new Area(Check.finite(value / 100.0, value, KIND, SQUARE_DECIMETRE));
  }

  /**
   * An area in square inches.
   *
   * @param value the number of square inches [in²], finite
   * @return the area
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Area squareInches(double value) {
    return new Area(Check.finite(value * 64_516.0 / 100_000_000.0, value, KIND, SQUARE_INCH));
  }

  /**
   * An area in square feet.
   *
   * @param value the number of square feet [ft²], finite
   * @return the area
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Area squareFeet(double value) {
    return new Area(Check.finite(value * 9_290_304.0 / 100_000_000.0, value, KIND, SQUARE_FOOT));
  }

  /**
   * Reads an area from text such as {@code "1.2 m²"}.
   *
   * @param text a number and a unit; locale-free
   * @return the area
   * @throws IllegalArgumentException if the text is not an area; the message lists what is accepted
   */
  public static Area parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes an area over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of an area
   * @return the area
   * @throws IllegalArgumentException if its unit is not of an area, or its value is not finite
   */
  public static Area from(Quantity<javax.measure.quantity.Area> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this area to JSR-385, in m².
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Area> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Area.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of an area
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of an area
   */
  public double in(Unit<javax.measure.quantity.Area> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This area in square metres.
   *
   * @return the number of square metres [m²]
   */
  public double squareMetres() {
    return si;
  }

  /**
   * This area in square millimetres.
   *
   * @return the number of square millimetres [mm²]
   */
  public double squareMillimetres() {
    return si * 1_000_000.0;
  }

  /**
   * This area in square centimetres.
   *
   * @return the number of square centimetres [cm²]
   */
  public double squareCentimetres() {
    return si * 10_000.0;
  }

  /**
   * This area in square decimetres.
   *
   * @return the number of square decimetres [dm²]
   */
  public double squareDecimetres() {
    return si * 100.0;
  }

  /**
   * This area in square inches.
   *
   * @return the number of square inches [in²]
   */
  public double squareInches() {
    return si * 100_000_000.0 / 64_516.0;
  }

  /**
   * This area in square feet.
   *
   * @return the number of square feet [ft²]
   */
  public double squareFeet() {
    return si * 100_000_000.0 / 9_290_304.0;
  }

  /**
   * This area times a length.
   *
   * @param length the factor
   * @return the product, a volume
   */
  public Volume times(Length length) {
    Objects.requireNonNull(length, "length");
    return Volume.trusted(si * length.si);
  }

  /**
   * This area times an area.
   *
   * @param area the factor
   * @return the product, a second moment of area
   */
  public SecondMomentOfArea times(Area area) {
    Objects.requireNonNull(area, "area");
    return SecondMomentOfArea.trusted(si * area.si);
  }

  /**
   * This area times a pressure.
   *
   * @param pressure the factor
   * @return the product, a force
   */
  public Force times(Pressure pressure) {
    Objects.requireNonNull(pressure, "pressure");
    return Force.trusted(si * pressure.si);
  }

  /**
   * This area times an areal density.
   *
   * @param arealDensity the factor
   * @return the product, a mass
   */
  public Mass times(ArealDensity arealDensity) {
    Objects.requireNonNull(arealDensity, "areal density");
    return Mass.trusted(si * arealDensity.si);
  }

  /**
   * This area over a length.
   *
   * @param length the divisor, not zero
   * @return the quotient, a length
   * @throws ArithmeticException if the divisor is zero
   */
  public Length dividedBy(Length length) {
    Objects.requireNonNull(length, "length");
    return Length.trusted(si / Check.divisor(length.si, length));
  }

  /**
   * The side of the square that has this area.
   *
   * @return √A
   * @throws ArithmeticException if this area is negative
   */
  public Length squareRoot() {
    return Length.trusted(Check.root(si, this, Math.sqrt(si)));
  }

  /** Makes an area of an SI value that comes from arithmetic and is trusted. */
  static Area trusted(double si) {
    return new Area(si);
  }

  @Override
  Area same(double si) {
    return new Area(si);
  }

  @Override
  public QuantityKind<Area> kind() {
    return KIND;
  }
}
