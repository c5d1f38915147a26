// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.function.DoubleFunction;

/**
 * The tail that lifts the nose wheel at take-off: moments about the main wheels, with places as fractions of c̄.
 *
 * <pre>{@code
 * C_m + C_L·(h_g − h_w) − (W/qS)·(h_g − h) + η_h·(S_h/S)·C_d·(h_h − h_g) ≥ 0
 * }</pre>
 *
 * <p>The wheels at h_g lie behind the centre of gravity: weight holds the nose down, wing lift ahead of the wheels and
 * download at the tail raise it. C_L is the lift on the ground run, not the greatest; thrust is left out.
 */
record RotationRequirement(
    double groundLift, double weightRatio, double tailDownload, Length wheels, Length centreOfGravity, PitchModel model)
    implements TailRequirement {

  static final Formula MOMENT =
      Formula.named("moment about the main wheels without the tail")
          .gives("M")
          .as("C_m + C_L·(h_g − h_w) − w·(h_g − h)")
          .where("C_m", "moment coefficient of the wing about its aerodynamic centre", -0.5, 0.2)
          .where("C_L", "lift coefficient on the ground run", 0, 2)
          .where("h_g", "main wheels, fraction of c̄", -1, 3)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("w", "weight over dynamic pressure and wing area", 0.2, 4)
          .where("h", "most forward centre of gravity, fraction of c̄", -1, 2)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(RotationRequirement::moment);

  static final Formula AREA_RATIO =
      Formula.named("tail area over wing area for rotation")
          .gives("s_h")
          .as("−M / (η_h·C_d·(h_h − h_g))")
          .where("M", "moment about the main wheels without the tail", -3, 1)
          .where("η_h", "tail efficiency", 0.3, 1.2)
          .where("C_d", "greatest download of the tail as a positive lift coefficient", 0.1, 2)
          .where("h_h", "aerodynamic centre of the tail", 3.1, 20)
          .where("h_g", "main wheels, fraction of c̄", -1, 3)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(RotationRequirement::areaRatio);

  RotationRequirement {
    Door.finite(groundLift, "lift coefficient on the ground run");
    Door.positive(weightRatio, "weight over dynamic pressure and wing area");
    Door.positive(tailDownload, "greatest download coefficient of the tail");
    if (wheels.compareTo(centreOfGravity) <= 0) {
      throw new IllegalArgumentException(
          "main wheels of a nose-wheel aircraft must lie behind the centre of gravity at " + centreOfGravity + ", were at "
              + wheels);
    }
  }

  static double moment(
      double momentCoefficient, double lift, double wheels, double wingCentre, double weight, double centre) {
    return momentCoefficient + lift * (wheels - wingCentre) - weight * (wheels - centre);
  }

  static double areaRatio(double moment, double efficiency, double download, double tailCentre, double wheels) {
    return -moment / (efficiency * download * (tailCentre - wheels));
  }

  @Override
  public String name() {
    return "lifting the nose wheel at the most forward centre of gravity";
  }

  @Override
  public Source source() {
    return Source.BRIEF;
  }

  @Override
  public Step area(DoubleFunction<Tail> tailOfArea) {
    PitchTerms t = MarginRequirement.with(tailOfArea, model).terms();
    Step ground = t.fraction("main wheels", wheels);
    if (ground.value() >= t.tailCentre.value()) {
      throw new IllegalStateException(
          "no tail area lifts the nose wheel: the main wheels at " + wheels + " lie behind the tail. Move them forward");
    }
    Step moment =
        Step.of(
            MOMENT,
            new TrimInputs(model, t).moment,
            Step.given("lift coefficient on the ground run", "C_L", groundLift, Source.BRIEF),
            ground,
            t.wingCentre,
            Step.given("weight over dynamic pressure and wing area", "w", weightRatio, Source.BRIEF),
            t.fraction("most forward centre of gravity", centreOfGravity));
    Step ratio =
        Step.of(
            AREA_RATIO,
            moment,
            t.efficiency,
            Step.given("greatest download coefficient of the tail", "C_d", tailDownload, Source.BRIEF),
            t.tailCentre,
            ground);
    return Step.of("horizontal tail area for rotation", "S_h", MarginRequirement.AREA, ratio, t.area);
  }
}
