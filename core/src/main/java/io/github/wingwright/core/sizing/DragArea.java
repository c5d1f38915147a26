// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.BodyShape;

/**
 * The drag of a body as the area that, times dynamic pressure, gives the force: D = q·(D/q).
 *
 * <p>Sizing needs no more of aerodynamics than this. It is called in loops: it must not allocate.
 */
@FunctionalInterface
public interface DragArea {

  /**
   * The drag area.
   *
   * @param shape family of the body
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return D/q [m²], positive and finite
   */
  double dragArea(BodyShape shape, double length, double diameter);
}
