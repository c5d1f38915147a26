// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The lengths at which a region is cut, and what each consideration leaves there: equal ratios, and in between the lengths
 * at which a consideration begins or ceases to leave anything, so that a region which is narrow because of them is not
 * stepped over.
 */
final class RegionGrid {
  private static final int CUTS = 160;
  private static final int HALVINGS = 44;

  /** At the very end of what it leaves a consideration leaves a single diameter; a little before it leaves a few. */
  private static final double BEFORE_THE_END = 1e-9;

  final double[] lengths;
  private final double[][] low;
  private final double[][] high;

  RegionGrid(List<Weighed> binding, PlaneWindow window) {
    double[] even = even(window.lengths());
    List<Double> ends = new ArrayList<>();
    Interval[][] left = new Interval[binding.size()][even.length];
    for (int k = 0; k < left.length; k++) {
      Consideration one = binding.get(k).consideration();
      for (int j = 0; j < even.length; j++) {
        left[k][j] = window.left(one, even[j]);
      }
      addEnds(one, window, even, left[k], ends);
    }
    this.lengths = together(even, ends);
    this.low = new double[binding.size()][lengths.length];
    this.high = new double[binding.size()][lengths.length];
    for (int k = 0; k < left.length; k++) {
      for (int j = 0; j < lengths.length; j++) {
        int known = Arrays.binarySearch(even, lengths[j]);
        Interval interval = known >= 0 ? left[k][known] : window.left(binding.get(k).consideration(), lengths[j]);
        Interval seen = interval.intersect(window.diameters());
        low[k][j] = seen.isEmpty() ? Double.POSITIVE_INFINITY : seen.lower();
        high[k][j] = seen.isEmpty() ? Double.NEGATIVE_INFINITY : seen.upper();
      }
    }
  }

  /** Least diameter that a consideration leaves at a length of the grid; infinite if it leaves nothing. */
  double low(int consideration, int length) {
    return low[consideration][length];
  }

  /** Greatest diameter that a consideration leaves at a length of the grid; minus infinite if it leaves nothing. */
  double high(int consideration, int length) {
    return high[consideration][length];
  }

  private static double[] even(Interval lengths) {
    double[] even = new double[CUTS + 1];
    double ratio = lengths.upper() / lengths.lower();
    for (int j = 0; j < CUTS; j++) {
      even[j] = lengths.lower() * Math.pow(ratio, (double) j / CUTS);
    }
    even[CUTS] = lengths.upper();
    return even;
  }

  private static void addEnds(
      Consideration one, PlaneWindow window, double[] even, Interval[] left, List<Double> ends) {
    if (Arrays.stream(left).allMatch(i -> i.isEmpty() || i.equals(Interval.ALL))) {
      Interval holds =
          one.lengthsAt(Math.sqrt(window.diameters().lower() * window.diameters().upper()), window.lengths());
      ends.add(holds.lower());
      ends.add(holds.upper());
    }
    for (int j = 1; j < even.length; j++) {
      if (left[j].isEmpty() != left[j - 1].isEmpty()) {
        double in = left[j].isEmpty() ? even[j - 1] : even[j];
        double out = left[j].isEmpty() ? even[j] : even[j - 1];
        double inside = in;
        for (int i = 0; i < HALVINGS; i++) {
          double middle = 0.5 * (in + out);
          if (window.left(one, middle).isEmpty()) {
            out = middle;
          } else {
            in = middle;
          }
        }
        ends.add(in + BEFORE_THE_END * (inside - in));
      }
    }
  }

  private static double[] together(double[] even, List<Double> ends) {
    double[] inner = ends.stream().mapToDouble(Double::doubleValue).filter(l -> l > even[0] && l < even[CUTS]).toArray();
    double[] all = Arrays.copyOf(even, even.length + inner.length);
    System.arraycopy(inner, 0, all, even.length, inner.length);
    return Arrays.stream(all).sorted().distinct().toArray();
  }
}
