// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.Surface;
import io.github.wingwright.airfoils.ThinAirfoil;
import io.github.wingwright.airfoils.TrailingEdge;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import org.junit.jupiter.api.Test;

class ManufactureTest {
  private static final Naca4 SECTION = Naca4.parse("2412");

  @Test
  void a_hollow_plate_has_the_area_of_its_rectangle_and_half_circle() {
    // Outer radius 0.05, wall 0.02: inner half circle of radius 0.03, rectangle 0.06 high from 0.05 to 0.98.
    SectionShell shell = SectionShell.of(ComposedSection.plate(0.1, 0), Length.metres(1), Length.metres(0.02));
    double exact = Math.PI * 0.03 * 0.03 / 2 + 0.93 * 0.06;
    assertThat(shell.hollowArea().squareMetres()).isCloseTo(exact, withinPercentage(0.05));
    assertThat(shell.clearHeight(0.5).metres()).isCloseTo(0.06, within(1e-9));
    assertThat(shell.hollow().orElseThrow().lower()).isCloseTo(0.02, within(1e-4));
  }

  @Test
  void a_thin_wall_has_the_area_of_its_perimeter() {
    SectionShell shell = SectionShell.of(SECTION, Length.metres(1), Length.metres(2e-4));
    assertThat(shell.wallArea().squareMetres()).isCloseTo(SECTION.perimeter() * 2e-4, withinPercentage(1.5));
  }

  @Test
  void a_shell_is_never_heavier_than_the_solid_and_grows_with_its_wall() {
    double last = 0;
    for (double wall = 0.1; wall < 6; wall += 0.3) {
      SectionShell shell = SectionShell.of(SECTION, Length.millimetres(50), Length.millimetres(wall));
      double area = shell.wallArea().squareMillimetres();
      assertThat(area).isGreaterThanOrEqualTo(last - 1e-9)
          .isLessThanOrEqualTo(SECTION.area() * 2500 * (1 + 1e-12));
      last = area;
    }
    SectionShell solid = SectionShell.of(SECTION, Length.millimetres(50), Length.millimetres(4));
    assertThat(solid.isHollow()).isFalse();
    assertThat(solid.wallArea().squareMillimetres()).isCloseTo(SECTION.area() * 2500, within(1e-9));
    assertThat(solid.findings()).anyMatch(f -> f.message().contains("meet everywhere"));
  }

  @Test
  void four_passes_of_a_nozzle_fill_most_of_a_thin_section() {
    // 4 · 0.4 mm in all through a section 3 mm thick: the small-glider trap "walls are heavier than they look".
    SectionShell shell = SectionShell.of(Naca4.parse("2406"), Length.millimetres(50), Length.millimetres(0.8));
    double share = shell.wallArea().squareMetres() / (Naca4.parse("2406").area() * 0.0025);
    assertThat(share).isBetween(0.6, 1.0);
  }

  @Test
  void mass_per_span_is_area_times_density() {
    SectionShell shell = SectionShell.of(SECTION, Length.millimetres(60), Length.millimetres(0.8));
    assertThat(shell.massPerSpan(Density.kilogramsPerCubicMetre(1240)).kilogramsPerMetre())
        .isCloseTo(1240 * shell.wallArea().squareMetres(), within(1e-12));
  }

  @Test
  void the_inner_wall_keeps_its_distance_from_the_surface() {
    SectionShell shell = SectionShell.of(SECTION, Length.metres(1), Length.metres(0.01));
    // Height inside at the thickest part: outer depth less two walls, the surfaces being nearly level there.
    assertThat(shell.clearHeight(0.3).metres()).isCloseTo(SECTION.depth(0.3) - 0.02, within(2e-5));
    assertThat(shell.clearHeight(0.999).metres()).isZero();
  }

  @Test
  void a_spar_hole_fits_or_says_what_is_missing() {
    SectionShell shell = SectionShell.of(SECTION, Length.millimetres(60), Length.millimetres(0.8));
    assertThat(shell.spar(0.3, Length.millimetres(4))).isEmpty();
    assertThat(shell.spar(0.3, Length.millimetres(6)).orElseThrow().message()).contains("does not fit");
    assertThat(shell.spar(0.95, Length.millimetres(2))).isPresent();
    assertThat(shell.slot(0.3, Length.millimetres(3), Length.millimetres(5))).isEmpty();
    assertThat(shell.slot(0.3, Length.millimetres(20), Length.millimetres(5.4))).isPresent();
    // A wide flat slot in a flat plate fits exactly to its height.
    SectionShell plate = SectionShell.of(ComposedSection.plate(0.1, 0), Length.millimetres(100), Length.millimetres(1));
    assertThat(plate.slot(0.5, Length.millimetres(40), Length.millimetres(7.999))).isEmpty();
    assertThat(plate.slot(0.5, Length.millimetres(40), Length.millimetres(8.001)).orElseThrow().range().orElseThrow().upper())
        .isCloseTo(0.008, within(1e-6));
  }

  @Test
  void a_trailing_edge_thinner_than_a_wall_is_found() {
    assertThat(SectionShell.of(SECTION, Length.millimetres(50), Length.millimetres(0.8)).findings())
        .anyMatch(f -> f.subject().equals("trailing edge"));
    assertThat(SectionShell.of(SECTION.withTrailingEdgeThickness(0.02), Length.millimetres(50), Length.millimetres(0.8))
        .findings()).noneMatch(f -> f.subject().equals("trailing edge"));
  }

  @Test
  void questions_turned_round_answer_the_straight_ones() {
    Length chord = SectionChoice.chordForSparDepth(SECTION, 0.3, Length.millimetres(4), Length.millimetres(0.4));
    assertThat(SECTION.depth(0.3) * chord.millimetres()).isCloseTo(4.8, within(1e-9));
    assertThat(chord.millimetres()).as("worked number").isCloseTo(40.0, within(0.05));
    Length small = SectionChoice.chordForTrailingEdge(SECTION.withTrailingEdgeThickness(0.01), Length.millimetres(0.4));
    assertThat(small.millimetres()).isCloseTo(40, within(1e-9));
    double ratio = SectionChoice.thicknessRatioFor(Length.millimetres(50), 0.9, Length.millimetres(0.8));
    assertThat(Naca4.symmetric(ratio).depth(0.9) * 50).isCloseTo(0.8, within(1e-9));
    assertThat(ratio).as("worked number").isCloseTo(0.0663, within(5e-5));
    double camber = SectionChoice.camberForDesignLift(0.512049076313, 0.4);
    assertThat(camber).isCloseTo(0.04, within(1e-12));
    assertThat(ThinAirfoil.fourDigit(camber, 0.4).designLiftCoefficient()).isCloseTo(0.512049076313, within(1e-12));
    assertThat(SECTION.ordinate(Surface.UPPER, 0.3)).isPositive();
  }

  @Test
  void impossible_questions_are_refused() {
    assertThatThrownBy(() -> SectionChoice.chordForTrailingEdge(
        SECTION.withTrailingEdge(TrailingEdge.CLOSED), Length.millimetres(0.4))).hasMessageContaining("sharp");
    assertThatThrownBy(() -> SectionChoice.thicknessRatioFor(Length.millimetres(5), 0.9, Length.millimetres(2)))
        .hasMessageContaining("more than 0.5");
    assertThatThrownBy(() -> SectionChoice.camberForDesignLift(3, 0.4)).hasMessageContaining("maximum camber");
    assertThatThrownBy(() -> SectionShell.of(SECTION, Length.millimetres(50), Length.millimetres(-1)))
        .hasMessageContaining("wall must be positive");
  }
}
