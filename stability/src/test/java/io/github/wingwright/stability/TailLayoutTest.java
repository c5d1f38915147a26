// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.testing.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** V-tails, twin fins, arms and control surfaces. */
class TailLayoutTest {
  @Test
  void a_V_tail_saves_no_area_and_projects_back_to_the_tails_it_replaces() {
    VTail v = VTail.replacing(Area.squareCentimetres(45), Area.squareCentimetres(15));
    assertThat(v.area().squareCentimetres()).isCloseTo(60, within(1e-12));
    assertThat(v.dihedral().degrees()).isCloseTo(30, within(1e-12));
    assertThat(v.equivalentHorizontal().squareCentimetres()).isCloseTo(45, within(1e-12));
    assertThat(v.equivalentVertical().squareCentimetres()).isCloseTo(15, within(1e-12));
    assertThat(v.projectedArea().squareCentimetres()).isCloseTo(60 * Math.cos(Math.PI / 6), within(1e-12));
    assertThat(v.workings().steps()).hasSize(4);
  }

  @Test
  void pitch_and_yaw_share_the_slope_of_a_V_tail() {
    Seeded.doubles(3, 100, 0, 1.5)
        .forEach(
            g -> {
              double pitch = VTail.pitchSlope(4.0, g);
              double side = VTail.sideForceSlope(1.0, 4.0, g);
              assertThat(pitch - side).isCloseTo(4.0, within(1e-14));
              assertThat(VTail.sideForceSlope(VTail.ANTISYMMETRIC_FACTOR, 4.0, g)).isCloseTo(0.7 * side, within(1e-14));
            });
    // Sign: wind from starboard pushes the tail to port.
    assertThat(VTail.sideForceSlope(0.7, 4.0, 0.6)).isNegative();
  }

  @Test
  void twin_fins_share_the_area_at_the_tips_of_the_tailplane() {
    Airframe glider = Models.glider();
    Tail fin = glider.verticalTail().orElseThrow();
    Tail level = glider.horizontalTail().orElseThrow();
    TwinFins twins = TwinFins.replacing(fin, level);
    assertThat(twins.area().si()).isCloseTo(fin.planform().area().si(), within(1e-18));
    assertThat(twins.port().placement().y().si()).isEqualTo(-twins.starboard().placement().y().si());
    assertThat(twins.starboard().placement().y().si()).isCloseTo(0.5 * level.planform().span().si(), within(1e-15));
    assertThat(twins.port().planform().span().si())
        .isCloseTo(fin.planform().span().si() / Math.sqrt(2), within(1e-12));
    assertThat(twins.port().quarterChordX().si()).isCloseTo(fin.quarterChordX().si(), within(1e-12));
    assertThatThrownBy(() -> TwinFins.replacing(level, fin)).hasMessageContaining("need a vertical and a horizontal");
  }

  @Test
  void the_arm_of_least_wetted_area_is_the_least() {
    double q = TailArm.tailVolume(0.02, 0.6, 0.05, 0.04, 0.4);
    assertThat(q).isCloseTo(0.92e-3, within(1e-15));
    double arm = TailArm.leastWetted(2.06, q, Math.PI * 0.01);
    assertThat(arm).isCloseTo(0.2456, within(1e-4));
    double least = TailArm.wettedArea(arm, 2.06, q, Math.PI * 0.01);
    Seeded.doubles(4, 100, 0.5, 2)
        .forEach(f -> assertThat(TailArm.wettedArea(f * arm, 2.06, q, Math.PI * 0.01)).isGreaterThanOrEqualTo(least));
    // Flat: 20 % more arm costs 1.7 % of this area.
    assertThat(TailArm.wettedArea(1.2 * arm, 2.06, q, Math.PI * 0.01) / least).isCloseTo(1.0167, within(1e-4));
  }

  /** Thin-aerofoil theory, closed form: τ(½) = ½ + 1/π, τ(0) = 0, τ(1) = 1. */
  @ParameterizedTest
  @CsvSource({"0, 0", "0.5, 0.818309886", "1, 1", "0.3, 0.6607"})
  void a_flap_turns_the_zero_lift_line(double chord, double expected) {
    assertThat(ControlSurface.effectiveness(chord)).isCloseTo(expected, within(1e-4));
  }

  @Test
  void the_effectiveness_is_the_integral_of_the_bent_mean_line() {
    // α₀ = −(1/π)·∫ (dy/dx)(cos θ − 1) dθ for a line with slope −δ behind the hinge.
    Seeded.doubles(6, 20, 0.05, 0.9)
        .forEach(
            e -> {
              int n = 200_000;
              double sum = 0;
              for (int i = 0; i < n; i++) {
                double theta = Math.PI * (i + 0.5) / n;
                double x = 0.5 * (1 - Math.cos(theta));
                sum += x > 1 - e ? (1 - Math.cos(theta)) / n : 0;
              }
              assertThat(ControlSurface.effectiveness(e)).isCloseTo(sum, within(2e-5));
            });
  }

  @ParameterizedTest
  @EnumSource(AircraftClass.class)
  void the_usual_controls_of_every_class_are_in_their_own_range(AircraftClass one) {
    for (ControlSurface.Kind kind : ControlSurface.Kind.values()) {
      ControlSurface usual = ControlSurface.usual(kind, one);
      assertThat(usual.findings()).as(usual.toString()).isEmpty();
    }
  }

  @Test
  void areas_and_odd_sizes_of_controls() {
    Planform wing = Models.glider().wing().planform();
    ControlSurface whole = new ControlSurface(ControlSurface.Kind.ELEVATOR, 0.4, 0, 1);
    assertThat(whole.area(wing).si()).isCloseTo(0.4 * wing.area().si(), within(1e-12));
    assertThat(new ControlSurface(ControlSurface.Kind.AILERON, 0.4, 0.8, 0.9).findings()).hasSize(2);
    assertThatThrownBy(() -> new ControlSurface(ControlSurface.Kind.RUDDER, 1.4, 0, 1))
        .hasMessage("rudder chord fraction must be 0.0 to 1.0, was 1.4");
  }
}
