// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import org.junit.jupiter.api.Test;

class QuickPitchTest {
  private static final Airframe GLIDER = Models.glider();
  private static final PitchModel MODEL =
      PitchModel.of(GLIDER)
          .withWingSection(Models.exact(5.5, -0.05, -0.08, 0.9), 3e4)
          .withTailSection(Models.symmetric(), 2e4);

  @Test
  void quick_and_full_neutral_point_agree() {
    Planform wing = GLIDER.wing().planform();
    Tail tail = GLIDER.horizontalTail().orElseThrow();
    double b = wing.span().si();
    double quick =
        QuickPitch.neutralPoint(
            QuickPitch.slope(wing.aspectRatio(), 5.5, wing.sweepAt(0.5).si()),
            wing.aspectRatio(),
            wing.taperRatio(),
            0.0,
            MODEL.terms().fuselageSlope.value(),
            0.8,
            tail.planform().area().si() / wing.area().si(),
            QuickPitch.slope(3.5, 2 * Math.PI, tail.planform().sweepAt(0.5).si()),
            tail.armFrom(GLIDER.wing()).si() / b,
            (tail.placement().z().si() - GLIDER.wing().placement().z().si()) / b);
    assertThat(quick).isCloseTo(MODEL.neutralPoint().fraction(), within(1e-13));
  }

  @Test
  void quick_and_full_trim_agree() {
    PitchTerms t = MODEL.terms();
    NeutralPoint np = MODEL.neutralPoint();
    double h = np.fraction() - 0.12;
    double quick =
        QuickPitch.decalage(
            0.6,
            h,
            -0.08,
            -0.05,
            0.0,
            GLIDER.wing().incidence().si(),
            t.wingSlope.value(),
            t.fuselageSlope.value(),
            t.efficiency.value(),
            t.areaRatio.value(),
            t.tailSlope.value(),
            t.downwash.value(),
            t.tailCentre.value());
    double full = MODEL.trim(np.x().minus(np.meanAerodynamicChord().times(0.12)), 0.6).decalage().si();
    assertThat(quick).isCloseTo(full, within(1e-13));
  }

  @Test
  void the_mean_chord_of_a_tapered_wing_is_that_of_its_planform() {
    Planform wing = GLIDER.wing().planform();
    double expected = wing.meanAerodynamicChord().si() / wing.span().si();
    assertThat(QuickPitch.chordOverSpan(wing.aspectRatio(), wing.taperRatio())).isCloseTo(expected, within(1e-15));
  }
}
