// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.PitchSlopes;
import io.github.wingwright.stability.TailVolume;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.derivatives.TailPitchRate;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import java.util.List;

/** The longitudinal derivatives of an aircraft in trim, from the numbers that its balance is reckoned with. */
final class LongitudinalTerms {
  private static final Source SHAPE = Source.library("shape of the aircraft");
  private static final double SMALL = 1e-3;

  final Step lift;
  final Step moment;
  final Step pitchDamping;
  final Step lag;
  final LongitudinalDerivatives derivatives;

  LongitudinalTerms(PitchModel model, Aircraft aircraft, AircraftDrag drag, TrimmedPolar.Point flight, double viscosity) {
    PitchSlopes slopes = model.slopes();
    Length cg = aircraft.centreOfGravity().x();
    Tail tail = model.airframe().horizontalTail().orElseThrow();
    Length chord = model.airframe().wing().planform().meanAerodynamicChord();
    Length arm = tail.quarterChordX().minus(cg);
    Step armStep = Step.given("tail arm from the centre of gravity", "l", arm, SHAPE);
    Step chordStep = Step.given("mean aerodynamic chord", "c̄", chord, SHAPE);
    Step volume =
        Step.of(
            "tail volume coefficient from the centre of gravity",
            "V_h",
            TailVolume.HORIZONTAL,
            Step.given("horizontal tail area", "S_h", tail.planform().area(), SHAPE),
            armStep,
            Step.given("wing reference area", "S", model.airframe().wing().planform().area(), SHAPE),
            chordStep);
    Step chords = Step.given("tail arm from the centre of gravity over mean chord", "l_c", arm.dividedBy(chord), SHAPE);
    lift = slopes.lift();
    moment = slopes.moment(cg);
    Step tailDamping =
        Step.of(TailPitchRate.PITCH_DAMPING, slopes.tailEfficiency(), volume, slopes.tail(), chords);
    pitchDamping = Step.of(MotionFormulas.WITH_WING, tailDamping);
    lag =
        Step.of(
            TailPitchRate.DOWNWASH_LAG, slopes.tailEfficiency(), volume, slopes.tail(), chords, slopes.downwash());
    double eta = slopes.tailEfficiency().value();
    double cl = flight.liftCoefficient();
    double v = flight.speed().si();
    double byLift = (drag.likelyCoefficient(cl + SMALL, v, viscosity) - drag.likelyCoefficient(cl - SMALL, v, viscosity)) / (2.0 * SMALL);
    // At the Reynolds numbers of a model the drag coefficient falls with speed, and takes damping from the phugoid.
    double bySpeed = (drag.likelyCoefficient(cl, v * (1.0 + SMALL), viscosity) - drag.likelyCoefficient(cl, v * (1.0 - SMALL), viscosity)) / (2.0 * SMALL);
    LongitudinalDerivatives d =
        LongitudinalDerivatives.ofLiftAndDrag(
            cl,
            flight.dragCoefficient(),
            0.0,
            lift.value(),
            byLift * lift.value(),
            moment.value(),
            TailPitchRate.liftDueToPitchRate(eta, volume.value(), slopes.tail().value()),
            pitchDamping.value(),
            TailPitchRate.liftDueToAngleRate(eta, volume.value(), slopes.tail().value(), slopes.downwash().value()),
            lag.value());
    derivatives =
        new LongitudinalDerivatives(
            d.xSpeed() - bySpeed,
            d.zSpeed(),
            d.mSpeed(),
            d.xAngle(),
            d.zAngle(),
            d.mAngle(),
            d.zPitchRate(),
            d.mPitchRate(),
            d.zAngleRate(),
            d.mAngleRate());
  }

  List<Step> steps() {
    return List.of(lift, moment, pitchDamping, lag);
  }
}
