// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.testing.Seeded;
import org.junit.jupiter.api.Test;

class TaperedPlanformTest {
  private static final double[] SPAN = {0.1, 40};
  private static final double[] ASPECT = {1, 40};
  private static final double[] TAPER = {0, 1.5};

  @Test
  void the_documented_example_holds() {
    assertThat(TaperedPlanform.meanAerodynamicChord(0.060, 0.5)).isCloseTo(0.0466667, within(5e-8));
    assertThat(TaperedPlanform.sweepTangent(0, 0.25, 0, 8, 0.5)).isCloseTo(0.0416667, within(5e-8));
  }

  @Test
  void span_area_and_aspect_ratio_give_each_other() {
    Seeded.points(1, 300, SPAN, ASPECT).forEach(p -> {
      double area = TaperedPlanform.area(p[0], p[1]);
      assertThat(TaperedPlanform.span(area, p[1])).isCloseTo(p[0], withinPercentage(1e-12));
      assertThat(TaperedPlanform.aspectRatio(p[0], area)).isCloseTo(p[1], withinPercentage(1e-12));
    });
  }

  @Test
  void the_chords_enclose_the_area_and_the_mean_chord_is_the_root_mean_square_of_strips() {
    Seeded.points(2, 300, SPAN, ASPECT, TAPER).forEach(p -> {
      double area = TaperedPlanform.area(p[0], p[1]);
      double root = TaperedPlanform.rootChord(area, p[0], p[2]);
      double tip = TaperedPlanform.tipChord(p[2], root);
      assertThat(0.5 * p[0] * (root + tip)).isCloseTo(area, withinPercentage(1e-12));
      // Simpson's rule is exact for the parabola c² and the parabola c·y.
      double mid = 0.5 * (root + tip);
      double half = 0.5 * p[0];
      double square = half / 6.0 * (root * root + 4.0 * mid * mid + tip * tip);
      double moment = half / 6.0 * (0.0 + 4.0 * mid * 0.5 * half + tip * half);
      assertThat(TaperedPlanform.meanAerodynamicChord(root, p[2]))
          .isCloseTo(2.0 * square / area, withinPercentage(1e-11));
      assertThat(TaperedPlanform.meanAerodynamicChordPosition(p[0], p[2]))
          .isCloseTo(2.0 * moment / area, withinPercentage(1e-11));
    });
  }

  @Test
  void sweep_there_and_back_is_no_change() {
    Seeded.points(3, 300, new double[] {-1, 1}, new double[] {0, 1}, new double[] {0, 1}, ASPECT, TAPER).forEach(p -> {
      double there = TaperedPlanform.sweepTangent(p[0], p[1], p[2], p[3], p[4]);
      assertThat(TaperedPlanform.sweepTangent(there, p[2], p[1], p[3], p[4])).isCloseTo(p[0], within(1e-12));
      assertThat(TaperedPlanform.sweepTangent(p[0], 0, 1, p[3], 1)).isEqualTo(p[0]);
    });
  }
}
