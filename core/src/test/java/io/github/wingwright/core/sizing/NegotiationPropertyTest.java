// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random sets of considerations, and the range held against looking at every diameter. */
class NegotiationPropertyTest {
  private static final int SETS = 150;
  private static final int SAMPLES = 4_000;

  private static List<Consideration> randomSet(Random random, BodyShape shape) {
    List<Consideration> set = new ArrayList<>();
    double f = 3 + 10 * random.nextDouble();
    if (random.nextBoolean()) {
      set.add(Considerations.finenessWithin(f, f * (1 + random.nextDouble())));
    }
    if (random.nextBoolean()) {
      set.add(Considerations.lengthAtMost(Length.metres(0.1 + 0.5 * random.nextDouble())));
    }
    if (random.nextBoolean()) {
      set.add(Considerations.tailArmAtLeast(Length.metres(0.05 + 0.2 * random.nextDouble()), 0.4));
    }
    if (random.nextBoolean()) {
      set.add(
          Considerations.enclosing(
                  Volume.cubicCentimetres(5 + 300 * random.nextDouble()), new PackingFraction(0.6))
              .on(shape));
    }
    if (random.nextBoolean()) {
      set.add(
          Considerations.bendingStiffnessAtLeast(
              FlexuralRigidity.newtonSquareMetres(0.2 + 30 * random.nextDouble()), ConsiderationsTest.PLA));
    }
    if (random.nextBoolean()) {
      set.add(
          Considerations.tailDeflectionAtMost(
              Force.newtons(0.1 + 5 * random.nextDouble()), 0.6, 0.02, ConsiderationsTest.PLA));
    }
    if (random.nextBoolean()) {
      set.add(Considerations.diameterAtLeast(Length.metres(0.005 + 0.03 * random.nextDouble())));
    }
    if (random.nextBoolean()) {
      double circumference = 0.05 + 0.3 * random.nextDouble();
      set.add(new OwnMargin("a hand goes around it", (length, diameter) -> 1 - Math.PI * diameter / circumference));
    }
    return set;
  }

  private static FuselageSizing sizing(BodyShape shape, List<Consideration> set) {
    FuselageSizing sizing = FuselageSizing.of(shape);
    for (Consideration one : set) {
      sizing = sizing.considering(one);
    }
    return sizing;
  }

  private static double worst(List<Consideration> set, double length, double diameter) {
    return set.stream().mapToDouble(c -> c.margin(length, diameter)).min().orElse(1);
  }

  @Test
  void the_range_of_the_diameter_is_what_sampling_every_diameter_finds() {
    Random random = new Random(20);
    for (int k = 0; k < SETS; k++) {
      BodyShape shape = k % 2 == 0 ? BodyShape.capsule() : BodyShape.noseCylinderCone(1.5, 2.5);
      double length = 0.08 + 0.4 * random.nextDouble();
      List<Consideration> set = randomSet(random, shape);
      FeasibleRange range = sizing(shape, set).length(Length.metres(length)).diameterRange();
      Interval interval = range.interval();
      assertThat(sizing(shape, set).feasibleDiameters(length).intersect(interval)).isEqualTo(interval);
      double stoutest = length / shape.leastFinenessRatio();
      for (int i = 0; i <= SAMPLES; i++) {
        double d = stoutest * Math.pow(0.01, 1 - (double) i / SAMPLES);
        double margin = worst(set, length, d);
        if (Math.abs(margin) > 1e-9) {
          assertThat(interval.contains(Math.min(d, stoutest)))
              .as("set %d %s, L %s, d %s, margin %s", k, set, length, d, margin)
              .isEqualTo(margin > 0);
        }
      }
    }
  }

  @Test
  void a_free_length_is_as_long_as_sampling_the_plane_finds() {
    Random random = new Random(21);
    int bounded = 0;
    for (int k = 0; k < SETS; k++) {
      BodyShape shape = BodyShape.capsule();
      List<Consideration> set = randomSet(random, shape);
      set.add(Considerations.lengthAtMost(Length.metres(0.5)));
      Interval lengths = sizing(shape, set).lengthRange().interval();
      for (int i = 0; i < 300; i++) {
        double length = 0.02 * Math.pow(30, i / 299.0);
        boolean some = false;
        for (int j = 0; j < 400 && !some; j++) {
          double d = length * Math.pow(0.005, 1 - j / 399.0);
          some = worst(set, length, d) >= 0;
        }
        if (some) {
          assertThat(lengths.contains(length)).as("set %d %s, L %s", k, set, length).isTrue();
          bounded++;
        }
      }
    }
    assertThat(bounded).as("feasible points seen").isGreaterThan(1_000);
  }

