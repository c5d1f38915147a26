// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The bending stiffness EI of a beam.
 *
 * <p>Held as one {@code double} in N·m². Made by the named factories, such as
 * {@code FlexuralRigidity.newtonSquareMillimetres(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class FlexuralRigidity extends AdditiveQuantity<FlexuralRigidity> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final FlexuralRigidity ZERO = new FlexuralRigidity(0.0);

  /** The unit N·m². */
  public static final NamedUnit<FlexuralRigidity> NEWTON_SQUARE_METRE =
      new NamedUnit<>("N·m²", 1.0, 1.0, 0.0, "N·m2");

  /** The unit N·mm². */
  public static final NamedUnit<FlexuralRigidity> NEWTON_SQUARE_MILLIMETRE =
      new NamedUnit<>("N·mm²", 1.0, 1_000_000.0, 0.0, "N·mm2");

  /** The unit kN·m². */
  public static final NamedUnit<FlexuralRigidity> KILONEWTON_SQUARE_METRE =
      new NamedUnit<>("kN·m²", 1_000.0, 1.0, 0.0, "kN·m2");

  /** The unit lbf·in². */
  public static final NamedUnit<FlexuralRigidity> POUND_FORCE_SQUARE_INCH =
      new NamedUnit<>("lbf·in²", 0.45359237 * 9.80665 * 0.0254 * 0.0254, 1.0, 0.0, "lbf·in2");

  /** The unit lbf·ft². */
  public static final NamedUnit<FlexuralRigidity> POUND_FORCE_SQUARE_FOOT =
      new NamedUnit<>("lbf·ft²", 0.45359237 * 9.80665 * 0.3048 * 0.3048, 1.0, 0.0, "lbf·ft2");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<FlexuralRigidity> KIND =
      new QuantityKind<>(
          "flexural rigidity",
          new Dimension(1, 3, -2, 0, 0),
          FlexuralRigidity::new,
          List.of(
              NEWTON_SQUARE_METRE,
              NEWTON_SQUARE_MILLIMETRE,
              KILONEWTON_SQUARE_METRE,
              POUND_FORCE_SQUARE_INCH,
              POUND_FORCE_SQUARE_FOOT),
          List.of(NEWTON_SQUARE_METRE));

  private FlexuralRigidity(double si) {
    super(si);
  }

  /**
   * A flexural rigidity in newton square metres.
   *
   * @param value the number of newton square metres [N·m²], finite
   * @return the flexural rigidity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static FlexuralRigidity newtonSquareMetres(double value) {
    return new FlexuralRigidity(Check.finite(value, value, KIND, NEWTON_SQUARE_METRE));
  }

  /**
   * A flexural rigidity in newton square millimetres.
   *
   * @param value the number of newton square millimetres [N·mm²], finite
   * @return the flexural rigidity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static FlexuralRigidity newtonSquareMillimetres(double value) {
    return new FlexuralRigidity(Check.finite(value / 1_000_000.0, value, KIND, NEWTON_SQUARE_MILLIMETRE));
  }

  /**
   * A flexural rigidity in kilonewton square metres.
   *
   * @param value the number of kilonewton square metres [kN·m²], finite
   * @return the flexural rigidity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static FlexuralRigidity kilonewtonSquareMetres(double value) {
    return new FlexuralRigidity(Check.finite(value * 1_000.0, value, KIND, KILONEWTON_SQUARE_METRE));
  }

  /**
   * A flexural rigidity in pound force square inches.
   *
   * @param value the number of pound force square inches [lbf·in²], finite
   * @return the flexural rigidity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static FlexuralRigidity poundForceSquareInches(double value) {
    return new FlexuralRigidity(
        Check.finite(value * (0.45359237 * 9.80665 * 0.0254 * 0.0254), value, KIND, POUND_FORCE_SQUARE_INCH));
  }

  /**
   * A flexural rigidity in pound force square feet.
   *
   * @param value the number of pound force square feet [lbf·ft²], finite
   * @return the flexural rigidity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static FlexuralRigidity poundForceSquareFeet(double value) {
    return new FlexuralRigidity(
        Check.finite(value * (0.45359237 * 9.80665 * 0.3048 * 0.3048), value, KIND, POUND_FORCE_SQUARE_FOOT));
  }

  /**
   * Reads a flexural rigidity from text such as {@code "1.2 N·m²"}.
   *
   * @param text a number and a unit; locale-free
   * @return the flexural rigidity
   * @throws IllegalArgumentException if the text is not a flexural rigidity; the message lists what is accepted
   */
  public static FlexuralRigidity parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a flexural rigidity over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a flexural rigidity
   * @return the flexural rigidity
   * @throws IllegalArgumentException if its unit is not of a flexural rigidity, or its value is not finite
   */
  public static FlexuralRigidity from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this flexural rigidity to JSR-385, in N·m².
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a flexural rigidity
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a flexural rigidity
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This flexural rigidity in newton square metres.
   *
   * @return the number of newton square metres [N·m²]
   */
  public double newtonSquareMetres() {
    return si;
  }

  /**
   * This flexural rigidity in newton square millimetres.
   *
   * @return the number of newton square millimetres [N·mm²]
   */
  public double newtonSquareMillimetres() {
    return si * 1_000_000.0;
  }

  /**
   * This flexural rigidity in kilonewton square metres.
   *
   * @return the number of kilonewton square metres [kN·m²]
   */
  public double kilonewtonSquareMetres() {
    return si / 1_000.0;
  }

  /**
   * This flexural rigidity in pound force square inches.
   *
   * @return the number of pound force square inches [lbf·in²]
   */
  public double poundForceSquareInches() {
    return si / (0.45359237 * 9.80665 * 0.0254 * 0.0254);
  }

  /**
   * This flexural rigidity in pound force square feet.
   *
   * @return the number of pound force square feet [lbf·ft²]
   */
  public double poundForceSquareFeet() {
    return si / (0.45359237 * 9.80665 * 0.3048 * 0.3048);
  }

  /**
   * This flexural rigidity over a pressure.
   *
   * @param pressure the divisor, not zero
   * @return the quotient, a second moment of area
   * @throws ArithmeticException if the divisor is zero
   */
  public SecondMomentOfArea dividedBy(Pressure pressure) {
    Objects.requireNonNull(pressure, "pressure");
    return SecondMomentOfArea.trusted(si / Check.divisor(pressure.si, pressure));
  }

  /** Makes a flexural rigidity of an SI value that comes from arithmetic and is trusted. */
  static FlexuralRigidity trusted(double si) {
    return new FlexuralRigidity(si);
  }

  @Override
  FlexuralRigidity same(double si) {
    return new FlexuralRigidity(si);
  }

  @Override
  public QuantityKind<FlexuralRigidity> kind() {
    return KIND;
  }
}
