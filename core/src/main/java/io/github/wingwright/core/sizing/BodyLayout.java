// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.aerodynamics.AfterbodyDrag;
import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BinaryOperator;

/**
 * Considerations on how a body is laid out: the wing on it, the view out of it, the ground below it, its tail end and its
 * balance.
 *
 * <p>Places along the body are shares of its length, so that they move with it.
 */
public final class BodyLayout {
  /** Angle by which a pilot must see below the horizon over the nose, on approach. */
  public static final Formula OVER_NOSE_ANGLE =
      Formula.named("over-nose angle")
          .gives("α")
          .as("γ + 0.07·V")
          .where("γ", "angle of the approach in degrees", 0, 10)
          .where("V", "approach speed in knots", 20, 200)
          .from(Source.restated("Raymer, Aircraft Design: A Conceptual Approach, 6th ed., 2018", "eq. 9.1"))
          .computedBy(BodyLayout::overNoseDegrees);

  private static final Source AFTERBODY = AfterbodyDrag.CLOSURE.source();
  private static final Source WHEELS =
      Source.restated("Raymer, Aircraft Design: A Conceptual Approach, 6th ed., 2018", "figs 11.3 to 11.5");
  static final int STATIONS = 64;

  private BodyLayout() {}

  /**
   * The over-nose angle, in degrees.
   *
   * @param approachDegrees angle of the approach γ [°]
   * @param knots approach speed V [kt]
   * @return α [°]; 3° at 100 kt need 10°
   */
  public static double overNoseDegrees(double approachDegrees, double knots) {
    return approachDegrees + 0.07 * knots;
  }

  /**
   * The over-nose angle that an approach needs.
   *
   * @param approach angle of the approach, positive down
   * @param speed approach speed, positive
   * @return the angle below the horizon
   */
  public static Angle overNoseAngle(Angle approach, Speed speed) {
    Door.notNegative(approach, "angle of the approach");
    Door.positive(speed, "approach speed");
    return Angle.degrees(overNoseDegrees(approach.degrees(), speed.knots()));
  }

  /**
   * The pilot must see over the nose: a limit. The line of sight goes from the eye down by the angle and must pass above
   * the contour from the foot of the windscreen to the nose tip.
   *
   * @param angle angle below the horizon, positive
   * @param eyeFromNose distance of the eye aft of the nose tip, positive
   * @param eyeBelowTop how far the eye lies below the top of the greatest section; negative under a raised canopy
   * @param windscreenFromNose distance of the windscreen's foot aft of the nose tip, positive, ahead of the eye
   * @return the line of sight clears the contour
   */
  public static ShapeConsideration seesOverNose(
      Angle angle, Length eyeFromNose, Length eyeBelowTop, Length windscreenFromNose) {
    Door.finite(eyeBelowTop, "eye below the top");
    Door.positive(angle, "over-nose angle");
    Door.positive(eyeFromNose, "distance of the eye from the nose");
    Door.positive(windscreenFromNose, "distance of the windscreen from the nose");
    Door.inOrder(windscreenFromNose, eyeFromNose, "distance from the nose, of windscreen and eye");
    Wording name =
        Wording.of("sees ").and(angle).and(" over the nose from ").and(eyeFromNose).and(" behind its tip");
    double eye = eyeFromNose.si();
    double ahead = eye - windscreenFromNose.si();
    return shape -> seesOverNose(name, angle, eyeBelowTop, ahead,
            shape,
            (length, diameter) -> eye,
            (length, diameter) -> Step.given("distance of the eye from the nose", "x_e", eyeFromNose, Source.BRIEF));
  }

