// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The printed workings of a consideration end in the margin that it is weighed by. */
class ConsiderationWorkingsTest {
  private static final BodyShape SHAPE = BodyShape.prolateSpheroid();
  private static final BodyShell SHELL =
      BodyShell.of(Length.millimetres(0.8), Density.kilogramsPerCubicMetre(1240.0), Pressure.pascals(2.3e9));

  /** Factories that only call another one otherwise. */
  private static final Set<String> OTHERWISE =
      Set.of("Considerations.asLimit/1", "Considerations.asGuideline/1", "Considerations.called/2");

  static List<Consideration> all() {
    return List.copyOf(ofEveryFactory().values());
  }

  /** One consideration of each factory of the library, by class, method and number of arguments. */
  static Map<String, Consideration> ofEveryFactory() {
    Length few = Length.millimetres(15.0);
    Length some = Length.millimetres(200.0);
    Contents contents =
        Contents.of(
            Thing.box("battery", few, few.times(0.5), few.times(0.5), Mass.grams(5.0)),
            Thing.box("receiver", few, few.times(0.7), few.times(0.3), Mass.grams(2.0)));
    Map<String, Consideration> all = new TreeMap<>();
    all.put("Considerations.lengthAtMost/1", Considerations.lengthAtMost(some));
    all.put("Considerations.lengthAtMost/3", Considerations.lengthAtMost(some, 3, few));
    all.put("Considerations.lengthAtLeast/1", Considerations.lengthAtLeast(some));
    all.put("Considerations.finenessWithin/2", Considerations.finenessWithin(5.0, 12.0));
    all.put("Considerations.finenessWithin/3", Considerations.finenessWithin(3.0, 14.0, Source.COMMON_PRACTICE));
    all.put("Considerations.finenessFor/1", Considerations.finenessFor(FinenessContext.FIXED_VOLUME));
    all.put("Considerations.diameterNear/2", Considerations.diameterNear(2.5, few));
    all.put("Considerations.diameterNear/1", Considerations.diameterNear(few));
    all.put("Considerations.diameterAtLeast/1", Considerations.diameterAtLeast(few));
    all.put("Considerations.diameterAtMost/1", Considerations.diameterAtMost(few));
    all.put(
        "Considerations.enclosing/2",
        Considerations.enclosing(Volume.cubicMetres(4e-5), PackingFraction.USUAL).on(SHAPE));
    all.put("Considerations.tailArmAtLeast/2", Considerations.tailArmAtLeast(some, 0.3));
    all.put(
        "Considerations.bendingStiffnessAtLeast/2",
        Considerations.bendingStiffnessAtLeast(FlexuralRigidity.newtonSquareMetres(2.0), SHELL));
    all.put(
        "Considerations.tailDeflectionAtMost/4",
        Considerations.tailDeflectionAtMost(Force.newtons(0.2), 0.5, 0.02, SHELL));
    all.put(
        "Considerations.tailMovesAtMost/5",
        Considerations.tailMovesAtMost(Force.newtons(0.2), 0.4, 0.9, 0.02, SHELL).on(SHAPE));
    all.put(
        "NoseStrength.survivesNoseImpact/5",
        NoseStrength.survivesNoseImpact(
            Mass.grams(30.0), Speed.metresPerSecond(8.0), Length.millimetres(5.0), SHELL, Pressure.pascals(4e7)));
    all.put("NoseStrength.noseRadiusAtLeast/1", NoseStrength.noseRadiusAtLeast(Length.millimetres(5.0)).on(SHAPE));
    all.put(
        "BodyLayout.seesOverNose/4",
        BodyLayout.seesOverNose(Angle.degrees(10.0), few.times(3.0), few.times(0.1), few.times(2.0)).on(SHAPE));
    all.put(
        "BodyLayout.seesOverNose/6",
        BodyLayout.seesOverNose(
                Angle.degrees(10.0), contents, "receiver", few.times(0.5), few.times(0.1), few.times(0.4))
            .on(SHAPE));
    all.put(
        "BodyLayout.clearsGroundAtRotation/5",
        BodyLayout.clearsGroundAtRotation(Angle.degrees(12.0), 0.5, few, 0.6, Angle.degrees(4.0)).on(SHAPE));
    all.put(
        "BodyLayout.standsOnMainWheels/5",
        BodyLayout.standsOnMainWheels(Angle.degrees(15.0), 0.5, few, 0.4, few.times(0.2)).on(SHAPE));
    all.put("BodyLayout.afterbodyClosesWithin/1", BodyLayout.afterbodyClosesWithin(Angle.degrees(14.0)).on(SHAPE));
    all.put(
        "BodyLayout.afterbodyClosesWithin/2",
        BodyLayout.afterbodyClosesWithin(Angle.degrees(11.0), Angle.degrees(15.0)).on(SHAPE));
    all.put("BodyLayout.carriesWingThrough/3", BodyLayout.carriesWingThrough(few, 0.3, few.times(0.1)));
    all.put("BodyLayout.carriesSaddle/3", BodyLayout.carriesSaddle(some.times(0.5), few, 0.8).on(SHAPE));
    all.put("BodyLayout.ballastAtMost/5", BodyLayout.ballastAtMost(Mass.grams(6.0), Mass.grams(30.0), 0.45, 0.4, few));
    all.put("Contents.balancing/5", contents.balancing(Mass.grams(30.0), 0.45, 0.35, Mass.grams(4.0), few).on(SHAPE));
    all.put("Contents.asConsideration/0", contents.insideWall(Length.millimetres(0.8)).asConsideration().on(SHAPE));
    all.put("BuildSpace.fitsInto/5", BuildSpace.fitsInto(some.times(1.25), some, some, 2, few));
    return all;
  }

