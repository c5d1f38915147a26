// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.WingLoading;
import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WingFormulasTest {
  @Test
  void the_documented_example_holds() {
    assertThat(WingFormulas.areaFromSpeed(0.03, 9.80665, 1.2, 6, 0.6)).isCloseTo(0.0227005787, within(5e-11));
  }

  @Test
  void a_speed_and_the_loading_that_it_carries_ask_for_the_same_area() {
    double loading = 0.5 * 1.2 * 36 * 0.6 / 9.80665;
    assertThat(WingFormulas.areaFromLoading(0.03, loading))
        .isCloseTo(WingFormulas.areaFromSpeed(0.03, 9.80665, 1.2, 6, 0.6), within(1e-17));
  }

  @ParameterizedTest
  @MethodSource("published")
  void areas_agree_with_published_sizings(PublishedValues.Row row) {
    double mass = Mass.pounds(row.number("weight_lb")).si();
    double area =
        row.has("loading_lb_ft2")
            ? WingFormulas.areaFromLoading(mass, WingLoading.poundsPerSquareFoot(row.number("loading_lb_ft2")).si())
            : WingFormulas.areaFromSpeed(
                mass,
                9.80665,
                row.number("density_kg_m3"),
                Speed.milesPerHour(row.number("speed_mph")).si(),
                row.number("lift_coefficient"));
    assertThat(Area.squareMetres(area).squareFeet())
        .as(row.toString())
        .isCloseTo(row.number("area_ft2"), withinPercentage(row.number("tolerance_percent")));
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(WingFormulasTest.class, "wing-areas.csv").rows();
  }
}
