// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import static io.github.wingwright.core.quantity.Area.squareCentimetres;
import static io.github.wingwright.core.quantity.Density.gramsPerCubicCentimetre;
import static io.github.wingwright.core.quantity.Length.millimetres;
import static io.github.wingwright.core.quantity.Volume.cubicCentimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PrintedShellTest {
  @ParameterizedTest
  @MethodSource("cases")
  void the_mass_agrees_with_the_worked_cases(PublishedValues.Row row) {
    Material material = Material.of("filament", gramsPerCubicCentimetre(row.number("density_g_cm3")), Source.BRIEF);
    PrintedShell shell =
        PrintedShell.of(material, (int) row.number("walls"), millimetres(row.number("line_width_mm")))
            .flatLayers((int) row.number("flat_layers"), millimetres(row.number("layer_mm")), row.number("level_part"))
            .infill(row.number("infill"));
    Area surface = squareCentimetres(row.number("surface_cm2"));
    Volume volume = cubicCentimetres(row.number("volume_cm3"));
    assertThat(shell.mass(surface, volume).grams())
        .isCloseTo(row.number("mass_g"), withinPercentage(row.number("tolerance_percent")));
    Step step = shell.massStep(Step.given("surface", "S", surface, Source.BRIEF), Step.given("volume", "V", volume, Source.BRIEF));
    assertThat(step.value()).isEqualTo(shell.mass(surface, volume).si());
    assertThat(step.inputs().get(2).value() * 1e6)
        .isCloseTo(row.number("shell_cm3"), withinPercentage(row.number("tolerance_percent")));
  }

  static Stream<PublishedValues.Row> cases() {
    return PublishedValues.beside(PrintedShellTest.class, "printed-shells.csv").rows();
  }

  @Test
  void the_documented_examples_hold() {
    PrintedShell skin = PrintedShell.of(Materials.PLA, 1, millimetres(0.42)).infill(0.03);
    assertThat(skin.mass(squareCentimetres(560), cubicCentimetres(420)).grams()).isCloseTo(43.91, within(0.005));
    assertThat(PrintedShell.thinShellVolume(0.03, 0.1, 2, 0.45e-3, 4, 0.2e-3)).isCloseTo(26.7e-6, within(1e-15));
    assertThat(PrintedShell.printedMass(1270, 260e-6, 26.7e-6, 0.1)).isCloseTo(63.538e-3, within(5e-7));
  }

  @Test
  void a_part_is_never_heavier_than_solid_nor_lighter_than_its_infill() {
    Seeded.points(3, 500, new double[] {1, 2000}, new double[] {0.1, 500}, new double[] {1, 8}, new double[] {0, 1}).forEach(p -> {
      PrintedShell shell = PrintedShell.of(Materials.PETG, (int) p[2], millimetres(0.45)).infill(p[3]);
      double mass = shell.mass(squareCentimetres(p[0]), cubicCentimetres(p[1])).grams();
      assertThat(mass).isLessThanOrEqualTo(1.27 * p[1] * (1 + 1e-12));
      assertThat(mass).isGreaterThanOrEqualTo(1.27 * p[1] * p[3] * (1 - 1e-12));
    });
  }

  @Test
  void full_infill_is_solid_whatever_the_walls() {
    double solid = 1.24 * 12;
    for (int walls = 0; walls < 5; walls++) {
      PrintedShell shell = PrintedShell.of(Materials.PLA, walls, millimetres(0.45)).infill(1);
      assertThat(shell.mass(squareCentimetres(30), cubicCentimetres(12)).grams()).isCloseTo(solid, within(1e-12));
    }
  }

  @Test
  void the_thin_shell_is_a_little_too_heavy_where_it_curves() {
    // The true wall of a capsule is the capsule less the one inside it; in the thin shell's terms off by about t/d.
    double thickness = 0.84e-3;
    double diameter = 0.025;
    BodyShape capsule = BodyShape.capsule();
    double exact =
        capsule.volume(0.3, diameter) - capsule.volume(0.3 - 2 * thickness, diameter - 2 * thickness);
    double thin = PrintedShell.thinShellVolume(capsule.wettedArea(0.3, diameter), 0, 2, 0.42e-3, 0, 0);
    assertThat(thin / exact).isBetween(1 + 0.9 * thickness / diameter, 1 + 1.3 * thickness / diameter);
  }

  @Test
  void the_range_of_the_density_becomes_that_of_the_mass() {
    PrintedShell skin = PrintedShell.of(Materials.PLA, 1, millimetres(0.42));
    Area surface = squareCentimetres(100);
    Volume volume = cubicCentimetres(50);
    MassItem item = skin.item("pod", surface, volume, Placement.at(millimetres(120), Length.ZERO));
    assertThat(item.massBand()).isEqualTo(skin.massBand(surface, volume));
    assertThat(item.mass()).isEqualTo(skin.mass(surface, volume));
    assertThat(item.massBand().low().dividedBy(item.massBand().likely())).isCloseTo(1.22 / 1.24, within(1e-12));
    assertThat(item.source()).isEqualTo(Materials.PLA.source());
    assertThat(skin.in(Materials.FOAMING_PLA).mass(surface, volume).grams()).isCloseTo(4.2 * 0.5, within(1e-12));
  }

  @Test
  void walls_that_fill_the_part_are_noted() {
    // A printed section 3 mm thick: two faces, two lines of 0.42 mm each side take up more than half.
    PrintedShell two = PrintedShell.of(Materials.PLA, 2, millimetres(0.42));
    assertThat(two.findings("wing", squareCentimetres(400), cubicCentimetres(60))).isEmpty();
    assertThat(two.findings("wing", squareCentimetres(400), cubicCentimetres(40)))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).startsWith("The walls take up 84 % of the part."));
    assertThat(two.findings("wing", squareCentimetres(400), cubicCentimetres(30)))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).startsWith("The walls alone fill the part: it is reckoned as solid."));
  }

  @Test
  void it_reads_and_compares() {
    PrintedShell shell = PrintedShell.of(Materials.PLA, 2, millimetres(0.42)).infill(0.05);
    assertThat(shell).hasToString("PLA, 2 walls of 0.42 mm, infill 5 %");
    assertThat(shell.wallThickness().millimetres()).isCloseTo(0.84, within(1e-12));
    assertThat(shell).isEqualTo(PrintedShell.of(Materials.PLA, 2, millimetres(0.42)).infill(0.05));
    assertThat(shell).isNotEqualTo(shell.infill(0.06)).isNotEqualTo(shell.in(Materials.ABS));
  }

  @Test
  void what_cannot_be_printed_is_refused() {
    PrintedShell shell = PrintedShell.of(Materials.PLA, 2, millimetres(0.42));
    refuses(() -> PrintedShell.of(Materials.PLA, -1, millimetres(0.42)), "number of walls must be 0 to 20, was -1");
    refuses(() -> PrintedShell.of(Materials.PLA, 1, Length.ZERO), "line width must be positive, was 0 m");
    refuses(() -> shell.infill(1.2), "infill must be 0.0 to 1.0, was 1.2");
    refuses(() -> shell.flatLayers(4, millimetres(0.2), Double.NaN), "level part of the surface must be 0.0 to 1.0, was NaN");
    refuses(() -> shell.mass(Area.ZERO, cubicCentimetres(1)), "surface of the part must be positive, was 0 m²");
    refuses(() -> shell.mass(squareCentimetres(1), Volume.ZERO), "volume of the part must be positive, was 0 m³");
  }

  private static void refuses(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
    assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
  }
}
