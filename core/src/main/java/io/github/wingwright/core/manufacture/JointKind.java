// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

/** How two segments of a part are put together. */
public enum JointKind {
  /** A sleeve of one segment goes into the other; on a plate a strip is glued over the seam. */
  TONGUE("tongue"),
  /** Two round pins, half in each segment. */
  DOWEL("two dowels"),
  /** A bought tube, half in each segment. */
  TUBE("tube");

  private final String words;

  JointKind(String words) {
    this.words = words;
  }

  /**
   * The joint in words.
   *
   * @return for example {@code "two dowels"}
   */
  public String words() {
    return words;
  }
}
