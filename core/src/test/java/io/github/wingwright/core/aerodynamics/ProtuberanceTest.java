// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
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
