// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

/**
 * The shape of a wing section on a chord of one, nose at (0, 0), chord line along x to (1, 0).
 *
 * <p>Only shape: what the air does to it is a matter of a section polar. Lengths are fractions of the chord.
 */
public interface AirfoilSection {

  /**
   * The designation.
   *
   * @return for example {@code "NACA 2412"}
   */
  String name();

  /**
   * Greatest thickness.
   *
   * @return t/c
   */
  double maximumThickness();

  /**
   * Where the section is thickest.
   *
   * @return x/c
   */
  double maximumThicknessPosition();

  /**
   * Greatest height of the mean line above the chord line; negative if it lies below.
   *
   * @return camber over chord
   */
  double maximumCamber();

  /**
   * Thickness of the trailing edge.
   *
   * @return over chord, 0 if sharp
   */
  double trailingEdgeThickness();

  /**
   * Area of the section.
   *
   * @return over chord squared
   */
  double area();

  /**
   * Length of the outline, trailing edge included.
   *
   * @return over chord
   */
  double perimeter();

  /**
   * Thickness at a chord station.
   *
   * @param x chord station, 0 to 1
   * @return full thickness over chord
   */
  double thickness(double x);

  /**
   * Height of the mean line at a chord station.
   *
   * @param x chord station, 0 to 1
   * @return over chord
   */
  double camber(double x);

  /**
   * Slope of the mean line at a chord station.
   *
   * @param x chord station, 0 to 1
   * @return dy/dx
   */
  double camberSlope(double x);

  /**
   * Writes the outline into two arrays of equal length: from the trailing edge over the upper surface to the nose and
   * back along the lower surface, points drawn together at both ends.
   *
   * @param x receives the abscissae, at least 5 long
   * @param y receives the ordinates, as long as {@code x}
   */
  void outline(double[] x, double[] y);
}
