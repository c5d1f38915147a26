// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.Seeded;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which motion is which, on a light glider whose derivatives are changed one at a time; and the roots themselves. */
class ModesTest {
  private static final SteadyFlight GLIDE = new SteadyFlight(6, 1.2, -0.1, 0.0213, 0.0545, 0.4, 9.81);
  private static final BodyInertia BODY = new BodyInertia(0.025, 1.2e-4, 1.0e-4, 2.1e-4, 0);

  private static StateMatrix longitudinal(double momentSlope) {
    return LongitudinalForces.of(GLIDE, BODY.mass(), LongitudinalDerivatives.ofLiftAndDrag(0.53, 0.06, 0, 4.3,
        0.2, momentSlope, 4, -9, 1.5, -3.5)).stateMatrix(GLIDE, BODY);
  }

  private static StateMatrix lateral(double dihedralEffect, double weathercock, double yawDamping, double rollDamping) {
    return LateralForces.of(GLIDE, new LateralDerivatives(-0.4, dihedralEffect, weathercock, 0, rollDamping, -0.03,
        0.1, 0.13, yawDamping)).stateMatrix(GLIDE, BODY);
  }

  @Test
  void a_stable_glider_nods_quickly_and_has_a_slow_phugoid() {
    Modes modes = longitudinal(-0.6).modes();
    Mode nod = modes.find(ModeKind.SHORT_PERIOD).orElseThrow();
    Mode phugoid = modes.find(ModeKind.PHUGOID).orElseThrow();
    assertThat(nod.naturalFrequency().radiansPerSecond())
        .isGreaterThan(4 * phugoid.naturalFrequency().radiansPerSecond());
    assertThat(phugoid.period().orElseThrow().seconds())
        .isBetween(0.8 * ModeApproximations.lanchesterPeriod(6, 9.81),
            1.4 * ModeApproximations.lanchesterPeriod(6, 9.81));
    assertThat(modes.areStable()).isTrue();
  }

  @Test
  void with_no_margin_left_the_short_period_comes_apart() {
    Modes modes = longitudinal(-0.01).modes();
    assertThat(modes.all()).anyMatch(m -> m.kind() == ModeKind.SHORT_PERIOD_SUBSIDENCE);
    assertThat(modes.find(ModeKind.SHORT_PERIOD)).isEmpty();
  }

  @Test
  void behind_the_neutral_point_the_nose_runs_away() {
    Modes modes = longitudinal(0.6).modes();
    assertThat(modes.find(ModeKind.PITCH_DIVERGENCE).orElseThrow().isStable()).isFalse();
    assertThat(modes.find(ModeKind.SHORT_PERIOD_SUBSIDENCE)).isPresent();
    assertThat(modes.find(ModeKind.THIRD_OSCILLATION)).isPresent();
    assertThat(modes.areStable()).isFalse();
  }

  @Test
  void a_small_loss_of_margin_already_makes_the_nose_run_away_slowly() {
    Mode slow = longitudinal(0.05).modes().find(ModeKind.PITCH_DIVERGENCE).orElseThrow();
    Mode quick = longitudinal(0.6).modes().find(ModeKind.PITCH_DIVERGENCE).orElseThrow();
    assertThat(slow.real()).isPositive().isLessThan(quick.real());
  }

  @Test
  void exactly_at_the_neutral_point_one_motion_is_neutral() {
    assertThat(longitudinal(0).modes().all()).anyMatch(m -> m.real() == 0 && !m.isOscillatory());
  }

  @Test
  void a_tailless_glider_with_little_pitch_damping_has_a_phugoid_that_grows() {
    Modes modes = LongitudinalForces.of(GLIDE, BODY.mass(), LongitudinalDerivatives.ofLiftAndDrag(0.53, 0.06, 0,
        4.3, 0.2, -0.1, 1, -0.5, 0, 0)).stateMatrix(GLIDE, BODY).modes();
    assertThat(modes.find(ModeKind.PHUGOID).orElseThrow().isStable()).isFalse();
    assertThat(FlyingQualities.freeFlightModel().check(modes)).anyMatch(f -> f.message().contains("tailplane"));
  }

  @Test
  void a_glider_with_fin_and_dihedral_has_roll_spiral_and_dutch_roll() {
    Modes modes = lateral(-0.1, 0.08, -0.1, -0.45).modes();
    assertThat(modes.find(ModeKind.ROLL).orElseThrow().isStable()).isTrue();
    assertThat(modes.find(ModeKind.DUTCH_ROLL).orElseThrow().isOscillatory()).isTrue();
    assertThat(modes.find(ModeKind.SPIRAL)).isPresent();
  }

  @Test
  void more_dihedral_makes_the_spiral_stable_and_more_fin_unstable() {
    assertThat(lateral(-0.15, 0.05, -0.1, -0.45).modes().find(ModeKind.SPIRAL).orElseThrow().real()).isNegative();
    assertThat(lateral(-0.02, 0.15, -0.1, -0.45).modes().find(ModeKind.SPIRAL).orElseThrow().real()).isPositive();
  }

  @Test
  void without_a_fin_the_nose_runs_away_sideways() {
    Modes modes = lateral(-0.02, -0.1, -0.01, -0.45).modes();
    assertThat(modes.find(ModeKind.YAW_DIVERGENCE).orElseThrow().isStable()).isFalse();
  }

