// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import org.junit.jupiter.api.Test;

class LateralGuidelinesTest {
  private static LateralDerivatives of(double dihedralEffect, double weathercock) {
    return new LateralDerivatives(-0.4, dihedralEffect, weathercock, 0, -0.45, -0.03, 0.1, 0.13, -0.1);
  }

  @Test
  void a_good_model_is_left_alone_where_full_size_ranges_would_scold_it() {
    LateralDerivatives model = of(-0.2, 0.05);
    assertThat(LateralGuidelines.handLaunchedModel().check(model)).isEmpty();
    assertThat(LateralGuidelines.lightAeroplane().check(model)).hasSize(2);
  }

  @Test
  void a_fin_that_is_too_small_is_said_in_plain_words() {
    assertThat(LateralGuidelines.handLaunchedModel().check(of(-0.2, -0.01)).get(0)).satisfies(finding -> {
      assertThat(finding.severity()).isEqualTo(Severity.SERIOUS);
      assertThat(finding.message()).contains("Enlarge the fin");
    });
  }

  @Test
  void a_wing_that_rolls_into_the_wind_asks_for_dihedral() {
    assertThat(LateralGuidelines.lightAeroplane().check(of(0.02, 0.1)).get(0).message()).contains("Add dihedral");
  }

  @Test
  void wind_from_starboard_needs_rudder_to_port_and_a_dead_port_engine_rudder_to_starboard() {
    double power = RudderDemand.rudderPower(3, 0.045, 0.6);
    assertThat(power).isCloseTo(-0.0729, within(1e-12));
    // an aircraft that wants to turn into the wind from starboard is held straight with the nose to port
    assertThat(RudderDemand.crosswind(0.08, 0.2, power)).isPositive();
    assertThat(RudderDemand.engineOut(1000, 2, 1500, 16, 11, power)).isNegative();
    // balance: rudder and engine together turn nothing
    double delta = RudderDemand.engineOut(1000, 2, 1500, 16, 11, power);
    assertThat(power * delta * 1500 * 16 * 11).isCloseTo(1000 * 2, within(1e-9));
    assertThat(RudderDemand.GREATEST.check(RudderDemand.crosswind(0.12, RudderDemand.USUAL_CROSSWIND, -0.05)))
        .isPresent();
  }
}
