// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import io.github.wingwright.core.ConvergenceException;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.numerics.Quadrature.Integral;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class QuadratureTest {
  private static final Tolerance FINE = Tolerance.relative(1e-12);

  @Test
  void the_documented_examples_hold() {
    assertThat(Quadrature.integrate(Math::sin, 0, Math.PI, FINE).value()).isCloseTo(2, within(1e-14));
    assertThat(Quadrature.onPanels(x -> x * x, 0, 3, 1)).isCloseTo(9, within(1e-14));
  }

  @Test
  void one_panel_is_exact_up_to_degree_nineteen() {
    IntStream.rangeClosed(0, 19).forEach(n -> assertThat(Quadrature.onPanels(x -> Math.pow(x, n), 0, 1, 1))
        .as("degree %d", n).isCloseTo(1.0 / (n + 1), within(1e-15)));
    assertThat(Math.abs(Quadrature.onPanels(x -> Math.pow(x, 20), -1, 1, 1) - 2.0 / 21)).isGreaterThan(1e-9);
  }

  @Test
  void a_kink_or_a_step_is_closed_in_on() {
    Integral kink = Quadrature.integrate(x -> Math.abs(x - 0.3), 0, 1, FINE);
    assertThat(kink.value()).isCloseTo(0.5 * (0.09 + 0.49), within(1e-12));
    Integral step = Quadrature.integrate(x -> x < 0.3 ? 1 : 2, 0, 1, Tolerance.absolute(1e-9));
    assertThat(step.value()).isCloseTo(1.7, within(1e-9));
  }

  @Test
  void a_singular_end_is_integrated() {
    Integral singular = Quadrature.integrate(x -> 1 / Math.sqrt(x), 0, 1, Tolerance.relative(1e-8));
    assertThat(singular.value()).isCloseTo(2, within(2.5 * singular.error()));
  }

  @Test
  void the_estimate_is_not_below_the_error() {
    Integral integral = Quadrature.integrate(x -> Math.exp(-50 * x * x), -1, 3, Tolerance.relative(1e-6));
    // erf(√50) is 1 to sixteen digits, so the whole is √(π/50)
    double exact = Math.sqrt(Math.PI / 50);
    assertThat(Math.abs(integral.value() - exact)).isLessThanOrEqualTo(integral.error());
    assertThat(integral.error()).isLessThanOrEqualTo(1e-6 * exact);
    assertThat(integral.evaluations()).isPositive();
  }

  @Test
  void turning_the_limits_around_changes_the_sign() {
    assertThat(Quadrature.integrate(Math::exp, 1, 0, FINE).value())
        .isEqualTo(-Quadrature.integrate(Math::exp, 0, 1, FINE).value());
    assertThat(Quadrature.onPanels(Math::exp, 1, 0, 3)).isCloseTo(1 - Math.E, within(1e-14));
    assertThat(Quadrature.integrate(Math::exp, 1, 1, FINE).value()).isZero();
    assertThat(Quadrature.onPanels(Math::exp, 1, 1, 3)).isZero();
  }

  @Test
  void an_integral_that_is_zero_ends_at_rounding() {
    assertThat(Quadrature.integrate(Math::sin, -2, 2, FINE).value()).isCloseTo(0, within(1e-14));
    assertThat(Quadrature.integrate(x -> 0, -2, 2, FINE)).isEqualTo(new Integral(0, 0, 30));
  }

  @Test
  void what_does_not_settle_says_where() {
    assertThatExceptionOfType(ConvergenceException.class)
        .isThrownBy(() -> Quadrature.integrate(x -> Math.sin(1e7 * x), 0, 1, FINE))
        .withMessageContaining("integral from 0.0 to 1.0 did not settle")
        .satisfies(failure -> assertThat(failure.lastValues()).hasSize(2));
    assertThatExceptionOfType(ConvergenceException.class)
        .isThrownBy(() -> Quadrature.integrate(x -> 1 / x, 0, 1, FINE))
        .withMessageContaining("function is Infinity at");
    assertThatExceptionOfType(ConvergenceException.class)
        .isThrownBy(() -> Quadrature.integrate(Math::log, -1, 1, FINE))
        .withMessageContaining("function is NaN");
    assertThatExceptionOfType(ConvergenceException.class)
        .isThrownBy(() -> Quadrature.onPanels(Math::log, -1, 1, 2))
        .withMessageContaining("integral is NaN");
  }

  @Test
  void what_is_not_finite_does_not_go_in() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Quadrature.integrate(Math::exp, 0, Double.POSITIVE_INFINITY, FINE))
        .withMessageContaining("was 0.0 to Infinity");
    assertThatIllegalArgumentException().isThrownBy(() -> Quadrature.onPanels(Math::exp, Double.NaN, 1, 1))
        .withMessageContaining("was NaN to 1.0");
    assertThatIllegalArgumentException().isThrownBy(() -> Quadrature.onPanels(Math::exp, 0, 1, 0))
        .withMessage("number of panels must be at least 1, was 0");
  }
}
