// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

/**
 * What changes when the wake drifts with a sideslip instead of running along the x axis.
 *
 * <p>On the surface the legs of a horseshoe lie along the chord; behind the trailing edge they carry no load and must go
 * with the wind, to port when it comes from starboard. To first order in the sideslip the change is that of turning each
 * semi-infinite leg about its point on the trailing edge. With R = (X, Y, Z) from there and d = (1, −β, 0):
 * <pre>{@code
 * V = Γ/(4π)·d×R/(R·(R − R·d))
 * ∂V/∂β = Γ/(4π)/R·(−Z·Q, Z·Y·Q², X·Q − Y²·Q²)        Q = 1/(R − X)
 * }</pre>
 * The wake of a symmetric flow, so turned, is antisymmetric: it takes away a good part of the rolling moment that a flat
 * wing in sideslip would have with its wake held to the axis.
 */
final class SkewedWake {
  private final LatticePanels[] panels;
  private final double ground;
  /** Per surface and edge: ∂V/∂β of the leg at that edge, of the near side minus the mirrored far side. */
  private final double[][] x;
  private final double[][] y;
  private final double[][] z;

  SkewedWake(LatticePanels[] panels, double ground) {
    this.panels = panels;
    this.ground = ground;
    x = new double[panels.length][];
    y = new double[panels.length][];
    z = new double[panels.length][];
    for (int s = 0; s < panels.length; s++) {
      x[s] = new double[panels[s].strips + 1];
      y[s] = new double[panels[s].strips + 1];
      z[s] = new double[panels[s].strips + 1];
    }
  }

  /** Circulation of the strips of one half: the sum over the rows of panels. */
  static double[][] strips(LatticePanels[] panels, int[] offset, double[] gamma) {
    double[][] strips = new double[panels.length][];
    for (int s = 0; s < panels.length; s++) {
      strips[s] = new double[panels[s].strips];
      for (int i = 0; i < panels[s].size(); i++) {
        strips[s][i % panels[s].strips] += gamma[offset[s] + i];
      }
    }
    return strips;
  }

  /** Evaluates at a point that belongs to surface number {@code home}. */
  void at(int home, double px, double py, double pz) {
    for (int s = 0; s < panels.length; s++) {
      LatticePanels p = panels[s];
      for (int e = 0; e <= p.strips; e++) {
        x[s][e] = 0;
        y[s][e] = 0;
        z[s][e] = 0;
        if (p.surface.isCentral()) {
          continue;
        }
        boolean smooth = s != home;
        add(s, e, px, py, pz, 1, 1, smooth);
        add(s, e, px, -py, pz, -1, 1, smooth);
        if (ground > Double.NEGATIVE_INFINITY) {
          add(s, e, px, py, 2 * ground - pz, 1, -1, smooth);
          add(s, e, px, -py, 2 * ground - pz, -1, -1, smooth);
        }
      }
    }
  }

  private void add(int s, int e, double px, double py, double pz, double side, double mirrorZ, boolean smooth) {
    LatticePanels p = panels[s];
    double dx = px - p.edgeTrailing[e];
    double dy = py - p.edgeY[e];
    double dz = pz - p.edgeZ[e];
    double h = dy * dy + dz * dz;
    double r = Math.sqrt(dx * dx + h);
    double q = smooth ? (r + dx) / Math.sqrt(h * h + p.core4[e]) : dx < 0 ? 1 / (r - dx) : (r + dx) / h;
    double scale = 1 / (4 * Math.PI * r);
    // the far side is the mirror image of a wake that drifts the other way: reversed, and reflected in y
    x[s][e] -= side * scale * dz * q;
    y[s][e] += scale * dz * dy * q * q;
    z[s][e] += side * mirrorZ * scale * (dx * q - dy * dy * q * q);
  }

  /** Velocity per unit of sideslip for these circulations of the strips: adds it to a vector. */
  void velocity(double[][] strips, double[] v) {
    for (int s = 0; s < panels.length; s++) {
      for (int j = 0; j < strips[s].length; j++) {
        double g = strips[s][j];
        v[0] += g * (x[s][j + 1] - x[s][j]);
        v[1] += g * (y[s][j + 1] - y[s][j]);
        v[2] += g * (z[s][j + 1] - z[s][j]);
      }
    }
  }
}
