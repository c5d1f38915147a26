// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.Objects;
import java.util.regex.Pattern;

/**
 * The minus sign in text for readers. Quantities are written with the hyphen of a keyboard, which every program
 * reads;
 * reports and pictures set the mathematical sign, U+2212, as wide as a figure. The parser reads both.
 */
public final class MinusSign {
  /** Before a number, and neither inside a word, a range nor a date; or in an exponent. */
  private static final Pattern HYPHEN =
      Pattern.compile("(?<![\\p{L}\\p{N}_.)\\]°\\-])-(?=\\.?[0-9∞])|(?<=[0-9][eE])-(?=[0-9])");

  private MinusSign() {}

  /**
   * Sets the sign in a text.
   *
   * @param text any text
   * @return the text, with each hyphen that stands for a minus replaced; {@code "-2.5°"} becomes {@code "−2.5°"}
   */
  public static String in(String text) {
    Objects.requireNonNull(text, "text");
    return text.indexOf('-') < 0 ? text : HYPHEN.matcher(text).replaceAll("\u2212");
  }
}
