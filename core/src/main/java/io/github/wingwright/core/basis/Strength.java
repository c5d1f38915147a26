// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

/** How binding a consideration is. */
public enum Strength {
  /** It cannot be otherwise: outside it the thing cannot be made or used. */
  LIMIT,
  /** Good designs keep to it; leaving it is allowed and has a price. */
  GUIDELINE,
  /** A value to be near to; it pulls and does not bind. */
  TARGET
}
