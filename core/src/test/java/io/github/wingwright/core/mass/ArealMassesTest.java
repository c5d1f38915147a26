// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ArealMassesTest {
  private static final Area ONE = Area.squareMetres(1);

  @ParameterizedTest
  @MethodSource("table")
  void every_part_weighs_what_the_table_prints_in_both_units(PublishedValues.Row row) {
    ArealMasses of = ArealMasses.valueOf(row.text("aircraft"));
    Mass ton = Mass.kilograms(1);
    double got = switch (row.text("component")) {
      case "wing" -> of.wing(ONE).kilograms();
      case "horizontal tail" -> of.horizontalTail(ONE).kilograms();
      case "vertical tail" -> of.verticalTail(ONE).kilograms();
      case "fuselage" -> of.fuselage(ONE).kilograms();
      case "landing gear" -> of.landingGear(ton).kilograms();
      case "installed engine" -> of.installedEngine(ton).kilograms();
      default -> of.allElse(ton).kilograms();
    };
    assertThat(got).isCloseTo(row.number("metric"), within(1e-12));
    // The pound is 0.45359237 kg, the foot 0.3048 m.
    double imperial = row.text("unit").startsWith("kg") ? row.number("imperial") * 0.45359237 / (0.3048 * 0.3048) : got;
    assertThat(got).isCloseTo(imperial, within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> table() {
    return PublishedValues.beside(ArealMassesTest.class, "areal-masses.csv").rows();
  }

  @Test
  void the_workings_give_the_masses_bit_for_bit() {
    ArealMasses light = ArealMasses.GENERAL_AVIATION;
    Step area = Step.given("exposed planform", "S", Area.squareMetres(15), Source.BRIEF);
    assertThat(light.wingStep(area).value()).isEqualTo(light.wing(Area.squareMetres(15)).si()).isEqualTo(180.0);
    assertThat(light.fuselageStep(area).value()).isEqualTo(light.fuselage(Area.squareMetres(15)).si());
    MassItem wing = ArealMasses.item("wing", light.wing(Area.squareMetres(15)), Placement.at(Length.metres(2), Length.ZERO));
    assertThat(wing.source().cite()).contains("table 15.2");
  }

  @Test
  void a_model_is_told_that_the_table_is_not_for_it() {
    assertThat(ArealMasses.validity(Mass.kilograms(1100))).isEmpty();
    assertThat(ArealMasses.validity(Mass.grams(60))).hasValueSatisfying(f ->
        assertThat(f.message()).contains("Reckon the parts from their geometry"));
    // What it would say of a wing of 372 cm²: thirty times what a single wall of foamed plastic weighs.
    double shell = PrintedShell.of(Materials.FOAMING_PLA, 1, Length.millimetres(0.42))
        .mass(Area.squareCentimetres(760), Volume.cubicCentimetres(120)).grams();
    assertThat(ArealMasses.GENERAL_AVIATION.wing(Area.squareCentimetres(372)).grams() / shell).isBetween(25.0, 35.0);
  }

  @Test
  void what_has_no_mass_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> ArealMasses.FIGHTER.wing(Area.squareMetres(-1)))
        .withMessageStartingWith("area of the part must not be negative");
    assertThatIllegalArgumentException().isThrownBy(() -> ArealMasses.FIGHTER.allElse(Mass.ZERO))
        .withMessage("take-off mass must be positive, was 0 kg");
  }
}
