// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static io.github.wingwright.core.drawing.SampleAirframes.mm;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ThreeViewTest {
  private static final List<ThreeView.Mark> MARKS =
      List.of(new ThreeView.Mark(mm(85), "CG", true), new ThreeView.Mark(mm(92), "NP", false));

  private static String figure(Length length, NamedUnit<Length> unit) {
    return NamedUnit.NUMBER.format(unit.fromSi(length.si()), 4);
  }

  /** Every dimension that a drawing of an airframe must carry. */
  private static List<String> dimensions(Airframe airframe, NamedUnit<Length> unit) {
    Wing wing = airframe.wing();
    List<String> expected = new ArrayList<>();
    expected.add(figure(wing.planform().span(), unit));
    expected.add(figure(wing.planform().rootChord(), unit));
    expected.add(figure(wing.planform().tipChord(), unit));
    expected.add(figure(wing.placement().x(), unit));
    expected.add(figure(airframe.fuselage().length(), unit));
    expected.add("Ø " + figure(airframe.fuselage().diameter(), unit));
    for (Tail tail : airframe.tails()) {
      expected.add(figure(tail.planform().span(), unit));
      expected.add(figure(tail.planform().rootChord(), unit));
      expected.add(figure(tail.planform().tipChord(), unit));
    }
    airframe.horizontalTail().ifPresent(tail -> expected.add(figure(tail.armFrom(wing), unit)));
    return expected;
  }

  @Test
  void everyDimensionStandsOnTheSheetAsTheAirframeHasIt() throws Exception {
    Airframe glider = SampleAirframes.glider();
    List<String> words = new SvgReader(ThreeView.draw(glider, "glider", Length.MILLIMETRE, MARKS)).words();
    assertThat(words).containsAll(dimensions(glider, Length.MILLIMETRE));
    assertThat(words).contains("460", "80", "52", "61", "250", "Ø 28", "150", "8.5°", "CG", "NP");
    assertThat(words).contains("scale 1 : 5 · dimensions in mm · third-angle projection");
  }

  /** A V-tail at 35°: its span as seen from above in plan, its height tan Γ times half of it in the other views. */
  @Test
  void aVTailRisesInFrontAndSideViewAndIsProjectedInPlan() throws Exception {
    Airframe plain = SampleAirframes.glider();
    Tail level = plain.horizontalTail().orElseThrow();
    Tail v =
        new Tail(Tail.Role.V, level.planform().withDihedral(Angle.degrees(35)), level.section(), level.placement(),
            Angle.ZERO);
    Airframe airframe = new Airframe(plain.fuselage(), plain.wing(), List.of(v));
    SvgReader reader =
        PictureChecks.isLegible(ThreeView.draw(airframe, "V-tail", Length.MILLIMETRE, MARKS), "V-tail");
    assertThat(reader.words()).contains("V-tail", "dihedral of the V-tail", "35°").containsAll(List.of(
        figure(level.planform().span(), Length.MILLIMETRE), "150"));
    double rise = 0.5 * level.planform().span().millimetres() * Math.tan(Math.toRadians(35)) / 5;
    double half = 0.5 * level.planform().span().millimetres() / 5;
    List<double[]> points = reader.points();
    assertThat(points).as("front view").anyMatch(a -> points.stream().anyMatch(
        b -> Math.abs(b[0] - a[0] - half) < 0.02 && Math.abs(a[1] - b[1] - rise) < 0.02));
  }

  @Test
  void figuresFollowTheUnit() throws Exception {
    Airframe glider = SampleAirframes.glider();
    List<String> words = new SvgReader(ThreeView.draw(glider, "glider", Length.INCH, MARKS)).words();
    assertThat(words).containsAll(dimensions(glider, Length.INCH));
    assertThat(words).contains("18.11", "Ø 1.102");
  }

  @Test
  void seededAirframesAreLegibleAndFullyDimensioned() throws Exception {
    for (long seed = 1; seed <= 120; seed++) {
      Airframe airframe = SampleAirframes.random(seed);
      NamedUnit<Length> unit = seed % 3 == 0 ? Length.INCH : seed % 3 == 1 ? Length.MILLIMETRE : Length.METRE;
      double length = airframe.fuselage().length().si();
      List<ThreeView.Mark> marks =
          List.of(
              new ThreeView.Mark(Length.metres(0.34 * length), "CG", true),
              new ThreeView.Mark(Length.metres(0.35 * length), "CG aft limit", true),
              new ThreeView.Mark(Length.metres(0.37 * length), "NP", seed % 2 == 0));
      Svg svg = ThreeView.draw(airframe, "airframe " + seed, unit, marks);
      List<String> words = PictureChecks.isLegible(svg, "seed " + seed).words();
      List<String> expected = dimensions(airframe, unit);
      if (airframe.wing().placement().x().si() == 0.0) {
        expected.remove("0");
      }
      assertThat(words).as("seed %s", seed).containsAll(expected).contains("CG", "CG aft limit", "NP");
      assertThat(words).as("seed %s", seed).anyMatch(w -> w.endsWith("°"));
    }
  }

  @Test
  void theLengthOfTheSpanDimensionIsTheSpanAtTheScaleOfTheSheet() throws Exception {
    // 460 mm at 1 : 5 are 92 mm: twice on the sheet, in the front view and across the tips of the plan.
    SvgReader reader = new SvgReader(ThreeView.draw(SampleAirframes.glider(), "glider", Length.MILLIMETRE, List.of()));
    List<double[]> points = reader.points();
    assertThat(points).anyMatch(a -> points.stream().anyMatch(b -> a[1] == b[1] && Math.abs(b[0] - a[0] - 92.0) < 0.011));
    assertThat(points).anyMatch(a -> points.stream().anyMatch(b -> a[0] == b[0] && Math.abs(b[1] - a[1] - 92.0) < 0.011));
  }

  @Test
  void theScaleIsARecommendedOneAndTheSheetNoLargerThanPromised() {
    for (long seed = 1; seed <= 40; seed++) {
      Svg svg = ThreeView.draw(SampleAirframes.random(seed), "airframe", Length.METRE, List.of());
      assertThat(svg.width()).as("width of seed %s", seed).isBetween(120.0, 250.0);
      assertThat(svg.height()).as("height of seed %s", seed).isBetween(60.0, 240.0);
    }
  }

  @Test
  void theSameAirframeGivesTheSameBytesInEveryLocale() {
    Airframe glider = SampleAirframes.glider();
    PictureChecks.isStable(() -> ThreeView.draw(glider, "glider", Length.MILLIMETRE, MARKS));
  }

  @Test
  void aHostileTitleIsShownAndNothingElse() throws Exception {
    String hostile = "</text><script>alert('1')</script> & \"quoted\" \u0001 ]]>";
    SvgReader reader =
        PictureChecks.isLegible(ThreeView.draw(SampleAirframes.glider(), hostile, Length.MILLIMETRE, MARKS), "hostile");
    assertThat(reader.title()).contains("<script>alert('1')</script> & \"quoted\" \uFFFD ]]>");
    assertThat(String.join(" ", reader.words())).contains("<script>alert('1')</script>");
  }

  @Test
  void aLongTitleIsBrokenOrCutAtTheWidthOfTheSheet() throws Exception {
    String title = "a name that goes on and on ".repeat(30);
    PictureChecks.isLegible(ThreeView.draw(SampleAirframes.glider(), title, Length.MILLIMETRE, MARKS), "long title");
  }
}
