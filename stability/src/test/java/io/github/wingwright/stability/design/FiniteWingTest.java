// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class FiniteWingTest {
  private static FiniteWing tapered(double taper) {
    Planform planform = Planform.tapered(Length.metres(0.5), Length.metres(0.1), Length.metres(0.1 * taper));
    return FiniteWing.of(Wing.of(planform, TestGlider.WEDGE), EstimatedPolar.of(TestGlider.WEDGE), 40_000);
  }

  @Test
  void a_rectangular_wing_stalls_at_the_root_and_a_pointed_one_towards_the_tip() {
    assertThat(tapered(1.0).stall().station()).isLessThan(0.2);
    assertThat(tapered(0.25).stall().station()).isGreaterThan(0.6);
    assertThat(tapered(0.25).findings()).anyMatch(f -> f.subject().equals("stall of the wing"));
    assertThat(tapered(1.0).findings()).noneMatch(f -> f.subject().equals("stall of the wing"));
  }

  @Test
  void at_the_stall_the_section_reaches_its_limit_there_and_nowhere_else() {
    FiniteWing wing = tapered(0.6);
    List<FiniteWing.Station> stations = wing.loading(wing.stall().wingLiftCoefficient(), 81);
    assertThat(stations).allMatch(s -> s.lift() <= s.limit() * 1.001);
    assertThat(stations.stream().mapToDouble(s -> s.lift() / s.limit()).max().orElseThrow()).isBetween(0.995, 1.001);
  }

  /** The mean of c_l·c over the span is the lift coefficient; Simpson is not needed, the trapezoids are fine enough. */
  @Test
  void the_load_along_the_span_adds_up_to_the_lift() {
    List<FiniteWing.Station> stations = tapered(0.6).loading(0.5, 201);
    double sum = 0.0;
    for (int i = 1; i < stations.size(); i++) {
      FiniteWing.Station a = stations.get(i - 1);
      FiniteWing.Station b = stations.get(i);
      sum += 0.5 * (a.load() + b.load()) * (b.place() - a.place());
    }
    assertThat(sum).isCloseTo(0.5, withinPercentage(0.1));
  }

  @Test
  void bad_numbers_are_refused_by_name() {
    assertThatThrownBy(() -> tapered(0.6).loading(0.5, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("number of points must be 2 to 100000, was 1");
    assertThatThrownBy(() -> tapered(0.6).loading(0.5, Integer.MAX_VALUE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("number of points must be 2 to 100000, was 2147483647");
    assertThatThrownBy(() -> tapered(0.6).limit(1.5)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("station");
  }
}
