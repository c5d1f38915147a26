// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Length.millimetres;
import static io.github.wingwright.core.quantity.Mass.grams;
import static io.github.wingwright.core.quantity.Mass.kilograms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BallastTest {
  private static final MassStatement GLIDER =
      MassStatement.of(
          MassItem.of("wing", grams(30), Placement.at(millimetres(120), millimetres(12))),
          MassItem.of("fuselage", grams(20), Placement.at(millimetres(135), Length.ZERO)),
          MassItem.of("tail", grams(10), Placement.at(millimetres(240), Length.ZERO)));

  @ParameterizedTest
  @MethodSource("published")
  void the_mass_agrees_with_the_worked_cases(PublishedValues.Row row) {
    MassStatement bare =
        MassStatement.of(
            MassItem.of("all", kilograms(row.number("mass_kg")), Placement.at(metres(row.number("centre_of_gravity_m")), Length.ZERO)));
    Ballast ballast = Ballast.forCentreOfGravity(bare, metres(row.number("wanted_m")), metres(row.number("place_m")));
    assertThat(ballast.mass().orElseThrow().kilograms()).isCloseTo(row.number("ballast_kg"), within(row.number("tolerance_kg")));
    assertThat(ballast.applied("nose ballast", Length.ZERO).centreOfGravity().x().si())
        .isCloseTo(row.number("wanted_m"), within(1e-12));
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(BallastTest.class, "ballast.csv").rows();
  }

  @Test
  void the_documented_examples_hold() {
    assertThat(Ballast.ballastMass(0.06, 0.145, 0.12, 0.01)).isCloseTo(0.0136364, within(5e-8));
    assertThat(Ballast.move(0.06, 0.12, 0.145, 0.02)).isCloseTo(-0.075, within(1e-15));
  }

  @Test
  void the_centre_of_gravity_lands_where_it_is_wanted() {
    double now = GLIDER.centreOfGravity().x().si();
    Seeded.points(9, 200, new double[] {0.02, 0.28}, new double[] {-0.02, 0.3}).forEach(p -> {
      Ballast ballast = Ballast.forCentreOfGravity(GLIDER, metres(p[0]), metres(p[1]));
      boolean helps = (now - p[0]) * (p[0] - p[1]) > 0;
      assertThat(ballast.isPossible()).isEqualTo(helps);
      if (helps) {
        assertThat(ballast.applied("ballast", Length.ZERO).centreOfGravity().x().si()).isCloseTo(p[0], within(1e-12));
      } else {
        assertThat(ballast.mass()).isEmpty();
        assertThat(ballast.findings()).isNotEmpty();
      }
    });
  }

  @Test
  void each_move_alone_does_it_too() {
    Ballast ballast = Ballast.forCentreOfGravity(GLIDER, millimetres(125), millimetres(10));
    assertThat(ballast.moves()).extracting(Ballast.Move::item).containsExactly("wing", "fuselage", "tail");
    for (Ballast.Move move : ballast.moves()) {
      MassStatement moved = GLIDER.with(GLIDER.item(move.item()).orElseThrow().movedAft(move.distance()));
      assertThat(moved.centreOfGravity().x().millimetres()).isCloseTo(125, within(1e-10));
    }
  }

  @Test
  void an_impossible_wish_is_explained() {
    Ballast ballast = Ballast.forCentreOfGravity(GLIDER, millimetres(125), millimetres(130));
    assertThat(ballast.mass()).isEmpty();
    assertThat(ballast.findings()).singleElement().satisfies(f -> {
      assertThat(f.severity()).isEqualTo(Severity.SERIOUS);
      assertThat(f.message())
          .isEqualTo(
              "To bring the centre of gravity from 145 mm forward to 125 mm, ballast must sit ahead of 125 mm; "
                  + "the place given is 130 mm. Instead, move wing by 40 mm forward or fuselage by 60 mm forward.");
    });
    assertThat(ballast).hasToString("no ballast possible at x 130 mm for centre of gravity at 125 mm");
    assertThatIllegalStateException()
        .isThrownBy(() -> ballast.applied("nose ballast", Length.ZERO))
        .withMessageStartingWith("ballast must be possible to be applied, was not: To bring");
    assertThat(Ballast.forCentreOfGravity(GLIDER, millimetres(125), millimetres(125)).isPossible()).isFalse();
    assertThat(Ballast.forCentreOfGravity(GLIDER, millimetres(160), millimetres(10)).findings().get(0).message())
        .startsWith("To bring the centre of gravity from 145 mm aft to 160 mm, ballast must sit behind 160 mm");
  }

  @Test
  void nothing_is_asked_for_where_it_balances_already() {
    Ballast ballast = Ballast.forCentreOfGravity(GLIDER, millimetres(145), millimetres(145));
    assertThat(ballast.isNeeded()).isFalse();
    assertThat(ballast.mass()).contains(Mass.ZERO);
    assertThat(ballast.moves()).isEmpty();
    assertThat(ballast.findings()).isEmpty();
    assertThat(ballast.applied("nose ballast", Length.ZERO)).isEqualTo(GLIDER);
    assertThat(ballast).hasToString("no ballast needed at x 145 mm for centre of gravity at 145 mm");
  }

  @Test
  void much_ballast_is_a_caution() {
    assertThat(Ballast.forCentreOfGravity(GLIDER, millimetres(125), millimetres(10)).findings()).isEmpty();
    assertThat(Ballast.forCentreOfGravity(GLIDER, millimetres(100), millimetres(10)).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.value().orElseThrow()).isCloseTo(0.5, within(1e-12)));
  }

  @Test
  void the_workings_give_the_mass_bit_for_bit() {
    Ballast ballast = Ballast.forCentreOfGravity(GLIDER, millimetres(125), millimetres(10));
    Step total = GLIDER.massStep();
    Step target = Step.given("wanted centre of gravity", "x_t", millimetres(125), Source.BRIEF);
    Step step = ballast.massStep(total, GLIDER.centreOfGravityStep(total), target).orElseThrow();
    assertThat(step.value()).isEqualTo(ballast.mass().orElseThrow().si());
  }
}
