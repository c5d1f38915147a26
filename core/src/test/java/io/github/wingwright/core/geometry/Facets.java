// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

/**
 * A body by flat facets between points of its outlines, from what {@link BodyShape} tells of each station alone, and by
 * extrapolation of two meshes: an integration that shares nothing with the library's.
 *
 * @param volume enclosed volume [m³]
 * @param area area of the skin [m²]
 * @param volumeHeight height of the centroid of the volume [m]
 * @param areaHeight height of the centroid of the skin [m]
 */
record Facets(double volume, double area, double volumeHeight, double areaHeight) {

  /** Facets between stations at which the body may have an edge, nose and end among them. */
  static Facets of(BodyShape shape, double length, double diameter, double[] edges, int along, int around) {
    double[] coarse = sums(shape, length, diameter, edges, along, around);
    double[] fine = sums(shape, length, diameter, edges, 2 * along, 2 * around);
    for (int i = 0; i < fine.length; i++) {
      fine[i] += (fine[i] - coarse[i]) / 3.0;
    }
    return new Facets(fine[0], fine[1], fine[2] / fine[0], fine[3] / fine[1]);
  }

  private static double[] sums(BodyShape shape, double length, double d, double[] edges, int along, int around) {
    double[] sum = new double[4];
    for (int part = 1; part < edges.length; part++) {
      double[][] last = new double[0][];
      for (int i = 0; i <= along; i++) {
        double s = 0.5 * (1.0 - Math.cos(Math.PI * i / along));
        s = 0.5 * (1.0 - Math.cos(Math.PI * s));
        double x = Math.min(length, edges[part - 1] + s * (edges[part] - edges[part - 1]));
        double[][] ring = ring(shape, x, length, d, around);
        if (i > 0) {
          for (int j = 0; j < around; j++) {
            add(sum, last[j], ring[j], ring[j + 1]);
            add(sum, last[j], ring[j + 1], last[j + 1]);
          }
        }
        last = ring;
      }
    }
    return sum;
  }

  private static double[][] ring(BodyShape shape, double x, double length, double d, int around) {
    double[][] ring = new double[around + 1][];
    for (int j = 0; j <= around; j++) {
      double angle = 2.0 * Math.PI * j / around;
      double rho = shape.sectionRadial(angle, x, length, d);
      ring[j] =
          new double[] {
            x,
            0.5 * shape.width(x, length, d) * rho * Math.cos(angle),
            shape.centreHeight(x, length, d) + 0.5 * shape.height(x, length, d) * rho * Math.sin(angle)
          };
    }
    return ring;
  }

  /** The facet's area and height; and by the theorem of Gauss ∫ y·n_y dS is the volume, ∫ y·z·n_y dS its moment. */
  private static void add(double[] sum, double[] a, double[] b, double[] c) {
    double ux = b[0] - a[0];
    double uy = b[1] - a[1];
    double uz = b[2] - a[2];
    double vx = c[0] - a[0];
    double vy = c[1] - a[1];
    double vz = c[2] - a[2];
    double nx = 0.5 * (uy * vz - uz * vy);
    double ny = 0.5 * (uz * vx - ux * vz);
    double nz = 0.5 * (ux * vy - uy * vx);
    double area = Math.sqrt(nx * nx + ny * ny + nz * nz);
    double y = (a[1] + b[1] + c[1]) / 3.0;
    double z = (a[2] + b[2] + c[2]) / 3.0;
    double yz = (a[1] * a[2] + b[1] * b[2] + c[1] * c[2] + 9.0 * y * z) / 12.0;
    sum[0] -= y * ny;
    sum[1] += area;
    sum[2] -= yz * ny;
    sum[3] += area * z;
  }
}
