// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Finds the seams: the fewest, and among as many those that are bent least. */
final class Split {
  private static final double SLACK = 1e-9;

  private static final int MOST_PIECES = 100;
  private static final int HALVINGS = 50;

  /** Shortest piece at an end, as a part of the length. */
  private static final double SHORTEST_END = 0.08;

  private final BuildVolume machine;
  private final Set<Lay> lays;
  private final double[] at;
  private final double[] front;
  private final double[] rear;
  private final double[] bottom;
  private final double[] top;
  private final double[] bending;
  private final double[] lean;
  private final double overlap;
  private final double longer;

  /** Whether a joint at the station keeps clear of what else is cut into the part. */
  private final boolean[] clear;

  private final int grid;

  Split(SlenderPart part, BuildVolume machine, Set<Lay> lays, int steps) {
    this.machine = machine;
    this.lays = lays;
    this.overlap = JointChoice.overlap(part);
    this.longer = part.longer().si();
    at = nodes(part, steps);
    grid = at.length - 1;
    front = new double[grid + 1];
    rear = new double[grid + 1];
    bottom = new double[grid + 1];
    top = new double[grid + 1];
    bending = new double[grid + 1];
    lean = new double[grid + 1];
    for (int i = 0; i <= grid; i++) {
      SlenderPart.Station s = part.at(Length.metres(at[i]));
      front[i] = s.front().si();
      rear[i] = s.rear().si();
      bottom[i] = s.bottom().si();
      top[i] = s.top().si();
      bending[i] = Math.abs(s.bending().si());
      lean[i] = part.lean(s.at(), overlap).si();
    }
    clear = clear(part);
  }

  private boolean[] clear(SlenderPart part) {
    boolean[] clear = new boolean[grid + 1];
    double end = part.jointed().si();
    boolean throughout = end >= part.length().si();
    JointChoice choice = new JointChoice(part);
    for (int i = 1; i < grid; i++) {
      clear[i] = throughout || at[i] + overlap < end && choice.at(at[i], Double.POSITIVE_INFINITY).reach().si() <= end;
    }
    return clear;
  }

  /** Equal steps, the stations of the part, and the seams of pieces that are each as long as can be, so that no step costs a piece. */
  private double[] nodes(SlenderPart part, int steps) {
    double length = part.length().si();
    TreeSet<Double> nodes = new TreeSet<>();
    for (int i = 0; i < steps; i++) {
      nodes.add(length * i / steps);
    }
    part.stations().forEach(s -> nodes.add(s.at().si()));
    double from = 0.0;
    for (int n = 0; n < MOST_PIECES && !fits(part, from, length, 0.0); n++) {
      double low = from;
      double high = length;
      for (int i = 0; i < HALVINGS; i++) {
        double middle = 0.5 * (low + high);
        if (fits(part, from, middle, overlap)) {
          low = middle;
        } else {
          high = middle;
        }
      }
      if (low <= from) {
        break;
      }
      nodes.add(low);
      from = low;
    }
    return nodes.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private boolean fits(SlenderPart part, double from, double to, double tongue) {
    if (to <= from) {
      return true;
    }
    SlenderPart piece = part.between(Length.metres(from), Length.metres(to));
    double depth = piece.depth().si() + (tongue > 0.0 ? part.lean(Length.metres(to), tongue).si() : 0.0);
    return longest(piece.width().si(), depth) >= to - from + tongue + longer;
  }

  /** The seams from the first end on; none if no split makes it. */
  List<Double> seams() {
    int[] reach = reach();
    int pieces = 0;
    int i = 0;
    while (i < grid) {
      if (reach[i] <= i) {
        return List.of();
      }
      i = reach[i];
      pieces++;
    }
    // A stub at an end is hard to print and to glue; where the machine leaves no other way it is better than nothing, and so is a seam in the way of something else.
    double stub = Math.max(SHORTEST_END * at[grid], 3.0 * overlap);
    boolean[] noStub = new boolean[grid + 1];
    for (int j = 1; j < grid; j++) {
      noStub[j] = clear[j] && at[j] >= stub && at[j] <= at[grid] - stub;
    }
    List<Double> seams = leastBent(reach, pieces, noStub);
    if (seams.isEmpty()) {
      seams = leastBent(reach, pieces, clear);
    }
    boolean[] anywhere = new boolean[grid + 1];
    Arrays.fill(anywhere, true);
    return seams.isEmpty() ? leastBent(reach, pieces, anywhere) : seams;
  }

  /** How far a piece from each station can go: the tongue counts unless it is the last piece. */
  private int[] reach() {
    int[] reach = new int[grid + 1];
    for (int i = 0; i < grid; i++) {
      double low = front[i];
      double high = rear[i];
      double bed = bottom[i];
      double roof = top[i];
      int end = i;
      for (int j = i + 1; j <= grid; j++) {
        low = Math.min(low, front[j]);
        high = Math.max(high, rear[j]);
        bed = Math.min(bed, bottom[j]);
        roof = Math.max(roof, top[j]);
        double length = at[j] - at[i] + longer + (j == grid ? 0.0 : overlap);
        double depth = roof - bed + (j == grid ? 0.0 : lean[j]);
        if (longest(high - low, depth) < length - SLACK * length) {
          // The last piece has no tongue, so a longer one may still reach the end.
          if (at[grid] - at[i] + longer > length) {
            break;
          }
          continue;
        }
        end = j;
      }
      reach[i] = end;
    }
    reach[grid] = grid;
    return reach;
  }

  private double longest(double width, double deep) {
    double longest = 0.0;
    for (Lay lay : lays) {
      longest = Math.max(longest, machine.longest(lay, width, deep));
    }
    return longest;
  }

  /** Over all splits into as many pieces, the one whose most bent seam is bent least, then the least sum. */
  private List<Double> leastBent(int[] reach, int pieces, boolean[] allowed) {
    double[][] worst = new double[pieces + 1][grid + 1];
    double[][] sum = new double[pieces + 1][grid + 1];
    int[][] before = new int[pieces + 1][grid + 1];
    for (double[] row : worst) {
      Arrays.fill(row, Double.POSITIVE_INFINITY);
    }
    worst[0][0] = 0.0;
    for (int n = 1; n <= pieces; n++) {
      for (int i = 0; i < grid; i++) {
        if (worst[n - 1][i] == Double.POSITIVE_INFINITY) {
          continue;
        }
        for (int j = i + 1; j <= reach[i]; j++) {
          boolean last = j == grid;
          if (!last && !allowed[j]) {
            continue;
          }
          double w = last ? worst[n - 1][i] : Math.max(worst[n - 1][i], bending[j]);
          double s = last ? sum[n - 1][i] : sum[n - 1][i] + bending[j];
          if (w < worst[n][j] || w == worst[n][j] && s < sum[n][j]) {
            worst[n][j] = w;
            sum[n][j] = s;
            before[n][j] = i;
          }
        }
      }
    }
    if (worst[pieces][grid] == Double.POSITIVE_INFINITY) {
      return List.of();
    }
    List<Double> seams = new ArrayList<>();
    int j = grid;
    for (int n = pieces; n > 1; n--) {
      j = before[n][j];
      seams.add(at[j]);
    }
    Collections.reverse(seams);
    return seams;
  }
}
