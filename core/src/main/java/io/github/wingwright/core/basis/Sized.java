// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import java.util.List;
import java.util.Objects;

/**
 * A result of sizing with everything that defends it.
 *
 * @param value what was sized
 * @param range the feasible range of the dimension that was chosen
 * @param workings the steps that lead to its numbers
 * @param findings what the designer should know about it, heaviest first
 * @param prices what leaving a guideline costs and gains; empty if none was left
 * @param <T> what was sized
 */
public record Sized<T>(
    T value, FeasibleRange range, Workings workings, List<Finding> findings, List<Price> prices) {

  /** Keeps the findings in order of weight. */
  public Sized {
    Objects.requireNonNull(findings, "findings");
    Objects.requireNonNull(prices, "prices");
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(workings, "workings");
    findings = Finding.inOrderOfWeight(findings);
    prices = List.copyOf(prices);
  }

  /**
   * Whether all limits and guidelines can be met together and this value breaks no limit. Where considerations clash there
   * is a value all the same, the least bad one, so that it can be drawn and discussed; this says that it is one.
   *
   * @return true if the range is not empty and no finding is serious
   */
  public boolean isFeasible() {
    return !range.isEmpty() && findings.stream().noneMatch(f -> f.severity() == Severity.SERIOUS);
  }

  @Override
  public String toString() {
    return value + (findings.isEmpty() ? "" : " (" + findings.size() + " findings)");
  }
}
