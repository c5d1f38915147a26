// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.sizing.FigureOfMerit;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.stability.design.Design;

/**
 * What a glider with another body does when it is thrown as the sheet says: level, or at its own best angle for a hand.
 *
 * <p>The body as it is made has the number of the sheet. With another one the design is reckoned anew, tails, masses, balance
 * and trim, and flown with the same equations. To be priced beside the steady glide, not looked for: some three hundred
 * flights a body. The best angle is found to a tenth of a degree: a change of less than {@value #RESOLUTION} is noise.
 */
final class FlownFigure {
  /** Part of the value below which a change is noise, measured by a sweep. */
  static final double RESOLUTION = 0.001;

  private FlownFigure() {}

  /** A sizing that prices the flown throw as well, if the design flies it with pitch. */
  static FuselageSizing judging(FuselageSizing sizing, Design design, GliderBrief brief, FlownThrow chosen) {
    return chosen.flies() && chosen.pitch().isPresent() ? sizing.judgedBy(of(design, brief, chosen)) : sizing;
  }

  static FigureOfMerit of(Design design, GliderBrief brief, FlownThrow chosen) {
    GlideGoal goal = design.brief().goal();
    LaunchWords launch = new LaunchWords(design, brief.units());
    boolean bestAngle = !chosen.lasts();
    Fuselage made = design.aircraft().airframe().fuselage();
    return new FigureOfMerit(
        (goal == GlideGoal.DISTANCE ? "distance" : "time") + " flown, " + launch.launched("thrown ", "launched ") + (bestAngle ? "" : "level ") + "at "
            + chosen.level().speed().format(brief.units().speed(), 3)
            + (bestAngle ? " and the best angle for " + launch.launched("a hand", "an aim") : ""),
        goal.unit(),
        true,
        (body, dragArea) -> body.equals(made) ? chosen.value(bestAngle) : flown(design, body, chosen, bestAngle));
  }

  /** A body too short for its tails, or beyond balancing or trim, covers no distance and stays up for no time. */
  private static double flown(Design design, Fuselage body, FlownThrow chosen, boolean bestAngle) {
    try {
      FlownThrow other = new FlownThrow(design.withFuselage(body), chosen.hall());
      return other.pitch().isPresent() ? other.value(bestAngle) : 0.0;
    } catch (IllegalStateException cannotFly) {
      return 0.0;
    }
  }
}
