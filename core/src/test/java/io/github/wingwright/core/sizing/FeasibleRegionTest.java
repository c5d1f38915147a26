// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Conflict;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.FeasibleRegion.Point;
import io.github.wingwright.core.basis.FeasibleRegion.Side;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FeasibleRegionTest {
  private static final Interval LENGTHS = Interval.between(0.05, 0.6);
  private static final Interval DIAMETERS = Interval.between(0.002, 0.3);

  private static FeasibleRegion region(List<Consideration> set) {
    List<Weighed> weighed = set.stream().map(c -> new Weighed(c, Decision.chosen())).toList();
    return FeasibleRegion.of(weighed, LENGTHS, DIAMETERS, Length.MILLIMETRE);
  }

  private static String name(Side side) {
    return side.boundBy().map(w -> w.consideration().name()).orElse("window");
  }

  @Test
  void a_region_between_straight_lines_has_the_corners_of_a_hand_calculation() {
    FeasibleRegion region =
        region(
            List.of(
                Considerations.lengthAtMost(Length.millimetres(300)),
                Considerations.finenessWithin(6, 10),
                Considerations.diameterAtMost(Length.millimetres(40)),
                Considerations.diameterAtLeast(Length.millimetres(20))));
    assertThat(region.outlines()).hasSize(1);
    List<Side> sides = region.outlines().get(0).sides();
    assertThat(sides)
        .extracting(FeasibleRegionTest::name)
        .containsExactly(
            "diameter at least 20 mm",
            "fineness ratio 6 to 10",
            "length at most 300 mm",
            "diameter at most 40 mm",
            "fineness ratio 6 to 10");
    List<Point> corners = region.outlines().get(0).polygon();
    double[][] expected = {{120, 20}, {200, 20}, {300, 30}, {300, 40}, {240, 40}};
    assertThat(corners).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      assertThat(corners.get(i).length() * 1000).isCloseTo(expected[i][0], within(1e-9));
      assertThat(corners.get(i).diameter() * 1000).isCloseTo(expected[i][1], within(1e-9));
    }
    // Trapezia by hand: from 120 to 200 mm, to 240 mm and to 300 mm of length.
    double area = 0.5 * 80 * (200.0 / 6 - 20) + 0.5 * 40 * (200.0 / 6 - 20 + 16) + 0.5 * 60 * (16 + 10);
    assertThat(region.area() * 1e6).isCloseTo(area, within(1e-6));
    assertThat(region.lengths().lower()).isCloseTo(0.12, within(1e-12));
    assertThat(region.diameters().upper()).isCloseTo(0.04, within(1e-12));
    assertThat(region.conflict()).isEmpty();
  }

  @Test
  void where_nothing_binds_the_window_does() {
    FeasibleRegion region = region(List.of(Considerations.diameterAtLeast(Length.millimetres(20))));
    assertThat(region.outlines().get(0).sides())
        .extracting(FeasibleRegionTest::name)
        .containsExactly("diameter at least 20 mm", "window", "window", "window");
    assertThat(region.area()).isCloseTo(0.55 * 0.28, within(1e-12));
  }

  @Test
  void what_is_set_aside_does_not_bind_and_is_shown() {
    Consideration thick = Considerations.diameterAtLeast(Length.millimetres(400));
    FeasibleRegion region =
        FeasibleRegion.of(
            List.of(new Weighed(thick, Decision.notApplicable("the engine moved outside"))),
            LENGTHS,
            DIAMETERS,
            Length.MILLIMETRE);
    assertThat(region.isEmpty()).isFalse();
    assertThat(region.toString()).contains("set aside because the engine moved outside");
  }

  /** Holds for short and for long bodies, not for those between. */
  private record NotBetween(double from, double to) implements Consideration {
    @Override
    public String name() {
      return "no joint in the rubber band's way";
    }

    @Override
    public Strength strength() {
      return Strength.LIMIT;
    }

    @Override
    public Source source() {
      return Source.BRIEF;
    }

    @Override
    public double margin(double length, double diameter) {
      return Math.max(from - length, length - to);
    }
  }

  @Test
  void a_region_that_falls_apart_has_an_outline_for_each_part() {
    FeasibleRegion region =
        region(List.of(Considerations.finenessWithin(6, 10), new NotBetween(0.2, 0.3)));
    assertThat(region.outlines()).hasSize(2);
    double wedge = (1.0 / 6 - 1.0 / 10) / 2;
    double expected = wedge * (0.2 * 0.2 - 0.05 * 0.05) + wedge * (0.36 - 0.09);
    assertThat(region.area()).isCloseTo(expected, within(1e-4 * expected));
  }

  private static List<Consideration> randomSet(Random random) {
    BodyShape shape = BodyShape.capsule();
    List<Consideration> set = new ArrayList<>();
    double f = 3 + 9 * random.nextDouble();
    set.add(Considerations.finenessWithin(f, f * (1.1 + random.nextDouble())));
    set.add(Considerations.lengthAtMost(Length.metres(0.15 + 0.4 * random.nextDouble())));
    set.add(
        Considerations.enclosing(Volume.cubicCentimetres(5 + 200 * random.nextDouble()), new PackingFraction(0.6))
            .on(shape));
    if (random.nextBoolean()) {
      set.add(Considerations.tailArmAtLeast(Length.metres(0.05 + 0.2 * random.nextDouble()), 0.4));
    }
    if (random.nextBoolean()) {
      set.add(
          Considerations.bendingStiffnessAtLeast(
              FlexuralRigidity.newtonSquareMetres(20 * random.nextDouble() + 0.1),
              ConsiderationsTest.PLA));
    }
    if (random.nextBoolean()) {
      set.add(
          Considerations.tailDeflectionAtMost(
              Force.newtons(0.1 + 5 * random.nextDouble()),
              0.6,
              0.02,
              ConsiderationsTest.PLA));
    }
    if (random.nextBoolean()) {
      set.add(Considerations.diameterAtMost(Length.metres(0.015 + 0.05 * random.nextDouble())));
    }
    return set;
  }

  private static double worst(List<Consideration> set, double length, double diameter) {
    return set.stream().mapToDouble(c -> c.margin(length, diameter)).min().orElseThrow();
  }

  /** The strip between the edges, integrated over the length in 40,000 cuts. */
  private static double areaByCuts(List<Consideration> set) {
    int n = 40_000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double length = LENGTHS.lower() + LENGTHS.width() * (i + 0.5) / n;
      Interval left = DIAMETERS;
      for (Consideration c : set) {
        left = left.intersect(c.diametersAt(length, DIAMETERS));
      }
      sum += left.isEmpty() ? 0 : left.width() * LENGTHS.width() / n;
    }
    return sum;
  }

  @Test
  void the_area_is_that_of_forty_thousand_cuts_to_a_thousandth() {
    Random random = new Random(31);
    int seen = 0;
    for (int k = 0; k < 60; k++) {
      List<Consideration> set = randomSet(random);
      double expected = areaByCuts(set);
      double area = region(set).area();
      // A region of a few cuts is measured badly by cuts.
      if (expected > 1e-5) {
        seen++;
        assertThat(area).as("set %d %s", k, set).isCloseTo(expected, within(1e-3 * expected));
      }
    }
    assertThat(seen).isGreaterThan(20);
  }

  @Test
  void the_polygon_contains_just_the_bodies_that_satisfy_everything() {
    Random random = new Random(32);
    for (int k = 0; k < 40; k++) {
      List<Consideration> set = randomSet(random);
      FeasibleRegion region = region(set);
      for (int i = 0; i < 2_000; i++) {
        double length = LENGTHS.lower() + LENGTHS.width() * random.nextDouble();
        double diameter = DIAMETERS.lower() + 0.1 * random.nextDouble();
        double margin = worst(set, length, diameter);
        assertThat(region.contains(length, diameter)).isEqualTo(margin >= 0);
        if (Math.abs(margin) > 2e-3) {
          boolean inside = region.outlines().stream().anyMatch(o -> encloses(o.polygon(), length, diameter));
          assertThat(inside).as("set %d %s at %s × %s", k, set, length, diameter).isEqualTo(margin > 0);
        }
      }
    }
  }

  /** Counts the edges that a ray upwards crosses. */
  private static boolean encloses(List<Point> polygon, double length, double diameter) {
    boolean inside = false;
    for (int i = 0; i < polygon.size(); i++) {
      Point a = polygon.get(i);
      Point b = polygon.get((i + 1) % polygon.size());
      if ((a.length() > length) != (b.length() > length)) {
        double crossing =
            a.diameter() + (length - a.length()) / (b.length() - a.length()) * (b.diameter() - a.diameter());
        inside ^= crossing > diameter;
      }
    }
    return inside;
  }

  @Test
  void every_point_of_a_side_lies_on_the_boundary_of_who_binds_it() {
    Random random = new Random(33);
    for (int k = 0; k < 40; k++) {
      List<Consideration> set = randomSet(random);
      for (FeasibleRegion.Outline outline : region(set).outlines()) {
        for (Side side : outline.sides()) {
          for (Point p : side.points()) {
            assertThat(worst(set, p.length(), p.diameter())).isGreaterThan(-1e-9);
            side.boundBy()
                .ifPresent(
                    w ->
                        assertThat(w.consideration().margin(p.length(), p.diameter()))
                            .as(w.consideration().name())
                            .isCloseTo(0, within(1e-8)));
          }
        }
      }
    }
  }

  @Test
  void a_clash_is_named_by_its_smallest_set_and_each_ways_out_satisfies_all_others() {
    Random random = new Random(34);
    int clashes = 0;
    for (int k = 0; k < 400 && clashes < 60; k++) {
      List<Consideration> set = randomSet(random);
      FeasibleRegion region = region(set);
      if (region.conflict().isEmpty()) {
        continue;
      }
      clashes++;
      Conflict conflict = region.conflict().get();
      List<Consideration> clashing = conflict.clashing().stream().map(Weighed::consideration).toList();
      assertThat(region(clashing).isEmpty()).isTrue();
      for (Consideration one : clashing) {
        List<Consideration> rest = new ArrayList<>(clashing);
        rest.remove(one);
        assertThat(region(rest).isEmpty()).as("%s without %s", clashing, one).isFalse();
      }
      for (Conflict.GivingWay way : conflict.givingWay()) {
        List<Consideration> others = new ArrayList<>(set);
        others.remove(way.by().consideration());
        assertThat(worst(others, way.body().length(), way.body().diameter())).isGreaterThan(-1e-9);
        assertThat(way.miss()).isPositive();
        for (int i = 0; i < 20_000; i++) {
          double length = LENGTHS.lower() + LENGTHS.width() * random.nextDouble();
          double diameter = DIAMETERS.lower() * Math.pow(150, random.nextDouble());
          if (worst(others, length, diameter) >= 0) {
            assertThat(-way.by().consideration().margin(length, diameter))
                .as("%s among %s", way.by(), set)
                .isGreaterThan(way.miss() * (1 - 1e-4) - 1e-9);
          }
        }
      }
    }
    assertThat(clashes).isGreaterThan(20);
  }

  @Test
  void the_advice_on_an_impossible_brief_names_who_clashes_and_what_each_could_give() {
    FuselageSizing sizing =
        FuselageSizing.of(BodyShape.capsule())
            .considering(Considerations.lengthAtMost(Length.millimetres(300)))
            .considering(Considerations.finenessWithin(6, 14))
            .considering(Considerations.enclosing(Volume.cubicCentimetres(400), new PackingFraction(0.6)))
            .considering(Considerations.diameterAtLeast(Length.millimetres(14)));
    assertThat(sizing.region().conflict().orElseThrow().describe(Length.MILLIMETRE))
        .isEqualTo(
            "\"length at most 300 mm\", \"fineness ratio 6 to 14\" and \"encloses 400 cm³ packed to 0.6\" cannot all hold,"
                + " though they could without any one of them. Enough alone would be \"length at most 300 mm\" relaxed"
                + " to 318.7 mm (a body of 318.7 mm × 53.11 mm); or \"fineness ratio 6 to 14\" widened to 5.465 (a body"
                + " of 300 mm × 54.89 mm); or \"encloses 400 cm³ packed to 0.6\" with 83.4 % of the contents (a body of"
                + " 300 mm × 50 mm).");
  }

  @Test
  void the_advice_speaks_in_the_words_and_the_units_of_the_brief() {
    FuselageSizing sizing =
        FuselageSizing.of(BodyShape.capsule())
            .considering(Considerations.called("longest part 10 in", Considerations.lengthAtMost(Length.inches(10))))
            .considering(
                Considerations.called("tail arm 6 in", Considerations.tailArmAtLeast(Length.inches(6), 0.5)));
    assertThat(sizing.region().conflict().orElseThrow().describe(Length.INCH))
        .as("half of 12 in is the arm of 6 in; half of 10 in is one of 5 in")
        .contains("\"longest part 10 in\" and \"tail arm 6 in\" cannot both hold.")
        .contains("\"longest part 10 in\" relaxed to 12 in (a body of 12 in × ")
        .contains("\"tail arm 6 in\" relaxed to 5 in (a body of 10 in × ");
  }

  @Test
  void a_side_that_ends_a_region_is_bound_by_the_one_that_jumps() {
    // A thin tube lies slanted on the bed and may be longer; one of 88 mm must stand: 4 × 250 mm less 3 joints of 12 mm.
    Consideration machine =
        BuildSpace.fitsInto(
            Length.millimetres(220), Length.millimetres(220), Length.millimetres(250), 4, Length.millimetres(12));
    FeasibleRegion region =
        FuselageSizing.of(BodyShape.capsule())
            .considering(Considerations.diameterAtLeast(Length.millimetres(88)))
            .considering(machine)
            .region(Interval.between(0.5, 1.3), Interval.between(0.03, 0.3));
    assertThat(region.lengths().upper()).isCloseTo(0.964, within(1e-9));
    Side right =
        region.outlines().get(0).sides().stream()
            .filter(s -> s.points().stream().allMatch(p -> p.length() > 0.9639))
            .findFirst()
            .orElseThrow();
    assertThat(right.boundBy().orElseThrow().consideration().name()).isEqualTo(machine.name());
  }

  @Test
  void a_window_that_reaches_beyond_the_stoutest_body_is_looked_at_up_to_it() {
    // The thick part is the length less 0.6 diameters of the elliptic nose and 2 of the cone: 20 mm + 2.6·d ≤ L.
    FeasibleRegion region =
        FuselageSizing.of(BodyShape.noseCylinderCone(1.5, 2.5))
            .considering(BodyLayout.carriesSaddle(Length.millimetres(20), Length.ZERO, 0.8))
            .considering(Considerations.lengthAtMost(Length.millimetres(80)))
            .region(Interval.between(0.03, 0.1), Interval.between(0.01, 0.1));
    assertThat(region.outlines()).hasSize(1);
    assertThat(region.lengths().lower()).isCloseTo(0.046, within(1e-9));
    // It meets the stoutest body, four diameters long, where 20 mm + 2.6·L/4 = L; beyond, the saddle does not bind.
    double corner = 20.0 / (1.0 - 2.6 / 4.0);
    double area = 0.5 * (corner - 46.0) * (corner / 4.0 - 10.0);
    area += 0.5 * (80.0 - corner) * (corner / 4.0 - 10.0 + 80.0 / 4.0 - 10.0);
    assertThat(region.area() * 1e6).isCloseTo(area, within(1e-6 * area));
    assertThat(region.boundaries().get(0).lines().stream().flatMap(List::stream))
        .allSatisfy(p -> assertThat(p.length()).isGreaterThanOrEqualTo(4.0 * p.diameter() * (1 - 1e-6)));
  }

  @Test
  void a_wish_that_is_met_only_far_away_clashes_with_those_that_forbid_it_and_not_with_itself() {
    FuselageSizing sizing =
        FuselageSizing.of(BodyShape.noseCylinderCone(1.5, 2.5))
            .considering(Considerations.lengthAtMost(Length.millimetres(300)))
            .considering(Considerations.diameterAtLeast(Length.millimetres(10)));
    assertThat(clashing(sizing.considering(Considerations.tailArmAtLeast(Length.metres(5), 0.4))))
        .containsExactly("length at most 300 mm", "tail arm at least 5 m with 40 % of the length outside it");
    assertThat(clashing(sizing.considering(Considerations.diameterAtLeast(Length.metres(0.4)))))
        .containsExactly(
            "length at most 300 mm",
            "diameter at least 400 mm",
            "fineness ratio at least 4 for the shape elliptic nose, cylinder, cone");
    assertThat(clashing(sizing.considering(Considerations.diameterAtMost(Length.millimetres(1)))))
        .containsExactly("diameter at least 10 mm", "diameter at most 1 mm");
  }

  @Test
  void two_that_clash_for_every_body_need_no_third_to_forbid_bodies_that_do_not_exist() {
    // A hand of 100 mm around takes 31.8 mm; bodies shorter than 160 mm are not 40 mm thick anyhow.
    FuselageSizing sizing =
        FuselageSizing.of(BodyShape.noseCylinderCone(1.5, 2.5))
            .considering(Considerations.lengthAtLeast(Length.millimetres(170)))
            .considering(new OwnMargin("a hand goes around it", (length, diameter) -> 1 - Math.PI * diameter / 0.1))
            .considering(Considerations.diameterAtLeast(Length.millimetres(40)));
    Conflict conflict =
        sizing.region(Interval.between(0.06, 0.6), Interval.between(0.003, 0.2)).conflict().orElseThrow();
    assertThat(conflict.clashing())
        .extracting(w -> w.consideration().name())
        .containsExactlyInAnyOrder("a hand goes around it", "diameter at least 40 mm");
  }

  private static List<String> clashing(FuselageSizing sizing) {
    Conflict conflict = sizing.region().conflict().orElseThrow();
    assertThat(conflict.givingWay()).as("one of the two can end it alone").isNotEmpty();
    return conflict.clashing().stream().map(w -> w.consideration().name()).toList();
  }

  @Test
  void a_consideration_by_another_name_is_the_same() {
    Consideration fineness = Considerations.finenessWithin(6, 10);
    Consideration called = Considerations.called("slender", fineness);
    assertThat(called.name()).isEqualTo("slender");
    assertThat(called.strength()).isEqualTo(fineness.strength());
    assertThat(called.diametersAt(0.3, Interval.ALL)).isEqualTo(fineness.diametersAt(0.3, Interval.ALL));
    assertThat(called.givingWayTo(0.3, 0.02, Length.MILLIMETRE)).isEqualTo("\"slender\" widened to 15");
    assertThatIllegalArgumentException().isThrownBy(() -> Considerations.called(" ", fineness));
  }

  @Test
  void where_no_single_concession_helps_every_clash_is_named() {
    FeasibleRegion region =
        region(
            List.of(
                Considerations.lengthAtMost(Length.millimetres(300)),
                Considerations.lengthAtLeast(Length.millimetres(310)),
                Considerations.diameterAtMost(Length.millimetres(40)),
                Considerations.diameterAtLeast(Length.millimetres(50))));
    assertThat(region.conflict().orElseThrow().describe(Length.MILLIMETRE))
        .isEqualTo(
            "\"length at most 300 mm\" and \"length at least 310 mm\" cannot both hold; and \"diameter at most 40 mm\" and"
                + " \"diameter at least 50 mm\" cannot both hold. No single concession is enough: each of these clashes"
                + " needs its own. Enough would be \"length at least 310 mm\" relaxed to 300 mm together with \"diameter at"
                + " least 50 mm\" relaxed to 40 mm (a body of 300 mm × 40 mm); or \"length at most 300 mm\" relaxed to 310 mm"
                + " together with \"diameter at least 50 mm\" relaxed to 40 mm (a body of 310 mm × 40 mm); or \"length at"
                + " least 310 mm\" relaxed to 300 mm together with \"diameter at most 40 mm\" relaxed to 50 mm (a body of"
                + " 300 mm × 50 mm).");
    Conflict conflict = region.conflict().orElseThrow();
    assertThat(conflict.leastConcession()).isEmpty();
    // One of each pair: 2 × 2 ways, the mildest first: 10/310 + 10/50 is less than 10/300 + 10/50.
    assertThat(conflict.waysOut()).hasSize(4).isEqualTo(conflict.together());
    assertThat(conflict.waysOut().get(0).stream().mapToDouble(Conflict.GivingWay::miss).sum())
        .isCloseTo(10.0 / 310.0 + 10.0 / 50.0, within(1e-9));
  }

  @Test
  void three_clashes_apart_need_three_concessions() {
    FeasibleRegion region =
        region(
            List.of(
                Considerations.lengthAtMost(Length.millimetres(300)),
                Considerations.lengthAtLeast(Length.millimetres(310)),
                Considerations.diameterAtMost(Length.millimetres(40)),
                Considerations.diameterAtLeast(Length.millimetres(50)),
                Considerations.finenessWithin(8.0, 20.0),
                Considerations.finenessWithin(1.0, 5.0)));
    List<Conflict.GivingWay> first = region.conflict().orElseThrow().waysOut().get(0);
    assertThat(first).hasSize(3).allSatisfy(step -> assertThat(step.miss()).isPositive());
    assertThat(first).allSatisfy(step -> assertThat(step.body()).isEqualTo(first.get(0).body()));
  }

  @Test
  void a_region_of_a_single_body_names_it_and_who_binds_it() {
    FeasibleRegion region =
        region(
            List.of(
                Considerations.lengthAtMost(Length.millimetres(300)),
                Considerations.lengthAtLeast(Length.millimetres(300)),
                Considerations.diameterAtMost(Length.millimetres(40)),
                Considerations.diameterAtLeast(Length.millimetres(40))));
    assertThat(region.isEmpty()).isFalse();
    assertThat(region.lengths()).isEqualTo(Interval.between(0.3, 0.3));
    assertThat(region.diameters()).isEqualTo(Interval.between(0.04, 0.04));
    assertThat(region.outlines().get(0).sides()).extracting(s -> s.boundBy().orElseThrow().toString())
        .containsExactly("diameter at least 40 mm", "diameter at most 40 mm");
    assertThat(region.area()).isZero();
  }

  @Test
  void a_steep_boundary_runs_to_the_edge_of_the_window() {
    // d ≥ 0.1 m + 20·(0.3 m − L), within one step of the tracer from 0.1 to 0.3 m: at L = 0.29 m no diameter is left.
    Consideration steep = new OwnMargin("steep", (length, diameter) -> diameter - (0.1 + 20.0 * (0.3 - length)));
    List<Point> line = region(List.of(steep)).boundaries().get(0).lines().get(0);
    assertThat(line.get(0).length()).isCloseTo(0.29, within(1e-6));
    assertThat(line.get(0).diameter()).isCloseTo(DIAMETERS.upper(), within(1e-5));
    assertThat(line.get(line.size() - 1).diameter()).isCloseTo(DIAMETERS.lower(), within(1e-5));
  }

  @Test
  void a_boundary_runs_upright_where_the_diameters_that_are_left_jump() {
    // A piece that stands is 310 mm long however thick it is; one that lies at a slant is longer, but only while it is thin.
    Length side = Length.millimetres(310);
    Consideration bed = BuildSpace.fitsInto(side, side, side, 1, Length.ZERO);
    List<List<Point>> lines = region(List.of(bed)).boundaries().get(0).lines();
    assertThat(lines).hasSize(1);
    List<Point> ends = List.of(lines.get(0).get(0), lines.get(0).get(lines.get(0).size() - 1));
    assertThat(ends)
        .anySatisfy(
            p -> {
              assertThat(p.length()).isCloseTo(0.31, within(1e-6));
              assertThat(p.diameter()).isEqualTo(DIAMETERS.upper());
            })
        .anySatisfy(p -> assertThat(p.diameter()).isEqualTo(DIAMETERS.lower()));
  }

  @Test
  void a_boundary_between_two_diameters_and_none_runs_upright_between_the_two() {
    Consideration slab =
        new OwnMargin("slab", (length, diameter) -> length > 0.3 ? -1.0 : Math.min(diameter - 0.1, 0.2 - diameter));
    List<List<Point>> lines = region(List.of(slab)).boundaries().get(0).lines();
    assertThat(lines).hasSize(2).allSatisfy(
        line -> {
          assertThat(line).allSatisfy(p -> assertThat(p.diameter()).isBetween(0.1 - 1e-6, 0.2 + 1e-6));
          assertThat(line.get(line.size() - 1).length()).isCloseTo(0.3, within(1e-6));
          assertThat(line.get(line.size() - 1).diameter() + line.get(0).diameter()).isCloseTo(0.3, within(1e-5));
        });
  }

  @Test
  void the_boundaries_for_a_picture_stay_inside_the_window() {
    Random random = new Random(35);
    for (int k = 0; k < 20; k++) {
      FeasibleRegion region = region(randomSet(random));
      assertThat(region.boundaries()).hasSameSizeAs(region.considerations());
      region.boundaries().stream()
          .flatMap(b -> b.lines().stream())
          .flatMap(List::stream)
          .forEach(
              p -> {
                assertThat(LENGTHS.contains(p.length())).isTrue();
                assertThat(DIAMETERS.contains(p.diameter())).isTrue();
              });
    }
  }

  @Test
  void a_window_without_size_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> FeasibleRegion.of(List.of(), Interval.between(0, 1), DIAMETERS, Length.MILLIMETRE))
        .withMessage("window of lengths must be positive, finite and not empty, was 0.0 to 1.0");
  }

  @Test
  void advice_to_a_designer_in_inches_names_what_clashes_in_inches() {
    FuselageSizing sizing =
        FuselageSizing.of(BodyShape.capsule())
            .showing(Length.INCH)
            .considering(Considerations.lengthAtMost(Length.inches(9)))
            .considering(Considerations.tailArmAtLeast(Length.inches(6), 0.5));

    String advice =
        sizing
            .region(Interval.between(0.05, 0.5), Interval.between(0.005, 0.2))
            .conflict()
            .orElseThrow()
            .describe(Length.INCH);

    assertThat(advice)
        .contains("\"length at most 9 in\"", "\"tail arm at least 6 in with 50 % of the length outside it\"")
        .doesNotContain("mm");
    assertThat(sizing.lengthRange().toString()).contains("length at most 9 in").doesNotContain("mm");
  }
}
