// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import java.util.Objects;

/** The considerations on a wing's chord that come with the library, each with the strength that it usually has. */
public final class WingConsiderations {
  static final Source SECTION = Source.taken("shape of the section");
  private static final Source SMALL_MODELS =
      Source.fromMemory("Carmichael, Low Reynolds Number Airfoil Survey, NASA CR-165803, 1981", "regimes of flow");

  /** Digits of speeds and masses in a name. */
  private static final int SHOWN = 6;

  private WingConsiderations() {}

  /**
   * The wing must be printable where it is thin: a limit, met where the chord is smallest. A wall of one line of a 0.4 mm
   * nozzle is 0.40 to 0.45 mm, one that stands by itself 0.8 mm (guides for filament printing).
   *
   * @param leastWall thinnest wall that the machine makes, positive
   * @param chordFraction where it is measured, 0.5 to 1: beyond it the section may be cut off or rounded
   * @return thickness there ≥ wall
   */
  public static WingConsideration printableTrailingEdge(Length leastWall, double chordFraction) {
    Door.positive(leastWall, "thinnest wall");
    Door.within(chordFraction, 0.5, 1.0, "chord fraction");
    return new WingMargin(
        Wording.of("printable at " + number(100.0 * chordFraction) + " % of the chord: at least ").and(leastWall).and(" thick"),
        Strength.LIMIT,
        Source.BRIEF,
        frame -> {
          double thickness = frame.section().thickness(chordFraction) * frame.leastChordRatio();
          return thickness > 0.0 ? Interval.atLeast(leastWall.si() / thickness) : Interval.NONE;
        },
        (frame, chord) ->
            WingMarginFormulas.above(
                WingMarginFormulas.thickness(
                    frame.section().thickness(chordFraction), WingMarginFormulas.leastChord(frame.taperRatio(), chord)),
                leastWall.si()),
        (frame, chord) ->
            Step.of(
                WingMarginFormulas.THICKNESS_MARGIN,
                Step.of(
                    WingMarginFormulas.LOCAL_THICKNESS,
                    Step.given(
                        "thickness at " + number(100.0 * chordFraction) + " % over the chord of " + frame.section().name(),
                        "τ",
                        frame.section().thickness(chordFraction),
                        SECTION),
                    Step.of(WingMarginFormulas.LEAST_CHORD, taper(frame), chord)),
                Step.given("thinnest wall", "t_min", leastWall, Source.BRIEF)));
  }

  /**
   * The chord must be long enough for the air: a guideline. Below about 50 000 a laminar layer that has separated does not
   * come back on a thick section; thin cambered ones still do tolerably to about 20 000.
   *
   * @param least least Reynolds number on the mean chord, positive
   * @param speed speed of flight, positive
   * @param viscosity kinematic viscosity of the air, positive
   * @return V·c/ν ≥ least
   */
  public static WingConsideration reynoldsNumberAtLeast(double least, Speed speed, KinematicViscosity viscosity) {
    Door.positive(least, "least Reynolds number");
    Door.positive(speed, "speed of flight");
    Door.positive(viscosity, "kinematic viscosity");
    double shortest = least * viscosity.si() / speed.si();
    return new WingMargin(
        Wording.of("Reynolds number at least " + number(least) + " at ").and(speed, 3),
        Strength.GUIDELINE,
        SMALL_MODELS,
        frame -> Interval.atLeast(shortest),
        (frame, chord) ->
            WingMarginFormulas.above(WingMarginFormulas.reynoldsNumber(speed.si(), chord, viscosity.si()), least),
        (frame, chord) ->
            Step.of(
                WingMarginFormulas.REYNOLDS_MARGIN,
                Step.of(
                    WingMarginFormulas.REYNOLDS_NUMBER,
                    Step.given("speed", "V", speed, Source.BRIEF),
                    chord,
                    Step.given("kinematic viscosity", "ν", viscosity, Source.BRIEF)),
                Step.given("least Reynolds number", "Re_min", least, SMALL_MODELS)));
  }

  /**
   * It must fly at the speed it is thrown with: a limit on the loading, with a mass that does not depend on the chord.
   *
   * @param launch speed of the throw, positive
   * @param speedRatio how many times the stall speed the throw must be, at least 1
   * @param usableLift greatest lift coefficient that the wing can use, positive
   * @param density air density, positive
   * @param mass mass of the aircraft, positive
   * @return stall speed · ratio ≤ launch speed
   */
  public static WingConsideration fliesWhenThrown(
      Speed launch, double speedRatio, double usableLift, Density density, Mass mass) {
    Door.positive(mass, "mass");
    double perArea = loadingAtLaunch(launch, speedRatio, usableLift, density);
    Step loading = loadingStep(launch, speedRatio, usableLift, density);
    return new WingMargin(
        Wording.of("flies when launched at ").and(launch, SHOWN).and(" with ").and(mass, SHOWN),
        Strength.LIMIT,
        Source.BRIEF,
        frame -> Interval.atLeast(mass.si() / (perArea * frame.span())),
        (frame, chord) ->
            WingMarginFormulas.above(WingMarginFormulas.massCarried(perArea, frame.span(), chord), mass.si()),
        (frame, chord) ->
            Step.of(
                WingMarginFormulas.MASS_MARGIN,
                Step.of(WingMarginFormulas.MASS_CARRIED, loading, span(frame), chord),
                Step.given("mass", "m", mass, Source.BRIEF)));
  }

