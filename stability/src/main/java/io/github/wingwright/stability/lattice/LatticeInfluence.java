// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.Arrays;

/**
 * Velocities of all panels at one point, of the given halves ("near") and of their mirror images ("far").
 *
 * <p>An image is never built: the flow of a mirrored vortex at a point is the mirrored flow of the vortex at the
 * mirrored point. A symmetric condition adds near and far, an antisymmetric one subtracts them. A surface in the plane
 * of symmetry has no far part. Ground is a second reflection, added to both.
 */
final class LatticeInfluence {
  private final LatticePanels[] panels;
  private final int[] offset;
  private final double ground;
  private final HorseshoeKernel.Workspace work;

  final double[] nearX;
  final double[] nearY;
  final double[] nearZ;
  final double[] farX;
  final double[] farY;
  final double[] farZ;

  LatticeInfluence(LatticePanels[] panels, int[] offset, double ground) {
    this.panels = panels;
    this.offset = offset;
    this.ground = ground;
    int size = offset[panels.length];
    int edges = 0;
    for (LatticePanels p : panels) {
      edges = Math.max(edges, p.strips + 1);
    }
    work = new HorseshoeKernel.Workspace(edges);
    nearX = new double[size];
    nearY = new double[size];
    nearZ = new double[size];
    farX = new double[size];
    farY = new double[size];
    farZ = new double[size];
  }

  /** Evaluates at a point that belongs to surface number {@code home}. */
  void at(int home, double x, double y, double z) {
    for (double[] v : new double[][] {nearX, nearY, nearZ, farX, farY, farZ}) {
      Arrays.fill(v, 0);
    }
    for (int s = 0; s < panels.length; s++) {
      LatticePanels p = panels[s];
      boolean smooth = s != home;
      boolean mirrored = !p.surface.isCentral();
      add(p, s, x, y, z, 1, smooth, mirrored);
      if (ground > Double.NEGATIVE_INFINITY) {
        add(p, s, x, y, 2 * ground - z, -1, smooth, mirrored);
      }
    }
  }

  private void add(LatticePanels p, int s, double x, double y, double z, double mirrorZ, boolean smooth,
      boolean mirrored) {
    HorseshoeKernel.add(p, x, y, z, 1, mirrorZ, 1, smooth, work, nearX, nearY, nearZ, offset[s]);
    if (mirrored) {
      HorseshoeKernel.add(p, x, -y, z, -1, mirrorZ, 1, smooth, work, farX, farY, farZ, offset[s]);
    }
  }
}
