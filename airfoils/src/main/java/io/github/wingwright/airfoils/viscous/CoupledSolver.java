// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.potential.DisplacedFlow;
import io.github.wingwright.core.numerics.TriangularFactors;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Boundary layers, wake and outer flow solved together by Newton's method.
 *
 * <p>A boundary layer in a given pressure distribution has no solution past separation, so the layers are not marched
 * in a given flow. The unknowns are the mass defects m = V·δ* of all stations and the two places of transition. For given
 * defects the layer equations give the speeds at the edge ({@code V_layer(m)}, regular through separation); the outer flow
 * gives its own ({@code V_outer(m)}, linear in m); the solution is where they agree. Each iteration marches the equations
 * once ({@link LayerMarch}), eliminates thicknesses and speeds station by station ({@link LinearLayers}), and solves one
 * dense system for the defects.
 *
 * <p>Two guards make it robust. A pseudo-time term, in the direction in which defects relax physically, fades as the
 * residual falls. And transition starts a little behind laminar separation and moves with the iteration, at most a few
 * per cent of the chord at a time, as an unknown of the same system.
 *
 * <p>Close to the solution the factors of an earlier iteration serve again as long as they bring the residual down: such an
 * iteration takes a third of the time.
 *
 * <p>The first three stations from the stagnation point keep the similar layer of a stagnation point: a step behind at
 * first, as unknowns once the residual is small. One instance serves one thread; it keeps the last solution as the start
 * of the next.
 */
final class CoupledSolver extends LayerMarch {
  /** How much more slowly a solver goes that is told to be gentle. */
  private static final double LEAST_PIVOT = 1e-14;
  private static final double GENTLE = 0.35;
  /** Below this residual the pseudo-time term is left out; above, its time step is this many times its inverse. */
  private static final double FADED = 0.03;

  private static final double TIME_STEP = 4;
  /** Below this residual the stations at the stagnation point are unknowns too. */
  private static final double TIGHT = 0.1;
  /** Former factors serve after a change below this, if made at a residual below that, if the residual falls by this. */
  private static final double SMALL_CHANGE = 0.1;

  private static final double FIT_RESIDUAL = 0.3;
  private static final double FALL = 0.6;
  /** The solution is reached when a step changes no thickness by more than this share. */
  private static final double TOLERANCE = 3e-4;
  /** How often transition may leave over the trailing edge before it is left there. */
  private static final int MOST_EXITS = 2;

  private final double[] trip = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
  private final int[] exits = new int[2];
  private final boolean[] free = new boolean[2];
  private final double[][] matrix;
  private final double[][] onset;
  private final double[] right;
  private final double[] dm;
  private double pace = 1;
  /** Share of the last step that was taken, and the change that it made. */
  private double taken;

  private double lastChange;
  private @Nullable TriangularFactors factors;
  private int factoredStagnation;
  private double factoredResidual;
  private final int[] factoredCell = new int[2];
  private final Prospect prospect = new Prospect(ViscousMethod.MOST_GENTLE);
  int iterations;
  /** Whether the last point was sought from a fresh start at full pace: another such start finds nothing new. */
  boolean startedAfresh;

  CoupledSolver(DisplacedFlow flow) {
    super(flow);
    int n = unknowns + 2;
    matrix = new double[n][n];
    onset = new double[2][n];
    right = new double[n];
    dm = new double[n];
  }

  /** Whether to go slowly: for cases that flutter at full pace. */
  void gentle(boolean slowly) {
    pace = slowly ? GENTLE : 1;
  }

  boolean isGentle() {
    return pace < 1;
  }

  /**
   * Iterates to the solution at one angle from the present state.
   *
   * @return whether it converged
   */
  boolean solve(double angle, double reynolds, Disturbance disturbance, int most) {
    equations = new LayerEquations(reynolds, disturbance.criticalAmplification());
    critical = disturbance.criticalAmplification();
    flow.undisplaced(angle, undisplaced);
    sign();
    outerSpeeds();
    Arrays.fill(exits, 0);
    factors = null;
    lastChange = 1;
    tight = false;
    prospect.startAgain();
    for (iterations = 1; iterations <= most; iterations++) {
      int before = stagnation;
      locateStagnation();
      if (stagnation != before) {
        outerSpeeds();
      }
      placeTrips(disturbance);
      order();
      double upper = transition[0];
      double lower = transition[1];
      double change = step(reynolds);
      if (!(change < Double.POSITIVE_INFINITY)) {
        return false;
      }
      // The ratio of two changes says what a further step would change.
      boolean foreseen = taken == 1 && change < 15 * TOLERANCE && change * change < 0.3 * TOLERANCE * lastChange;
      if (change < TOLERANCE || foreseen) {
        return true;
      }
      double moved = Math.max(Math.abs(transition[0] - upper), Math.abs(transition[1] - lower));
      if (prospect.isHopeless(change, residual, taken, moved)) {
        return false;
      }
      lastChange = change;
    }
    return false;
  }

