// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Meshes a solid that is a stack of slabs across an axis. Within a slab the section keeps its loops: closed rows of keys,
 * anticlockwise about matter as seen from the far end of the axis, clockwise about a hole. Where two slabs meet, the section
 * may change at once, and a flat face closes what one has and the other has not.
 *
 * <p>It is watertight by construction and needs no tolerance for that. A key is one vertex at each station, made once. An edge
 * of a loop is closed on one side by the wall of its slab; on the other by the wall of the next slab where that has the same
 * edge, else by the flat face, whose outline is by definition all such edges. So a spar hole that ends, a tongue that
 * sticks out, a seat cut into a body and a slot for a tail are the same thing: loops that differ from one slab to the next.
 */
final class SlabStack {

  /** Where a key lies. */
  @FunctionalInterface
  interface Outline {
    /** Writes x, y, z [m] of a key at a station of the axis [m]. */
    void locate(int key, double station, double[] point);
  }

  /** A slab: stations from its start to its end, and the loops of its section. */
  static final class Slab {
    private final double[] stations;
    private final List<int[]> loops;

    Slab(double[] stations, List<int[]> loops) {
      this.stations = stations;
      this.loops = loops;
    }

    private List<int[]> loops() {
      return loops;
    }
  }

  /** The thinnest slab [m]: thinner ones have walls of needles. */
  private static final double THINNEST = 1e-6;

  private final int axis;
  private final Outline outline;
  private final int keys;
  private double[] coordinates = new double[3000];
  private int vertices;
  private int[] corners = new int[6000];
  private int filled;

  private SlabStack(int axis, int keys, Outline outline) {
    this.axis = axis;
    this.keys = keys;
    this.outline = outline;
  }

  /**
   * Where slabs meet. Two features that end at one place may differ there by a rounding error, or by less than any machine
   * makes: such a place counts once.
   *
   * @param events where the section changes [m]
   * @param ends the ends of the piece, which stay where they are
   * @return the ends, and the events 1 µm and more from them and from each other
   */
  static NavigableSet<Double> apart(NavigableSet<Double> events, double... ends) {
    TreeSet<Double> kept = new TreeSet<>();
    for (double end : ends) {
      kept.add(end);
    }
    for (double event : events) {
      Double before = kept.floor(event);
      Double after = kept.ceiling(event);
      if ((before == null || event - before >= THINNEST) && (after == null || after - event >= THINNEST)) {
        kept.add(event);
      }
    }
    return kept;
  }

  /** Meshes slabs in order of their stations; each begins where the one before ends. */
  static TriangleMesh mesh(
      int axis, List<Slab> slabs, boolean pointedStart, boolean pointedEnd, Outline outline) {
    int most = 0;
    for (Slab slab : slabs) {
      for (int[] loop : slab.loops()) {
        for (int key : loop) {
          most = Math.max(most, key);
        }
      }
    }
    SlabStack stack = new SlabStack(axis, most + 1, outline);
    stack.run(slabs, pointedStart, pointedEnd);
    return TriangleMesh.of(
        Arrays.copyOf(stack.coordinates, 3 * stack.vertices), Arrays.copyOf(stack.corners, stack.filled));
  }

  private void run(List<Slab> slabs, boolean pointedStart, boolean pointedEnd) {
    int[] ids = new int[0];
    List<int[]> before = List.of();
    for (int s = 0; s < slabs.size(); s++) {
      Slab slab = slabs.get(s);
      double[] stations = slab.stations;
      if (s == 0) {
        ids = station(stations[0], pointedStart);
      }
      if (s > 0 || !pointedStart) {
        face(before, slab.loops(), ids, stations[0]);
      }
      for (int i = 1; i < stations.length; i++) {
        boolean point = pointedEnd && s == slabs.size() - 1 && i == stations.length - 1;
        int[] next = station(stations[i], point);
        for (int[] loop : slab.loops()) {
          wall(loop, ids, stations[i - 1], next, stations[i]);
        }
        ids = next;
      }
      before = slab.loops();
      if (s == slabs.size() - 1 && !pointedEnd) {
        face(before, List.of(), ids, stations[stations.length - 1]);
      }
    }
  }

