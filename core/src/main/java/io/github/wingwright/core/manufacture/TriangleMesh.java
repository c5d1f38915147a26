// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import java.util.Arrays;
import java.util.Objects;

/**
 * A surface of triangles. Each names three of the vertices, anticlockwise as seen from outside.
 *
 * <p>Volume and centroid follow from the triangles by the divergence theorem, and mean something only where the surface is
 * closed; {@link MeshCheck} holds it to that.
 *
 * <pre>{@code
 * V = Σ a·(b × c)/6        S = Σ |(b − a) × (c − a)|/2
 * }</pre>
 *
 * <p>Coordinates at the door of arrays are metres.
 */
public final class TriangleMesh {
  private final double[] coordinates;
  private final int[] corners;

  private TriangleMesh(double[] coordinates, int[] corners) {
    this.coordinates = coordinates;
    this.corners = corners;
  }

  /**
   * A mesh from its numbers.
   *
   * @param coordinates x, y, z of one vertex after the other [m], finite
   * @param corners three numbers of vertices for each triangle, the first vertex is 0
   * @return the mesh
   */
  public static TriangleMesh of(double[] coordinates, int[] corners) {
    if (coordinates.length % 3 != 0 || corners.length % 3 != 0) {
      throw new IllegalArgumentException(
          "coordinates and corners must come in threes, were " + coordinates.length + " and " + corners.length);
    }
    int vertices = coordinates.length / 3;
    for (int i = 0; i < coordinates.length; i++) {
      if (!Double.isFinite(coordinates[i])) {
        throw new IllegalArgumentException("coordinates must be finite, vertex " + i / 3 + " has " + coordinates[i]);
      }
    }
    for (int corner : corners) {
      Objects.checkIndex(corner, vertices);
    }
    return new TriangleMesh(coordinates.clone(), corners.clone());
  }

  /**
   * How many vertices it has.
   *
   * @return their number
   */
  public int vertices() {
    return coordinates.length / 3;
  }

  /**
   * How many triangles it has.
   *
   * @return their number
   */
  public int triangles() {
    return corners.length / 3;
  }

  /**
   * A coordinate of a vertex, for loops.
   *
   * @param vertex its number
   * @param axis 0 for x, 1 for y, 2 for z
   * @return the coordinate [m]
   */
  public double coordinate(int vertex, int axis) {
    return coordinates[3 * vertex + Objects.checkIndex(axis, 3)];
  }

  /**
   * A corner of a triangle, for loops.
   *
   * @param triangle its number
   * @param corner 0, 1 or 2
   * @return the number of the vertex
   */
  public int corner(int triangle, int corner) {
    return corners[3 * triangle + Objects.checkIndex(corner, 3)];
  }

  /**
   * A vertex as a place.
   *
   * @param vertex its number
   * @return where it lies
   */
  public Placement vertex(int vertex) {
    return new Placement(
        Length.metres(coordinate(vertex, 0)), Length.metres(coordinate(vertex, 1)), Length.metres(coordinate(vertex, 2)));
  }

  /**
   * Enclosed volume.
   *
   * @return V, positive where the triangles face outwards
   */
  public Volume volume() {
    return Volume.cubicMetres(moments()[0]);
  }

  /**
   * Area of all triangles.
   *
   * @return S
   */
  public Area surface() {
    double sum = 0.0;
    for (int t = 0; t < triangles(); t++) {
      sum += MeshCheck.area(this, t);
    }
    return Area.squareMetres(sum);
  }

  /**
   * Where the centroid of the volume lies.
   *
   * @return the place
   */
  public Placement centroid() {
    double[] m = moments();
    return new Placement(
        Length.metres(coordinates[0] + m[1] / m[0]),
        Length.metres(coordinates[1] + m[2] / m[0]),
        Length.metres(coordinates[2] + m[3] / m[0]));
  }

