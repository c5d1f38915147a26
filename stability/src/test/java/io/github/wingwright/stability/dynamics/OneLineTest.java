// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.wingwright.stability.lattice.LatticeReference;
import org.junit.jupiter.api.Test;

/** What a shell shows of the plain data: one line that fits, with the few numbers that are looked at first. */
class OneLineTest {

  @Test
  void derivatives_masses_and_references_read_in_one_line() {
    assertThat(new LateralDerivatives(-0.466361623, -0.2312510869, 0.0794647505, 0.0, -0.4775, 0.0, 0.0, 0.0, -0.0312))
        .hasToString("lateral: C_Yβ -0.466, C_lβ -0.231, C_nβ 0.0795, C_lp -0.478, C_nr -0.0312");
    assertThat(new LongitudinalDerivatives(0.0, 0.0, 0.0, 0.13, -4.45232804, -0.65167, -6.9, -12.4, -2.2, -3.91))
        .hasToString("longitudinal: C_zα -4.45, C_mα -0.652, C_mq -12.4, C_mα̇ -3.91");
    assertThat(new WingApparentMass(0.00281, 4.2e-5, 1.1e-6, 0.02))
        .hasToString("apparent mass 0.00281 kg heave, 4.20e-05 kg·m² roll, 1.10e-06 pitch");
    assertThat(new LatticeReference(0.0372, 0.07802043, 0.48, 0.103880742, 0.013473608))
        .hasToString("S 0.03720 m², c 0.07802 m, b 0.4800 m about (0.1039, 0.01347) m");
  }

  @Test
  void an_entry_that_a_state_matrix_has_not_is_refused() {
    StateMatrix matrix = StateMatrix.lateral(new double[4][4], 10);
    assertThatIllegalArgumentException().isThrownBy(() -> matrix.entry(4, 0)).withMessage("row must be 0 to 3, was 4");
    assertThatIllegalArgumentException().isThrownBy(() -> matrix.entry(0, -1)).withMessage("column must be 0 to 3, was -1");
  }
}
