// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A box along the axes.
 *
 * @param least its corner with the least coordinates
 * @param most its corner with the greatest coordinates
 */
public record MeshBox(Placement least, Placement most) implements Serializable {
  public MeshBox {
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(most, "most");
  }

  /**
   * Its extent along x.
   *
   * @return the length
   */
  public Length length() {
    return most.x().minus(least.x());
  }

  /**
   * Its extent along y.
   *
   * @return the width
   */
  public Length width() {
    return most.y().minus(least.y());
  }

  /**
   * Its extent along z.
   *
   * @return the height
   */
  public Length height() {
    return most.z().minus(least.z());
  }

  @Override
  public String toString() {
    return length() + " × " + width() + " × " + height();
  }
}
