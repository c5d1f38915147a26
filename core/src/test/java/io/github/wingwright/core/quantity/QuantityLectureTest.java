// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** The example values of the package's documentation: one of every kind, written as it prints. */
class QuantityLectureTest {
  private static final Map<QuantityKind<?>, String> EXAMPLES = Map.ofEntries(
      Map.entry(Length.KIND, "400 mm"),
      Map.entry(Area.KIND, "200 cm²"),
      Map.entry(Volume.KIND, "60 cm³"),
      Map.entry(SecondMomentOfArea.KIND, "125 mm⁴"),
      Map.entry(Angle.KIND, "8°"),
      Map.entry(Time.KIND, "2.5 s"),
      Map.entry(Frequency.KIND, "2 Hz"),
      Map.entry(Speed.KIND, "6 m/s"),
      Map.entry(Acceleration.KIND, "9.80665 m/s²"),
      Map.entry(AngularRate.KIND, "90 °/s"),
      Map.entry(Mass.KIND, "30 g"),
      Map.entry(Density.KIND, "1.225 kg/m³"),
      Map.entry(ArealDensity.KIND, "80 g/m²"),
      Map.entry(LinearDensity.KIND, "4.5 g/m"),
      Map.entry(WingLoading.KIND, "1.5 kg/m²"),
      Map.entry(MomentOfInertia.KIND, "850 g·cm²"),
      Map.entry(Force.KIND, "294.2 mN"),
      Map.entry(Moment.KIND, "12 N·mm"),
      Map.entry(Pressure.KIND, "22.05 Pa"),
      Map.entry(FlexuralRigidity.KIND, "0.25 N·m²"),
      Map.entry(Energy.KIND, "540 mJ"),
      Map.entry(Power.KIND, "120 mW"),
      Map.entry(DynamicViscosity.KIND, "17.8938 µPa·s"),
      Map.entry(KinematicViscosity.KIND, "14.6072 mm²/s"),
      Map.entry(Temperature.KIND, "20 °C"),
      Map.entry(TemperatureDifference.KIND, "15 K"));

  @Test
  void there_is_an_example_of_every_kind() {
    assertThat(EXAMPLES.keySet()).containsExactlyInAnyOrderElementsOf(Kinds.all().toList());
  }

  @Test
  void every_example_prints_as_it_is_written() {
    EXAMPLES.forEach((kind, text) -> assertThat(kind.parse(text)).hasToString(text));
  }

  @Test
  void the_wing_of_the_introduction_has_its_loading() {
    Length span = Length.millimetres(400);
    Area area = span.times(span).dividedBy(8.0);
    assertThat(WingLoading.of(Mass.grams(30), area)).hasToString("1.5 kg/m²");
  }
}
