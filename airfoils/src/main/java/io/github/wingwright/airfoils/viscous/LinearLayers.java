// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import java.util.Arrays;

/**
 * The layers made linear about a state: how thickness, speed and carried number of each station follow from the station
 * before it, the defects of both and a transition between them.
 *
 * <p>An equation between two stations knows nothing of the others, so a station keeps eighteen numbers. From these come,
 * station by station, the changes for given changes of the unknowns ({@link #change}), or the derivatives of all speeds with
 * respect to all unknowns ({@link #columns}). Columns: one for each station in the order of the march, then the two
 * transitions.
 */
final class LinearLayers {
  private static final int LINK = 18;
  private static final int SPEED = 6;
  private static final int CARRIED = 12;

  private final int unknowns;
  private final double[] link;
  /** Inverse of the derivatives of the two residuals with respect to thickness and speed, and the carried row. */
  private final double[] inverse;
  /** What the residuals themselves contribute. */
  private final double[] thetaGap;

  private final double[] speedGap;
  private final double[] carriedGap;
  private final double[][] onset = new double[2][LayerEquations.INPUTS];
  private final double[] onsetGap = new double[2];
  private final int[] onsetStation = {-1, -1};
  private int lowerStart;
  private int wakeStart;
  /** Changes of thickness and speed of the last {@link #change}. */
  final double[] thetaChange;

  final double[] speedChange;
  private final double[] carriedChange;
  private final double[] onsetChange = new double[2];
  private final double[][] columns;
  private final double[] zeros;

  // The join of both sides to the wake.
  private double joinA;
  private double joinB;
  private double joinSpeed;
  private double speedA;
  private double speedB;
  private double thetaA;
  private double thetaB;
  private double carriedA;
  private double carriedB;
  private double joinCarried;
  private double liveA;
  private double liveB;
  private double pTheta;
  private double pSpeed;
  private double pDefect;
  private double pCarried;

  LinearLayers(int unknowns) {
    this.unknowns = unknowns;
    link = new double[unknowns * LINK];
    inverse = new double[unknowns * SPEED];
    thetaGap = new double[unknowns];
    speedGap = new double[unknowns];
    carriedGap = new double[unknowns];
    thetaChange = new double[unknowns];
    speedChange = new double[unknowns];
    carriedChange = new double[unknowns];
    columns = new double[12][unknowns + 2];
    zeros = new double[unknowns + 2];
  }

  /** The order of stations: upper side from 0, then lower side, then wake. */
  void order(int lowerStart, int wakeStart) {
    this.lowerStart = lowerStart;
    this.wakeStart = wakeStart;
  }

  void forgetOnset() {
    Arrays.fill(onsetStation, -1);
  }

  /** A station of the stagnation point: thickness constant, speed in proportion to the defect. */
  void stagnation(int r, double speedPerDefect) {
    Arrays.fill(link, r * LINK, (r + 1) * LINK, 0);
    link[r * LINK + SPEED + 4] = speedPerDefect;
    thetaGap[r] = speedGap[r] = carriedGap[r] = 0;
  }

  /** Takes the derivatives of the equations that lead to a station. */
  void link(int r, double[][] jacobian) {
    double[] t2 = jacobian[LayerEquations.T2];
    double[] v2 = jacobian[LayerEquations.V2];
    double det = 1 / (t2[0] * v2[1] - v2[0] * t2[1]);
    int n = r * SPEED;
    inverse[n] = v2[1] * det;
    inverse[n + 1] = v2[0] * det;
    inverse[n + 2] = t2[0] * det;
    inverse[n + 3] = t2[1] * det;
    inverse[n + 4] = t2[2];
    inverse[n + 5] = v2[2];
    int k = r * LINK;
    input(k, n, jacobian[LayerEquations.T1]);
    input(k + 1, n, jacobian[LayerEquations.V1]);
    input(k + 2, n, jacobian[LayerEquations.M1]);
    input(k + 3, n, jacobian[LayerEquations.C1]);
    input(k + 4, n, jacobian[LayerEquations.M2]);
    input(k + 5, n, jacobian[LayerEquations.X]);
  }

  private void input(int k, int n, double[] d) {
    double t = -(d[0] * inverse[n] - d[1] * inverse[n + 1]);
    double v = -(inverse[n + 2] * d[1] - inverse[n + 3] * d[0]);
    link[k] = t;
    link[k + SPEED] = v;
    link[k + CARRIED] = d[2] + inverse[n + 4] * t + inverse[n + 5] * v;
  }

