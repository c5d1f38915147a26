// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import static io.github.wingwright.stability.flight.PitchFlightTest.DESIGN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.numerics.RungeKutta;
import io.github.wingwright.stability.PitchParts;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.derivatives.TailPitchRate;
import io.github.wingwright.stability.dynamics.BodyInertia;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import io.github.wingwright.stability.dynamics.LongitudinalForces;
import io.github.wingwright.stability.dynamics.Mode;
import io.github.wingwright.stability.dynamics.ModeKind;
import io.github.wingwright.stability.dynamics.Modes;
import io.github.wingwright.stability.dynamics.SteadyFlight;
import io.github.wingwright.stability.dynamics.WingApparentMass;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

class PitchDynamicsTest {
  private static final PitchFlight MODEL = PitchFlight.of(DESIGN);
  private static final PitchDynamics EQUATIONS = (PitchDynamics) MODEL.equations();
  private static final PitchDynamics.Body BODY = EQUATIONS.body();
  private static final PitchTrim TRIM = EQUATIONS.trim();

  private static double[] glide() {
    double alpha = Math.asin(TRIM.sine());
    return new double[] {
      0, 0, TRIM.speed() * Math.cos(alpha), TRIM.speed() * TRIM.sine(), 0, alpha - TRIM.descent()
    };
  }

  /** Derivatives of the rates by central differences, for u, w, q, θ. */
  private static double[][] jacobian() {
    double[][] a = new double[4][4];
    double[] steps = {1e-3, 1e-3, 1e-3, 1e-4};
    for (int j = 0; j < 4; j++) {
      double[] up = glide();
      double[] down = glide();
      up[2 + j] += steps[j];
      down[2 + j] -= steps[j];
      double[] above = new double[6];
      double[] below = new double[6];
      EQUATIONS.rates(up, above);
      EQUATIONS.rates(down, below);
      for (int i = 0; i < 4; i++) {
        a[i][j] = (above[2 + i] - below[2 + i]) / (2.0 * steps[j]);
      }
    }
    return a;
  }

  /** The modes of the same design by the other package, from slopes of the pitch model and the polar, not of the table. */
  private static Modes modes() {
    PitchParts parts = PitchParts.of(DESIGN.pitchModel(), DESIGN.aircraft().centreOfGravity().x());
    TrimmedPolar polar =
        TrimmedPolar.of(
            DESIGN.pitchModel(), DESIGN.aircraft().centreOfGravity().x(), DESIGN.glide().drag(),
            DESIGN.aircraft().mass(), DESIGN.brief().air());
    double nu = DESIGN.brief().air().kinematicViscosity().si();
    double cl = DESIGN.trim().liftCoefficient();
    double t = DESIGN.trim().tailLift();
    double v = TRIM.speed();
    double d = 1e-4;
    double wing = parts.wingSlope();
    double tail = parts.tailOnWing();
    double slope =
        (polar.dragCoefficient(cl - t + wing * d, t + tail * d, v, nu)
                - polar.dragCoefficient(cl - t - wing * d, t - tail * d, v, nu))
            / (2.0 * d);
    // The library's law between two speeds, C_D = A + B/√V, has −½·B/√V for its slope over ln V.
    double slow = speedOfTable();
    double friction =
        (polar.dragCoefficient(cl - t, t, slow, nu) - polar.dragCoefficient(cl - t, t, 2 * slow, nu))
            / (1.0 / Math.sqrt(slow) - 1.0 / Math.sqrt(2 * slow));
    double cd = polar.dragCoefficient(cl - t, t, slow, nu) + friction * (1.0 / Math.sqrt(v) - 1.0 / Math.sqrt(slow));
    double volume = parts.tailShare() * parts.tailArm();
    LongitudinalDerivatives still =
        LongitudinalDerivatives.ofLiftAndDrag(
            cl, cd, 0, parts.liftSlope(), slope, parts.momentSlope(),
            TailPitchRate.liftDueToPitchRate(1, volume, parts.tailSlope()),
            1.1 * TailPitchRate.pitchDamping(1, volume, parts.tailSlope(), parts.tailArm()),
            TailPitchRate.liftDueToAngleRate(1, volume, parts.tailSlope(), parts.downwash()),
            TailPitchRate.downwashLag(1, volume, parts.tailSlope(), parts.tailArm(), parts.downwash()));
    LongitudinalDerivatives moving =
        new LongitudinalDerivatives(
            0.5 * friction / Math.sqrt(v), still.zSpeed(), still.mSpeed(), still.xAngle(), still.zAngle(), still.mAngle(),
            still.zPitchRate(), still.mPitchRate(), still.zAngleRate(), still.mAngleRate());
    SteadyFlight flight =
        new SteadyFlight(v, BODY.density(), -TRIM.descent(), BODY.area(), BODY.chord(), 0.41, BODY.gravity());
    double mass = DESIGN.aircraft().mass().si();
    WingApparentMass air =
        WingApparentMass.of(
            DESIGN.brief().air().density(), DESIGN.aircraft().airframe().wing(), DESIGN.aircraft().centreOfGravity().x());
    BodyInertia inertia = new BodyInertia(mass, 1, DESIGN.aircraft().inertia().pitch().si(), 1, 0);
    return LongitudinalForces.of(flight, mass, moving).with(air).stateMatrix(flight, air.addedTo(inertia)).modes();
  }

