// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers that somebody is advised to take: rounded to the side on which they are enough as they are read.
 *
 * <pre>{@code
 * Advised.up(0.318652, Length.MILLIMETRE, 4)     318.7 mm, for a length that must reach so far
 * Advised.down(0.054894, Length.MILLIMETRE, 4)   54.89 mm, for a diameter that must not be more
 * Advised.percentDown(0.83399)                   83.3 %
 * }</pre>
 */
public final class Advised {
  /** Twelve digits are looked at first, so that the last bit of 0.3 m does not make 301 mm of it. */
  private static final MathContext WITHOUT_NOISE = new MathContext(12, RoundingMode.HALF_EVEN);

  private static final int DIGITS_OF_A_SHARE = 3;

  private Advised() {}

  /**
   * A value that must be reached.
   *
   * @param si the value [SI]
   * @param unit unit to show it in
   * @param digits significant digits
   * @return the value rounded up, with its unit
   */
  public static String up(double si, NamedUnit<?> unit, int digits) {
    return rounded(si, unit, digits, RoundingMode.CEILING);
  }

  /**
   * A value that must not be passed.
   *
   * @param si the value [SI]
   * @param unit unit to show it in
   * @param digits significant digits
   * @return the value rounded down, with its unit
   */
  public static String down(double si, NamedUnit<?> unit, int digits) {
    return rounded(si, unit, digits, RoundingMode.FLOOR);
  }

  /**
   * A share that must be reached.
   *
   * @param share the share, 1 for all
   * @return for example {@code "83.4 %"}
   */
  public static String percentUp(double share) {
    return up(100.0 * share, NamedUnit.NUMBER, DIGITS_OF_A_SHARE) + " %";
  }

  /**
   * A share that must not be passed.
   *
   * @param share the share, 1 for all
   * @return for example {@code "83.3 %"}
   */
  public static String percentDown(double share) {
    return down(100.0 * share, NamedUnit.NUMBER, DIGITS_OF_A_SHARE) + " %";
  }

  private static String rounded(double si, NamedUnit<?> unit, int digits, RoundingMode mode) {
    NamedUnit<?> shown = Length.readable(si, unit);
    BigDecimal value = new BigDecimal(shown.fromSi(si)).round(WITHOUT_NOISE).round(new MathContext(digits, mode));
    return Length.show(shown.toSi(value.doubleValue()), shown, digits);
  }
}
