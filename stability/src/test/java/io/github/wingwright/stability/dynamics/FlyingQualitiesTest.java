// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlyingQualitiesTest {
  private static Modes of(Mode... modes) {
    return new Modes(List.of(modes));
  }

  private static Mode pair(ModeKind kind, double damping, double frequency) {
    return new Mode(kind, -damping * frequency, frequency * Math.sqrt(1 - damping * damping));
  }

  @Test
  void a_good_glider_is_not_scolded_by_the_model_guidelines_where_full_size_ones_would() {
    Modes glider = of(pair(ModeKind.PHUGOID, 0.02, 1.5), new Mode(ModeKind.SPIRAL, Math.log(2) / 6, 0));
    assertThat(FlyingQualities.freeFlightModel().check(glider)).isEmpty();
    assertThat(FlyingQualities.lightAeroplane().check(glider)).hasSize(2);
  }

  @Test
  void a_quick_spiral_asks_for_dihedral() {
    List<Finding> findings =
        FlyingQualities.freeFlightModel().check(of(new Mode(ModeKind.SPIRAL, Math.log(2) / 1, 0)));
    assertThat(findings).singleElement().satisfies(f -> assertThat(f.message()).contains("Add dihedral"));
  }

  @Test
  void a_stable_spiral_is_never_complained_about() {
    assertThat(FlyingQualities.lightAeroplane().check(of(new Mode(ModeKind.SPIRAL, -2, 0)))).isEmpty();
  }

  @Test
  void a_nose_that_runs_away_is_serious_and_says_what_to_move() {
    Finding finding = FlyingQualities.freeFlightModel()
        .check(of(new Mode(ModeKind.PITCH_DIVERGENCE, 1.4, 0))).get(0);
    assertThat(finding.severity()).isEqualTo(Severity.SERIOUS);
    assertThat(finding.message()).contains("doubles every 0.495 s").contains("Move the centre of gravity forward");
    assertThat(FlyingQualities.freeFlightModel().check(of(new Mode(ModeKind.YAW_DIVERGENCE, 1.4, 0))).get(0)
        .message()).contains("Enlarge the fin");
  }

  @Test
  void a_phugoid_that_swings_up_is_serious() {
    assertThat(FlyingQualities.freeFlightModel().check(of(pair(ModeKind.PHUGOID, -0.02, 1))).get(0).severity())
        .isEqualTo(Severity.SERIOUS);
  }

  @Test
  void guidelines_carry_their_sources() {
    assertThat(FlyingQualities.lightAeroplane().guidelines()).hasSize(7)
        .allSatisfy(g -> assertThat(g.source().cite()).contains("MIL-F-8785C"));
    assertThat(FlyingQualities.freeFlightModel().guidelines())
        .allSatisfy(g -> assertThat(g.source().cite()).contains("common practice"));
  }
}