  /**
   * The pilot must see over the nose: a limit. The pilot sits in one of the contents and goes with it, wherever it fits.
   *
   * @param angle angle below the horizon, positive
   * @param contents what is inside, in a given order
   * @param cabin name of the thing in which the pilot sits
   * @param eyeBehindFront distance of the eye behind the cabin's front, positive
   * @param eyeBelowTop how far the eye lies below the top of the greatest section; negative under a raised canopy
   * @param windscreenAhead distance of the windscreen's foot ahead of the eye, positive
   * @return the line of sight clears the contour
   */
  public static ShapeConsideration seesOverNose(
      Angle angle, Contents contents, String cabin, Length eyeBehindFront, Length eyeBelowTop, Length windscreenAhead) {
    Objects.requireNonNull(contents, "contents");
    Door.positive(angle, "over-nose angle");
    Door.positive(eyeBehindFront, "distance of the eye behind the cabin's front");
    double ahead = Door.positive(windscreenAhead, "distance of the windscreen ahead of the eye").si();
    int seat = contents.indexOf(cabin);
    Wording name = Wording.of("sees ").and(angle).and(" over the nose from the " + cabin);
    return shape ->
        seesOverNose(
            name,
            angle,
            eyeBelowTop,
            ahead,
            shape,
            (length, diameter) -> contents.stowage().frontOf(seat, shape, length, diameter) + eyeBehindFront.si(),
            (length, diameter) ->
                Step.of(
                    "distance of the eye from the nose",
                    "x_e",
                    FitFormulas.BEHIND,
                    LayoutSteps.front(contents, seat, "x_f", shape, length, diameter),
                    Step.given("eye behind the cabin's front", "e_f", eyeBehindFront, Source.BRIEF)));
  }

  private static BodyMargin seesOverNose(
      Wording name, Angle angle, Length eyeBelowTop, double ahead, BodyShape shape, BodyMargin.OfBody eyeFromNose,
      BinaryOperator<Step> eyeStep) {
    double slope = angle.tangent();
    double roof = Contour.greatest(shape, 1.0);
    return new BodyMargin(
        name,
        Strength.LIMIT,
        Source.restated("Raymer, Aircraft Design: A Conceptual Approach, 6th ed., 2018", "sec. 9.3"),
        (length, diameter) -> {
          double from = eyeFromNose.margin(length, diameter);
          double eye = roof * diameter - eyeBelowTop.si();
          return sightClearance(shape, length, diameter, from, ahead, eye, slope, STATIONS) / from;
        },
        (length, diameter, unit) -> {
          double from = eyeFromNose.margin(length, diameter);
          double eye = roof * diameter - eyeBelowTop.si();
          double lowest =
              Contour.least(
                  x -> Math.atan((eye - Contour.top(shape, x, length, diameter)) / (from - x)),
                  part -> sightStation(part, from - ahead, length),
                  STATIONS);
          return lowest > 0.0
              ? "with " + Advised.down(lowest, Angle.DEGREE, 3) + " of view"
              : "with no view below the horizon";
        })
        .reckonedBy(
            (length, diameter) ->
                LayoutSteps.vision(shape, length, diameter, angle, roof, eyeBelowTop, ahead, eyeStep));
  }

  /** How far the line of sight passes above the contour, at so many stations [m]. */
  static double sightClearance(
      BodyShape shape, double length, double diameter, double from, double ahead, double eye, double slope, int stations) {
    return Contour.least(
        x -> eye - slope * (from - x) - Contour.top(shape, x, length, diameter),
        part -> sightStation(part, from - ahead, length),
        stations);
  }

  /** Stations crowd towards the tip, where the contour bends. */
  private static double sightStation(double part, double windscreen, double length) {
    return Math.max(0.0, Math.min(windscreen, length)) * part * part;
  }

