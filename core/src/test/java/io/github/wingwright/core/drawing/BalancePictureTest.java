// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static io.github.wingwright.core.drawing.SampleAirframes.mm;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BalancePictureTest {
  private static Svg draw(double cg, double np, Interval allowed) {
    return BalancePicture.draw(mm(60), mm(66), mm(cg), mm(np), allowed, Length.MILLIMETRE);
  }

  @Test
  void marksAnywhereAreLegible() throws Exception {
    List<Interval> bands =
        List.of(Interval.between(0.08, 0.086), Interval.atMost(0.08), Interval.ALL, Interval.NONE, Interval.between(0.2, 0.3));
    for (double cg = 20.0; cg <= 160.0; cg += 7.0) {
      for (double gap : new double[] {-60.0, -9.0, -0.5, 0.0, 0.5, 4.0, 40.0}) {
        for (Interval band : bands) {
          PictureChecks.isLegible(draw(cg, cg + gap, band), "CG " + cg + ", NP " + (cg + gap) + ", " + band);
        }
      }
    }
  }

  @Test
  void stationsAreGivenAlongTheBodyAndInPercentOfTheChord() throws Exception {
    assertThat(new SvgReader(draw(85, 93, Interval.between(0.08, 0.086))).words())
        .contains(
            "centre of gravity 85 mm (37.9 %)", "neutral point 93 mm (50 %)", "centre of gravity allowed: 80 to 86 mm");
  }

  @Test
  void barsBelowAreLegibleWhereverTheyLie() throws Exception {
    BalancePicture.Kind[] kinds = BalancePicture.Kind.values();
    for (long seed = 1; seed <= 100; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<BalancePicture.Bar> bars = new ArrayList<>();
      for (int i = random.nextInt(1, 7); i > 0; i--) {
        double from = random.nextInt(5) == 0 ? Double.NEGATIVE_INFINITY : random.nextDouble(0.02, 0.2);
        double to = random.nextInt(5) == 0 ? Double.POSITIVE_INFINITY : random.nextDouble(0.02, 0.2);
        Interval places = random.nextInt(9) == 0 ? Interval.NONE : Interval.between(Math.min(from, to), Math.max(from, to));
        bars.add(new BalancePicture.Bar("a range with a name of some length " + i, places, kinds[random.nextInt(3)]));
      }
      Svg svg =
          BalancePicture.draw(
              mm(60), mm(66), mm(random.nextDouble(20, 160)), mm(random.nextDouble(20, 160)), Interval.between(0.08, 0.086), bars, Length.MILLIMETRE);
      PictureChecks.isLegible(svg, "seed " + seed);
    }
  }

  @Test
  void aBarTellsItsEnds() throws Exception {
    List<BalancePicture.Bar> bars =
        List.of(
            new BalancePicture.Bar("trim", Interval.atLeast(0.064), BalancePicture.Kind.LIMIT),
            new BalancePicture.Bar("first flights", Interval.between(0.085, 0.093), BalancePicture.Kind.GUIDELINE));
    assertThat(new SvgReader(BalancePicture.draw(mm(60), mm(66), mm(85), mm(93), Interval.ALL, bars, Length.MILLIMETRE)).words())
        .contains("trim: at least 64 mm", "first flights: 85 to 93 mm");
  }

  @Test
  void theSameBalanceGivesTheSameBytesInEveryLocale() {
    PictureChecks.isStable(() -> draw(85.25, 93, Interval.between(0.08, 0.086)));
  }
}
