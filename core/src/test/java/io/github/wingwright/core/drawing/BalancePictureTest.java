// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static io.github.wingwright.core.drawing.SampleAirframes.mm;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
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
  void theSameBalanceGivesTheSameBytesInEveryLocale() {
    PictureChecks.isStable(() -> draw(85.25, 93, Interval.between(0.08, 0.086)));
  }
}
