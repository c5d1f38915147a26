// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

/** What the glider is judged by. */
public enum Merit {
  /** How far it glides from the height of the launch. */
  DISTANCE,
  /** How long it stays up from the height of the launch. */
  TIME
}
