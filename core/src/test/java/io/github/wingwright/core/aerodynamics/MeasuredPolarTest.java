// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MeasuredPolarTest {
  private static final Source OWN = Source.library("invented for the test");
  private static final EstimatedPolar ESTIMATE = EstimatedPolar.of(new FourDigitShape(0.04, 0.06));

  /** A section with c_l = 5·(α + 3°) up to a stall at c_l = 1, and c_d = (0.02 + 0.05·c_l²)·√(50 000/Re). */
  private static List<MeasuredPolar.Point> run(double reynolds) {
    List<MeasuredPolar.Point> points = new ArrayList<>();
    for (int i = -2; i <= 10; i++) {
      double cl = 0.1 * i;
      points.add(
          MeasuredPolar.Point.of(reynolds, cl, (0.02 + 0.05 * cl * cl) * Math.sqrt(5e4 / reynolds))
              .at(Angle.radians(cl / 5.0 - Math.toRadians(3.0)))
              .withMoment(-0.08));
    }
    points.add(MeasuredPolar.Point.of(reynolds, 0.9001, 0.2).at(Angle.degrees(15)).withMoment(-0.08));
    return points;
  }

  private static MeasuredPolar polar() {
    List<MeasuredPolar.Point> points = new ArrayList<>(run(5e4));
    points.addAll(run(1e5));
    Collections.shuffle(points, new Random(7));
    return MeasuredPolar.of("test section", OWN, points, ESTIMATE);
  }

  @Test
  void at_a_measured_point_the_answer_is_the_point() {
    assertThat(polar().likelyProfileDrag(0.5, 5e4)).isCloseTo(0.0325, within(1e-12));
    assertThat(polar().likelyProfileDrag(0.5, 1e5)).isCloseTo(0.0325 * Math.sqrt(0.5), within(1e-12));
  }

  @Test
  void between_runs_it_is_straight_against_the_logarithm_of_the_reynolds_number() {
    double middle = Math.sqrt(5e4 * 1e5);
    assertThat(polar().likelyProfileDrag(0.5, middle))
        .isCloseTo(0.5 * (0.0325 + 0.0325 * Math.sqrt(0.5)), within(1e-12));
    assertThat(polar().likelyProfileDrag(0.45, 5e4)).isCloseTo(0.5 * (0.028 + 0.0325), within(1e-12));
  }

  @Test
  void beyond_the_data_the_edge_is_kept_and_a_finding_says_so() {
    assertThat(polar().likelyProfileDrag(0.5, 2e4)).isCloseTo(0.0325, within(1e-12));
    assertThat(polar().findings(0.5, 2e4)).extracting(Finding::subject).containsExactly("measured section data");
    assertThat(polar().findings(-0.5, 7e4)).extracting(Finding::subject).containsExactly("measured section data");
    assertThat(polar().findings(0.5, 7e4)).isEmpty();
  }

  @Test
  void points_behind_the_stall_are_left_out() {
    assertThat(polar().likelyProfileDrag(0.9001, 5e4)).isLessThan(0.07);
  }

  @Test
  void the_lift_line_is_recovered_from_the_angles() {
    assertThat(polar().zeroLiftAngle(7e4).likely()).isCloseTo(Math.toRadians(-3.0), within(1e-10));
    assertThat(polar().liftSlope(7e4).likely()).isCloseTo(5.0, within(1e-9));
    assertThat(polar().moment(7e4).likely()).isCloseTo(-0.08, within(1e-12));
    assertThat(polar().usableLift(7e4).likely()).isCloseTo(0.9, within(1e-12));
  }

  @Test
  void what_was_not_measured_comes_from_the_estimate_with_a_finding() {
    List<MeasuredPolar.Point> bare =
        List.of(MeasuredPolar.Point.of(5e4, 0.2, 0.02), MeasuredPolar.Point.of(5e4, 0.8, 0.03));
    MeasuredPolar polar = MeasuredPolar.of("bare", OWN, bare, ESTIMATE);
    assertThat(polar.zeroLiftAngle(5e4)).isEqualTo(ESTIMATE.zeroLiftAngle(5e4));
    assertThat(polar.findings(0.5, 5e4)).hasSize(1);
    assertThat(polar.findings(0.5, 5e4).get(0).message()).contains("come from an estimate");
  }

  @Test
  void bad_tables_are_refused_in_words() {
    assertThatThrownBy(() -> MeasuredPolar.of("none", OWN, List.of(), ESTIMATE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a measured polar needs points, got none");
    List<MeasuredPolar.Point> one = List.of(MeasuredPolar.Point.of(5e4, 0.2, 0.02));
    assertThatThrownBy(() -> MeasuredPolar.of("one", OWN, one, ESTIMATE)).hasMessageContaining("at least two points");
    List<MeasuredPolar.Point> twice =
        List.of(MeasuredPolar.Point.of(5e4, 0.2, 0.02), MeasuredPolar.Point.of(5e4, 0.2, 0.03));
    assertThatThrownBy(() -> MeasuredPolar.of("twice", OWN, twice, ESTIMATE)).hasMessageContaining("lifts of a run must differ");
    assertThatThrownBy(() -> MeasuredPolar.Point.of(5e4, Double.NaN, 0.02)).hasMessage("lift coefficient must be finite, was NaN");
    assertThatThrownBy(() -> MeasuredPolar.Point.of(5e4, 0.1, -0.02)).hasMessage("drag coefficient must be positive, was -0.02");
  }
}
