// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Mass.kilograms;
import static io.github.wingwright.core.quantity.MomentOfInertia.kilogramSquareMetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import org.junit.jupiter.api.Test;

class InertiaTest {
  @Test
  void the_documented_examples_hold() {
    assertThat(Inertia.aboutParallelAxis(0, 0.02, 0.3, 0.4)).isCloseTo(0.005, within(1e-15));
    assertThat(Inertia.aboutParallelAxes(0, 0.02, 0.3, 0.4)).isCloseTo(0.0024, within(1e-15));
  }

  @Test
  void a_rod_is_a_thin_box() {
    Inertia rod = Inertia.ofBox(kilograms(0.012), Length.ZERO, metres(1), Length.ZERO);
    assertThat(rod.roll().si()).isCloseTo(0.001, within(1e-15)); // m·l²/12
    assertThat(rod.yaw()).isEqualTo(rod.roll());
    assertThat(rod.pitch().si()).isZero();
  }

  @Test
  void a_tube_is_a_stack_of_rings() {
    Inertia tube = Inertia.ofTube(kilograms(3), metres(2), metres(0.4));
    double roll = 0;
    double pitch = 0;
    int rings = 2000;
    for (int i = 0; i < rings; i++) {
      double m = 3.0 / rings;
      double x = -1 + 2.0 * (i + 0.5) / rings;
      roll += m * 0.04; // all at the radius 0.2
      pitch += m * (0.02 + x * x); // half of r² across, and the distance along
    }
    assertThat(tube.roll().si()).isCloseTo(roll, within(1e-12));
    assertThat(tube.pitch().si()).isCloseTo(pitch, within(1e-6));
    assertThat(tube.yaw()).isEqualTo(tube.pitch());
  }

  @Test
  void what_no_body_can_have_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Inertia.of(kilogramSquareMetres(-1), kilogramSquareMetres(1), kilogramSquareMetres(1)))
        .withMessage("roll inertia must not be negative, was -1 kg·m²");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Inertia.of(kilogramSquareMetres(1), kilogramSquareMetres(2), kilogramSquareMetres(4)))
        .withMessage("yaw inertia must be at most that in roll and pitch together, 3 kg·m², was 4 kg·m²");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Inertia.ofBox(Mass.kilograms(1), metres(-1), metres(1), metres(1)))
        .withMessage("length must not be negative, was -1 m");
  }
}
