// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.feet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TailVolumeTest {
  @Test
  void the_documented_examples_hold_in_feet_as_in_metres() {
    assertThat(TailVolume.coefficient(30.7307, 15, 134, 4.3)).isCloseTo(0.8, within(1e-5));
    assertThat(TailVolume.area(0.065, 17, 134, 33)).isCloseTo(16.9076, within(1e-4));
    Area area = TailVolume.area(Tail.Role.VERTICAL, 0.065, feet(17), Models.lightTwinWing());
    assertThat(area.squareFeet()).isCloseTo(16.9076, within(1e-3));
  }

  @Test
  void coefficient_area_and_arm_undo_each_other() {
    Seeded.points(3, 200, new double[] {0.01, 2}, new double[] {0.1, 5}, new double[] {0.1, 9}, new double[] {0.05, 3})
        .forEach(
            p -> {
              double v = TailVolume.coefficient(p[0], p[1], p[2], p[3]);
              assertThat(TailVolume.area(v, p[1], p[2], p[3])).isCloseTo(p[0], within(1e-14 * 9));
              assertThat(TailVolume.arm(v, p[0], p[2], p[3])).isCloseTo(p[1], within(1e-14 * 9));
            });
  }

  @Test
  void a_coefficient_about_the_centre_of_gravity_is_smaller_if_that_lies_behind_the_quarter_chord() {
    // h = 0.35: the arm from the quarter chord is 0.1 c̄ longer than that from the centre of gravity.
    double armFromCentre = 0.17;
    double chord = 0.1;
    double arm = TailVolume.armFromQuarterChord(armFromCentre, 0.1 * chord);
    assertThat(arm).isEqualTo(0.18, within(1e-15));
    double about = TailVolume.coefficient(0.02, armFromCentre, 0.1, chord);
    double own = TailVolume.coefficient(0.02, arm, 0.1, chord);
    assertThat(about).isLessThan(own);
    assertThat(TailVolume.fromCentreOfGravity(about, 0.2, 0.35)).isCloseTo(own, within(1e-15));
  }

  @Test
  void the_tail_of_an_airframe_is_measured_from_quarter_chord_to_quarter_chord() {
    var glider = Models.glider();
    Tail tail = glider.horizontalTail().orElseThrow();
    double arm = tail.quarterChordX().si() - glider.wing().quarterChordX().si();
    double byHand =
        45e-4 * arm / (glider.wing().planform().area().si() * glider.wing().planform().meanAerodynamicChord().si());
    assertThat(TailVolume.of(tail, glider.wing())).isCloseTo(byHand, within(1e-12));
    assertThat(byHand).isBetween(0.5, 1.2);
  }

  @Test
  void refuses_what_cannot_be_a_tail() {
    assertThatThrownBy(() -> TailVolume.area(Tail.Role.HORIZONTAL, 0.6, Length.millimetres(-5), Models.lightTwinWing()))
        .hasMessage("tail arm must be positive, was -5 mm");
    assertThatThrownBy(() -> TailVolume.area(Tail.Role.HORIZONTAL, Double.NaN, feet(5), Models.lightTwinWing()))
        .hasMessageContaining("tail volume coefficient must be positive, was NaN");
  }

  @ParameterizedTest
  @EnumSource(AircraftClass.class)
  void every_class_has_ranges_that_hold_its_typical_values(AircraftClass one) {
    for (Tail.Role role : List.of(Tail.Role.HORIZONTAL, Tail.Role.VERTICAL)) {
      Guideline volume = one.tailVolume(role);
      assertThat(volume.check(one.typicalTailVolume(role))).as(one + " " + role).isEmpty();
      assertThat(one.tailAspectRatio(role).range().width()).isPositive();
      assertThat(one.tailTaperRatio(role).range().width()).isPositive();
    }
    assertThat(one.tailEfficiency().check(one.typicalTailEfficiency())).isEmpty();
    assertThat(one.staticMargin().range().lower()).isNotNegative();
  }

  @Test
  void small_models_have_ranges_of_their_own_beside_the_full_size_ones() {
    Guideline model = AircraftClass.HAND_LAUNCHED_GLIDER.tailVolume(Tail.Role.HORIZONTAL);
    assertThat(model.range().lower()).isEqualTo(0.5);
    assertThat(model.range().upper()).isEqualTo(0.8);
    assertThat(model.source().cite()).isEqualTo("common practice, no source");
    assertThat(AircraftClass.RADIO_CONTROLLED_MODEL.tailVolume(Tail.Role.VERTICAL).range().lower()).isEqualTo(0.02);
    // A model's fin of V_v = 0.035 is right for its class; a light twin's range would scold it.
    assertThat(AircraftClass.HAND_LAUNCHED_GLIDER.tailVolume(Tail.Role.VERTICAL).check(0.035)).isEmpty();
    assertThat(AircraftClass.TWIN_ENGINE.tailVolume(Tail.Role.VERTICAL).check(0.035)).isPresent();
  }

  @Test
  void a_T_tail_and_an_all_moving_tail_need_a_little_less() {
    Guideline usual = AircraftClass.SINGLE_ENGINE.tailVolume(Tail.Role.HORIZONTAL);
    Guideline high = TailArrangement.T_TAIL.tailVolume(AircraftClass.SINGLE_ENGINE, Tail.Role.HORIZONTAL);
    assertThat(high.range().lower()).isCloseTo(0.95 * usual.range().lower(), within(1e-15));
    assertThat(high.appliesTo()).endsWith("with a T-tail");
    assertThat(TailArrangement.CONVENTIONAL.tailVolume(AircraftClass.SINGLE_ENGINE, Tail.Role.VERTICAL))
        .isEqualTo(AircraftClass.SINGLE_ENGINE.tailVolume(Tail.Role.VERTICAL));
    assertThat(TailArrangement.ALL_MOVING.factor(Tail.Role.HORIZONTAL)).isBetween(0.85, 0.9);
    assertThat(TailArrangement.TWIN_FINS.factor(Tail.Role.VERTICAL)).isEqualTo(TwinFins.COEFFICIENT_FACTOR);
  }
}
