// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.performance.Flight;
import io.github.wingwright.core.performance.FlightEquations;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.performance.TrackPoint;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.design.Briefs;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.flight.PitchFlight;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every layout thrown with pitch. */
class LayoutFlightTest {
  private static final double LIFT = 0.5;
  private static final Design OTHER = SizingLoop.of(Briefs.balanced()).solve();
  private static final AirState AIR = OTHER.brief().air();
  private static final AircraftDrag DRAG = OTHER.glide().drag();

  private static PitchModel model(Layouts layout) {
    return PitchModel.of(layout.airframe())
        .withWingSection(Models.exact(2 * Math.PI, -0.02, -0.03, 0.9), 3e4)
        .withTailSection(Models.symmetric(), 2e4);
  }

  /** Two masses about the place that gives a margin of 12 %. */
  private static Aircraft aircraft(Layouts layout) {
    NeutralPoint np = model(layout).neutralPoint();
    Length x = np.x().minus(np.meanAerodynamicChord().times(0.12));
    Length arm = millimetres(70);
    return new Aircraft(
        layout.airframe(),
        MassStatement.of(
            MassItem.of("nose", Mass.grams(10), Placement.at(x.minus(arm), Length.ZERO)),
            MassItem.of("rear", Mass.grams(10), Placement.at(x.plus(arm), Length.ZERO))));
  }

  private static PitchFlight flight(Layouts layout) {
    return PitchFlight.of(model(layout), aircraft(layout), DRAG, AIR, LIFT);
  }

  private static Throw glide(PitchFlight model, double faster, double height) {
    double angle = -model.glideAngle().orElseThrow().si();
    return new Throw(model.glideSpeed().orElseThrow().times(faster), Angle.radians(angle), metres(height));
  }

  /** The decalage of trim, set as it is, against the lift at which the flown moment vanishes: two ways to one number. */
  @ParameterizedTest
  @EnumSource(Layouts.class)
  void what_it_is_trimmed_for_is_what_it_flies(Layouts layout) {
    for (double lift : new double[] {0.3, 0.45, 0.6}) {
      Aircraft aircraft = aircraft(layout);
      PitchFlight model = PitchFlight.of(model(layout), aircraft, DRAG, AIR, lift);
      assertThat(model.trimmedLift().orElseThrow()).as("trimmed for %s", lift).isCloseTo(lift, within(1e-9));
      if (layout != Layouts.TAILLESS) {
        Trim trim = model(layout).trim(aircraft.centreOfGravity().x(), lift);
        assertThat(model.decalage().si()).isEqualTo(trim.decalage().si());
      }
      Flight flight = model.thrown(glide(model, 1.0, 20));
      double weight = aircraft.mass().si() * 9.80665 * Math.cos(model.glideAngle().orElseThrow().si());
      double v = flight.landingSpeed().si();
      double area = aircraft.airframe().wing().planform().area().si();
      assertThat(weight / (0.5 * AIR.density().si() * v * v * area)).as("flown").isCloseTo(lift, within(1e-6));
    }
  }

  @ParameterizedTest
  @EnumSource(Layouts.class)
  void it_stays_in_its_steady_glide(Layouts layout) {
    PitchFlight model = flight(layout);
    Flight flight = model.thrown(glide(model, 1.0, 20));
    assertThat(flight.track()).allSatisfy(
        p -> assertThat(p.v()).isCloseTo(model.glideSpeed().orElseThrow().si(), within(1e-8)));
    assertThat(flight.distance().si())
        .isCloseTo(20 / Math.tan(model.glideAngle().orElseThrow().si()), within(1e-5));
    assertThat(flight.firstStall()).isEmpty();
  }

  /**
   * Lanchester's period is that of a glider that keeps its angle of attack. One that is light for its damping yields:
   * T = π·√2·V/g·√(H/K) with the manoeuvre margin H = K − C_mq·ρSc̄/(4m) (Etkin, from memory); drag is left out here.
   */
  @ParameterizedTest
  @EnumSource(Layouts.class)
  void a_throw_that_is_a_little_fast_swings_as_lanchester_says_with_the_manoeuvre_margin(Layouts layout) {
    PitchFlight model = flight(layout);
    Flight flight = model.thrown(glide(model, 1.05, 40));
    double lanchester = Math.PI * Math.sqrt(2) * model.glideSpeed().orElseThrow().si() / 9.80665;
    Aircraft aircraft = aircraft(layout);
    double damping =
        AirframeDerivatives.of(model(layout), aircraft.centreOfGravity(), LIFT, 0.04).longitudinal().mPitchRate();
    Planform wing = aircraft.airframe().wing().planform();
    double margin =
        0.12 - damping * AIR.density().si() * wing.area().si() * wing.meanAerodynamicChord().si() / (4 * aircraft.mass().si());
    double period = lanchester * Math.sqrt(margin / 0.12);
    assertThat(flight.swings().period().orElseThrow().seconds()).isCloseTo(period, withinPercentage(15));
    assertThat(flight.firstStall()).isEmpty();
  }

  /** The same equations by another library's integrator of eighth order, at the places of the track. */
  @ParameterizedTest
  @EnumSource(Layouts.class)
  void the_step_is_short_enough(Layouts layout) {
    PitchFlight model = flight(layout);
    Throw how = glide(model, 1.1, 20);
    Flight flight = model.thrown(how);
    FlightEquations equations = model.equations();
    double[] state = model.start(how.speed().si(), how.angle().si(), how.height().si());
    FirstOrderDifferentialEquations system =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return equations.size();
          }

