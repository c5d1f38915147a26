// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Guidelines, the findings they give, prices and sources. */
class FindingTest {
  private static final Guideline VOLUME = Guideline.ofNumber(
      "horizontal tail volume coefficient", 0.5, 0.8, "hand-launched models", "Enlarge the tail or its arm.",
      Source.COMMON_PRACTICE);

  @Test
  void a_guideline_says_on_which_side_it_was_left() {
    assertThat(VOLUME.check(0.5)).isEmpty();
    assertThat(VOLUME.check(0.8)).isEmpty();
    Finding low = VOLUME.check(0.4).orElseThrow();
    assertThat(low.message()).isEqualTo(
        "horizontal tail volume coefficient is below the range for hand-launched models. Enlarge the tail or its arm.");
    assertThat(low.severity()).isEqualTo(Severity.CAUTION);
    assertThat(low.measure()).isEqualTo("0.4 (range 0.5 to 0.8)");
    assertThat(low.value()).hasValue(0.4);
    assertThat(low.range()).contains(Interval.between(0.5, 0.8));
    assertThat(VOLUME.check(0.9, Severity.NOTE).orElseThrow().message()).contains("is above the range");
    assertThat(VOLUME.check(0.9, Severity.NOTE).orElseThrow().severity()).isEqualTo(Severity.NOTE);
    assertThat(VOLUME).hasToString("horizontal tail volume coefficient 0.5 to 0.8 [common practice, no source]");
    assertThatThrownBy(() -> VOLUME.check(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("value of a finding must be finite, was NaN (horizontal tail volume coefficient)");
    assertThatThrownBy(() -> Guideline.ofNumber("x", 2, 1, "", "", Source.BRIEF))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("range of x must not be empty, was 2.0 to 1.0");
  }

  @Test
  void a_value_just_outside_is_written_so_that_it_looks_outside() {
    assertThat(VOLUME.check(0.800001).orElseThrow().measure()).isEqualTo("0.800001 (range 0.5 to 0.8)");
    assertThat(VOLUME.check(Math.nextUp(0.8)).orElseThrow().measure()).startsWith("0.800000000000000").contains("2 (range");
  }

  @Test
  void the_heaviest_finding_comes_first_and_once() {
    Finding note = Finding.of(Severity.NOTE, "a", "words", Source.BRIEF);
    Finding caution = Finding.of(Severity.CAUTION, "b", "words", Source.BRIEF);
    Finding serious = Finding.of(Severity.SERIOUS, "c", "words", Source.BRIEF);
    Finding again = Finding.of(Severity.CAUTION, "b", "words", Source.BRIEF);
    assertThat(Finding.inOrderOfWeight(List.of(note, caution, serious, again))).containsExactly(serious, caution, note);
    assertThat(again).isEqualTo(caution).hasSameHashCodeAs(caution).isNotEqualTo(note);
    assertThat(note.value()).isEmpty();
    assertThat(note.range()).isEmpty();
    assertThat(note.measure()).isEmpty();
    assertThat(note).hasToString("NOTE a: words");
    assertThat(Finding.of(Severity.NOTE, "a", "w".repeat(200), Source.BRIEF).toString()).hasSize(75);
  }

  @Test
  void a_finding_survives_serialization() throws Exception {
    Finding finding = VOLUME.check(0.4).orElseThrow();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(List.of(finding, VOLUME));
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).isEqualTo(List.of(finding, VOLUME));
    }
  }

  @Test
  void a_price_has_a_sign_and_says_whether_it_is_a_gain() {
    Price drag = new Price("drag area", 0.0010, 0.0012, Area.SQUARE_CENTIMETRE, false);
    assertThat(drag.change()).isCloseTo(0.0002, within(1e-15));
    assertThat(drag.isGain()).isFalse();
    assertThat(drag).hasToString("drag area +20 % (12 cm² instead of 10 cm²), a cost");
    Price less = new Price("drag area", 0.0010, 0.0008, Area.SQUARE_CENTIMETRE, false);
    assertThat(less.isGain()).isTrue();
    assertThat(less).hasToString("drag area −20 % (8 cm² instead of 10 cm²), a gain");
    Price stiffness = new Price("bending stiffness", 2, 1, NamedUnit.NUMBER, true);
    assertThat(stiffness.isGain()).isFalse();
    assertThat(stiffness).hasToString("bending stiffness −50 % (1 instead of 2), a cost");
    Price same = new Price("volume", 3, 3, NamedUnit.NUMBER, true);
    assertThat(same.isGain()).isFalse();
    assertThat(same.relativeChange()).isZero();
    assertThat(same).hasToString("volume unchanged (3)");
    assertThat(new Price("moment", -2, -3, NamedUnit.NUMBER, true).relativeChange()).isEqualTo(-0.5);
    assertThat(new Price("moment", 0, 1, NamedUnit.NUMBER, true).relativeChange()).isEqualTo(Double.POSITIVE_INFINITY);
    assertThatThrownBy(() -> new Price("drag", 1, Double.NaN, NamedUnit.NUMBER, true))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("price of drag must be between finite values, was NaN instead of 1.0");
  }

  @Test
  void a_source_says_how_far_it_can_be_trusted() {
    assertThat(Source.published("Author, Title, 1965", "ch. 6").cite()).isEqualTo("Author, Title, 1965, ch. 6");
    assertThat(Source.fromMemory("Author, Title, 1965", "ch. 6").cite())
        .isEqualTo("Author, Title, 1965, ch. 6 (from memory)");
    assertThat(Source.restated("Author, Title, 1965", "").cite())
        .isEqualTo("Author, Title, 1965 (as restated in study notes)");
    assertThat(Source.library("rounder").cite()).isEqualTo("rounder (choice of this library)");
    assertThat(Source.COMMON_PRACTICE).hasToString("common practice, no source");
    assertThat(Source.DEFINITION).hasToString("by definition");
    assertThat(Source.BRIEF).hasToString("the brief");
  }

  @Test
  void a_range_of_one_end_is_worded_as_such() {
    assertThat(measure(38.0, Interval.atMost(36.0))).isEqualTo("38 (at most 36)");
    assertThat(measure(38.0, Interval.atLeast(40.0))).isEqualTo("38 (at least 40)");
    assertThat(measure(38.0, Interval.between(20.0, 36.0))).isEqualTo("38 (range 20 to 36)");
    assertThat(measure(38.0, Interval.between(36.0, 36.0))).isEqualTo("38 (exactly 36)");
    assertThat(measure(38.0, Interval.NONE)).isEqualTo("38 (no value will do)");
  }

  private static String measure(double value, Interval range) {
    return Finding.of(Severity.CAUTION, "it", "message", value, range, NamedUnit.NUMBER, Source.BRIEF).measure();
  }
}
