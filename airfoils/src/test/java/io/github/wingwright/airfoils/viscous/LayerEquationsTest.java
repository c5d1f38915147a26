// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Derivatives by formula against central differences of the residuals themselves. */
class LayerEquationsTest {
  enum Stretch {
    LAMINAR,
    TURBULENT,
    WAKE
  }

  private final LayerEquations equations = new LayerEquations(1e5, 9);

  @ParameterizedTest
  @EnumSource
  void derivatives_are_what_differences_of_the_residuals_give(Stretch stretch) {
    Random random = new Random(7);
    double[] plus = new double[LayerEquations.OUTPUTS];
    double[] minus = new double[LayerEquations.OUTPUTS];
    double[][] derivatives = new double[LayerEquations.INPUTS][LayerEquations.OUTPUTS];
    for (int n = 0; n < 300; n++) {
      double[] in = state(stretch, random);
      evaluate(stretch, in, plus, derivatives);
      for (int v = 0; v < LayerEquations.INPUTS; v++) {
        double q = in[v];
        double step = 3e-6 * Math.abs(q);
        if (v == LayerEquations.X) {
          continue;
        }
        in[v] = q + step;
        evaluate(stretch, in, plus, new double[0][]);
        in[v] = q - step;
        evaluate(stretch, in, minus, new double[0][]);
        in[v] = q;
        for (int o = LayerEquations.MOMENTUM; o <= LayerEquations.CARRIED; o++) {
          double perShare = (plus[o] - minus[o]) / (2 * step) * q;
          assertThat(derivatives[v][o] * q).as("%s, input %d, result %d", stretch, v, o)
              .isCloseTo(perShare, within(1e-5 * (1 + Math.abs(perShare))));
        }
      }
    }
  }

  private void evaluate(Stretch stretch, double[] in, double[] out, double[][] derivatives) {
    if (stretch == Stretch.WAKE) {
      equations.wake(0.02, in, out, derivatives);
    } else {
      equations.surface(0.5, 0.52, in, out, derivatives);
    }
  }

  private static double[] state(Stretch stretch, Random random) {
    boolean laminar = stretch == Stretch.LAMINAR;
    double[] in = new double[LayerEquations.INPUTS];
    double theta = (0.5 + 4 * random.nextDouble()) * 1e-3;
    double speed = 0.4 + random.nextDouble();
    double shape = laminar ? 2.3 + 4 * random.nextDouble() : 1.3 + 2 * random.nextDouble();
    in[LayerEquations.T1] = theta;
    in[LayerEquations.V1] = speed;
    in[LayerEquations.M1] = shape * speed * theta;
    in[LayerEquations.C1] = laminar ? 3 * random.nextDouble() : 0.005 + 0.05 * random.nextDouble();
    in[LayerEquations.X] = laminar ? 10 : 0;
    in[LayerEquations.T2] = theta * (1 + 0.1 * random.nextDouble());
    in[LayerEquations.V2] = speed * (0.95 + 0.1 * random.nextDouble());
    in[LayerEquations.M2] = in[LayerEquations.T2] * in[LayerEquations.V2] * (shape + 0.1 * random.nextDouble());
    return in;
  }
}
