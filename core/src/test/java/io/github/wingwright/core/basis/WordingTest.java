// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import org.junit.jupiter.api.Test;

class WordingTest {
  private static final Wording WORDS =
      Wording.of("length at most ").and(Length.inches(9)).and(" with ").and(Mass.grams(6)).and(" of ballast");

  @Test
  void quantities_are_shown_in_the_units_asked_for_and_the_others_as_suits_their_size() {
    assertThat(WORDS.in(Length.INCH)).isEqualTo("length at most 9 in with 6 g of ballast");
    assertThat(WORDS.in(Length.INCH, Mass.KILOGRAM)).isEqualTo("length at most 9 in with 0.006 kg of ballast");
  }

  @Test
  void without_units_every_quantity_is_shown_as_suits_its_size() {
    assertThat(WORDS).hasToString("length at most 228.6 mm with 6 g of ballast");
    assertThat(WORDS.in()).isEqualTo(WORDS.toString());
  }

  @Test
  void plain_words_are_taken_as_they_are() {
    assertThat(Wording.of("{} % of ").and("$1 {}").in(Length.INCH)).isEqualTo("{} % of $1 {}");
  }
}
