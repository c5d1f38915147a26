// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import static io.github.wingwright.core.quantity.Density.gramsPerCubicCentimetre;
import static io.github.wingwright.core.quantity.Pressure.gigapascals;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MaterialsTest {
  @Test
  void every_material_is_found_by_its_name_and_says_where_it_comes_from() {
    assertThat(Materials.all()).hasSizeGreaterThan(20).doesNotHaveDuplicates();
    assertThat(Materials.all()).extracting(Material::name).doesNotHaveDuplicates();
    for (Material material : Materials.all()) {
      assertThat(Materials.named(material.name())).isSameAs(material);
      assertThat(material.source().cite()).isNotBlank();
      assertThat(material.densityBand().si().interval().contains(material.density().si())).isTrue();
      assertThat(material.elasticModulusSource().isPresent()).isEqualTo(material.elasticModulus().isPresent());
      assertThat(material.toString().length()).as(material.toString()).isLessThanOrEqualTo(75);
    }
    assertThat(Materials.named(" pla ")).isSameAs(Materials.PLA);
  }

  @Test
  void a_foamed_polymer_weighs_less_than_half() {
    assertThat(Materials.FOAMING_PLA.density()).isLessThan(Materials.PLA.density().times(0.5));
  }

  @Test
  void wood_foam_and_metal_are_not_printed_and_polymers_are() {
    assertThat(Materials.all().stream().filter(Materials::isPrinted))
        .containsExactly(Materials.PLA, Materials.FOAMING_PLA, Materials.FOAMING_PLA_PARTLY, Materials.PETG, Materials.ABS,
            Materials.ASA, Materials.PA, Materials.PA12, Materials.PC, Materials.PP, Materials.TPU);
    assertThat(Materials.isPrinted(Material.of("my own", gramsPerCubicCentimetre(1.1), Source.BRIEF))).isTrue();
    Density weighed = Density.kilogramsPerCubicMetre(101);
    assertThat(Materials.isPrinted(Materials.BALSA_LIGHT.withDensity(weighed, weighed, weighed, Source.BRIEF))).isFalse();
  }

  @Test
  void foam_board_weighs_what_builders_weighed() {
    // 20 in × 30 in × 3/16 in: 115 g; A1 of 5 mm: 225 g (public weighings; kitchen scales, to a gram and to 2 %).
    double dollar = Stock.sheetMass(Materials.FOAM_BOARD, Length.inches(20).times(Length.inches(30)), Length.inches(0.1875)).grams();
    double a1 = Stock.sheetMass(Materials.FOAM_BOARD, Length.millimetres(594).times(Length.millimetres(841)), Length.millimetres(5)).grams();
    assertThat(115 / dollar * 75).isBetween(61.5, 90.5);
    assertThat(225 / a1 * 75).isBetween(61.5, 90.5);
  }

  @Test
  void balsa_grades_meet_the_range_of_the_trade() {
    // 40 to 340 kg/m³, encyclopaedia figure repeated on a trade page.
    for (Material balsa : new Material[] {Materials.BALSA_LIGHT, Materials.BALSA_MEDIUM, Materials.BALSA_HARD}) {
      assertThat(balsa.densityBand().low().si()).isGreaterThan(40);
      assertThat(balsa.densityBand().high().si()).isLessThan(340);
    }
    assertThat(Materials.BALSA_MEDIUM.density().kilogramsPerCubicMetre()).isCloseTo(160, within(0.5));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void a_sheet_of_balsa_weighs_what_tables_print(PublishedValues.Row row) {
    Material balsa = Material.of("balsa", Density.poundsPerCubicFoot(row.number("density_lb_ft3")), Source.BRIEF);
    double mass =
        Length.inches(3)
            .times(Length.inches(36))
            .times(Length.inches(row.number("thickness_in")))
            .times(balsa.density())
            .grams();
    assertThat(mass).isCloseTo(row.number("mass_g"), within(row.number("tolerance_g")));
  }

  static Stream<PublishedValues.Row> sheets() {
    return PublishedValues.beside(MaterialsTest.class, "balsa-sheets.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("properties")
  void ranges_hold_what_is_published(PublishedValues.Row row) {
    Material material = Materials.named(row.text("material"));
    assertThat(material.densityBand().si().interval().contains(1e3 * row.number("density"))).isTrue();
    assertThat(material.elasticModulusBand().orElseThrow().interval().contains(1e9 * row.number("modulus"))).isTrue();
    assertThat(material.strengthBand().orElseThrow().interval().contains(1e6 * row.number("strength"))).isTrue();
  }

  static Stream<PublishedValues.Row> properties() {
    return PublishedValues.beside(MaterialsTest.class, "published-properties.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("panels")
  void a_panel_of_birch_plywood_weighs_what_its_data_sheet_prints(PublishedValues.Row row) {
    Area area = Length.millimetres(row.number("width_mm")).times(Length.millimetres(row.number("length_mm")));
    Length thickness = Length.millimetres(row.number("thickness_mm"));
    Material own = Material.of("plywood", Density.kilogramsPerCubicMetre(row.number("density")), Source.BRIEF);
    assertThat(Stock.sheetMass(own, area, thickness).kilograms())
        .isCloseTo(row.number("mass_kg"), within(row.number("tolerance_kg")));
    assertThat(Materials.BIRCH_PLYWOOD.densityBand().si().interval().contains(row.number("density"))).isTrue();
    // By the catalogue's likely density: the panels scatter by 5 %.
    assertThat(Stock.sheetMass(Materials.BIRCH_PLYWOOD, area, thickness).kilograms())
        .isCloseTo(row.number("mass_kg"), withinPercentage(5.0));
  }

  static Stream<PublishedValues.Row> panels() {
    return PublishedValues.beside(MaterialsTest.class, "plywood-panels.csv").rows();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      light covering film | 0.07 | public table of covering weights [oz/ft²]
      light covering film | 0.10 | public table of covering weights [oz/ft²]
      light covering film | 0.118 | Model Aviation, August 2025: 36 g/m²
      covering film       | 0.20 | public table of covering weights [oz/ft²]
      covering film       | 0.25 | public table of covering weights [oz/ft²]
      """)
  void coverings_weigh_what_tables_print(String name, double ouncesPerSquareFoot, String source) {
    Covering covering = Covering.all().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
    double si = ouncesPerSquareFoot * 0.028349523125 / (0.3048 * 0.3048);
    assertThat(covering.arealDensity().si().interval().contains(si - 5e-5)).as(source).isTrue();
  }

  @Test
  void a_material_of_ones_own_is_as_good() {
    Material own =
        Material.of("my PLA", gramsPerCubicCentimetre(1.23), Source.BRIEF)
            .withElasticModulus(gigapascals(2), gigapascals(2.5), gigapascals(3), Source.COMMON_PRACTICE);
    assertThat(own.densityBand().isExact()).isTrue();
    assertThat(own.elasticModulus()).contains(gigapascals(2.5));
    assertThat(own).hasToString("my PLA 1230 kg/m³");
    assertThat(Materials.PLA).hasToString("PLA 1240 kg/m³ (1220 to 1260 kg/m³)");
    assertThat(own).isNotEqualTo(Material.of("my PLA", gramsPerCubicCentimetre(1.23), Source.BRIEF));
  }

  @Test
  void what_is_no_material_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Materials.named("unobtainium"))
        .withMessageStartingWith("material must be one of PLA, foaming PLA, ")
        .withMessageEndingWith(", was unobtainium");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Material.of("air", Density.ZERO, Source.BRIEF))
        .withMessage("density of air must be positive, was 0 kg/m³");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Material.of(" ", gramsPerCubicCentimetre(1), Source.BRIEF))
        .withMessage("name of a material must be said, was blank");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Material.of(
                    "wood",
                    gramsPerCubicCentimetre(2),
                    gramsPerCubicCentimetre(1),
                    gramsPerCubicCentimetre(3),
                    Source.BRIEF))
        .withMessageContaining("in order low ≤ likely ≤ high, was 2000.0, 1000.0, 3000.0");
  }
}
