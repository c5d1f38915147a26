// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that the designer should know about a number: a guideline left, a limit broken, a method out of its range.
 */
public final class Finding implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Heaviest first, then by subject. */
  public static final Comparator<Finding> BY_WEIGHT =
      Comparator.comparing(Finding::severity).reversed().thenComparing(Finding::subject);

  private final Severity severity;
  private final String subject;
  private final String message;
  private final double value;
  private final Interval range;
  private final NamedUnit<?> unit;
  private final Source source;

  private Finding(
      Severity severity,
      String subject,
      String message,
      double value,
      Interval range,
      NamedUnit<?> unit,
      Source source) {
    this.severity = Objects.requireNonNull(severity, "severity");
    this.subject = Objects.requireNonNull(subject, "subject");
    this.message = Objects.requireNonNull(message, "message");
    this.value = value;
    this.range = Objects.requireNonNull(range, "range");
    this.unit = Objects.requireNonNull(unit, "unit");
    this.source = Objects.requireNonNull(source, "source");
  }

  /**
   * A finding in words alone.
   *
   * @param severity how much it weighs
   * @param subject what it is about, such as {@code "section drag"}
   * @param message what was found and what to do
   * @param source where the judgement comes from
   * @return the finding
   */
  public static Finding of(Severity severity, String subject, String message, Source source) {
    return new Finding(severity, subject, message, Double.NaN, Interval.ALL, NamedUnit.NUMBER, source);
  }

  /**
   * A finding about a value and its range.
   *
   * @param severity how much it weighs
   * @param subject what it is about, such as {@code "fineness ratio"}
   * @param message what was found and what to do
   * @param value the value [SI], finite
   * @param range the range that was expected [SI]
   * @param unit the unit to show both in
   * @param source where the range comes from
   * @return the finding
   */
  public static Finding of(
      Severity severity,
      String subject,
      String message,
      double value,
      Interval range,
      NamedUnit<?> unit,
      Source source) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value of a finding must be finite, was " + value + " (" + subject + ")");
    }
    return new Finding(severity, subject, message, value, range, unit, source);
  }

  /**
   * The heaviest first, equal ones once.
   *
   * @param findings any findings
   * @return a sorted copy without repetitions
   */
  public static List<Finding> inOrderOfWeight(List<Finding> findings) {
    Objects.requireNonNull(findings, "findings");
    return findings.stream().distinct().sorted(BY_WEIGHT).toList();
  }

  /**
   * How much it weighs.
   *
   * @return the severity
   */
  public Severity severity() {
    return severity;
  }

  /**
   * What it is about.
   *
   * @return the guideline, method or part
   */
  public String subject() {
    return subject;
  }

  /**
   * What was found and what to do.
   *
   * @return one or two sentences
   */
  public String message() {
    return message;
  }

  /**
   * The value.
   *
   * @return the value [SI], empty for a finding in words alone
   */
  public OptionalDouble value() {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /**
   * The range that was expected.
   *
   * @return the range [SI], empty for a finding in words alone
   */
  public Optional<Interval> range() {
    return Double.isNaN(value) ? Optional.empty() : Optional.of(range);
  }

  /**
   * The unit to show value and range in.
   *
   * @return the unit
   */
  public NamedUnit<?> unit() {
    return unit;
  }

  /**
   * Where the range or the judgement comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Value and range in words.
   *
   * @return for example {@code "12.5 (range 3 to 14)"} or {@code "38 mm (at most 36 mm)"}, empty for a finding in words alone
   */
  public String measure() {
    return Double.isNaN(value) ? "" : unit.format(value, digits()) + " (" + expected() + ")";
  }

  private String expected() {
    if (range.isEmpty()) {
      return "no value will do";
    }
    boolean twoEnds = range.lower() < range.upper() && Double.isFinite(range.width());
    return (twoEnds ? "range " : "") + range.format(unit);
  }

  /** As many digits as it takes to tell the value from the end of the range that it passed, at least four. */
  private int digits() {
    if (range.isEmpty() || range.contains(value)) {
      return 4;
    }
    String end = unit.format(range.clamp(value), 4);
    int digits = 4;
    while (digits < 17 && unit.format(value, digits).equals(end)) {
      digits++;
    }
    return digits;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Finding that
        && severity == that.severity
        && subject.equals(that.subject)
        && message.equals(that.message)
        && Double.compare(value, that.value) == 0
        && range.equals(that.range)
        && source.equals(that.source);
  }

  @Override
  public int hashCode() {
    return subject.hashCode() * 31 + message.hashCode();
  }

  @Override
  public String toString() {
    String line = severity + " " + subject + ": " + (measure().isEmpty() ? message : measure());
    return line.length() <= 75 ? line : line.substring(0, 74) + "…";
  }
}
