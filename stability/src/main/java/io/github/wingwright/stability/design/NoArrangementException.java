// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import java.io.Serial;

/** A brief that no arrangement of wing, body, tails and ballast satisfies, with the part of it that is in the way. */
public final class NoArrangementException extends IllegalStateException {
  @Serial
  private static final long serialVersionUID = 1L;

  private final Matter matter;

  /** What is in the way. */
  public enum Matter {
    /** The body is too short for the tails that are asked for. */
    LENGTH,
    /** No ballast in the nose gives the static margin. */
    BALANCE,
    /** What was sized is lost when it is rounded to what can be made. */
    ROUNDING
  }

  NoArrangementException(Matter matter, String message) {
    super(message);
    this.matter = matter;
  }

  /**
   * What is in the way.
   *
   * @return the matter
   */
  public Matter matter() {
    return matter;
  }
}
