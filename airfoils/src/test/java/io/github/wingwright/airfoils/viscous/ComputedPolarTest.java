// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Angle;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ComputedPolarTest {
  private static ViscousMethod method;
  private static ComputedPolar polar;

  @BeforeAll
  static void compute() {
    method = ViscousMethodTest.section("6409");
    polar = ComputedPolar.of(method, Interval.between(6.14e4, 2e5));
  }

  @Test
  void it_repeats_the_computed_points_of_its_grid() {
    ViscousPoint point = method.polar(2e5, Angle.degrees(-6), Angle.degrees(4), Angle.degrees(1)).get(9);
    assertThat(polar.likelyProfileDrag(point.liftCoefficient(), 2e5))
        .isCloseTo(point.dragCoefficient(), withinPercentage(1));
  }

  @Test
  void measured_values_lie_in_its_bands() {
    // Illinois tunnel: drag at lift 0.65, 6.1e4: 0.0367; Princeton: 0.0313. Zero-lift angle −2.67° (6.1e4), −3.62° (1.0e5).
    assertThat(polar.profileDrag(0.65, 61400).interval().contains(0.0313)).isTrue();
    assertThat(polar.profileDrag(0.65, 61400).interval().contains(0.0367)).isTrue();
    assertThat(polar.zeroLiftAngle(61400).interval().contains(Math.toRadians(-2.67))).isTrue();
    assertThat(polar.zeroLiftAngle(101600).interval().contains(Math.toRadians(-3.62))).isTrue();
    assertThat(polar.zeroLiftAngle(2e5).interval().contains(Math.toRadians(-5.08))).isTrue();
    // Slope 0.0943 per degree at 1.0e5.
    assertThat(polar.liftSlope(101600).interval().contains(Math.toDegrees(0.0943))).isTrue();
  }

  @Test
  void it_never_leaves_its_data_silently() {
    assertThat(polar.findings(0.8, 1.9e5)).isEmpty();
    assertThat(polar.findings(0.8, 3e5)).anyMatch(f -> f.message().contains("other Reynolds numbers"));
    assertThat(polar.findings(2.5, 1.5e5)).anyMatch(f -> f.message().contains("beyond the computed polar"));
    assertThat(polar.findings(0.8, 6.2e4)).anyMatch(f -> f.message().contains("does not come back"));
    assertThat(polar.likelyProfileDrag(0.8, 3e5)).isCloseTo(polar.likelyProfileDrag(0.8, 2e5), within(1e-9));
  }

  @Test
  void one_reynolds_number_is_a_polar_too() {
    ComputedPolar one = ComputedPolar.of(method, Interval.between(2e5, 2e5));
    for (double lift = 0; lift < 1.2; lift += 0.1) {
      assertThat(one.likelyProfileDrag(lift, 2e5)).isEqualTo(polar.likelyProfileDrag(lift, 2e5));
    }
    assertThat(one.reynoldsRange().lower()).isEqualTo(one.reynoldsRange().upper());
    assertThat(one.findings(0.8, 2.1e5)).anyMatch(f -> f.message().contains("other Reynolds numbers"));
  }

  @Test
  void a_range_outside_the_method_is_refused() {
    assertThatThrownBy(() -> ComputedPolar.of(method, Interval.between(10, 1e5))).hasMessageContaining("5000");
  }
}
