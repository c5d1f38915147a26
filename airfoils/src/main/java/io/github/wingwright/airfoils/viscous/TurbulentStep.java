// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import java.util.Arrays;

/**
 * A turbulent stretch on a surface or in the wake: momentum, entrainment, and one implicit step of the lag of the rate
 * of entrainment.
 *
 * <pre>{@code
 * momentum: θ2 − θ1 = ½·ds·cf − (H + 2)·θ·ln(V2/V1)
 * shape:    ln((H2 − 1)/(H1 − 1)) = −(ds/θ·(CE·(H − 1) − F·½·cf) + F·(H + 1)·ln(V2/V1)) / (1.72 + 0.02·(H − 1)³)
 *           with F = H1·(H − 1), H1 Head's shape factor
 * }</pre>
 * In the wake the friction is zero and each half has half of the thickness.
 */
final class TurbulentStep extends LayerStep {
  private static final double LEAST = 1e-5;
  private static final double DIFFERENCE = 1e-4;

  private final double[] friction1 = new double[3];
  private final double[] friction2 = new double[3];
  private final double[] frictionMean = new double[3];
  private final EntrainmentLag lag = new EntrainmentLag();
  private double rate;
  private double slope;

  TurbulentStep(double viscosity) {
    super(viscosity);
  }

