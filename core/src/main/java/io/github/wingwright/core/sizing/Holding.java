// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.Optional;

/**
 * Things that must fit into a body of one family.
 *
 * @param leastLength length of the shortest body, as stout as the family goes, that holds them [m]
 */
record Holding(Wording wording, Contents contents, BodyShape shape, double leastLength) implements Worded {

  @Override
  public Strength strength() {
    return Strength.LIMIT;
  }

  @Override
  public Source source() {
    return Source.BRIEF;
  }

  @Override
  public double margin(double length, double diameter) {
    return length < leastLength
        ? FitFormulas.shortOfContents(length, leastLength, diameter, shape.leastFinenessRatio())
        : MarginFormulas.above(diameter, leastDiameter(contents, shape, length));
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    return length < leastLength ? Interval.NONE : Interval.atLeast(leastDiameter(contents, shape, length));
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    boolean tooShort = length < leastLength;
    double miss = tooShort ? leastLength - length : leastDiameter(contents, shape, length) - diameter;
    return quoted(unit)
        + " with contents "
        + Advised.up(miss, unit, 3)
        + (tooShort ? " shorter" : " thinner");
  }

  @Override
  public Optional<Step> workings(Step length, Step diameter) {
    Step wall = contents.wallStep();
    Step clearance = contents.clearanceStep();
    Step gap = contents.gapStep();
    double stoutest = shape.leastFinenessRatio();
    if (length.value() < leastLength) {
      Step least =
          Step.solution(
              "least length for the contents",
              "L_min",
              Length.METRE,
              "bisection of the length of the family's stoutest bodies, everything placed as far forward as it fits",
              "no room is left beside the tightest thing or behind the last one",
              v -> contents.spaced(v[0], v[1], v[2]).stowage().leastLength(shape),
              v -> contents.spaced(v[0], v[1], v[2]).stowage().roomBehind(shape, v[3], v[3] / stoutest),
              Source.library("placed as far forward as it fits"),
              wall,
              clearance,
              gap);
      Step family = Step.given("least fineness ratio of the family", "f_s", stoutest, Source.DEFINITION);
      return Optional.of(Step.of(FitFormulas.SHORT_OF_CONTENTS, length, least, diameter, family));
    }
    Step least =
        Step.solution(
            "least diameter for the contents",
            "d_min",
            Length.METRE,
            "bisection of the diameter, everything placed as far forward as it fits",
            "no room is left beside the tightest thing or behind the last one",
            v -> leastDiameter(contents.spaced(v[1], v[2], v[3]), shape, v[0]),
            v -> contents.spaced(v[1], v[2], v[3]).stowage().roomBehind(shape, v[0], v[4]),
            Source.library("placed as far forward as it fits"),
            length,
            wall,
            clearance,
            gap);
    return Optional.of(Step.of(MarginFormulas.DIAMETER_ABOVE, diameter, least));
  }

  private static double leastDiameter(Contents contents, BodyShape shape, double length) {
    List<int[]> orders = contents.stowage().orders();
    double in = length / shape.leastFinenessRatio();
    double out = 0.0;
    while (in - out > 1e-11 * in) {
      double middle = 0.5 * (in + out);
      if (contents.stowage().fitsAnyhow(shape, length, middle, orders)) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }
}
