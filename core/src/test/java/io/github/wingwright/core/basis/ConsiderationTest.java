// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.Seeded;
import java.util.function.DoubleBinaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The intervals that are found from nothing but a margin. */
class ConsiderationTest {
  private static final Interval SEARCH = Interval.between(0.001, 1);

  private static Consideration of(DoubleBinaryOperator margin) {
    return new Consideration() {
      @Override
      public String name() {
        return "test";
      }

      @Override
      public Strength strength() {
        return Strength.LIMIT;
      }

      @Override
      public Source source() {
        return Source.BRIEF;
      }

      @Override
      public double margin(double length, double diameter) {
        return margin.applyAsDouble(length, diameter);
      }
    };
  }

  private static Offset<Double> bits(double value) {
    return within(8 * Math.ulp(value));
  }

  @Test
  void finds_the_end_of_a_margin_to_the_last_bits() {
    Seeded.logUniform(81, 500, 0.002, 0.9).forEach(end -> {
      Interval below = of((l, d) -> 1 - d / end).diametersAt(0.2, SEARCH);
      assertThat(below.lower()).isEqualTo(Double.NEGATIVE_INFINITY);
      assertThat(below.upper()).isCloseTo(end, bits(end));
      Interval above = of((l, d) -> d / end - 1).diametersAt(0.2, SEARCH);
      assertThat(above.lower()).isCloseTo(end, bits(end));
      assertThat(above.upper()).isEqualTo(Double.POSITIVE_INFINITY);
    });
  }

  @Test
  void its_ends_satisfy_the_margin_themselves() {
    Consideration slender = of((l, d) -> Math.min(l / d / 6 - 1, 1 - l / d / 10));
    Seeded.doubles(82, 200, 0.05, 0.5).forEach(length -> {
      Interval diameters = slender.diametersAt(length, SEARCH);
      assertThat(slender.margin(length, diameters.lower())).isNotNegative();
      assertThat(slender.margin(length, diameters.upper())).isNotNegative();
      assertThat(diameters.lower()).isCloseTo(length / 10, bits(length / 10));
      assertThat(diameters.upper()).isCloseTo(length / 6, bits(length / 6));
    });
  }

  @Test
  void finds_lengths_at_a_diameter() {
    Interval lengths = of((l, d) -> Math.min(l / d / 6 - 1, 1 - l / d / 10)).lengthsAt(0.02, SEARCH);
    assertThat(lengths.lower()).isCloseTo(0.12, bits(0.12));
    assertThat(lengths.upper()).isCloseTo(0.20, bits(0.20));
  }

  @Test
  void says_nothing_and_everything_plainly() {
    assertThat(of((l, d) -> -1 - d).diametersAt(0.2, SEARCH)).isEqualTo(Interval.NONE);
    assertThat(of((l, d) -> 0.0).diametersAt(0.2, SEARCH)).isEqualTo(Interval.ALL);
    assertThat(of((l, d) -> 0.0).preferredDiameter(0.2)).isEmpty();
  }

  @Test
  void finds_an_interval_that_is_narrower_than_its_scan() {
    Seeded.logUniform(83, 200, 0.01, 0.9).forEach(middle -> {
      Interval found = of((l, d) -> 1e-5 - Math.abs(d / middle - 1)).diametersAt(0.2, SEARCH);
      assertThat(found.lower()).isCloseTo(middle * (1 - 1e-5), within(1e-12));
      assertThat(found.upper()).isCloseTo(middle * (1 + 1e-5), within(1e-12));
    });
    assertThat(of((l, d) -> -1e-9 - Math.abs(d - 0.05)).diametersAt(0.2, SEARCH).isEmpty()).isTrue();
  }

  @Test
  void takes_the_widest_of_several_intervals() {
    Interval found = of((l, d) -> Math.sin(2 * Math.PI * d)).lengthsAt(0.5, SEARCH);
    assertThat(of((l, d) -> Math.sin(2 * Math.PI * l)).lengthsAt(0.5, Interval.between(0.001, 2)).upper())
        .isCloseTo(0.5, within(1e-12));
    assertThat(found).isEqualTo(Interval.ALL);
  }

  @Test
  void refuses_a_search_without_ends_and_a_margin_that_is_no_number() {
    for (Interval bad : new Interval[] {Interval.ALL, Interval.NONE, Interval.between(0, 1), Interval.between(1, 1)}) {
      assertThatThrownBy(() -> of((l, d) -> 1).diametersAt(0.2, bad))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("search must be positive, finite and not empty, was ");
    }
    assertThatThrownBy(() -> of((l, d) -> Math.sqrt(0.5 - d)).diametersAt(0.2, SEARCH))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("margin must be a number, was NaN at 0.50");
  }
}
