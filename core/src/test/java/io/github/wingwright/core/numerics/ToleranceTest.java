// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class ToleranceTest {
  @Test
  void the_larger_part_counts() {
    Tolerance tolerance = new Tolerance(1e-9, 1e-6);
    assertThat(tolerance.allowance(2)).isEqualTo(2e-6);
    assertThat(tolerance.allowance(-2)).isEqualTo(2e-6);
    assertThat(tolerance.allowance(0)).isEqualTo(1e-9);
  }

  @Test
  void what_cannot_be_honoured_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Tolerance.relative(1e-17))
        .withMessage("relative tolerance must be 0 or from 1.0E-15 to less than 1, was 1.0E-17");
    assertThatIllegalArgumentException().isThrownBy(() -> Tolerance.relative(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> Tolerance.absolute(-1))
        .withMessage("absolute tolerance must be finite and not negative, was -1.0");
    assertThatIllegalArgumentException().isThrownBy(() -> Tolerance.absolute(0))
        .withMessage("a tolerance must not be zero in both parts");
  }
}
