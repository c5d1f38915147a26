// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.Inscribed;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import java.util.EnumSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BuildVolumeTest {
  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private static BuildVolume box(double a, double b, double c) {
    return BuildVolume.box(mm(a), mm(b), mm(c));
  }

  @ParameterizedTest
  @MethodSource("longestParts")
  void the_longest_parts_are_those_of_an_independent_evaluation(PublishedValues.Row row) {
    BuildVolume machine = box(row.number("a_mm"), row.number("b_mm"), row.number("c_mm"));
    double tolerance = row.number("tolerance_mm");
    assertThat(machine.longest(Lay.DIAGONAL, Length.ZERO, Length.ZERO).millimetres())
        .isCloseTo(row.number("bed_diagonal_mm"), within(tolerance));
    assertThat(machine.longest(Lay.RAISED, Length.ZERO, Length.ZERO).millimetres())
        .isCloseTo(row.number("body_diagonal_mm"), within(1e-5 * row.number("body_diagonal_mm")));
    Length width = mm(row.number("width_mm"));
    assertThat(machine.longest(Lay.DIAGONAL, width, width).millimetres())
        .isCloseTo(row.number("longest_flat_mm"), within(tolerance));
    Length length = mm(row.number("longest_flat_mm") - 0.01);
    Orientation lying = machine.orientation(length, width, width, EnumSet.of(Lay.DIAGONAL)).orElseThrow();
    assertThat(lying.turned().degrees()).isCloseTo(row.number("angle_deg"), within(1e-3));
  }

  static Stream<PublishedValues.Row> longestParts() {
    return PublishedValues.beside(BuildVolumeTest.class, "longest-parts.csv").rows();
  }

  @Test
  void the_simplest_lay_is_taken() {
    BuildVolume machine = box(250, 210, 220);
    assertThat(machine.orientation(mm(240), mm(30), mm(4)).orElseThrow().lay()).isEqualTo(Lay.STRAIGHT);
    assertThat(machine.orientation(mm(290), mm(30), mm(30)).orElseThrow().lay()).isEqualTo(Lay.DIAGONAL);
    assertThat(machine.orientation(mm(330), mm(20), mm(20)).orElseThrow().lay()).isEqualTo(Lay.RAISED);
    assertThat(machine.orientation(mm(400), mm(20), mm(20))).isEmpty();
  }

  @Test
  void a_wide_flat_part_goes_on_edge_where_only_that_fits() {
    BuildVolume machine = box(100, 50, 200);
    assertThat(machine.orientation(mm(90), mm(120), mm(5), EnumSet.of(Lay.STRAIGHT, Lay.DIAGONAL))).isEmpty();
    Orientation lying = machine.orientation(mm(90), mm(120), mm(5)).orElseThrow();
    assertThat(lying.rolled().degrees()).isEqualTo(90);
    assertThat(lying).hasToString("lying on edge");
    assertThat(machine.orientation(mm(105), mm(120), mm(5)).orElseThrow().toString())
        .startsWith("lying on edge across the bed at a slant of ");
  }

  @Test
  void a_part_stands_where_its_section_goes_on_the_bed_even_turned() {
    BuildVolume machine = box(100, 100, 300);
    assertThat(machine.longest(Lay.UPRIGHT, mm(120), mm(10)).millimetres()).isEqualTo(300);
    assertThat(machine.longest(Lay.UPRIGHT, mm(135), mm(10)).millimetres()).isZero();
  }

  @Test
  void on_a_round_bed_the_chord_counts_and_raised_the_rectangle_of_chord_and_height() {
    BuildVolume round = BuildVolume.cylinder(mm(200), mm(300));
    assertThat(round.longest(Lay.STRAIGHT, mm(120), mm(120)).millimetres()).isCloseTo(160, within(1e-9));
    assertThat(round.longest(Lay.UPRIGHT, mm(120), mm(160)).millimetres()).isEqualTo(300);
    assertThat(round.longest(Lay.UPRIGHT, mm(121), mm(160)).millimetres()).isZero();
    assertThat(round.longest(Lay.RAISED, Length.ZERO, Length.ZERO).millimetres())
        .isCloseTo(Math.hypot(200, 300), within(1e-9));
    assertThat(round.longest(Lay.RAISED, mm(120), mm(120)).millimetres())
        .isCloseTo(Math.max(300, Inscribed.longestRectangle(160, 300, 120)), within(1e-9));
  }

  @Test
  void what_cannot_be_made_says_the_limit_and_by_how_much() {
    Finding obstacle =
        box(180, 180, 180).obstacle("boom", mm(200), mm(22), mm(22), EnumSet.of(Lay.UPRIGHT)).orElseThrow();
    assertThat(obstacle.severity()).isEqualTo(Severity.SERIOUS);
    assertThat(obstacle.message()).isEqualTo("It is 20 mm too long for the machine of 180 mm × 180 mm × 180 mm.");
    assertThat(obstacle.range().orElseThrow().upper()).isEqualTo(0.18);
    Finding section =
        box(180, 180, 180).obstacle("pod", mm(100), mm(300), mm(200), EnumSet.of(Lay.STRAIGHT)).orElseThrow();
    assertThat(section.message()).contains("section of 300 mm × 200 mm does not go into the machine");
    assertThat(box(180, 180, 180).obstacle("pod", mm(100), mm(30), mm(20), EnumSet.of(Lay.STRAIGHT))).isEmpty();
  }

  @Test
  void a_margin_is_lost_on_both_edges() {
    assertThat(box(250, 210, 220).keepingClear(mm(5)).bedWidth().millimetres()).isCloseTo(200, within(1e-9));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> box(20, 20, 20).keepingClear(mm(10)))
        .withMessage("margin must leave some of the bed of 20 mm, was 10 mm");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> box(-1, 20, 20))
        .withMessageStartingWith("width of the bed must be positive");
  }
}
