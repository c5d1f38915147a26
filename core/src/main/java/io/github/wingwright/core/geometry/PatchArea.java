// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * Area of a curved surface and its moments about the planes x = 0 and z = 0, by meshes of flat facets, each twice as fine as the one
 * before, and Richardson's extrapolation of the last three: facets are off by the square of their size.
 */
final class PatchArea {
  /** Number of facets along and around, a multiple of four. */
  private static final int FACETS = 96;

  private static final int POINTS = FACETS + 1;

  /** A surface as points over the unit square. */
  @FunctionalInterface
  interface Patch {
    /** Writes x, y and z of the point at u, v into the array, from the given place on. */
    void at(double u, double v, double[] points, int place);
  }

  final double area;
  final double moment;
  final double rise;
  final double error;

  private PatchArea(double area, double moment, double rise, double error) {
    this.area = area;
    this.moment = moment;
    this.rise = rise;
    this.error = error;
  }

  /**
   * The starboard half of the skin of a body aft of a station, points drawn together where it begins and ends.
   *
   * @param shape the body
   * @param from where the skin begins [m]; its points crowd only at the aft end unless that is the nose
   * @param length length of the body [m]
   * @param diameter greatest diameter [m]
   * @param centre height of the middle of the section at a station
   */
  static PatchArea aftOf(
      BodyShape shape, double from, double length, double diameter, DoubleUnaryOperator centre) {
    return of(
        (u, v, points, place) -> {
          double part = from > 0.0 ? Math.sin(0.5 * Math.PI * u) : 0.5 * (1.0 - Math.cos(Math.PI * u));
          double x = Math.min(length, from + (length - from) * part);
          double angle = Math.PI * (v - 0.5);
          double rho = shape.sectionRadial(angle, x, length, diameter);
          points[place] = x;
          points[place + 1] = 0.5 * shape.width(x, length, diameter) * rho * Math.cos(angle);
          points[place + 2] =
              centre.applyAsDouble(x) + 0.5 * shape.height(x, length, diameter) * rho * Math.sin(angle);
        });
  }

  /** The same with its mirror image. */
  PatchArea twice() {
    return new PatchArea(2.0 * area, 2.0 * moment, 2.0 * rise, 2.0 * error);
  }

  static PatchArea of(Patch patch) {
    double[] points = new double[3 * POINTS * POINTS];
    for (int i = 0; i < POINTS; i++) {
      for (int j = 0; j < POINTS; j++) {
        patch.at((double) i / FACETS, (double) j / FACETS, points, 3 * (i * POINTS + j));
      }
    }
    double[] coarse = mesh(points, 4);
    double[] middle = mesh(points, 2);
    double[] fine = mesh(points, 1);
    double area = extrapolated(middle[0], fine[0]);
    double before = extrapolated(coarse[0], middle[0]);
    return new PatchArea(
        area, extrapolated(middle[1], fine[1]), extrapolated(middle[2], fine[2]), Math.abs(area - before));
  }

  private static double extrapolated(double coarse, double fine) {
    return fine + (fine - coarse) / 3.0;
  }

  private static double[] mesh(double[] p, int step) {
    double area = 0.0;
    double moment = 0.0;
    double rise = 0.0;
    for (int i = 0; i < FACETS; i += step) {
      for (int j = 0; j < FACETS; j += step) {
        int a = 3 * (i * POINTS + j);
        int b = 3 * ((i + step) * POINTS + j);
        int c = 3 * ((i + step) * POINTS + j + step);
        int d = 3 * (i * POINTS + j + step);
        double one = triangle(p, a, b, c);
        double two = triangle(p, a, c, d);
        area += one + two;
        moment += one * (p[a] + p[b] + p[c]) / 3.0 + two * (p[a] + p[c] + p[d]) / 3.0;
        rise += one * (p[a + 2] + p[b + 2] + p[c + 2]) / 3.0 + two * (p[a + 2] + p[c + 2] + p[d + 2]) / 3.0;
      }
    }
    return new double[] {area, moment, rise};
  }

  private static double triangle(double[] p, int a, int b, int c) {
    double ux = p[b] - p[a];
    double uy = p[b + 1] - p[a + 1];
    double uz = p[b + 2] - p[a + 2];
    double vx = p[c] - p[a];
    double vy = p[c + 1] - p[a + 1];
    double vz = p[c + 2] - p[a + 2];
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    return 0.5 * Math.sqrt(nx * nx + ny * ny + nz * nz);
  }
}
