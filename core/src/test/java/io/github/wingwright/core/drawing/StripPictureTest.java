// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StripPictureTest {
  /** A swing that dies out or grows. */
  private static CurvePicture.Curve swing(String label, double size, double rate, double damping, double shift, CurvePicture.Style style) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int i = 0; i <= 120; i++) {
      double t = 0.05 * i;
      x.add(t);
      y.add(shift + size * Math.exp(-damping * t) * Math.cos(rate * t));
    }
    return new CurvePicture.Curve(label, x, y, style);
  }

  private static StripPicture picture(SplittableRandom random) {
    List<StripPicture.Strip> strips = new ArrayList<>();
    int count = random.nextInt(1, 5);
    for (int i = 0; i < count; i++) {
      List<CurvePicture.Curve> curves = new ArrayList<>();
      int lines = random.nextInt(1, 4);
      for (int k = 0; k < lines; k++) {
        double size = Math.pow(10.0, random.nextDouble(-6.0, 6.0));
        CurvePicture.Style style = CurvePicture.Style.values()[random.nextInt(4)];
        curves.add(
            swing("motion " + k, size, random.nextDouble(0.5, 9.0), random.nextDouble(-0.2, 2.0), random.nextDouble(-3.0, 3.0) * size, style));
      }
      strips.add(new StripPicture.Strip("quantity " + i + " in units", curves));
    }
    List<StripPicture.Mark> marks = new ArrayList<>();
    for (int i = random.nextInt(0, 4); i > 0; i--) {
      marks.add(new StripPicture.Mark("something happens " + i, random.nextDouble(-1.0, 8.0)));
    }
    return new StripPicture("motion after a disturbance", "time in s", strips, marks);
  }

  @Test
  void motionsOfAnySizeWithMarksAnywhereAreLegible() throws Exception {
    for (long seed = 1; seed <= 150; seed++) {
      PictureChecks.isLegible(picture(new SplittableRandom(seed)).draw(), "seed " + seed);
    }
  }

  @Test
  void aMarkBeyondTheMotionIsNotShown() throws Exception {
    StripPicture.Strip strip = new StripPicture.Strip("angle", List.of(swing("", 1.0, 3.0, 0.2, 0.0, CurvePicture.Style.MAIN)));
    List<StripPicture.Mark> marks = List.of(new StripPicture.Mark("lands", 2.0), new StripPicture.Mark("later", 60.0));
    assertThat(PictureChecks.isLegible(new StripPicture("t", "time in s", List.of(strip), marks).draw(), "marks").words())
        .contains("lands", "angle", "time in s")
        .doesNotContain("later");
  }

  @Test
  void aPictureWithoutStripsAndAStripWithoutCurvesAreRefused() {
    assertThatThrownBy(() -> new StripPicture("t", "x", List.of(), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a picture needs at least one strip, got none");
    assertThatThrownBy(() -> new StripPicture.Strip("y", List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a strip needs at least one curve, got none");
  }

  @Test
  void theSameMotionGivesTheSameBytesInEveryLocale() {
    PictureChecks.isStable(() -> picture(new SplittableRandom(7)).draw());
  }
}
