// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FlightPictureTest {
  private static final FlightPicture.Room HALL = new FlightPicture.Room(0.0, 27.0, 7.0);

  /** A wave that comes down at its end, stalled near its top. */
  private static FlightPicture.Path wave(
      String label, double length, double time, double height, double swing, FlightPicture.Style style) {
    List<Double> t = new ArrayList<>();
    List<Double> x = new ArrayList<>();
    List<Double> h = new ArrayList<>();
    List<Boolean> stalled = new ArrayList<>();
    for (int i = 0; i <= 200; i++) {
      double s = i / 200.0;
      t.add(s * time);
      x.add(s * length);
      h.add(Math.max(0.0, height * (1 - s) + swing * Math.sin(7.0 * s) * (1 - s)));
      stalled.add(style == FlightPicture.Style.MAIN && s > 0.3 && s < 0.4);
    }
    return new FlightPicture.Path(label, "lands here", t, x, h, stalled, style);
  }

  private static FlightPicture picture(double length, double time, double height, double swing, FlightPicture.Room room) {
    return new FlightPicture(
        "Thrown level at 6.5 m/s",
        Length.METRE,
        room,
        List.of(
            wave("with pitch", length, time, height, swing, FlightPicture.Style.MAIN),
            wave("as a point", 1.1 * length, time, height, 0.6 * swing, FlightPicture.Style.OTHER)));
  }

  @Test
  void flightsOfAllSizesAreLegible() throws Exception {
    for (long seed = 1; seed <= 150; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double height = random.nextDouble(0.3, 3.0);
      double length = random.nextDouble(0.5, 60.0);
      double swing = random.nextDouble(0.0, 8.0);
      FlightPicture.Room room =
          seed % 2 == 0
              ? FlightPicture.Room.OUTDOORS
              : new FlightPicture.Room(-random.nextDouble(0.0, 3.0), 1.2 * length, height + swing + 0.5);
      List<String> words =
          PictureChecks.isLegible(picture(length, random.nextDouble(0.2, 15.0), height, swing, room).draw(), "seed " + seed)
              .words();
      assertThat(words).as("seed %s", seed).contains("with pitch", "as a point", "stalled", "distance from the launch in m");
    }
  }

  @Test
  void aStalledPieceHasItsOwnLineNotOnlyItsOwnColour() {
    String svg = picture(13, 2.2, 1.5, 1.0, HALL).draw().document();
    assertThat(svg).contains("stroke-dasharray=\"0.7 0.9\"").contains(">stalled<");
    FlightPicture.Path calm = wave("calm", 13, 2.2, 1.5, 0.3, FlightPicture.Style.OTHER);
    String without = new FlightPicture("t", Length.METRE, HALL, List.of(calm)).draw().document();
    assertThat(without).doesNotContain("0.7 0.9").doesNotContain("stalled");
  }

  @Test
  void timeIsMarkedAndTheEndIsNamed() throws Exception {
    List<String> words = new SvgReader(picture(13, 2.2, 1.5, 1.0, HALL).draw()).words();
    assertThat(words).contains("0.5 s", "1 s", "2 s", "lands here");
  }

  @Test
  void figuresAreInTheUnitThatIsAskedFor() throws Exception {
    FlightPicture.Path path = wave("flight", 12, 2, 1.5, 0.5, FlightPicture.Style.MAIN);
    List<String> words =
        new SvgReader(new FlightPicture("t", Length.FOOT, FlightPicture.Room.OUTDOORS, List.of(path)).draw()).words();
    assertThat(words).contains("40", "distance from the launch in ft");
  }

  @Test
  void whatCannotBeDrawnIsRefused() {
    assertThatThrownBy(() -> new FlightPicture("t", Length.METRE, HALL, List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a picture needs at least one flight, got none");
    assertThatThrownBy(() -> new FlightPicture.Room(1, 5, 3)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () ->
                new FlightPicture.Path(
                    "p", "", List.of(0.0, 1.0), List.of(0.0, 1.0), List.of(0.0), List.of(false, false), FlightPicture.Style.MAIN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("got 2, 2, 1 and 2");
  }

  @Test
  void theSameFlightGivesTheSameBytesInEveryLocale() {
    PictureChecks.isStable(() -> picture(13, 2.2, 1.5, 1.0, HALL).draw());
  }
}