  @Test
  void every_factory_of_the_library_is_looked_at() {
    assertThat(ofEveryFactory().keySet()).isEqualTo(factories());
  }

  /** The public factories of this package, found by what they return. */
  static Set<String> factories() {
    Set<String> found = new TreeSet<>();
    for (Class<?> type :
        List.of(
            Considerations.class, BodyLayout.class, NoseStrength.class, BuildSpace.class, Contents.class, Cabin.class,
            BodyShell.class, Thing.class, FuselageSizing.class, DragArea.class)) {
      for (Method method : type.getMethods()) {
        boolean makes = Consideration.class.isAssignableFrom(method.getReturnType())
            || ShapeConsideration.class.isAssignableFrom(method.getReturnType());
        String key = type.getSimpleName() + "." + method.getName() + "/" + method.getParameterCount();
        if (makes && !OTHERWISE.contains(key)) {
          found.add(key);
        }
      }
    }
    return found;
  }

  @ParameterizedTest
  @MethodSource("all")
  void each_may_stand_alone_be_set_aside_and_be_provisional(Consideration one) {
    FuselageSizing bounded = FuselageSizing.of(SHAPE).length(Length.millimetres(300.0));

    assertThat(one.name()).isNotBlank();
    assertThat(one.source()).isNotNull();
    assertThat(one.strength()).isNotNull();
    assertThat(bounded.considering(one).diameterRange().bounds()).hasSize(2);
    assertThat(bounded.settingAside(one, "not for this one").diameterRange().toString())
        .contains("not for this one");
    assertThat(bounded.provisionally(one, "it is weighed").diameterRange().toString()).contains("it is weighed");
  }

  @Test
  void all_of_them_are_weighed_together() {
    FuselageSizing sizing = FuselageSizing.of(SHAPE).length(Length.millimetres(300.0));
    for (Consideration one : all()) {
      sizing = sizing.considering(one);
    }
    assertThat(sizing.diameterRange().bounds()).hasSize(all().size() + 1);
    assertThat(sizing.diameter(Length.millimetres(30.0)).findings()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("all")
  void the_workings_end_in_the_margin_that_is_weighed(Consideration consideration) {
    Random random = new Random(20_260_404L);
    for (int i = 0; i < 50; i++) {
      double length = 0.15 + 0.45 * random.nextDouble();
      double diameter = length / (4.0 + 12.0 * random.nextDouble());
      double margin = consideration.margin(length, diameter);
      assertThat(workings(consideration, length, diameter).value()).isEqualTo(margin);
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void what_was_found_by_a_method_satisfies_its_equation(Consideration consideration) {
    for (Step step : Workings.of(List.of(workings(consideration, 0.3, 0.03))).steps()) {
      if (step instanceof Step.Solution solution) {
        assertThat(solution.residual())
            .as(solution.toString())
            .isCloseTo(0.0, within(2e-3 * Math.max(1e-9, Math.abs(solution.value()))));
      }
    }
  }

  @Test
  void ballast_that_balances_no_body_misses_by_its_moment_and_shows_it() {
    Consideration hopeless =
        BodyLayout.ballastAtMost(Mass.grams(1.0), Mass.grams(30.0), 0.6, 0.4, Length.millimetres(15.0));

    assertThat(hopeless.lengthsAt(0.03, Interval.between(0.01, 100)).isEmpty()).isTrue();
    for (double length : new double[] {0.02, 0.3, 3.0}) {
      // 1 g at 15 mm against 30 g, moments about the wanted place at 0.4 of the length.
      double margin = (0.4 * length - 0.015) / (30 * 0.2 * length) - 1.0;
      assertThat(hopeless.margin(length, 0.03)).isCloseTo(margin, within(1e-12));
      assertThat(workings(hopeless, length, 0.03).value()).isEqualTo(hopeless.margin(length, 0.03));
    }
  }

  @Test
  void a_tail_that_ends_thicker_than_half_shows_its_steepest_place() {
    for (BodyShape shape :
        List.of(
            BodyShape.of(EndProfile.halfEllipsoid(), 1.5, EndProfile.boatTail(0.6), 2),
            BodyShape.podAndBoom(EndProfile.halfEllipsoid(), 1.5, 5, 2, 0.6))) {
      Consideration one = BodyLayout.afterbodyClosesWithin(Angle.degrees(14)).on(shape);
      Consideration two = BodyLayout.afterbodyClosesWithin(Angle.degrees(14), Angle.degrees(14)).on(shape);
      for (Consideration each : List.of(one, two)) {
        // (1 − 0.6)·d/2 over 2·d.
        assertThat(each.margin(0.6, 0.03)).isCloseTo(1 - 0.1 / Math.tan(Math.toRadians(14)), within(1e-9));
        assertThat(workings(each, 0.6, 0.03).value()).isEqualTo(each.margin(0.6, 0.03));
        what_was_found_by_a_method_satisfies_its_equation(each);
      }
    }
  }

  private static Step workings(Consideration consideration, double length, double diameter) {
    return consideration.workings(length(length), diameter(diameter)).orElseThrow();
  }

  private static Step length(double length) {
    return Step.given("length", "L", Length.metres(length), Source.BRIEF);
  }

  private static Step diameter(double diameter) {
    return Step.given("diameter", "d", Length.metres(diameter), Source.BRIEF);
  }
}
