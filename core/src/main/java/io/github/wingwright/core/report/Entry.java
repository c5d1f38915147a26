// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * One number of a sheet, with the step that computes it.
 *
 * @param label what it is, in words
 * @param step the step
 * @param unit the unit to show it in, one of the kind of the step's unit
 * @param digits significant digits to show, 1 to 17
 */
public record Entry(String label, Step step, NamedUnit<?> unit, int digits) {
  public Entry {
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(step, "step");
    Objects.requireNonNull(unit, "unit");
  }


  /**
   * An entry named as its step, in the step's own unit, to four digits.
   *
   * @param step the step
   * @return the entry
   */
  public static Entry of(Step step) {
    Objects.requireNonNull(step, "step");
    return new Entry(step.name(), step, step.unit(), 4);
  }

  /**
   * An entry in a unit of the reader's.
   *
   * @param label what it is
   * @param step the step
   * @param unit the unit to show it in
   * @return the entry, to four digits
   */
  public static Entry of(String label, Step step, NamedUnit<?> unit) {
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(step, "step");
    Objects.requireNonNull(unit, "unit");
    return new Entry(label, step, unit, 4);
  }

  /**
   * The number as it is shown.
   *
   * @return for example {@code "24.5 mm"}
   */
  public String text() {
    return unit.format(step.value(), digits);
  }
}
