// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.potential.DisplacedFlow;
import java.util.Arrays;

/**
 * One march along both surfaces and the wake: the residuals of all equations, and if wanted their derivatives, station by
 * station.
 */
class LayerMarch extends LayerState {
  static final int STAGNATION_STATIONS = 3;
  /** Stations in which a small shift of the stagnation point is a large change. */
  private static final int YOUNG_STATIONS = STAGNATION_STATIONS + 2;

  /** Entrainment with which a layer that is still laminar at the trailing edge enters the wake. */
  static final double LAMINAR_ENTRAINMENT = 0.01;

  private static final double[][] NONE = {};

  /** Nodes in the order of the march: upper side, lower side, wake. */
  final int[] node;

  final boolean[] fixed;
  final double[] fixedStep;
  final LinearLayers linear;
  /** Station in whose stretch a side turns turbulent; −1 if it stays laminar. */
  final int[] cell = new int[2];
  /** Where the amplification reaches the critical one ahead of the present transition; NaN if it does not. */
  final double[] reach = new double[2];

  final double[] lastAmplification = new double[2];
  final double[] lastGrowth = new double[2];
  /** Whether the stations at the stagnation point are unknowns, too. */
  boolean tight;
  /** Largest residual; that of the first stations behind the stagnation point counts a tenth. */
  double residual;
  double critical = 9;
  private int lowerStart;
  private int wakeStart;
  private final double[] in = new double[LayerEquations.INPUTS];
  private final double[] out = new double[LayerEquations.OUTPUTS];
  private final double[][] jacobian = new double[LayerEquations.INPUTS][LayerEquations.OUTPUTS];

  LayerMarch(DisplacedFlow flow) {
    super(flow);
    node = new int[unknowns];
    fixed = new boolean[unknowns];
    fixedStep = new double[unknowns];
    linear = new LinearLayers(unknowns);
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

  /** Evaluates all equations in the present state; takes their derivatives too, or keeps the former ones. */
  void march(boolean differentiate) {
    residual = 0;
    Arrays.fill(cell, -1);
    Arrays.fill(reach, Double.NaN);
    Arrays.fill(lastGrowth, 0);
    if (differentiate) {
      linear.order(lowerStart, wakeStart);
      linear.forgetOnset();
    }
    double[][] derivatives = differentiate ? jacobian : NONE;
    for (int r = 0; r < unknowns; r++) {
      if (fixed[r]) {
        stagnationStation(r);
        if (differentiate) {
          linear.stagnation(r, tight ? speed[node[r]] / (defect[node[r]] + fixedStep[r]) : 0);
        }
        continue;
      }
      if (r < wakeStart) {
        surfaceStation(r, derivatives);
      } else {
        wakeStation(r, derivatives);
      }
      if (differentiate) {
        linear.link(r, jacobian);
      }
      double a = out[LayerEquations.MOMENTUM];
      double b = out[LayerEquations.SHAPE];
      double both = Math.max(Math.abs(a), Math.abs(b));
      boolean young = r < YOUNG_STATIONS || (r >= lowerStart && r < lowerStart + YOUNG_STATIONS);
      residual = Math.max(residual, young ? 0.1 * both : both);
      linear.gap(r, a, b);
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

  private void surfaceStation(int r, double[][] derivatives) {
    int side = r < lowerStart ? 0 : 1;
    int k = node[r];
    int p = node[r - 1];
    double s1 = distance(p);
    double s2 = distance(k);
    load(p, k);
    double x = transition[side];
    in[LayerEquations.X] = x;
    equations.surface(s1, s2, in, out, derivatives);
    turbulent[k] = s2 > x;
    carried[k] = out[LayerEquations.CARRIED];
    if (!turbulent[k]) {
      lastAmplification[side] = carried[k];
      lastGrowth[side] = (carried[k] - in[LayerEquations.C1]) / (s2 - s1);
      if (carried[k] > critical && Double.isNaN(reach[side])) {
        reach[side] = s1 + (critical - in[LayerEquations.C1]) / lastGrowth[side];
      }
    }
    if (s1 < x && s2 > x) {
      cell[side] = r;
      if (derivatives.length > 0) {
        linear.onset(side, r, derivatives);
      }
      linear.onsetGap(side, out[LayerEquations.ONSET]);
    }
  }

  private void wakeStation(int r, double[][] derivatives) {
    int k = node[r];
    double ds;
    if (r == wakeStart) {
      joinSides(node[lowerStart - 1], node[wakeStart - 1]);
      if (derivatives.length > 0) {
        linear.join(theta, speed, defect, carried, turbulent, node[lowerStart - 1], node[wakeStart - 1]);
      }
      in[LayerEquations.T2] = theta[k];
      in[LayerEquations.V2] = speed[k];
      in[LayerEquations.M2] = defect[k];
      ds = place[k] - place[section - 1];
    } else {
      load(node[r - 1], k);
      ds = place[k] - place[node[r - 1]];
    }
    equations.wake(ds, in, out, derivatives);
    carried[k] = out[LayerEquations.CARRIED];
    turbulent[k] = true;
  }

  /** The wake starts with the layers of both sides together. */
  private void joinSides(int a, int b) {
    double t = theta[a] + theta[b];
    double v = 0.5 * (speed[a] + speed[b]);
    double ca = turbulent[a] ? carried[a] : LAMINAR_ENTRAINMENT;
    double cb = turbulent[b] ? carried[b] : LAMINAR_ENTRAINMENT;
    in[LayerEquations.T1] = t;
    in[LayerEquations.V1] = v;
    in[LayerEquations.M1] = v * (defect[a] / speed[a] + defect[b] / speed[b]);
    in[LayerEquations.C1] = (ca * theta[a] + cb * theta[b]) / t;
  }
}
