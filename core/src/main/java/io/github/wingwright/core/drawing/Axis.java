// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.quantity.NamedUnit;
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

  /** A tick with its figure. */
  record Tick(double value, double at, String label) {}

  /** As many round values as keep their figures apart, along a horizontal axis. */
  List<Tick> labelledTicks(Lettering lettering) {
    for (int about = 8; about > 1; about--) {
      List<Tick> ticks = figures(about);
      if (areApart(ticks, lettering)) {
        return ticks;
      }
    }
    return figures(1);
  }

  /** Round values with their figures, whatever room they take. */
  List<Tick> figures(int about) {
    return ticks(about).stream().map(t -> new Tick(t, at(t), figure(t))).toList();
  }

  /** Enough digits to tell neighbours apart. */
  private String figure(double tick) {
    double largest = Math.max(Math.abs(low), Math.abs(high));
    int digits = 3 + (int) Math.ceil(Math.max(0.0, Math.log10(largest / (high - low))));
    return NamedUnit.NUMBER.format(tick, Math.min(12, digits));
  }

  private static boolean areApart(List<Tick> ticks, Lettering lettering) {
    for (int i = 1; i < ticks.size(); i++) {
      Tick one = ticks.get(i - 1);
      Tick next = ticks.get(i);
      double room = 0.5 * (lettering.width(one.label()) + lettering.width(next.label())) + 2.0;
      if (Math.abs(next.at() - one.at()) < room) {
        return false;
      }
    }
    return true;
  }
}
