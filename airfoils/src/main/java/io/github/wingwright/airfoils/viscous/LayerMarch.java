// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.potential.DisplacedFlow;
import java.util.Arrays;

/**
 * One march along both surfaces and the wake, with the derivatives of every station's thickness and speed with respect to all
 * unknowns: the defects of all stations and the two places of transition.
 *
 * <p>Columns of a derivative: one for each station in the order of {@link #node}, then the two transitions, then what the
 * residuals of the equations themselves contribute.
 */
class LayerMarch extends LayerState {
  static final int STAGNATION_STATIONS = 3;

  private final int width;
  /** Nodes in the order of the march: upper side, lower side, wake. */
  final int[] node;

  final boolean[] fixed;
  final double[] fixedStep;
  final double[][] dTheta;
  final double[][] dSpeed;
  private final double[][] dCarried;
  /** Derivatives of the amplification at the place of transition. */
  final double[][] onset;
  /** Station in whose stretch a side turns turbulent; −1 if it stays laminar. */
  final int[] cell = new int[2];
  /** Where the amplification reaches the critical one ahead of the present transition; NaN if it does not. */
  final double[] reach = new double[2];

  final double[] lastAmplification = new double[2];
  final double[] lastGrowth = new double[2];
  double residual;
  double critical = 9;
  private int lowerStart;
  private int wakeStart;
  private final double[] in = new double[LayerEquations.INPUTS];
  private final double[] out = new double[LayerEquations.OUTPUTS];
  private final double[] moved = new double[LayerEquations.OUTPUTS];
  private final double[][] jacobian = new double[LayerEquations.INPUTS][LayerEquations.OUTPUTS];
  private final double[] wakeTheta;
  private final double[] wakeSpeed;
  private final double[] wakeDefect;
  private final double[] wakeCarried;

  LayerMarch(DisplacedFlow flow) {
    super(flow);
    width = unknowns + 3;
    node = new int[unknowns];
    fixed = new boolean[unknowns];
    fixedStep = new double[unknowns];
    dTheta = new double[unknowns][width];
    dSpeed = new double[unknowns][width];
    dCarried = new double[unknowns][width];
    onset = new double[2][width];
    wakeTheta = new double[width];
    wakeSpeed = new double[width];
    wakeDefect = new double[width];
    wakeCarried = new double[width];
  }

  void order() {
    int c = 0;
    for (int k = stagnation; k > 0; k--) {
      node[c++] = k;
    }
    lowerStart = c;
    for (int k = stagnation + 1; k < section - 1; k++) {
      node[c++] = k;
    }
    wakeStart = c;
    for (int k = section; k < total; k++) {
      node[c++] = k;
    }
    for (int r = 0; r < unknowns; r++) {
      fixed[r] = r < STAGNATION_STATIONS || (r >= lowerStart && r < lowerStart + STAGNATION_STATIONS);
    }
  }

  void march() {
    residual = 0;
    Arrays.fill(cell, -1);
    Arrays.fill(reach, Double.NaN);
    Arrays.fill(lastGrowth, 0);
    for (int r = 0; r < unknowns; r++) {
      Arrays.fill(dTheta[r], 0);
      Arrays.fill(dSpeed[r], 0);
      Arrays.fill(dCarried[r], 0);
      if (fixed[r]) {
        stagnationStation(r);
      } else if (r < wakeStart) {
        surfaceStation(r);
      } else {
        wakeStation(r);
      }
    }
  }

  private void stagnationStation(int r) {
    int k = node[r];
    double v = Math.max(Math.abs(outer[k]), 1e-4);
    speed[k] = v;
    theta[k] = equations.stagnationThickness(distance(k), v);
    carried[k] = 0;
    turbulent[k] = false;
    fixedStep[r] = LayerEquations.STAGNATION_SHAPE * theta[k] * v - defect[k];
  }

  private void load(int from, int to) {
    in[LayerEquations.T1] = theta[from];
    in[LayerEquations.V1] = speed[from];
    in[LayerEquations.M1] = defect[from];
    in[LayerEquations.C1] = carried[from];
    in[LayerEquations.T2] = theta[to];
    in[LayerEquations.V2] = speed[to];
    in[LayerEquations.M2] = defect[to];
  }

