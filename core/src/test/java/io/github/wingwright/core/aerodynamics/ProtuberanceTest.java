// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import org.junit.jupiter.api.Test;

class ProtuberanceTest {

  @Test
  void layers_are_as_thick_as_in_the_textbook_example() {
    // Anderson, Introduction to Flight, examples 4.23 and 4.24: 4.06e-4 m and 1.39e-3 m (answers from memory)
    assertThat(Protuberance.laminarThickness(0.05, 410844.046954)).isCloseTo(4.06e-4, within(5e-7));
    assertThat(Protuberance.turbulentThickness(0.05, 410844.046954)).isCloseTo(1.39e-3, within(5e-6));
    assertThat(Protuberance.turbulentThickness(0.05, 410844.046954)).isCloseTo(0.001394557, within(5e-10));
  }

  @Test
  void the_shelter_is_the_mean_of_the_profile_over_the_height() {
    double mean =
        Quadrature.integrate(y -> Math.pow(y / 3e-3, 2.0 / 7.0), 0.0, 1e-3, Tolerance.relative(1e-8)).value() / 1e-3;
    assertThat(Protuberance.shelterTurbulent(1e-3, 3e-3)).isCloseTo(mean, within(1e-6));
    assertThat(Protuberance.shelterTurbulent(1, 1)).isCloseTo(0.777778, within(5e-7));
    assertThat(Protuberance.shelterTurbulent(1, 10)).isCloseTo(0.402848, within(5e-7));
    assertThat(Protuberance.shelterLaminar(1e-4, 0.01, 4000)).isCloseTo(0.0147, within(5e-5));
  }

  @Test
  void a_sheltered_thing_drags_less_and_a_tall_one_as_in_the_free_stream() {
    Area front = Area.squareMillimetres(10);
    ItemDrag free = Protuberance.FLAT_PLATE.of("tab", front);
    ItemDrag low = Protuberance.FLAT_PLATE.sheltered("tab", front, Length.millimetres(1), Length.millimetres(10));
    ItemDrag tall = Protuberance.FLAT_PLATE.sheltered("tab", front, Length.millimetres(12), Length.millimetres(10));
    assertThat(free.dragArea(6, 1.5e-5, 0)).isCloseTo(1.28e-5, within(1e-18));
    assertThat(low.dragArea(6, 1.5e-5, 0)).isCloseTo(0.402848 * 1.28e-5, within(1e-11));
    assertThat(tall.dragArea(6, 1.5e-5, 0)).isEqualTo(free.dragArea(6, 1.5e-5, 0));
  }