  @Test
  void much_dihedral_and_little_damping_join_roll_and_spiral() {
    Modes modes = lateral(-0.1, 0.1, -0.2, 0).modes();
    assertThat(modes.find(ModeKind.ROLL_SPIRAL_OSCILLATION)).isPresent();
    assertThat(modes.find(ModeKind.DUTCH_ROLL)).isPresent();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.3, 0.9})
  void a_pair_gives_its_frequency_damping_and_times(double damping) {
    double frequency = 3;
    Mode mode = new Mode(ModeKind.SHORT_PERIOD, -damping * frequency, frequency * Math.sqrt(1 - damping * damping));
    assertThat(mode.dampingRatio()).isCloseTo(damping, within(1e-14));
    assertThat(mode.naturalFrequency().radiansPerSecond()).isCloseTo(frequency, within(1e-14));
    assertThat(mode.timeToHalf().orElseThrow().seconds())
        .isCloseTo(Math.log(2) / (damping * frequency), within(1e-14));
    assertThat(mode.timeToDouble()).isEmpty();
  }

  @Test
  void a_growing_root_doubles_and_a_neutral_one_does_neither() {
    assertThat(new Mode(ModeKind.SPIRAL, 0.1, 0).timeToDouble().orElseThrow().seconds())
        .isCloseTo(10 * Math.log(2), within(1e-12));
    assertThat(new Mode(ModeKind.SPIRAL, 0, 0).timeToHalf()).isEmpty();
    assertThat(new Mode(ModeKind.SPIRAL, 0, 0).timeToDouble()).isEmpty();
    assertThat(new Mode(ModeKind.SPIRAL, 0, 0).toString()).isEqualTo("spiral: neutral");
    assertThat(new Mode(ModeKind.PHUGOID, -0.003289, 0.06723).toString())
        .isEqualTo("phugoid: period 93.46 s, damping 0.049, halves in 210.7 s");
  }

  @Test
  void eigenvalues_agree_with_a_general_library_on_many_matrices() {
    Seeded.points(20260701, 300, repeat(16, -3, 3)).forEach(values -> {
      double[][] a = new double[4][4];
      for (int i = 0; i < 16; i++) {
        a[i / 4][i % 4] = values[i];
      }
      SmallEigenproblem own = new SmallEigenproblem(a);
      Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(a);
      EigenDecomposition other = new EigenDecomposition(matrix);
      double product = 1;
      double sum = 0;
      for (int i = 0; i < 4; i++) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int j = 0; j < 4; j++) {
          nearest = Math.min(nearest, Math.hypot(own.real[i] - other.getRealEigenvalue(j),
              own.imaginary[i] - other.getImagEigenvalue(j)));
        }
        assertThat(nearest).isLessThan(1e-6);
        sum += own.real[i];
        product *= own.imaginary[i] == 0 ? own.real[i]
            : own.imaginary[i] > 0 ? own.real[i] * own.real[i] + own.imaginary[i] * own.imaginary[i] : 1;
      }
      assertThat(sum).isCloseTo(a[0][0] + a[1][1] + a[2][2] + a[3][3], within(1e-9));
      assertThat(product).isCloseTo(new LUDecomposition(matrix).getDeterminant(), within(1e-7));
    });
  }

  private static double[][] repeat(int count, double lower, double upper) {
    double[][] ranges = new double[count][];
    for (int i = 0; i < count; i++) {
      ranges[i] = new double[] {lower, upper};
    }
    return ranges;
  }

  @Test
  void eigenvectors_satisfy_their_equation() {
    double[][] a = {{-0.05, 0.04, 0, -9.8}, {-0.4, -4, 12, 0}, {0.01, -2, -5, 0}, {0, 0, 1, 0}};
    SmallEigenproblem e = new SmallEigenproblem(a);
    for (int k = 0; k < 4; k++) {
      for (int i = 0; i < 4; i++) {
        double re = -e.real[k] * e.vectorReal[k][i] + e.imaginary[k] * e.vectorImaginary[k][i];
        double im = -e.real[k] * e.vectorImaginary[k][i] - e.imaginary[k] * e.vectorReal[k][i];
        for (int j = 0; j < 4; j++) {
          re += a[i][j] * e.vectorReal[k][j];
          im += a[i][j] * e.vectorImaginary[k][j];
        }
        assertThat(Math.hypot(re, im)).isLessThan(1e-10);
      }
    }
  }

  @Test
  void repeated_and_zero_roots_are_found() {
    double[][] jordan = {{-1, 1, 0, 0}, {0, -1, 0, 0}, {0, 0, -1, 0}, {0, 0, 1, -1}};
    assertThat(new SmallEigenproblem(jordan).real).containsExactly(new double[] {-1, -1, -1, -1}, within(1e-3));
    assertThat(new SmallEigenproblem(new double[4][4]).real).containsExactly(0, 0, 0, 0);
  }

  @Test
  void bad_matrices_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> StateMatrix.lateral(new double[3][4], 5))
        .withMessage("state matrix must have 4 rows, had 3");
    double[][] nan = new double[4][4];
    nan[1][2] = Double.NaN;
    assertThatIllegalArgumentException().isThrownBy(() -> StateMatrix.lateral(nan, 5))
        .withMessage("state matrix must be finite, row 2 had NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ModeApproximations.phugoid(lateral(-0.1, 0.1, -0.1, -0.4), 9.81))
        .withMessageContaining("must be longitudinal");
  }
}
