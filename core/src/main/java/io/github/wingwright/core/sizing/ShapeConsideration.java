// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.geometry.BodyShape;

/**
 * A consideration that depends on the family of the body, such as the volume inside: it becomes a margin over length and
 * diameter once the family is known.
 */
@FunctionalInterface
public interface ShapeConsideration {

  /**
   * The consideration for one family.
   *
   * @param shape family of the body
   * @return the margin over length and diameter
   */
  Consideration on(BodyShape shape);
}
