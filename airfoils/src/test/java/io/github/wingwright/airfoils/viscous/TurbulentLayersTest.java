// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class TurbulentLayersTest {
  @Test
  void worked_numbers_of_the_documentation() {
    assertThat(Entrainment.massShape(1.4)).isCloseTo(7.4484, within(5e-5));
    assertThat(Entrainment.friction(1.4, 2000)).isCloseTo(0.00364, within(5e-6));
  }

  @Test
  void a_turbulent_plate_has_the_friction_of_the_plate_law() {
    // Prandtl and Schlichting: cf = 0.455/(log10 Re)^2.58 for a plate turbulent from its edge (from memory), 3 %.
    double reynolds = 5e6;
    LayerEquations equations = new LayerEquations(reynolds, 9);
    double[] in = new double[LayerEquations.INPUTS];
    double[] out = new double[LayerEquations.OUTPUTS];
    int n = 400;
    double theta = 3e-5;
    double shape = 1.6;
    double carried = 0.03;
    double before = 2e-3;
    for (int i = 1; i <= n; i++) {
      double s = 2e-3 + (1 - 2e-3) * Math.pow((double) i / n, 1.5);
      double t = theta;
      double h = shape;
      for (int z = 0; z < 30; z++) {
        in[LayerEquations.T1] = theta;
        in[LayerEquations.V1] = 1;
        in[LayerEquations.M1] = shape * theta;
        in[LayerEquations.C1] = carried;
        in[LayerEquations.X] = 0;
        in[LayerEquations.V2] = 1;
        double[] a = residual(equations, before, s, in, out, t, h);
        double et = 1e-7 * t;
        double eh = 1e-7 * h;
        double[] at = residual(equations, before, s, in, out, t + et, h);
        double[] ah = residual(equations, before, s, in, out, t, h + eh);
        double m11 = (at[0] - a[0]) / et;
        double m12 = (ah[0] - a[0]) / eh;
        double m21 = (at[1] - a[1]) / et;
        double m22 = (ah[1] - a[1]) / eh;
        double det = m11 * m22 - m12 * m21;
        t -= (a[0] * m22 - a[1] * m12) / det;
        h -= (m11 * a[1] - m21 * a[0]) / det;
      }
      residual(equations, before, s, in, out, t, h);
      carried = out[LayerEquations.CARRIED];
      theta = t;
      shape = h;
      before = s;
    }
    assertThat(2 * theta).isCloseTo(0.455 / Math.pow(Math.log10(reynolds), 2.58), withinPercentage(4));
    assertThat(shape).isBetween(1.3, 1.45);
  }

  private static double[] residual(
      LayerEquations equations, double s1, double s2, double[] in, double[] out, double t, double h) {
    in[LayerEquations.T2] = t;
    in[LayerEquations.M2] = h * t;
    equations.surface(s1, s2, in, out);
    return new double[] {out[LayerEquations.MOMENTUM], out[LayerEquations.SHAPE]};
  }

  @Test
  void an_equilibrium_layer_stays_in_equilibrium() {
    // The lag vanishes where entrainment and pressure gradient are those of equilibrium.
    double shape = 1.6;
    double plate = Entrainment.flatPlateFriction(1500);
    double cf = Entrainment.friction(shape, 1500);
    double g = (shape - 1) / (6.432 * shape);
    double gradient = 1.25 / shape * (cf / 2 - g * g);
    double entrainment = Entrainment.equilibrium(shape, cf);
    assertThat(Entrainment.lag(entrainment, shape, cf, plate, gradient, 1)).isCloseTo(0, within(1e-5));
  }
}
