// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static io.github.wingwright.core.sizing.RandomBriefs.DIAMETERS;
import static io.github.wingwright.core.sizing.RandomBriefs.LENGTHS;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Conflict;
import io.github.wingwright.core.basis.Conflict.GivingWay;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.sizing.RandomBriefs.Brief;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random impossible briefs: who clashes is found by trying every subset, and what is advised is done. */
class EmptyRegionPropertyTest {
  private static final int IMPOSSIBLE = 40;

  /** Sets that hold or fail by less than this are left alone: looking at a grid does not decide them. */
  private static final double CLEAR = 2e-3;

  /** The margins of every consideration at bodies on a grid, for all subsets at once. */
  private static final class Looked {
    private static final int N = 90;
    private final List<Weighed> binding;
    private final double[][] margins;
    private final double leastFineness;

    Looked(List<Weighed> binding, double leastFineness) {
      this.binding = binding;
      this.leastFineness = leastFineness;
      this.margins = new double[binding.size()][N * N];
      for (int k = 0; k < margins.length; k++) {
        for (int i = 0; i < N * N; i++) {
          margins[k][i] = margin(k, length(i / N), diameter(i % N));
        }
      }
    }

    private static double length(double i) {
      return LENGTHS.lower() * Math.pow(LENGTHS.upper() / LENGTHS.lower(), i / (N - 1));
    }

    private static double diameter(double i) {
      return DIAMETERS.lower() * Math.pow(DIAMETERS.upper() / DIAMETERS.lower(), i / (N - 1));
    }

    private double margin(int k, double length, double diameter) {
      return length < leastFineness * diameter && !binding.get(k).consideration().name().contains("for the shape")
          ? -1.0
          : binding.get(k).consideration().margin(length, diameter);
    }

    private double worst(BitSet set, double length, double diameter) {
      return set.stream().mapToDouble(k -> margin(k, length, diameter)).min().orElse(1.0);
    }

    /** The best worst margin of a subset: the best place of the grid, then ever smaller steps around it. */
    double best(BitSet set) {
      double best = Double.NEGATIVE_INFINITY;
      int at = 0;
      for (int i = 0; i < N * N; i++) {
        double worst = Double.MAX_VALUE;
        for (int k = set.nextSetBit(0); k >= 0; k = set.nextSetBit(k + 1)) {
          worst = Math.min(worst, margins[k][i]);
        }
        if (worst > best) {
          best = worst;
          at = i;
        }
      }
      double l = at / N;
      double d = at % N;
      for (double step = 1.0; step > 1e-4 && best < CLEAR; step *= 0.7) {
        for (int turn = 0; turn < 24; turn++) {
          double nextL = Math.max(0, Math.min(N - 1, l + step * Math.cos(turn * Math.PI / 12)));
          double nextD = Math.max(0, Math.min(N - 1, d + step * Math.sin(turn * Math.PI / 12)));
          double worst = worst(set, length(nextL), diameter(nextD));
          if (worst > best) {
            best = worst;
            l = nextL;
            d = nextD;
          }
        }
      }
      return best;
    }
  }

  /** The wish with its margin moved: it gives way by so much. */
  private record Moved(Consideration wish, double by) implements Consideration {
    @Override
    public String name() {
      return wish.name();
    }

    @Override
    public Strength strength() {
      return wish.strength();
    }

    @Override
    public Source source() {
      return wish.source();
    }

    @Override
    public double margin(double length, double diameter) {
      return wish.margin(length, diameter) + by;
    }
  }

  private static BitSet bits(long mask) {
    return BitSet.valueOf(new long[] {mask});
  }

  /** The size of the smallest subset that nothing satisfies; 0 if the grid does not decide it. */
  private static int smallest(Looked looked, long among) {
    int smallest = Integer.MAX_VALUE;
    boolean doubt = false;
    for (long mask = 1; mask < 1L << looked.binding.size(); mask++) {
      int size = Long.bitCount(mask);
      if ((mask & ~among) == 0 && size <= smallest) {
        double best = looked.best(bits(mask));
        doubt |= Math.abs(best) < CLEAR;
        smallest = best < -CLEAR ? Math.min(smallest, size) : smallest;
      }
    }
    return doubt ? 0 : smallest;
  }

