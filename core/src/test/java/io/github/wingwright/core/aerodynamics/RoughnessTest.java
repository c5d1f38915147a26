// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RoughnessTest {
  private static final TurbulentFriction LAW = TurbulentFriction.PRANDTL_SCHLICHTING;

  @ParameterizedTest
  @MethodSource("surfaces")
  void the_cut_off_is_that_of_the_handbook_table(PublishedValues.Row row) {
    assertThat(Roughness.cutOffReynolds(row.number("length_m"), row.number("height_m")))
        .as(row.toString())
        .isCloseTo(row.number("cut_off"), withinPercentage(row.number("tolerance_percent")));
  }

  static Stream<PublishedValues.Row> surfaces() {
    return PublishedValues.beside(RoughnessTest.class, "roughness.csv").rows();
  }

  @Test
  void a_printed_layer_of_a_tenth_of_a_millimetre_does_not_trip_at_six_metres_per_second() {
    assertThat(Roughness.grainReynolds(6.0, 1e-4, 1.5e-5)).isCloseTo(40.0, within(1e-9));
    assertThat(Roughness.grainReynoldsInLayer(6.0, 1e-4, 0.01, 1.5e-5)).isCloseTo(8.40, within(0.005));
    assertThat(Roughness.TRIPS.check(40.0)).isEmpty();
    assertThat(Roughness.TRIPS.check(700.0)).isPresent();
  }

  @Test
  void a_grain_that_stands_out_of_the_layer_sees_the_free_stream() {
    assertThat(Roughness.grainReynoldsInLayer(6.0, 5e-3, 0.001, 1.5e-5))
        .isEqualTo(Roughness.grainReynolds(6.0, 5e-3, 1.5e-5));
  }

  @Test
  void roughness_sets_a_floor_under_turbulent_friction_and_leaves_laminar_friction_alone() {
    FrictionModel rough = FrictionModel.turbulent(LAW).withRoughness(Length.micrometres(10));
    double cutOff = Roughness.cutOffReynolds(0.3, 10e-6);
    assertThat(rough.coefficient(0.5 * cutOff, 0.3, 0.0)).isEqualTo(LAW.coefficient(0.5 * cutOff));
    assertThat(rough.coefficient(10.0 * cutOff, 0.3, 0.0)).isEqualTo(LAW.coefficient(cutOff));
    assertThat(FrictionModel.laminar().withRoughness(Length.micrometres(10)).coefficient(1e6, 0.3, 0.0))
        .isEqualTo(SkinFriction.laminar(1e6));
  }

  @Test
  void a_rough_mixed_layer_is_still_continuous_at_transition() {
    FrictionModel rough = FrictionModel.mixed(5e5, LAW).withRoughness(Length.micrometres(200));
    assertThat(rough.coefficient(5e5 * (1 + 1e-12), 0.3, 0.2))
        .isCloseTo(rough.coefficient(5e5, 0.3, 0.2), within(1e-9));
  }
}