  private void placeTrips(Disturbance disturbance) {
    for (int side = 0; side < 2; side++) {
      double x = side == 0 ? disturbance.upperTrip() : disturbance.lowerTrip();
      trip[side] = Double.POSITIVE_INFINITY;
      if (x <= 1) {
        int step = side == 0 ? -1 : 1;
        int k = side == 0 ? stagnation - STAGNATION_STATIONS : stagnation + 1 + STAGNATION_STATIONS;
        while (k > 1 && k < section - 2 && method.x(k) < x) {
          k += step;
        }
        // Between two nodes, so that the station in whose stretch it lies does not change from step to step.
        int before = k - step;
        double part = (x - method.x(before)) / (method.x(k) - method.x(before));
        part = Math.min(Math.max(part, 0.1), 0.9);
        trip[side] = distance(before) + part * (distance(k) - distance(before));
        transition[side] = Math.min(transition[side], trip[side]);
      }
    }
  }

  /** Solves the system and moves; gives the largest relative change, infinite if it broke down. */
  private double step(double reynolds) {
    TriangularFactors former = factors;
    if (former != null && taken == 1 && lastChange < SMALL_CHANGE && factoredResidual < FIT_RESIDUAL
        && stagnation == factoredStagnation) {
      double before = residual;
      march(false);
      boolean broken = mismatch();
      if (!broken && residual < FALL * before && Arrays.equals(cell, factoredCell)) {
        return advance(former, reynolds);
      }
    }
    tight = iterations > 1 && residual < TIGHT;
    march(true);
    if (mismatch()) {
      return Double.POSITIVE_INFINITY;
    }
    assemble();
    TriangularFactors fresh = new TriangularFactors(matrix, LEAST_PIVOT);
    factors = fresh;
    factoredStagnation = stagnation;
    factoredResidual = residual;
    System.arraycopy(cell, 0, factoredCell, 0, 2);
    return advance(fresh, reynolds);
  }

  private void assemble() {
    linear.columns(matrix, onset);
    for (int r = 0; r < unknowns; r++) {
      double[] row = matrix[r];
      int i = node[r];
      boolean upper = i <= stagnation;
      if (fixed[r]) {
        stagnationRow(row, r, i, upper ? 1 : -1);
      } else {
        addResponse(row, response[i], upper || i >= section ? 1 : -1);
      }
    }
    for (int side = 0; side < 2; side++) {
      int at = unknowns + side;
      free[side] = cell[side] >= 0 && residual < 0.5 && Math.abs(onset[side][at]) >= 1
          && !(transition[side] >= trip[side] && linear.onsetChange(side) < 0);
      if (free[side]) {
        System.arraycopy(onset[side], 0, matrix[at], 0, unknowns + 2);
      } else {
        Arrays.fill(matrix[at], 0);
        matrix[at][at] = 1;
      }
    }
    if (residual > FADED) {
      double relaxation = pace * Math.max(1, TIME_STEP * pace / residual);
      for (int r = 0; r < unknowns; r++) {
        if (!fixed[r]) {
          matrix[r][r] -= speed[node[r]] / (defect[node[r]] * relaxation);
        }
      }
    }
  }

  /** Adds a multiple of the answer of the outer flow at a node to the defects of all stations. */
  private void addResponse(double[] row, double[] answer, double factor) {
    for (int j = 0; j < stagnation; j++) {
      row[j] += factor * answer[stagnation - j];
    }
    for (int j = stagnation, k = stagnation + 1; j < unknowns; j++, k = k == section - 2 ? section : k + 1) {
      row[j] -= factor * answer[k];
    }
  }

  /** The defect of a station at the stagnation point goes with the root of speed times distance. */
  private void stagnationRow(double[] row, int r, int i, double sign) {
    Arrays.fill(row, 0);
    row[r] = 1;
    if (!tight) {
      return;
    }
    double target = defect[i] + fixedStep[r];
    addResponse(row, response[i], 0.5 * target / speed[i] * sign);
    double first = outer[stagnation];
    double second = outer[stagnation + 1];
    double drop = first - second;
    if (drop > 1e-9 && first > -drop && first < 2 * drop) {
      double panel = place[stagnation + 1] - place[stagnation];
      double byPlace = 0.5 * target / distance(i) * sign * panel / (drop * drop);
      addResponse(row, response[stagnation], -byPlace * second);
      addResponse(row, response[stagnation + 1], byPlace * first);
    }
  }

