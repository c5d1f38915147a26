// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import io.github.wingwright.core.ConvergenceException;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.Seeded;
import org.junit.jupiter.api.Test;

class RootsTest {
  private static final Tolerance FINE = Tolerance.relative(1e-14);

  @Test
  void the_documented_example_holds() {
    assertThat(Roots.find(x -> x * x - 2, 1, 2, FINE)).isCloseTo(1.41421356237310, within(1e-14));
  }

  @Test
  void a_polynomial_gives_back_the_root_it_was_made_from() {
    Seeded.doubles(11, 200, 0.01, 0.99).forEach(root ->
        assertThat(Roots.find(x -> (x - root) * (x * x + 1), 0, 1, FINE)).isCloseTo(root, within(1e-13)));
  }

  @Test
  void scale_does_not_matter() {
    Seeded.logUniform(12, 200, 1e-12, 1e12).forEach(scale ->
        assertThat(Roots.find(x -> 1e-20 * (x * x / scale / scale - 2), 0, 3 * scale, FINE) / scale)
            .isCloseTo(Math.sqrt(2), within(1e-13)));
  }

  @Test
  void a_zero_at_an_end_is_returned_exactly() {
    assertThat(Roots.find(x -> x - 1, 1, 2, FINE)).isEqualTo(1);
    assertThat(Roots.find(x -> x - 2, 1, 2, FINE)).isEqualTo(2);
  }

  @Test
  void the_tolerance_is_honoured_and_saves_work() {
    int[] calls = new int[2];
    double coarse = Roots.find(x -> count(calls, 0, Math.cos(x) - x), 0, 1, Tolerance.absolute(1e-2));
    double fine = Roots.find(x -> count(calls, 1, Math.cos(x) - x), 0, 1, FINE);
    // the fixed point of the cosine
    assertThat(fine).isCloseTo(0.739085133215161, within(1e-14));
    assertThat(coarse).isCloseTo(fine, within(1e-2));
    assertThat(calls[0]).isLessThan(calls[1]);
  }

  private static double count(int[] calls, int which, double value) {
    calls[which]++;
    return value;
  }

  @Test
  void a_bracket_without_a_change_of_sign_names_both_ends() {
    assertThatIllegalArgumentException().isThrownBy(() -> Roots.find(x -> x * x + 1, -1, 2, FINE))
        .withMessage("function must change sign between the ends of the bracket, "
            + "was f(-1.0) = 2.0 and f(2.0) = 5.0");
  }

  @Test
  void what_is_not_finite_does_not_go_in() {
    assertThatIllegalArgumentException().isThrownBy(() -> Roots.find(Math::log, 0, 2, FINE))
        .withMessageContaining("f(0.0) = -Infinity");
    assertThatIllegalArgumentException().isThrownBy(() -> Roots.find(x -> x, Double.NaN, 2, FINE))
        .withMessage("interval must be finite, with its lower end below its upper, was NaN to 2.0");
    assertThatIllegalArgumentException().isThrownBy(() -> Roots.find(x -> x, 2, 1, FINE))
        .withMessageContaining("was 2.0 to 1.0");
  }

  @Test
  void a_hole_in_the_function_ends_the_search() {
    assertThatExceptionOfType(ConvergenceException.class)
        .isThrownBy(() -> Roots.find(x -> Math.abs(x) < 0.5 ? Double.NaN : x, -1, 1, FINE))
        .withMessageContaining("function is NaN at")
        .withMessageContaining("bracket -1.0 to 1.0");
  }

  @Test
  void a_pole_is_not_a_zero() {
    assertThatExceptionOfType(ConvergenceException.class)
        .isThrownBy(() -> Roots.find(x -> 1 / (x - 0.3), 0, 1, FINE))
        .withMessageContaining("sign changes without a zero near 0.29999");
  }

  @Test
  void the_boundary_lies_on_the_side_where_the_condition_holds() {
    double below = Roots.boundary(x -> x * x <= 2, 0, 2, Tolerance.relative(1e-12));
    assertThat(below).isCloseTo(Math.sqrt(2), within(2e-12)).isLessThanOrEqualTo(Math.sqrt(2));
    double above = Roots.boundary(x -> x * x >= 2, 2, 0, Tolerance.relative(1e-12));
    assertThat(above).isCloseTo(Math.sqrt(2), within(2e-12)).isGreaterThanOrEqualTo(Math.sqrt(2));
  }

  @Test
  void a_boundary_search_ends_even_at_the_last_place() {
    double boundary = Roots.boundary(x -> x < 1, 0, 2, Tolerance.absolute(Double.MIN_VALUE));
    assertThat(boundary).isEqualTo(Math.nextDown(1.0));
  }

  @Test
  void a_condition_that_is_not_as_said_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Roots.boundary(x -> x > 1, 0, 2, FINE))
        .withMessage("condition must hold at 0.0, did not");
    assertThatIllegalArgumentException().isThrownBy(() -> Roots.boundary(x -> x >= 0, 0, 2, FINE))
        .withMessage("condition must fail at 2.0, held");
    assertThatIllegalArgumentException().isThrownBy(() -> Roots.boundary(x -> x < 1, 0, Double.NaN, FINE))
        .withMessageContaining("must be finite");
  }
}
