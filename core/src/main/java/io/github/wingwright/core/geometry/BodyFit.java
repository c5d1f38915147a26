// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

/** Whether a family of bodies can form a body of given dimensions. */
final class BodyFit {
  /** A length that was computed as least · d may miss it by a rounding error. */
  private static final double ROUNDING = 1e-12;

  private BodyFit() {}

  /** Refuses dimensions that the family cannot form. */
  static void check(BodyShape shape, Length length, Length diameter) {
    Objects.requireNonNull(shape, "shape");
    Door.positive(length, "body length");
    Door.positive(diameter, "body diameter");
    double least = shape.leastFinenessRatio();
    if (length.si() < least * diameter.si() * (1.0 - ROUNDING)) {
      throw new IllegalArgumentException(
          "body length must be at least "
              + diameter.times(least)
              + " for a "
              + shape.name()
              + " of diameter "
              + diameter
              + ", was "
              + length);
    }
  }
}
