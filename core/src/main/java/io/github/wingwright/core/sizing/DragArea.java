// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import java.util.List;
import java.util.Optional;

/**
 * The drag of a body as the area that, times dynamic pressure, gives the force: D = q·(D/q).
 *
 * <p>Sizing needs no more of aerodynamics than this. {@link FlightDrag} is the estimate that comes with the library.
 */
@FunctionalInterface
public interface DragArea {

  /**
   * The drag area. It is called in loops and must not allocate.
   *
   * @param shape family of the body
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return D/q [m²], positive and finite
   */
  double dragArea(BodyShape shape, double length, double diameter);

  /**
   * What is remarkable about the drag of a body.
   *
   * @param body the body
   * @return findings, usually none
   */
  default List<Finding> findings(Fuselage body) {
    return List.of();
  }

  /**
   * The drag of a body with its workings.
   *
   * @param body the body
   * @return the step, empty if there are no workings
   */
  default Optional<Step> step(Fuselage body) {
    return Optional.empty();
  }
}
