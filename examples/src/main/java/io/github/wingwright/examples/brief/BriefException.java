// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.brief;

/** A brief that cannot be used, with the place of the trouble and what is accepted there. */
public final class BriefException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Says what is wrong.
   *
   * @param message one clear sentence with file, line and column
   */
  public BriefException(String message) {
    super(message);
  }

  /**
   * Says what is wrong, and what made it so.
   *
   * @param message one clear sentence with file, line and column
   * @param cause what was thrown
   */
  public BriefException(String message, Throwable cause) {
    super(message, cause);
  }
}