  /**
   * It must fly at the speed it is thrown with: a limit on the loading, for a wing whose mass grows with the square of its
   * chord, as one does that is solid or of a given infill. Such a wing can be too large for its thrower as well as too
   * small.
   *
   * <p>With the mean loading w that the launch carries and the wing's mass ρ_w·a·c²·κ·b, where a is the area of the section
   * over chord squared and κ the mean square of the chord over its squared mean:
   *
   * <pre>{@code
   * m_rest + ρ_w·a·κ·b·c² ≤ w·b·c
   * }</pre>
   *
   * @param launch speed of the throw, positive
   * @param speedRatio how many times the stall speed the throw must be, at least 1
   * @param usableLift greatest lift coefficient that the wing can use, positive
   * @param density air density, positive
   * @param rest mass of all but the wing, not negative
   * @param solid mass of the wing over its volume, positive
   * @return stall speed · ratio ≤ launch speed
   */
  public static WingConsideration fliesWhenThrown(
      Speed launch, double speedRatio, double usableLift, Density density, Mass rest, Density solid) {
    Door.notNegative(rest, "mass of all but the wing");
    Door.positive(solid, "density of the wing");
    double perArea = loadingAtLaunch(launch, speedRatio, usableLift, density);
    Step loading = loadingStep(launch, speedRatio, usableLift, density);
    return new WingMargin(
        Wording.of("flies when launched at ").and(launch, SHOWN).and(" with a solid wing"),
        Strength.LIMIT,
        Source.BRIEF,
        frame -> {
          double square = solid.si() * frame.section().area() * frame.meanSquareRatio() * frame.span();
          double linear = perArea * frame.span();
          double root = linear * linear - 4.0 * square * rest.si();
          if (root < 0.0) {
            return Interval.NONE;
          }
          double sum = linear + Math.sqrt(root);
          return Interval.between(2.0 * rest.si() / sum, sum / (2.0 * square));
        },
        (frame, chord) ->
            WingMarginFormulas.above(
                WingMarginFormulas.massCarried(perArea, frame.span(), chord),
                WingMarginFormulas.massWithWing(
                    rest.si(),
                    WingMarginFormulas.solidWing(
                        solid.si(),
                        frame.section().area(),
                        WingMarginFormulas.meanSquareRatio(frame.taperRatio()),
                        frame.span(),
                        chord))),
        (frame, chord) ->
            Step.of(
                WingMarginFormulas.MASS_MARGIN,
                Step.of(WingMarginFormulas.MASS_CARRIED, loading, span(frame), chord),
                Step.of(
                    WingMarginFormulas.MASS_WITH_WING,
                    Step.given("mass of all but the wing", "m_r", rest, Source.BRIEF),
                    Step.of(
                        WingMarginFormulas.SOLID_WING,
                        Step.given("density of the wing", "ρ_w", solid, Source.BRIEF),
                        Step.given(
                            "area of the section over the chord squared", "a", frame.section().area(), SECTION),
                        Step.of(WingMarginFormulas.MEAN_SQUARE_RATIO, taper(frame)),
                        span(frame),
                        chord))));
  }

  private static double loadingAtLaunch(Speed launch, double speedRatio, double usableLift, Density density) {
    Door.positive(launch, "launch speed");
    Door.within(speedRatio, 1.0, 3.0, "launch speed over stall speed");
    Door.positive(usableLift, "usable lift coefficient");
    Door.positive(density, "air density");
    return WingMarginFormulas.loadingAtLaunch(
        density.si(), launch.si(), speedRatio, usableLift, Acceleration.STANDARD_GRAVITY.si());
  }

  private static Step loadingStep(Speed launch, double speedRatio, double usableLift, Density density) {
    return Step.of(
        WingMarginFormulas.LOADING_AT_LAUNCH,
        Step.given("air density", "ρ", density, Source.BRIEF),
        Step.given("launch speed", "V", launch, Source.BRIEF),
        Step.given("launch speed over stall speed", "n", speedRatio, Source.BRIEF),
        Step.given("usable lift coefficient", "C_L", usableLift, Source.BRIEF),
        WingSize.gravity());
  }

  private static Step span(WingFrame frame) {
    return Step.given("span", "b", Length.metres(frame.span()), Source.BRIEF);
  }

  private static Step taper(WingFrame frame) {
    return Step.given("taper ratio", "λ", frame.taperRatio(), Source.BRIEF);
  }

