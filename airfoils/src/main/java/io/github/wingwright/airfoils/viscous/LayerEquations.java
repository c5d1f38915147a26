// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

/**
 * The equations of a boundary layer between two stations, as residuals of momentum and shape.
 *
 * <p>The state of a station is its momentum thickness θ, edge speed V and mass defect m = V·δ*; a fourth number is carried
 * along: the amplification exponent in a laminar layer, the rate of entrainment in a turbulent one. With H = m/(V·θ):
 *
 * <pre>{@code
 * momentum:  dθ = ½·cf·ds − (H + 2)·θ·d(ln V)
 * laminar:   dH* = (2·cD − ½·cf·H*)/θ·ds + (H − 1)·H*·d(ln V)         kinetic energy
 * turbulent: dH1 = (CE − ½·cf·H1)/θ·ds + (H + 1)·H1·d(ln V)           entrainment
 * }</pre>
 * The entrainment equation is written for ln(H − 1), in which it is well behaved from wakes (H near 1) to separated
 * layers. Transition at a place X between stations inserts a station there: laminar up to X, turbulent from it.
 */
final class LayerEquations {
  /** Places in the vector of inputs: upstream, transition, downstream. */
  static final int T1 = 0;

  static final int V1 = 1;
  static final int M1 = 2;
  static final int C1 = 3;
  static final int X = 4;
  static final int T2 = 5;
  static final int V2 = 6;
  static final int M2 = 7;
  static final int INPUTS = 8;
  /** Places in the vector of results. */
  static final int MOMENTUM = 0;

  static final int SHAPE = 1;
  static final int CARRIED = 2;
  /** Amplification at X less the critical one; only between the stations where transition lies. */
  static final int ONSET = 3;

  static final int OUTPUTS = 4;

  /**
   * Entrainment just after transition, as a share of its equilibrium value: young turbulence mixes less. A choice of
   * this library; between 0.5 and 1 the section drag changes by 5 %.
   */
  private static final double YOUNG = 0.7;

  private final double viscosity;
  private final double critical;
  private final LaminarStep laminar;
  private final TurbulentStep turbulent;
  private final double[] at = new double[3];
  private final double[] moved = new double[OUTPUTS];

  LayerEquations(double reynolds, double critical) {
    this.viscosity = 1 / reynolds;
    this.critical = critical;
    laminar = new LaminarStep(viscosity);
    turbulent = new TurbulentStep(viscosity);
  }

  /** Similar layer at a stagnation point: θ = 0.29234·√(ν·s/V), H = 2.2162 (Hiemenz). */
  double stagnationThickness(double s, double speed) {
    return 0.29234 * Math.sqrt(viscosity * s / speed);
  }

  static final double STAGNATION_SHAPE = 2.2162;

  /** Equations on a surface between distances s1 and s2 from the stagnation point. */
  void surface(double s1, double s2, double[] in, double[] out) {
    surface(s1, s2, in, out, NONE);
  }

  /** The same, with the derivative of each result with respect to each input: a row per input, none if no row is given. */
  void surface(double s1, double s2, double[] in, double[] out, double[][] derivatives) {
    boolean differentiate = derivatives.length > 0;
    double x = in[X];
    double t1 = in[T1];
    double v1 = in[V1];
    double h1 = in[M1] / (v1 * t1);
    double t2 = in[T2];
    double v2 = in[V2];
    double h2 = in[M2] / (v2 * t2);
    if (s2 <= x) {
      laminar.layer(s2 - s1, t1, v1, h1, t2, v2, h2, differentiate);
      laminar.waves(s2 - s1, t1, v1, h1, in[C1], t2, v2, h2, differentiate);
      deliver(laminar, in, h1, h2, out, derivatives);
    } else if (s1 >= x) {
      turbulent.layer(s2 - s1, t1, v1, h1, in[C1], t2, v2, h2, false, differentiate);
      deliver(turbulent, in, h1, h2, out, derivatives);
    } else {
      through(s1, s2, in, out);
      if (differentiate) {
        throughDerivatives(s1, s2, in, out, derivatives);
      }
    }
  }

