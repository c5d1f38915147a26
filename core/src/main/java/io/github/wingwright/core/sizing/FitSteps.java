// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.function.DoubleUnaryOperator;

/**
 * Margins of what a machine, a nose or a tail end allows as lines of the workings. What was searched for is a solution; its
 * residual comes by another way than the solution did.
 */
final class FitSteps {
  private static final int ANGLES = 720;

  private FitSteps() {}

  /** The machine, from sides and height of its space. */
  static Step machine(Length a, Length b, Length height, int segments, Length joint, Step length, Step diameter) {
    Step piece =
        Step.solution(
            "longest piece of this width",
            "p",
            Length.METRE,
            "the longer of standing, and of lying at the slant that touches all four sides (Newton's method)",
            "p = greatest of h and, over θ, of min((a − d·sin θ)/cos θ, (b − d·cos θ)/sin θ)",
            v -> BuildSpace.longestPiece(v[1], v[2], v[3], v[0]),
            v -> v[4] - byAngles(v[1], v[2], v[3], v[0]),
            Source.fromMemory("W. B. Carver, American Mathematical Monthly 64, 1957", "p. 114"),
            diameter,
            Step.given("side of the bed", "a", a, Source.BRIEF),
            Step.given("other side of the bed", "b", b, Source.BRIEF),
            Step.given("height of the build space", "h", height, Source.BRIEF));
    Step longest =
        Step.of(
            MarginFormulas.SEGMENTED_LENGTH,
            Step.given("pieces", "n", segments, Source.BRIEF),
            piece,
            Step.given("overlap of a joint", "j", joint, Source.BRIEF));
    return Step.of(FitFormulas.LENGTH_IN_HAND, longest, length);
  }

  /** The same piece by trying every slant. */
  private static double byAngles(double a, double b, double height, double width) {
    double standing = width <= Math.min(a, b) ? height : 0.0;
    if (width > Math.min(a, b) || width > height) {
      return standing;
    }
    DoubleUnaryOperator lying =
        t -> Math.min((a - width * Math.sin(t)) / Math.cos(t), (b - width * Math.cos(t)) / Math.sin(t));
    double grid = 0.5 * Math.PI / ANGLES;
    double best = 0.5 * grid;
    for (int i = 1; i < ANGLES; i++) {
      best = lying.applyAsDouble((i + 0.5) * grid) > lying.applyAsDouble(best) ? (i + 0.5) * grid : best;
    }
    double from = best - grid;
    double to = best + grid;
    for (int i = 0; i < 100; i++) {
      double left = from + (to - from) / 3.0;
      double right = to - (to - from) / 3.0;
      if (lying.applyAsDouble(left) < lying.applyAsDouble(right)) {
        from = left;
      } else {
        to = right;
      }
    }
    return Math.max(standing, Math.max(Math.max(a, b), lying.applyAsDouble(0.5 * (from + to))));
  }

  static Step noseRadius(BodyShape shape, Step length, Step diameter, Length least) {
    Step radius =
        Step.solution(
            "radius of curvature at the nose tip",
            "R",
            Length.METRE,
            "twice the value a millionth of the diameter behind the tip less that at two millionths",
            "R = r²/(2·x) as x goes to 0; what is left is the difference from twice as far behind",
            v -> NoseStrength.tipRadius(shape, v[0], v[1], NoseStrength.BEHIND),
            v -> v[2] - NoseStrength.tipRadius(shape, v[0], v[1], 2.0 * NoseStrength.BEHIND),
            Source.DEFINITION,
            length,
            diameter);
    return Step.of(FitFormulas.RADIUS_MARGIN, radius, Step.given("least radius of the nose", "R_min", least, Source.BRIEF));
  }

  static Step twoClosures(BodyShape shape, Step length, Step diameter, double half, Angle top, Angle underside) {
    Step place =
        Step.solution(
            "place where the tail has half the height",
            "x_h",
            Length.METRE,
            "bisection on the aft half",
            "height of the section at x_h is half the greatest",
            v -> TailEnd.aftPlace(shape, v[0], v[1], half * v[1]),
            v -> shape.height(v[2], v[0], v[1]) - half * v[1],
            Source.DEFINITION,
            length,
            diameter);
    return Step.of(
        FitFormulas.TWO_CLOSURES,
        line("slope of the top line there", "k_t", shape, length, diameter, place, 1.0),
        line("slope of the underside there", "k_u", shape, length, diameter, place, -1.0),
        Step.given("greatest closure angle of the top", "β_t", top, Source.BRIEF),
        Step.given("greatest closure angle of the underside", "β_u", underside, Source.BRIEF));
  }

  private static Step line(
      String name, String symbol, BodyShape shape, Step length, Step diameter, Step place, double side) {
    return Step.solution(
        name,
        symbol,
        NamedUnit.NUMBER,
        "central difference over 1/50,000 of the length",
        "k = slope of the line towards the axis; what is left is the difference from five points over 1/250",
        v -> TailEnd.lineSlope(shape, v[0], v[1], v[2], side),
        v -> v[3] - TailEnd.fivePoints(shape, v[0], v[1], v[2], side),
        Source.DEFINITION,
        length,
        diameter,
        place);
  }
}
