// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

/** The two sides of a section. */
public enum Surface {
  /** The suction side at positive lift. */
  UPPER(1),
  /** The pressure side at positive lift. */
  LOWER(-1);

  private final int sign;

  Surface(int sign) {
    this.sign = sign;
  }

  /** 1 for the upper side, −1 for the lower: the sign with which the half thickness is laid off. */
  public int sign() {
    return sign;
  }
}