  /**
   * The tail must clear the ground when the aeroplane rotates: a limit. Between wheel and tail the belly may be swept up,
   * beyond what the family has of its own; {@link DragArea#withUpsweep} is the price.
   *
   * @param rotation angle of rotation, positive: 10° to 15° to reach nine tenths of the greatest lift
   * @param wheelShare where the wheels touch, as a share of the length, 0 to 1
   * @param strut how far below the greatest section's belly the wheels touch, positive
   * @param upsweepShare where the upsweep of the centre line begins, as a share of the length
   * @param upsweep angle of the upsweep, not negative
   * @return the belly stays above the line from the wheel at that angle
   */
  public static ShapeConsideration clearsGroundAtRotation(
      Angle rotation, double wheelShare, Length strut, double upsweepShare, Angle upsweep) {
    Door.positive(rotation, "angle of rotation");
    Door.within(wheelShare, 0.0, 1.0, "place of the wheels");
    Door.positive(strut, "height of the belly above the ground");
    Door.within(upsweepShare, 0.0, 1.0, "start of the upsweep");
    Door.notNegative(upsweep, "upsweep");
    double slope = rotation.tangent();
    double rise = upsweep.tangent();
    return shape -> {
      double belly = -Contour.greatest(shape, -1.0);
      return new BodyMargin(
          Wording.of("clears the ground at a rotation of ").and(rotation),
          Strength.LIMIT,
          WHEELS,
          (length, diameter) -> {
            double ground = strut.si() + belly * diameter;
            return groundClearance(
                    shape, length, diameter, ground, slope, wheelShare, upsweepShare, rise, STATIONS)
                / length;
          },
          (length, diameter, unit) -> {
            double angle =
                Contour.least(
                    x -> {
                      double raised = rise * Math.max(0.0, x - upsweepShare * length);
                      double above = strut.si() + belly * diameter + Contour.bottom(shape, x, length, diameter) + raised;
                      return Math.atan2(above, x - wheelShare * length);
                    },
                    part -> length * (wheelShare + (1.0 - wheelShare) * part),
                    STATIONS);
            return "with a rotation of " + Advised.down(angle, Angle.DEGREE, 3);
          })
          .reckonedBy(
              (length, diameter) ->
                  LayoutSteps.rotation(
                      shape, length, diameter, rotation, belly, strut, wheelShare, upsweepShare, upsweep));
    };
  }

  /** How far the belly stays above the ground in rotation, the ground so far below the axis, at so many stations [m]. */
  static double groundClearance(
      BodyShape shape,
      double length,
      double diameter,
      double ground,
      double slope,
      double wheelShare,
      double upsweepShare,
      double rise,
      int stations) {
    return Contour.least(
        x -> {
          double raised = rise * Math.max(0.0, x - upsweepShare * length);
          double above = ground + Contour.bottom(shape, x, length, diameter) + raised;
          return above - slope * (x - wheelShare * length);
        },
        part -> length * (wheelShare + (1.0 - wheelShare) * part),
        stations);
  }

  /**
   * The aeroplane must not fall on its tail when it stands on its main wheels: a guideline. They lie so far behind the
   * centre of gravity that the line from their contact to it leans forward by the angle.
   *
   * @param tipBack angle from the vertical, positive: at least 15°, and at least the angle at which the tail touches
   * @param wheelShare where the main wheels touch, as a share of the length
   * @param strut how far below the greatest section's belly the wheels touch, positive
   * @param gravityShare where the centre of gravity lies at its aft end, as a share of the length, ahead of the wheels
   * @param gravityHeight how high it lies above the reference line; negative below
   * @return (s_w − s_g)·L ≥ h·tan β
   */
  public static ShapeConsideration standsOnMainWheels(
      Angle tipBack, double wheelShare, Length strut, double gravityShare, Length gravityHeight) {
    Door.finite(gravityHeight, "height of the centre of gravity");
    Door.positive(tipBack, "tip-back angle");
    Door.within(wheelShare, 0.0, 1.0, "place of the wheels");
    Door.within(gravityShare, 0.0, wheelShare, "place of the centre of gravity");
    Door.positive(strut, "height of the belly above the ground");
    double slope = tipBack.tangent();
    return shape -> {
      double belly = -Contour.greatest(shape, -1.0);
      return new BodyMargin(
          Wording.of("tips back only beyond ").and(tipBack),
          Strength.GUIDELINE,
          WHEELS,
          (length, diameter) -> {
            double height = strut.si() + belly * diameter + gravityHeight.si();
            return (wheelShare - gravityShare) * length / (Math.max(height, 1e-9) * slope) - 1.0;
          },
          (length, diameter, unit) -> {
            double height = strut.si() + belly * diameter + gravityHeight.si();
            double angle = Math.atan((wheelShare - gravityShare) * length / Math.max(height, 1e-9));
            return "with " + Advised.down(angle, Angle.DEGREE, 3);
          })
          .reckonedBy(
              (length, diameter) ->
                  Step.of(
                      MarginFormulas.TIP_BACK_MARGIN,
                      Step.given("wheels over the length", "s_w", wheelShare, Source.BRIEF),
                      Step.given("centre of gravity over the length", "s_g", gravityShare, Source.BRIEF),
                      length,
                      Step.of(
                          MarginFormulas.GRAVITY_HEIGHT,
                          Step.given("height of the belly above the ground", "h_s", strut, Source.BRIEF),
                          Step.given("belly below the axis over the diameter", "b", belly, LayoutSteps.OUTLINE),
                          diameter,
                          Step.given("centre of gravity above the axis", "z_g", gravityHeight, Source.BRIEF)),
                      Step.given("tip-back angle", "β", tipBack, Source.BRIEF)));
    };
  }

