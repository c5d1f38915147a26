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
import io.github.wingwright.core.quantity.MomentOfInertia;
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
  void a_body_turned_across_has_the_sums_of_its_turned_points() {
    double[][] points = {{0.3, 0.1, 0.05}, {-0.2, 0.04, 0.1}, {0.05, -0.12, -0.07}};
    Inertia own = sums(points);
    double[][] turned = new double[3][];
    for (int i = 0; i < 3; i++) {
      // By 90° from x towards y.
      turned[i] = new double[] {-points[i][1], points[i][0], points[i][2]};
    }
    Inertia expected = sums(turned);
    Inertia got = own.turnedAcross();
    assertThat(got.roll().si()).isCloseTo(expected.roll().si(), within(1e-15));
    assertThat(got.pitch().si()).isCloseTo(expected.pitch().si(), within(1e-15));
    assertThat(got.yaw().si()).isCloseTo(expected.yaw().si(), within(1e-15));
    assertThat(got.productXy().si()).isCloseTo(expected.productXy().si(), within(1e-15));
    assertThat(got.productXz().si()).isCloseTo(expected.productXz().si(), within(1e-15));
    assertThat(got.productYz().si()).isCloseTo(expected.productYz().si(), within(1e-15));
    assertThat(own.times(2).yaw().si()).isCloseTo(2 * own.yaw().si(), within(1e-18));
  }

  /** Points of 1 kg each. */
  private static Inertia sums(double[][] points) {
    double[] s = new double[6];
    for (double[] p : points) {
      s[0] += p[1] * p[1] + p[2] * p[2];
      s[1] += p[0] * p[0] + p[2] * p[2];
      s[2] += p[0] * p[0] + p[1] * p[1];
      s[3] += p[0] * p[1];
      s[4] += p[0] * p[2];
      s[5] += p[1] * p[2];
    }
    return new Inertia(moment(s[0]), moment(s[1]), moment(s[2]), moment(s[3]), moment(s[4]), moment(s[5]));
  }

  private static MomentOfInertia moment(double si) {
    return kilogramSquareMetres(si);
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
