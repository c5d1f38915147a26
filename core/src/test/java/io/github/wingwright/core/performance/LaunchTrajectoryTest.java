// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import static io.github.wingwright.core.performance.Flights.G;
import static io.github.wingwright.core.performance.Flights.thrown;
import static io.github.wingwright.core.performance.Flights.trimmed;
import static io.github.wingwright.core.quantity.Length.metres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.testing.PublishedValues;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LaunchTrajectoryTest {
  private static final LaunchTrajectory STONE =
      LaunchTrajectory.of(new Flights.FixedRatio(0), Area.squareMetres(0.01), Flights.MASS, Flights.AIR, 0.0);

  @ParameterizedTest
  @CsvSource({"5, 30, 1.5", "12, -20, 2", "3, 89, 0.5", "7, 0, 10"})
  void without_lift_and_drag_it_flies_the_parabola(double speed, double degrees, double height) {
    Flight flight = STONE.thrown(thrown(speed, degrees, height));
    double vx = speed * Math.cos(Math.toRadians(degrees));
    double vz = speed * Math.sin(Math.toRadians(degrees));
    double time = (vz + Math.sqrt(vz * vz + 2.0 * G * height)) / G;
    assertThat(flight.time().si()).isCloseTo(time, within(1e-12 * time));
    assertThat(flight.distance().si()).isCloseTo(vx * time, within(1e-12 + 1e-12 * vx * time));
    assertThat(flight.landingSpeed().si()).isCloseTo(Math.sqrt(speed * speed + 2.0 * G * height), within(1e-11));
    double top = height + (vz > 0.0 ? vz * vz / (2.0 * G) : 0.0);
    assertThat(flight.highest().h()).isCloseTo(top, within(1e-11));
    assertThat(flight.energyLost().si()).isCloseTo(0.0, within(1e-13));
    assertThat(flight.end()).isEqualTo(FlightEnd.FLOOR);
  }

  @Test
  void thrown_into_its_steady_glide_it_stays_in_it() {
    LaunchTrajectory model = trimmed(5.0, 0.1);
    double gamma = Math.atan(0.1);
    double speed = 5.0 * Math.sqrt(Math.cos(gamma));
    Flight flight = model.thrown(thrown(speed, -Math.toDegrees(gamma), 20.0));
    assertThat(flight.distance().si()).isCloseTo(200.0, within(1e-9));
    assertThat(flight.track()).allSatisfy(p -> {
      assertThat(p.v()).isCloseTo(speed, within(1e-12));
      assertThat(p.gamma()).isCloseTo(-gamma, within(1e-12));
    });
    assertThat(flight.swings().turns()).isZero();
    assertThat(flight.settles()).isTrue();
    assertThat(flight.energyLost().si()).isCloseTo(Flights.MASS.si() * G * 20.0, within(1e-12));
  }

  static Stream<PublishedValues.Row> levels() {
    return PublishedValues.beside(LaunchTrajectoryTest.class, "phugoid-levels.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("levels")
  void without_drag_it_flies_lanchesters_curves(PublishedValues.Row row) {
    double trim = row.number("trim_depth_m");
    double depth = row.number("start_depth_m");
    double theta = Math.toRadians(row.number("start_angle_deg"));
    LaunchTrajectory model = trimmed(Math.sqrt(2.0 * G * trim), 0.0);
    double zero = 1000.0;
    double speed = Math.sqrt(2.0 * G * depth);
    double[] start = {0.0, zero - depth, speed * Math.cos(theta), speed * Math.sin(theta)};
    FlightRun run = new FlightRun(model.equations(), true);
    // An integral of the motion along the whole curve, and its turning levels.
    run.fly(start, Hall.OUTDOORS, 1);
    double constant = row.number("constant");
    double lowest = 0.0;
    double highest = zero;
    for (TrackPoint p : run.track().subList(0, Math.min(6_000, run.track().size()))) {
      double z = zero - p.h();
      assertThat(p.v() * p.v()).isCloseTo(2.0 * G * z, withinPercentage(0.001));
      if (z > 1.0) {
        assertThat(Math.cos(p.gamma())).isCloseTo(z / (3.0 * trim) + constant * Math.sqrt(trim / z), within(2e-4));
      }
      lowest = Math.max(lowest, z);
      highest = Math.min(highest, z);
    }
    double tolerance = row.number("tolerance_percent") / 100.0 * row.number("second_level_m");
    double first = row.number("first_level_m");
    double second = row.number("second_level_m");
    assertThat(lowest).isCloseTo(Math.max(first, second), within(tolerance));
    assertThat(highest).isCloseTo(Math.min(first, second), within(tolerance));
  }

  /** π·√2·V/g, Lanchester's period for small swings; the correction for a swing of two per cent is of its square. */
  @Test
  void small_swings_without_drag_have_lanchesters_period_and_no_damping() {
    FlightRun run = new FlightRun(trimmed(6.0, 0.0).equations(), false);
    run.fly(new double[] {0.0, 500.0, 6.12, 0.0}, Hall.OUTDOORS, 0);
    Swings swings = run.swings();
    assertThat(swings.phugoids()).isGreaterThan(100.0);
    assertThat(swings.period().orElseThrow().seconds()).isCloseTo(Math.PI * Math.sqrt(2.0) * 6.0 / G, withinPercentage(0.05));
    assertThat(swings.dampingRatio().orElseThrow()).isCloseTo(0.0, within(1e-6));
  }

  /**
   * Linearised: the trace is −3·g·(D/L)/V and ω² = 2·g²/V², so ζ = 3/(2·√2·L/D). Lanchester's 1/(√2·L/D) is that of level
   * flight; the descent of the glide itself adds a half.
   */
  @Test
  void with_drag_small_swings_die_out_as_the_linearised_glide_does() {
    LaunchTrajectory model = trimmed(6.0, 1.0 / 15.0);
    Flight flight = model.thrown(thrown(6.6, 0.0, 8.0));
    assertThat(flight.swings().dampingRatio().orElseThrow()).isCloseTo(1.5 / (Math.sqrt(2.0) * 15.0), withinPercentage(1.0));
  }

  @Test
  void without_drag_no_energy_is_lost() {
    Flight flight = trimmed(5.0, 0.0).thrown(thrown(9.0, 25.0, 2.0));
    assertThat(flight.energyLost().si()).isCloseTo(0.0, within(1e-7 * flight.energyAtThrow().si()));
  }

  @Test
  void the_error_goes_with_the_fourth_power_of_the_step_or_better() {
    LaunchTrajectory model = trimmed(4.9, 0.2);
    double[] far = new double[4];
    for (int i = 0; i < 4; i++) {
      FlightRun run = new FlightRun(model.equations(), false);
      run.fly(model.start(9.0, 0.3, 2.0), Hall.OUTDOORS, i == 3 ? 7 : i);
      far[i] = run.distance();
    }
    double order = Math.log(Math.abs(far[1] - far[3]) / Math.abs(far[2] - far[3])) / Math.log(2.0);
    assertThat(order).isBetween(3.6, 5.0);
    assertThat(far[0]).as("with the step of the library").isCloseTo(far[3], within(1e-5));
  }

  /** Another set of states, V and γ, by another method: Dormand and Prince of eighth order. */
  @ParameterizedTest
  @CsvSource({"6.5, -5.729578, 2", "8, 20, 1.5", "4, -40, 3"})
  void the_paper_plane_agrees_with_another_integrator_in_other_states(double speed, double degrees, double height) {
    double trim = 4.9;
    double[] end = new double[4];
    DormandPrince853Integrator other = new DormandPrince853Integrator(1e-8, 0.05, 1e-12, 1e-12);
    other.addEventHandler(new EventHandler() {
      @Override
      public void init(double t0, double[] y0, double t) {}

      @Override
      public double g(double t, double[] y) {
        return y[3];
      }

      @Override
      public Action eventOccurred(double t, double[] y, boolean increasing) {
        return Action.STOP;
      }

      @Override
      public void resetState(double t, double[] y) {}
    }, 0.01, 1e-12, 100);
    double time = other.integrate(new FirstOrderDifferentialEquations() {
      @Override
      public int getDimension() {
        return 4;
      }

      @Override
      public void computeDerivatives(double t, double[] y, double[] r) {
        r[0] = -G * Math.sin(y[1]) - 0.2 * G * y[0] * y[0] / (trim * trim);
        r[1] = -G * Math.cos(y[1]) / y[0] + G * y[0] / (trim * trim);
        r[2] = y[0] * Math.cos(y[1]);
        r[3] = y[0] * Math.sin(y[1]);
      }
    }, 0.0, new double[] {speed, Math.toRadians(degrees), 0.0, height}, 100.0, end);
    Flight flight = trimmed(trim, 0.2).thrown(thrown(speed, degrees, height));
    assertThat(flight.time().si()).isCloseTo(time, within(1e-6));
    assertThat(flight.distance().si()).isCloseTo(end[2], within(1e-5));
    assertThat(flight.landingSpeed().si()).isCloseTo(end[0], within(1e-5));
  }

  static Stream<PublishedValues.Row> paperPlanes() {
    return PublishedValues.beside(LaunchTrajectoryTest.class, "paper-plane.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("paperPlanes")
  void the_paper_plane_of_the_book_glides_as_printed_when_it_is_thrown_so(PublishedValues.Row row) {
    double k = 1.0 / (Math.PI * row.number("efficiency") * row.number("aspect_ratio"));
    double cd0 = row.number("zero_lift_drag");
    // The book's gravity is 9.8 m/s²; the weight is made the same by the mass.
    double mass = row.number("mass_kg") * row.number("gravity_m_s2") / G;
    LaunchTrajectory model =
        LaunchTrajectory.of(
            new Flights.Parabola(cd0, k),
            Area.squareMetres(row.number("area_m2")),
            Mass.kilograms(mass),
            Flights.AIR,
            Math.sqrt(cd0 / k));
    assertThat(Flights.AIR.density().si()).isCloseTo(row.number("density_kg_m3"), withinPercentage(0.01));
    assertThat(model.equations().glideSpeed())
        .isCloseTo(row.number("speed_m_s"), withinPercentage(row.number("tolerance_percent")));
    assertThat(model.equations().glideAngle()).isCloseTo(-row.number("path_rad"), within(0.01));
    double gamma = model.equations().glideAngle();
    Flight flight =
        model.thrown(thrown(model.equations().glideSpeed(), -Math.toDegrees(gamma), row.number("height_m")));
    assertThat(flight.distance().si()).isCloseTo(row.number("height_m") / Math.tan(gamma), within(1e-9));
    // Thrown as printed it is a little off and swings about that.
    Flight printed =
        model.thrown(
            thrown(row.number("speed_m_s"), Math.toDegrees(row.number("path_rad")), row.number("height_m")));
    assertThat(printed.distance().si()).isCloseTo(flight.distance().si(), withinPercentage(4.0));
  }

  static Stream<PublishedValues.Row> bestAngles() {
    return PublishedValues.beside(LaunchTrajectoryTest.class, "best-angles.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("bestAngles")
  void the_best_angle_of_a_fast_throw_points_down(PublishedValues.Row row) {
    ThrowAngles angles =
        trimmed(4.9, 0.2).bestAngles(GlideGoal.DISTANCE, Speed.metresPerSecond(row.number("throw_m_s")), metres(2));
    assertThat(angles.best().angle().degrees()).isCloseTo(row.number("angle_deg"), within(row.number("tolerance_deg")));
  }

  /** Thrown so, a flight that just clears the floor wins another swing: a second best angle beside a jump. */
  @Test
  void several_angles_are_best_and_none_of_a_fine_scan_is_better() {
    double speed = 10.75;
    LaunchTrajectory model = trimmed(4.9, 0.125);
    ThrowAngles angles = model.bestAngles(GlideGoal.DISTANCE, Speed.metresPerSecond(speed), metres(1));
    assertThat(angles.optima()).hasSize(2);
    assertThat(angles.best().isDelicate()).isTrue();
    assertThat(angles.optima().get(1).isDelicate()).isFalse();
    double most = 0.0;
    for (int i = 0; i <= 13_500; i++) {
      most = Math.max(most, model.value(GlideGoal.DISTANCE, speed, Math.toRadians(-60 + 0.01 * i), 1.0));
    }
    assertThat(angles.best().value()).isGreaterThan(most - 0.01);
    assertThat(angles.careful().nearby()).isGreaterThanOrEqualTo(angles.best().nearby());
    assertThat(angles.careful().value()).isLessThanOrEqualTo(angles.best().value());
    double second = angles.optima().get(1).angle().si();
    for (double off : new double[] {-0.005, 0.005}) {
      assertThat(angles.optima().get(1).value()).isGreaterThan(model.value(GlideGoal.DISTANCE, speed, second + off, 1.0));
    }
  }

  @Test
  void the_longest_flight_is_not_the_farthest() {
    LaunchTrajectory model = trimmed(4.9, 0.2);
    ThrowAngles time = model.bestAngles(GlideGoal.DURATION, Speed.metresPerSecond(7), metres(2));
    ThrowAngles distance = model.bestAngles(GlideGoal.DISTANCE, Speed.metresPerSecond(7), metres(2));
    assertThat(time.best().angle().degrees()).isGreaterThan(distance.best().angle().degrees());
  }

  @Test
  void it_ends_at_the_ceiling_to_the_last_digit_and_says_so() {
    Flight flight = trimmed(4.9, 0.1).in(Hall.of(metres(30), metres(4))).thrown(thrown(12, 10, 1.5));
    assertThat(flight.end()).isEqualTo(FlightEnd.CEILING);
    assertThat(flight.track().get(flight.track().size() - 1).h()).isCloseTo(4.0, within(1e-12));
    assertThat(flight.findings().get(0).message()).contains("hits the ceiling").contains("Launch it slower or lower");
  }

  @Test
  void it_ends_at_the_walls() {
    Hall hall = Hall.of(metres(8), metres(6));
    Flight ahead = trimmed(5, 0.1).in(hall).thrown(thrown(6, 0, 1.8));
    assertThat(ahead.end()).isEqualTo(FlightEnd.WALL_AHEAD);
    assertThat(ahead.distance().si()).isCloseTo(8.0, within(1e-12));
    Flight loop = trimmed(3, 0.02).in(hall.withCeiling(metres(60))).thrown(thrown(20, 60, 1.5));
    assertThat(loop.end()).isEqualTo(FlightEnd.WALL_BEHIND);
    assertThat(loop.distance().si()).isCloseTo(0.0, within(1e-12));
    assertThat(loop.findings().get(0).severity()).isEqualTo(Severity.SERIOUS);
    Hall from = hall.thrownFrom(metres(2));
    assertThat(from.wallAhead()).contains(metres(6));
    assertThat(from.wallBehind()).contains(metres(-2));
  }

  /** Galilei: the same motion seen from the ground. */
  @Test
  void a_steady_wind_carries_the_whole_flight_along() {
    double wind = 1.25;
    LaunchTrajectory model = trimmed(5, 0.12);
    double[] still = {0.0, 2.0, 6.0, 1.0};
    FlightRun calm = new FlightRun(model.equations(), false);
    calm.fly(still, Hall.OUTDOORS, 0);
    FlightRun carried = new FlightRun(model.inWind(Speed.metresPerSecond(wind)).equations(), false);
    carried.fly(still, Hall.OUTDOORS, 0);
    assertThat(carried.time).isCloseTo(calm.time, within(1e-12));
    assertThat(carried.distance()).isCloseTo(calm.distance() + wind * calm.time, within(1e-11));
    // The hand stands on the ground: into the wind it throws faster through the air.
    assertThat(model.inWind(Speed.metresPerSecond(-2)).start(6, 0, 2)[2]).isEqualTo(8.0);
  }

  @Test
  void trimmed_beyond_its_usable_lift_it_counts_as_stalled() {
    LaunchTrajectory model =
        LaunchTrajectory.of(new Flights.Parabola(0.05, 0.07), Area.squareMetres(0.02), Flights.MASS, Flights.AIR, 1.2);
    Flight flight = model.thrown(thrown(5, 0, 1.5));
    assertThat(flight.firstStall()).isPresent();
    assertThat(flight.findings()).extracting(Finding::message).anyMatch(m -> m.contains("stalled nearly all the way"));
    assertThat(model.atLift(0.8).thrown(thrown(5, 0, 1.5)).firstStall()).isEmpty();
  }

  @Test
  void a_flight_that_lands_in_the_middle_of_a_swing_says_so() {
    List<Finding> findings = trimmed(5, 0.1).thrown(thrown(6, 10, 1.5)).findings();
    assertThat(findings).extracting(Finding::subject).containsExactly("settling");
    assertThat(findings.get(0).message()).contains("would not settle before landing");
  }

  @Test
  void what_cannot_be_thrown_is_refused() {
    LaunchTrajectory model = trimmed(5, 0.1);
    assertThatThrownBy(() -> thrown(0, 0, 1)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("throw speed must be positive");
    assertThatThrownBy(() -> thrown(5, 91, 1)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("throw angle");
    assertThatThrownBy(() -> thrown(5, 0, -1)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("height of the hand");
    assertThatThrownBy(() -> model.atLift(-0.1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> model.atLift(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> model.in(Hall.of(metres(9), metres(2))).thrown(thrown(5, 0, 2)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("height of the hand must be below the ceiling at 2 m, was 2 m");
    assertThatThrownBy(
            () -> model.in(Hall.of(metres(9), metres(2))).bestAngles(GlideGoal.DISTANCE, Speed.metresPerSecond(5), metres(3)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("height of the hand must be below the ceiling at 2 m, was 3 m");
    assertThatThrownBy(() -> Hall.OUTDOORS.thrownFrom(metres(1))).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> Hall.of(metres(5), metres(3)).thrownFrom(metres(5))).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Hall.of(Length.ZERO, metres(3))).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_flight_can_be_written_and_read_again() throws Exception {
    Flight flight = trimmed(5, 0.1).in(Hall.of(metres(27), metres(7))).thrown(thrown(9, 10, 1.5));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(flight);
      out.writeObject(Hall.of(metres(27), metres(7)));
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).hasToString(flight.toString());
      assertThat(in.readObject()).isEqualTo(Hall.of(metres(27), metres(7)));
    }
  }

  @Test
  void texts_are_short() {
    Flight flight = trimmed(5, 0.1).thrown(thrown(6, 10, 1.5));
    assertThat(List.of(flight, flight.swings(), flight.highest(), thrown(6, 10, 1.5), Hall.of(metres(27), metres(7)),
            Hall.OUTDOORS, trimmed(5, 0.1)))
        .allMatch(o -> o.toString().length() <= 75 && !o.toString().contains("\n"));
    assertThat(Angle.radians(flight.landingAngle().si()).degrees()).isPositive();
  }
}
