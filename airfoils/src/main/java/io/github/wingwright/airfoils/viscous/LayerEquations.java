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
  private double momentum;
  private double shape;
  private double entrainment;
  /** Energy shape, shear and dissipation of both ends; the upstream end is the same for most evaluations. */
  private final double[] upstream = new double[3];

  private final double[] downstream = new double[3];
  private double upstreamShape = Double.NaN;

  LayerEquations(double reynolds, double critical) {
    this.viscosity = 1 / reynolds;
    this.critical = critical;
  }

  /** Similar layer at a stagnation point: θ = 0.29234·√(ν·s/V), H = 2.2162 (Hiemenz). */
  double stagnationThickness(double s, double speed) {
    return 0.29234 * Math.sqrt(viscosity * s / speed);
  }

  static final double STAGNATION_SHAPE = 2.2162;

  /** Equations on a surface between distances s1 and s2 from the stagnation point. */
  void surface(double s1, double s2, double[] in, double[] out) {
    double t1 = in[T1];
    double v1 = in[V1];
    double h1 = in[M1] / (v1 * t1);
    double t2 = in[T2];
    double v2 = in[V2];
    double h2 = in[M2] / (v2 * t2);
    double x = in[X];
    double carried = in[C1];
    if (s2 <= x) {
      out[CARRIED] = carried + (s2 - s1) * growth(t1, v1, h1, t2, v2, h2);
      laminar(s2 - s1, t1, v1, h1, t2, v2, h2);
    } else if (s1 >= x) {
      turbulent(s2 - s1, t1, v1, h1, t2, v2, h2, carried);
      out[CARRIED] = entrainment;
    } else {
      double[] at = laminarTo(x - s1, t1, v1, in[M1], in[M1] + (in[M2] - in[M1]) * (x - s1) / (s2 - s1));
      out[ONSET] = carried + (x - s1) * growth(t1, v1, h1, at[0], at[1], at[2]) - critical;
      double cf = Entrainment.friction(at[2], at[1] * at[0] / viscosity);
      double young = YOUNG * Math.max(Entrainment.equilibrium(Math.min(at[2], 6), cf), 1e-3);
      turbulent(s2 - x, at[0], at[1], at[2], t2, v2, h2, young);
      out[CARRIED] = entrainment;
    }
    out[MOMENTUM] = momentum;
    out[SHAPE] = shape;
  }

  private double growth(double t1, double v1, double h1, double t2, double v2, double h2) {
    double t = 0.5 * (t1 + t2);
    return Transition.growth(0.5 * (h1 + h2), t, Math.max(0.5 * (v1 + v2) * t / viscosity, 5));
  }

  private void laminar(double ds, double t1, double v1, double h1, double t2, double v2, double h2) {
    double r1 = Math.max(v1 * t1 / viscosity, 1);
    double r2 = Math.max(v2 * t2 / viscosity, 1);
    double t = 0.5 * (t1 + t2);
    double h = 0.5 * (h1 + h2);
    double speedUp = Math.log(v2 / v1);
    if (h1 != upstreamShape) {
      SimilarLayers.evaluate(h1, upstream);
      upstreamShape = h1;
    }
    SimilarLayers.evaluate(h2, downstream);
    double shear = 0.5 * (upstream[1] / r1 + downstream[1] / r2);
    double dissipation = upstream[2] / r1 + downstream[2] / r2;
    double e1 = upstream[0];
    double e2 = downstream[0];
    double e = 0.5 * (e1 + e2);
    momentum = (t2 - t1 - ds * shear + (h + 2) * t * speedUp) / t1;
    // The factor brings it to the scale of the turbulent equation.
    shape = 5 * (e2 - e1 - ds / t * (dissipation - e * shear) - (h - 1) * e * speedUp);
  }

  /** Laminar layer at a distance for a given mass defect there: {θ, V, H}. */
  private double[] laminarTo(double ds, double t1, double v1, double m1, double m2) {
    double h1 = m1 / (v1 * t1);
    double t = t1;
    double v = v1;
    for (int i = 0; i < 30; i++) {
      laminar(ds, t1, v1, h1, t, v, m2 / (t * v));
      double a = momentum;
      double b = shape;
      double et = 1e-6 * t;
      laminar(ds, t1, v1, h1, t + et, v, m2 / ((t + et) * v));
      double at = (momentum - a) / et;
      double bt = (shape - b) / et;
      double ev = 1e-6 * v;
      laminar(ds, t1, v1, h1, t, v + ev, m2 / (t * (v + ev)));
      double av = (momentum - a) / ev;
      double bv = (shape - b) / ev;
      double det = at * bv - av * bt;
      double dt = -(a * bv - b * av) / det;
      double dv = -(at * b - bt * a) / det;
      double part = Math.min(1, Math.min(0.3 * t / Math.abs(dt), 0.3 * v / Math.abs(dv)));
      t += part * dt;
      v += part * dv;
      if (Math.abs(dt) < 1e-13 * t && Math.abs(dv) < 1e-13 * v) {
        break;
      }
    }
    return new double[] {t, v, m2 / (t * v)};
  }

  private void turbulent(
      double ds, double t1, double v1, double h1, double t2, double v2, double h2, double carried) {
    double r2 = Math.max(v2 * t2 / viscosity, 1);
    double t = 0.5 * (t1 + t2);
    double h = 0.5 * (h1 + h2);
    double speedUp = Math.log(v2 / v1);
    double cf = 0.5 * (Entrainment.friction(h1, Math.max(v1 * t1 / viscosity, 1)) + Entrainment.friction(h2, r2));
    momentum = (t2 - t1 - ds * cf / 2 + (h + 2) * t * speedUp) / t1;
    entrainmentStep(ds, t, h, speedUp, carried, Entrainment.friction(h, r2), Entrainment.flatPlateFriction(r2), 1);
    shape = shapeResidual(ds, t, h, h1, h2, speedUp, cf, carried);
  }

  /** Equations in the wake; the carried number is the entrainment, θ that of both halves together. */
  void wake(double ds, double[] in, double[] out) {
    double t1 = in[T1];
    double h1 = in[M1] / (in[V1] * t1);
    double t2 = in[T2];
    double h2 = in[M2] / (in[V2] * t2);
    double h = 0.5 * (h1 + h2);
    double t = 0.5 * (t1 + t2);
    double speedUp = Math.log(in[V2] / in[V1]);
    out[MOMENTUM] = (t2 - t1 + (h + 2) * t * speedUp) / t1;
    entrainmentStep(ds, t / 2, h, speedUp, in[C1], 0, 0, 0.5);
    out[SHAPE] = shapeResidual(ds, t / 2, h, h1, h2, speedUp, 0, in[C1]);
    out[CARRIED] = entrainment;
  }

  /** One implicit step of the lag equation. */
  private void entrainmentStep(double ds, double t, double h, double speedUp, double carried, double cf,
      double plate, double scale) {
    double gradient = t * speedUp / ds;
    double rate = Entrainment.lag(carried, h, cf, plate, gradient, scale) / t;
    double e = 1e-4;
    double slope = (Entrainment.lag(carried + e, h, cf, plate, gradient, scale) / t - rate) / e;
    entrainment = Math.max(carried + ds * rate / (1 - Math.min(slope, 0) * ds), 1e-5);
  }

  /** The entrainment equation for ln(H − 1). */
  private double shapeResidual(double ds, double t, double h, double h1, double h2, double speedUp, double cf,
      double carried) {
    double q = h - 1;
    double massFlow = 3.15 * q + 1.72 - 0.01 * q * q * q;
    double grown = Math.log(Math.max(h2 - 1, 1e-6) / Math.max(h1 - 1, 1e-6));
    return grown
        + (ds / t * (0.5 * (carried + entrainment) * q - massFlow * cf / 2) + massFlow * (h + 1) * speedUp)
            / (1.72 + 0.02 * q * q * q);
  }
}