          @Override
          public void computeDerivatives(double t, double[] y, double[] rates) {
            equations.rates(y, rates);
          }
        };
    TrackPoint late = flight.track().get(flight.track().size() * 3 / 4);
    new DormandPrince853Integrator(1e-9, 0.05, 1e-11, 1e-11)
        .integrate(system, 0.0, state, late.seconds(), state);
    assertThat(late.x()).isCloseTo(state[0], within(1e-3));
    assertThat(late.h()).isCloseTo(state[1], within(1e-3));
  }

  /** What the air takes is the work of drag: none is made by a foreplane's wake or a wing's own moment. */
  @ParameterizedTest
  @EnumSource(Layouts.class)
  void the_air_gives_no_energy(Layouts layout) {
    PitchFlight model = flight(layout);
    for (double faster : new double[] {0.8, 1.0, 1.4, 2.0}) {
      Flight flight = model.thrown(glide(model, faster, 6));
      assertThat(flight.energyLost().si()).as("%s times the glide", faster).isPositive();
      assertThat(flight.energyLost().si()).isLessThan(flight.energyAtThrow().si());
    }
  }

  @Test
  void a_foreplane_with_more_incidence_and_a_wing_with_more_reflex_fly_slower() {
    PitchFlight canard = flight(Layouts.CANARD);
    PitchFlight up = canard.withDecalage(canard.decalage().minus(Angle.degrees(0.5)));
    assertThat(up.trimmedLift().orElseThrow()).isGreaterThan(LIFT);
    PitchFlight plank = flight(Layouts.TAILLESS);
    PitchFlight more = plank.withWingMoment(plank.wingMoment() + 0.005);
    // C_L·K_n = C_m for a wing alone: 0.005 more moment lifts by 0.005/0.12, the body's part aside.
    assertThat(more.trimmedLift().orElseThrow() - LIFT).isCloseTo(0.005 / 0.12, withinPercentage(12));
    assertThatThrownBy(() -> plank.withDecalage(Angle.degrees(2))).hasMessageContaining("withWingMoment");
    assertThatThrownBy(plank::decalage).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> canard.withWingMoment(0.1)).hasMessageContaining("without a tail");
    assertThatThrownBy(() -> plank.withWingMoment(Double.NaN)).hasMessageContaining("moment of the wing");
    assertThatThrownBy(() -> PitchFlight.of(model(Layouts.CANARD), aircraft(Layouts.CANARD), DRAG, AIR, -1))
        .hasMessageContaining("lift coefficient");
    assertThat(plank.toString()).contains("without a tail").hasSizeLessThanOrEqualTo(75);
  }

  @ParameterizedTest
  @EnumSource(Layouts.class)
  void thrown_hard_it_stalls_and_the_advice_says_how_much_slower_does_not(Layouts layout) {
    PitchFlight model = flight(layout);
    for (double faster : new double[] {1.6, 2.2, 3.0}) {
      Throw hard = new Throw(model.glideSpeed().orElseThrow().times(faster), Angle.degrees(25), metres(1.5));
      for (Finding finding : model.advice(hard)) {
        Matcher m = Pattern.compile("At (?:([0-9.]+) m/s and this angle|this speed and ([0-9]+)° (down|up)) it does not stall").matcher(finding.message());
        if (finding.subject().equals("stall")) {
          assertThat(m.find()).as(finding.message()).isTrue();
          Throw mended =
              m.group(1) != null
                  ? new Throw(Speed.metresPerSecond(Double.parseDouble(m.group(1))), hard.angle(), hard.height())
                  : hard.at(Angle.degrees((m.group(3).equals("down") ? -1 : 1) * Double.parseDouble(m.group(2))));
          assertThat(model.thrown(mended).firstStall()).isEmpty();
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Layouts.class)
  void the_advised_turn_of_the_tail_removes_the_stall(Layouts layout) {
    PitchFlight model = flight(layout);
    int advised = 0;
    for (double faster : new double[] {1.2, 1.3, 1.4, 1.5, 1.6, 1.8}) {
      Throw hard = Throw.level(model.glideSpeed().orElseThrow().times(faster), metres(1.5));
      for (Finding finding : model.advice(hard)) {
        Matcher m = Pattern.compile("With ([0-9.]+)° (less|more) decalage it does not stall").matcher(finding.message());
        if (m.find()) {
          advised++;
          double turn = Double.parseDouble(m.group(1)) * (m.group(2).equals("less") ? -1 : 1);
          PitchFlight turned = model.withDecalage(Angle.degrees(model.decalage().degrees() + turn));
          assertThat(turned.thrown(hard).firstStall()).as(finding.message()).isEmpty();
        }
      }
    }
    if (layout == Layouts.TAILLESS) {
      assertThat(advised).isZero();
    } else {
      assertThat(advised).isPositive();
    }
  }

  @Test
  void the_ceiling_says_how_much_slower_stays_below_it() {
    PitchFlight model = flight(Layouts.CONVENTIONAL).in(Hall.of(metres(30), metres(2.5)));
    Throw hard = Throw.level(model.glideSpeed().orElseThrow().times(1.8), metres(1.5));
    Finding finding = model.advice(hard).stream().filter(f -> f.subject().equals("ceiling")).findFirst().orElseThrow();
    Matcher m = Pattern.compile("At ([0-9.]+) m/s").matcher(finding.message());
    assertThat(m.find()).as(finding.message()).isTrue();
    Throw slow = Throw.level(Speed.metresPerSecond(Double.parseDouble(m.group(1))), metres(1.5));
    assertThat(model.advice(slow)).noneMatch(f -> f.subject().equals("ceiling"));
  }
}