  /** The vertices of a station, none yet; at a point all keys are one vertex. */
  private int[] station(double at, boolean point) {
    int[] ids = new int[keys];
    Arrays.fill(ids, -1);
    if (point) {
      Arrays.fill(ids, id(new int[] {-1}, 0, at));
    }
    return ids;
  }

  private int id(int[] ids, int key, double at) {
    if (ids[key] < 0) {
      double[] p = new double[3];
      outline.locate(key, at, p);
      if (3 * vertices + 3 > coordinates.length) {
        coordinates = Arrays.copyOf(coordinates, 2 * coordinates.length);
      }
      System.arraycopy(p, 0, coordinates, 3 * vertices, 3);
      ids[key] = vertices++;
    }
    return ids[key];
  }

  private void wall(int[] loop, int[] a, double atA, int[] b, double atB) {
    for (int i = 0; i < loop.length; i++) {
      int from = loop[i];
      int to = loop[(i + 1) % loop.length];
      int ai = id(a, from, atA);
      int aj = id(a, to, atA);
      int bi = id(b, from, atB);
      int bj = id(b, to, atB);
      if (ai == aj) {
        triangle(ai, bj, bi);
      } else if (bi == bj) {
        triangle(ai, aj, bj);
      } else if (distance(ai, bj) <= distance(aj, bi)) {
        triangle(ai, aj, bj);
        triangle(ai, bj, bi);
      } else {
        triangle(ai, aj, bi);
        triangle(aj, bj, bi);
      }
    }
  }

  private double distance(int a, int b) {
    double x = coordinates[3 * a] - coordinates[3 * b];
    double y = coordinates[3 * a + 1] - coordinates[3 * b + 1];
    double z = coordinates[3 * a + 2] - coordinates[3 * b + 2];
    return x * x + y * y + z * z;
  }

  private void triangle(int a, int b, int c) {
    if (filled + 3 > corners.length) {
      corners = Arrays.copyOf(corners, 2 * corners.length);
    }
    corners[filled++] = a;
    corners[filled++] = b;
    corners[filled++] = c;
  }

  /** Closes what the section before has and the one after has not, and the reverse. */
  private void face(List<int[]> before, List<int[]> after, int[] ids, double at) {
    Map<Long, int[]> open = new LinkedHashMap<>();
    before.forEach(loop -> edges(open, loop, ids, at, true));
    after.forEach(loop -> edges(open, loop, ids, at, false));
    Map<Integer, List<Integer>> next = new HashMap<>();
    open.values().forEach(e -> next.computeIfAbsent(e[0], k -> new ArrayList<>()).add(e[1]));
    List<int[]> rings = new ArrayList<>();
    for (int[] edge : open.values()) {
      List<Integer> ways = next.get(edge[0]);
      if (ways != null && ways.contains(edge[1])) {
        rings.add(trace(next, edge[0]));
      }
    }
    if (!rings.isEmpty()) {
      int u = (axis + 1) % 3;
      int v = (axis + 2) % 3;
      FlatFace face = new FlatFace(id -> coordinates[3 * id + u], id -> coordinates[3 * id + v]);
      face.fill(rings, this::triangle);
    }
  }

  private void edges(Map<Long, int[]> open, int[] loop, int[] ids, double at, boolean forward) {
    for (int i = 0; i < loop.length; i++) {
      int a = id(ids, loop[i], at);
      int b = id(ids, loop[(i + 1) % loop.length], at);
      int from = forward ? a : b;
      int to = forward ? b : a;
      if (open.remove((long) to << 32 | from) == null) {
        open.put((long) from << 32 | to, new int[] {from, to});
      }
    }
  }

  private static int[] trace(Map<Integer, List<Integer>> next, int start) {
    List<Integer> ring = new ArrayList<>();
    int at = start;
    do {
      ring.add(at);
      List<Integer> ways = next.get(at);
      if (ways == null || ways.isEmpty()) {
        throw new IllegalStateException("the loops of a section must close, one is open after " + ring.size() + " points");
      }
      at = ways.remove(ways.size() - 1);
    } while (at != start);
    return ring.stream().mapToInt(Integer::intValue).toArray();
  }
}
