// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;

class ElevatorRangeTest {
  private static final AirState AIR = AirState.of(Pressure.pascals(101325), Temperature.kelvins(293.15));
  private static final Mass MASS = Mass.grams(40);
  private static final ControlSurface ELEVATOR = new ControlSurface(ControlSurface.Kind.ELEVATOR, 0.35, 0, 1);

  /** The glider with its tail set for trim at a lift coefficient of 0.5 and a margin of 15 %. */
  private static PitchModel trimmed() {
    PitchModel model =
        PitchModel.of(Models.glider())
            .withWingSection(Models.exact(5.5, -0.05, -0.08, 0.9), 3e4)
            .withTailSection(Models.symmetric(), 2e4);
    Airframe a = model.airframe();
    Tail tail = a.horizontalTail().orElseThrow().withIncidence(model.trim(centre(model, 0.15), 0.5).tailIncidence());
    return model.withAirframe(new Airframe(a.fuselage(), a.wing(), List.of(tail)));
  }

  private static Length centre(PitchModel model, double margin) {
    NeutralPoint np = model.neutralPoint();
    return np.x().minus(np.meanAerodynamicChord().times(margin));
  }

  private static ElevatorRange range(double up, double down) {
    PitchModel model = trimmed();
    return ElevatorRange.of(
        model, centre(model, 0.15), ELEVATOR, Angle.degrees(up), Angle.degrees(down), MASS, AIR);
  }

  @Test
  void with_the_elevator_neutral_it_holds_what_the_decalage_was_built_for() {
    ElevatorRange neutral = range(0, 0);
    assertThat(neutral.lifts().lower()).isCloseTo(0.5, within(1e-12));
    assertThat(neutral.lifts().upper()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void up_elevator_slows_down_and_down_elevator_speeds_up() {
    ElevatorRange range = range(2, 2);
    ElevatorRange neutral = range(0, 0);
    assertThat(range.slowest().si()).isLessThan(neutral.slowest().si());
    assertThat(range.fastest().si()).isGreaterThan(neutral.fastest().si());
    double expected = Math.sqrt(2 * 0.04 * 9.80665 / (AIR.density().si() * 0.02 * 0.5));
    assertThat(neutral.slowest().si()).isCloseTo(expected, within(1e-9));
  }

  @Test
  void the_slowest_speed_is_never_below_the_stall() {
    ElevatorRange wide = range(25, 10);
    assertThat(wide.lifts().upper()).isEqualTo(0.9);
    assertThat(range(1, 1).findings()).anySatisfy(f -> assertThat(f.message()).contains("more travel or more chord"));
  }

  @Test
  void deflection_works_like_its_share_of_decalage() {
    // τ·δ_e taken from the decalage: a tail set up by that angle holds the same lift.
    PitchModel model = trimmed();
    Length cg = centre(model, 0.15);
    double lift = range(0, 1).lifts().lower();
    double decalage = model.trim(cg, lift).decalage().si();
    double built = model.trim(cg, 0.5).decalage().si();
    double tau = ControlSurface.effectiveness(0.35);
    assertThat(built - decalage).isCloseTo(tau * Math.toRadians(1), within(1e-12));
  }

  @Test
  void an_unstable_aircraft_is_told_so() {
    PitchModel model = trimmed();
    assertThatThrownBy(
            () ->
                ElevatorRange.of(
                    model, centre(model, -0.05), ELEVATOR, Angle.degrees(10), Angle.degrees(10), MASS, AIR))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("static margin is -5.0 %")
        .hasMessageContaining("Move the centre of gravity forward first");
  }

  @Test
  void the_decalage_as_built_is_read_from_the_airframe_and_the_travel_is_given() {
    List<Step> steps = range(2, 3).workings().steps();
    assertThat(steps)
        .filteredOn(step -> step.symbol().equals("δ_b"))
        .isNotEmpty()
        .allMatch(step -> step.source().equals(Sources.AIRFRAME));
    assertThat(steps)
        .filteredOn(step -> step instanceof Step.Given && step.source().equals(Source.BRIEF))
        .extracting(Step::symbol)
        .containsOnly("δ_e", "E");
  }
}
