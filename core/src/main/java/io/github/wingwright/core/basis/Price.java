// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.Objects;

/**
 * What a choice costs or gains in one respect, with its sign.
 *
 * @param what the respect, such as {@code "drag area"}
 * @param reference the value without the choice [SI]
 * @param value the value with it [SI]
 * @param unit the unit to show both in
 * @param moreIsBetter whether a greater value is a gain
 */
public record Price(String what, double reference, double value, NamedUnit<?> unit, boolean moreIsBetter)
    implements Serializable {

  /** Refuses values that are not finite. */
  public Price {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(unit, "unit");
    if (!Double.isFinite(reference) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "price of " + what + " must be between finite values, was " + value + " instead of " + reference);
    }
  }

  /**
   * The signed change.
   *
   * @return value − reference [SI]
   */
  public double change() {
    return value - reference;
  }

  /**
   * The signed relative change.
   *
   * @return change / |reference|, infinite where the reference is zero and the change is not
   */
  public double relativeChange() {
    return change() == 0.0 ? 0.0 : change() / Math.abs(reference);
  }

  /**
   * Whether the choice gains in this respect.
   *
   * @return true for a gain, false for a cost or no change
   */
  public boolean isGain() {
    return moreIsBetter ? change() > 0.0 : change() < 0.0;
  }

  @Override
  public String toString() {
    if (change() == 0.0) {
      return what + " unchanged (" + unit.format(value, 4) + ")";
    }
    double percent = 100.0 * relativeChange();
    String sign = percent >= 0.0 ? "+" : "−";
    return what
        + " "
        + sign
        + NamedUnit.NUMBER.format(Math.abs(percent), 3)
        + " % ("
        + unit.format(value, 4)
        + " instead of "
        + unit.format(reference, 4)
        + ")"
        + (isGain() ? ", a gain" : ", a cost");
  }
}
