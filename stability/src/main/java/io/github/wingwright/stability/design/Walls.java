// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;

/**
 * How a hollow part is printed.
 *
 * @param thickness thickness of the wall: lines side by side times their width; positive
 * @param infill share of the inside that is filled, 0 to 1
 */
public record Walls(Length thickness, double infill) implements Serializable {
  /** Refuses a wall that is none. */
  public Walls {
    if (!(thickness.si() > 0.0) || Double.isInfinite(thickness.si())) {
      throw new IllegalArgumentException("wall thickness must be positive, was " + thickness);
    }
    if (!(infill >= 0.0 && infill <= 1.0)) {
      throw new IllegalArgumentException("infill must be 0 to 1, was " + infill);
    }
  }
}
