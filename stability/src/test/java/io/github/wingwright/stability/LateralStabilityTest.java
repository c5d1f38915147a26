// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class LateralStabilityTest {
  private static final double DEGREE = Math.toRadians(1);

  @Test
  void the_examples_of_the_rule_hold() {
    // M. Drela, letter to a soaring mailing list: l_v = 30 in, b = 78.4 in, C_L = 0.75 need 9.8°; built with 12.1°.
    double needed = LateralStability.dihedral(5 * DEGREE, 0.75, 78.4, 30);
    assertThat(Math.toDegrees(needed)).isCloseTo(9.8, within(1e-12));
    double built = LateralStability.parameter(30, 78.4, 12.1 * DEGREE, 0.75);
    assertThat(Math.toDegrees(built)).isCloseTo(6.17347, within(1e-5));
    // The second case: l_v = 40, b = 120, C_L = 1 need 15°.
    assertThat(Math.toDegrees(LateralStability.dihedral(5 * DEGREE, 1, 120, 40))).isCloseTo(15, within(1e-12));
  }

  @Test
  void the_dihedral_needed_gives_a_neutral_spiral() {
    double gamma = LateralStability.dihedral(LateralStability.NEUTRAL, 0.7, 0.4, 0.19);
    assertThat(LateralStability.parameter(0.19, 0.4, gamma, 0.7)).isCloseTo(LateralStability.NEUTRAL, within(1e-16));
  }

  @Test
  void more_dihedral_and_a_longer_arm_help_more_lift_hurts() {
    double base = LateralStability.parameter(0.19, 0.4, 8 * DEGREE, 0.7);
    assertThat(LateralStability.parameter(0.19, 0.4, 10 * DEGREE, 0.7)).isGreaterThan(base);
    assertThat(LateralStability.parameter(0.22, 0.4, 8 * DEGREE, 0.7)).isGreaterThan(base);
    assertThat(LateralStability.parameter(0.19, 0.4, 8 * DEGREE, 0.9)).isLessThan(base);
  }

  @Test
  void a_flat_wing_is_told_how_much_dihedral_to_add() {
    LateralStability flat = LateralStability.of(Models.glider(2), 0.7, AircraftClass.HAND_LAUNCHED_GLIDER);
    assertThat(flat.isSpirallyStable()).isFalse();
    assertThat(flat.findings()).anySatisfy(f -> assertThat(f.message()).contains("Add dihedral, to "));
    double enough = flat.neededDihedral().degrees() + 0.01;
    LateralStability bent = LateralStability.of(Models.glider(enough), 0.7, AircraftClass.HAND_LAUNCHED_GLIDER);
    assertThat(bent.isSpirallyStable()).isTrue();
    assertThat(bent.findings()).noneSatisfy(f -> assertThat(f.subject()).isEqualTo("spiral parameter"));
  }

  @Test
  void polyhedral_counts_with_its_equivalent_angle() {
    // Rectangular wing, inner half flat, outer half at 20°: weights y dy, so ¾ of 20°.
    Length half = Length.millimetres(100);
    Length chord = Length.millimetres(50);
    Planform planform =
        Planform.symmetric(
            chord,
            List.of(
                new Panel(half, chord, Angle.ZERO, Angle.ZERO, Angle.ZERO),
                new Panel(half, chord, Angle.ZERO, Angle.degrees(20), Angle.ZERO)));
    Airframe glider = Models.glider();
    Wing wing = new Wing(planform, Models.PLATE, Placement.at(Length.millimetres(80), Length.ZERO), Angle.ZERO);
    Airframe polyhedral = new Airframe(glider.fuselage(), wing, glider.tails());
    LateralStability lateral = LateralStability.of(polyhedral, 0.6, AircraftClass.HAND_LAUNCHED_GLIDER);
    assertThat(lateral.equivalentDihedral().degrees()).isCloseTo(15, within(1e-12));
  }

  @Test
  void needs_a_fin_behind_the_wing() {
    Airframe glider = Models.glider();
    Airframe finless = new Airframe(glider.fuselage(), glider.wing(), List.of());
    assertThatThrownBy(() -> LateralStability.of(finless, 0.7, AircraftClass.HAND_LAUNCHED_GLIDER))
        .hasMessage("spiral parameter needs a vertical tail, the airframe has none");
    assertThatThrownBy(() -> LateralStability.of(glider, 0, AircraftClass.HAND_LAUNCHED_GLIDER))
        .hasMessage("lift coefficient must be positive, was 0.0");
  }
}
