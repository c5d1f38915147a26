// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.manufacture.MeshBox;
import io.github.wingwright.core.manufacture.TriangleMesh;
import java.util.Random;

/** Points at random in a closed mesh and their distance from its surface: nothing but rays and distances. */
final class MeshSampling {
  private final TriangleMesh mesh;
  private final Random random;
  private final double[][] corners;

  MeshSampling(TriangleMesh mesh, long seed) {
    this.mesh = mesh;
    random = new Random(seed);
    corners = new double[mesh.triangles()][9];
    for (int t = 0; t < corners.length; t++) {
      for (int k = 0; k < 9; k++) {
        corners[t][k] = mesh.coordinate(mesh.corner(t, k / 3), k % 3);
      }
    }
  }

  /** Which part of the points in the mesh lies no farther than a wall from its surface. */
  double wallPart(double wall, int many) {
    MeshBox box = mesh.box();
    double[] least = {box.least().x().si(), box.least().y().si(), box.least().z().si()};
    double[] most = {box.most().x().si(), box.most().y().si(), box.most().z().si()};
    double[] p = new double[3];
    int inside = 0;
    int near = 0;
    while (inside < many) {
      for (int k = 0; k < 3; k++) {
        p[k] = least[k] + random.nextDouble() * (most[k] - least[k]);
      }
      if (isInside(p)) {
        inside++;
        near += isNear(p, wall) ? 1 : 0;
      }
    }
    return (double) near / many;
  }

  /** Means of x, y, z, x², y², z² [m, m²] over what lies in the mesh no farther than a wall from its surface. */
  double[] wallMeans(double wall, int many) {
    MeshBox box = mesh.box();
    double[] least = {box.least().x().si(), box.least().y().si(), box.least().z().si()};
    double[] most = {box.most().x().si(), box.most().y().si(), box.most().z().si()};
    double[] p = new double[3];
    double[] means = new double[6];
    int near = 0;
    while (near < many) {
      for (int k = 0; k < 3; k++) {
        p[k] = least[k] + random.nextDouble() * (most[k] - least[k]);
      }
      if (isInside(p) && isNear(p, wall)) {
        near++;
        for (int k = 0; k < 3; k++) {
          means[k] += p[k] / many;
          means[k + 3] += p[k] * p[k] / many;
        }
      }
    }
    return means;
  }

  /** Whether a ray straight up meets the surface an odd number of times. */
  private boolean isInside(double[] p) {
    boolean inside = false;
    for (double[] c : corners) {
      double area = (c[3] - c[0]) * (c[7] - c[1]) - (c[6] - c[0]) * (c[4] - c[1]);
      double u = ((p[0] - c[0]) * (c[7] - c[1]) - (c[6] - c[0]) * (p[1] - c[1])) / area;
      double v = ((c[3] - c[0]) * (p[1] - c[1]) - (p[0] - c[0]) * (c[4] - c[1])) / area;
      if (u >= 0.0 && v >= 0.0 && u + v <= 1.0 && c[2] + u * (c[5] - c[2]) + v * (c[8] - c[2]) > p[2]) {
        inside = !inside;
      }
    }
    return inside;
  }

  private boolean isNear(double[] p, double wall) {
    for (double[] c : corners) {
      if (distance(p, c) <= wall) {
        return true;
      }
    }
    return false;
  }

  /** Distance from a triangle: from its plane if the foot lies in it, else from the nearest of its edges. */
  private static double distance(double[] p, double[] c) {
    double[] u = {c[3] - c[0], c[4] - c[1], c[5] - c[2]};
    double[] v = {c[6] - c[0], c[7] - c[1], c[8] - c[2]};
    double[] w = {p[0] - c[0], p[1] - c[1], p[2] - c[2]};
    double uu = dot(u, u);
    double uv = dot(u, v);
    double vv = dot(v, v);
    double wu = dot(w, u);
    double wv = dot(w, v);
    double d = uu * vv - uv * uv;
    double a = (vv * wu - uv * wv) / d;
    double b = (uu * wv - uv * wu) / d;
    if (a >= 0.0 && b >= 0.0 && a + b <= 1.0) {
      return Math.sqrt(Math.max(0.0, dot(w, w) - a * wu - b * wv));
    }
    return Math.min(edge(p, c, 0, 3), Math.min(edge(p, c, 3, 6), edge(p, c, 6, 0)));
  }

  private static double edge(double[] p, double[] c, int from, int to) {
    double[] u = {c[to] - c[from], c[to + 1] - c[from + 1], c[to + 2] - c[from + 2]};
    double[] w = {p[0] - c[from], p[1] - c[from + 1], p[2] - c[from + 2]};
    double s = Math.max(0.0, Math.min(1.0, dot(w, u) / dot(u, u)));
    return Math.sqrt(Math.max(0.0, dot(w, w) - 2.0 * s * dot(w, u) + s * s * dot(u, u)));
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
