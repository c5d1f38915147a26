// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/**
 * Fills flat rings with triangles that have no corners but the rings' own. A ring inside another is a hole in it; a hole is
 * joined to its outer ring by a cut that is run along twice, and of what is then one ring, the best-shaped ear is clipped
 * first: the triangle of three neighbours that is the least thin.
 *
 * <p>An outer ring that runs clockwise is filled all the same, facing the other way.
 */
final class FlatFace {
  /** Takes three vertices, anticlockwise as seen from outside. */
  @FunctionalInterface
  interface Taker {
    void take(int a, int b, int c);
  }

  private final IntToDoubleFunction u;
  private final IntToDoubleFunction v;

  FlatFace(IntToDoubleFunction u, IntToDoubleFunction v) {
    this.u = u;
    this.v = v;
  }

  void fill(List<int[]> rings, Taker taker) {
    int n = rings.size();
    int[] depth = new int[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (i != j && contains(rings.get(j), rings.get(i))) {
          depth[i]++;
        }
      }
    }
    for (int i = 0; i < n; i++) {
      if (depth[i] % 2 != 0) {
        continue;
      }
      List<int[]> holes = new ArrayList<>();
      for (int j = 0; j < n; j++) {
        if (depth[j] == depth[i] + 1 && contains(rings.get(i), rings.get(j))) {
          holes.add(rings.get(j));
        }
      }
      one(rings.get(i), holes, taker);
    }
  }

  private void one(int[] outer, List<int[]> holes, Taker taker) {
    boolean turned = area(outer) < 0.0;
    List<Integer> ring = list(outer, turned);
    List<List<Integer>> inner = new ArrayList<>();
    holes.forEach(hole -> inner.add(list(hole, turned)));
    inner.sort(Comparator.comparingDouble(hole -> -u.applyAsDouble(hole.get(rightmost(hole)))));
    for (int k = 0; k < inner.size(); k++) {
      ring = joined(ring, inner.get(k), inner.subList(k, inner.size()));
    }
    List<int[]> triangles = new ArrayList<>();
    clip(ring, (a, b, c) -> triangles.add(new int[] {a, b, c}));
    while (turnEdges(triangles)) {
      // Each turn makes the least angle larger, so that this ends.
    }
    for (int[] t : triangles) {
      taker.take(t[0], t[turned ? 2 : 1], t[turned ? 1 : 2]);
    }
  }

  private static List<Integer> list(int[] ring, boolean turned) {
    List<Integer> list = new ArrayList<>(ring.length);
    for (int i = 0; i < ring.length; i++) {
      list.add(ring[turned ? ring.length - 1 - i : i]);
    }
    return list;
  }

  private int rightmost(List<Integer> ring) {
    int best = 0;
    for (int i = 1; i < ring.size(); i++) {
      if (u.applyAsDouble(ring.get(i)) > u.applyAsDouble(ring.get(best))) {
        best = i;
      }
    }
    return best;
  }

  /** Cuts from the shortest free line between a vertex of the hole and one of the ring. */
  private List<Integer> joined(List<Integer> ring, List<Integer> hole, List<List<Integer>> holes) {
    int from = -1;
    int to = -1;
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < hole.size(); i++) {
      for (int j = 0; j < ring.size(); j++) {
        double d = Math.hypot(
            u.applyAsDouble(hole.get(i)) - u.applyAsDouble(ring.get(j)),
            v.applyAsDouble(hole.get(i)) - v.applyAsDouble(ring.get(j)));
        if (d < shortest && opensTowards(ring, j, hole.get(i)) && free(ring, holes, ring.get(j), hole.get(i))) {
          shortest = d;
          from = j;
          to = i;
        }
      }
    }
    if (from < 0) {
      throw new IllegalStateException("a hole must lie inside its face, one does not");
    }
    List<Integer> all = new ArrayList<>(ring.subList(0, from + 1));
    for (int i = 0; i <= hole.size(); i++) {
      all.add(hole.get((to + i) % hole.size()));
    }
    all.addAll(ring.subList(from, ring.size()));
    return all;
  }

  /** Whether a line from a corner of the ring starts inside. */
  private boolean opensTowards(List<Integer> ring, int j, int target) {
    int before = ring.get((j + ring.size() - 1) % ring.size());
    int at = ring.get(j);
    int after = ring.get((j + 1) % ring.size());
    boolean convex = cross(before, at, after) >= 0.0;
    boolean left = cross(before, at, target) > 0.0;
    boolean right = cross(at, after, target) > 0.0;
    return convex ? left && right : left || right;
  }

  private boolean free(List<Integer> ring, List<List<Integer>> holes, int a, int b) {
    if (!misses(ring, a, b)) {
      return false;
    }
    for (List<Integer> hole : holes) {
      if (!misses(hole, a, b)) {
        return false;
      }
    }
    return true;
  }

  private boolean misses(List<Integer> ring, int a, int b) {
    for (int i = 0; i < ring.size(); i++) {
      int p = ring.get(i);
      int q = ring.get((i + 1) % ring.size());
      if (p == a || p == b || q == a || q == b) {
        continue;
      }
      if (cross(a, b, p) * cross(a, b, q) <= 0.0 && cross(p, q, a) * cross(p, q, b) <= 0.0) {
        return false;
      }
    }
    return true;
  }

  private void clip(List<Integer> ring, Taker taker) {
    List<Integer> left = new ArrayList<>(ring);
    List<Double> shape = new ArrayList<>();
    for (int i = 0; i < left.size(); i++) {
      shape.add(shape(left, i));
    }
    while (left.size() > 3) {
      int best = best(shape);
      if (shape.get(best) <= 0.0) {
        // What was in the way of an ear may be gone by now.
        for (int i = 0; i < left.size(); i++) {
          shape.set(i, shape(left, i));
        }
        best = best(shape);
        if (shape.get(best) <= 0.0) {
          throw new IllegalStateException(
              String.format(Locale.ROOT, "a flat face must not touch itself, one does near (%.3f, %.3f) mm in its plane",
                  1e3 * u.applyAsDouble(left.get(best)), 1e3 * v.applyAsDouble(left.get(best))));
        }
      }
      int n = left.size();
      taker.take(left.get((best + n - 1) % n), left.get(best), left.get((best + 1) % n));
      left.remove(best);
      shape.remove(best);
      n--;
      shape.set((best + n - 1) % n, shape(left, (best + n - 1) % n));
      shape.set(best % n, shape(left, best % n));
    }
    taker.take(left.get(0), left.get(1), left.get(2));
  }

  /**
   * Gives two triangles the other diagonal of their quadrilateral where the angles across from their common side are together
   * more than a half turn (Lawson): no needle stays that need not.
   */
  private boolean turnEdges(List<int[]> triangles) {
    Map<Long, int[]> open = new HashMap<>();
    boolean[] used = new boolean[triangles.size()];
    boolean turned = false;
    for (int t = 0; t < triangles.size(); t++) {
      for (int k = 0; k < 3 && !used[t]; k++) {
        int[] own = triangles.get(t);
        int a = own[k];
        int b = own[(k + 1) % 3];
        int[] other = open.get((long) b << 32 | a);
        if (other == null || used[other[0]]) {
          open.put((long) a << 32 | b, new int[] {t, k});
          continue;
        }
        int c = own[(k + 2) % 3];
        int d = triangles.get(other[0])[(other[1] + 2) % 3];
        if (cross(c, d, b) > 0.0 && cross(d, c, a) > 0.0 && opposite(a, b, c, d) < -1e-9) {
          triangles.set(t, new int[] {c, a, d});
          triangles.set(other[0], new int[] {d, b, c});
          used[t] = true;
          used[other[0]] = true;
          turned = true;
        }
      }
    }
    return turned;
  }

  /** Sine of the sum of the angles at c and d, which look at the side from a to b from both sides. */
  private double opposite(int a, int b, int c, int d) {
    double sinC = cross(c, a, b) / Math.sqrt(square(c, a) * square(c, b));
    double cosC = dot(c, a, b) / Math.sqrt(square(c, a) * square(c, b));
    double sinD = cross(d, b, a) / Math.sqrt(square(d, a) * square(d, b));
    double cosD = dot(d, a, b) / Math.sqrt(square(d, a) * square(d, b));
    return sinC * cosD + cosC * sinD;
  }

  private double dot(int at, int a, int b) {
    return (u.applyAsDouble(a) - u.applyAsDouble(at)) * (u.applyAsDouble(b) - u.applyAsDouble(at))
        + (v.applyAsDouble(a) - v.applyAsDouble(at)) * (v.applyAsDouble(b) - v.applyAsDouble(at));
  }

  private static int best(List<Double> shape) {
    int best = 0;
    for (int i = 1; i < shape.size(); i++) {
      if (shape.get(i) > shape.get(best)) {
        best = i;
      }
    }
    return best;
  }

  /** Height over the longest side of the ear at a corner; not positive where it is none. */
  private double shape(List<Integer> ring, int i) {
    int n = ring.size();
    int a = ring.get((i + n - 1) % n);
    int b = ring.get(i);
    int c = ring.get((i + 1) % n);
    double twice = cross(a, b, c);
    if (!(twice > 0.0)) {
      return twice;
    }
    double longest = Math.max(square(a, b), Math.max(square(b, c), square(c, a)));
    double slack = -1e-12 * longest;
    for (int p : ring) {
      if (p != a && p != b && p != c && cross(a, b, p) >= slack && cross(b, c, p) >= slack && cross(c, a, p) >= slack) {
        return 0.0;
      }
    }
    return twice / longest;
  }

  private double square(int a, int b) {
    double du = u.applyAsDouble(a) - u.applyAsDouble(b);
    double dv = v.applyAsDouble(a) - v.applyAsDouble(b);
    return du * du + dv * dv;
  }

  private double cross(int a, int b, int c) {
    return (u.applyAsDouble(b) - u.applyAsDouble(a)) * (v.applyAsDouble(c) - v.applyAsDouble(a))
        - (v.applyAsDouble(b) - v.applyAsDouble(a)) * (u.applyAsDouble(c) - u.applyAsDouble(a));
  }

  private double area(int[] ring) {
    double sum = 0.0;
    for (int i = 0; i < ring.length; i++) {
      int a = ring[i];
      int b = ring[(i + 1) % ring.length];
      sum += u.applyAsDouble(a) * v.applyAsDouble(b) - u.applyAsDouble(b) * v.applyAsDouble(a);
    }
    return 0.5 * sum;
  }

  /** Whether a ring lies inside another, by the middle of its first edge. */
  private boolean contains(int[] outer, int[] inner) {
    double pu = 0.5 * (u.applyAsDouble(inner[0]) + u.applyAsDouble(inner[1]));
    double pv = 0.5 * (v.applyAsDouble(inner[0]) + v.applyAsDouble(inner[1]));
    boolean inside = false;
    for (int i = 0; i < outer.length; i++) {
      double au = u.applyAsDouble(outer[i]);
      double av = v.applyAsDouble(outer[i]);
      double bu = u.applyAsDouble(outer[(i + 1) % outer.length]);
      double bv = v.applyAsDouble(outer[(i + 1) % outer.length]);
      if (av > pv != bv > pv && pu < au + (pv - av) / (bv - av) * (bu - au)) {
        inside = !inside;
      }
    }
    return inside;
  }
}
