// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.MomentOfInertia;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.derivatives.LateralEstimate;
import io.github.wingwright.stability.dynamics.BodyInertia;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import io.github.wingwright.stability.dynamics.ModeApproximations;
import io.github.wingwright.stability.dynamics.SteadyFlight;
import io.github.wingwright.stability.dynamics.WingApparentMass;
import java.util.ArrayList;
import java.util.List;

/** The approximations of the motions, worked by hand: what each of them depends on. */
final class ModeSteps {
  private static final Source FLIGHT = Source.taken("the flight that is disturbed");
  private static final Source MASSES =
      Source.taken("mass statement, in stability axes, with the air carried along");
  private static final Source PARTS = Source.library("sum over wing, body and fin");

  private final LateralEstimate.Result across;
  private final List<Step> steps = new ArrayList<>();
  private final Step density;
  private final Step speed;
  private final Step area;
  private final Step chord;
  private final Step span;
  private final Step gravity =
      Step.given("acceleration of gravity", "g", Acceleration.STANDARD_GRAVITY, Source.DEFINITION);

  ModeSteps(
      FlightModes modes,
      LongitudinalTerms along,
      LateralEstimate.Result across,
      BodyInertia heavier) {
    this.across = across;
    SteadyFlight f = modes.flight();
    density = Step.given("air density", "ρ", Density.kilogramsPerCubicMetre(f.density()), FLIGHT);
    speed = Step.given("airspeed", "u_0", Speed.metresPerSecond(f.speed()), FLIGHT);
    area = Step.given("wing reference area", "S", Area.squareMetres(f.area()), FLIGHT);
    chord = Step.given("mean aerodynamic chord", "c̄", Length.metres(f.chord()), FLIGHT);
    span = Step.given("span", "b", Length.metres(f.span()), FLIGHT);
    steps.addAll(along.steps());
    steps.add(Step.of(ModeApproximations.LANCHESTER_PERIOD, speed, gravity));
    steps.add(
        Step.of(
            ModeApproximations.LANCHESTER_DAMPING,
            Step.given("lift-to-drag ratio", "E", modes.glide().liftToDrag(), FLIGHT)));
    Step mass =
        Step.given(
            "mass with the air carried along",
            "m",
            Mass.kilograms(heavier.mass() + airIn(modes.apparentMass())),
            MASSES);
    Step zw =
        Step.of(
            MotionFormulas.HEAVE,
            density,
            speed,
            area,
            along.lift,
            Step.given("drag coefficient", "C_D", modes.glide().dragCoefficient(), FLIGHT),
            mass);
    Step pitch = inertia("pitch inertia", "I_y", heavier.pitch());
    Step wing =
        rate(
            "pitch damping of the wing",
            "C_mq,w",
            along.derivatives.mPitchRate() - along.tailDamping.value());
    Step damping = Step.sum("pitch damping", "C_mq", List.of(along.tailDamping, wing));
    Step mw = moment("m_w", MotionFormulas.BY_SPEED, chord, along.moment, pitch);
    Step mq = moment("m_q", MotionFormulas.BY_RATE, chord, damping, pitch);
    Step lag = Step.of(MotionFormulas.BY_LAG, density, area, chord, along.lag, pitch);
    double frequencySquared = zw.value() * mq.value() - f.speed() * mw.value();
    steps.addAll(List.of(zw, mw, mq, lag));
    if (frequencySquared > 0.0) {
      Step frequency = Step.of(ModeApproximations.SHORT_PERIOD_FREQUENCY, zw, mq, mw, speed);
      steps.add(frequency);
      steps.add(Step.of(ModeApproximations.SHORT_PERIOD_DAMPING, zw, mq, lag, speed, frequency));
    }
    sideways(modes.lateralDerivatives(), heavier);
  }

  private static double airIn(WingApparentMass air) {
    return air.heave();
  }

  private void sideways(LateralDerivatives d, BodyInertia heavier) {
    steps.addAll(across.steps());
    Step roll = inertia("roll inertia", "I_x", heavier.roll());
    Step yaw = inertia("yaw inertia", "I_z", heavier.yaw());
    Step lv =
        moment(
            "l_v",
            MotionFormulas.BY_SPEED,
            span,
            angle("roll due to sideslip", "C_lβ", d.rollSideslip()),
            roll);
    Step lp =
        moment(
            "l_p",
            MotionFormulas.BY_RATE,
            span,
            rate("roll damping", "C_lp", d.rollRollRate()),
            roll);
    Step lr =
        moment(
            "l_r",
            MotionFormulas.BY_RATE,
            span,
            rate("roll due to yaw rate", "C_lr", d.rollYawRate()),
            roll);
    Step nv =
        moment(
            "n_v",
            MotionFormulas.BY_SPEED,
            span,
            angle("yaw due to sideslip", "C_nβ", d.yawSideslip()),
            yaw);
    Step np =
        moment(
            "n_p",
            MotionFormulas.BY_RATE,
            span,
            rate("yaw due to roll rate", "C_np", d.yawRollRate()),
            yaw);
    Step nr =
        moment(
            "n_r", MotionFormulas.BY_RATE, span, rate("yaw damping", "C_nr", d.yawYawRate()), yaw);
    steps.addAll(List.of(lv, lp, lr, nv, np, nr));
    steps.add(Step.of(ModeApproximations.SPIRAL_ROOT, lv, lp, lr, nv, np, nr, speed, gravity));
  }

  private Step moment(String symbol, Formula formula, Step length, Step derivative, Step inertia) {
    return Step.of(
        derivative.name() + ", over inertia",
        symbol,
        formula,
        density,
        speed,
        area,
        length,
        derivative,
        inertia);
  }

  private static Step inertia(String name, String symbol, double si) {
    return Step.given(name, symbol, MomentOfInertia.kilogramSquareMetres(si), MASSES);
  }

  private static Step angle(String name, String symbol, double value) {
    return new Step.Given(name, symbol, NamedUnit.PER_RADIAN, value, PARTS);
  }

  private static Step rate(String name, String symbol, double value) {
    return Step.given(name, symbol, value, PARTS);
  }

  List<Step> steps() {
    return List.copyOf(steps);
  }
}
