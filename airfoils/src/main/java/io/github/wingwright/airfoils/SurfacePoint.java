// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

/**
 * A point of a section's surface.
 *
 * @param x abscissa [chords]
 * @param y ordinate [chords]
 * @param slopeAngle direction of the tangent, towards the trailing edge, from the chord line [rad]
 */
public record SurfacePoint(double x, double y, double slopeAngle) {
  /** Slope dy/dx of the surface; infinite where the tangent is vertical. */
  public double slope() {
    return Math.tan(slopeAngle);
  }
}
