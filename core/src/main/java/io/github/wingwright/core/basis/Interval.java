// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.Objects;

/**
 * A closed interval of SI values; an end may be infinite. An interval whose lower end is above its upper end is empty.
 *
 * @param lower lower end, −∞ for none
 * @param upper upper end, +∞ for none
 */
public record Interval(double lower, double upper) implements Serializable {
  /** All values. */
  public static final Interval ALL = new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** No value. */
  public static final Interval NONE = new Interval(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

  /** Refuses NaN; −0.0 becomes 0.0, so that intervals with the same ends are equal. */
  public Interval {
    lower += 0.0;
    upper += 0.0;
    if (Double.isNaN(lower) || Double.isNaN(upper)) {
      throw new IllegalArgumentException("interval ends must be numbers, were " + lower + " and " + upper);
    }
  }

  /**
   * From a value upwards.
   *
   * @param lower lower end
   * @return [lower, ∞)
   */
  public static Interval atLeast(double lower) {
    return new Interval(lower, Double.POSITIVE_INFINITY);
  }

  /**
   * Up to a value.
   *
   * @param upper upper end
   * @return (−∞, upper]
   */
  public static Interval atMost(double upper) {
    return new Interval(Double.NEGATIVE_INFINITY, upper);
  }

  /**
   * Between two values.
   *
   * @param lower lower end
   * @param upper upper end
   * @return [lower, upper]
   */
  public static Interval between(double lower, double upper) {
    return new Interval(lower, upper);
  }

  /**
   * Whether a value lies inside, ends included.
   *
   * @param value an SI value
   * @return lower ≤ value ≤ upper
   */
  public boolean contains(double value) {
    return lower <= value && value <= upper;
  }

  /**
   * Whether there is no value in it.
   *
   * @return whether the lower end is above the upper
   */
  public boolean isEmpty() {
    return lower > upper;
  }

  /**
   * What two intervals have in common.
   *
   * @param other another interval
   * @return the intersection, empty if they are apart
   */
  public Interval intersect(Interval other) {
    Objects.requireNonNull(other, "other");
    return new Interval(Math.max(lower, other.lower), Math.min(upper, other.upper));
  }

  /**
   * The nearest value inside.
   *
   * @param value an SI value
   * @return the value itself if it lies inside, else the nearer end
   * @throws IllegalStateException if the interval is empty
   */
  public double clamp(double value) {
    if (isEmpty()) {
      throw new IllegalStateException("an empty interval has no value near " + value);
    }
    return Math.max(lower, Math.min(upper, value));
  }

  /**
   * The width.
   *
   * @return upper − lower; negative if empty: by how much the ends miss each other
   */
  public double width() {
    return upper - lower;
  }

  /**
   * The interval as text.
   *
   * @param unit unit to show it in
   * @return for example {@code "20 to 35 mm"}, {@code "at least 20 mm"}
   */
  public String format(NamedUnit<?> unit) {
    Objects.requireNonNull(unit, "unit");
    if (isEmpty()) {
      return "nothing";
    }
    if (Double.isInfinite(lower) && Double.isInfinite(upper)) {
      return "any value";
    }
    if (lower == upper) {
      return "exactly " + Length.show(lower, unit, 4);
    }
    if (Double.isInfinite(lower)) {
      return "at most " + Length.show(upper, unit, 4);
    }
    if (Double.isInfinite(upper)) {
      return "at least " + Length.show(lower, unit, 4);
    }
    NamedUnit<?> shown = Length.readable(upper, unit);
    // One unit for both ends, unless the lower one alone is less than a foot.
    boolean alike = lower == 0.0 || Length.readable(lower, unit).equals(shown);
    String from = alike ? NamedUnit.NUMBER.format(shown.fromSi(lower), 4) : Length.show(lower, unit, 4);
    return from + " to " + Length.show(upper, unit, 4);
  }

  @Override
  public String toString() {
    return format(NamedUnit.NUMBER);
  }
}
