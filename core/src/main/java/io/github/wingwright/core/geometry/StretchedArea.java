// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import java.io.Serializable;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Wetted area of a body against how far it is stretched, by barycentric interpolation between Chebyshev points of the
 * logarithm of the stretch (Berrut and Trefethen). The areas at the points are found when the first one is asked for.
 */
final class StretchedArea implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Stretches up to e to this power, and down to its inverse, are interpolated: 1/5 to 5. */
  private static final double RANGE = Math.log(5.0);

  private static final int NODES = 24;

  private transient volatile double @Nullable [] areas;

  /** Whether a stretch lies within the points. */
  static boolean covers(double stretch) {
    return Math.abs(Math.log(stretch) / RANGE) <= 1.0;
  }

  /**
   * Area at a stretch.
   *
   * @param stretch how many times longer than given the body is, 1/5 to 5
   * @param exact finds the area at a stretch, for the points
   */
  double at(double stretch, DoubleUnaryOperator exact) {
    double[] values = areas;
    if (values == null) {
      values = new double[NODES];
      for (int i = 0; i < NODES; i++) {
        values[i] = exact.applyAsDouble(Math.exp(RANGE * node(i)));
      }
      // Whoever comes second finds the same numbers.
      areas = values;
    }
    double place = Math.log(stretch) / RANGE;
    double above = 0.0;
    double below = 0.0;
    for (int i = 0; i < NODES; i++) {
      double distance = place - node(i);
      if (distance == 0.0) {
        return values[i];
      }
      double angle = (2 * i + 1) * Math.PI / (2 * NODES);
      double weight = (i % 2 == 0 ? 1.0 : -1.0) * Math.sin(angle) / distance;
      above += weight * values[i];
      below += weight;
    }
    return above / below;
  }

  private static double node(int i) {
    return Math.cos((2 * i + 1) * Math.PI / (2 * NODES));
  }
}
