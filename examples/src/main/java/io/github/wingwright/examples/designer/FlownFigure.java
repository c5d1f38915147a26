// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.performance.BestThrow;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.LaunchTrajectory;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.FigureOfMerit;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.GliderFamily;
import io.github.wingwright.stability.design.QuickEvaluation;

/**
 * What a glider with another body does when it is thrown as the brief says, at its best trim and angle.
 *
 * <p>Flown as a point whose drag is that of its best glide there, and grows with the square of the lift as the induced drag
 * does. To be priced beside the steady glide, not looked for: some thousand flights a body.
 */
final class FlownFigure {
  private static final double LEAST_LIFT = 0.15;

  private FlownFigure() {}

  static FigureOfMerit of(Design design, GliderBrief brief) {
    GlideGoal goal = design.brief().goal();
    Wing wing = design.aircraft().airframe().wing();
    GliderFamily family = GliderFamily.of(design.brief(), wing, design.sizedFuselage().value());
    Planform planform = wing.planform();
    Speed speed = design.brief().launch().speed();
    String name =
        (goal == GlideGoal.DISTANCE ? "distance" : "time") + " flown, thrown at " + speed.format(brief.units().speed(), 3);
    double induced = (1.0 + design.glide().drag().inducedLoss()) / (Math.PI * planform.aspectRatio());
    return new FigureOfMerit(
        name,
        goal.unit(),
        true,
        (body, dragArea) -> {
          try {
            return flown(
                design, brief, induced,
                family.evaluate(planform.span().si(), planform.aspectRatio(), body.length().si(), body.diameter().si()));
          } catch (IllegalStateException cannotFly) {
            return 0.0;
          }
        });
  }

  private static double flown(Design design, GliderBrief brief, double induced, QuickEvaluation glider) {
    double parasite = glider.bestGlideLift() / glider.bestLiftToDrag() - induced * glider.bestGlideLift() * glider.bestGlideLift();
    Area area = Area.squareMetres(glider.mass() / glider.wingLoading());
    DragLaw drag = new Parabola(parasite, induced, glider.usableLift());
    Mass mass = Mass.kilograms(glider.mass());
    LaunchTrajectory point = LaunchTrajectory.of(drag, area, mass, design.brief().air(), LEAST_LIFT).in(brief.hall());
    return BestThrow.of(
            design.brief().goal(), design.brief().launch().speed(), design.brief().launch().height(), LEAST_LIFT,
            glider.usableLift(), point::atLift)
        .value();
  }

  private record Parabola(double parasite, double induced, double usable) implements DragLaw {
    @Override
    public double likelyCoefficient(double lift, double speed, double kinematicViscosity) {
      return parasite + induced * lift * lift;
    }

    @Override
    public double usableLift(double unitSpeed, double kinematicViscosity) {
      return usable;
    }
  }
}
