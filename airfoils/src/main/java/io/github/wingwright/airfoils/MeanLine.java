// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import java.io.Serializable;

/**
 * A mean line: the curve half-way between the surfaces, over a chord of 1 from the nose to the trailing edge.
 *
 * <p>Implementations are immutable. They give two derivatives, because the construction of the surface needs the
 * slope, and its tangent needs the second derivative. Where the second derivative jumps, the abscissa belongs in
 * {@link #breaks()}: quadratures split there, and only then keep their ten digits.
 *
 * <p>Example: {@code new FourDigitMeanLine(0.02, 0.4).ordinate(0.4)} is 0.02.
 */
public interface MeanLine extends Serializable {
  /** What this line is, in a few words. */
  String name();

  /**
   * Height of the mean line above the chord line.
   *
   * @param x chord station [chords], 0 to 1
   * @return ordinate [chords], positive upward
   */
  double ordinate(double x);

  /**
   * Slope of the mean line.
   *
   * @param x chord station [chords], 0 to 1
   * @return dy/dx [1]
   */
  double slope(double x);

  /**
   * Second derivative of the mean line; at a break, the value aft of it.
   *
   * @param x chord station [chords], 0 to 1
   * @return d²y/dx² [1/chord]
   */
  double secondDerivative(double x);

  /** Interior stations, ascending, where a derivative of the line jumps; empty for a smooth line. */
  default double[] breaks() {
    return new double[0];
  }
}
