// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Volume;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;

/**
 * What was found when a mesh was held to be watertight: every edge belongs to exactly two triangles which run along it in
 * opposite directions, no triangle is degenerate, and the triangles face outwards.
 *
 * @param vertices number of vertices
 * @param triangles number of triangles
 * @param volume enclosed volume, positive
 * @param surface area of all triangles
 * @param box the box around it
 */
public record MeshCheck(int vertices, int triangles, Volume volume, Area surface, MeshBox box) {
  public MeshCheck {
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(surface, "surface");
    Objects.requireNonNull(box, "box");
  }

  /** The least height of a triangle [m]: ten times what a file in steps of 10 nm resolves. */
  static final double LEAST_HEIGHT = 1e-7;

  /**
   * Checks a mesh.
   *
   * @param mesh the mesh
   * @return what it measures
   * @throws IllegalStateException if it is not watertight; the message says where
   */
  public static MeshCheck of(TriangleMesh mesh) {
    Objects.requireNonNull(mesh, "mesh");
    if (mesh.triangles() == 0) {
      throw new IllegalStateException("a mesh must have triangles, has none");
    }
    degenerate(mesh);
    edges(mesh);
    Volume volume = mesh.volume();
    if (!(volume.si() > 0.0)) {
      throw new IllegalStateException(
          "triangles must face outwards, but the volume is " + volume + at(mesh, mesh.corner(0, 0)));
    }
    return new MeshCheck(mesh.vertices(), mesh.triangles(), volume, mesh.surface(), mesh.box());
  }

  private static void degenerate(TriangleMesh mesh) {
    for (int t = 0; t < mesh.triangles(); t++) {
      double longest = 0.0;
      for (int k = 0; k < 3; k++) {
        longest = Math.max(longest, distance(mesh, mesh.corner(t, k), mesh.corner(t, (k + 1) % 3)));
      }
      double height = longest > 0.0 ? 2.0 * area(mesh, t) / longest : 0.0;
      if (!(height >= LEAST_HEIGHT)) {
        throw new IllegalStateException(
            String.format(Locale.ROOT, "a triangle must be at least %.4f mm high, triangle %d is %.6f mm",
                1e3 * LEAST_HEIGHT, t, 1e3 * height) + at(mesh, mesh.corner(t, 0)) + ": mesh it more coarsely");
      }
    }
  }

  /** Each edge as one number: its lower vertex, its upper vertex, and the direction; sorted, both directions are neighbours. */
  private static void edges(TriangleMesh mesh) {
    int n = mesh.triangles();
    long[] edges = new long[3 * n];
    for (int t = 0; t < n; t++) {
      for (int k = 0; k < 3; k++) {
        long from = mesh.corner(t, k);
        long to = mesh.corner(t, (k + 1) % 3);
        edges[3 * t + k] = Math.min(from, to) << 32 | Math.max(from, to) << 1 | (from < to ? 0L : 1L);
      }
    }
    Arrays.sort(edges);
    int i = 0;
    while (i < edges.length) {
      int end = i + 1;
      while (end < edges.length && edges[end] >> 1 == edges[i] >> 1) {
        end++;
      }
      if (end - i != 2 || (edges[i] & 1L) == (edges[i + 1] & 1L)) {
        int low = (int) (edges[i] >> 32);
        int high = (int) (edges[i] >> 1 & 0x7fffffffL);
        String found = end - i == 2 ? "is run along twice in one direction" : "belongs to " + (end - i);
        throw new IllegalStateException(
            "an edge must belong to two triangles in opposite directions, one " + found + at(mesh, low) + " to" + at(mesh, high));
      }
      i = end;
    }
  }

  private static String at(TriangleMesh mesh, int vertex) {
    return String.format(Locale.ROOT, " at (%.3f, %.3f, %.3f) mm",
        1e3 * mesh.coordinate(vertex, 0), 1e3 * mesh.coordinate(vertex, 1), 1e3 * mesh.coordinate(vertex, 2));
  }

  private static double distance(TriangleMesh mesh, int a, int b) {
    double x = mesh.coordinate(a, 0) - mesh.coordinate(b, 0);
    double y = mesh.coordinate(a, 1) - mesh.coordinate(b, 1);
    double z = mesh.coordinate(a, 2) - mesh.coordinate(b, 2);
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** Area of one triangle [m²]. */
  static double area(TriangleMesh mesh, int t) {
    int a = mesh.corner(t, 0);
    int b = mesh.corner(t, 1);
    int c = mesh.corner(t, 2);
    double ux = mesh.coordinate(b, 0) - mesh.coordinate(a, 0);
    double uy = mesh.coordinate(b, 1) - mesh.coordinate(a, 1);
    double uz = mesh.coordinate(b, 2) - mesh.coordinate(a, 2);
    double vx = mesh.coordinate(c, 0) - mesh.coordinate(a, 0);
    double vy = mesh.coordinate(c, 1) - mesh.coordinate(a, 1);
    double vz = mesh.coordinate(c, 2) - mesh.coordinate(a, 2);
    double x = uy * vz - uz * vy;
    double y = uz * vx - ux * vz;
    double z = ux * vy - uy * vx;
    return 0.5 * Math.sqrt(x * x + y * y + z * z);
  }

  @Override
  public String toString() {
    return "watertight, " + triangles + " triangles, " + volume + ", " + box;
  }
}
