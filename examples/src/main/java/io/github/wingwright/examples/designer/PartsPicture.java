// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.drawing.Pen;
import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.manufacture.TriangleMesh;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The parts of a glider drawn apart, seen from above and behind: shaded triangles from the farthest to the nearest, and a line
 * along every edge that bends.
 */
final class PartsPicture {
  private static final double WIDTH = 170.0;
  private static final double AZIMUTH = Math.toRadians(-145);
  private static final double ELEVATION = Math.toRadians(28);
  /** Cosine of the angle between two faces from which on their edge is drawn. */
  private static final double CREASE = Math.cos(Math.toRadians(32));

  private static final int SHADES = 12;

  /** What is smaller on paper [mm²] is not seen, and left out. */
  private static final double LEAST_AREA = 0.01;

  private final List<Face> faces = new ArrayList<>();
  private final double[] box = {1e9, 1e9, -1e9, -1e9};

  private static final class Face {
    private final double depth;
    private final double[] x;
    private final double[] y;
    private final int shade;
    private final boolean[] drawn;

    Face(double depth, double[] x, double[] y, int shade, boolean[] drawn) {
      this.depth = depth;
      this.x = x;
      this.y = y;
      this.shade = shade;
      this.drawn = drawn;
    }

    double depth() {
      return depth;
    }
  }

  private PartsPicture() {}

  /**
   * Draws the parts of {@code GliderParts.assembled()}: two half wings, body, tailplane, fin, moved apart.
   *
   * @param meshes the parts where they sit on the aircraft
   */
  static Svg draw(List<TriangleMesh> meshes) {
    PartsPicture picture = new PartsPicture();
    double[][] apart = {{0, 0.12, 0.45}, {0, -0.12, 0.45}, {0, 0, 0}, {0.5, 0, 0}, {0.5, 0, 0.35}};
    double length = meshes.get(2).box().length().si();
    double behind = 0.0;
    for (int i = 0; i < meshes.size(); i++) {
      double[] by = apart[i];
      Placement move =
          new Placement(Length.metres(by[0] * length), Length.metres(by[1] * length), Length.metres(by[2] * length));
      // A part behind another is drawn before all of it: the wing stands above the body, the fin above the tailplane.
      behind = i == 2 ? 10.0 : i < 2 ? 0.0 : 5.0 - i;
      picture.add(meshes.get(i).moved(move), behind);
    }
    return picture.svg();
  }

  private void add(TriangleMesh mesh, double behind) {
    int n = mesh.triangles();
    double[][] normal = new double[n][3];
    Map<Long, Integer> owner = new HashMap<>();
    for (int t = 0; t < n; t++) {
      normal[t] = normal(mesh, t);
      for (int k = 0; k < 3; k++) {
        owner.put((long) mesh.corner(t, k) << 32 | mesh.corner(t, (k + 1) % 3), t);
      }
    }
    for (int t = 0; t < n; t++) {
      double[] x = new double[3];
      double[] y = new double[3];
      boolean[] drawn = new boolean[3];
      double depth = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < 3; k++) {
        int v = mesh.corner(t, k);
        double[] p = view(mesh.coordinate(v, 0), mesh.coordinate(v, 1), mesh.coordinate(v, 2));
        x[k] = p[0];
        y[k] = p[1];
        depth = Math.max(depth, p[2]);
        Integer other = owner.get((long) mesh.corner(t, (k + 1) % 3) << 32 | v);
        drawn[k] = other == null || dot(normal[t], normal[other]) < CREASE;
      }
      if ((x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]) <= 0.0) {
        continue;
      }
      double light = dot(normal[t], new double[] {0.25, -0.35, 0.9});
      int shade = (int) Math.rint((SHADES - 1) * Math.max(0.0, Math.min(1.0, 0.5 + 0.5 * light)));
      faces.add(new Face(behind + depth, x, y, shade, drawn));
      for (int k = 0; k < 3; k++) {
        box[0] = Math.min(box[0], x[k]);
        box[1] = Math.min(box[1], y[k]);
        box[2] = Math.max(box[2], x[k]);
        box[3] = Math.max(box[3], y[k]);
      }
    }
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] normal(TriangleMesh mesh, int t) {
    double[] u = new double[3];
    double[] v = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      double origin = mesh.coordinate(mesh.corner(t, 0), axis);
      u[axis] = mesh.coordinate(mesh.corner(t, 1), axis) - origin;
      v[axis] = mesh.coordinate(mesh.corner(t, 2), axis) - origin;
    }
    double[] n = {u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]};
    double length = Math.sqrt(dot(n, n));
    return new double[] {n[0] / length, n[1] / length, n[2] / length};
  }

  /** To the right, up, and away from the eye. */
  private static double[] view(double x, double y, double z) {
    double right = Math.cos(AZIMUTH) * x - Math.sin(AZIMUTH) * y;
    double ahead = Math.sin(AZIMUTH) * x + Math.cos(AZIMUTH) * y;
    return new double[] {
      right,
      Math.sin(ELEVATION) * ahead + Math.cos(ELEVATION) * z,
      Math.cos(ELEVATION) * ahead - Math.sin(ELEVATION) * z
    };
  }

  private Svg svg() {
    double scale = (WIDTH - 8.0) / (box[2] - box[0]);
    double height = scale * (box[3] - box[1]) + 8.0;
    Svg svg = new Svg(WIDTH, height, "the parts, drawn apart");
    faces.sort(Comparator.comparingDouble(Face::depth).reversed());
    Pen line = Pen.stroke(Pen.INK, 0.2);
    for (Face face : faces) {
      double[] x = new double[3];
      double[] y = new double[3];
      for (int k = 0; k < 3; k++) {
        x[k] = 4.0 + scale * (face.x[k] - box[0]);
        y[k] = 4.0 + scale * (box[3] - face.y[k]);
      }
      int grey = 150 + 95 * face.shade / (SHADES - 1);
      double area = 0.5 * Math.abs((x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]));
      if (area < LEAST_AREA) {
        continue;
      }
      String fill = String.format(Locale.ROOT, "#%02x%02x%02x", grey - 8, grey, Math.min(255, grey + 4));
      svg.polygon(x, y, new Pen(fill, 0.1, fill, ""));
      for (int k = 0; k < 3; k++) {
        if (face.drawn[k]) {
          svg.line(x[k], y[k], x[(k + 1) % 3], y[(k + 1) % 3], line);
        }
      }
    }
    return svg;
  }
}
