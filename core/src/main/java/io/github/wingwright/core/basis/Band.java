// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.Objects;

/**
 * A number that is known within a range: the least, the likely and the greatest value.
 *
 * @param low least value
 * @param likely the value to reckon with
 * @param high greatest value
 */
public record Band(double low, double likely, double high) implements Serializable {

  /** Refuses values out of order or not finite. */
  public Band {
    if (Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException("band must be finite, was " + low + ", " + likely + ", " + high);
    }
    if (!(low <= likely && likely <= high)) {
      throw new IllegalArgumentException(
          "band must be in order low ≤ likely ≤ high, was " + low + ", " + likely + ", " + high);
    }
  }

  /**
   * A number that is known well.
   *
   * @param value the value
   * @return a band without width
   */
  public static Band exactly(double value) {
    return new Band(value, value, value);
  }

  /**
   * A value with its uncertainty.
   *
   * @param likely the value
   * @param spread half the width, not negative
   * @return [likely − spread, likely + spread]
   * @throws IllegalArgumentException if the spread is negative
   */
  public static Band around(double likely, double spread) {
    if (!(spread >= 0.0)) {
      throw new IllegalArgumentException("spread of a band must not be negative, was " + spread);
    }
    return new Band(likely - spread, likely, likely + spread);
  }

  /**
   * The band as an interval.
   *
   * @return [low, high]
   */
  public Interval interval() {
    return Interval.between(low, high);
  }

  /**
   * Whether the number is known without uncertainty.
   *
   * @return low = high
   */
  public boolean isExact() {
    return low == high;
  }

  /**
   * The band times a factor.
   *
   * @param factor any finite factor; a negative one turns the band around
   * @return the scaled band
   */
  public Band times(double factor) {
    return factor >= 0.0
        ? new Band(low * factor, likely * factor, high * factor)
        : new Band(high * factor, likely * factor, low * factor);
  }

  /**
   * The sum of two bands whose ends go together.
   *
   * @param other another band
   * @return end by end
   */
  public Band plus(Band other) {
    Objects.requireNonNull(other, "other");
    return new Band(low + other.low, likely + other.likely, high + other.high);
  }

  @Override
  public String toString() {
    String ends = NamedUnit.NUMBER.format(low, 4) + " to " + NamedUnit.NUMBER.format(high, 4);
    return isExact() ? NamedUnit.NUMBER.format(likely, 4) : NamedUnit.NUMBER.format(likely, 4) + " (" + ends + ")";
  }
}
