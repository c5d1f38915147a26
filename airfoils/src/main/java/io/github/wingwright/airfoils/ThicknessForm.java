// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import java.io.Serializable;

/**
 * A thickness form: the half thickness laid off on both sides of the mean line, over a chord of 1.
 *
 * <p>Implementations are immutable. A round nose behaves as √(2·r·x), so the slope at x = 0 is infinite; every
 * quadrature in this module therefore runs over √x, in which the form is smooth.
 */
public interface ThicknessForm extends Serializable {
  /** What this form is, in a few words. */
  String name();

  /**
   * Half of the thickness.
   *
   * @param x chord station [chords], 0 to 1
   * @return half thickness [chords], zero or more
   */
  double halfThickness(double x);

  /**
   * Slope of the half thickness.
   *
   * @param x chord station [chords], above 0 (infinite at 0 for a round nose)
   * @return d(half thickness)/dx [1]
   */
  double slope(double x);

  /**
   * Radius of curvature at the nose.
   *
   * @return nose radius [chords]; 0 for a sharp nose
   */
  double noseRadius();

  /** Interior stations, ascending, where a derivative of the form jumps; empty for a smooth form. */
  default double[] breaks() {
    return new double[0];
  }

  /** Full thickness at the trailing edge [chords]. */
  default double trailingEdgeThickness() {
    return 2 * halfThickness(1);
  }
}