  private static List<Weighed> binding(FeasibleRegion region) {
    return region.considerations().stream().filter(Weighed::binds).toList();
  }

  @Test
  void the_smallest_set_that_clashes_is_the_smallest_of_all_subsets_and_whoever_could_end_it_alone_is_named() {
    Random random = new Random(51);
    int decided = 0;
    int sizes = 0;
    for (int k = 0; decided < IMPOSSIBLE && k < 2_000; k++) {
      Brief brief = RandomBriefs.draw(random);
      FeasibleRegion region = brief.region();
      List<Weighed> binding = binding(region);
      if (!region.isEmpty() || binding.size() > 8) {
        continue;
      }
      Looked looked = new Looked(binding, brief.shape().leastFinenessRatio());
      long all = (1L << binding.size()) - 1;
      long limits = 0;
      for (int i = 0; i < binding.size(); i++) {
        limits |= binding.get(i).isLimit() ? 1L << i : 0;
      }
      double ofLimits = looked.best(bits(limits));
      int expected = smallest(looked, ofLimits < -CLEAR ? limits : all);
      if (expected == 0 || Math.abs(ofLimits) < CLEAR) {
        continue;
      }
      decided++;
      Conflict conflict = region.conflict().orElseThrow();
      String as = "brief " + k + ": " + conflict.describe(region.unit());
      assertThat(conflict.clashing()).as(as).hasSize(expected);
      sizes |= 1 << expected;
      long clashing = 0;
      for (Weighed one : conflict.clashing()) {
        clashing |= 1L << binding.indexOf(one);
      }
      assertThat(looked.best(bits(clashing))).as(as).isLessThan(-CLEAR);
      List<Weighed> alone = new ArrayList<>();
      for (int i = 0; i < binding.size(); i++) {
        double without = looked.best(bits(all & ~(1L << i)));
        boolean family = binding.get(i).consideration().name().contains("for the shape");
        if (without > CLEAR && !family) {
          alone.add(binding.get(i));
        }
      }
      assertThat(conflict.givingWay()).as(as).extracting(GivingWay::by).containsExactlyInAnyOrderElementsOf(alone);
    }
    assertThat(decided).isEqualTo(IMPOSSIBLE);
    assertThat(sizes).as("pairs and threes").isGreaterThanOrEqualTo(0b1100);

  }

  @Test
  void doing_what_is_advised_leaves_something_and_doing_a_little_less_does_not() {
    Random random = new Random(52);
    int done = 0;
    int several = 0;
    for (int k = 0; done < IMPOSSIBLE && k < 2_000; k++) {
      Brief brief = RandomBriefs.draw(random);
      FeasibleRegion region = brief.region();
      if (!region.isEmpty()) {
        continue;
      }
      Conflict conflict = region.conflict().orElseThrow();
      for (List<GivingWay> way : conflict.waysOut()) {
        String as = "brief " + k + ": " + conflict.describe(region.unit());
        assertThat(brief.region(moved(brief.weighed(), way, 1.0)).isEmpty()).as(as).isFalse();
        double miss = way.stream().mapToDouble(GivingWay::miss).sum();
        if (way.size() == 1 && miss > 1e-6) {
          assertThat(brief.region(moved(brief.weighed(), way, 0.99)).isEmpty()).as(as).isTrue();
        }
        several += way.size() > 1 ? 1 : 0;
        done++;
      }
    }
    assertThat(done).isGreaterThanOrEqualTo(IMPOSSIBLE);
    assertThat(several).isPositive();

  }

  private static List<Weighed> moved(List<Weighed> all, List<GivingWay> way, double part) {
    List<Weighed> moved = new ArrayList<>(all);
    for (GivingWay step : way) {
      int i = all.indexOf(step.by());
      double by = part == 1.0 ? step.miss() * (1 + 1e-9) + 1e-9 : part * step.miss();
      moved.set(i, new Weighed(new Moved(step.by().consideration(), by), step.by().decision()));
    }
    return moved;
  }
}
