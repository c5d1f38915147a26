// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The light aeroplane of R. C. Nelson's text (from memory), in feet, slugs and seconds. The text leaves out Z_q and Z_ẇ, and
 * its Dutch-roll frequency comes from rounded derivatives.
 */
class LightAeroplaneTest {
  private static final double GRAVITY = 32.2;
  private static final SteadyFlight FLIGHT = new SteadyFlight(176, 0.002377, 0, 184, 5.7, 33.4, GRAVITY);
  private static final BodyInertia BODY = new BodyInertia(2750 / GRAVITY, 1048, 3000, 3530, 0);
  private static final StateMatrix LONGITUDINAL = LongitudinalForces.of(FLIGHT, BODY.mass(),
      LongitudinalDerivatives.ofLiftAndDrag(0.41, 0.05, 0.05, 4.44, 0.33, -0.683, 0, -9.96, 0, -4.36))
      .stateMatrix(FLIGHT, BODY);
  private static final StateMatrix LATERAL = LateralForces.of(FLIGHT,
      new LateralDerivatives(-0.564, -0.074, 0.071, 0, -0.41, -0.0575, 0, 0.107, -0.125))
      .stateMatrix(FLIGHT, BODY);

  @ParameterizedTest
  @MethodSource("roots")
  void roots_are_those_of_the_text(PublishedValues.Row row) {
    ModeKind kind = ModeKind.valueOf(row.text("mode"));
    boolean along = kind == ModeKind.PHUGOID || kind == ModeKind.SHORT_PERIOD;
    Mode mode = (along ? LONGITUDINAL : LATERAL).modes().find(kind).orElseThrow();
    double tolerance = row.number("tolerance_percent");
    assertThat(mode.real()).as(row.toString()).isCloseTo(row.number("real"), withinPercentage(tolerance));
    if (row.number("imaginary") > 0) {
      assertThat(mode.imaginary()).as(row.toString())
          .isCloseTo(row.number("imaginary"), withinPercentage(tolerance));
    }
  }

  static Stream<PublishedValues.Row> roots() {
    return PublishedValues.beside(LightAeroplaneTest.class, "light-aeroplane-roots.csv").rows();
  }

  /** The text's dimensional derivatives over mass or inertia, from memory. */
  @Test
  void entries_of_the_matrices_are_those_of_the_text() {
    assertThat(LONGITUDINAL.entry(0, 0)).isCloseTo(-0.045, within(5e-4));
    assertThat(LONGITUDINAL.entry(0, 1)).isCloseTo(0.036, within(5e-4));
    assertThat(LONGITUDINAL.entry(1, 0)).isCloseTo(-0.369, withinPercentage(1));
    assertThat(LONGITUDINAL.entry(1, 1)).isCloseTo(-2.02, within(0.005));
    assertThat(LATERAL.entry(1, 1)).isCloseTo(-8.4, within(0.005));
    assertThat(LATERAL.entry(1, 2)).isCloseTo(2.19, within(0.005));
    assertThat(LATERAL.entry(2, 2)).isCloseTo(-0.76, within(0.005));
    assertThat(LATERAL.entry(1, 0) * 176).isCloseTo(-16.02, withinPercentage(0.5));
    assertThat(LATERAL.entry(2, 0) * 176).isCloseTo(4.49, withinPercentage(1.5));
  }

  /** Textbook approximations recomputed independently of this project: 3.604 and 0.695; 0.260; −0.507 ± 2.118i. */
  @Test
  void approximations_are_those_of_the_text() {
    Mode shortPeriod = ModeApproximations.shortPeriod(LONGITUDINAL);
    assertThat(shortPeriod.naturalFrequency().radiansPerSecond()).isCloseTo(3.604, within(0.002));
    assertThat(shortPeriod.dampingRatio()).isCloseTo(0.695, withinPercentage(0.2));
    assertThat(ModeApproximations.phugoid(LONGITUDINAL, GRAVITY).naturalFrequency().radiansPerSecond())
        .isCloseTo(0.260, withinPercentage(1));
    Mode dutchRoll = ModeApproximations.dutchRoll(LATERAL);
    assertThat(dutchRoll.real()).isCloseTo(-0.507, within(5e-4));
    assertThat(dutchRoll.imaginary()).isCloseTo(2.118, withinPercentage(0.2));
    assertThat(ModeApproximations.roll(LATERAL).real()).isCloseTo(-8.40, within(0.005));
  }
}