  /**
   * The tail must close gently enough for the flow to follow: a guideline. Counted is the contour's angle where the radius
   * has come down to half behind the greatest section; behind that a small blunt end is a base. A tail that ends in a base
   * or a boom thicker than half is judged by the steepest place behind the greatest section.
   *
   * @param most greatest angle of the contour against the axis, positive
   * @return angle ≤ most
   */
  public static ShapeConsideration afterbodyClosesWithin(Angle most) {
    Door.positive(most, "closure angle");
    double limit = most.tangent();
    return shape ->
        new BodyMargin(
            Wording.of("tail closes at no more than ").and(most),
            Strength.GUIDELINE,
            AFTERBODY,
            (length, diameter) -> 1.0 - TailEnd.closureSlope(shape, length, diameter) / limit,
            (length, diameter, unit) ->
                "with " + Advised.up(Math.atan(TailEnd.closureSlope(shape, length, diameter)), Angle.DEGREE, 3))
            .reckonedBy((length, diameter) -> LayoutSteps.closure(shape, length, diameter, most));
  }

  /**
   * The tail must close gently enough, with a steeper underside allowed than top: a guideline. Upsweep adds to the underside
   * and takes from the top. Counted is the place where the section has come down to half its height, or the
   * steepest place of each line if it does not.
   *
   * @param top greatest angle of the top line, positive: 10° to 12°
   * @param underside greatest angle of the underside, positive: 15°
   * @return both angles within theirs
   */
  public static ShapeConsideration afterbodyClosesWithin(Angle top, Angle underside) {
    Door.positive(top, "closure angle of the top");
    Door.positive(underside, "closure angle of the underside");
    return shape -> {
      double half = 0.5 * (Contour.greatest(shape, 1.0) - Contour.greatest(shape, -1.0));
      return new BodyMargin(
          Wording.of("tail closes at no more than ").and(top).and(" above and ").and(underside).and(" below"),
          Strength.GUIDELINE,
          AFTERBODY,
          (length, diameter) -> {
            double above = TailEnd.closureOfLine(shape, length, diameter, half * diameter, 1.0);
            double below = TailEnd.closureOfLine(shape, length, diameter, half * diameter, -1.0);
            return FitFormulas.twoClosures(above, below, top.si(), underside.si());
          },
          (length, diameter, unit) -> {
            double above = Math.atan(TailEnd.closureOfLine(shape, length, diameter, half * diameter, 1.0));
            double below = Math.atan(TailEnd.closureOfLine(shape, length, diameter, half * diameter, -1.0));
            return "with " + Advised.up(above, Angle.DEGREE, 3) + " above and " + Advised.up(below, Angle.DEGREE, 3) + " below";
          })
          .reckonedBy((length, diameter) -> FitSteps.twoClosures(shape, length, diameter, half, top, underside));
    };
  }

  /**
   * Slope of the contour where the aft radius is half the greatest, or its steepest if the tail ends thicker than that.
   *
   * @param shape family of the body
   * @param length length L [m]
   * @param diameter diameter d [m]
   * @return −dr/dx; of a spheroid √3·d/L
   */
  public static double closureSlope(BodyShape shape, double length, double diameter) {
    Objects.requireNonNull(shape, "shape");
    return TailEnd.closureSlope(shape, length, diameter);
  }

