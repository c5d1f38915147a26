// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight axis from values to millimetres on paper.
 *
 * @param low value at the start
 * @param high value at the end, above the start
 * @param start paper coordinate of the start [mm]
 * @param end paper coordinate of the end [mm]; less than the start for an axis that grows upwards
 */
record Axis(double low, double high, double start, double end) {

  Axis {
    if (!(high > low)) {
      throw new IllegalArgumentException("axis must run from a lower to a higher value, was " + low + " to " + high);
    }
  }

  double at(double value) {
    return start + (value - low) / (high - low) * (end - start);
  }

  double clamped(double value) {
    return at(Math.max(low, Math.min(high, value)));
  }

  /** Round values inside the axis, about as many as asked for: multiples of 1, 2 or 5 times a power of ten. */
  List<Double> ticks(int about) {
    double rough = (high - low) / about;
    double power = Math.pow(10.0, Math.floor(Math.log10(rough)));
    double step = power;
    for (double factor : new double[] {1.0, 2.0, 5.0, 10.0}) {
      step = factor * power;
      if (step >= rough) {
        break;
      }
    }
    List<Double> ticks = new ArrayList<>();
    for (long k = (long) Math.ceil(low / step - 1e-9); k * step <= high + 1e-9 * step; k++) {
      ticks.add(k * step);
    }
    return ticks;
  }
}
