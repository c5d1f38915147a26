// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DragCurvePictureTest {
  private static final String METHOD =
      "friction: laminar plate; form factor: spheroid of a handbook with a long name";

  /** Drag a·x + b/x with its least 2·√(a·b) at √(b/a); within 1 % where x/x₀ + x₀/x is at most 2.02. */
  private static DragCurvePicture.Curve curve(String label, double a, double b, boolean falling) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int i = 0; i <= 60; i++) {
      double at = 10.0 + 30.0 * (falling ? 60 - i : i) / 60.0;
      x.add(at);
      y.add(a * at + b / at);
    }
    double best = Math.max(10.0, Math.min(40.0, Math.sqrt(b / a)));
    double ratio = 1.01 + Math.sqrt(1.01 * 1.01 - 1.0);
    Interval within = Interval.between(Math.max(10.0, best / ratio), Math.min(40.0, best * ratio));
    DragCurvePicture.Shape shape =
        best == 10.0 || best == 40.0 ? DragCurvePicture.Shape.AT_END : DragCurvePicture.Shape.SHARP;
    return new DragCurvePicture.Curve(
        label, x, y, new DragCurvePicture.Least(best, a * best + b / best, within, shape));
  }

  private static DragCurvePicture picture(
      List<DragCurvePicture.Curve> curves, CurvePicture.Point... points) {
    return new DragCurvePicture(
        "drag and diameter", METHOD, "diameter in mm", "drag area in cm²", curves, List.of(points));
  }

  @Test
  void seededCurvesAreLegibleAndNoLabelIsLost() throws Exception {
    for (long seed = 1; seed <= 100; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double b = random.nextDouble(0.0, 3.0);
      List<DragCurvePicture.Curve> curves =
          List.of(
              curve("length 300 mm", 0.002, b, random.nextBoolean()),
              curve("volume 100 cm³", random.nextDouble(0.001, 0.01), b, random.nextBoolean()),
              curve(
                  "section 28 mm",
                  random.nextDouble(0.001, 0.01),
                  random.nextDouble(0.0, 3.0),
                  false));
      double at = random.nextDouble(10.0, 40.0);
      CurvePicture.Point chosen = new CurvePicture.Point("chosen: 28 mm", at, 0.002 * at + b / at);
      List<String> words =
          PictureChecks.isLegible(picture(curves, chosen).draw(), "seed " + seed).words();
      assertThat(words)
          .as("seed %s", seed)
          .contains("length 300 mm", "volume 100 cm³", "section 28 mm", "chosen: 28 mm", METHOD);
    }
  }

  @Test
  void theLeastSaysHowItLiesAndTheBroadPartEndsWhereOnePerCentDoes() throws Exception {
    // a = 0.005 and b = 2: the least 0.2 at 20, within 1 % from 20/1.151789 to 20·1.151789.
    Svg svg = picture(List.of(curve("volume", 0.005, 2.0, false))).draw();
    SvgReader reader = PictureChecks.isLegible(svg, "one curve");
    assertThat(reader.words()).contains("sharp: least at 20, within 1 % from 17.4 to 23");
    List<double[]> broad = reader.lines("2.6", Pen.WARM_TINT);
    List<double[]> grid = reader.lines("0.15", "#d5dbdf");
    // Two vertical grid lines, 15 and 20 or 10 and 20: their spacing scales the paper.
    List<Double> figures =
        reader.words().stream().filter(w -> w.matches("[1-4][05]")).map(Double::valueOf).toList();
    List<double[]> vertical = grid.stream().filter(l -> l[0] == l[2]).toList();
    double scale = (vertical.get(1)[0] - vertical.get(0)[0]) / (figures.get(1) - figures.get(0));
    double from = figures.get(0) + (broad.get(0)[0] - vertical.get(0)[0]) / scale;
    double to = figures.get(0) + (broad.get(broad.size() - 1)[2] - vertical.get(0)[0]) / scale;
    assertThat(from).isCloseTo(20.0 / 1.1517891, within(0.01));
    assertThat(to).isCloseTo(20.0 * 1.1517891, within(0.01));
  }

  @Test
  void aLeastAtTheEndIsCalledSo() throws Exception {
    Svg svg = picture(List.of(curve("length", 0.005, 0.0, true))).draw();
    assertThat(PictureChecks.isLegible(svg, "at the end").words())
        .contains("falls all the way to 10");
  }

  @Test
  void aPictureWithoutCurvesIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> picture(List.of()))
        .withMessage("a picture needs at least one curve, got none");
  }

  @Test
  void theSameCurvesGiveTheSameBytesInEveryLocale() {
    PictureChecks.isStable(() -> picture(List.of(curve("length", 0.005, 2.0, false))).draw());
  }
}
