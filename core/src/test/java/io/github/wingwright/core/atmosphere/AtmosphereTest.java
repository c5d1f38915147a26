// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.core.quantity.TemperatureDifference;
import io.github.wingwright.testing.PublishedValues;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class AtmosphereTest {
  private static final AirState HALL = AirState.of(Pressure.hectopascals(1013.25), Temperature.degreesCelsius(20));

  private static Atmosphere offset(double kelvins) {
    return Atmosphere.standard().withOffset(TemperatureDifference.kelvins(kelvins));
  }

  static Stream<PublishedValues.Row> offsetDays() {
    return PublishedValues.beside(AtmosphereTest.class, "offset-days.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("offsetDays")
  void an_offset_day_keeps_the_pressure_and_moves_the_temperature(PublishedValues.Row row) {
    AirState air = offset(row.number("offset_k")).at(Length.metres(row.number("pressure_altitude_m")));
    double relative = row.number("relative_tolerance");
    check(row, "temperature_k", air.temperature().kelvins(), relative);
    check(row, "pressure_pa", air.pressure().pascals(), relative);
    check(row, "density_kg_m3", air.density().kilogramsPerCubicMetre(), relative);
    check(row, "sound_m_s", air.speedOfSound().metresPerSecond(), relative);
    check(row, "viscosity_pa_s", air.dynamicViscosity().pascalSeconds(), relative);
    check(row, "density_altitude_m", air.densityAltitude().metres(), relative);
    assertThat(air.pressureAltitude().metres()).isCloseTo(row.number("pressure_altitude_m"), within(1e-7));
  }

  private static void check(PublishedValues.Row row, String column, double value, double relative) {
    double expected = row.number(column);
    assertThat(value).as("%s of %s", column, row).isCloseTo(expected, within(relative * Math.abs(expected)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-40, -15, 5, 30})
  void warm_air_stands_higher_by_the_weight_of_its_column(double kelvins) {
    // dp/dH = −p·g₀/(R·T) with the offset temperature, integrated numerically over pressure altitude
    double pressureAltitude = 8_000.0;
    double height = Quadrature.integrate(
        h -> (StandardAtmosphere.temperature(h) + kelvins) / StandardAtmosphere.temperature(h),
        0.0, pressureAltitude, Tolerance.relative(1e-12)).value();
    AirState air = offset(kelvins).atGeometric(Atmosphere.geometric(Length.metres(height)));
    assertThat(air.pressureAltitude().metres()).isCloseTo(pressureAltitude, within(1e-6));
    assertThat(air.temperature().kelvins())
        .isCloseTo(StandardAtmosphere.temperature(pressureAltitude) + kelvins, within(1e-8));
  }

  @Test
  void geometric_altitude_counts_weaker_gravity() {
    AirState air = Atmosphere.standard().atGeometric(Length.metres(10_000));
    assertThat(air.temperature().kelvins()).isCloseTo(223.252, within(5e-4));
    assertThat(Atmosphere.geopotential(Length.metres(10_000)).metres()).isCloseTo(9_984.29, within(0.005));
    assertThat(Atmosphere.geometric(Atmosphere.geopotential(Length.feet(35_000))).feet())
        .isCloseTo(35_000, within(1e-8));
    assertThatThrownBy(() -> Atmosphere.geometric(Length.kilometres(6_400)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("altitude must be less than an earth radius from the ground, was 6400 km");
  }

  @Test
  void sea_level_of_the_standard_day_is_what_everybody_knows() {
    AirState air = Atmosphere.standard().at(Length.ZERO);
    assertThat(air.density().kilogramsPerCubicMetre()).isCloseTo(1.225, within(5e-7));
    assertThat(air.speedOfSound().metresPerSecond()).isCloseTo(340.294, within(5e-4));
    assertThat(air.dynamicViscosity().pascalSeconds()).isCloseTo(1.78938e-5, within(5e-11));
    assertThat(air.kinematicViscosity().squareMetresPerSecond()).isCloseTo(1.46072e-5, within(5e-11));
    assertThat(air.densityAltitude().metres()).isCloseTo(0.0, within(1e-6));
    assertThat(air).hasToString("1013.25 hPa, 15 °C, 1.225 kg/m³");
  }

  @Test
  void a_hall_has_its_own_air() {
    assertThat(HALL.density().kilogramsPerCubicMetre()).isCloseTo(1.20411, within(5e-6));
    assertThat(HALL).hasToString("1013.25 hPa, 20 °C, 1.2041 kg/m³");
    assertThat(HALL.densityAltitude().metres()).isGreaterThan(170).isLessThan(180);
    assertThat(HALL.findings()).isEmpty();
  }

  @Test
  void a_flight_has_a_dynamic_pressure_a_reynolds_number_and_a_mach_number() {
    FlightCondition flight = FlightCondition.of(Atmosphere.standard().at(Length.ZERO), Speed.metresPerSecond(6));
    assertThat(flight.dynamicPressure().pascals()).isCloseTo(22.05, within(1e-5));
    assertThat(flight.reynoldsNumber(Length.millimetres(50))).isCloseTo(20_538, within(0.5));
    assertThat(flight.machNumber()).isCloseTo(6 / 340.294, within(1e-7));
    assertThat(flight.withAirspeed(Speed.ZERO).dynamicPressure()).isEqualTo(Pressure.ZERO);
    assertThat(flight).hasToString("6 m/s in 1013.25 hPa, 15 °C, 1.225 kg/m³");
  }

  @Test
  void the_examples_of_the_kernels_are_true() {
    assertThat(Air.density(101_325, 288.15)).isCloseTo(1.225, within(5e-7));
    assertThat(Air.speedOfSound(288.15)).isCloseTo(340.294, within(5e-4));
    assertThat(Air.dynamicViscosity(288.15)).isCloseTo(1.78938e-5, within(5e-11));
    assertThat(Air.dynamicPressure(1.225, 6)).isCloseTo(22.05, within(1e-12));
    assertThat(Air.reynoldsNumber(6, 0.05, 1.5e-5)).isCloseTo(20_000, within(1e-8));
    assertThat(Air.machNumber(170, 340)).isEqualTo(0.5);
  }

  @Test
  void workings_give_the_value_to_the_last_bit() {
    assertThat(HALL.densityStep(Source.BRIEF).value()).isEqualTo(HALL.density().kilogramsPerCubicMetre());
    assertThat(HALL.kinematicViscosityStep(Source.BRIEF).value())
        .isEqualTo(HALL.kinematicViscosity().squareMetresPerSecond());
    assertThat(Workings.of(List.of(HALL.densityStep(Source.BRIEF))).toString())
        .contains("ρ = 1.2041 kg/m³  air density")
        .contains("= p/(287.05287·T) with p = ");
  }

  @Test
  void air_outside_the_viscosity_law_is_found() {
    AirState furnace = AirState.of(Pressure.atmospheres(1), Temperature.kelvins(900));
    assertThat(FlightCondition.of(furnace, Speed.metresPerSecond(1)).findings())
        .singleElement()
        .satisfies(finding -> {
          assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
          assertThat(finding.subject()).isEqualTo("dynamic viscosity");
          assertThat(finding.measure()).isEqualTo("900 K (range 150 to 400 K)");
        });
  }

  @Test
  void what_is_not_air_is_refused() {
    assertThatThrownBy(() -> AirState.of(Pressure.ZERO, Temperature.degreesCelsius(20)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("air pressure must be positive and finite, was 0 Pa");
    assertThatThrownBy(() -> AirState.of(Pressure.atmospheres(1), Temperature.ZERO))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("air temperature must be above 0 K and finite, was -273.15 °C");
    assertThatThrownBy(() -> AirState.of(Pressure.pascals(1e308).times(10), Temperature.degreesCelsius(20)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> FlightCondition.of(HALL, Speed.metresPerSecond(-6)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("airspeed must be zero or more and finite, was -6 m/s");
    FlightCondition flight = FlightCondition.of(HALL, Speed.metresPerSecond(6));
    assertThatThrownBy(() -> flight.reynoldsNumber(Length.millimetres(-12)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("reference length must be positive and finite, was -12 mm");
  }

  @Test
  void an_altitude_without_a_standard_is_refused() {
    assertThatThrownBy(() -> Atmosphere.standard().at(Length.kilometres(48)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("geopotential altitude must be -5000 to 47000 m (the range of the standard atmosphere), was 48000 m");
    assertThatThrownBy(() -> offset(20).atGeometric(Length.kilometres(60)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("on this day");
    assertThatThrownBy(() -> offset(-216.65))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("temperature offset must be above -216.65 K, was -216.65 K");
  }

  @Test
  void offsets_replace_each_other() {
    assertThat(offset(15).withOffset(TemperatureDifference.ZERO)).isEqualTo(Atmosphere.standard())
        .hasSameHashCodeAs(Atmosphere.standard());
    assertThat(offset(15)).isEqualTo(offset(15)).isNotEqualTo(offset(14)).hasToString("standard atmosphere plus 15 K");
    assertThat(offset(-5)).hasToString("standard atmosphere minus 5 K");
    assertThat(Atmosphere.standard()).hasToString("standard atmosphere");
    assertThat(offset(15).offset()).isEqualTo(TemperatureDifference.kelvins(15));
  }
}