  @Test
  void least_drag_is_not_beaten_by_any_sampled_body() {
    Random random = new Random(22);
    // Friction by length and a form factor that punishes stout bodies: has its least drag inside the plane.
    DragArea drag =
        (shape, l, d) -> shape.wettedArea(l, d) * Math.pow(l, -0.2) * (1 + 60 / Math.pow(l / d, 3) + l / d / 400);
    int feasible = 0;
    for (int k = 0; k < 60; k++) {
      BodyShape shape = BodyShape.capsule();
      List<Consideration> set = randomSet(random, shape);
      set.add(Considerations.lengthAtMost(Length.metres(0.6)));
      set.add(Considerations.enclosing(Volume.cubicCentimetres(40), new PackingFraction(1)).on(shape));
      Sized<Fuselage> best = sizing(shape, set).leastDrag(drag);
      if (!best.isFeasible()) {
        continue;
      }
      feasible++;
      double least = drag.dragArea(shape, best.value().length().si(), best.value().diameter().si());
      for (int i = 0; i < 20_000; i++) {
        double length = 0.03 * Math.pow(20, random.nextDouble());
        double d = length * Math.pow(0.02, random.nextDouble());
        if (worst(set, length, d) >= 0) {
          assertThat(drag.dragArea(shape, length, d)).as("set %s", set).isGreaterThan(least * (1 - 1e-6));
        }
      }
    }
    assertThat(feasible).isGreaterThan(15);
  }

  @Test
  void a_clash_is_never_an_exception_and_the_least_bad_body_obeys_limits_that_can_be_obeyed() {
    Random random = new Random(23);
    int clashes = 0;
    for (int k = 0; k < 2 * SETS; k++) {
      BodyShape shape = BodyShape.capsule();
      double length = 0.08 + 0.4 * random.nextDouble();
      List<Consideration> set = randomSet(random, shape);
      Sized<Fuselage> body = sizing(shape, set).length(Length.metres(length)).leastDrag((s, l, d) -> d);
      if (body.range().isEmpty()) {
        clashes++;
        assertThat(body.isFeasible()).isFalse();
        assertThat(body.range().clashes().isEmpty() && body.range().impossible().isEmpty()).isFalse();
        if (!body.range().limits().isEmpty()) {
          double d = body.value().diameter().si();
          assertThat(body.range().limits().clamp(d)).isCloseTo(d, within(1e-12));
        }
      }
    }
    assertThat(clashes).isGreaterThan(20);
  }

  @Test
  void the_order_of_adding_does_not_matter() {
    Random random = new Random(24);
    for (int k = 0; k < SETS; k++) {
      BodyShape shape = BodyShape.capsule();
      double length = 0.08 + 0.4 * random.nextDouble();
      List<Consideration> set = randomSet(random, shape);
      Interval interval = sizing(shape, set).feasibleDiameters(length);
      Collections.shuffle(set, random);
      assertThat(sizing(shape, set).feasibleDiameters(length)).as("set %d %s", k, set).isEqualTo(interval);
    }
  }

  @Test
  void removing_a_consideration_never_shrinks_the_range() {
    Random random = new Random(25);
    int grown = 0;
    for (int k = 0; k < SETS; k++) {
      BodyShape shape = BodyShape.capsule();
      double length = 0.08 + 0.4 * random.nextDouble();
      List<Consideration> set = randomSet(random, shape);
      Interval all = sizing(shape, set).feasibleDiameters(length);
      for (Consideration one : set) {
        Interval rest = sizing(shape, set).without(one.name()).feasibleDiameters(length);
        assertThat(rest.intersect(all)).as("set %d %s without %s", k, set, one).isEqualTo(all);
        grown += rest.equals(all) ? 0 : 1;
      }
    }
    assertThat(grown).isGreaterThan(100);
  }
}
