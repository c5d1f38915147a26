// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A lattice that has been solved for every basic flow: any condition is now a small sum.
 *
 * <p>Immutable and safe to share between threads.
 */
public final class FactoredLattice {
  final VortexLattice lattice;
  final LatticePanels[] panels;
  final int[] offset;
  final List<LatticeControl> controls;
  final double[][] gamma;
  final boolean[] odd;
  /** Which flow's skewed wake each of the last flows belongs to. */
  final int[] skewed;
  /** [surface][strengths of][velocity of][Fx, Fy, Fz, Mx, My, Mz] over ρ·V². */
  final double[][][][] forces;
  /** The same, summed over the surfaces. */
  final double[][][] total;
  final WakeStrips wake;

  FactoredLattice(VortexLattice lattice, LatticePanels[] panels, int[] offset, List<LatticeControl> controls,
      double[][] gamma, boolean[] odd, int[] skewed, double[][][][] forces) {
    this.lattice = lattice;
    this.panels = panels;
    this.offset = offset;
    this.controls = controls;
    this.gamma = gamma;
    this.odd = odd;
    this.skewed = skewed;
    this.forces = forces;
    int flows = gamma.length;
    this.total = new double[flows][flows][6];
    for (double[][][] surface : forces) {
      for (int k = 0; k < flows; k++) {
        for (int l = 0; l < flows; l++) {
          for (int c = 0; c < 6; c++) {
            total[k][l][c] += surface[k][l][c];
          }
        }
      }
    }
    this.wake = WakeStrips.of(panels, lattice.ground());
  }

  /** The lattice this was made from. */
  public VortexLattice lattice() {
    return lattice;
  }

  /**
   * The flow at a condition.
   *
   * @param condition angles, rates and deflections
   */
  public LatticeSolution solve(LatticeCondition condition) {
    Objects.requireNonNull(condition, "condition");
    for (String name : condition.deflections().keySet()) {
      if (controls.stream().noneMatch(c -> c.name().equals(name))) {
        throw new IllegalArgumentException("control must be one of "
            + controls.stream().map(LatticeControl::name).toList() + ", was '" + name + "'");
      }
    }
    return new LatticeSolution(this, condition);
  }

  /** Lift slope C_Lα at zero angle of attack [1/rad]. */
  public double liftSlope() {
    return solve(LatticeCondition.at(0)).derivative(Coefficient.LIFT, Variable.ANGLE_OF_ATTACK);
  }

  /**
   * Neutral point, at zero angle of attack: moments about it, at the height of the moment reference, do not change
   * with the angle.
   *
   * @return x aft of the datum [m]
   */
  public double neutralPoint() {
    LatticeSolution level = solve(LatticeCondition.at(0));
    LatticeReference ref = lattice.reference();
    return ref.x() - ref.chord() * level.derivative(Coefficient.PITCHING_MOMENT, Variable.ANGLE_OF_ATTACK)
        / level.normalForceSlope();
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "factored lattice: slope %.4f per rad, neutral point %.4g m", liftSlope(),
        neutralPoint());
  }
}
