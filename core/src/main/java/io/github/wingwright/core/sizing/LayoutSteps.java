// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;

/**
 * The margins of a body's layout as lines of the workings. What is found along a contour is a solution; its residual is the
 * difference from four times as many stations, or from the contour itself.
 */
final class LayoutSteps {
  static final Source OUTLINE = Source.taken("outline of the body");

  private static final int FINER = 4 * BodyLayout.STATIONS;

  private LayoutSteps() {}

  static Step vision(
      BodyShape shape,
      Step length,
      Step diameter,
      Angle angle,
      double roof,
      Length below,
      double ahead,
      BinaryOperator<Step> eyeFromNose) {
    Step from = eyeFromNose.apply(length, diameter);
    Step eye =
        Step.of(
            MarginFormulas.EYE_HEIGHT,
            Step.given("top of the greatest section over the diameter", "b", roof, OUTLINE),
            diameter,
            Step.given("eye below the top", "e", below, Source.BRIEF));
    Step clear =
        Step.solution(
            "least clearance of the line of sight",
            "c",
            Length.METRE,
            "the least at " + (BodyLayout.STATIONS + 1) + " stations, and between the neighbours of that one",
            "c = least of z_e − (x_e − x)·tan α − z_top(x) from the nose tip to the windscreen",
            v -> BodyLayout.sightClearance(shape, v[0], v[1], v[2], v[5], v[3], Math.tan(v[4]), BodyLayout.STATIONS),
            v -> v[6] - BodyLayout.sightClearance(shape, v[0], v[1], v[2], v[5], v[3], Math.tan(v[4]), FINER),
            Source.DEFINITION,
            length,
            diameter,
            from,
            eye,
            Step.given("angle of view below the horizon", "α", angle, Source.BRIEF),
            Step.given("windscreen ahead of the eye", "a", Length.metres(ahead), Source.BRIEF));
    return Step.of(MarginFormulas.CLEARANCE, clear, from);
  }

  static Step rotation(
      BodyShape shape,
      Step length,
      Step diameter,
      Angle rotation,
      double belly,
      Length strut,
      double wheelShare,
      double upsweepShare,
      Angle upsweep) {
    Step clear =
        Step.solution(
            "least clearance of the belly in rotation",
            "c",
            Length.METRE,
            "the least at " + (BodyLayout.STATIONS + 1) + " stations, and between the neighbours of that one",
            "c = least of h_s + b·d + z_belly(x) + (x − s_u·L)·tan u − (x − s_w·L)·tan θ behind the wheels",
            v -> clearance(shape, v, BodyLayout.STATIONS),
            v -> v[8] - clearance(shape, v, FINER),
            Source.DEFINITION,
            length,
            diameter,
            Step.given("height of the belly above the ground", "h_s", strut, Source.BRIEF),
            Step.given("belly below the axis over the diameter", "b", belly, OUTLINE),
            Step.given("angle of rotation", "θ", rotation, Source.BRIEF),
            Step.given("wheels over the length", "s_w", wheelShare, Source.BRIEF),
            Step.given("start of the upsweep over the length", "s_u", upsweepShare, Source.BRIEF),
            Step.given("upsweep", "u", upsweep, Source.BRIEF));
    return Step.of(MarginFormulas.CLEARANCE, clear, length);
  }

  private static double clearance(BodyShape shape, double[] v, int stations) {
    double ground = v[2] + v[3] * v[1];
    return BodyLayout.groundClearance(
        shape, v[0], v[1], ground, Math.tan(v[4]), v[5], v[6], Math.tan(v[7]), stations);
  }

  static Step closure(BodyShape shape, Step length, Step diameter, Angle most) {
    Step slope =
        Step.solution(
            "slope of the contour where the tail has half the radius",
            "k",
            NamedUnit.NUMBER,
            "bisection for the place, then a central difference; the steepest of 512 pieces if the tail ends thicker",
            "k = −dr/dx where r = d/4; what is left is the difference from the places of r 0.1 % more and less, or from"
                + " twice as many pieces",
            v -> TailEnd.closureSlope(shape, v[0], v[1]),
            v -> v[2] - TailEnd.closureOtherwise(shape, v[0], v[1]),
            Source.DEFINITION,
            length,
            diameter);
    return Step.of(
        MarginFormulas.CLOSURE_MARGIN, slope, Step.given("greatest angle of closure", "β", most, Source.BRIEF));
  }

