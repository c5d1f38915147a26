// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Length;

/** A part's shape as it is made, which can be meshed as finely as one likes. */
public interface Solid {

  /**
   * The surface of the part as triangles.
   *
   * @param tolerance how far a triangle may stray from the surface, 1 µm to 10 mm
   * @return the mesh, watertight
   * @throws IllegalStateException if the part cannot be made so, such as a hole that leaves the section; the message says
   *     where and by how much
   */
  TriangleMesh mesh(Length tolerance);
}
