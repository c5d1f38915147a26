// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.Seeded;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FeasibleRangeTest {
  private static final Bound MACHINE =
      Bound.of("diameter that the machine makes", Strength.LIMIT, Source.BRIEF, Interval.atMost(0.040));
  private static final Bound FINENESS = Bound.of(
      "fineness ratio 6 to 10", Strength.GUIDELINE, Source.COMMON_PRACTICE, Interval.between(0.016, 0.16 / 6));
  private static final Bound BALLAST =
      Bound.of("room for the ballast", Strength.LIMIT, Source.BRIEF, Interval.atLeast(0.018));
  private static final Bound THICKNESS = Bound.target("2.5 times the wing's thickness", Source.COMMON_PRACTICE, 0.0225);

  private static FeasibleRange range(Bound... bounds) {
    return FeasibleRange.of("fuselage diameter", Length.MILLIMETRE, List.of(bounds));
  }

  @Test
  void names_who_binds_each_end() {
    FeasibleRange range = range(MACHINE, FINENESS, BALLAST, THICKNESS);
    assertThat(range.interval()).isEqualTo(Interval.between(0.018, 0.16 / 6));
    assertThat(range.limits()).isEqualTo(Interval.between(0.018, 0.040));
    assertThat(range.lowerBinding()).contains(BALLAST);
    assertThat(range.upperBinding()).contains(FINENESS);
    assertThat(range.clashes()).isEmpty();
    assertThat(range.relaxations()).isEmpty();
    assertThat(range).hasToString(String.join("\n",
        "fuselage diameter:",
        "  limit  diameter that the machine makes: at most 40 mm",
        "  guideline  fineness ratio 6 to 10: 16 to 26.67 mm",
        "  limit  room for the ballast: at least 18 mm",
        "  target  2.5 times the wing's thickness: near 22.5 mm",
        "  feasible: 18 to 26.67 mm",
        "  lower end bound by room for the ballast",
        "  upper end bound by fineness ratio 6 to 10"));
  }

  @Test
  void an_open_end_is_bound_by_nobody() {
    assertThat(range(MACHINE).lowerBinding()).isEmpty();
    assertThat(range(BALLAST).upperBinding()).isEmpty();
    assertThat(range(THICKNESS).interval()).isEqualTo(Interval.ALL);
    assertThat(range().interval()).isEqualTo(Interval.ALL);
  }

  @Test
  void says_who_clashes_and_by_how_much() {
    Bound big = Bound.of("room for a battery", Strength.LIMIT, Source.BRIEF, Interval.atLeast(0.030));
    FeasibleRange range = range(MACHINE, FINENESS, big);
    assertThat(range.isEmpty()).isTrue();
    assertThat(range.clashes()).containsExactly(new FeasibleRange.Clash(big, FINENESS));
    assertThat(range.clashes().get(0).gap()).isEqualTo(0.030 - 0.16 / 6);
    assertThat(range.clashes().get(0).describe(Length.MILLIMETRE)).isEqualTo(
        "\"room for a battery\" needs at least 30 mm, \"fineness ratio 6 to 10\" allows 16 to 26.67 mm: they miss each"
            + " other by 3.33 mm. To agree, the first comes down to 26.66 mm or the second goes up to 30 mm.");
    assertThat(range.relaxations()).containsExactly(
        new FeasibleRange.Relaxation(FINENESS, 0.16 / 6, 0.030),
        new FeasibleRange.Relaxation(big, 0.030, 0.16 / 6));
    assertThat(range.without(FINENESS)).isEqualTo(Interval.between(0.030, 0.040));
  }

  @Test
  void says_which_single_change_ends_several_clashes() {
    Bound huge = Bound.of("room for a motor", Strength.LIMIT, Source.BRIEF, Interval.atLeast(0.050));
    FeasibleRange range = range(MACHINE, FINENESS, huge);
    assertThat(range.clashes()).extracting(FeasibleRange.Clash::high).containsExactly(FINENESS, MACHINE);
    assertThat(range.relaxations()).containsExactly(new FeasibleRange.Relaxation(huge, 0.050, 0.16 / 6));
    assertThat(range.toString()).contains("enough alone: \"room for a motor\" at 26.66 mm instead of 50 mm");
    Bound thin = Bound.of("thin", Strength.LIMIT, Source.BRIEF, Interval.atMost(0.010));
    assertThat(range(MACHINE, FINENESS, huge, thin).relaxations()).isEmpty();
    assertThat(range(MACHINE, FINENESS, huge, thin).toString()).contains("no single change is enough");
  }

  @Test
  void a_consideration_that_nothing_satisfies_is_called_impossible() {
    Bound never = Bound.of("volume of the load", Strength.LIMIT, Source.BRIEF, Interval.NONE);
    FeasibleRange range = range(MACHINE, never);
    assertThat(range.isEmpty()).isTrue();
    assertThat(range.clashes()).isEmpty();
    assertThat(range.relaxations()).isEmpty();
    assertThat(range.toString()).contains("impossible: no value satisfies \"volume of the load\"").doesNotContain("∞");
  }

  @Test
  void each_relaxation_makes_the_range_whole_and_nothing_smaller_does() {
    Seeded.points(71, 500, ranges(6)).forEach(ends -> {
      List<Bound> bounds = IntStream.range(0, 3)
          .mapToObj(i -> Bound.of("b" + i, Strength.LIMIT, Source.BRIEF,
              Interval.between(Math.min(ends[2 * i], ends[2 * i + 1]), Math.max(ends[2 * i], ends[2 * i + 1]))))
          .toList();
      FeasibleRange range = FeasibleRange.of("x", Length.METRE, bounds);
      assertThat(range.isEmpty()).isEqualTo(!range.clashes().isEmpty());
      for (FeasibleRange.Relaxation change : range.relaxations()) {
        assertThat(change.bound().interval().contains(change.from())).isTrue();
        assertThat(relaxed(bounds, change, change.to()).isEmpty()).isFalse();
        double almost = change.to() + 1e-9 * (change.from() - change.to());
        assertThat(relaxed(bounds, change, almost).isEmpty()).isTrue();
      }
    });
  }

  private static double[][] ranges(int count) {
    double[][] ranges = new double[count][];
    Arrays.setAll(ranges, i -> new double[] {0, 1});
    return ranges;
  }

  private static FeasibleRange relaxed(List<Bound> bounds, FeasibleRange.Relaxation change, double end) {
    return FeasibleRange.of("x", Length.METRE, bounds.stream()
        .map(bound -> !bound.equals(change.bound()) ? bound : Bound.of(bound.name(), bound.strength(), bound.source(),
            change.from() > change.to()
                ? new Interval(end, bound.interval().upper())
                : new Interval(bound.interval().lower(), end)))
        .toList());
  }

  @Test
  void what_is_set_aside_is_shown_and_does_not_bind() {
    FeasibleRange range = range(MACHINE, FINENESS.under(Decision.notApplicable("the body is a pod on a boom")), BALLAST);
    assertThat(range.interval()).isEqualTo(Interval.between(0.018, 0.040));
    assertThat(range.check(0.035)).isEmpty();
    assertThat(range.bounds()).hasSize(3);
    assertThat(range.toString())
        .contains("fineness ratio 6 to 10: 16 to 26.67 mm, set aside because the body is a pod on a boom");
  }

  @Test
  void what_is_provisional_binds_and_says_until_when() {
    FeasibleRange range = range(BALLAST.under(Decision.provisional("the ballast is weighed")), MACHINE);
    assertThat(range.lowerBinding().orElseThrow().name()).isEqualTo("room for the ballast");
    assertThat(range.toString()).contains("at least 18 mm, provisional until the ballast is weighed");
    assertThatThrownBy(() -> Decision.provisional(" ")).hasMessage("reason must say why, was empty");
    assertThatThrownBy(() -> Decision.notApplicable("")).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_broken_limit_is_serious_and_a_left_guideline_a_caution() {
    FeasibleRange range = range(FINENESS, MACHINE, BALLAST, THICKNESS);
    assertThat(range.check(0.020)).isEmpty();
    assertThat(range.check(0.018)).isEmpty();
    List<Finding> findings = range.check(0.045);
    assertThat(findings).extracting(Finding::severity).containsExactly(Severity.SERIOUS, Severity.CAUTION);
    assertThat(findings.get(0).measure()).isEqualTo("45 mm (at most 40 mm)");
    assertThat(findings.get(0).message())
        .isEqualTo("The limit \"diameter that the machine makes\" does not hold for this choice.");
    assertThat(findings.get(1).message())
        .isEqualTo("The guideline \"fineness ratio 6 to 10\" does not hold for this choice.");
    assertThatThrownBy(() -> range.check(Double.NaN)).hasMessage("fuselage diameter must be finite, was NaN");
  }
}