  /**
   * Residuals, and derivatives if wanted.
   *
   * @param wake whether the stretch lies in the wake
   */
  void layer(double ds, double t1, double v1, double h1, double before, double t2, double v2, double h2, boolean wake,
      boolean differentiate) {
    double r1 = Math.max(v1 * t1 / viscosity, 1);
    double r2 = Math.max(v2 * t2 / viscosity, 1);
    double h = 0.5 * (h1 + h2);
    double speedUp = Math.log(v2 / v1);
    double share = wake ? 0.5 : 1;
    double t = 0.5 * (t1 + t2) * share;
    double cf = 0;
    double plate = 0;
    double plateByR = 0;
    if (wake) {
      Arrays.fill(frictionMean, 0);
    } else {
      Entrainment.friction(h1, r1, friction1);
      plate = Entrainment.flatPlateFriction(r2);
      plateByR = Entrainment.flatPlateFrictionSlope(r2);
      Entrainment.friction(h2, plate, plateByR, friction2);
      Entrainment.friction(h, plate, plateByR, frictionMean);
      cf = 0.5 * (friction1[0] + friction2[0]);
    }
    momentum = (t2 - t1 - ds * cf / 2 + (h + 2) * (t / share) * speedUp) / t1;
    double gradient = t * speedUp / ds;
    lag.at(h, frictionMean[0], plate, gradient, wake ? 0.5 : 1, differentiate);
    carried = advance(lag, lag.base, lag.weight, plate, before, t, ds);
    double q = h - 1;
    double mass = 3.15 * q + 1.72 - 0.01 * q * q * q;
    double inverse = 1 / (1.72 + 0.02 * q * q * q);
    double supply = ds / t * (0.5 * (before + carried) * q - mass * cf / 2);
    double stretch = mass * (h + 1) * speedUp;
    shape = Math.log(Math.max(h2 - 1, 1e-6) / Math.max(h1 - 1, 1e-6)) + (supply + stretch) * inverse;
    if (!differentiate) {
      return;
    }
    // The carried number, by its intermediate quantities; differences only of the cheap last step.
    double unit = 1e-6;
    double byBase = (advance(lag, lag.base + unit * 1e-2, lag.weight, plate, before, t, ds) - carried) / (unit * 1e-2);
    double byWeight = (advance(lag, lag.base, lag.weight * (1 + unit), plate, before, t, ds) - carried)
        / (lag.weight * unit);
    double byPlate = wake ? 0
        : (advance(lag, lag.base, lag.weight, plate * (1 + unit), before, t, ds) - carried) / (plate * unit);
    double step = unit * before + 1e-8;
    double byBefore = (advance(lag, lag.base, lag.weight, plate, before + step, t, ds) - carried) / step;
    double byT = (advance(lag, lag.base, lag.weight, plate, before, t * (1 + unit), ds) - carried) / (t * unit)
        - byBase * speedUp / ds;
    double bySpeedUp = -byBase * t / ds;
    double byH = byBase * (lag.baseByH + lag.baseByFriction * frictionMean[1]) + byWeight * lag.weightByH;
    double byR = byBase * (lag.baseByFriction * frictionMean[2] + lag.basePlate * plateByR) + byPlate * plateByR;
    double r2ByT = r2 > 1 ? v2 / viscosity : 0;
    double r2ByV = r2 > 1 ? t2 / viscosity : 0;
    double[] c = dCarried;
    c[T1] = 0.5 * share * byT;
    c[V1] = -bySpeedUp / v1;
    c[H1] = 0.5 * byH;
    c[C1] = byBefore;
    c[T2] = 0.5 * share * byT + byR * r2ByT;
    c[V2] = bySpeedUp / v2 + byR * r2ByV;
    c[H2] = 0.5 * byH;

    double r1ByT = r1 > 1 ? v1 / viscosity : 0;
    double r1ByV = r1 > 1 ? t1 / viscosity : 0;
    double massByH = 3.15 - 0.03 * q * q;
    double shapeByH = inverse * (ds / t * (0.5 * (before + carried) - massByH * cf / 2)
        + (massByH * (h + 1) + mass) * speedUp - (supply + stretch) * inverse * 0.06 * q * q);
    double shapeByT = -supply / t * inverse;
    double shapeByCf = -ds / t * mass / 2 * inverse;
    double shapeBySpeedUp = mass * (h + 1) * inverse;
    double shapeByCarried = ds / t * 0.5 * q * inverse;
    for (int end = 0; end < 2; end++) {
      int at = end == 0 ? T1 : T2;
      double sign = end == 0 ? -1 : 1;
      double[] f = end == 0 ? friction1 : friction2;
      double rt = end == 0 ? r1ByT : r2ByT;
      double rv = end == 0 ? r1ByV : r2ByV;
      double ve = end == 0 ? v1 : v2;
      double cfByT = wake ? 0 : 0.5 * f[2] * rt;
      double cfByV = wake ? 0 : 0.5 * f[2] * rv;
      double cfByH = wake ? 0 : 0.5 * f[1];
      dMomentum[at] = (sign - 0.5 * ds * cfByT + 0.5 * (h + 2) * speedUp) / t1;
      dMomentum[at + 1] = (-0.5 * ds * cfByV + sign * (h + 2) * (t / share) / ve) / t1;
      dMomentum[at + 2] = (-0.5 * ds * cfByH + 0.5 * (t / share) * speedUp) / t1;
      dShape[at] = 0.5 * share * shapeByT + shapeByCf * cfByT + shapeByCarried * c[at];
      dShape[at + 1] = sign * shapeBySpeedUp / ve + shapeByCf * cfByV + shapeByCarried * c[at + 1];
      dShape[at + 2] = 0.5 * shapeByH + shapeByCf * cfByH + shapeByCarried * c[at + 2];
    }
    dMomentum[T1] -= momentum / t1;
    dShape[H1] -= h1 - 1 > 1e-6 ? 1 / (h1 - 1) : 0;
    dShape[H2] += h2 - 1 > 1e-6 ? 1 / (h2 - 1) : 0;
    dMomentum[C1] = 0;
    dShape[C1] = shapeByCarried * (1 + byBefore);
  }

  /** One implicit step of the lag equation. */
  private double advance(EntrainmentLag lag, double base, double weight, double plate, double before, double t,
      double ds) {
    rate = lag.rate(before, base, weight, plate) / t;
    slope = (lag.rate(before + DIFFERENCE, base, weight, plate) / t - rate) / DIFFERENCE;
    return Math.max(before + ds * rate / (1 - Math.min(slope, 0) * ds), LEAST);
  }
}
