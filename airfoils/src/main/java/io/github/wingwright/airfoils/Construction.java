// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

/**
 * How the thickness is laid off from the mean line.
 *
 * <p>The published construction is the perpendicular one. Laying the thickness off vertically is simpler and
 * keeps the area of the symmetric section exactly, but moves the surface by up to 0.0023 chord on a section
 * with 6 % camber, so the two are named and never mixed silently.
 */
public enum Construction {
  /** Thickness perpendicular to the mean line, as the NACA sections are defined. */
  PERPENDICULAR,
  /** Thickness along the ordinate: the surface stays over its station. */
  VERTICAL
}
