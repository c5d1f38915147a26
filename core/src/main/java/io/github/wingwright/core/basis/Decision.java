// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import java.io.Serializable;
import java.util.Objects;

/**
 * What the designer decided about a consideration: it applies, it does not apply for a reason, or it applies until
 * something changes.
 *
 * @param kind which of the three
 * @param reason why it does not apply, or what would reopen it; empty if it simply applies
 */
public record Decision(Kind kind, String reason) implements Serializable {

  /** The kinds of decision. */
  public enum Kind {
    /** It applies. */
    CHOSEN,
    /** It was set aside. */
    NOT_APPLICABLE,
    /** It applies for the time being. */
    PROVISIONAL
  }

  /** Refuses a decision that needs a reason and has none. */
  public Decision {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(reason, "reason");
    if (kind != Kind.CHOSEN && reason.isBlank()) {
      throw new IllegalArgumentException("reason must say why, was empty");
    }
  }

  /** It applies. */
  private static final Decision CHOSEN = new Decision(Kind.CHOSEN, "");

  /**
   * It applies.
   *
   * @return the decision
   */
  public static Decision chosen() {
    return CHOSEN;
  }

  /**
   * It is set aside.
   *
   * @param because why
   * @return the decision
   * @throws IllegalArgumentException if the reason is empty
   */
  public static Decision notApplicable(String because) {
    return new Decision(Kind.NOT_APPLICABLE, because);
  }

  /**
   * It applies until something changes.
   *
   * @param until what would reopen it
   * @return the decision
   * @throws IllegalArgumentException if the reason is empty
   */
  public static Decision provisional(String until) {
    return new Decision(Kind.PROVISIONAL, until);
  }

  /**
   * Whether it takes part in the range.
   *
   * @return false if it was set aside
   */
  public boolean applies() {
    return kind != Kind.NOT_APPLICABLE;
  }

  @Override
  public String toString() {
    return switch (kind) {
      case CHOSEN -> "applies";
      case NOT_APPLICABLE -> "set aside because " + reason;
      case PROVISIONAL -> "provisional until " + reason;
    };
  }
}
