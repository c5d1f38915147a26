// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.comparison;

import io.github.wingwright.core.basis.StepChange;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * One number of a design before and after.
 *
 * @param name its name in the design, such as {@code "wing.span_m"}
 * @param change both steps and the way of the change
 * @param judgement better, worse, or neither
 */
public record ChangedNumber(String name, StepChange change, Judgement judgement) {
  public ChangedNumber {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(change, "change");
    Objects.requireNonNull(judgement, "judgement");
  }

  /**
   * By what part it changed.
   *
   * @return for example {@code "+4.2 %"}; empty where it was zero before
   */
  public String percent() {
    double part = 100.0 * change.relative();
    return Double.isFinite(part) ? (part > 0.0 ? "+" : "") + NamedUnit.NUMBER.format(part, 2) + " %" : "";
  }

  @Override
  public String toString() {
    return name + " " + change.values() + (judgement == Judgement.NEITHER ? "" : ", " + judgement.words());
  }
}
