// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class WingApparentMassTest {
  /** H. Lamb, Hydrodynamics: a disk of radius a moving broadside carries (8/3)·ρ·a³. */
  @Test
  void a_disk_carries_what_lamb_says() {
    double radius = 0.5;
    WingApparentMass disk = WingApparentMass.ofWing(1.2, 2 * radius, eta -> 2 * radius * Math.sqrt(1 - eta * eta), eta -> 0);
    assertThat(disk.heave()).isCloseTo(8.0 / 3 * 1.2 * radius * radius * radius, withinPercentage(0.02));
    assertThat(WingApparentMass.finiteSpanFactor(4 / Math.PI)).isCloseTo(2 / Math.PI, within(1e-14));
  }

  @Test
  void a_plate_may_be_longer_in_either_direction() {
    // the same elliptic plate: 4/3·π·a·b²/E with a the longer half axis, by strips of either direction
    double along = strips(2, 1) * WingApparentMass.finiteSpanFactor(4 * 2 / (Math.PI * 1));
    double across = strips(1, 2) * WingApparentMass.finiteSpanFactor(4 * 1 / (Math.PI * 2));
    assertThat(along).isCloseTo(across, within(1e-12));
  }

  /** Strip value 4/3·π·s·c² of an elliptic plate with half span s and half chord c. */
  private static double strips(double halfSpan, double halfChord) {
    return 4.0 / 3 * Math.PI * halfSpan * halfChord * halfChord;
  }

  @Test
  void a_small_glider_carries_about_a_gram() {
    WingApparentMass air = WingApparentMass.ofWing(1.2, 0.4, eta -> 0.053, eta -> 0.01);
    assertThat(air.heave() * 1000).isCloseTo(1.02, within(0.01));
    assertThat(air.rollInertia()).isCloseTo(air.heave() * 0.4 * 0.4 / 12, withinPercentage(0.01));
    assertThat(air.pitchInertia()).isCloseTo(air.heave() * (0.053 * 0.053 / 32 + 1e-4), withinPercentage(0.01));
    assertThat(air.centreBehind()).isCloseTo(0.01, within(1e-12));
  }

  @Test
  void carried_air_slows_roll_and_nod_of_a_light_model() {
    SteadyFlight glide = new SteadyFlight(6, 1.2, -0.1, 0.0213, 0.0545, 0.4, 9.81);
    BodyInertia body = new BodyInertia(0.02, 1.2e-4, 1.0e-4, 2.1e-4, 0);
    WingApparentMass air = WingApparentMass.ofWing(1.2, 0.4, eta -> 0.0545, eta -> 0.01);
    LongitudinalForces bare = LongitudinalForces.of(glide, body.mass(), LongitudinalDerivatives.ofLiftAndDrag(0.43,
        0.06, 0, 4.3, 0.2, -0.6, 4, -9, 0, 0));
    double without = bare.stateMatrix(glide, body).entry(1, 1);
    double with = bare.with(air).stateMatrix(glide, air.addedTo(body)).entry(1, 1);
    assertThat(with / without).isCloseTo(0.02 / (0.02 + air.heave()), within(1e-12));
    LateralForces across = LateralForces.of(glide,
        new LateralDerivatives(-0.4, -0.1, 0.08, 0, -0.45, -0.03, 0.1, 0.13, -0.1));
    double quick = across.stateMatrix(glide, body).modes().find(ModeKind.ROLL).orElseThrow().real();
    double slow = across.stateMatrix(glide, air.addedTo(body)).modes().find(ModeKind.ROLL).orElseThrow().real();
    assertThat(slow).isGreaterThan(quick).isNegative();
  }

  @Test
  void a_tapered_wing_is_the_sum_of_its_strips() {
    WingApparentMass air = WingApparentMass.ofWing(1.2, 2, eta -> 0.4 - 0.2 * eta, eta -> 0);
    double strips = Math.PI / 4 * 1.2 * 2 * (0.16 - 0.08 + 0.04 / 3);
    assertThat(air.heave()).isCloseTo(strips * WingApparentMass.finiteSpanFactor(2 * 2 / 0.6), withinPercentage(0.01));
  }

  @Test
  void none_changes_nothing() {
    BodyInertia body = new BodyInertia(1, 2, 3, 4, 0.5);
    assertThat(WingApparentMass.NONE.addedTo(body)).isEqualTo(body);
  }
}
