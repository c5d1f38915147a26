// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static io.github.wingwright.core.sizing.RandomBriefs.DIAMETERS;
import static io.github.wingwright.core.sizing.RandomBriefs.LENGTHS;
import static io.github.wingwright.core.sizing.RandomBriefs.worst;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Conflict;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.FeasibleRegion.Outline;
import io.github.wingwright.core.basis.FeasibleRegion.Point;
import io.github.wingwright.core.basis.FeasibleRegion.Side;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.sizing.RandomBriefs.Brief;
import io.github.wingwright.core.sizing.RandomBriefs.Wish;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random briefs of all strengths and decisions, and the region of length and diameter held against the margins alone. */
class RegionPropertyTest {
  private static final int BRIEFS = 60;

  /** Fewer where every wish of a brief is tried. */
  private static final int FEW = 24;

  /** The sides leave the true curve by a four-thousandth at most, so this much may lie on the wrong side of a larger region. */
  private static final double FLAT = 5e-4;

  /** A line of the plane at one length: where everything holds, found by looking at margins and nothing else. */
  private static List<double[]> holds(List<Weighed> all, double length) {
    int steps = 700;
    List<double[]> found = new ArrayList<>();
    double[] open = null;
    double before = DIAMETERS.lower();
    for (int i = 0; i <= steps; i++) {
      double d = DIAMETERS.lower() * Math.pow(DIAMETERS.upper() / DIAMETERS.lower(), (double) i / steps);
      boolean in = worst(all, length, d) >= 0;
      if (in && open == null) {
        open = new double[] {i == 0 ? d : change(all, length, d, before), DIAMETERS.upper()};
        found.add(open);
      } else if (!in && open != null) {
        open[1] = change(all, length, before, d);
        open = null;
      }
      before = d;
    }
    return found;
  }

