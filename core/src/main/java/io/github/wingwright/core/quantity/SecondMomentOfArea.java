// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A second moment of area of a cross-section.
 *
 * <p>Held as one {@code double} in m⁴. Made by the named factories, such as
 * {@code SecondMomentOfArea.millimetresToTheFourth(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class SecondMomentOfArea extends AdditiveQuantity<SecondMomentOfArea> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final SecondMomentOfArea ZERO = new SecondMomentOfArea(0.0);

  /** The unit m⁴. */
  public static final NamedUnit<SecondMomentOfArea> METRE_TO_THE_FOURTH =
      new NamedUnit<>("m⁴", 1.0, 1.0, 0.0, "m4");

  /** The unit mm⁴. */
  public static final NamedUnit<SecondMomentOfArea> MILLIMETRE_TO_THE_FOURTH =
      new NamedUnit<>("mm⁴", 1.0, 1_000_000_000_000.0, 0.0, "mm4");

  /** The unit cm⁴. */
  public static final NamedUnit<SecondMomentOfArea> CENTIMETRE_TO_THE_FOURTH =
      new NamedUnit<>("cm⁴", 1.0, 100_000_000.0, 0.0, "cm4");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<SecondMomentOfArea> KIND =
      new QuantityKind<>(
          "second moment of area",
          new Dimension(0, 4, 0, 0, 0),
          SecondMomentOfArea::new,
          List.of(METRE_TO_THE_FOURTH, MILLIMETRE_TO_THE_FOURTH, CENTIMETRE_TO_THE_FOURTH),
          List.of(MILLIMETRE_TO_THE_FOURTH, METRE_TO_THE_FOURTH));

  private SecondMomentOfArea(double si) {
    super(si);
  }

  /**
   * A second moment of area in metres to the fourth.
   *
   * @param value the number of metres to the fourth [m⁴], finite
   * @return the second moment of area
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static SecondMomentOfArea metresToTheFourth(double value) {
    return new SecondMomentOfArea(Check.finite(value, value, KIND, METRE_TO_THE_FOURTH));
  }

  /**
   * A second moment of area in millimetres to the fourth.
   *
   * @param value the number of millimetres to the fourth [mm⁴], finite
   * @return the second moment of area
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static SecondMomentOfArea millimetresToTheFourth(double value) {
    return new SecondMomentOfArea(Check.finite(value / 1_000_000_000_000.0, value, KIND, MILLIMETRE_TO_THE_FOURTH));
  }

  /**
   * A second moment of area in centimetres to the fourth.
   *
   * @param value the number of centimetres to the fourth [cm⁴], finite
   * @return the second moment of area
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static SecondMomentOfArea centimetresToTheFourth(double value) {
    return new SecondMomentOfArea(Check.finite(value / 100_000_000.0, value, KIND, CENTIMETRE_TO_THE_FOURTH));
  }

  /**
   * Reads a second moment of area from text such as {@code "1.2 m⁴"}.
   *
   * @param text a number and a unit; locale-free
   * @return the second moment of area
   * @throws IllegalArgumentException if the text is not a second moment of area; the message lists what is accepted
   */
  public static SecondMomentOfArea parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a second moment of area over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a second moment of area
   * @return the second moment of area
   * @throws IllegalArgumentException if its unit is not of a second moment of area, or its value is not finite
   */
  public static SecondMomentOfArea from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this second moment of area to JSR-385, in m⁴.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a second moment of area
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a second moment of area
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This second moment of area in metres to the fourth.
   *
   * @return the number of metres to the fourth [m⁴]
   */
  public double metresToTheFourth() {
    return si;
  }

  /**
   * This second moment of area in millimetres to the fourth.
   *
   * @return the number of millimetres to the fourth [mm⁴]
   */
  public double millimetresToTheFourth() {
    return si * 1_000_000_000_000.0;
  }

  /**
   * This second moment of area in centimetres to the fourth.
   *
   * @return the number of centimetres to the fourth [cm⁴]
   */
  public double centimetresToTheFourth() {
    return si * 100_000_000.0;
  }

  /**
   * This second moment of area times a pressure.
   *
   * @param pressure the factor
   * @return the product, a flexural rigidity
   */
  public FlexuralRigidity times(Pressure pressure) {
    Objects.requireNonNull(pressure, "pressure");
    return FlexuralRigidity.trusted(si * pressure.si);
  }

  /**
   * This second moment of area over an area.
   *
   * @param area the divisor, not zero
   * @return the quotient, an area
   * @throws ArithmeticException if the divisor is zero
   */
  public Area dividedBy(Area area) {
    Objects.requireNonNull(area, "area");
    return Area.trusted(si / Check.divisor(area.si, area));
  }

  /** Makes a second moment of area of an SI value that comes from arithmetic and is trusted. */
  static SecondMomentOfArea trusted(double si) {
    return new SecondMomentOfArea(si);
  }

  @Override
  SecondMomentOfArea same(double si) {
    return new SecondMomentOfArea(si);
  }

  @Override
  public QuantityKind<SecondMomentOfArea> kind() {
    return KIND;
  }
}