  /** Right sides for the present residuals; whether they broke down. */
  private boolean mismatch() {
    Arrays.fill(dm, 0);
    linear.change(dm);
    for (int r = 0; r < unknowns; r++) {
      if (fixed[r]) {
        right[r] = fixedStep[r];
        continue;
      }
      int i = node[r];
      double wanted = i <= stagnation || i >= section ? outer[i] : -outer[i];
      right[r] = wanted - speed[i] - linear.speedChange[r];
      residual = Math.max(residual, Math.abs(wanted - speed[i]));
    }
    for (int side = 0; side < 2; side++) {
      right[unknowns + side] = -linear.onsetChange(side);
    }
    return !(residual < 1e6);
  }

  private double advance(TriangularFactors system, double reynolds) {
    for (int side = 0; side < 2; side++) {
      if (!free[side]) {
        right[unknowns + side] = 0;
      }
    }
    system.solve(right, dm);
    linear.change(dm);
    double[] ft = linear.thetaChange;
    double[] fv = linear.speedChange;
    double part = 1;
    for (int side = 0; side < 2; side++) {
      part = Math.min(part, pace * LONGEST_STEP / Math.abs(dm[unknowns + side]));
    }
    for (int r = 0; r < unknowns; r++) {
      if (!fixed[r]) {
        int i = node[r];
        double most = Math.max(Math.abs(ft[r]) / theta[i] / 0.5,
            Math.max(Math.abs(fv[r]) / (speed[i] + 0.002) / 0.5, Math.abs(dm[r]) / defect[i] / 0.6));
        part = Math.min(part, 1 / most);
      }
    }
    if (!(part > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    for (int r = 0; r < unknowns; r++) {
      part = fixed[r] ? part : keepShape(node[r], ft[r], fv[r], dm[r], part);
    }
    taken = part;
    double change = 0;
    for (int r = 0; r < unknowns; r++) {
      int i = node[r];
      if (fixed[r]) {
        defect[i] = Math.max(defect[i] + (tight ? part : 1) * dm[r], 0.1 * defect[i]);
        continue;
      }
      theta[i] += part * ft[r];
      speed[i] = Math.max(speed[i] + part * fv[r], 1e-4);
      defect[i] = Math.max(defect[i] + part * dm[r], 1.001 * theta[i] * speed[i]);
      change = Math.max(change,
          Math.max(Math.abs(ft[r]) / theta[i], Math.abs(dm[r]) / (defect[i] + 0.03 / Math.sqrt(reynolds))));
    }
    copyEnd(0, 1);
    copyEnd(section - 1, section - 2);
    sign();
    outerSpeeds();
    return Math.max(change, moveTransition(part));
  }

  /** Shortens the step until the shape factor of a station keeps a sane value. */
  private double keepShape(int i, double t, double v, double m, double step) {
    double before = shape(i) - 1;
    double part = step;
    for (int z = 0; z < 40; z++) {
      double tn = theta[i] + part * t;
      double vn = speed[i] + part * v;
      double mn = defect[i] + part * m;
      double after = mn / (tn * vn) - 1;
      if (tn > 0 && vn > 0 && mn > 0 && after > 0.5 * before && after < 2 * before + 0.3) {
        break;
      }
      part *= 0.7;
    }
    return part;
  }

  private void copyEnd(int end, int from) {
    defect[end] = defect[from];
    theta[end] = theta[from];
    speed[end] = speed[from];
    carried[end] = carried[from];
    turbulent[end] = turbulent[from];
  }

  private double moveTransition(double part) {
    double change = 0;
    for (int side = 0; side < 2; side++) {
      double end = end(side);
      double before = transition[side];
      double gap;
      if (exits[side] >= MOST_EXITS) {
        // With turbulence in the last panel only, waves just do not grow enough; without it they just do. The
        // layer counts as laminar then.
        transition[side] = end + FURTHEST;
        continue;
      }
      if (free[side]) {
        gap = dm[unknowns + side];
        transition[side] = Math.max(before + part * gap, 0.005);
        if (transition[side] > end) {
          transition[side] = end + FURTHEST;
          exits[side]++;
        }
      } else {
        double wanted = reach[side];
        if (Double.isNaN(wanted)) {
          wanted = lastGrowth[side] > 0.5
              ? Math.min(before, end) + (critical - lastAmplification[side]) / lastGrowth[side]
              : Double.POSITIVE_INFINITY;
        }
        gap = Math.min(Math.min(wanted, end + FURTHEST), trip[side]) - before;
        if (residual < 0.3) {
          transition[side] = before + pace * Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, 0.7 * gap));
        }
      }
      transition[side] = Math.min(transition[side], trip[side]);
      if (transition[side] < trip[side] || gap < 0) {
        change = Math.max(change, Math.abs(gap));
      }
    }
    return change;
  }
}