  private static double change(List<Weighed> all, double length, double in, double out) {
    double a = in;
    double b = out;
    for (int i = 0; i < 40; i++) {
      double middle = 0.5 * (a + b);
      if (worst(all, length, middle) >= 0) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return 0.5 * (a + b);
  }

  /** The diameters at which a polygon is crossed by a line of one length, in order. */
  private static List<Double> crossings(FeasibleRegion region, double length) {
    List<Double> all = new ArrayList<>();
    for (Outline outline : region.outlines()) {
      List<Point> p = outline.polygon();
      for (int i = 0; i < p.size(); i++) {
        Point a = p.get(i);
        Point b = p.get((i + 1) % p.size());
        if ((a.length() > length) != (b.length() > length)) {
          all.add(a.diameter() + (length - a.length()) / (b.length() - a.length()) * (b.diameter() - a.diameter()));
        }
      }
    }
    Collections.sort(all);
    return all;
  }

  @Test
  void the_outline_is_where_margins_alone_put_it_to_a_thousandth() {
    Random random = new Random(41);
    int lines = 0;
    double largest = 0;
    for (int k = 0; k < BRIEFS; k++) {
      FeasibleRegion region = RandomBriefs.draw(random).region();
      for (int i = 0; i < 40; i++) {
        double length = LENGTHS.lower() + LENGTHS.width() * random.nextDouble();
        List<double[]> holds = holds(region.considerations(), length);
        List<Double> crossings = crossings(region, length);
        boolean narrow = holds.stream().anyMatch(h -> h[1] < 1.002 * h[0]);
        if (narrow || holds.isEmpty() && crossings.size() == 2 && crossings.get(1) < 1.002 * crossings.get(0)) {
          continue;
        }
        assertThat(crossings).as("brief %d at %s: %s", k, length, region).hasSize(2 * holds.size());
        for (int j = 0; j < holds.size(); j++) {
          for (int end = 0; end < 2; end++) {
            double off = Math.abs(crossings.get(2 * j + end) / holds.get(j)[end] - 1);
            assertThat(off).as("brief %d at %s: %s", k, length, region).isLessThan(1e-3);
            largest = Math.max(largest, off);
            lines++;
          }
        }
      }
    }
    assertThat(lines).isGreaterThan(500);
  }

  @Test
  void who_is_named_on_a_side_binds_it_and_nobody_else_does() {
    Random random = new Random(42);
    int sides = 0;
    for (int k = 0; k < 2 * BRIEFS; k++) {
      FeasibleRegion region = RandomBriefs.draw(random).region();
      for (Outline outline : region.outlines()) {
        for (Side side : outline.sides()) {
          if (side.boundBy().isEmpty()) {
            continue;
          }
          Point a = side.points().get((side.points().size() - 1) / 2);
          Point b = side.points().get((side.points().size() - 1) / 2 + 1);
          double run = Math.hypot(b.length() - a.length(), b.diameter() - a.diameter());
          if (run < 1e-3 * a.length()) {
            continue;
          }
          // The region lies on the left of its outline.
          double step = 2e-3 * Math.min(a.diameter(), run);
          double dl = step * (b.diameter() - a.diameter()) / run;
          double dd = -step * (b.length() - a.length()) / run;
          double l = 0.5 * (a.length() + b.length());
          double d = 0.5 * (a.diameter() + b.diameter());
          Weighed binder = side.boundBy().get();
          List<Weighed> others = new ArrayList<>(region.considerations());
          others.remove(binder);
          assertThat(binder.binds()).isTrue();
          assertThat(binder.consideration().margin(l + dl, d + dd)).as("%s outside, brief %d %s", binder, k, region).isNegative();
          assertThat(binder.consideration().margin(l - dl, d - dd)).as("%s inside, brief %d %s", binder, k, region).isNotNegative();
          assertThat(worst(others, l - dl, d - dd)).as("others inside, brief %d %s", k, region).isNotNegative();
          sides++;
        }
      }
    }
    assertThat(sides).isGreaterThan(150);
  }

  @Test
  void each_side_begins_where_the_one_before_it_ends() {
    Random random = new Random(47);
    int corners = 0;
    for (int k = 0; k < 3 * BRIEFS; k++) {
      FeasibleRegion region = RandomBriefs.draw(random).region();
      for (Outline outline : region.outlines()) {
        Point end = last(outline.sides().get(outline.sides().size() - 1));
        for (Side side : outline.sides()) {
          Point start = side.points().get(0);
          assertThat(start.length()).as("brief %d %s", k, region).isCloseTo(end.length(), within(1e-5 * end.length()));
          assertThat(start.diameter()).as("brief %d %s", k, region).isCloseTo(end.diameter(), within(1e-5 * end.diameter()));
          end = last(side);
          corners++;
        }
      }
    }
    assertThat(corners).isGreaterThan(300);
  }

  private static Point last(Side side) {
    return side.points().get(side.points().size() - 1);
  }

  @Test
  void a_body_that_may_stand_on_the_bed_or_lie_on_it_leaves_a_step() {
    // 200 mm × 150 mm × 300 mm: what stands may be 150 mm thick and 300 mm long; what lies is shorter than 250 mm.
    FuselageSizing sizing =
        FuselageSizing.of(BodyShape.prolateSpheroid())
            .considering(
                BuildSpace.fitsInto(
                    Length.millimetres(200), Length.millimetres(150), Length.millimetres(300), 1, Length.ZERO))
            .considering(Considerations.asLimit(Considerations.diameterAtMost(Length.millimetres(170))));
    FeasibleRegion region = sizing.region(Interval.between(0.1, 0.4), Interval.between(0.01, 0.2));
    // Up to 150 mm a ball, then 150 mm of thickness until 300 mm; what is thicker than 150 mm lies nowhere.
    double area = (0.15 * 0.15 - 0.1 * 0.1) / 2 - 0.01 * 0.05 + (0.15 - 0.01) * 0.15;
    assertThat(region.area()).isCloseTo(area, within(1e-6));

    FuselageSizing low =
        FuselageSizing.of(BodyShape.prolateSpheroid())
            .considering(
                BuildSpace.fitsInto(
                    Length.millimetres(200), Length.millimetres(200), Length.millimetres(220), 1, Length.ZERO));
    FeasibleRegion step = low.region(Interval.between(0.1, 0.4), Interval.between(0.01, 0.15));
    // Beyond 220 mm only what lies at 45° is left: √2·200 mm − d ≥ L.
    double longest = 0.2 * Math.sqrt(2) - 0.01;
    double standing = 0.05 * (0.5 * (0.1 + 0.15) - 0.01) + 0.07 * (0.15 - 0.01);
    double lying = 0.5 * (longest - 0.22) * (longest - 0.22);
    assertThat(step.area()).isCloseTo(standing + lying, within(1e-6));
  }

  /** Sides with their binders by name and their corners to nine digits: on a corner itself the last bit may decide. */
  private static List<String> told(FeasibleRegion region) {
    return region.outlines().stream()
        .flatMap(o -> o.sides().stream())
        .map(s -> s.boundBy() + " from " + told(s.points().get(0)) + " to " + told(s.points().get(s.points().size() - 1)))
        .toList();
  }

  private static String told(Point p) {
    return String.format(Locale.ROOT, "%.9f × %.9f", p.length(), p.diameter());
  }

  private static List<String> told(Conflict conflict) {
    return conflict.givingWay().stream().map(way -> way.by() + " at " + way.body()).sorted().toList();
  }

  @Test
  void the_order_of_adding_changes_neither_the_region_nor_the_ways_out() {
    Random random = new Random(43);
    int empty = 0;
    for (int k = 0; k < BRIEFS; k++) {
      Brief brief = RandomBriefs.draw(random);
      FeasibleRegion region = brief.region();
      List<Weighed> shuffled = new ArrayList<>(brief.weighed());
      Collections.shuffle(shuffled, random);
      FeasibleRegion again = brief.region(shuffled);
      assertThat(told(again)).as("brief %d %s", k, region).isEqualTo(told(region));
      assertThat(again.area()).isCloseTo(region.area(), within(1e-9 * region.area()));
      if (region.conflict().isPresent()) {
        empty++;
        Conflict one = region.conflict().get();
        Conflict other = again.conflict().orElseThrow();
        assertThat(other.clashing()).as("brief %d %s", k, one.describe(region.unit())).hasSameSizeAs(one.clashing());
        assertThat(told(other)).as("brief %d %s", k, region).isEqualTo(told(one));
        assertThat(other.waysOut()).as("brief %d %s", k, region).hasSameSizeAs(one.waysOut());
      }
    }
    assertThat(empty).isGreaterThan(10);
  }

  /** Whatever a region holds, clear of its edges, the larger one must hold by its outline too. */
  private static int keeps(FeasibleRegion larger, FeasibleRegion smaller, Random random, String as) {
    assertThat(larger.area()).as(as).isGreaterThanOrEqualTo(smaller.area() * (1 - FLAT));
    if (!smaller.isEmpty()) {
      assertThat(larger.isEmpty()).as(as).isFalse();
      assertThat(larger.lengths().lower()).as(as).isLessThanOrEqualTo(smaller.lengths().lower() * (1 + 1e-9));
      assertThat(larger.lengths().upper()).as(as).isGreaterThanOrEqualTo(smaller.lengths().upper() * (1 - 1e-9));
    }
    int seen = 0;
    for (int i = 0; i < 40 && !smaller.isEmpty(); i++) {
      double length = smaller.lengths().lower() + smaller.lengths().width() * (0.002 + 0.996 * random.nextDouble());
      List<Double> inner = crossings(smaller, length);
      List<Double> outer = crossings(larger, length);
      for (int j = 0; j + 1 < inner.size(); j += 2) {
        double low = inner.get(j) * (1 + FLAT);
        double high = inner.get(j + 1) * (1 - FLAT);
        boolean covered = low >= high;
        for (int n = 0; n + 1 < outer.size(); n += 2) {
          covered |= outer.get(n) <= low && outer.get(n + 1) >= high;
        }
        assertThat(covered).as("%s at %s: %s in %s", as, length, inner, outer).isTrue();
        seen++;
      }
    }
    return seen;
  }

  @Test
  void taking_a_wish_away_never_shrinks_the_region() {
    Random random = new Random(44);
    int seen = 0;
    int grown = 0;
    for (int k = 0; k < FEW; k++) {
      Brief brief = RandomBriefs.draw(random);
      FeasibleRegion all = brief.region();
      for (Wish wish : brief.wishes()) {
        List<Weighed> rest = new ArrayList<>(brief.weighed());
        rest.remove(wish.weighed());
        FeasibleRegion without = brief.region(rest);
        seen += keeps(without, all, random, "brief " + k + " " + all + " without " + wish);
        grown += without.area() > all.area() * (1 + FLAT) ? 1 : 0;
        if (!wish.weighed().binds()) {
          assertThat(told(without)).as("brief %d %s without %s", k, all, wish).isEqualTo(told(all));
        }
      }
    }
    assertThat(seen).isGreaterThan(1_000);
    assertThat(grown).isGreaterThan(30);
  }

  @Test
  void asking_for_less_never_shrinks_the_region() {
    Random random = new Random(45);
    int seen = 0;
    int grown = 0;
    for (int k = 0; k < FEW; k++) {
      Brief brief = RandomBriefs.draw(random);
      FeasibleRegion all = brief.region();
      for (Wish wish : brief.wishes()) {
        List<Weighed> milder = new ArrayList<>(brief.weighed());
        milder.set(milder.indexOf(wish.weighed()), wish.milderBy(1.02 + 0.5 * random.nextDouble()));
        FeasibleRegion larger = brief.region(milder);
        seen += keeps(larger, all, random, "brief " + k + " " + all + " with milder " + wish);
        grown += larger.area() > all.area() * (1 + FLAT) ? 1 : 0;
      }
    }
    assertThat(seen).isGreaterThan(1_000);
    assertThat(grown).isGreaterThan(30);
  }

  @Test
  void the_same_wish_as_a_limit_or_as_a_guideline_leaves_the_same_region() {
    Random random = new Random(46);
    for (int k = 0; k < BRIEFS; k++) {
      Brief brief = RandomBriefs.draw(random);
      List<Weighed> limits =
          brief.weighed().stream()
              .map(w -> w.isTarget() ? w : new Weighed(Considerations.asLimit(w.consideration()), w.decision()))
              .toList();
      FeasibleRegion region = brief.region();
      FeasibleRegion strict = brief.region(limits);
      assertThat(strict.area()).as("brief %d %s", k, region).isCloseTo(region.area(), within(0.0));
      assertThat(strict.lengths()).isEqualTo(region.lengths());
      assertThat(strict.diameters()).isEqualTo(region.diameters());
    }
  }
}