  private void surfaceStation(int r) {
    int side = r < lowerStart ? 0 : 1;
    int k = node[r];
    int p = node[r - 1];
    double s1 = distance(p);
    double s2 = distance(k);
    load(p, k);
    double x = transition[side];
    in[LayerEquations.X] = x;
    out[LayerEquations.ONSET] = 0;
    equations.surface(s1, s2, in, out);
    boolean here = s1 < x && s2 > x;
    turbulent[k] = s2 > x;
    carried[k] = out[LayerEquations.CARRIED];
    if (!turbulent[k]) {
      lastAmplification[side] = carried[k];
      lastGrowth[side] = (carried[k] - in[LayerEquations.C1]) / (s2 - s1);
      if (carried[k] > critical && Double.isNaN(reach[side])) {
        reach[side] = s1 + (critical - in[LayerEquations.C1]) / lastGrowth[side];
      }
    }
    differentiate(here, x + 1e-7 < s2 ? 1e-7 : -1e-7, () -> equations.surface(s1, s2, in, moved));
    propagate(r, dTheta[r - 1], dSpeed[r - 1], dCarried[r - 1], unit(r - 1), here ? unknowns + side : -1,
        r < lowerStart ? 0 : lowerStart);
    if (here) {
      cell[side] = r;
      onsetRow(r, side);
    }
  }

  /** Derivatives of the amplification at the place of transition. */
  private void onsetRow(int r, int side) {
    double[] row = onset[side];
    int o = LayerEquations.ONSET;
    for (int j = 0; j < width; j++) {
      double before = jacobian[LayerEquations.T1][o] * dTheta[r - 1][j]
          + jacobian[LayerEquations.V1][o] * dSpeed[r - 1][j]
          + jacobian[LayerEquations.C1][o] * dCarried[r - 1][j];
      row[j] = before + jacobian[LayerEquations.T2][o] * dTheta[r][j] + jacobian[LayerEquations.V2][o] * dSpeed[r][j];
    }
    row[r - 1] += jacobian[LayerEquations.M1][o];
    row[r] += jacobian[LayerEquations.M2][o];
    row[unknowns + side] += jacobian[LayerEquations.X][o];
    row[unknowns + 2] += out[o];
  }

  private double[] unit(int r) {
    Arrays.fill(wakeDefect, 0);
    wakeDefect[r] = 1;
    return wakeDefect;
  }

  private void wakeStation(int r) {
    int k = node[r];
    double ds;
    if (r == wakeStart) {
      int a = node[lowerStart - 1];
      int b = node[wakeStart - 1];
      joinSides(a, b, lowerStart - 1, wakeStart - 1);
      in[LayerEquations.T2] = theta[k];
      in[LayerEquations.V2] = speed[k];
      in[LayerEquations.M2] = defect[k];
      ds = place[k] - place[section - 1];
    } else {
      load(node[r - 1], k);
      ds = place[k] - place[node[r - 1]];
    }
    equations.wake(ds, in, out);
    carried[k] = out[LayerEquations.CARRIED];
    turbulent[k] = true;
    differentiate(false, 0, () -> equations.wake(ds, in, moved));
    if (r == wakeStart) {
      propagate(r, wakeTheta, wakeSpeed, wakeCarried, wakeDefect, -1, 0);
    } else {
      propagate(r, dTheta[r - 1], dSpeed[r - 1], dCarried[r - 1], unit(r - 1), -1, 0);
    }
  }