  /**
   * Where the centroid of the surface lies: the centre of gravity of thin walls.
   *
   * @return the place
   */
  public Placement surfaceCentroid() {
    double[] sum = new double[4];
    for (int t = 0; t < triangles(); t++) {
      double area = MeshCheck.area(this, t);
      sum[3] += area;
      for (int axis = 0; axis < 3; axis++) {
        for (int k = 0; k < 3; k++) {
          sum[axis] += area / 3.0 * coordinate(corner(t, k), axis);
        }
      }
    }
    return new Placement(
        Length.metres(sum[0] / sum[3]), Length.metres(sum[1] / sum[3]), Length.metres(sum[2] / sum[3]));
  }

  /** Volume and first moments about the first vertex: near the part, so that little is lost by cancelling. */
  private double[] moments() {
    double[] sum = new double[4];
    double[] p = new double[9];
    for (int t = 0; t < triangles(); t++) {
      for (int k = 0; k < 9; k++) {
        p[k] = coordinates[3 * corners[3 * t + k / 3] + k % 3] - coordinates[k % 3];
      }
      double v =
          (p[0] * (p[4] * p[8] - p[5] * p[7]) + p[1] * (p[5] * p[6] - p[3] * p[8]) + p[2] * (p[3] * p[7] - p[4] * p[6]))
              / 6.0;
      sum[0] += v;
      for (int k = 0; k < 3; k++) {
        sum[k + 1] += 0.25 * v * (p[k] + p[k + 3] + p[k + 6]);
      }
    }
    return sum;
  }

  /**
   * The box around it.
   *
   * @return the box, along the axes
   */
  public MeshBox box() {
    double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    double[] most = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (int i = 0; i < coordinates.length; i++) {
      least[i % 3] = Math.min(least[i % 3], coordinates[i]);
      most[i % 3] = Math.max(most[i % 3], coordinates[i]);
    }
    return new MeshBox(
        new Placement(Length.metres(least[0]), Length.metres(least[1]), Length.metres(least[2])),
        new Placement(Length.metres(most[0]), Length.metres(most[1]), Length.metres(most[2])));
  }

  /**
   * The same surface moved.
   *
   * @param by how far along each axis
   * @return the moved mesh
   */
  public TriangleMesh moved(Placement by) {
    Objects.requireNonNull(by, "by");
    double[] shift = {by.x().si(), by.y().si(), by.z().si()};
    double[] moved = coordinates.clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] += shift[i % 3];
    }
    return of(moved, corners);
  }

  /**
   * The same surface turned about an axis through the origin.
   *
   * @param axis 0 for x, 1 for y, 2 for z
   * @param angle how far, from the next axis towards the one after (right-handed)
   * @return the turned mesh
   */
  public TriangleMesh turned(int axis, Angle angle) {
    int u = (Objects.checkIndex(axis, 3) + 1) % 3;
    int v = (axis + 2) % 3;
    double cos = exactAtQuarters(Math.cos(angle.si()));
    double sin = exactAtQuarters(Math.sin(angle.si()));
    double[] turned = coordinates.clone();
    for (int i = 0; i < turned.length; i += 3) {
      turned[i + u] = cos * coordinates[i + u] - sin * coordinates[i + v];
      turned[i + v] = sin * coordinates[i + u] + cos * coordinates[i + v];
    }
    return of(turned, corners);
  }

  /** A quarter turn is meant to leave flat faces flat to the last bit. */
  private static double exactAtQuarters(double value) {
    double nearest = Math.rint(value);
    return Math.abs(value - nearest) < 1e-15 ? nearest : value;
  }

  /**
   * Its mirror image to the other side of the plane of symmetry, facing outwards again.
   *
   * @return the mesh with y turned round
   */
  public TriangleMesh mirrored() {
    double[] mirrored = coordinates.clone();
    for (int i = 1; i < mirrored.length; i += 3) {
      mirrored[i] = 0.0 - mirrored[i];
    }
    int[] turned = corners.clone();
    for (int i = 0; i < turned.length; i += 3) {
      turned[i + 1] = corners[i + 2];
      turned[i + 2] = corners[i + 1];
    }
    return of(mirrored, turned);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TriangleMesh that
        && Arrays.equals(coordinates, that.coordinates)
        && Arrays.equals(corners, that.corners);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(coordinates) + Arrays.hashCode(corners);
  }

  @Override
  public String toString() {
    return "mesh of " + triangles() + " triangles, " + volume();
  }
}
