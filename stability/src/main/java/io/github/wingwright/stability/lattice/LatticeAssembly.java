// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.numerics.TriangularFactors;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Builds the systems of a lattice and reduces them to what any condition needs.
 *
 * <p>The onset flow at a point R, for airspeed one, is a sum of six basic flows:
 * <pre>{@code
 * 0  along x     (1, 0, 0)                       symmetric
 * 1  upward      (0, 0, 1)                       symmetric
 * 2  pitching    (−Δz, 0, Δx)·2/c̄                symmetric        nose-up rate, per q·c̄/(2V)
 * 3  sideways    (0, 1, 0)                       antisymmetric
 * 4  rolling     (0, −Δz, Δy)·2/b                antisymmetric    starboard-down rate, per p·b/(2V)
 * 5  yawing      (−Δy, Δx, 0)·2/b                antisymmetric    nose-to-starboard rate, per r·b/(2V)
 * }</pre>
 * with (Δx, Δy, Δz) from the moment reference. Each control adds one that has no onset flow, only a change of the flow
 * condition; each symmetric one brings another that counts with the product of its weight and the sine of the sideslip, for
 * its {@link SkewedWake}.
 */
final class LatticeAssembly {
  static final int ALONG = 0;
  static final int UPWARD = 1;
  static final int PITCHING = 2;
  static final int SIDEWAYS = 3;
  static final int ROLLING = 4;
  static final int YAWING = 5;
  static final int FLOWS = 6;

  /** Least chord of a strip over its width. */
  private static final double NEEDLE = 1e-6;

  private static final double LEAST_PIVOT = 1e-12;

  private final VortexLattice lattice;
  private final LatticeReference ref;
  private final LatticePanels[] panels;
  private final int[] offset;
  private final int size;
  private final int[] symmetricColumn;
  private final int symmetricSize;

  LatticeAssembly(VortexLattice lattice) {
    this.lattice = lattice;
    this.ref = lattice.reference();
    List<LatticeSurface> surfaces = lattice.surfaces();
    panels = new LatticePanels[surfaces.size()];
    offset = new int[panels.length + 1];
    int mirrored = 0;
    for (int s = 0; s < panels.length; s++) {
      panels[s] = new LatticePanels(surfaces.get(s));
      offset[s + 1] = offset[s] + panels[s].size();
    }
    size = offset[panels.length];
    symmetricColumn = new int[size];
    for (int s = 0; s < panels.length; s++) {
      for (int i = offset[s]; i < offset[s + 1]; i++) {
        symmetricColumn[i] = panels[s].surface.isCentral() ? -1 : mirrored++;
      }
    }
    symmetricSize = mirrored;
    refuseNeedles();
    LatticeOverlap.refuse(panels);
  }

  /** A strip without chord has its control point on its own vortex: the equations would answer, with nonsense. */
  private void refuseNeedles() {
    for (LatticePanels p : panels) {
      for (int j = 0; j < p.strips; j++) {
        if (p.stripChord[j] < NEEDLE * p.stripWidth[j]) {
          throw new IllegalStateException(String.format(Locale.ROOT,
              "lattice is singular: strip %d of surface '%s' has hardly any chord, %.3g m over a width of %.3g m", j + 1,
              p.surface.name(), p.stripChord[j], p.stripWidth[j]));
        }
      }
    }
  }

  FactoredLattice assemble() {
    TriangularFactors[] factors = factor();
    List<LatticeControl> controls = new ArrayList<>();
    List<Boolean> antisymmetric = new ArrayList<>(List.of(false, false, false, true, true, true));
    List<double[]> strengths = new ArrayList<>();
    for (int flow = 0; flow < FLOWS; flow++) {
      strengths.add(solve(factors, antisymmetric.get(flow), onsetCondition(flow)));
    }
    for (int s = 0; s < panels.length; s++) {
      for (LatticeControl c : panels[s].surface.controls()) {
        boolean odd = c.antisymmetric() || panels[s].surface.isCentral();
        controls.add(c);
        antisymmetric.add(odd);
        strengths.add(solve(factors, odd, controlCondition(s, c)));
      }
    }
    List<Integer> skewOf = new ArrayList<>();
    int straight = strengths.size();
    for (int k = 0; k < straight; k++) {
      if (!antisymmetric.get(k)) {
        skewOf.add(k);
        antisymmetric.add(true);
        strengths.add(solve(factors, true, skewCondition(strengths.get(k))));
      }
    }
    double[][] gamma = strengths.toArray(double[][]::new);
    boolean[] odd = new boolean[gamma.length];
    for (int k = 0; k < odd.length; k++) {
      odd[k] = antisymmetric.get(k);
    }
    int[] skewed = skewOf.stream().mapToInt(Integer::intValue).toArray();
    double[][][][] forces = new LatticeForces(lattice, panels, offset, gamma, odd, skewed).table();
    return new FactoredLattice(lattice, panels, offset, List.copyOf(controls), gamma, odd, skewed, forces);
  }

  /** What the vortices must add so that the flow of a wake that drifts with the sideslip follows the surfaces. */
  private double[] skewCondition(double[] gamma) {
    double[] wash = new double[size];
    SkewedWake wake = new SkewedWake(panels, lattice.ground());
    double[][] strips = SkewedWake.strips(panels, offset, gamma);
    for (int s = 0; s < panels.length; s++) {
      LatticePanels p = panels[s];
      for (int i = 0; i < p.size(); i++) {
        int strip = i % p.strips;
        double[] v = new double[3];
        wake.at(s, p.controlX[i], p.stripY[strip], p.stripZ[strip]);
        wake.velocity(strips, v);
        wash[offset[s] + i] = -v[1] * p.normalY[strip] - v[2] * p.normalZ[strip];
      }
    }
    return wash;
  }

