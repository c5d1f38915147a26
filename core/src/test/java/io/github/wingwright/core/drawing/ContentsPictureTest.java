// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.drawing.ContentsPicture.Item;
import io.github.wingwright.core.drawing.ContentsPicture.Mark;
import io.github.wingwright.core.drawing.ContentsPicture.SightLine;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ContentsPictureTest {
  private static final Fuselage TUBE =
      new Fuselage(BodyShape.capsule(), Length.millimetres(600), Length.millimetres(90));

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private static ContentsPicture tube(List<Item> items, List<SightLine> lines, List<Mark> marks) {
    return new ContentsPicture(
        "a tube", BodyProfile.of(TUBE).withWall(mm(1.5)), items, lines, marks, Length.MILLIMETRE);
  }

  @Test
  void seededLayoutsFromTheSizeOfAHandToThatOfAHallAreLegibleAndLoseNoName() throws Exception {
    for (long seed = 1; seed <= 120; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double length = Math.pow(10.0, random.nextDouble(1.6, 4.3));
      double diameter = length / random.nextDouble(3.0, 14.0);
      BodyShape shape =
          random.nextBoolean()
              ? BodyShape.capsule()
              : BodyShape.of(EndProfile.halfEllipsoid(), 1.2, EndProfile.cone(), 1.5);
      BodyProfile body =
          BodyProfile.of(new Fuselage(shape, mm(length), mm(diameter)))
              .withWall(mm(0.02 * diameter));
      List<Item> items = new ArrayList<>();
      List<String> names = new ArrayList<>();
      int count = random.nextInt(1, 7);
      for (int i = 0; i < count; i++) {
        String name = "thing " + i + " of " + random.nextInt(100) + " g";
        names.add(name);
        double front = length * (0.1 + 0.75 * i / count);
        double long1 = 0.6 * length / count * random.nextDouble(0.2, 1.0);
        double high = diameter * random.nextDouble(0.2, 0.8);
        Item item =
            switch (random.nextInt(4)) {
              case 0 -> Item.box(name, mm(front), Length.ZERO, mm(long1), mm(high));
              case 1 -> Item.cylinder(name, mm(front), Length.ZERO, mm(long1), mm(high));
              case 2 -> Item.sphere(name, mm(front), Length.ZERO, mm(Math.min(long1, high)));
              default -> Item.seat(name, mm(front), mm(-0.4 * diameter), mm(long1), mm(high));
            };
        items.add(random.nextBoolean() ? item : item.withClearance(mm(0.04 * diameter)));
      }
      List<SightLine> lines =
          random.nextInt(3) == 0
              ? List.of()
              : List.of(
                  SightLine.vision(
                      "10° over the nose",
                      mm(0.4 * length),
                      mm(0.3 * diameter),
                      Angle.degrees(10),
                      mm(-0.1 * length)),
                  SightLine.ground("ground", mm(-diameter), mm(-0.1 * length), mm(1.05 * length)),
                  SightLine.rotation(
                      "rotation 12°",
                      mm(0.5 * length),
                      mm(-diameter),
                      Angle.degrees(12),
                      mm(1.05 * length)));
      lines.forEach(line -> names.add(line.label()));
      List<Mark> marks =
          List.of(
              Mark.centreOfGravity(
                  "contents at " + seed, mm(random.nextDouble(0.2, 0.6) * length), Length.ZERO));
      names.add("contents at " + seed);
      BodyProfile swept = random.nextBoolean() ? body : body.withUpsweep(0.6, Angle.degrees(8));
      ContentsPicture picture =
          new ContentsPicture("layout " + seed, swept, items, lines, marks, Length.MILLIMETRE);
      assertThat(PictureChecks.isLegible(picture.draw(), "seed " + seed).words())
          .as("seed %s", seed)
          .containsAll(names);
    }
  }

  @Test
  void theLineOfRotationRisesByItsAngleFromTheWheelAndTheSightFallsByItsOwn() {
    SightLine rotation = SightLine.rotation("", mm(2000), mm(-900), Angle.degrees(12), mm(6000));
    // 4 m · tan 12° = 4 · 0.2125566 = 0.8502262 m above the ground.
    assertThat(rotation.toZ().metres()).isCloseTo(-0.9 + 0.8502262, within(1e-7));
    SightLine sight = SightLine.vision("", mm(2000), mm(500), Angle.degrees(10), mm(-1000));
    // 3 m · tan 10° = 3 · 0.1763270 = 0.5289809 m below the eye.
    assertThat(sight.toZ().metres()).isCloseTo(0.5 - 0.5289809, within(1e-7));
  }

  @Test
  void figuresScaleAndNamesStandOnTheSheet() throws Exception {
    Item box = Item.box("battery", mm(60), Length.ZERO, mm(200), mm(40)).withClearance(mm(3));
    assertThat(
            PictureChecks.isLegible(tube(List.of(box), List.of(), List.of()).draw(), "box").words())
        .contains("a tube", "600", "90", "battery", "side view, scale 1 : 5, dimensions in mm");
  }

  @Test
  void aBoxIsDrawnToScale() {
    Item box = Item.box("", mm(60), Length.ZERO, mm(200), mm(40));
    // 200 mm × 40 mm at 1 : 5.
    assertThat(tube(List.of(box), List.of(), List.of()).draw().document())
        .contains("width=\"40\" height=\"8\"");
  }

  @Test
  void anUpsweepRaisesTheTailAndNotTheNose() {
    BodyProfile swept = BodyProfile.of(TUBE).withUpsweep(0.5, Angle.degrees(10));
    assertThat(swept.centre(0.25)).isEqualTo(0.0);
    // 0.3 m · tan 10°
    assertThat(swept.centre(0.6)).isCloseTo(0.0528981, within(1e-7));
  }

  @Test
  void anItemWithoutSizeIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Item.box("none", mm(60), Length.ZERO, mm(0), mm(40)))
        .withMessageContaining("length of the item must be positive");
  }

  @Test
  void theSameContentsGiveTheSameBytesInEveryLocale() {
    Item box = Item.sphere("camera", mm(60), Length.ZERO, mm(40));
    PictureChecks.isStable(() -> tube(List.of(box), List.of(), List.of()).draw());
  }
}
