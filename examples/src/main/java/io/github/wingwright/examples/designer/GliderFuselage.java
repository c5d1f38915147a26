// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.FrictionModel;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.sizing.FigureOfMerit;
import io.github.wingwright.core.sizing.FlightDrag;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.GliderFamily;
import io.github.wingwright.stability.design.QuickEvaluation;

/** The fuselage of a designed glider, priced in what the whole glider is built for. */
final class GliderFuselage {
  private GliderFuselage() {}

  static FuselageChapter of(Design design, GliderBrief brief, FlownThrow thrown) {
    GlidePoint glide = design.glide().bestGlide();
    Wing wing = design.aircraft().airframe().wing();
    FlightDrag drag =
        new FlightDrag(
            FlightCondition.of(design.brief().air(), glide.speed()),
            FrictionModel.laminar(),
            BodyFormFactor.HOERNER_LAMINAR);
    FuselageSizing glides = brief.fuselage().apply(design.sizedWing().value()).judgedBy(figure(design));
    FuselageSizing sizing = FlownFigure.judging(glides, design, brief, thrown);
    Area whole = wing.planform().area().times(glide.dragCoefficient());
    return FuselageChapter.of(sizing, design.sizedFuselage(), drag)
        .madeTo(design.aircraft().airframe().fuselage())
        .showing(brief.units().length(), brief.units().area())
        .partOf(whole, "best glide");
  }

  /** What the glider with another body comes to: tails, masses, balance and glide are reckoned anew. */
  private static FigureOfMerit figure(Design design) {
    GlideGoal goal = design.brief().goal();
    double height = design.brief().launch().height().si();
    Wing wing = design.aircraft().airframe().wing();
    Planform planform = wing.planform();
    GliderFamily family = GliderFamily.of(design.brief(), wing, design.sizedFuselage().value());
    double span = planform.span().si();
    double aspect = planform.aspectRatio();
    return new FigureOfMerit(
        goal.words(),
        goal.unit(),
        true,
        (body, dragArea) -> value(family, goal, height, span, aspect, body));
  }

  private static double value(
      GliderFamily family,
      GlideGoal goal,
      double height,
      double span,
      double aspect,
      Fuselage body) {
    try {
      QuickEvaluation glider =
          family.evaluate(span, aspect, body.length().si(), body.diameter().si());
      return goal == GlideGoal.DISTANCE
          ? height * glider.bestLiftToDrag()
          : height / glider.leastSinkRate();
    } catch (IllegalStateException | ConvergenceException cannotFly) {
      // Too short for its tails, beyond balancing, or of a mass that does not settle: such a glider covers no distance
      // and stays up for no time.
      return 0.0;
    }
  }
}
