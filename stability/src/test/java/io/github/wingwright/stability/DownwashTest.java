// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class DownwashTest {
  @ParameterizedTest
  @MethodSource("published")
  void the_methods_give_their_checked_values(PublishedValues.Row row) {
    double gradient =
        DownwashMethod.valueOf(row.text("method"))
            .gradient(
                row.number("lift_slope"),
                row.number("aspect_ratio"),
                row.number("taper_ratio"),
                0,
                row.number("arm"),
                row.number("height"));
    assertThat(gradient).as(row.toString()).isCloseTo(row.number("gradient"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(DownwashTest.class, "downwash.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("elliptic")
  void the_elliptic_line_gives_its_checked_factors(PublishedValues.Row row) {
    assertThat(factor(row.number("semispans")))
        .as(row.toString())
        .isCloseTo(row.number("factor"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> elliptic() {
    return PublishedValues.beside(DownwashTest.class, "elliptic-downwash.csv").rows();
  }

  private static double factor(double x) {
    return DownwashFormulas.ellipticFactor(x, DownwashFormulas.ellipticIntegral(x));
  }

  @Test
  void downwash_behind_and_upwash_ahead_add_to_one() {
    Seeded.logUniform(7, 200, 0.01, 50).forEach(x -> assertThat(factor(x) + factor(-x)).isCloseTo(1.0, within(1e-13)));
  }

  @Test
  void the_closed_form_agrees_with_the_law_of_Biot_and_Savart_integrated() {
    // y = sin t turns the infinite vortex strength at the tips into a smooth integrand.
    Seeded.logUniform(8, 40, 0.1, 10)
        .forEach(
            x -> {
              double integral =
                  Quadrature.integrate(
                          t -> {
                            double y = Math.sin(t);
                            double r = Math.sqrt(x * x + y * y);
                            double bound = x * Math.cos(t) * Math.cos(t) / (r * r * r);
                            return 1.0 + x / r + bound;
                          },
                          -0.5 * Math.PI,
                          0.5 * Math.PI,
                          Tolerance.relative(1e-11))
                      .value();
              // w = Γ₀/(4π)·integral, and far away w = Γ₀/2.
              assertThat(factor(x)).isCloseTo(integral / (2.0 * Math.PI), within(1e-9));
            });
  }

  @Test
  void a_horseshoe_far_away_turns_down_twice_what_it_turns_at_itself() {
    double far = DownwashFormulas.horseshoe(5, 8, 1e5, 0);
    double trailingAlone = 8.0 * 5 / (Math.pow(Math.PI, 3) * 8);
    assertThat(far).isCloseTo(2.0 * trailingAlone, within(1e-9));
  }

  @ParameterizedTest
  @EnumSource(DownwashMethod.class)
  void a_wing_turns_the_air_down_less_the_more_slender_it_is(DownwashMethod method) {
    // Sign: a lifting wing has downwash behind it, and with the span that downwash falls.
    double stubby = method.gradient(4.2, 5, 0.7, 0, 0.5, 0);
    double slender = method.gradient(5.1, 12, 0.7, 0, 0.5, 0);
    assertThat(stubby).as(method.words()).isBetween(0.2, 0.8);
    assertThat(slender).as(method.words()).isBetween(0.05, stubby);
  }

  @ParameterizedTest
  @EnumSource(value = DownwashMethod.class, names = {"HANDBOOK", "TORENBEEK", "HORSESHOE"})
  void a_tail_off_the_wake_feels_less(DownwashMethod method) {
    double inPlane = method.gradient(4.5, 6, 0.7, 0, 0.5, 0);
    assertThat(method.gradient(4.5, 6, 0.7, 0, 0.5, 0.2)).isLessThan(inPlane);
    assertThat(method.gradient(4.5, 6, 0.7, 0, 0.5, -0.2))
        .isEqualTo(method.gradient(4.5, 6, 0.7, 0, 0.5, 0.2));
  }

  @Test
  void all_methods_stand_side_by_side_and_their_steps_are_their_kernels() {
    Airframe glider = Models.glider();
    Tail tail = glider.horizontalTail().orElseThrow();
    Downwash downwash = Downwash.at(glider.wing(), tail, 4.8, DownwashMethod.TORENBEEK);
    double span = 0.4;
    double arm = tail.armFrom(glider.wing()).si() / span;
    double height = (tail.placement().z().si() - glider.wing().placement().z().si()) / span;
    for (DownwashMethod method : DownwashMethod.values()) {
      double kernel =
          method.gradient(
              4.8,
              glider.wing().planform().aspectRatio(),
              glider.wing().planform().taperRatio(),
              glider.wing().planform().sweepAt(0.25).si(),
              arm,
              height);
      assertThat(downwash.gradient(method)).as(method.words()).isEqualTo(kernel);
    }
    Band band = downwash.band();
    assertThat(band.likely()).isEqualTo(downwash.gradient(DownwashMethod.TORENBEEK));
    assertThat(band.high() - band.low()).isPositive();
    assertThat(downwash.toString().lines()).hasSize(1 + DownwashMethod.values().length);
  }

  @Test
  void a_method_outside_its_range_is_marked_and_left_out_of_the_band() {
    Airframe glider = Models.glider();
    Tail tail = glider.horizontalTail().orElseThrow();
    Tail near =
        new Tail(
            tail.role(),
            tail.planform(),
            tail.section(),
            tail.placement().withX(glider.wing().quarterChordX().plus(Length.millimetres(40))),
            tail.incidence());
    Downwash downwash = Downwash.at(glider.wing(), near, 4.8, DownwashMethod.HANDBOOK);
    assertThat(downwash.holds(DownwashMethod.HANDBOOK)).isFalse();
    assertThat(downwash.findings()).anySatisfy(f -> assertThat(f.message()).contains("tail arm over span"));
    assertThat(downwash.toString()).contains("(outside its range)");
  }

  @Test
  void a_tail_ahead_of_the_wing_is_no_matter_of_downwash() {
    Airframe glider = Models.glider();
    Tail tail = glider.horizontalTail().orElseThrow();
    Tail ahead =
        new Tail(tail.role(), tail.planform(), tail.section(), tail.placement().withX(Length.ZERO), tail.incidence());
    assertThatThrownBy(() -> Downwash.at(glider.wing(), ahead, 4.8, DownwashMethod.HANDBOOK))
        .hasMessageStartingWith("tail arm must be positive, was -");
  }
}
