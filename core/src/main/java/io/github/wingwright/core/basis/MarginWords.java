// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * How a body stands to a consideration, in the words that tables and handouts share.
 *
 * <p>The number in them is the margin itself in per cent, so that it is found again as the last line of
 * {@link Consideration#workings}.
 */
public final class MarginWords {
  /** Closer than this to its edge, a body stands at it: what is left is rounding. */
  private static final double EDGE = 5e-7;

  /** Beyond this the number says no more than the word does, and a consideration without an end gives any number. */
  private static final double AMPLE = 10.0;

  private MarginWords() {}

  /**
   * How a body stands to a consideration.
   *
   * @param one what is weighed, with what was decided about it
   * @param length length of the body [m], positive
   * @param diameter diameter of the body [m], positive
   * @param units units to show what a target would like in, at most one for each kind of quantity
   * @return for example {@code "kept by 25 %"}, {@code "missed by 20 %"}, {@code "at the edge"}, {@code "kept amply"},
   *     {@code "off by 20 %, would like 12.5 mm"}; the reason if it is set aside
   */
  public static String of(Weighed one, double length, double diameter, NamedUnit<?>... units) {
    Objects.requireNonNull(one, "one");
    Objects.requireNonNull(units, "units");
    if (!one.decision().applies()) {
      return one.decision().toString();
    }
    double margin = one.consideration().margin(length, diameter);
    String words = one.isTarget() ? toTarget(one.consideration(), length, margin, units) : ofBound(margin);
    return one.decision().kind() == Decision.Kind.PROVISIONAL ? words + ", " + one.decision() : words;
  }

  private static String toTarget(Consideration target, double length, double margin, NamedUnit<?>... units) {
    if (margin > -EDGE) {
      return "met";
    }
    String off = "off by " + percent(margin);
    double wanted = target.preferredDiameter(length).orElse(Double.NaN);
    return Double.isNaN(wanted) ? off : Wording.of(off + ", would like ").and(Length.metres(wanted)).in(units);
  }

  /**
   * How a margin stands to a limit or a guideline.
   *
   * @param margin the margin, zero or more where satisfied
   * @return such as "kept by 25 %", "at the edge", "missed by 20 %"
   */
  public static String ofBound(double margin) {
    if (Math.abs(margin) < EDGE) {
      return "at the edge";
    }
    if (margin > AMPLE) {
      return "kept amply";
    }
    return (margin > 0.0 ? "kept by " : "missed by ") + percent(margin);
  }

  private static String percent(double margin) {
    return NamedUnit.NUMBER.format(100.0 * Math.abs(margin), 2) + " %";
  }
}
