// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.core.sizing.Considerations;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RegionPictureTest {
  private static final Interval LENGTHS = Interval.between(0.05, 0.6);
  private static final Interval DIAMETERS = Interval.between(0.002, 0.3);

  private static FeasibleRegion region(Weighed... considerations) {
    return FeasibleRegion.of(List.of(considerations), LENGTHS, DIAMETERS, Length.MILLIMETRE);
  }

  private static Weighed chosen(Consideration consideration) {
    return new Weighed(consideration, Decision.chosen());
  }

  private static Consideration volume(double cubicCentimetres) {
    return Considerations.enclosing(
            Volume.cubicCentimetres(cubicCentimetres), Considerations.packingFraction(0.7))
        .on(BodyShape.capsule());
  }

  @Test
  void seededRegionsAreLegibleWhetherOrNotAnythingIsLeft() throws Exception {
    int empty = 0;
    for (long seed = 1; seed <= 150; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<Weighed> all = new ArrayList<>();
      int count = random.nextInt(0, 10);
      for (int i = 0; i < count; i++) {
        all.add(new Weighed(random(random), decision(random)));
      }
      FeasibleRegion region = FeasibleRegion.of(all, LENGTHS, DIAMETERS, Length.MILLIMETRE);
      empty += region.isEmpty() ? 1 : 0;
      List<RegionPicture.Mark> marks = new ArrayList<>();
      for (int i = random.nextInt(3); i > 0; i--) {
        double length = random.nextDouble(0.04, 0.7);
        double diameter = random.nextDouble(0.001, 0.3);
        marks.add(RegionPicture.Mark.choice("chosen for the time being: " + i, length, diameter));
        marks.add(RegionPicture.Mark.best("the cheapest one inside " + i, length, 0.98 * diameter));
      }
      RegionPicture picture = new RegionPicture("length and diameter of the body", region, marks);
      PictureChecks.isLegible(picture.draw(), "seed " + seed);
    }
    assertThat(empty).as("seeds with a clash").isBetween(20, 130);
  }

  private static Consideration random(SplittableRandom random) {
    double f = random.nextDouble(3.0, 12.0);
    return switch (random.nextInt(7)) {
      case 0 -> Considerations.lengthAtMost(Length.metres(random.nextDouble(0.1, 0.5)));
      case 1 -> Considerations.lengthAtLeast(Length.metres(random.nextDouble(0.1, 0.4)));
      case 2 -> Considerations.finenessWithin(f, f + random.nextDouble(0.1, 6.0));
      case 3 -> Considerations.diameterAtLeast(Length.metres(random.nextDouble(0.01, 0.05)));
      case 4 -> Considerations.diameterAtMost(Length.metres(random.nextDouble(0.02, 0.1)));
      case 5 -> volume(random.nextDouble(20.0, 300.0));
      default ->
          Considerations.diameterNear(
              random.nextDouble(1.0, 4.0), Length.metres(random.nextDouble(0.004, 0.02)));
    };
  }

  private static Decision decision(SplittableRandom random) {
    return switch (random.nextInt(5)) {
      case 0 ->
          Decision.notApplicable(
              "the body is a boom and nothing else, whatever anybody says about pods");
      case 1 -> Decision.provisional("the larger printer arrives");
      default -> Decision.chosen();
    };
  }

  @Test
  void everyConsiderationStandsInTheKeyWithItsFate() throws Exception {
    FeasibleRegion region =
        region(
            chosen(Considerations.lengthAtMost(Length.millimetres(300))),
            chosen(Considerations.finenessWithin(6, 10)),
            chosen(Considerations.diameterAtMost(Length.millimetres(200))),
            new Weighed(
                Considerations.diameterAtMost(Length.millimetres(40)),
                Decision.notApplicable("the tube is wider")),
            chosen(volume(60)));
    RegionPicture picture =
        new RegionPicture(
            "length and diameter",
            region,
            List.of(RegionPicture.Mark.choice("chosen: 300 mm × 32 mm", 0.3, 0.032)));
    assertThat(PictureChecks.isLegible(picture.draw(), "five considerations").words())
        .contains(
            "length at most 300 mm: limit, binds",
            "fineness ratio 6 to 10: guideline, binds",
            "diameter at most 200 mm: limit, holds everywhere in the picture",
            "diameter at most 40 mm: limit, set aside because the tube is wider",
            "chosen: 300 mm × 32 mm",
            "length in mm",
            "diameter in mm");
  }

  @Test
  void theKeyTellsALongReasonToItsEnd() throws Exception {
    String reason = "the glider carries nothing; the volume is for a timer that it may carry in a later year, with its battery";
    FeasibleRegion region =
        region(
            chosen(Considerations.lengthAtMost(Length.millimetres(300))),
            new Weighed(volume(20), Decision.notApplicable(reason)),
            chosen(Considerations.finenessWithin(6, 10)));
    Svg svg = new RegionPicture("a long reason", region, List.of()).draw();
    assertThat(String.join(" ", PictureChecks.isLegible(svg, "long reason").words())).contains("because " + reason);
  }

  @Test
  void theBoundariesOfAnEmptyRegionThatClashAreWarmAndTheAdviceStandsBelow() throws Exception {
    FeasibleRegion region =
        region(
            chosen(Considerations.lengthAtMost(Length.millimetres(300))),
            chosen(Considerations.finenessWithin(9, 10)),
            chosen(Considerations.diameterAtLeast(Length.millimetres(40))));
    Svg svg = new RegionPicture("impossible", region, List.of()).draw();
    List<String> words = PictureChecks.isLegible(svg, "clash").words();
    assertThat(words)
        .contains(
            "length at most 300 mm: limit, clashes", "diameter at least 40 mm: limit, clashes");
    assertThat(words)
        .anyMatch(w -> w.startsWith("Nothing is feasible. "))
        .anyMatch(w -> w.startsWith("least concession: "));
    assertThat(svg.document()).contains("stroke=\"" + Pen.WARM + "\" stroke-width=\"0.9\"");
  }

  @Test
  void theHatchingLiesOnTheSideThatIsRefused() throws Exception {
    // A least diameter refuses what lies below it on paper: every stroke leaves the line downwards.
    FeasibleRegion region = region(chosen(Considerations.diameterAtLeast(Length.millimetres(30))));
    RegionPicture picture =
        new RegionPicture("least", region, List.of(RegionPicture.Mark.choice("here", 0.2, 0.04)));
    SvgReader reader = new SvgReader(picture.draw());
    List<double[]> strokes = reader.lines("0.2", Pen.INK);
    assertThat(strokes).hasSizeGreaterThan(20).allMatch(l -> l[3] > l[1]);
  }

  @Test
  void aBodyWithoutSizeIsNoMark() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RegionPicture.Mark.choice("none", 0.3, -0.01))
        .withMessage("marked body must have a positive length and diameter, was 0.3 m × -0.01 m");
  }

  @Test
  void theSameRegionGivesTheSameBytesInEveryLocale() {
    FeasibleRegion region =
        region(chosen(Considerations.finenessWithin(6, 10)), chosen(volume(60)));
    PictureChecks.isStable(() -> new RegionPicture("here", region, List.of()).draw());
  }
}
