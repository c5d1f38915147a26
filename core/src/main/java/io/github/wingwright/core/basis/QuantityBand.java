// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.AdditiveQuantity;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.Objects;
import java.util.function.DoubleFunction;

/**
 * A quantity that is known within a range: the least, the likely and the greatest value. A {@link Band} with a unit.
 *
 * <p>Example: {@code glide.stallSpeedBand()} prints "5.51 m/s (5.2 m/s to 5.9 m/s)".
 *
 * @param low least value
 * @param likely the value to reckon with
 * @param high greatest value
 * @param <Q> kind of quantity
 */
public record QuantityBand<Q extends AdditiveQuantity<Q>>(Q low, Q likely, Q high) implements Serializable {

  /** Refuses values out of order or not finite. */
  public QuantityBand {
    Door.finite(low, "least value of a band");
    Door.finite(likely, "likely value of a band");
    Door.finite(high, "greatest value of a band");
    if (low.compareTo(likely) > 0 || likely.compareTo(high) > 0) {
      throw new IllegalArgumentException(
          "band must be in order low ≤ likely ≤ high, was " + low + ", " + likely + ", " + high);
    }
  }

  /**
   * A quantity that is known well.
   *
   * @param value the value
   * @param <Q> kind of quantity
   * @return a band without width
   */
  public static <Q extends AdditiveQuantity<Q>> QuantityBand<Q> exactly(Q value) {
    return new QuantityBand<>(value, value, value);
  }

  /**
   * A band of numbers as one of quantities.
   *
   * @param numbers the numbers in some unit
   * @param unit that unit, for example {@code Speed::metresPerSecond}
   * @param <Q> kind of quantity
   * @return the band with its unit
   */
  public static <Q extends AdditiveQuantity<Q>> QuantityBand<Q> of(Band numbers, DoubleFunction<Q> unit) {
    Objects.requireNonNull(numbers, "numbers");
    Objects.requireNonNull(unit, "unit");
    return new QuantityBand<>(unit.apply(numbers.low()), unit.apply(numbers.likely()), unit.apply(numbers.high()));
  }

  /**
   * The band as numbers.
   *
   * @return the values in SI units
   */
  public Band si() {
    return new Band(low.si(), likely.si(), high.si());
  }

  /**
   * Whether the quantity is known without uncertainty.
   *
   * @return low = high
   */
  public boolean isExact() {
    return low.equals(high);
  }

  /**
   * The ends as text.
   *
   * @param unit unit to show them in
   * @param digits significant digits, 1 to 17
   * @return for example {@code "36 to 43 g"}
   */
  public String format(NamedUnit<Q> unit, int digits) {
    Objects.requireNonNull(unit, "unit");
    return NamedUnit.NUMBER.format(low.in(unit), digits) + " to " + high.format(unit, digits);
  }

  @Override
  public String toString() {
    return isExact() ? likely.format(4) : likely.format(4) + " (" + low.format(4) + " to " + high.format(4) + ")";
  }
}