  private TriangularFactors[] factor() {
    double[][] even = new double[symmetricSize][symmetricSize];
    double[][] odd = new double[size][size];
    LatticeInfluence influence = new LatticeInfluence(panels, offset, lattice.ground());
    for (int s = 0; s < panels.length; s++) {
      LatticePanels p = panels[s];
      for (int i = 0; i < p.size(); i++) {
        int strip = i % p.strips;
        influence.at(s, p.controlX[i], p.stripY[strip], p.stripZ[strip]);
        int row = offset[s] + i;
        double ny = p.normalY[strip];
        double nz = p.normalZ[strip];
        boolean central = p.surface.isCentral();
        double[] oddRow = odd[row];
        double[] evenRow = central ? new double[0] : even[symmetricColumn[row]];
        for (int j = 0; j < size; j++) {
          double near = influence.nearY[j] * ny + influence.nearZ[j] * nz;
          double far = influence.farY[j] * ny + influence.farZ[j] * nz;
          oddRow[j] = near - far;
          if (!central && symmetricColumn[j] >= 0) {
            evenRow[symmetricColumn[j]] = near + far;
          }
        }
        loseSlope(p, offset[s], strip, oddRow, null);
        if (!central) {
          loseSlope(p, offset[s], strip, evenRow, symmetricColumn);
        }
      }
    }
    return new TriangularFactors[] {factors(even, false), factors(odd, true)};
  }

  /** The strip meets less angle than the flow offers, in proportion to its own circulation: see sectionLiftSlope. */
  private static void loseSlope(LatticePanels p, int first, int strip, double[] row, int @Nullable [] columns) {
    double lost = 2 * p.surface.slopeLoss() / p.stripChord[strip];
    if (lost != 0) {
      for (int k = 0; k < p.rows; k++) {
        int column = first + k * p.strips + strip;
        row[columns == null ? column : columns[column]] -= lost;
      }
    }
  }

  private TriangularFactors factors(double[][] matrix, boolean antisymmetric) {
    try {
      return new TriangularFactors(matrix, LEAST_PIVOT);
    } catch (TriangularFactors.Singular e) {
      int panel = e.place();
      for (int i = 0; !antisymmetric && i < size; i++) {
        if (symmetricColumn[i] == e.place()) {
          panel = i;
        }
      }
      int s = 0;
      while (offset[s + 1] <= panel) {
        s++;
      }
      throw new IllegalStateException(String.format(Locale.ROOT,
          "lattice is singular: panel %d of surface '%s' does nothing that other panels do not",
          panel - offset[s] + 1, panels[s].surface.name()), e);
    }
  }

  private double[] solve(TriangularFactors[] factors, boolean antisymmetric, double[] normalWash) {
    if (antisymmetric) {
      return factors[1].solve(normalWash);
    }
    double[] gamma = new double[size];
    if (symmetricSize == 0) {
      return gamma;
    }
    double[] right = new double[symmetricSize];
    for (int i = 0; i < size; i++) {
      if (symmetricColumn[i] >= 0) {
        right[symmetricColumn[i]] = normalWash[i];
      }
    }
    double[] x = factors[0].solve(right);
    for (int i = 0; i < size; i++) {
      gamma[i] = symmetricColumn[i] >= 0 ? x[symmetricColumn[i]] : 0;
    }
    return gamma;
  }

  /** What the vortices must add to the normal velocity so that this flow follows the surfaces. */
  private double[] onsetCondition(int flow) {
    double[] wash = new double[size];
    double[] v = new double[3];
    for (int s = 0; s < panels.length; s++) {
      LatticePanels p = panels[s];
      for (int i = 0; i < p.size(); i++) {
        int strip = i % p.strips;
        onset(ref, flow, p.controlX[i], p.stripY[strip], p.stripZ[strip], v);
        wash[offset[s] + i] = v[0] * p.slope[i] - v[1] * p.normalY[strip] - v[2] * p.normalZ[strip];
      }
    }
    return wash;
  }

  private double[] controlCondition(int s, LatticeControl c) {
    double[] wash = new double[size];
    LatticePanels p = panels[s];
    double sign = p.surface.isCentral() ? 1 : -1;
    for (int k = 0; k < p.rows; k++) {
      double share = p.movedShare(k, c.hinge());
      for (int j = 0; j < p.strips; j++) {
        double place = p.stripPlace[j];
        if (place > c.from() && place < c.to()) {
          wash[offset[s] + k * p.strips + j] = sign * share;
        }
      }
    }
    return wash;
  }

  /** Velocity of a basic flow at a point. */
  static void onset(LatticeReference ref, int flow, double x, double y, double z, double[] v) {
    double dx = x - ref.x();
    double dz = z - ref.z();
    v[0] = 0;
    v[1] = 0;
    v[2] = 0;
    switch (flow) {
      case ALONG -> v[0] = 1;
      case UPWARD -> v[2] = 1;
      case PITCHING -> {
        v[0] = -dz * 2 / ref.chord();
        v[2] = dx * 2 / ref.chord();
      }
      case SIDEWAYS -> v[1] = 1;
      case ROLLING -> {
        v[1] = -dz * 2 / ref.span();
        v[2] = y * 2 / ref.span();
      }
      case YAWING -> {
        v[0] = -y * 2 / ref.span();
        v[1] = dx * 2 / ref.span();
      }
      default -> { }
    }
  }
}
