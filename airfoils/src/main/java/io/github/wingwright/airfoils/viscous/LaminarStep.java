// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

/**
 * A laminar stretch: momentum and kinetic energy of similar layers, and the growth of waves.
 *
 * <pre>{@code
 * momentum:  θ2 − θ1 = ds·S/Reθ − (H + 2)·θ·ln(V2/V1)
 * energy:    H*2 − H*1 = ds/θ·(2·D/Reθ − H*·S/Reθ) + (H − 1)·H*·ln(V2/V1)
 * }</pre>
 * with θ, H, H* and S/Reθ as means of both ends.
 */
final class LaminarStep extends LayerStep {
  /** Brings the energy equation to the scale of the turbulent one. */
  private static final double SCALE = 5;

  private final double[] upstream = new double[6];
  private final double[] downstream = new double[6];
  private final double[] growth = new double[4];
  private double upstreamShape = Double.NaN;

  LaminarStep(double viscosity) {
    super(viscosity);
  }

  /** Residuals, and derivatives if wanted; without the amplification. */
  void layer(double ds, double t1, double v1, double h1, double t2, double v2, double h2, boolean differentiate) {
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
    double work = dissipation - e * shear;
    momentum = (t2 - t1 - ds * shear + (h + 2) * t * speedUp) / t1;
    shape = SCALE * (e2 - e1 - ds / t * work - (h - 1) * e * speedUp);
    if (!differentiate) {
      return;
    }
    half(-1, ds, t1, v1, r1, upstream, t, h, e, shear, work, speedUp, t1, 0);
    half(1, ds, t2, v2, r2, downstream, t, h, e, shear, work, speedUp, t1, T2);
    dMomentum[T1] -= momentum / t1;
  }

  /** Derivatives with respect to one end. */
  private void half(double sign, double ds, double te, double ve, double r, double[] family, double t, double h, double e,
      double shear, double work, double speedUp, double t1, int at) {
    boolean floored = r <= 1;
    double shearByT = floored ? 0 : -0.5 * family[1] / (r * te);
    double shearByV = floored ? 0 : -0.5 * family[1] / (r * ve);
    double shearByH = 0.5 * family[4] / r;
    double workByT = (floored ? 0 : -family[2] / (r * te)) - e * shearByT;
    double workByV = (floored ? 0 : -family[2] / (r * ve)) - e * shearByV;
    double workByH = family[5] / r - 0.5 * family[3] * shear - e * shearByH;
    dMomentum[at] = (sign - ds * shearByT + 0.5 * (h + 2) * speedUp) / t1;
    dMomentum[at + 1] = (-ds * shearByV + sign * (h + 2) * t / ve) / t1;
    dMomentum[at + 2] = (-ds * shearByH + 0.5 * t * speedUp) / t1;
    dShape[at] = SCALE * (-ds / t * (workByT - 0.5 * work / t));
    dShape[at + 1] = SCALE * (-ds / t * workByV - sign * (h - 1) * e / ve);
    dShape[at + 2] = SCALE * (sign * family[3] - ds / t * workByH - 0.5 * speedUp * (e + (h - 1) * family[3]));
  }

  /** Amplification at the end of the stretch, and derivatives if wanted. */
  void waves(double ds, double t1, double v1, double h1, double before, double t2, double v2, double h2,
      boolean differentiate) {
    double t = 0.5 * (t1 + t2);
    double v = 0.5 * (v1 + v2);
    double r = v * t / viscosity;
    Transition.growth(0.5 * (h1 + h2), t, Math.max(r, 5), growth);
    carried = before + ds * growth[0];
    if (!differentiate) {
      return;
    }
    double byR = r > 5 ? growth[3] : 0;
    dCarried[H1] = dCarried[H2] = 0.5 * ds * growth[1];
    dCarried[T1] = dCarried[T2] = 0.5 * ds * (growth[2] + byR * v / viscosity);
    dCarried[V1] = dCarried[V2] = 0.5 * ds * byR * t / viscosity;
    dCarried[C1] = 1;
    dMomentum[C1] = dShape[C1] = 0;
  }

  /** Laminar layer at a distance for a given mass defect there: {θ, V, H}. */
  void end(double ds, double t1, double v1, double m1, double m2, double[] at) {
    double h1 = m1 / (v1 * t1);
    double t = t1;
    double v = v1;
    for (int i = 0; i < 30; i++) {
      double h = m2 / (t * v);
      layer(ds, t1, v1, h1, t, v, h, true);
      double at2 = dMomentum[T2] - dMomentum[H2] * h / t;
      double av2 = dMomentum[V2] - dMomentum[H2] * h / v;
      double bt2 = dShape[T2] - dShape[H2] * h / t;
      double bv2 = dShape[V2] - dShape[H2] * h / v;
      double det = at2 * bv2 - av2 * bt2;
      double dt = -(momentum * bv2 - shape * av2) / det;
      double dv = -(at2 * shape - bt2 * momentum) / det;
      double part = Math.min(1, Math.min(0.3 * t / Math.abs(dt), 0.3 * v / Math.abs(dv)));
      t += part * dt;
      v += part * dv;
      if (Math.abs(dt) < 1e-13 * t && Math.abs(dv) < 1e-13 * v) {
        break;
      }
    }
    at[0] = t;
    at[1] = v;
    at[2] = m2 / (t * v);
  }
}
