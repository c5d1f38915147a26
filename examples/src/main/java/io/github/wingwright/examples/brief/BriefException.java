// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.brief;

import java.util.Locale;

/** A brief that cannot be used, with the place of the trouble and what is accepted there. */
public final class BriefException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private static final int LONGEST = 900;

  /**
   * Says what is wrong.
   *
   * @param message one clear sentence with file, line and column
   */
  public BriefException(String message) {
    super(printable(message));
  }

  /**
   * Says what is wrong, and what made it so.
   *
   * @param message one clear sentence with file, line and column
   * @param cause what was thrown
   */
  public BriefException(String message, Throwable cause) {
    super(printable(message), cause);
  }

  /** A brief may come from anybody: what it quotes goes to a terminal on one line, without control characters. */
  private static String printable(String message) {
    StringBuilder text = new StringBuilder();
    message
        .codePoints()
        .limit(LONGEST)
        .forEach(
            c -> {
              if (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT || c == 0x2028 || c == 0x2029) {
                text.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                text.appendCodePoint(c);
              }
            });
    return message.codePointCount(0, message.length()) > LONGEST ? text + "…" : text.toString();
  }
}
