// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * A range that good designs keep to, with its source and the designs it was made for.
 *
 * @param name what it ranges over, such as {@code "horizontal tail volume coefficient"}
 * @param range the range [SI]
 * @param unit the unit to show it in
 * @param appliesTo the designs it was made for, such as {@code "hand-launched models"}
 * @param advice what to do outside it
 * @param source where it comes from
 */
public record Guideline(
    String name, Interval range, NamedUnit<?> unit, String appliesTo, String advice, Source source)
    implements Serializable {

  /** Refuses a range without a value in it. */
  public Guideline {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(appliesTo, "appliesTo");
    Objects.requireNonNull(advice, "advice");
    Objects.requireNonNull(source, "source");
    if (range.isEmpty()) {
      throw new IllegalArgumentException(
          "range of " + name + " must not be empty, was " + range.lower() + " to " + range.upper());
    }
  }

  /**
   * A guideline on a plain number.
   *
   * @param name what it ranges over
   * @param lower lower end
   * @param upper upper end
   * @param appliesTo the designs it was made for
   * @param advice what to do outside it
   * @param source where it comes from
   * @return the guideline
   */
  public static Guideline ofNumber(
      String name, double lower, double upper, String appliesTo, String advice, Source source) {
    return new Guideline(name, Interval.between(lower, upper), NamedUnit.NUMBER, appliesTo, advice, source);
  }

  /**
   * Holds a value against the range.
   *
   * @param value the value [SI], finite
   * @return a finding if it lies outside, else empty
   */
  public Optional<Finding> check(double value) {
    return check(value, Severity.CAUTION);
  }

  /**
   * Holds a value against the range.
   *
   * @param value the value [SI], finite
   * @param severity how much a value outside weighs
   * @return a finding if it lies outside, else empty
   */
  public Optional<Finding> check(double value, Severity severity) {
    Objects.requireNonNull(severity, "severity");
    if (range.contains(value)) {
      return Optional.empty();
    }
    String side = value < range.lower() ? "below" : "above";
    String message = name + " is " + side + " the range for " + appliesTo + ". " + advice;
    return Optional.of(Finding.of(severity, name, message, value, range, unit, source));
  }

  @Override
  public String toString() {
    return name + " " + range.format(unit) + " [" + source.standing().words() + "]";
  }
}
