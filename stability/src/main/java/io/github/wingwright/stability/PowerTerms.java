// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/** The terms of a propeller as steps, for the pitch model that it belongs to. */
final class PowerTerms {
  /** Nearer to the lifting line than this, in semispans, its field is not that at a disc. */
  private static final double NEAREST = 0.1;

  private final Propeller propeller;
  private final Step diameter;
  private final Step thrust;
  private final Step height;
  private final Step share;
  final Step discThrust;

  PowerTerms(Propeller propeller, Length centreOfGravityHeight, Step wingArea) {
    this.propeller = propeller;
    diameter = Step.given("diameter of the propeller", "D", propeller.diameter, Source.BRIEF);
    thrust =
        Step.of(
            "thrust over dynamic pressure and wing area",
            "C_T",
            PitchTerms.AREA_RATIO,
            Step.given("thrust over dynamic pressure", "T/q", propeller.thrust, Source.BRIEF),
            wingArea);
    height =
        Step.given(
            "height of the thrust line above the centre of gravity",
            "z_T",
            propeller.hub.z().minus(centreOfGravityHeight),
            Source.taken("places of the propeller and of the centre of gravity"));
    share = Step.of(PropellerFormulas.DISC_SHARE, diameter, wingArea);
    discThrust = Step.of(PropellerFormulas.DISC_THRUST, thrust, share);
  }

  Step efficiency(Step without) {
    return Step.of(
        PropellerFormulas.SLIPSTREAM_EFFICIENCY,
        without,
        Step.given("part of the tail in the slipstream", "k", propeller.immersed, Source.BRIEF),
        discThrust);
  }

  Step thrustMoment(Step chord) {
    return Step.of(PropellerFormulas.THRUST_MOMENT, thrust, height, chord);
  }

  Step thrustShift(Step chord) {
    return Step.of(
        PropellerFormulas.THRUST_SHIFT,
        thrust,
        Step.given("lift coefficient at which it pulls so", "C_L", propeller.liftCoefficient, Source.BRIEF),
        height,
        chord);
  }

  Step normalShift(Wing wing, PitchTerms t, Step neutralPoint) {
    Step solidity =
        Step.of(
            PropellerFormulas.SOLIDITY,
            Step.given("number of blades", "B", propeller.blades, Source.BRIEF),
            Step.given("blade chord at three quarters of the radius", "c_b", propeller.bladeChord, Source.BRIEF),
            diameter);
    Step normal =
        Step.of(
            PropellerFormulas.NORMAL_SLOPE,
            solidity,
            new Step.Given(
                "blade angle at three quarters of the radius", "θ", Angle.RADIAN, propeller.bladeAngle.si(), Source.BRIEF),
            discThrust);
    double x = 2.0 * propeller.hub.x().minus(wing.quarterChordX()).si() / wing.planform().span().si();
    double place = Math.abs(x) < NEAREST ? Math.copySign(NEAREST, x) : x;
    double wash =
        DownwashFormulas.scaledFar(
            t.wingAlone.value(),
            t.aspectRatio.value(),
            DownwashFormulas.ellipticFactor(place, DownwashFormulas.ellipticIntegral(place)));
    Step lift =
        Step.of(
            PropellerFormulas.LIFT_SLOPE,
            normal,
            share,
            new Step.Given(
                "downwash gradient at the propeller, negative ahead of the wing", "ε_p", NamedUnit.NUMBER, wash,
                Sources.ELLIPTIC_WAKE));
    return Step.of(
        PropellerFormulas.NORMAL_SHIFT,
        lift,
        t.fraction("propeller", propeller.hub.x()),
        neutralPoint,
        t.wingSlope,
        t.tailOnWing);
  }
}
