// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Locale;
import java.util.function.DoubleFunction;

/** The area with which the tail, at its greatest download, still holds the nose up at the greatest lift. */
record ForwardLimitRequirement(double liftCoefficient, double tailDownload, Length centreOfGravity, PitchModel model)
    implements TailRequirement {

  static final Formula AREA_RATIO =
      Formula.named("tail area over wing area for trim at the greatest lift")
          .gives("s_h")
          .as("−M / (η_h·C_d·(h_h − h_w + C_f/a_w))")
          .where("M", "moment to be trimmed, nose-down negative", -2, 0.5)
          .where("η_h", "tail efficiency", 0.3, 1.2)
          .where("C_d", "greatest download of the tail as a positive lift coefficient", 0.1, 2)
          .where("h_h", "aerodynamic centre of the tail", 1.2, 20)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(ForwardLimitRequirement::areaRatio);

  static final Formula MOMENT =
      Formula.named("moment to be trimmed")
          .gives("M")
          .as("C_m + C_L·(h − h_w) + C_f·(C_L/a_w + α_b)")
          .where("C_m", "moment coefficient of the wing about its aerodynamic centre", -0.5, 0.2)
          .where("C_L", "greatest lift coefficient", 0.2, 3)
          .where("h", "most forward centre of gravity, fraction of c̄", -1, 2)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("α_b", "angle of the fuselage when the wing has no lift", Angle.RADIAN, -0.4, 0.4)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(ForwardLimitRequirement::moment);

  ForwardLimitRequirement {
    Door.positive(liftCoefficient, "greatest lift coefficient");
    Door.positive(tailDownload, "greatest download coefficient of the tail");
    Door.finite(centreOfGravity, "most forward centre of gravity");
  }

  static double areaRatio(
      double moment,
      double tailEfficiency,
      double download,
      double tailCentre,
      double wingCentre,
      double fuselageSlope,
      double wingSlope) {
    return -moment / (tailEfficiency * download * (tailCentre - wingCentre + fuselageSlope / wingSlope));
  }

  static double moment(
      double momentCoefficient,
      double liftCoefficient,
      double centreOfGravity,
      double wingCentre,
      double fuselageSlope,
      double wingSlope,
      double bodyAngle) {
    return momentCoefficient
        + liftCoefficient * (centreOfGravity - wingCentre)
        + fuselageSlope * (liftCoefficient / wingSlope + bodyAngle);
  }

  @Override
  public String name() {
    return String.format(
        Locale.ROOT, "trim at a lift coefficient of %.2f at the most forward centre of gravity", liftCoefficient);
  }

  @Override
  public Source source() {
    return Source.BRIEF;
  }

  @Override
  public Step area(DoubleFunction<Tail> tailOfArea) {
    PitchTerms t = MarginRequirement.with(tailOfArea, model).terms();
    TrimInputs inputs = new TrimInputs(model, t);
    Step moment =
        Step.of(
            MOMENT,
            inputs.moment,
            Step.given("greatest lift coefficient", "C_L", liftCoefficient, Source.BRIEF),
            t.fraction("most forward centre of gravity", centreOfGravity),
            t.wingCentre,
            t.fuselageSlope,
            t.wingAlone,
            inputs.bodyAngle);
    Step ratio =
        Step.of(
            AREA_RATIO,
            moment,
            t.efficiency,
            Step.given("greatest download coefficient of the tail", "C_d", tailDownload, Source.BRIEF),
            t.tailCentre,
            t.wingCentre,
            t.fuselageSlope,
            t.wingAlone);
    return Step.of("horizontal tail area for the forward limit", "S_h", MarginRequirement.AREA, ratio, t.area);
  }
}
