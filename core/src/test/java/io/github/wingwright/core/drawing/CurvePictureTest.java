// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CurvePictureTest {
  /** A sink rate that grows with the cube of the speed and falls with its inverse. */
  private static double sink(double speed, double factor) {
    return -factor * (0.0025 * speed * speed * speed + 2.2 / speed);
  }

  private static CurvePicture.Curve curve(String label, double factor, CurvePicture.Style style) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int i = 0; i <= 40; i++) {
      double speed = 4.0 + 0.2 * i;
      x.add(speed);
      y.add(sink(speed, factor));
    }
    return new CurvePicture.Curve(label, x, y, style);
  }

  private static CurvePicture polar(List<CurvePicture.Point> points) {
    List<CurvePicture.Curve> curves =
        List.of(
            curve("", 1.0, CurvePicture.Style.MAIN),
            curve("attached", 0.85, CurvePicture.Style.EDGE),
            curve("separated", 1.2, CurvePicture.Style.EDGE));
    return new CurvePicture("glide polar", "speed in m/s", "vertical speed in m/s", curves, points);
  }

  @Test
  void pointsCloseTogetherKeepTheirLabelsApart() throws Exception {
    for (long seed = 1; seed <= 100; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<CurvePicture.Point> points = new ArrayList<>();
      double start = random.nextDouble(4.0, 11.0);
      for (int i = 0; i < 4; i++) {
        double speed = start + random.nextDouble(0.0, 1.0);
        points.add(new CurvePicture.Point("marked point " + i, speed, sink(speed, 1.0)));
      }
      List<String> words = PictureChecks.isLegible(polar(points).draw(), "seed " + seed).words();
      assertThat(words).as("seed %s", seed).contains("marked point 0", "marked point 3", "attached", "separated");
    }
  }

  @Test
  void aLevelCurveAndHugeAndTinyValuesAreLegible() throws Exception {
    for (double scale : new double[] {1e-6, 1e-3, 1.0, 1e5, 1e8}) {
      List<Double> x = List.of(0.0, scale, 2.0 * scale);
      CurvePicture.Curve level = new CurvePicture.Curve("level", x, List.of(scale, scale, scale), CurvePicture.Style.OTHER);
      CurvePicture picture = new CurvePicture("level", "x", "y", List.of(level), List.of());
      PictureChecks.isLegible(picture.draw(), "scale " + scale);
    }
  }

  @Test
  void aBandBehindTheCurvesIsNamed() throws Exception {
    List<Double> x = List.of(4.0, 8.0, 12.0);
    CurvePicture.Band band = new CurvePicture.Band("likely", x, List.of(-1.5, -2.0, -5.0), List.of(-0.5, -1.0, -4.0));
    CurvePicture picture =
        new CurvePicture("t", "x", "y", List.of(curve("stall", 1.0, CurvePicture.Style.LIMIT)), List.of(), List.of(band));
    assertThat(PictureChecks.isLegible(picture.draw(), "band").words()).contains("likely", "stall");
    assertThatThrownBy(() -> new CurvePicture.Band("b", x, List.of(1.0), List.of(2.0, 3.0, 4.0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a band needs as many lower and upper values as x, at least two, got 3, 1 and 3");
  }

  @Test
  void aPictureWithoutCurvesOrWithARaggedOneIsRefused() {
    assertThatThrownBy(() -> new CurvePicture("t", "x", "y", List.of(), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a picture needs at least one curve, got none");
    assertThatThrownBy(() -> new CurvePicture.Curve("c", List.of(1.0, 2.0), List.of(1.0), CurvePicture.Style.MAIN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a curve needs as many x as y, at least two, got 2 and 1");
  }

  @Test
  void theSameCurvesGiveTheSameBytesInEveryLocale() {
    PictureChecks.isStable(() -> polar(List.of(new CurvePicture.Point("here", 5.25, -1.5))).draw());
  }
}
