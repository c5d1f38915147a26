// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

/**
 * Forces and moments of every pair of basic flows: strengths of one, velocity of the other.
 *
 * <p>Kutta and Joukowski: a vortex segment l of strength Γ in the velocity U feels ρ·Γ·U×l. Force is linear in the
 * strengths and in the velocity, and both are sums over the basic flows, so a table of the pairs gives forces, moments
 * and all derivatives of any condition by a small double sum.
 *
 * <p>The bound segments feel the onset flow and the velocity that all vortices induce. The legs, from the bound vortex
 * to the trailing edge, lie in the surface; there the flow is tangential already, so they feel only the onset flow
 * along the span: sideslip makes lift on them, which is the rolling moment of a flat wing in sideslip. Behind the
 * trailing edge the wake carries no force.
 *
 * <p>Per half: the port half of a pair of flows is the mirror image of the starboard half, with a sign that is the
 * product of the two symmetries.
 */
final class LatticeForces {
  private final VortexLattice lattice;
  private final LatticePanels[] panels;
  private final int[] offset;
  private final double[][] gamma;
  private final boolean[] odd;
  /** Which flow's skewed wake each of the last flows belongs to. */
  private final int[] skewed;
  /** Velocity at the bound vortices: [flow][component][panel]. */
  private final double[][][] velocity;

  LatticeForces(VortexLattice lattice, LatticePanels[] panels, int[] offset, double[][] gamma, boolean[] odd,
      int[] skewed) {
    this.lattice = lattice;
    this.panels = panels;
    this.offset = offset;
    this.gamma = gamma;
    this.odd = odd;
    this.skewed = skewed;
    this.velocity = new double[gamma.length][3][offset[panels.length]];
  }

  /** Force and moment over ρ·V²: [surface][strengths of][velocity of][Fx, Fy, Fz, Mx, My, Mz]. */
  double[][][][] table() {
    induce();
    int flows = gamma.length;
    double[][][][] table = new double[panels.length][flows][flows][6];
    for (int s = 0; s < panels.length; s++) {
      for (int k = 0; k < flows; k++) {
        for (int l = 0; l < flows; l++) {
          double[] sum = table[s][k][l];
          bound(s, k, l, sum);
          if (l < LatticeAssembly.FLOWS) {
            legs(s, k, l, sum);
          }
          if (!panels[s].surface.isCentral()) {
            addMirrorImage(sum, odd[k] == odd[l] ? 1 : -1);
          }
        }
      }
    }
    return table;
  }

  private void induce() {
    LatticeInfluence influence = new LatticeInfluence(panels, offset, lattice.ground());
    int size = offset[panels.length];
    double[] v = new double[3];
    SkewedWake wake = new SkewedWake(panels, lattice.ground());
    int straight = gamma.length - skewed.length;
    double[][][] strips = new double[skewed.length][][];
    for (int m = 0; m < skewed.length; m++) {
      strips[m] = SkewedWake.strips(panels, offset, gamma[skewed[m]]);
    }
    for (int s = 0; s < panels.length; s++) {
      LatticePanels p = panels[s];
      for (int i = 0; i < p.size(); i++) {
        int strip = i % p.strips;
        double share = p.share(strip);
        double[] row = p.boundX[i / p.strips];
        double x = row[strip] + share * (row[strip + 1] - row[strip]);
        influence.at(s, x, p.stripY[strip], p.stripZ[strip]);
        wake.at(s, x, p.stripY[strip], p.stripZ[strip]);
        for (int k = 0; k < gamma.length; k++) {
          LatticeAssembly.onset(lattice.reference(), k, x, p.stripY[strip], p.stripZ[strip], v);
          if (k >= straight) {
            wake.velocity(strips[k - straight], v);
          }
          double sign = odd[k] ? -1 : 1;
          double vx = v[0];
          double vy = v[1];
          double vz = v[2];
          double[] g = gamma[k];
          for (int j = 0; j < size; j++) {
            vx += g[j] * (influence.nearX[j] + sign * influence.farX[j]);
            vy += g[j] * (influence.nearY[j] + sign * influence.farY[j]);
            vz += g[j] * (influence.nearZ[j] + sign * influence.farZ[j]);
          }
          velocity[k][0][offset[s] + i] = vx;
          velocity[k][1][offset[s] + i] = vy;
          velocity[k][2][offset[s] + i] = vz;
        }
      }
    }
  }

  private void bound(int s, int k, int l, double[] sum) {
    LatticePanels p = panels[s];
    LatticeReference ref = lattice.reference();
    for (int i = 0; i < p.size(); i++) {
      int j = i % p.strips;
      double[] row = p.boundX[i / p.strips];
      double g = gamma[k][offset[s] + i];
      double lx = row[j + 1] - row[j];
      double ly = p.edgeY[j + 1] - p.edgeY[j];
      double lz = p.edgeZ[j + 1] - p.edgeZ[j];
      double ux = velocity[l][0][offset[s] + i];
      double uy = velocity[l][1][offset[s] + i];
      double uz = velocity[l][2][offset[s] + i];
      apply(sum, (row[j] + row[j + 1]) / 2 - ref.x(), (p.edgeY[j] + p.edgeY[j + 1]) / 2,
          (p.edgeZ[j] + p.edgeZ[j + 1]) / 2 - ref.z(), g * (uy * lz - uz * ly), g * (uz * lx - ux * lz),
          g * (ux * ly - uy * lx));
    }
  }

  private void legs(int s, int k, int l, double[] sum) {
    LatticePanels p = panels[s];
    LatticeReference ref = lattice.reference();
    double[] v = new double[3];
    for (int i = 0; i < p.size(); i++) {
      int j = i % p.strips;
      double[] row = p.boundX[i / p.strips];
      double g = gamma[k][offset[s] + i];
      for (int end = 0; end <= 1; end++) {
        int e = j + end;
        double length = p.edgeTrailing[e] - row[e];
        double x = row[e] + length / 2;
        LatticeAssembly.onset(ref, l, x, p.edgeY[e], p.edgeZ[e], v);
        double along = v[1] * p.normalZ[j] - v[2] * p.normalY[j];
        double force = (end == 0 ? 1 : -1) * g * length * along;
        apply(sum, x - ref.x(), p.edgeY[e], p.edgeZ[e] - ref.z(), 0, force * p.normalY[j],
            force * p.normalZ[j]);
      }
    }
  }

  private static void apply(double[] sum, double x, double y, double z, double fx, double fy, double fz) {
    sum[0] += fx;
    sum[1] += fy;
    sum[2] += fz;
    sum[3] += y * fz - z * fy;
    sum[4] += z * fx - x * fz;
    sum[5] += x * fy - y * fx;
  }

  /** Adds the port half: mirrored when the symmetries agree, mirrored and reversed when they differ. */
  private static void addMirrorImage(double[] sum, double sign) {
    sum[0] += sign * sum[0];
    sum[1] -= sign * sum[1];
    sum[2] += sign * sum[2];
    sum[3] -= sign * sum[3];
    sum[4] += sign * sum[4];
    sum[5] -= sign * sum[5];
  }
}
