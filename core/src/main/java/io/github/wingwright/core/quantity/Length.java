// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A length: a chord, a span, a wall thickness, an altitude.
 *
 * <p>Held as one {@code double} in m. Made by the named factories, such as
 * {@code Length.millimetres(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Length extends AdditiveQuantity<Length> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Length ZERO = new Length(0.0);

  /** The unit m. */
  public static final NamedUnit<Length> METRE =
      new NamedUnit<>("m", 1.0, 1.0, 0.0);

  /** The unit mm. */
  public static final NamedUnit<Length> MILLIMETRE =
      new NamedUnit<>("mm", 1.0, 1_000.0, 0.0);

  /** The unit cm. */
  public static final NamedUnit<Length> CENTIMETRE =
      new NamedUnit<>("cm", 1.0, 100.0, 0.0);

  /** The unit µm. */
  public static final NamedUnit<Length> MICROMETRE =
      new NamedUnit<>("µm", 1.0, 1_000_000.0, 0.0, "um");

  /** The unit km. */
  public static final NamedUnit<Length> KILOMETRE =
      new NamedUnit<>("km", 1_000.0, 1.0, 0.0);

  /** The unit in. */
  public static final NamedUnit<Length> INCH =
      new NamedUnit<>("in", 254.0, 10_000.0, 0.0, "″", "\"");

  /** The unit ft. */
  public static final NamedUnit<Length> FOOT =
      new NamedUnit<>("ft", 3_048.0, 10_000.0, 0.0, "′", "'");

  /** The unit yd. */
  public static final NamedUnit<Length> YARD =
      new NamedUnit<>("yd", 9_144.0, 10_000.0, 0.0);

  /** The unit mi. */
  public static final NamedUnit<Length> STATUTE_MILE =
      new NamedUnit<>("mi", 1_609_344.0, 1_000.0, 0.0);

  /** The unit NM. */
  public static final NamedUnit<Length> NAUTICAL_MILE =
      new NamedUnit<>("NM", 1_852.0, 1.0, 0.0, "nmi");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Length> KIND =
      new QuantityKind<>(
          "length",
          new Dimension(0, 1, 0, 0, 0),
          Length::new,
          List.of(
              METRE,
              MILLIMETRE,
              CENTIMETRE,
              MICROMETRE,
              KILOMETRE,
              INCH,
              FOOT,
              YARD,
              STATUTE_MILE,
              NAUTICAL_MILE),
          List.of(MICROMETRE, MILLIMETRE, METRE, KILOMETRE));

  private Length(double si) {
    super(si);
  }

  /**
   * A length in metres.
   *
   * @param value the number of metres [m], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length metres(double value) {
    return new Length(Check.finite(value, value, KIND, METRE));
  }

  /**
   * A length in millimetres.
   *
   * @param value the number of millimetres [mm], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length millimetres(double value) {
    return new Length(Check.finite(value / 1_000.0, value, KIND, MILLIMETRE));
  }

  /**
   * A length in centimetres.
   *
   * @param value the number of centimetres [cm], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length centimetres(double value) {
    return new Length(Check.finite(value / 100.0, value, KIND, CENTIMETRE));
  }

  /**
   * A length in micrometres.
   *
   * @param value the number of micrometres [µm], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length micrometres(double value) {
    return new Length(Check.finite(value / 1_000_000.0, value, KIND, MICROMETRE));
  }

  /**
   * A length in kilometres.
   *
   * @param value the number of kilometres [km], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length kilometres(double value) {
    return new Length(Check.finite(value * 1_000.0, value, KIND, KILOMETRE));
  }

  /**
   * A length in inches.
   *
   * @param value the number of inches [in], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length inches(double value) {
    return new Length(Check.finite(value * 254.0 / 10_000.0, value, KIND, INCH));
  }

  /**
   * A length in feet.
   *
   * @param value the number of feet [ft], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length feet(double value) {
    return new Length(Check.finite(value * 3_048.0 / 10_000.0, value, KIND, FOOT));
  }

  /**
   * A length in yards.
   *
   * @param value the number of yards [yd], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length yards(double value) {
    return new Length(Check.finite(value * 9_144.0 / 10_000.0, value, KIND, YARD));
  }

  /**
   * A length in statute miles.
   *
   * @param value the number of statute miles [mi], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length statuteMiles(double value) {
    return new Length(Check.finite(value * 1_609_344.0 / 1_000.0, value, KIND, STATUTE_MILE));
  }

  /**
   * A length in nautical miles.
   *
   * @param value the number of nautical miles [NM], finite
   * @return the length
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Length nauticalMiles(double value) {
    return new Length(Check.finite(value * 1_852.0, value, KIND, NAUTICAL_MILE));
  }

  /**
   * Reads a length from text such as {@code "1.2 m"}.
   *
   * @param text a number and a unit; locale-free; several terms are added, as in {@code "5 ft 3 in"}
   * @return the length
   * @throws IllegalArgumentException if the text is not a length; the message lists what is accepted
   */
  public static Length parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a length over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a length
   * @return the length
   * @throws IllegalArgumentException if its unit is not of a length, or its value is not finite
   */
  public static Length from(Quantity<javax.measure.quantity.Length> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this length to JSR-385, in m.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Length> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Length.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a length
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a length
   */
  public double in(Unit<javax.measure.quantity.Length> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This length in metres.
   *
   * @return the number of metres [m]
   */
  public double metres() {
    return si;
  }

  /**
   * This length in millimetres.
   *
   * @return the number of millimetres [mm]
   */
  public double millimetres() {
    return si * 1_000.0;
  }

  /**
   * This length in centimetres.
   *
   * @return the number of centimetres [cm]
   */
  public double centimetres() {
    return si * 100.0;
  }

  /**
   * This length in micrometres.
   *
   * @return the number of micrometres [µm]
   */
  public double micrometres() {
    return si * 1_000_000.0;
  }

  /**
   * This length in kilometres.
   *
   * @return the number of kilometres [km]
   */
  public double kilometres() {
    return si / 1_000.0;
  }

  /**
   * This length in inches.
   *
   * @return the number of inches [in]
   */
  public double inches() {
    return si * 10_000.0 / 254.0;
  }

  /**
   * This length in feet.
   *
   * @return the number of feet [ft]
   */
  public double feet() {
    return si * 10_000.0 / 3_048.0;
  }

  /**
   * This length in yards.
   *
   * @return the number of yards [yd]
   */
  public double yards() {
    return si * 10_000.0 / 9_144.0;
  }

  /**
   * This length in statute miles.
   *
   * @return the number of statute miles [mi]
   */
  public double statuteMiles() {
    return si * 1_000.0 / 1_609_344.0;
  }

  /**
   * This length in nautical miles.
   *
   * @return the number of nautical miles [NM]
   */
  public double nauticalMiles() {
    return si / 1_852.0;
  }

  /**
   * This length times a length.
   *
   * @param length the factor
   * @return the product, an area
   */
  public Area times(Length length) {
    Objects.requireNonNull(length, "length");
    return Area.trusted(si * length.si);
  }

  /**
   * This length times an area.
   *
   * @param area the factor
   * @return the product, a volume
   */
  public Volume times(Area area) {
    Objects.requireNonNull(area, "area");
    return Volume.trusted(si * area.si);
  }

  /**
   * This length over a time.
   *
   * @param time the divisor, not zero
   * @return the quotient, a speed
   * @throws ArithmeticException if the divisor is zero
   */
  public Speed dividedBy(Time time) {
    Objects.requireNonNull(time, "time");
    return Speed.trusted(si / Check.divisor(time.si, time));
  }

  /**
   * This length over a speed.
   *
   * @param speed the divisor, not zero
   * @return the quotient, a time
   * @throws ArithmeticException if the divisor is zero
   */
  public Time dividedBy(Speed speed) {
    Objects.requireNonNull(speed, "speed");
    return Time.trusted(si / Check.divisor(speed.si, speed));
  }

  /**
   * A value in a unit as people write it: nobody reads 0.057 ft, so below a foot there are inches.
   *
   * @param si the value [SI]
   * @param unit the unit asked for, of any kind
   * @param significantDigits significant digits
   * @return for example {@code "2.5 ft"}, and {@code "6 in"} for half a foot
   */
  public static String show(double si, NamedUnit<?> unit, int significantDigits) {
    Objects.requireNonNull(unit, "unit");
    return readable(si, unit).format(si, significantDigits);
  }

  /**
   * The unit in which people write a value.
   *
   * @param si the value [SI]
   * @param unit the unit asked for, of any kind
   * @return the inch for less than a foot that is asked for in feet, else the unit asked for
   */
  public static NamedUnit<?> readable(double si, NamedUnit<?> unit) {
    Objects.requireNonNull(unit, "unit");
    return unit.equals(FOOT) && Math.abs(si) < FOOT.toSi(1.0) * (1.0 - 1e-9) ? INCH : unit;
  }

  /** Makes a length of an SI value that comes from arithmetic and is trusted. */
  static Length trusted(double si) {
    return new Length(si);
  }

  @Override
  Length same(double si) {
    return new Length(si);
  }

  @Override
  public QuantityKind<Length> kind() {
    return KIND;
  }
}