  private static double speedOfTable() {
    double pressure = BODY.mass().si() * BODY.gravity() / BODY.area();
    return Math.sqrt(2.0 * pressure / (BODY.density() * DESIGN.trim().liftCoefficient()));
  }

  @Test
  void linearised_about_the_glide_it_has_the_roots_of_the_modes_of_motion() {
    EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(jacobian()));
    double[][] own = new double[4][];
    for (int i = 0; i < 4; i++) {
      own[i] = new double[] {eigen.getRealEigenvalue(i), Math.abs(eigen.getImagEigenvalue(i))};
    }
    Arrays.sort(own, Comparator.comparingDouble(r -> Math.hypot(r[0], r[1])));
    double[][] other =
        modes().all().stream()
            .flatMap(m -> m.isOscillatory() ? List.of(m, m).stream() : List.of(m).stream())
            .map(m -> new double[] {m.real(), m.imaginary()})
            .sorted(Comparator.comparingDouble(r -> Math.hypot(r[0], r[1])))
            .toArray(double[][]::new);
    assertThat(other).hasNumberOfRows(4);
    for (int i = 0; i < 4; i++) {
      double size = Math.hypot(other[i][0], other[i][1]);
      assertThat(own[i][0]).as("real part %s", i).isCloseTo(other[i][0], within(1e-4 * size));
      assertThat(own[i][1]).as("imaginary part %s", i).isCloseTo(other[i][1], within(1e-4 * size));
    }
  }

  @Test
  void small_swings_of_the_flight_have_the_period_and_damping_of_the_phugoid() {
    Mode phugoid = modes().find(ModeKind.PHUGOID).orElseThrow();
    var swings =
        MODEL.thrown(PitchFlightTest.thrown(1.06 * TRIM.speed(), -Math.toDegrees(TRIM.descent()), 12)).swings();
    assertThat(swings.period().orElseThrow().si()).isCloseTo(phugoid.period().orElseThrow().si(), withinPercentage(3));
    assertThat(swings.dampingRatio().orElseThrow()).isCloseTo(phugoid.dampingRatio(), withinPercentage(15));
  }

  private static double[] carried(PitchDynamics equations, double[] start, double time, int steps) {
    double[] state = start.clone();
    double[] rates = new double[6];
    double[] next = new double[6];
    RungeKutta.Work work = new RungeKutta.Work(6);
    for (int i = 0; i < steps; i++) {
      equations.rates(state, rates);
      RungeKutta.step(equations::rates, state, rates, time / steps, next, work);
      System.arraycopy(next, 0, state, 0, 6);
    }
    return state;
  }

  private static double[] disturbed() {
    double[] start = glide();
    start[1] = 20.0;
    start[2] *= 1.2;
    start[3] += 0.1;
    start[4] = 0.5;
    return start;
  }

  @Test
  void another_integrator_of_eighth_order_carries_it_to_the_same_place() {
    double[] other = new double[6];
    new DormandPrince853Integrator(1e-8, 0.02, 1e-11, 1e-11).integrate(new FirstOrderDifferentialEquations() {
      @Override
      public int getDimension() {
        return 6;
      }

      @Override
      public void computeDerivatives(double t, double[] y, double[] rates) {
        EQUATIONS.rates(y, rates);
      }
    }, 0.0, disturbed(), 2.0, other);
    double[] own = carried(EQUATIONS, disturbed(), 2.0, 2000);
    for (int i = 0; i < 6; i++) {
      assertThat(own[i]).isCloseTo(other[i], within(1e-7));
    }
  }

  @Test
  void with_half_the_step_of_the_library_the_place_changes_by_less_than_half_a_millimetre() {
    double step = EQUATIONS.step(Math.sqrt(Math.pow(1.2 * TRIM.speed(), 2) + 2 * 9.81 * 1.5));
    int steps = (int) Math.ceil(2.0 / step);
    double[] coarse = carried(EQUATIONS, disturbed(), 2.0, steps);
    double[] fine = carried(EQUATIONS, disturbed(), 2.0, 8 * steps);
    assertThat(Math.hypot(coarse[0] - fine[0], coarse[1] - fine[1])).isLessThan(5e-4);
  }

  @Test
  void the_error_goes_with_the_fourth_power_of_the_step() {
    double[] far = new double[3];
    int[] steps = {300, 600, 9600};
    for (int i = 0; i < 3; i++) {
      far[i] = carried(EQUATIONS, disturbed(), 1.5, steps[i])[0];
    }
    double order = Math.log(Math.abs(far[0] - far[2]) / Math.abs(far[1] - far[2])) / Math.log(2.0);
    assertThat(order).isBetween(3.5, 4.6);
  }

  /** Without drag and moment, however it turns: ½·m·V² + ½·m_a·w² + m·g·h. */
  @Test
  void without_drag_and_moment_no_energy_is_lost() {
    CoefficientTable table =
        new CoefficientTable((angle, into) -> {
          into[0] = 2.0 * Math.sin(2.0 * angle);
          into[1] = 0.0;
          into[2] = 0.0;
          into[3] = 0.0;
        });
    WingApparentMass air = new WingApparentMass(0.002, 0, 1e-6, 0.0);
    PitchDynamics free =
        new PitchDynamics(
            new PitchDynamics.Body(
                BODY.mass(), BODY.inertia(), air, 1.2, BODY.area(), BODY.chord(), BODY.gravity(), 0, 0, 0, 0, 4, 0, 0.2, -0.2),
            table,
            0.0);
    double[] start = {0, 10, 6, 0.5, 1.5, 0.2};
    double[] end = carried(free, start, 2.0, 2000);
    assertThat(energy(end)).isCloseTo(energy(start), withinPercentage(1e-6));
    assertThat(Math.abs(end[1] - start[1])).as("it went up or down").isGreaterThan(0.1);
  }

  private static double energy(double[] s) {
    double m = BODY.mass().si();
    return 0.5 * m * (s[2] * s[2] + s[3] * s[3]) + 0.5 * 0.002 * s[3] * s[3] + m * BODY.gravity() * s[1];
  }

  @Test
  void the_table_follows_what_it_tabulates() {
    CoefficientTable table =
        new CoefficientTable((angle, into) -> {
          into[0] = angle;
          into[1] = Math.cos(angle);
          into[2] = angle * angle;
          into[3] = 1.0;
        });
    for (double angle = -0.8; angle < 0.8; angle += 0.0137) {
      double sine = Math.sin(angle);
      assertThat(table.ahead(sine, CoefficientTable.LIFT)).isCloseTo(angle, within(1e-6));
      assertThat(table.ahead(sine, CoefficientTable.MOMENT)).isCloseTo(Math.cos(angle), within(1e-6));
      assertThat(table.ahead(sine, CoefficientTable.STEADY_DRAG)).isCloseTo(angle * angle, within(1e-6));
      assertThat(table.ahead(sine, CoefficientTable.FRICTION_DRAG)).isEqualTo(1.0);
    }
    double place = CoefficientTable.place(Math.sin(2.5));
    int cell = CoefficientTable.cell(place);
    assertThat(table.value(CoefficientTable.base(cell, false), CoefficientTable.LIFT, place - cell)).isCloseTo(2.5, within(1e-5));
  }
}
