// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.testing.PublishedValues;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The large jet transport of Etkin and Reid, sections 6.2 and 6.7. */
class JetTransportTest {
  private static final double GRAVITY = 9.81;
  private static final SteadyFlight FLIGHT = new SteadyFlight(235.9, 0.3045, 0, 511, 8.324, 59.64, GRAVITY);
  private static final BodyInertia BODY =
      new BodyInertia(2.83176e6 / GRAVITY, 2.47e7, 4.49e7, 6.73e7, -2.12e6);
  private static final LongitudinalForces LONGITUDINAL = LongitudinalForces.of(FLIGHT, BODY.mass(),
      new LongitudinalDerivatives(-0.108, -0.106, 0.1043, 0.2193, -4.92, -1.023, -5.921, -23.92, 5.896, -6.314));
  private static final LateralForces LATERAL = LateralForces.of(FLIGHT,
      new LateralDerivatives(-0.8771, -0.2797, 0.1946, 0, -0.3295, -0.04073, 0, 0.304, -0.2737));

  static StateMatrix printed(String system) {
    List<double[]> rows = new ArrayList<>();
    for (PublishedValues.Row row : PublishedValues.beside(JetTransportTest.class, "jet-transport-matrices.csv")) {
      if (row.text("system").equals(system)) {
        rows.add(new double[] {row.number("a1"), row.number("a2"), row.number("a3"), row.number("a4")});
      }
    }
    double[][] matrix = rows.toArray(double[][]::new);
    return system.equals("lateral") ? StateMatrix.lateral(matrix, 774) : StateMatrix.longitudinal(matrix, 774);
  }

  private static Mode mode(ModeKind kind) {
    String system = kind == ModeKind.PHUGOID || kind == ModeKind.SHORT_PERIOD ? "longitudinal" : "lateral";
    return printed(system).modes().find(kind).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("roots")
  void roots_are_those_printed(PublishedValues.Row row) {
    Mode mode = mode(ModeKind.valueOf(row.text("mode")));
    assertThat(mode.real()).as(row.toString()).isCloseTo(row.number("real"), within(row.number("tolerance_real")));
    assertThat(mode.imaginary()).as(row.toString())
        .isCloseTo(row.number("imaginary"), offset(row.number("tolerance_imaginary")));
    assertThat(mode.timeToHalf().map(Time::seconds).orElseThrow()).as(row.toString())
        .isCloseTo(row.number("time_to_half"), within(row.number("tolerance_times")));
    assertThat(mode.period().isPresent()).isEqualTo(row.has("period"));
    if (row.has("period")) {
      assertThat(mode.period().map(Time::seconds).orElseThrow()).as(row.toString())
          .isCloseTo(row.number("period"), within(Math.max(0.06, row.number("tolerance_times") / 10)));
    }
  }

  static Stream<PublishedValues.Row> roots() {
    return PublishedValues.beside(JetTransportTest.class, "jet-transport-roots.csv").rows();
  }

  /** Etkin and Reid print the polynomials and Routh's discriminants of both systems. */
  @Test
  void characteristic_polynomials_and_discriminants_are_those_printed() {
    assertThat(printed("longitudinal").characteristicPolynomial())
        .containsExactly(new double[] {1, 0.750468, 0.935494, 0.0094630, 0.0041959}, within(6e-7));
    assertThat(printed("lateral").characteristicPolynomial())
        .containsExactly(new double[] {1, 0.6358, 0.9388, 0.5114, 0.003682}, within(5e-5));
    assertThat(printed("longitudinal").routhDiscriminant()).isCloseTo(0.004191, within(5e-7));
    assertThat(printed("lateral").routhDiscriminant()).isCloseTo(0.04223, within(6e-6));
  }

  @ParameterizedTest
  @MethodSource("derivatives")
  void dimensional_derivatives_are_those_printed(PublishedValues.Row row) {
    double value = switch (row.text("derivative")) {
      case "xu" -> LONGITUDINAL.xu();
      case "xw" -> LONGITUDINAL.xw();
      case "zu" -> LONGITUDINAL.zu();
      case "zw" -> LONGITUDINAL.zw();
      case "zq" -> LONGITUDINAL.zq();
      case "zwDot" -> LONGITUDINAL.zwDot();
      case "mu" -> LONGITUDINAL.mu();
      case "mw" -> LONGITUDINAL.mw();
      case "mq" -> LONGITUDINAL.mq();
      case "mwDot" -> LONGITUDINAL.mwDot();
      case "yv" -> LATERAL.yv();
      case "lv" -> LATERAL.lv();
      case "lp" -> LATERAL.lp();
      case "lr" -> LATERAL.lr();
      case "nv" -> LATERAL.nv();
      case "np" -> LATERAL.np();
      case "nr" -> LATERAL.nr();
      default -> throw new IllegalArgumentException(row.toString());
    };
    assertThat(value).as(row.toString())
        .isCloseTo(row.number("value"), withinPercentage(row.number("tolerance_percent")));
  }

  static Stream<PublishedValues.Row> derivatives() {
    return PublishedValues.beside(JetTransportTest.class, "jet-transport-derivatives.csv").rows();
  }

  @Test
  void the_chain_from_coefficients_in_si_gives_the_same_motions_as_the_printed_matrices_in_feet() {
    Modes across = LATERAL.stateMatrix(FLIGHT, BODY).modes();
    Modes along = LONGITUDINAL.stateMatrix(FLIGHT, BODY).modes();
    for (ModeKind kind : List.of(ModeKind.PHUGOID, ModeKind.SHORT_PERIOD)) {
      assertThat(along.find(kind).orElseThrow().real()).isCloseTo(mode(kind).real(), withinPercentage(0.2));
      assertThat(along.find(kind).orElseThrow().imaginary())
          .isCloseTo(mode(kind).imaginary(), withinPercentage(0.2));
    }
    for (ModeKind kind : List.of(ModeKind.ROLL, ModeKind.SPIRAL, ModeKind.DUTCH_ROLL)) {
      assertThat(across.find(kind).orElseThrow().real()).isCloseTo(mode(kind).real(), withinPercentage(0.5));
    }
  }

  /** Etkin and Reid, sections 6.3 and 6.8. */
  @Test
  void classical_approximations_are_as_far_off_as_the_book_says() {
    assertThat(ModeApproximations.lanchesterPeriod(774, 32.2)).isCloseTo(107, within(0.5));
    assertThat(ModeApproximations.roll(printed("lateral")).real()).isCloseTo(-0.434, within(5e-4));
    Mode shortPeriod = ModeApproximations.shortPeriod(printed("longitudinal"));
    assertThat(shortPeriod.real()).isCloseTo(mode(ModeKind.SHORT_PERIOD).real(), withinPercentage(0.5));
    assertThat(shortPeriod.imaginary()).isCloseTo(mode(ModeKind.SHORT_PERIOD).imaginary(), withinPercentage(1));
    assertThat(ModeApproximations.dutchRoll(printed("lateral")).imaginary()).isCloseTo(0.947, withinPercentage(4));
  }
}
