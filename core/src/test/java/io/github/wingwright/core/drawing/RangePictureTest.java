// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RangePictureTest {
  private static final Source LONG =
      Source.fromMemory("Several Authors With Long Names, A Handbook in Two Volumes, 3rd edition, 1998", "eq. 12.34, p. 567");

  private static FeasibleRange diameter(Bound... bounds) {
    return FeasibleRange.of("fuselage diameter", Length.MILLIMETRE, List.of(bounds));
  }

  private static Bound bound(String name, Interval interval) {
    return Bound.of(name, Strength.LIMIT, Source.BRIEF, interval);
  }

  @Test
  void seededRangesAreLegible() throws Exception {
    for (long seed = 1; seed <= 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<Bound> bounds = new ArrayList<>();
      int count = random.nextInt(1, 10);
      for (int i = 0; i < count; i++) {
        bounds.add(random(random, i));
      }
      FeasibleRange range = FeasibleRange.of("fuselage diameter", Length.MILLIMETRE, bounds);
      String label = seed % 2 == 0 ? "chosen: 28 mm" : "chosen against all advice, for the time being: 28 mm";
      PictureChecks.isLegible(RangePicture.draw(range, random.nextDouble(0.0, 0.08), label), "seed " + seed);
    }
  }

  private static Bound random(SplittableRandom random, int i) {
    double low = random.nextDouble(0.005, 0.05);
    Source source = random.nextBoolean() ? LONG : Source.COMMON_PRACTICE;
    String name = "consideration " + i + (random.nextBoolean() ? "" : " with a name that does not fit on one line of the label");
    Bound bound =
        switch (random.nextInt(6)) {
          case 0 -> Bound.of(name, Strength.LIMIT, source, Interval.atLeast(low));
          case 1 -> Bound.of(name, Strength.LIMIT, source, Interval.atMost(low));
          case 2 -> Bound.of(name, Strength.GUIDELINE, source, Interval.between(low, low + random.nextDouble(0.0, 0.03)));
          case 3 -> Bound.of(name, Strength.GUIDELINE, source, Interval.NONE);
          case 4 -> Bound.of(name, Strength.LIMIT, source, Interval.ALL);
          default -> Bound.target(name, source, low);
        };
    return switch (random.nextInt(4)) {
      case 0 -> bound.under(Decision.notApplicable("the body is a boom"));
      case 1 -> bound.under(Decision.provisional("the larger printer arrives"));
      default -> bound;
    };
  }

  @Test
  void endsFeasiblePartAndChoiceStandInWords() throws Exception {
    FeasibleRange range = diameter(bound("holds the load", Interval.atLeast(0.0227)), bound("printer", Interval.between(0.02, 0.036)));
    assertThat(new SvgReader(RangePicture.draw(range, 0.028, "chosen: 28 mm")).words())
        .contains("fuselage diameter", "holds the load", "limit · the brief", "22.7", "20", "36", "22.7 to 36 mm", "chosen: 28 mm");
  }

  @Test
  void aClashSaysByHowMuch() throws Exception {
    FeasibleRange range = diameter(bound("more", Interval.atLeast(0.03)), bound("less", Interval.atMost(0.024)));
    assertThat(new SvgReader(RangePicture.draw(range, 0.028, "28 mm")).words()).contains("feasible: nothing", "apart by 6 mm");
  }

  @Test
  void aDimensionlessRangeIsCalledSo() throws Exception {
    FeasibleRange range = FeasibleRange.of("aspect ratio", NamedUnit.NUMBER, List.of(bound("span", Interval.between(6, 9))));
    assertThat(PictureChecks.isLegible(RangePicture.draw(range, 7.5, "7.5"), "numbers").words()).contains("dimensionless", "6", "9");
  }

  @Test
  void theSameRangeGivesTheSameBytesInEveryLocale() {
    FeasibleRange range = diameter(bound("holds the load", Interval.atLeast(0.0227)));
    PictureChecks.isStable(() -> RangePicture.draw(range, 0.028, "chosen: 28 mm"));
  }
}
