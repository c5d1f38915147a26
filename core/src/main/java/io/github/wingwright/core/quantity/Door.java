// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.Objects;

/**
 * Checks at a public door: each passes its argument on, or refuses it with the name of the argument, the value with its
 * unit, and what is allowed. NaN fails every check, and null is refused with the name of the argument.
 *
 * <pre>{@code
 * Length chord = Door.positive(given, "chord");        // "chord must be positive, was -12 mm"
 * }</pre>
 */
public final class Door {
  private Door() {}

  /**
   * A quantity above zero.
   *
   * @param quantity the argument
   * @param name its name, for the message
   * @param <Q> its kind
   * @return the quantity
   * @throws IllegalArgumentException if it is not positive and finite
   */
  public static <Q extends AdditiveQuantity<Q>> Q positive(Q quantity, String name) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(quantity, name);
    if (!(quantity.si() > 0.0) || Double.isInfinite(quantity.si())) {
      throw new IllegalArgumentException(name + " must be positive, was " + quantity);
    }
    return quantity;
  }

  /**
   * A quantity of zero or more.
   *
   * @param quantity the argument
   * @param name its name, for the message
   * @param <Q> its kind
   * @return the quantity
   * @throws IllegalArgumentException if it is negative or not finite
   */
  public static <Q extends AdditiveQuantity<Q>> Q notNegative(Q quantity, String name) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(quantity, name);
    if (!(quantity.si() >= 0.0) || Double.isInfinite(quantity.si())) {
      throw new IllegalArgumentException(name + " must not be negative, was " + quantity);
    }
    return quantity;
  }

  /**
   * A quantity that is neither NaN nor infinite.
   *
   * @param quantity the argument
   * @param name its name, for the message
   * @param <Q> its kind
   * @return the quantity
   * @throws IllegalArgumentException if it is not finite
   */
  public static <Q extends AdditiveQuantity<Q>> Q finite(Q quantity, String name) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(quantity, name);
    if (!Double.isFinite(quantity.si())) {
      throw new IllegalArgumentException(name + " must be finite, was " + quantity);
    }
    return quantity;
  }

  /**
   * A quantity between two ends.
   *
   * @param quantity the argument
   * @param lower least value allowed
   * @param upper greatest value allowed
   * @param name its name, for the message
   * @param <Q> its kind
   * @return the quantity
   * @throws IllegalArgumentException if it lies outside
   */
  public static <Q extends AdditiveQuantity<Q>> Q within(Q quantity, Q lower, Q upper, String name) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(quantity, name);
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(upper, "upper");
    if (!(quantity.si() >= lower.si() && quantity.si() <= upper.si())) {
      throw new IllegalArgumentException(name + " must be " + lower + " to " + upper + ", was " + quantity);
    }
    return quantity;
  }

  /**
   * A number above zero.
   *
   * @param number the argument
   * @param name its name, for the message
   * @return the number
   * @throws IllegalArgumentException if it is not positive and finite
   */
  public static double positive(double number, String name) {
    Objects.requireNonNull(name, "name");
    if (!(number > 0.0) || Double.isInfinite(number)) {
      throw new IllegalArgumentException(name + " must be positive, was " + number);
    }
    return number;
  }

  /**
   * A number of zero or more.
   *
   * @param number the argument
   * @param name its name, for the message
   * @return the number
   * @throws IllegalArgumentException if it is negative or not finite
   */
  public static double notNegative(double number, String name) {
    Objects.requireNonNull(name, "name");
    if (!(number >= 0.0) || Double.isInfinite(number)) {
      throw new IllegalArgumentException(name + " must not be negative, was " + number);
    }
    return number;
  }

  /**
   * A number that is neither NaN nor infinite.
   *
   * @param number the argument
   * @param name its name, for the message
   * @return the number
   * @throws IllegalArgumentException if it is not finite
   */
  public static double finite(double number, String name) {
    Objects.requireNonNull(name, "name");
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException(name + " must be finite, was " + number);
    }
    return number;
  }

  /**
   * A number between two ends.
   *
   * @param number the argument
   * @param lower least value allowed
   * @param upper greatest value allowed
   * @param name its name, for the message
   * @return the number
   * @throws IllegalArgumentException if it lies outside
   */
  public static double within(double number, double lower, double upper, String name) {
    Objects.requireNonNull(name, "name");
    if (!(number >= lower && number <= upper)) {
      throw new IllegalArgumentException(name + " must be " + lower + " to " + upper + ", was " + number);
    }
    return number;
  }

  /**
   * A whole number between two ends.
   *
   * @param number the argument
   * @param lower least value allowed
   * @param upper greatest value allowed
   * @param name its name, for the message
   * @return the number
   * @throws IllegalArgumentException if it lies outside
   */
  public static int within(int number, int lower, int upper, String name) {
    Objects.requireNonNull(name, "name");
    if (number < lower || number > upper) {
      throw new IllegalArgumentException(name + " must be " + lower + " to " + upper + ", was " + number);
    }
    return number;
  }

  /**
   * A text that says something.
   *
   * @param text the argument
   * @param name its name, for the message
   * @return the text
   * @throws IllegalArgumentException if it is blank
   */
  public static String said(String text, String name) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(text, name);
    if (text.isBlank()) {
      throw new IllegalArgumentException(name + " must be said, was blank");
    }
    return text;
  }

  /**
   * Two quantities in order.
   *
   * @param least the lower one
   * @param most the upper one
   * @param name what they are the ends of, for the message
   * @param <Q> their kind
   * @throws IllegalArgumentException if the lower one is above the upper one
   */
  public static <Q extends AdditiveQuantity<Q>> void inOrder(Q least, Q most, String name) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(most, "greatest");
    if (least.si() > most.si()) {
      throw new IllegalArgumentException("least " + name + " must not exceed the greatest, was " + least + " and " + most);
    }
  }
}
