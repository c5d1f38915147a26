// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

/** How a long part lies in the machine, simplest first. */
public enum Lay {
  /** Lying flat on the bed along one of its sides. */
  STRAIGHT("lying along a side of the bed"),
  /** Lying flat on the bed at a slant, from corner to corner. */
  DIAGONAL("lying across the bed at a slant"),
  /** Lying on its narrow side, along the bed or across it. */
  ON_EDGE("lying on edge"),
  /** Standing on one of its ends. */
  UPRIGHT("standing on end"),
  /** Raised from the bed towards the far upper corner: it needs supports all along. */
  RAISED("raised towards the far upper corner, on supports");

  private final String words;

  Lay(String words) {
    this.words = words;
  }

  /**
   * The lay in words.
   *
   * @return for example {@code "standing on end"}
   */
  public String words() {
    return words;
  }
}
