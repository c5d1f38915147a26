// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StandardAtmosphereTest {
  static Stream<PublishedValues.Row> geopotential() {
    return PublishedValues.beside(StandardAtmosphereTest.class, "geopotential.csv").rows();
  }

  static Stream<PublishedValues.Row> geometric() {
    return PublishedValues.beside(StandardAtmosphereTest.class, "geometric.csv").rows();
  }

  private static Offset<Double> tolerance(PublishedValues.Row row, String column) {
    return within(row.number("relative_tolerance") * Math.max(Math.abs(row.number(column)), 1e-300));
  }

  private static void matches(PublishedValues.Row row, double altitude) {
    double temperature = StandardAtmosphere.temperature(altitude);
    double density = StandardAtmosphere.density(altitude);
    double viscosity = Air.dynamicViscosity(temperature);
    check(row, "temperature_k", temperature);
    check(row, "pressure_pa", StandardAtmosphere.pressure(altitude));
    check(row, "density_kg_m3", density);
    check(row, "sound_m_s", Air.speedOfSound(temperature));
    check(row, "viscosity_pa_s", viscosity);
  }

  private static void check(PublishedValues.Row row, String column, double value) {
    if (row.has(column)) {
      assertThat(value).as("%s of %s", column, row).isCloseTo(row.number(column), tolerance(row, column));
    }
  }

  @ParameterizedTest
  @MethodSource("geopotential")
  void is_the_published_table_by_geopotential_altitude(PublishedValues.Row row) {
    double altitude = row.number("altitude_m");
    matches(row, altitude);
    assertThat(StandardAtmosphere.geometricAltitude(altitude))
        .isCloseTo(row.number("geometric_m"), tolerance(row, "geometric_m"));
    double viscosity = Air.dynamicViscosity(StandardAtmosphere.temperature(altitude));
    check(row, "kinematic_viscosity_m2_s", Air.kinematicViscosity(viscosity, StandardAtmosphere.density(altitude)));
  }

  @ParameterizedTest
  @MethodSource("geometric")
  void is_the_published_table_by_geometric_altitude(PublishedValues.Row row) {
    double altitude = StandardAtmosphere.geopotentialAltitude(row.number("geometric_m"));
    matches(row, altitude);
    assertThat(altitude).isCloseTo(row.number("geopotential_m"), within(1e-8 * altitude + 0.5));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 11_000, 20_000, 32_000})
  void has_no_steps_where_layers_meet(double altitude) {
    double below = Math.nextDown(altitude);
    assertThat(StandardAtmosphere.temperature(below))
        .isCloseTo(StandardAtmosphere.temperature(altitude), within(1e-12 * 300));
    assertThat(StandardAtmosphere.pressure(below) / StandardAtmosphere.pressure(altitude))
        .isCloseTo(1.0, within(1e-14));
  }

  @Test
  void a_column_of_air_weighs_what_its_pressures_differ_by() {
    // dp = −ρ·g₀·dH, integrated numerically within each layer: an independent check of the closed forms
    double[] ends = {-5_000, 0, 11_000, 20_000, 32_000, 47_000};
    for (int i = 1; i < ends.length; i++) {
      double weight = Quadrature.integrate(
          h -> StandardAtmosphere.density(h) * 9.80665, ends[i - 1], ends[i], Tolerance.relative(1e-12)).value();
      double difference = StandardAtmosphere.pressure(ends[i - 1]) - StandardAtmosphere.pressure(ends[i]);
      assertThat(difference).isCloseTo(weight, within(1e-10 * weight));
    }
  }

  @Test
  void pressure_and_density_altitude_are_inverses() {
    Seeded.doubles(41, 2_000, -5_000, 47_000).forEach(altitude -> {
      assertThat(StandardAtmosphere.pressureAltitude(StandardAtmosphere.pressure(altitude)))
          .isCloseTo(altitude, within(1e-7));
      assertThat(StandardAtmosphere.densityAltitude(StandardAtmosphere.density(altitude)))
          .isCloseTo(altitude, within(1e-7));
      assertThat(StandardAtmosphere.geopotentialAltitude(StandardAtmosphere.geometricAltitude(altitude)))
          .isCloseTo(altitude, within(1e-9));
    });
  }

  @Test
  void the_height_of_a_kelvin_is_the_integral_of_its_reciprocal() {
    double sum = 0.0;
    double[] ends = {0, 11_000, 20_000, 32_000, 45_000};
    for (int i = 1; i < ends.length; i++) {
      sum += Quadrature.integrate(
          h -> 1.0 / StandardAtmosphere.temperature(h), ends[i - 1], ends[i], Tolerance.relative(1e-12)).value();
      assertThat(StandardAtmosphere.heightPerKelvin(ends[i])).isCloseTo(sum, within(1e-10 * sum));
    }
    assertThat(StandardAtmosphere.heightPerKelvin(-3_000))
        .isCloseTo(
            -Quadrature.integrate(h -> 1.0 / StandardAtmosphere.temperature(h), -3_000, 0, Tolerance.relative(1e-12)).value(),
            within(1e-10));
  }

  @Test
  void the_examples_of_the_documentation_are_true() {
    assertThat(StandardAtmosphere.temperature(11_000)).isCloseTo(216.65, within(1e-12));
    assertThat(StandardAtmosphere.pressure(11_000)).isCloseTo(22_632.04, within(0.005));
    assertThat(StandardAtmosphere.pressureAltitude(22_632.04)).isCloseTo(11_000, within(0.01));
    assertThat(StandardAtmosphere.densityAltitude(0.954457)).isCloseTo(2_524.69, within(0.01));
    assertThat(StandardAtmosphere.layerTemperature(288.15, -0.0065, 11_000)).isCloseTo(216.65, within(1e-12));
    assertThat(StandardAtmosphere.gradientLayerPressure(101_325, 288.15, -0.0065, 1_000))
        .isCloseTo(89_874.6, within(0.05));
    assertThat(StandardAtmosphere.isothermalLayerPressure(22_632.04, 216.65, 4_000)).isCloseTo(12_044.6, within(0.05));
    assertThat(StandardAtmosphere.geopotentialAltitude(10_000)).isCloseTo(9_984.29, within(0.005));
    assertThat(StandardAtmosphere.geometricAltitude(10_000)).isCloseTo(10_015.76, within(0.005));
    assertThat(StandardAtmosphere.pressure(-5_000)).isCloseTo(177_687, within(0.5));
    assertThat(StandardAtmosphere.density(-5_000)).isCloseTo(1.930, within(0.0005));
    assertThat(StandardAtmosphere.density(47_000)).isCloseTo(0.001428, within(0.0000005));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-5_000.001, 47_000.001, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void an_altitude_without_a_standard_is_refused(double altitude) {
    assertThatThrownBy(() -> StandardAtmosphere.pressure(altitude))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith(
            "geopotential altitude must be -5000 to 47000 m (the range of the standard atmosphere), was ");
    assertThatThrownBy(() -> StandardAtmosphere.temperature(altitude)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 110.9, 200_000, Double.NaN, Double.POSITIVE_INFINITY})
  void a_pressure_without_an_altitude_is_refused(double pressure) {
    assertThatThrownBy(() -> StandardAtmosphere.pressureAltitude(pressure))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("pressure must be 110.906 to 177687 Pa");
    assertThatThrownBy(() -> StandardAtmosphere.densityAltitude(pressure * 1e-5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("density must be 0.00142753 to 1.93047 kg/m³");
  }
}
