// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.FrictionModel;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Origins;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.FigureOfMerit;
import io.github.wingwright.core.sizing.FlightDrag;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.GliderFamily;
import io.github.wingwright.stability.design.QuickEvaluation;
import java.util.ArrayList;
import java.util.List;

/** The fuselage of a designed glider, priced in what the whole glider is built for. */
final class GliderFuselage {
  private static final Formula TAIL_LOAD =
      Formula.named("load at the tail at launch")
          .gives("F", Force.NEWTON)
          .as("k_t·½·ρ·V_l²·C_L·S")
          .where("k_t", "load at the tail over the lift, at the stall", 0, 1)
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.1, 2)
          .where("V_l", "launch speed", Speed.METRE_PER_SECOND, 0, 100)
          .where("C_L", "usable lift coefficient", 0, 3)
          .where("S", "wing area", Area.SQUARE_METRE, 0, 100)
          .from(Source.COMMON_PRACTICE)
          .computedBy(GliderFuselage::tailLoad);

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
        .partOf(whole, "best glide")
        .knowing(origins(design, glide), design.workings().steps());
  }

  /** Where the values come from that considerations and drag of the fuselage are handed. */
  private static List<Step> origins(Design design, GlidePoint glide) {
    List<Step> known = new ArrayList<>(design.sizedWing().workings().steps());
    Source first = Source.library("half of the length until wing and tail are placed");
    known.add(Step.given("share of the length from wing to tail", "k", GliderBodyBrief.FREE_SHARE, first));
    known.add(Step.given("share of the length outside the arm", "k", 1.0 - GliderBodyBrief.FREE_SHARE, first));
    known.add(Step.given("airspeed", "V", glide.speed(), Source.taken("speed of the best glide")));
    known.add(Step.given("air temperature", "T", design.brief().air().temperature(), Source.BRIEF));
    known.add(Step.given("air pressure", "p", design.brief().air().pressure(), Source.BRIEF));
    Origins air = new Origins(known);
    Step area = known.stream().filter(step -> step.symbol().equals("S")).findFirst().orElseThrow();
    known.add(
        Step.of(
            TAIL_LOAD,
            Step.given(
                "load at the tail over the lift, at the stall",
                "k_t",
                GliderBodyBrief.TAIL_LOAD_AT_STALL,
                Source.COMMON_PRACTICE),
            air.trace(design.brief().air().densityStep(Source.BRIEF)),
            Step.given("launch speed", "V_l", design.brief().launch().speed(), Source.BRIEF),
            Step.given(
                "usable lift coefficient",
                "C_L",
                GliderBrief.USABLE_LIFT,
                Source.library("what a small wing can use")),
            area));
    return known;
  }

  private static double tailLoad(double part, double density, double speed, double lift, double area) {
    return 0.5 * density * speed * speed * lift * area * part;
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
