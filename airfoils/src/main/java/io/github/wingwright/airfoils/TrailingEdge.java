// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

/**
 * The two published trailing edges of the 4-digit thickness form: they differ in its last coefficient only.
 *
 * <p>The form was published with a small gap at the trailing edge. Panel methods like a closed one, and the
 * customary way to close it changes the coefficient of x⁴, which moves the rest of the section least.
 * Real parts are made with neither: see {@link FourDigitThickness#withTrailingEdgeThickness(double)}.
 */
public enum TrailingEdge {
  /** As published: coefficient 0.1015, full gap 0.021 times the thickness ratio. */
  OPEN(0.1015),
  /** Closed to a sharp edge: coefficient 0.1036, no gap. */
  CLOSED(0.1036);

  private final double coefficient;

  TrailingEdge(double coefficient) {
    this.coefficient = coefficient;
  }

  /** The coefficient of x⁴ in the thickness form, 0.1015 or 0.1036. */
  public double coefficient() {
    return coefficient;
  }
}
