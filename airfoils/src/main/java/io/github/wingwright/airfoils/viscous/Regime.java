// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

/** What the boundary layer of one surface does between the nose and the trailing edge. */
public enum Regime {
  /** Attached all the way. */
  ATTACHED("attached"),
  /** A laminar layer separates, turns turbulent and comes back to the surface: a laminar separation bubble. */
  BUBBLE("laminar separation bubble"),
  /** A laminar layer separates and does not come back. */
  OPEN("separated, not reattaching"),
  /** A turbulent layer separates ahead of the trailing edge. */
  STALLING("turbulent separation ahead of the trailing edge");

  private final String words;

  Regime(String words) {
    this.words = words;
  }

  /** The regime in words. */
  public String words() {
    return words;
  }
}