  static Step saddle(BodyShape shape, Step length, Step diameter, Length chord, Length travel, double share) {
    Step thick =
        Step.solution(
            "length of the thick part",
            "l",
            Length.METRE,
            "bisection ahead of the greatest section and behind it",
            "r ≥ k·d/2 over l; what is left is the difference from 4,000 stations",
            v -> Contour.thickPart(shape, v[0], v[1], v[2]),
            v -> v[3] - Contour.thickPartByStations(shape, v[0], v[1], v[2]),
            Source.DEFINITION,
            length,
            diameter,
            Step.given("what counts as thick, over the radius", "k", share, Source.BRIEF));
    return Step.of(
        MarginFormulas.SADDLE_MARGIN,
        thick,
        Step.given("root chord", "c", chord, Source.BRIEF),
        Step.given("travel of the wing", "t", travel, Source.BRIEF));
  }

  static Step balance(
      Contents contents,
      List<Thing> things,
      BodyShape shape,
      Step length,
      Step diameter,
      Mass rest,
      double restShare,
      double wantedShare,
      Mass ballast,
      Length ballastFromNose) {
    Step share = Step.given("centre of gravity of the rest over the length", "s_r", restShare, Source.BRIEF);
    Step restAt = Step.of("place of the rest", "x_r", MarginFormulas.SHARE_OF_LENGTH, share, length);
    List<Step> masses = new ArrayList<>();
    List<Step> moments = new ArrayList<>();
    add("the rest", "r", Step.given("mass of the rest", "m_r", rest, Source.BRIEF), restAt, masses, moments);
    add(
        "the ballast",
        "b",
        Step.given("mass of the ballast", "m_b", ballast, Source.BRIEF),
        Step.given("place of the ballast", "x_b", ballastFromNose, Source.BRIEF),
        masses,
        moments);
    for (int i = 0; i < things.size(); i++) {
      Thing thing = things.get(i);
      String index = Integer.toString(i + 1);
      Step along = Step.given("length of " + thing.name(), "l_" + index, thing.length(), Source.BRIEF);
      Step front = front(contents, i, "f_" + index, shape, length, diameter);
      Step middle = Step.of("middle of " + thing.name(), "x_" + index, FitFormulas.MIDDLE, front, along);
      Step mass = Step.given("mass of " + thing.name(), "m_" + (i + 1), thing.mass(), Source.BRIEF);
      add(thing.name(), index, mass, middle, masses, moments);
    }
    Step all = Step.sum("mass of everything", "m", masses);
    Step moment = Step.sum("moment of everything about the nose", "M", moments);
    return Step.of(
        MarginFormulas.BALANCE_MARGIN,
        Step.given("wanted centre of gravity over the length", "s", wantedShare, Source.BRIEF),
        Step.of(MarginFormulas.CENTRE_OF_GRAVITY, moment, all),
        length);
  }

  /** Where the front of a thing lies: what it touches closes it. */
  static Step front(Contents contents, int at, String symbol, BodyShape shape, Step length, Step diameter) {
    return Step.solution(
        "front of " + contents.thing(at).name(),
        symbol,
        Length.METRE,
        "bisection for the foremost place with room",
        "no room is left to the contour, or to what lies ahead of it",
        v -> contents.stowage().frontOf(at, shape, v[0], v[1]),
        v -> contents.stowage().roomAhead(at, shape, v[0], v[1], v[2]),
        Source.library("placed as far forward as it fits"),
        length,
        diameter);
  }

  private static void add(String what, String index, Step mass, Step at, List<Step> masses, List<Step> moments) {
    masses.add(mass);
    moments.add(Step.of("moment of " + what, "M_" + index, MarginFormulas.MASS_MOMENT, mass, at));
  }
}