  /**
   * The root must lie on the machine: a limit.
   *
   * @param most longest chord that can be made, positive
   * @return root chord ≤ most
   */
  public static WingConsideration rootChordAtMost(Length most) {
    Door.positive(most, "longest chord");
    return new WingMargin(
        Wording.of("root chord at most ").and(most),
        Strength.LIMIT,
        Source.BRIEF,
        frame -> Interval.atMost(most.si() / frame.rootChordRatio()),
        (frame, chord) ->
            WingMarginFormulas.below(WingMarginFormulas.rootChord(frame.taperRatio(), chord), most.si()),
        (frame, chord) ->
            Step.of(
                WingMarginFormulas.ROOT_CHORD_BELOW,
                Step.of(WingMarginFormulas.ROOT_CHORD, taper(frame), chord),
                Step.given("longest chord", "c_max", most, Source.BRIEF)));
  }

  /**
   * Each half must come out of the machine in so many pieces: a limit that depends on the span alone.
   *
   * @param longestPart longest piece, positive
   * @param most greatest number of pieces in each half, at least 1
   * @return semispan ≤ most·part
   */
  public static WingConsideration piecesOfEachHalf(Length longestPart, int most) {
    Door.positive(longestPart, "longest part");
    if (most < 1) {
      throw new IllegalArgumentException("pieces of each half must be at least 1, was " + most);
    }
    double longest = WingMarginFormulas.spanInPieces(most, longestPart.si());
    return new WingMargin(
        Wording.of("span at most ")
            .and(Length.metres(longest))
            .and(": each half in " + most + " of ")
            .and(longestPart),
        Strength.LIMIT,
        Source.BRIEF,
        frame -> frame.span() <= longest * (1.0 + 1e-12) ? Interval.ALL : Interval.NONE,
        (frame, chord) -> WingMarginFormulas.below(frame.span(), longest),
        (frame, chord) ->
            Step.of(
                WingMarginFormulas.SPAN_BELOW,
                span(frame),
                Step.of(
                    WingMarginFormulas.SPAN_IN_PIECES,
                    Step.given("pieces of each half", "n", most, Source.BRIEF),
                    Step.given("longest part", "p", longestPart, Source.BRIEF))));
  }

  /**
   * An aspect ratio: a guideline.
   *
   * @param least least aspect ratio, positive
   * @param most greatest aspect ratio, at least the least
   * @param source who says so
   * @return least ≤ b²/S ≤ most
   */
  public static WingConsideration aspectRatioWithin(double least, double most, Source source) {
    Objects.requireNonNull(source, "source");
    Door.positive(least, "least aspect ratio");
    Door.positive(most, "greatest aspect ratio");
    if (least > most) {
      throw new IllegalArgumentException("least aspect ratio must not exceed the greatest, was " + least + " and " + most);
    }
    return new WingMargin(
        Wording.of("aspect ratio " + number(least) + " to " + number(most)),
        Strength.GUIDELINE,
        source,
        frame -> Interval.between(frame.span() / most, frame.span() / least),
        (frame, chord) ->
            WingMarginFormulas.between(WingMarginFormulas.aspectRatio(frame.span(), chord), least, most),
        (frame, chord) ->
            Step.of(
                WingMarginFormulas.ASPECT_RATIO_MARGIN,
                Step.of(WingMarginFormulas.ASPECT_RATIO, span(frame), chord),
                Step.given("least aspect ratio", "A_min", least, source),
                Step.given("greatest aspect ratio", "A_max", most, source)));
  }

  /**
   * Room for a spar, a servo or a joint at the root: a limit.
   *
   * @param least least thickness of the root section, positive
   * @return t/c · root chord ≥ least
   */
  public static WingConsideration rootThicknessAtLeast(Length least) {
    Door.positive(least, "least thickness");
    return new WingMargin(
        Wording.of("root at least ").and(least).and(" thick"),
        Strength.LIMIT,
        Source.BRIEF,
        frame ->
            Interval.atLeast(least.si() / (frame.section().maximumThickness() * frame.rootChordRatio())),
        (frame, chord) ->
            WingMarginFormulas.above(
                WingMarginFormulas.thickness(
                    frame.section().maximumThickness(), WingMarginFormulas.rootChord(frame.taperRatio(), chord)),
                least.si()),
        (frame, chord) ->
            Step.of(
                WingMarginFormulas.THICKNESS_MARGIN,
                Step.of(
                    WingMarginFormulas.LOCAL_THICKNESS,
                    Step.given(
                        "thickness over chord of " + frame.section().name(),
                        "τ",
                        frame.section().maximumThickness(),
                        SECTION),
                    Step.of(WingMarginFormulas.ROOT_CHORD, taper(frame), chord)),
                Step.given("least thickness", "t_min", least, Source.BRIEF)));
  }

  private static String number(double value) {
    return NamedUnit.NUMBER.format(value, 4);
  }
}
