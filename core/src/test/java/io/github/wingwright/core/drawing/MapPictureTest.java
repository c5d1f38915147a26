// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MapPictureTest {
  private static MapPicture map(int columns, int rows, double scale, List<CurvePicture.Point> marks) {
    List<Double> x = IntStream.range(0, columns).mapToObj(i -> 3.0 + 9.0 * i / (columns - 1)).toList();
    List<Double> y = IntStream.range(0, rows).mapToObj(i -> -2.0 + 10.0 * i / (rows - 1)).toList();
    List<List<Double>> values = new ArrayList<>();
    for (double b : y) {
      values.add(x.stream().map(a -> scale * (a * Math.exp(-0.05 * b * b) + Math.sin(a + b))).toList());
    }
    return new MapPicture("distance", "throw speed in m/s", "decalage in °", "distance in m", x, y, values, marks);
  }

  @Test
  void mapsOfAllSizesWithMarksAnywhereAreLegible() throws Exception {
    for (long seed = 1; seed <= 80; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<CurvePicture.Point> marks = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        marks.add(new CurvePicture.Point("a marked throw " + i, random.nextDouble(3, 12), random.nextDouble(-2, 8)));
      }
      double scale = Math.pow(10.0, random.nextInt(-4, 5));
      MapPicture map = map(random.nextInt(2, 60), random.nextInt(2, 60), scale, marks);
      List<String> words = PictureChecks.isLegible(map.draw(), "seed " + seed).words();
      assertThat(words).as("seed %s", seed).contains("a marked throw 0", "a marked throw 1", "distance in m");
    }
  }

  @Test
  void hatchedCellsOfSeveralKindsAreLegibleAndNamedInTheKey() throws Exception {
    for (int size : new int[] {2, 9, 40, 100}) {
      MapPicture map = map(size, size, 1.0, List.of(new CurvePicture.Point("here", 6.5, 3.0)));
      List<List<Boolean>> cells =
          map.y().stream().map(y -> map.x().stream().map(x -> x > 7.0 && y > 1.0).toList()).toList();
      MapPicture hatched = map.withHatching(cells, "stalls");
      assertThat(PictureChecks.isLegible(hatched.draw(), size + " cells").words()).contains("stalls", "here");
      assertThat(hatched.draw().document().split("<line").length).isGreaterThan(map.draw().document().split("<line").length);
    }
    MapPicture plain = map(40, 24, 1.0, List.of(new CurvePicture.Point("here", 6.5, 3.0)));
    MapPicture all = plain;
    List<String> kinds = List.of("stalls", "dives", "turns over", "meets the ceiling");
    int lines = plain.draw().document().split("<line").length;
    for (String kind : kinds) {
      double from = 4.0 + 2.0 * kinds.indexOf(kind);
      all = all.withHatching(plain.y().stream().map(y -> plain.x().stream().map(x -> x >= from && x < from + 2.0).toList()).toList(), kind);
      int more = all.draw().document().split("<line").length;
      assertThat(more).as(kind).isGreaterThan(lines + 20);
      lines = more;
    }
    assertThat(PictureChecks.isLegible(all.draw(), "four kinds").words()).contains("stalls", "dives", "turns over", "here");
    MapPicture full = all;
    assertThatThrownBy(() -> full.withHatching(full.hatchings().get(0).cells(), "a fifth"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a map has at most 4 hatchings, got 5");
    assertThatThrownBy(() -> map(3, 3, 1.0, List.of()).withHatching(List.of(List.of(true)), "stalls"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("hatching must have as many cells as the map, in as many rows");
  }

  @Test
  void aLevelMapIsLegible() throws Exception {
    List<List<Double>> level = List.of(List.of(2.0, 2.0), List.of(2.0, 2.0));
    MapPicture map = new MapPicture("t", "x", "y", "v", List.of(1.0, 2.0), List.of(1.0, 2.0), level, List.of());
    assertThat(PictureChecks.isLegible(map.draw(), "level").words()).contains("2");
  }

  @Test
  void aMarkOutsideTheMapIsLeftOut() throws Exception {
    MapPicture map = map(20, 20, 1.0, List.of(new CurvePicture.Point("far away", 40, 3)));
    assertThat(new SvgReader(map.draw()).words()).doesNotContain("far away");
  }

  @Test
  void theKeyHasTheLevelsAndTheCellsTheirValues() throws Exception {
    List<List<Double>> rows = List.of(List.of(0.0, 5.0), List.of(10.0, 20.0));
    MapPicture map = new MapPicture("t", "x", "y", "v", List.of(1.0, 2.0), List.of(1.0, 2.0), rows, List.of());
    assertThat(new SvgReader(map.draw()).words()).contains("5", "10", "15", "20");
  }

  @Test
  void aRaggedMapOrOneThatDoesNotRiseIsRefused() {
    List<Double> two = List.of(1.0, 2.0);
    assertThatThrownBy(() -> new MapPicture("t", "x", "y", "v", two, two, List.of(two), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a map needs a row for each of 2 ordinates, got 1");
    assertThatThrownBy(() -> new MapPicture("t", "x", "y", "v", List.of(2.0, 1.0), two, List.of(two, two), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("abscissae of a map must rise, were 2.0 then 1.0");
    assertThatThrownBy(
            () -> new MapPicture("t", "x", "y", "v", two, two, List.of(two, List.of(1.0, Double.NaN)), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("values of a map must be finite, one was not");
  }

  @Test
  void theSameMapGivesTheSameBytesInEveryLocale() {
    PictureChecks.isStable(() -> map(30, 20, 1.0, List.of(new CurvePicture.Point("here", 6.5, 3.0))).draw());
  }
}