  /** Takes the residuals of the equations that lead to a station. */
  void gap(int r, double momentum, double shape) {
    int n = r * SPEED;
    double t = -(momentum * inverse[n] - shape * inverse[n + 1]);
    double v = -(inverse[n + 2] * shape - inverse[n + 3] * momentum);
    thetaGap[r] = t;
    speedGap[r] = v;
    carriedGap[r] = inverse[n + 4] * t + inverse[n + 5] * v;
  }

  /** Takes the derivatives of the onset of turbulence in the stretch that leads to a station. */
  void onset(int side, int r, double[][] jacobian) {
    onsetStation[side] = r;
    for (int v = 0; v < LayerEquations.INPUTS; v++) {
      onset[side][v] = jacobian[v][LayerEquations.ONSET];
    }
  }

  void onsetGap(int side, double value) {
    onsetGap[side] = value;
  }

  /** Takes the state in which both sides join. */
  void join(double[] theta, double[] speed, double[] defect, double[] carried, boolean[] turbulent, int a, int b) {
    thetaA = theta[a];
    thetaB = theta[b];
    speedA = speed[a];
    speedB = speed[b];
    joinA = defect[a] / speedA;
    joinB = defect[b] / speedB;
    joinSpeed = 0.5 * (speedA + speedB);
    liveA = turbulent[a] ? 1 : 0;
    liveB = turbulent[b] ? 1 : 0;
    carriedA = turbulent[a] ? carried[a] : LayerMarch.LAMINAR_ENTRAINMENT;
    carriedB = turbulent[b] ? carried[b] : LayerMarch.LAMINAR_ENTRAINMENT;
    joinCarried = (carriedA * thetaA + carriedB * thetaB) / (thetaA + thetaB);
  }

  private void joined(double ta, double va, double ma, double ca, double tb, double vb, double mb, double cb) {
    pTheta = ta + tb;
    pSpeed = 0.5 * (va + vb);
    pDefect = pSpeed * (joinA + joinB) + joinSpeed * ((ma - joinA * va) / speedA + (mb - joinB * vb) / speedB);
    pCarried = (liveA * ca * thetaA + liveB * cb * thetaB + carriedA * ta + carriedB * tb - joinCarried * pTheta)
        / (thetaA + thetaB);
  }

  /** Changes of all stations for changes of the unknowns, the residuals included. */
  void change(double[] unknown) {
    for (int r = 0; r < unknowns; r++) {
      if (r == 0 || r == lowerStart) {
        pTheta = pSpeed = pCarried = pDefect = 0;
      } else if (r == wakeStart) {
        int a = lowerStart - 1;
        int b = wakeStart - 1;
        joined(thetaChange[a], speedChange[a], unknown[a], carriedChange[a], thetaChange[b], speedChange[b],
            unknown[b], carriedChange[b]);
      } else {
        pTheta = thetaChange[r - 1];
        pSpeed = speedChange[r - 1];
        pDefect = unknown[r - 1];
        pCarried = carriedChange[r - 1];
      }
      int side = r < lowerStart ? 0 : 1;
      double x = unknown[unknowns + side];
      double m = unknown[r];
      int k = r * LINK;
      thetaChange[r] = thetaGap[r] + link[k] * pTheta + link[k + 1] * pSpeed + link[k + 2] * pDefect
          + link[k + 3] * pCarried + link[k + 4] * m + link[k + 5] * x;
      speedChange[r] = speedGap[r] + link[k + 6] * pTheta + link[k + 7] * pSpeed + link[k + 8] * pDefect
          + link[k + 9] * pCarried + link[k + 10] * m + link[k + 11] * x;
      carriedChange[r] = carriedGap[r] + link[k + 12] * pTheta + link[k + 13] * pSpeed + link[k + 14] * pDefect
          + link[k + 15] * pCarried + link[k + 16] * m + link[k + 17] * x;
      if (r == onsetStation[side]) {
        double[] o = onset[side];
        onsetChange[side] = onsetGap[side] + o[LayerEquations.T1] * pTheta + o[LayerEquations.V1] * pSpeed
            + o[LayerEquations.M1] * pDefect + o[LayerEquations.C1] * pCarried + o[LayerEquations.X] * x
            + o[LayerEquations.T2] * thetaChange[r] + o[LayerEquations.V2] * speedChange[r]
            + o[LayerEquations.M2] * m;
      }
    }
  }

  /** Amplification at a transition, less the critical one, after the last {@link #change}. */
  double onsetChange(int side) {
    return onsetChange[side];
  }

