// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.List;

/** What trim needs of the wing besides its slope: zero-lift angle, moment, and the angle of the fuselage without lift. */
final class TrimInputs {
  final PitchChoices.Section wing;
  final double twist;
  final Step zeroLift;
  final Step moment;
  final Step bodyAngle;

  TrimInputs(PitchModel model, PitchTerms terms) {
    wing = model.choices.neededWingSection();
    Angle incidence = model.airframe().wing().incidence();
    twist = meanTwist(model.airframe().wing().planform());
    zeroLift =
        Step.of(
            TrimFormulas.ZERO_LIFT_ANGLE,
            angle("zero-lift angle of the section", "α_s", wing.polar().zeroLiftAngle(wing.reynolds()).likely(), wing),
            Step.given("mean twist of the wing", "θ", Angle.radians(twist), Sources.AIRFRAME));
    bodyAngle =
        Step.of(
            TrimFormulas.BODY_ANGLE, zeroLift, Step.given("incidence of the wing", "i_w", incidence, Sources.AIRFRAME));
    Step section =
        Step.given(
            "moment coefficient of the wing's section",
            "c_m",
            wing.polar().moment(wing.reynolds()).likely(),
            wing.polar().source());
    Step ofWing = SweptTwist.moment(section, model.airframe().wing().planform(), terms);
    moment =
        terms.power == null
            ? ofWing
            : Step.sum(
                "moment coefficient of wing and thrust", "C_m", List.of(ofWing, terms.power.thrustMoment(terms.chord)));
  }

  static Step angle(String name, String symbol, double value, PitchChoices.Section section) {
    return new Step.Given(name, symbol, Angle.RADIAN, value, section.polar().source());
  }

  /** Twist averaged over the area, which is exact for straight panels: negative for washout. */
  static double meanTwist(Planform planform) {
    List<Length> stations = planform.stations();
    double sum = 0.0;
    double area = 0.0;
    for (int i = 1; i < stations.size(); i++) {
      double dy = stations.get(i).si() - stations.get(i - 1).si();
      double c1 = planform.chordAt(stations.get(i - 1)).si();
      double c2 = planform.chordAt(stations.get(i)).si();
      double t1 = planform.twistAt(stations.get(i - 1)).si();
      double t2 = planform.twistAt(stations.get(i)).si();
      sum += dy / 6.0 * (2.0 * c1 * t1 + c1 * t2 + c2 * t1 + 2.0 * c2 * t2);
      area += 0.5 * dy * (c1 + c2);
    }
    return sum / area;
  }
}
