// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A frequency of a periodic event.
 *
 * <p>Held as one {@code double} in Hz. Made by the named factories, such as
 * {@code Frequency.kilohertz(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Frequency extends AdditiveQuantity<Frequency> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Frequency ZERO = new Frequency(0.0);

  /** The unit Hz. */
  public static final NamedUnit<Frequency> HERTZ =
      new NamedUnit<>("Hz", 1.0, 1.0, 0.0);

  /** The unit kHz. */
  public static final NamedUnit<Frequency> KILOHERTZ =
      new NamedUnit<>("kHz", 1_000.0, 1.0, 0.0);

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Frequency> KIND =
      new QuantityKind<>(
          "frequency",
          new Dimension(0, 0, -1, 0, 0),
          Frequency::new,
          List.of(HERTZ, KILOHERTZ),
          List.of(HERTZ));

  private Frequency(double si) {
    super(si);
  }

  /**
   * A frequency in hertz.
   *
   * @param value the number of hertz [Hz], finite
   * @return the frequency
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Frequency hertz(double value) {
    return new Frequency(Check.finite(value, value, KIND, HERTZ));
  }

  /**
   * A frequency in kilohertz.
   *
   * @param value the number of kilohertz [kHz], finite
   * @return the frequency
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Frequency kilohertz(double value) {
    return new Frequency(Check.finite(value * 1_000.0, value, KIND, KILOHERTZ));
  }

  /**
   * Reads a frequency from text such as {@code "1.2 Hz"}.
   *
   * @param text a number and a unit; locale-free
   * @return the frequency
   * @throws IllegalArgumentException if the text is not a frequency; the message lists what is accepted
   */
  public static Frequency parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a frequency over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a frequency
   * @return the frequency
   * @throws IllegalArgumentException if its unit is not of a frequency, or its value is not finite
   */
  public static Frequency from(Quantity<javax.measure.quantity.Frequency> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this frequency to JSR-385, in Hz.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Frequency> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Frequency.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a frequency
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a frequency
   */
  public double in(Unit<javax.measure.quantity.Frequency> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This frequency in hertz.
   *
   * @return the number of hertz [Hz]
   */
  public double hertz() {
    return si;
  }

  /**
   * This frequency in kilohertz.
   *
   * @return the number of kilohertz [kHz]
   */
  public double kilohertz() {
    return si / 1_000.0;
  }

  /** Makes a frequency of an SI value that comes from arithmetic and is trusted. */
  static Frequency trusted(double si) {
    return new Frequency(si);
  }

  @Override
  Frequency same(double si) {
    return new Frequency(si);
  }

  @Override
  public QuantityKind<Frequency> kind() {
    return KIND;
  }
}
