// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The printed workings of a consideration end in the margin that it is weighed by. */
class ConsiderationWorkingsTest {
  private static final BodyShape SHAPE = BodyShape.prolateSpheroid();
  private static final BodyShell SHELL =
      BodyShell.of(Length.millimetres(0.8), Density.kilogramsPerCubicMetre(1240.0), Pressure.pascals(2.3e9));

  static List<Consideration> all() {
    Length few = Length.millimetres(15.0);
    Length some = Length.millimetres(200.0);
    Contents contents =
        Contents.of(
            Thing.box("battery", few, few.times(0.5), few.times(0.5), Mass.grams(5.0)),
            Thing.box("receiver", few, few.times(0.7), few.times(0.3), Mass.grams(2.0)));
    return List.of(
        Considerations.lengthAtMost(some),
        Considerations.lengthAtMost(some, 3, few),
        Considerations.lengthAtLeast(some),
        Considerations.finenessWithin(5.0, 12.0),
        Considerations.diameterNear(2.5, few),
        Considerations.diameterNear(few),
        Considerations.diameterAtLeast(few),
        Considerations.diameterAtMost(few),
        Considerations.enclosing(Volume.cubicMetres(4e-5), PackingFraction.USUAL).on(SHAPE),
        Considerations.tailArmAtLeast(some, 0.3),
        Considerations.bendingStiffnessAtLeast(FlexuralRigidity.newtonSquareMetres(2.0), SHELL),
        Considerations.tailDeflectionAtMost(Force.newtons(0.2), 0.5, 0.02, SHELL),
        Considerations.tailMovesAtMost(Force.newtons(0.2), 0.4, 0.9, 0.02, SHELL).on(SHAPE),
        NoseStrength.survivesNoseImpact(
            Mass.grams(30.0), Speed.metresPerSecond(8.0), Length.millimetres(5.0), SHELL, Pressure.pascals(4e7)),
        BodyLayout.seesOverNose(Angle.degrees(10.0), few.times(3.0), few.times(0.1), few.times(2.0)).on(SHAPE),
        BodyLayout.seesOverNose(
                Angle.degrees(10.0), contents, "receiver", few.times(0.5), few.times(0.1), few.times(0.4))
            .on(SHAPE),
        BodyLayout.clearsGroundAtRotation(Angle.degrees(12.0), 0.5, few, 0.6, Angle.degrees(4.0)).on(SHAPE),
        BodyLayout.standsOnMainWheels(Angle.degrees(15.0), 0.5, few, 0.4, few.times(0.2)).on(SHAPE),
        BodyLayout.afterbodyClosesWithin(Angle.degrees(14.0)).on(SHAPE),
        BodyLayout.carriesWingThrough(few, 0.3, few.times(0.1)),
        BodyLayout.carriesSaddle(some.times(0.5), few, 0.8).on(SHAPE),
        BodyLayout.ballastAtMost(Mass.grams(6.0), Mass.grams(30.0), 0.45, 0.4, few),
        contents.balancing(Mass.grams(30.0), 0.45, 0.35, Mass.grams(4.0), few).on(SHAPE),
        Considerations.called(
            "in other words", Considerations.asGuideline(Considerations.diameterAtLeast(few))));
  }

  @ParameterizedTest
  @MethodSource("all")
  void the_workings_end_in_the_margin_that_is_weighed(Consideration consideration) {
    Random random = new Random(20_260_404L);
    for (int i = 0; i < 50; i++) {
      double length = 0.15 + 0.45 * random.nextDouble();
      double diameter = length / (4.0 + 12.0 * random.nextDouble());
      double margin = consideration.margin(length, diameter);
      assertThat(workings(consideration, length, diameter).value())
          .isCloseTo(margin, within(1e-11 * Math.max(1.0, Math.abs(margin))));
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
  void a_body_that_no_ballast_balances_misses_and_has_no_workings() {
    Consideration hopeless =
        BodyLayout.ballastAtMost(Mass.grams(1.0), Mass.grams(30.0), 0.6, 0.4, Length.millimetres(15.0));

    assertThat(hopeless.margin(0.3, 0.03)).isEqualTo(-1.0);
    assertThat(hopeless.workings(length(0.3), diameter(0.03))).isEmpty();
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