  @Test
  void an_idle_propeller_drags_with_its_blades() {
    // Raymer sec. 12.6.7: D/q = 0.1·σ·A_disk feathered, 0.8·σ·A_disk stopped, σ about 0.04 for each blade
    Area disk = Area.squareMetres(Math.PI / 4 * 0.0625);
    double solidity = IdlePropeller.solidity(2);
    assertThat(solidity).isCloseTo(0.08, within(1e-15));
    assertThat(IdlePropeller.STOPPED.of("propeller", solidity, disk).dragArea(6, 1.5e-5, 0)).isCloseTo(31.4e-4, within(5e-6));
    assertThat(IdlePropeller.FEATHERED.of("propeller", solidity, disk).dragArea(6, 1.5e-5, 0))
        .isCloseTo(0.1 * 0.08 * disk.si(), within(1e-15));
    assertThat(IdlePropeller.STOPPED.factor() / IdlePropeller.FEATHERED.factor()).isCloseTo(8.0, within(1e-12));
    assertThat(IdlePropeller.STOPPED.source().cite()).contains("Raymer");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> IdlePropeller.STOPPED.of("propeller", 0.7, disk))
        .withMessage("solidity of propeller must be 0.0 to 0.5, was 0.7");
  }

  @Test
  void laminar_parts_are_those_of_the_table_and_more_is_remarked() {
    // Raymer table 12.4, read in study notes, not in the book: percent of the wetted area
    assertThat(AttainableLaminar.METAL_LIGHT_AIRCRAFT.ofBody()).isEqualTo(0.10);
    assertThat(AttainableLaminar.METAL_LIGHT_AIRCRAFT.ofSurface()).isEqualTo(0.35);
    assertThat(AttainableLaminar.MOULDED_SAILPLANE.ofBody()).isEqualTo(0.35);
    assertThat(AttainableLaminar.MOULDED_SAILPLANE.ofSurface()).isEqualTo(0.70);
    assertThat(AttainableLaminar.SUCTION_JET_TRANSPORT.ofSurface()).isEqualTo(0.80);
    assertThat(AttainableLaminar.CAMOUFLAGED.ofBody()).isZero();
    assertThat(AttainableLaminar.JET_TRANSPORT.source().cite()).contains("12.4");
    assertThat(AttainableLaminar.checkBody(0.35, 3e7)).isEmpty();
    assertThat(AttainableLaminar.checkBody(0.5, 3e7)).isPresent();
    assertThat(AttainableLaminar.checkBody(1.0, 3e5)).isEmpty();
    assertThat(AttainableLaminar.checkSurface(0.7, 6e6)).isEmpty();
    assertThat(AttainableLaminar.checkSurface(0.8, 6e6)).isPresent();
  }

  @Test
  void things_with_a_turbulent_layer_of_their_own_drag_less_and_say_from_where() {
    // Raymer table 12.6, read in study notes: sphere 0.1, round strut 0.3 above Re 3·10⁵, second wheel 0.15
    Area front = Area.squareMetres(0.01);
    assertThat(Protuberance.TURBULENT_SPHERE.of("ball", front).dragArea(60, 1.5e-5, 0)).isCloseTo(1e-3, within(1e-15));
    assertThat(Protuberance.TURBULENT_STRUT.of("strut", front, Length.millimetres(40)).findings(60, 1.5e-5, 0)).hasSize(1);
    assertThat(Protuberance.TURBULENT_STRUT.of("strut", front, Length.millimetres(100)).findings(60, 1.5e-5, 0)).isEmpty();
    assertThat(Protuberance.SECOND_WHEEL.coefficient()).isCloseTo(0.15, within(1e-15));
  }

  @Test
  void factors_lie_in_their_printed_ranges() {
    assertThat(Interference.UNFILLETED_LOW_WING.band().low()).isEqualTo(1.1);
    assertThat(Interference.UNFILLETED_LOW_WING.band().high()).isEqualTo(1.4);
    assertThat(Interference.CONVENTIONAL_TAIL.factor()).isCloseTo(1.045, within(1e-12));
    assertThat(Interference.STRUT.source().cite()).contains("Gudmundsson");
    assertThat(Protuberance.SPHERE.coefficient()).isCloseTo(0.4, within(1e-12));
    assertThat(Protuberance.FITTING.band().likely()).isCloseTo(1.2, within(1e-12));
  }

  @Test
  void a_coefficient_says_where_its_reynolds_number_ends() {
    Area front = Area.squareMillimetres(10);
    // 0.5 mm of wire at 6 m/s is Re 200: creeping; 5 mm at 60 m/s is Re 20,000.
    assertThat(Protuberance.ROUND_WIRE.of("wire", front, Length.millimetres(0.5)).findings(6, 1.5e-5, 0))
        .extracting(Finding::subject)
        .containsExactly("drag coefficient of wire");
    assertThat(Protuberance.ROUND_WIRE.of("wire", front, Length.millimetres(5)).findings(60, 1.5e-5, 0)).isEmpty();
    // A sphere of 100 mm at 60 m/s is Re 400,000: its layer has turned turbulent. A plate does not care.
    Area ball = Area.squareMetres(Math.PI / 4 * 0.01);
    assertThat(Protuberance.SPHERE.of("ball", ball).findings(60, 1.5e-5, 0)).hasSize(1);
    assertThat(Protuberance.SPHERE.of("ball", ball).findings(40, 1.5e-5, 0)).isEmpty();
    assertThat(Protuberance.FLAT_PLATE.of("plate", ball).findings(60, 1.5e-5, 0)).isEmpty();
  }
}
