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
  private final List<Weighed> binding;
  private final PlaneWindow window;

  /** What each consideration leaves by itself: known only once somebody asks why nothing is left. */
  private final Interval[][] alone;

  RegionGrid(List<Weighed> binding, PlaneWindow window) {
    this.binding = binding;
    this.window = window;
    double[] even = even(window.lengths());
    boolean[][] empty = empty(even);
    List<Double> ends = new ArrayList<>();
    for (int k = 0; k < empty.length; k++) {
      addEnds(binding.get(k).consideration(), even, empty[k], ends);
    }
    this.lengths = together(even, ends);
    this.alone = new Interval[binding.size()][lengths.length];
  }

  /** Where a consideration leaves nothing. All are asked together, so that each needs to look only at what others leave. */
  private boolean[][] empty(double[] even) {
    boolean[][] empty = new boolean[binding.size()][even.length];
    for (int j = 0; j < even.length; j++) {
      Interval search = window.search(even[j]);
      Interval part = search;
      for (int k = 0; k < empty.length; k++) {
        Interval left = binding.get(k).consideration().diametersAt(even[j], search, part);
        empty[k][j] = left.isEmpty();
        part = part.intersect(left);
      }
    }
    return empty;
  }

  /** Least diameter that a consideration leaves at a length of the grid; infinite if it leaves nothing. */
  double low(int consideration, int length) {
    Interval left = alone(consideration, length);
    return left.isEmpty() ? Double.POSITIVE_INFINITY : left.lower();
  }

  /** Greatest diameter that a consideration leaves at a length of the grid; minus infinite if it leaves nothing. */
  double high(int consideration, int length) {
    Interval left = alone(consideration, length);
    return left.isEmpty() ? Double.NEGATIVE_INFINITY : left.upper();
  }

  private Interval alone(int k, int j) {
    if (alone[k][j] == null) {
      alone[k][j] = window.left(binding.get(k).consideration(), lengths[j]).intersect(window.diameters());
    }
    return alone[k][j];
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

  private void addEnds(Consideration one, double[] even, boolean[] empty, List<Double> ends) {
    if (isOnLengthAlone(one, even)) {
      Interval holds =
          one.lengthsAt(Math.sqrt(window.diameters().lower() * window.diameters().upper()), window.lengths());
      ends.add(holds.lower());
      ends.add(holds.upper());
    }
    for (int j = 1; j < even.length; j++) {
      if (empty[j] != empty[j - 1]) {
        double in = empty[j] ? even[j - 1] : even[j];
        double out = empty[j] ? even[j] : even[j - 1];
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

  private boolean isOnLengthAlone(Consideration one, double[] even) {
    for (int j = 0; j < even.length; j += 8) {
      Interval left = window.left(one, even[j]);
      if (!left.isEmpty() && !left.equals(Interval.ALL)) {
        return false;
      }
    }
    return true;
  }

  private static double[] together(double[] even, List<Double> ends) {
    double[] inner = ends.stream().mapToDouble(Double::doubleValue).filter(l -> l > even[0] && l < even[CUTS]).toArray();
    double[] all = Arrays.copyOf(even, even.length + inner.length);
    System.arraycopy(inner, 0, all, even.length, inner.length);
    return Arrays.stream(all).sorted().distinct().toArray();
  }
}
