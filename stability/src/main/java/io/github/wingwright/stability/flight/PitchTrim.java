// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import io.github.wingwright.core.numerics.Roots;
import io.github.wingwright.core.numerics.Tolerance;

/**
 * The steady glide of the equations with pitch: where the moment vanishes and the forces carry the weight.
 *
 * @param sine sine of the angle of attack against the axis, NaN if there is no trim in attached flow
 * @param speed airspeed [m/s], NaN if there is none
 * @param descent angle of descent [rad], positive down, NaN if there is none
 * @param lift C_L, NaN if there is none
 */
record PitchTrim(double sine, double speed, double descent, double lift) {
  static final PitchTrim NONE = new PitchTrim(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

  private static final int MOST_ROUNDS = 60;
  private static final int SCAN = 200;
  private static final Tolerance FINE = new Tolerance(1e-16, 1e-15);

  /** The first angle at which the moment turns from nose-up to nose-down, with lift. */
  static PitchTrim of(CoefficientTable table, PitchDynamics.Body body, double lowest, double highest) {
    double before = table.ahead(lowest, CoefficientTable.MOMENT);
    for (int i = 1; i <= SCAN; i++) {
      double s = lowest + (highest - lowest) * i / SCAN;
      double moment = table.ahead(s, CoefficientTable.MOMENT);
      if (before > 0.0 && moment <= 0.0 && table.ahead(s, CoefficientTable.LIFT) > 0.0) {
        double from = lowest + (highest - lowest) * (i - 1) / SCAN;
        double sine = Roots.find(x -> table.ahead(x, CoefficientTable.MOMENT), from, s, FINE);
        return at(table, body, sine);
      }
      before = moment;
    }
    return NONE;
  }

  private static PitchTrim at(CoefficientTable table, PitchDynamics.Body body, double sine) {
    double cl = table.ahead(sine, CoefficientTable.LIFT);
    double a = table.ahead(sine, CoefficientTable.STEADY_DRAG);
    double b = table.ahead(sine, CoefficientTable.FRICTION_DRAG);
    if (!(cl > 0.0)) {
      return NONE;
    }
    double weight = body.mass().si() * body.gravity();
    double per = 0.5 * body.density() * body.area();
    double v = Math.sqrt(weight / (per * cl));
    for (int i = 0; i < MOST_ROUNDS; i++) {
      double next = Math.sqrt(weight / (per * Math.hypot(cl, a + b / Math.sqrt(v))));
      if (next == v) {
        break;
      }
      v = next;
    }
    return new PitchTrim(sine, v, Math.atan2(a + b / Math.sqrt(v), cl), cl);
  }
}