  /**
   * Writes the derivatives of the speeds.
   *
   * @param rows a row for each station, which receives a number for each unknown
   * @param onsetRows a row for each side, which receives the derivatives of the onset of turbulence
   */
  void columns(double[][] rows, double[][] onsetRows) {
    // Thickness, speed and carried number of the station before and the present one; the two ends are kept.
    double[] t = columns[0];
    double[] v = columns[1];
    double[] c = columns[2];
    double[] nt = columns[3];
    double[] nv = columns[4];
    double[] nc = columns[5];
    double[] endT = columns[6];
    double[] endV = columns[7];
    double[] endC = columns[8];
    double[] m = columns[9];
    for (int r = 0; r < unknowns; r++) {
      boolean wake = r >= wakeStart;
      int side = r < lowerStart ? 0 : 1;
      int from = side == 0 || wake ? 0 : lowerStart;
      if (r == 0 || r == lowerStart) {
        if (r == lowerStart) {
          System.arraycopy(t, 0, endT, 0, unknowns + 2);
          System.arraycopy(v, 0, endV, 0, unknowns + 2);
          System.arraycopy(c, 0, endC, 0, unknowns + 2);
        }
        for (int i = 0; i < 6; i++) {
          Arrays.fill(columns[i], 0);
        }
      }
      boolean first = r == wakeStart;
      if (first) {
        for (int j = 0; j < unknowns + 2; j++) {
          joined(endT[j], endV[j], j == lowerStart - 1 ? 1 : 0, endC[j], t[j], v[j], j == wakeStart - 1 ? 1 : 0, c[j]);
          t[j] = pTheta;
          v[j] = pSpeed;
          c[j] = pCarried;
          m[j] = pDefect;
        }
      }
      int k = r * LINK;
      combine(nt, t, v, c, link[k], link[k + 1], link[k + 3], from, r);
      combine(nv, t, v, c, link[k + 6], link[k + 7], link[k + 9], from, r);
      combine(nc, t, v, c, link[k + 12], link[k + 13], link[k + 15], from, r);
      for (int x = unknowns; x < unknowns + 2; x++) {
        combine(nt, t, v, c, link[k], link[k + 1], link[k + 3], x, x + 1);
        combine(nv, t, v, c, link[k + 6], link[k + 7], link[k + 9], x, x + 1);
        combine(nc, t, v, c, link[k + 12], link[k + 13], link[k + 15], x, x + 1);
      }
      if (first) {
        add(nt, m, link[k + 2]);
        add(nv, m, link[k + 8]);
        add(nc, m, link[k + 14]);
      } else if (r > from) {
        nt[r - 1] += link[k + 2];
        nv[r - 1] += link[k + 8];
        nc[r - 1] += link[k + 14];
      }
      nt[r] = link[k + 4];
      nv[r] = link[k + 10];
      nc[r] = link[k + 16];
      if (!wake) {
        nt[unknowns + side] += link[k + 5];
        nv[unknowns + side] += link[k + 11];
        nc[unknowns + side] += link[k + 17];
      }
      double[] row = rows[r];
      System.arraycopy(zeros, 0, row, 0, unknowns + 2);
      System.arraycopy(nv, from, row, from, r + 1 - from);
      row[unknowns] = nv[unknowns];
      row[unknowns + 1] = nv[unknowns + 1];
      if (!wake && r == onsetStation[side]) {
        onsetRow(onsetRows[side], onset[side], t, v, c, nt, nv, r, side);
      }
      double[] swap = t;
      t = nt;
      nt = swap;
      swap = v;
      v = nv;
      nv = swap;
      swap = c;
      c = nc;
      nc = swap;
    }
  }

  private void onsetRow(double[] row, double[] o, double[] t, double[] v, double[] c, double[] nt, double[] nv, int r,
      int side) {
    Arrays.fill(row, 0);
    for (int j = side == 0 ? 0 : lowerStart; j < unknowns + 2; j = j == r ? unknowns : j + 1) {
      double before = j == r ? 0
          : o[LayerEquations.T1] * t[j] + o[LayerEquations.V1] * v[j] + o[LayerEquations.C1] * c[j];
      row[j] = before + o[LayerEquations.T2] * nt[j] + o[LayerEquations.V2] * nv[j];
    }
    row[r - 1] += o[LayerEquations.M1];
    row[r] += o[LayerEquations.M2];
    row[unknowns + side] += o[LayerEquations.X];
  }

  private static void combine(double[] to, double[] t, double[] v, double[] c, double a, double b, double d, int from,
      int end) {
    for (int j = from; j < end; j++) {
      to[j] = a * t[j] + b * v[j] + d * c[j];
    }
  }

  private static void add(double[] to, double[] m, double factor) {
    for (int j = 0; j < to.length; j++) {
      to[j] += factor * m[j];
    }
  }
}
