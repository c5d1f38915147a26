// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A pressure, a stress or an elastic modulus.
 *
 * <p>Held as one {@code double} in Pa. Made by the named factories, such as
 * {@code Pressure.hectopascals(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Pressure extends AdditiveQuantity<Pressure> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Pressure ZERO = new Pressure(0.0);

  /** The unit Pa. */
  public static final NamedUnit<Pressure> PASCAL =
      new NamedUnit<>("Pa", 1.0, 1.0, 0.0);

  /** The unit hPa. */
  public static final NamedUnit<Pressure> HECTOPASCAL =
      new NamedUnit<>("hPa", 100.0, 1.0, 0.0, "mbar");

  /** The unit kPa. */
  public static final NamedUnit<Pressure> KILOPASCAL =
      new NamedUnit<>("kPa", 1_000.0, 1.0, 0.0);

  /** The unit MPa. */
  public static final NamedUnit<Pressure> MEGAPASCAL =
      new NamedUnit<>("MPa", 1_000_000.0, 1.0, 0.0, "N/mm²", "N/mm2");

  /** The unit GPa. */
  public static final NamedUnit<Pressure> GIGAPASCAL =
      new NamedUnit<>("GPa", 1_000_000_000.0, 1.0, 0.0);

  /** The unit bar. */
  public static final NamedUnit<Pressure> BAR =
      new NamedUnit<>("bar", 100_000.0, 1.0, 0.0);

  /** The unit atm. */
  public static final NamedUnit<Pressure> ATMOSPHERE =
      new NamedUnit<>("atm", 101_325.0, 1.0, 0.0);

  /** The unit psi. */
  public static final NamedUnit<Pressure> POUND_FORCE_PER_SQUARE_INCH =
      new NamedUnit<>("psi", 0.45359237 * 9.80665, 0.0254 * 0.0254, 0.0, "lbf/in²", "lbf/in2");

  /** The unit psf. */
  public static final NamedUnit<Pressure> POUND_FORCE_PER_SQUARE_FOOT =
      new NamedUnit<>("psf", 0.45359237 * 9.80665, 0.3048 * 0.3048, 0.0, "lbf/ft²", "lbf/ft2");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Pressure> KIND =
      new QuantityKind<>(
          "pressure",
          new Dimension(1, -1, -2, 0, 0),
          Pressure::new,
          List.of(
              PASCAL,
              HECTOPASCAL,
              KILOPASCAL,
              MEGAPASCAL,
              GIGAPASCAL,
              BAR,
              ATMOSPHERE,
              POUND_FORCE_PER_SQUARE_INCH,
              POUND_FORCE_PER_SQUARE_FOOT),
          List.of(PASCAL, KILOPASCAL, MEGAPASCAL, GIGAPASCAL));

  private Pressure(double si) {
    super(si);
  }

  /**
   * A pressure in pascals.
   *
   * @param value the number of pascals [Pa], finite
   * @return the pressure
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Pressure pascals(double value) {
    return new Pressure(Check.finite(value, value, KIND, PASCAL));
  }

  /**
   * A pressure in hectopascals.
   *
   * @param value the number of hectopascals [hPa], finite
   * @return the pressure
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Pressure hectopascals(double value) {
    return new Pressure(Check.finite(value * 100.0, value, KIND, HECTOPASCAL));
  }

  /**
   * A pressure in kilopascals.
   *
   * @param value the number of kilopascals [kPa], finite
   * @return the pressure
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Pressure kilopascals(double value) {
    return new Pressure(Check.finite(value * 1_000.0, value, KIND, KILOPASCAL));
  }

  /**
   * A pressure in megapascals.
   *
   * @param value the number of megapascals [MPa], finite
   * @return the pressure
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Pressure megapascals(double value) {
    return new Pressure(Check.finite(value * 1_000_000.0, value, KIND, MEGAPASCAL));
  }

  /**
   * A pressure in gigapascals.
   *
   * @param value the number of gigapascals [GPa], finite
   * @return the pressure
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Pressure gigapascals(double value) {
    return new Pressure(Check.finite(value * 1_000_000_000.0, value, KIND, GIGAPASCAL));
  }

  /**
   * A pressure in bars.
   *
   * @param value the number of bars [bar], finite
   * @return the pressure
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Pressure bars(double value) {
    return new Pressure(Check.finite(value * 100_000.0, value, KIND, BAR));
  }

  /**
   * A pressure in atmospheres.
   *
   * @param value the number of atmospheres [atm], finite
   * @return the pressure
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Pressure atmospheres(double value) {
    return new Pressure(Check.finite(value * 101_325.0, value, KIND, ATMOSPHERE));
  }

  /**
   * A pressure in pounds-force per square inch.
   *
   * @param value the number of pounds-force per square inch [psi], finite
   * @return the pressure
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Pressure poundsForcePerSquareInch(double value) {
    return new Pressure(Check.finite(value * (0.45359237 * 9.80665) / (0.0254 * 0.0254), value, KIND, POUND_FORCE_PER_SQUARE_INCH));
  }

  /**
   * A pressure in pounds-force per square foot.
   *
   * @param value the number of pounds-force per square foot [psf], finite
   * @return the pressure
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Pressure poundsForcePerSquareFoot(double value) {
    return new Pressure(Check.finite(value * (0.45359237 * 9.80665) / (0.3048 * 0.3048), value, KIND, POUND_FORCE_PER_SQUARE_FOOT));
  }

  /**
   * Reads a pressure from text such as {@code "1.2 Pa"}.
   *
   * @param text a number and a unit; locale-free
   * @return the pressure
   * @throws IllegalArgumentException if the text is not a pressure; the message lists what is accepted
   */
  public static Pressure parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a pressure over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a pressure
   * @return the pressure
   * @throws IllegalArgumentException if its unit is not of a pressure, or its value is not finite
   */
  public static Pressure from(Quantity<javax.measure.quantity.Pressure> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this pressure to JSR-385, in Pa.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Pressure> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Pressure.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a pressure
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a pressure
   */
  public double in(Unit<javax.measure.quantity.Pressure> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This pressure in pascals.
   *
   * @return the number of pascals [Pa]
   */
  public double pascals() {
    return si;
  }

  /**
   * This pressure in hectopascals.
   *
   * @return the number of hectopascals [hPa]
   */
  public double hectopascals() {
    return si / 100.0;
  }

  /**
   * This pressure in kilopascals.
   *
   * @return the number of kilopascals [kPa]
   */
  public double kilopascals() {
    return si / 1_000.0;
  }

  /**
   * This pressure in megapascals.
   *
   * @return the number of megapascals [MPa]
   */
  public double megapascals() {
    return si / 1_000_000.0;
  }

  /**
   * This pressure in gigapascals.
   *
   * @return the number of gigapascals [GPa]
   */
  public double gigapascals() {
    return si / 1_000_000_000.0;
  }

  /**
   * This pressure in bars.
   *
   * @return the number of bars [bar]
   */
  public double bars() {
    return si / 100_000.0;
  }

  /**
   * This pressure in atmospheres.
   *
   * @return the number of atmospheres [atm]
   */
  public double atmospheres() {
    return si / 101_325.0;
  }

  /**
   * This pressure in pounds-force per square inch.
   *
   * @return the number of pounds-force per square inch [psi]
   */
  public double poundsForcePerSquareInch() {
    return si * (0.0254 * 0.0254) / (0.45359237 * 9.80665);
  }

  /**
   * This pressure in pounds-force per square foot.
   *
   * @return the number of pounds-force per square foot [psf]
   */
  public double poundsForcePerSquareFoot() {
    return si * (0.3048 * 0.3048) / (0.45359237 * 9.80665);
  }

  /**
   * This pressure times an area.
   *
   * @param area the factor
   * @return the product, a force
   */
  public Force times(Area area) {
    Objects.requireNonNull(area, "area");
    return Force.trusted(si * area.si);
  }

  /**
   * This pressure times a second moment of area.
   *
   * @param secondMomentOfArea the factor
   * @return the product, a flexural rigidity
   */
  public FlexuralRigidity times(SecondMomentOfArea secondMomentOfArea) {
    Objects.requireNonNull(secondMomentOfArea, "second moment of area");
    return FlexuralRigidity.trusted(si * secondMomentOfArea.si);
  }

  /** Makes a pressure of an SI value that comes from arithmetic and is trusted. */
  static Pressure trusted(double si) {
    return new Pressure(si);
  }

  @Override
  Pressure same(double si) {
    return new Pressure(si);
  }

  @Override
  public QuantityKind<Pressure> kind() {
    return KIND;
  }
}