  /**
   * The wing must pass through the body: a limit.
   *
   * @param thickness thickness of the wing where it passes through, positive
   * @param heightShare how far above or below the axis its middle lies, as a share of the radius, 0 to less than 1
   * @param wall wall that must remain above and below, not negative
   * @return (1 − share)·d ≥ thickness + 2·wall
   */
  public static Consideration carriesWingThrough(Length thickness, double heightShare, Length wall) {
    Door.positive(thickness, "thickness of the wing");
    Door.notNegative(wall, "wall");
    if (!(heightShare >= 0.0 && heightShare < 1.0)) {
      throw new IllegalArgumentException("height of the wing must be 0 to less than 1 radius, was " + heightShare);
    }
    double least = (thickness.si() + 2.0 * wall.si()) / (1.0 - heightShare);
    return new DiameterWithin(
        Wording.of("carries a wing of ").and(thickness).and(" through"),
        Strength.LIMIT,
        Source.DEFINITION,
        Interval.atLeast(least),
        (length, diameter, unit) -> {
          double fits = (1.0 - heightShare) * diameter - 2.0 * wall.si();
          return fits > 0.0
              ? "with a wing of " + Advised.down(fits, unit, 4)
              : "with the wing outside the body, which is no thicker than the walls that remain";
        },
        Step.of(
            MarginFormulas.DIAMETER_FOR_WING,
            Step.given("thickness of the wing", "t", thickness, Source.BRIEF),
            Step.given("wall that remains", "w", wall, Source.BRIEF),
            Step.given("height of the wing over the radius", "k", heightShare, Source.BRIEF)));
  }

  /**
   * The wing's saddle and its travel must lie where the body is thick: a limit.
   *
   * @param rootChord chord of the wing on the body, positive
   * @param travel how far the wing may be moved, not negative
   * @param share what counts as thick, as a share of the greatest radius, 0.5 to 1
   * @return length of the thick part ≥ chord + travel
   */
  public static ShapeConsideration carriesSaddle(Length rootChord, Length travel, double share) {
    Door.positive(rootChord, "root chord");
    Door.notNegative(travel, "travel of the wing");
    Door.within(share, 0.5, 1.0, "share of the radius");
    double needed = rootChord.si() + travel.si();
    return shape ->
        new BodyMargin(
            travel.si() > 0.0
                ? Wording.of("carries a saddle of ").and(rootChord).and(" with ").and(travel).and(" of travel")
                : Wording.of("carries a saddle of ").and(rootChord),
            Strength.LIMIT,
            Source.BRIEF,
            (length, diameter) -> Contour.thickPart(shape, length, diameter, share) / needed - 1.0,
            (length, diameter, unit) ->
                "with " + Advised.down(Contour.thickPart(shape, length, diameter, share), unit, 4) + " for chord and travel")
            .reckonedBy((length, diameter) -> LayoutSteps.saddle(shape, length, diameter, rootChord, travel, share));
  }

  /**
   * The nose must be long enough to balance without too much ballast: a guideline.
   *
   * <pre>{@code
   * m_b = m·(x_s − x_t)/(x_t − x_b) ≤ most,   x_s and x_t shares of the length
   * }</pre>
   *
   * @param most most ballast, positive
   * @param empty mass without ballast, positive
   * @param emptyShare where its centre of gravity lies, as a share of the length
   * @param wantedShare where the centre of gravity is wanted, as a share of the length, ahead of it
   * @param ballastFromNose distance of the ballast from the nose tip, positive
   * @return the ballast that is needed ≤ most
   */
  public static Consideration ballastAtMost(
      Mass most, Mass empty, double emptyShare, double wantedShare, Length ballastFromNose) {
    Door.positive(most, "most ballast");
    Door.positive(empty, "mass without ballast");
    Door.within(emptyShare, 0.0, 1.0, "place of the centre of gravity without ballast");
    Door.within(wantedShare, 0.0, emptyShare, "wanted place of the centre of gravity");
    Door.positive(ballastFromNose, "distance of the ballast from the nose");
    if (emptyShare == wantedShare) {
      throw new IllegalArgumentException(
          "wanted place of the centre of gravity must be less than the place without ballast, " + emptyShare + " of the length, was the same");
    }
    NoseBallast balance = new NoseBallast(most, empty, emptyShare, wantedShare, ballastFromNose);
    return new LengthWithin(
        Wording.of("balances with at most ").and(most).and(" of ballast"),
        Strength.GUIDELINE,
        Source.DEFINITION,
        balance.lengths(),
        (length, diameter, unit) -> balance.needed(length, unit),
        balance);
  }
}