  /** The wake starts with the layers of both sides together. */
  private void joinSides(int a, int b, int ra, int rb) {
    double t = theta[a] + theta[b];
    double v = 0.5 * (speed[a] + speed[b]);
    double da = defect[a] / speed[a];
    double db = defect[b] / speed[b];
    double ca = turbulent[a] ? carried[a] : 0.01;
    double cb = turbulent[b] ? carried[b] : 0.01;
    in[LayerEquations.T1] = t;
    in[LayerEquations.V1] = v;
    in[LayerEquations.M1] = v * (da + db);
    in[LayerEquations.C1] = (ca * theta[a] + cb * theta[b]) / t;
    for (int j = 0; j < width; j++) {
      wakeTheta[j] = dTheta[ra][j] + dTheta[rb][j];
      wakeSpeed[j] = 0.5 * (dSpeed[ra][j] + dSpeed[rb][j]);
      double dma = j == ra ? 1 : 0;
      double dmb = j == rb ? 1 : 0;
      wakeDefect[j] = wakeSpeed[j] * (da + db)
          + v * ((dma - da * dSpeed[ra][j]) / speed[a] + (dmb - db * dSpeed[rb][j]) / speed[b]);
      double dca = turbulent[a] ? dCarried[ra][j] : 0;
      double dcb = turbulent[b] ? dCarried[rb][j] : 0;
      wakeCarried[j] = (dca * theta[a] + dcb * theta[b] + ca * dTheta[ra][j] + cb * dTheta[rb][j]
          - in[LayerEquations.C1] * wakeTheta[j]) / t;
    }
  }

  private void differentiate(boolean withTransition, double transitionStep, Runnable evaluate) {
    for (int v = 0; v < LayerEquations.INPUTS; v++) {
      double[] column = jacobian[v];
      if (v == LayerEquations.X && !withTransition) {
        Arrays.fill(column, 0);
        continue;
      }
      double q = in[v];
      double e = v == LayerEquations.X
          ? transitionStep
          : 1e-6 * Math.abs(q) + (v == LayerEquations.C1 ? 1e-7 : 1e-12);
      in[v] = q + e;
      moved[LayerEquations.ONSET] = 0;
      evaluate.run();
      in[v] = q;
      for (int o = 0; o < LayerEquations.OUTPUTS; o++) {
        column[o] = o == LayerEquations.ONSET && !withTransition ? 0 : (moved[o] - out[o]) / e;
      }
    }
  }

  /** Derivatives of a station's state from those of the station before it and the equations between. */
  private void propagate(
      int r, double[] pTheta, double[] pSpeed, double[] pCarried, double[] pDefect, int transitionColumn, int from) {
    double a = out[LayerEquations.MOMENTUM];
    double b = out[LayerEquations.SHAPE];
    residual = Math.max(residual, Math.max(Math.abs(a), Math.abs(b)));
    double[] t1 = jacobian[LayerEquations.T1];
    double[] v1 = jacobian[LayerEquations.V1];
    double[] m1 = jacobian[LayerEquations.M1];
    double[] c1 = jacobian[LayerEquations.C1];
    double[] x = jacobian[LayerEquations.X];
    double[] t2 = jacobian[LayerEquations.T2];
    double[] v2 = jacobian[LayerEquations.V2];
    double[] m2 = jacobian[LayerEquations.M2];
    double det = t2[0] * v2[1] - v2[0] * t2[1];
    double[] th = dTheta[r];
    double[] sp = dSpeed[r];
    double[] ca = dCarried[r];
    for (int j = from; j < width; j++) {
      if (j == r + 1) {
        j = unknowns;
      }
      double p = t1[0] * pTheta[j] + v1[0] * pSpeed[j] + m1[0] * pDefect[j] + c1[0] * pCarried[j];
      double q = t1[1] * pTheta[j] + v1[1] * pSpeed[j] + m1[1] * pDefect[j] + c1[1] * pCarried[j];
      double c = t1[2] * pTheta[j] + v1[2] * pSpeed[j] + m1[2] * pDefect[j] + c1[2] * pCarried[j];
      if (j == r) {
        p += m2[0];
        q += m2[1];
        c += m2[2];
      } else if (j == transitionColumn) {
        p += x[0];
        q += x[1];
        c += x[2];
      } else if (j == unknowns + 2) {
        p += a;
        q += b;
      }
      th[j] = -(p * v2[1] - q * v2[0]) / det;
      sp[j] = -(t2[0] * q - t2[1] * p) / det;
      ca[j] = c + t2[2] * th[j] + v2[2] * sp[j];
    }
  }
}
