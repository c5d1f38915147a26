// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

/** How much a finding weighs, lightest first. */
public enum Severity {
  /** Worth knowing; nothing need change. */
  NOTE,
  /** Outside a guideline or a method's validity: the number or the choice deserves a second look. */
  CAUTION,
  /** A limit is broken: the design cannot be made, carried or flown as it is. */
  SERIOUS
}
