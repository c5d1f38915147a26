// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked example of the package's documentation, line by line. */
class BasisLectureTest {
  private static final FeasibleRange RANGE = FeasibleRange.of("fuselage diameter", Length.MILLIMETRE, List.of(
      Bound.of("what the machine makes", Strength.LIMIT, Source.BRIEF, Interval.atMost(0.040)),
      Bound.of("fineness ratio 6 to 10", Strength.GUIDELINE, Source.COMMON_PRACTICE, Interval.between(0.016, 0.0267)),
      Bound.of("room for the ballast", Strength.LIMIT, Source.BRIEF, Interval.atLeast(0.018))));

  @Test
  void workings() {
    Formula weight = Formula.named("weight").gives("W", Force.NEWTON).as("m·g₀")
        .where("m", "mass", Mass.KILOGRAM, 0, 1000)
        .where("g₀", "standard gravity", Acceleration.METRE_PER_SECOND_SQUARED, 9, 10)
        .computedBy((m, g) -> m * g);
    Step mass = Step.given("mass", "m", Mass.grams(30), Source.BRIEF);
    Step gravity = Step.given("standard gravity", "g₀", Acceleration.STANDARD_GRAVITY, Source.DEFINITION);
    assertThat(Workings.of(List.of(Step.of(weight, mass, gravity)))).hasToString("""
        m = 0.03 kg  mass
            = given: the brief
        g₀ = 9.80665 m/s²  standard gravity
            = given: by definition
        W = 0.2942 N  weight
            = m·g₀ with m = 0.03 kg, g₀ = 9.80665 m/s²""");
  }

  @Test
  void feasible_range() {
    assertThat(RANGE).hasToString("""
        fuselage diameter:
          limit  what the machine makes: at most 40 mm
          guideline  fineness ratio 6 to 10: 16 to 26.7 mm
          limit  room for the ballast: at least 18 mm
          feasible: 18 to 26.7 mm
          lower end bound by room for the ballast
          upper end bound by fineness ratio 6 to 10""");
  }

  @Test
  void finding_and_price() {
    assertThat(RANGE.check(0.030)).singleElement()
        .hasToString("CAUTION fuselage diameter: 30 mm (range 16 to 26.7 mm)");
    assertThat(new Price("drag area", 0.00050, 0.00055, Area.SQUARE_CENTIMETRE, false))
        .hasToString("drag area +10 % (5.5 cm² instead of 5 cm²), a cost");
  }
}
