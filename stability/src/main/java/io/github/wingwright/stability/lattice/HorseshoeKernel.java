// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.Objects;

/**
 * Velocity of horseshoe vortices whose trailing legs run aft along x, on plain doubles.
 *
 * <p>A horseshoe of strength Γ comes up its first leg from far behind to A, runs along the bound vortex to B and back
 * aft along the second leg. With A to port of B it lifts upwards.
 * <pre>{@code
 * bound part   V = Γ/(4π) · (r₁ + r₂)/(r₁·r₂·(r₁·r₂ + R₁·R₂)) · R₁×R₂          R₁ = P − A, R₂ = P − B
 * leg from B   V = Γ/(4π) · (1 + Δx/r)/(Δy² + Δz²) · (0, −Δz, Δy)               (Δx, Δy, Δz) = P − B
 * leg to A     the same with A, and the opposite sign
 * }</pre>
 * This form of the bound part stays finite on the prolongation of the segment. {@link #velocity} expects a point off the
 * vortex.
 *
 * <p>Source: the Biot–Savart integral, as in J. J. Bertin and M. L. Smith, <i>Aerodynamics for Engineers</i>, chapter
 * on the vortex lattice method.
 */
final class HorseshoeKernel {
  private static final double FOUR_PI = 4 * Math.PI;

  /** Squared sine below which a point counts as on the line of a bound vortex, which gives it nothing. */
  private static final double ON_LINE = 1e-24;

  private HorseshoeKernel() {}

  /**
   * Velocity of one horseshoe of unit strength.
   *
   * @param ax A: x aft [m]
   * @param ay A: y to starboard [m]
   * @param az A: z up [m]
   * @param bx B: x aft [m]
   * @param by B: y to starboard [m]
   * @param bz B: z up [m]
   * @param px point: x aft [m]
   * @param py point: y to starboard [m]
   * @param pz point: z up [m]
   * @param velocity receives the velocity per strength, three components [1/m]
   */
  public static void velocity(double ax, double ay, double az, double bx, double by, double bz, double px, double py,
      double pz, double[] velocity) {
    Objects.requireNonNull(velocity, "velocity");
    double x1 = px - ax;
    double y1 = py - ay;
    double z1 = pz - az;
    double x2 = px - bx;
    double y2 = py - by;
    double z2 = pz - bz;
    double r1 = Math.sqrt(x1 * x1 + y1 * y1 + z1 * z1);
    double r2 = Math.sqrt(x2 * x2 + y2 * y2 + z2 * z2);
    double f = (r1 + r2) / (r1 * r2 * (r1 * r2 + x1 * x2 + y1 * y2 + z1 * z2));
    double legA = (1 + x1 / r1) / (y1 * y1 + z1 * z1);
    double legB = (1 + x2 / r2) / (y2 * y2 + z2 * z2);
    velocity[0] = f * (y1 * z2 - z1 * y2) / FOUR_PI;
    velocity[1] = (f * (z1 * x2 - x1 * z2) + legA * z1 - legB * z2) / FOUR_PI;
    velocity[2] = (f * (x1 * y2 - y1 * x2) - legA * y1 + legB * y2) / FOUR_PI;
  }

  /** Room for one point's work over the edges of a surface. */
  static final class Workspace {
    private final double[] y;
    private final double[] z;
    private final double[] h;
    private final double[] inverse;
    private final double[] x;
    private final double[] r;
    private final double[] leg;

    Workspace(int edges) {
      y = new double[edges];
      z = new double[edges];
      h = new double[edges];
      inverse = new double[edges];
      x = new double[edges];
      r = new double[edges];
      leg = new double[edges];
    }
  }

  /**
   * Adds the velocities of all panels of a surface at one point; neighbours share the work on their common edge.
   *
   * @param p panels
   * @param px point [m]
   * @param py point [m]
   * @param pz point [m]
   * @param mirrorY +1, or −1 to reverse the lateral component that is added
   * @param mirrorZ +1, or −1 to reverse the vertical component that is added
   * @param factor what the velocities are multiplied with
   * @param smooth whether the point belongs to another surface: then a trailing leg has a core of half its strip's
   *     width, 1/h² becoming 1/√(h⁴ + core⁴), so that a wake may pass close by
   */
  static void add(LatticePanels p, double px, double py, double pz, double mirrorY, double mirrorZ, double factor,
      boolean smooth, Workspace w, double[] vx, double[] vy, double[] vz, int offset) {
    int edges = p.strips + 1;
    for (int e = 0; e < edges; e++) {
      double dy = py - p.edgeY[e];
      double dz = pz - p.edgeZ[e];
      w.y[e] = dy;
      w.z[e] = dz;
      w.h[e] = dy * dy + dz * dz;
    }
    for (int e = 0; e < edges; e++) {
      w.inverse[e] = 1 / (smooth ? Math.sqrt(w.h[e] * w.h[e] + p.core4[e]) : w.h[e]);
    }
    double scale = factor / FOUR_PI;
    double scaleY = scale * mirrorY;
    double scaleZ = scale * mirrorZ;
    double[] wx = w.x;
    double[] wy = w.y;
    double[] wz = w.z;
    double[] wr = w.r;
    double[] wleg = w.leg;
    for (int k = 0; k < p.rows; k++) {
      double[] bound = p.boundX[k];
      for (int e = 0; e < edges; e++) {
        double dx = px - bound[e];
        double r = Math.sqrt(dx * dx + w.h[e]);
        wx[e] = dx;
        wr[e] = r;
        wleg[e] = (r + dx) * w.inverse[e] / r;
      }
      int at = offset + k * p.strips;
      for (int j = 0; j < p.strips; j++) {
        double x1 = wx[j];
        double y1 = wy[j];
        double z1 = wz[j];
        double x2 = wx[j + 1];
        double y2 = wy[j + 1];
        double z2 = wz[j + 1];
        double product = wr[j] * wr[j + 1];
        double cx = y1 * z2 - z1 * y2;
        double cy = z1 * x2 - x1 * z2;
        double cz = x1 * y2 - y1 * x2;
        double f = cx * cx + cy * cy + cz * cz > ON_LINE * product * product
            ? (wr[j] + wr[j + 1]) / (product * (product + x1 * x2 + y1 * y2 + z1 * z2))
            : 0;
        vx[at + j] += scale * f * cx;
        vy[at + j] += scaleY * (f * cy + wleg[j] * z1 - wleg[j + 1] * z2);
        vz[at + j] += scaleZ * (f * cz - wleg[j] * y1 + wleg[j + 1] * y2);
      }
    }
  }
}
