// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import java.util.Arrays;
import java.util.Objects;

/**
 * The volume of a wall of even thickness inside a closed mesh, from its triangles alone.
 *
 * @param volume the volume between the surface and the surface moved inwards, at most that of the mesh
 * @param x where its centroid lies along the x axis
 */
public record MeshWall(Volume volume, Length x) {
  public MeshWall {
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(x, "x");
  }

  private static final int SECTIONS = 48;
  private static final int COLUMNS = 96;

  /**
   * Of a stout part, in which the walls of opposite sides do not meet. At an edge that sticks out, of an angle α between the
   * normals of its faces, the walls overlap; at one that is drawn in, the wall is rounded:
   *
   * <pre>{@code V_w = S·w − w²·Σ ℓ·tan(½·α) + w²·Σ ℓ·½·α}</pre>
   *
   * <p>The first sum is over edges that stick out, the second over those that are drawn in. Exact but for the corners, of the
   * order of w³; where an edge is closer than w to the next the walls are counted twice. The centroid is that of the surface.
   *
   * @param mesh a watertight mesh
   * @param wall thickness of the wall w, positive
   * @return the wall
   */
  public static MeshWall ofStout(TriangleMesh mesh, Length wall) {
    Objects.requireNonNull(mesh, "mesh");
    double w = Door.positive(wall, "wall").si();
    int n = mesh.triangles();
    long[] keys = new long[3 * n];
    for (int t = 0; t < n; t++) {
      for (int k = 0; k < 3; k++) {
        long a = mesh.corner(t, k);
        long b = mesh.corner(t, (k + 1) % 3);
        // Both triangles of an edge come to lie beside each other; the low half says which corner of which triangle.
        keys[3 * t + k] = Math.min(a, b) * mesh.vertices() + Math.max(a, b);
      }
    }
    Integer[] order = new Integer[3 * n];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (i, j) -> Long.compare(keys[i], keys[j]));
    double sum = 0.0;
    for (int i = 0; i + 1 < order.length; i += 2) {
      sum += edge(mesh, order[i], order[i + 1]);
    }
    double volume = mesh.surface().si() * w - w * w * sum;
    return new MeshWall(
        Volume.cubicMetres(Math.max(0.0, Math.min(volume, mesh.volume().si()))), mesh.surfaceCentroid().x());
  }

  /** Length of an edge times the tangent of half its angle, or times minus half of it where it is drawn in. */
  private static double edge(TriangleMesh mesh, int first, int second) {
    double[] n1 = normal(mesh, first / 3);
    double[] n2 = normal(mesh, second / 3);
    int a = mesh.corner(first / 3, first % 3);
    int b = mesh.corner(first / 3, (first % 3 + 1) % 3);
    int opposite = mesh.corner(second / 3, (second % 3 + 2) % 3);
    double length = 0.0;
    double out = 0.0;
    double cross = 0.0;
    for (int k = 0; k < 3; k++) {
      double along = mesh.coordinate(b, k) - mesh.coordinate(a, k);
      length += along * along;
      out += n1[k] * (mesh.coordinate(opposite, k) - mesh.coordinate(a, k));
      double c = n1[(k + 1) % 3] * n2[(k + 2) % 3] - n1[(k + 2) % 3] * n2[(k + 1) % 3];
      cross += c * c;
    }
    double cosine = n1[0] * n2[0] + n1[1] * n2[1] + n1[2] * n2[2];
    double half = 0.5 * Math.atan2(Math.sqrt(cross), cosine);
    // A fold back upon itself is the edge of a blade: its overlap is taken at three quarters of a right angle.
    return Math.sqrt(length) * (out < 0.0 ? Math.tan(Math.min(half, 1.178)) : -half);
  }

  /** Normal of a triangle, of length one. */
  private static double[] normal(TriangleMesh mesh, int t) {
    int a = mesh.corner(t, 0);
    double[] u = new double[3];
    double[] v = new double[3];
    for (int k = 0; k < 3; k++) {
      u[k] = mesh.coordinate(mesh.corner(t, 1), k) - mesh.coordinate(a, k);
      v[k] = mesh.coordinate(mesh.corner(t, 2), k) - mesh.coordinate(a, k);
    }
    double[] n = {u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]};
    double size = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    for (int k = 0; k < 3; k++) {
      n[k] /= size;
    }
    return n;
  }

  /**
   * Of a flat part along the y axis, such as a wing, whose upper and lower walls may meet. The mesh is cut by planes across y
   * and each cut by columns along z; in a column the two walls take w/|n_z| each of what lies between them, or all of it. The
   * ends are closed and as thick as the wall: all of the part within w of its ends counts.
   *
   * @param mesh a watertight mesh with flat ends across y
   * @param wall thickness of the wall w, positive
   * @return the wall
   */
  public static MeshWall ofFlat(TriangleMesh mesh, Length wall) {
    Objects.requireNonNull(mesh, "mesh");
    double w = Door.positive(wall, "wall").si();
    MeshBox box = mesh.box();
    double from = box.least().y().si();
    double to = box.most().y().si();
    double[] sum = new double[2];
    double inner = Math.max(0.0, to - from - 2.0 * w);
    double[][] normals = new double[mesh.triangles()][];
    Arrays.setAll(normals, t -> MeshCheck.area(mesh, t) > 0.0 ? normal(mesh, t) : new double[3]);
    for (int i = 0; i < SECTIONS; i++) {
      cut(mesh, normals, from + w + inner * (i + 0.5) / SECTIONS, w, inner / SECTIONS, sum);
    }
    double end = Math.min(w, 0.5 * (to - from));
    cut(mesh, normals, from + 0.5 * end, Double.POSITIVE_INFINITY, end, sum);
    cut(mesh, normals, to - 0.5 * end, Double.POSITIVE_INFINITY, end, sum);
    return new MeshWall(Volume.cubicMetres(sum[0]), Length.metres(sum[1] / sum[0]));
  }

  /** Adds the wall of one cut, times its share of the length, to the sums of volume and first moment. */
  private static void cut(TriangleMesh mesh, double[][] normals, double y, double w, double share, double[] sum) {
    double[] lines = new double[5 * mesh.triangles()];
    int n = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int t = 0; t < mesh.triangles(); t++) {
      int found = 0;
      for (int k = 0; k < 3 && found < 2; k++) {
        int a = mesh.corner(t, k);
        int b = mesh.corner(t, (k + 1) % 3);
        double ya = mesh.coordinate(a, 1) - y;
        double yb = mesh.coordinate(b, 1) - y;
        if (ya < 0.0 != yb < 0.0) {
          double s = ya / (ya - yb);
          double x = mesh.coordinate(a, 0) + s * (mesh.coordinate(b, 0) - mesh.coordinate(a, 0));
          lines[5 * n + 2 * found] = x;
          lines[5 * n + 2 * found + 1] = mesh.coordinate(a, 2) + s * (mesh.coordinate(b, 2) - mesh.coordinate(a, 2));
          least = Math.min(least, x);
          most = Math.max(most, x);
          found++;
        }
      }
      if (found == 2) {
        lines[5 * n + 4] = normals[t][2];
        n++;
      }
    }
    double[] heights = new double[n];
    double[] walls = new double[n];
    for (int i = 0; i < COLUMNS; i++) {
      double left = 0.5 * (1.0 - Math.cos(Math.PI * i / COLUMNS));
      double right = 0.5 * (1.0 - Math.cos(Math.PI * (i + 1) / COLUMNS));
      double x = least + (most - least) * 0.5 * (left + right);
      int crossings = 0;
      for (int l = 0; l < n; l++) {
        if (lines[5 * l] < x != lines[5 * l + 2] < x) {
          double s = (x - lines[5 * l]) / (lines[5 * l + 2] - lines[5 * l]);
          double z = lines[5 * l + 1] + s * (lines[5 * l + 3] - lines[5 * l + 1]);
          int at = crossings++;
          while (at > 0 && heights[at - 1] > z) {
            heights[at] = heights[at - 1];
            walls[at] = walls[at - 1];
            at--;
          }
          heights[at] = z;
          walls[at] = w / Math.abs(lines[5 * l + 4]);
        }
      }
      double filled = 0.0;
      for (int k = 0; k + 1 < crossings; k += 2) {
        filled += Math.min(heights[k + 1] - heights[k], walls[k] + walls[k + 1]);
      }
      double part = filled * (right - left) * (most - least) * share;
      sum[0] += part;
      sum[1] += part * x;
    }
  }
}
