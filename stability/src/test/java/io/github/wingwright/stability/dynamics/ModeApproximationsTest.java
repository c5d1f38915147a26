// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ModeApproximationsTest {
  @Test
  void documented_examples_hold() {
    assertThat(ModeApproximations.lanchesterPeriod(5, 9.80665)).isCloseTo(2.27, within(0.005));
    assertThat(ModeApproximations.lanchesterDamping(8)).isCloseTo(0.088, within(5e-4));
  }

  /** Without drag and at constant angle of attack, energy is kept and the phugoid is Lanchester's exactly. */
  @Test
  void a_phugoid_without_drag_is_lanchesters() {
    double g = 9.81;
    double u = 12;
    // X_u = 0, Z_u = −2g/u, an immense margin holds the angle of attack
    double[][] a = {{0, 0, 0, -g}, {-2 * g / u, -5, u, 0}, {0, -4e6, -5, 0}, {0, 0, 1, 0}};
    StateMatrix matrix = StateMatrix.longitudinal(a, u);
    double lanchester = ModeApproximations.lanchesterPeriod(u, g);
    assertThat(ModeApproximations.phugoid(matrix, g).period().orElseThrow().seconds())
        .isCloseTo(lanchester, within(1e-12));
    assertThat(matrix.modes().find(ModeKind.PHUGOID).orElseThrow().period().orElseThrow().seconds())
        .isCloseTo(lanchester, within(1e-3));
  }

  @Test
  void the_spiral_formula_has_the_sign_of_dihedral_against_fin() {
    // dihedral wins: L_v·N_r greater than L_r·N_v
    assertThat(ModeApproximations.spiralRoot(-1, -10, 2, 0.2, -0.2, -1, 10, 9.81)).isNegative();
    assertThat(ModeApproximations.spiralRoot(-0.1, -10, 2, 1, -0.2, -1, 10, 9.81)).isPositive();
  }

  @Test
  void the_spiral_formula_comes_near_the_root() {
    StateMatrix jet = JetTransportTest.printed("lateral");
    assertThat(ModeApproximations.spiral(jet, 32.2).real())
        .isBetween(-0.0110, -0.0050);
  }
}