  private static final double[][] NONE = {};

  /** Laminar up to X, turbulent from it. */
  private void through(double s1, double s2, double[] in, double[] out) {
    double x = in[X];
    double t1 = in[T1];
    double v1 = in[V1];
    double h1 = in[M1] / (v1 * t1);
    double t2 = in[T2];
    double v2 = in[V2];
    laminar.end(x - s1, t1, v1, in[M1], in[M1] + (in[M2] - in[M1]) * (x - s1) / (s2 - s1), at);
    laminar.waves(x - s1, t1, v1, h1, in[C1], at[0], at[1], at[2], false);
    out[ONSET] = laminar.carried - critical;
    double cf = Entrainment.friction(at[2], at[1] * at[0] / viscosity);
    double young = YOUNG * Math.max(Entrainment.equilibrium(Math.min(at[2], 6), cf), 1e-3);
    turbulent.layer(s2 - x, at[0], at[1], at[2], young, t2, v2, in[M2] / (v2 * t2), false, false);
    out[MOMENTUM] = turbulent.momentum;
    out[SHAPE] = turbulent.shape;
    out[CARRIED] = turbulent.carried;
  }

  /** By differences: there are two such stretches at most. */
  private void throughDerivatives(double s1, double s2, double[] in, double[] out, double[][] derivatives) {
    for (int v = 0; v < INPUTS; v++) {
      double q = in[v];
      double e = v == X
          ? (q + 1e-7 < s2 ? 1e-7 : -1e-7)
          : 1e-6 * Math.abs(q) + (v == C1 ? 1e-7 : 1e-12);
      in[v] = q + e;
      through(s1, s2, in, moved);
      in[v] = q;
      for (int o = 0; o < OUTPUTS; o++) {
        derivatives[v][o] = (moved[o] - out[o]) / e;
      }
    }
  }

  /** Equations in the wake; the carried number is the entrainment, θ that of both halves together. */
  void wake(double ds, double[] in, double[] out) {
    wake(ds, in, out, NONE);
  }

  /** The same with derivatives. */
  void wake(double ds, double[] in, double[] out, double[][] derivatives) {
    double h1 = in[M1] / (in[V1] * in[T1]);
    double h2 = in[M2] / (in[V2] * in[T2]);
    turbulent.layer(ds, in[T1], in[V1], h1, in[C1], in[T2], in[V2], h2, true, derivatives.length > 0);
    deliver(turbulent, in, h1, h2, out, derivatives);
  }

  /** From shape factors to mass defects. */
  private static void deliver(LayerStep step, double[] in, double h1, double h2, double[] out, double[][] derivatives) {
    out[MOMENTUM] = step.momentum;
    out[SHAPE] = step.shape;
    out[CARRIED] = step.carried;
    out[ONSET] = 0;
    if (derivatives.length > 0) {
      deliver(step.dMomentum, MOMENTUM, in, h1, h2, derivatives);
      deliver(step.dShape, SHAPE, in, h1, h2, derivatives);
      deliver(step.dCarried, CARRIED, in, h1, h2, derivatives);
    }
  }

  private static void deliver(double[] d, int o, double[] in, double h1, double h2, double[][] derivatives) {
    double byH1 = d[LayerStep.H1];
    double byH2 = d[LayerStep.H2];
    derivatives[T1][o] = d[LayerStep.T1] - byH1 * h1 / in[T1];
    derivatives[V1][o] = d[LayerStep.V1] - byH1 * h1 / in[V1];
    derivatives[M1][o] = byH1 / (in[V1] * in[T1]);
    derivatives[C1][o] = d[LayerStep.C1];
    derivatives[X][o] = 0;
    derivatives[T2][o] = d[LayerStep.T2] - byH2 * h2 / in[T2];
    derivatives[V2][o] = d[LayerStep.V2] - byH2 * h2 / in[V2];
    derivatives[M2][o] = byH2 / (in[V2] * in[T2]);
  }
}
