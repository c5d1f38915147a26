// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a consideration says it would give way to, taken at its word, is enough, and no more than its digits ask for. */
class ConcessionTest {
  private static final BodyShape POD = BodyShape.noseCylinderCone(1.5, 2.5);
  private static final BodyShell SHELL = ConsiderationsTest.PLA;
  private static final Contents HEAVY =
      Contents.of(Thing.box("battery", Length.millimetres(60), Length.millimetres(20), Length.millimetres(15), Mass.grams(80)));

  /**
   * A wish with one number in it.
   *
   * @param asked the number as it stands, in the unit that the words are in
   * @param of the wish with another number
   * @param share whether the words tell a share of what is asked for, in per cent
   * @param digits significant digits of the words
   */
  private record Wish(double asked, DoubleFunction<Consideration> of, boolean share, int digits) {
    double told(String words) {
      Matcher number = Pattern.compile("(-?[0-9.]+)").matcher(words);
      assertThat(number.find()).as(words).isTrue();
      double value = Double.parseDouble(number.group());
      return share ? asked * value / 100.0 : value;
    }
  }

  private static final Map<String, Wish> WISHES = wishes();

  private static Map<String, Wish> wishes() {
    Map<String, Wish> all = new TreeMap<>();
    all.put("length at most", new Wish(200, v -> Considerations.lengthAtMost(Length.millimetres(v)), false, 4));
    all.put("length at least", new Wish(400, v -> Considerations.lengthAtLeast(Length.millimetres(v)), false, 4));
    all.put("diameter at most", new Wish(20, v -> Considerations.diameterAtMost(Length.millimetres(v)), false, 4));
    all.put("diameter at least", new Wish(60, v -> Considerations.diameterAtLeast(Length.millimetres(v)), false, 4));
    all.put("fineness at least", new Wish(14, v -> Considerations.finenessWithin(v, 40), false, 4));
    all.put("fineness at most", new Wish(4.5, v -> Considerations.finenessWithin(1, v), false, 4));
    all.put("tail arm", new Wish(250, v -> Considerations.tailArmAtLeast(Length.millimetres(v), 0.4), false, 4));
    all.put(
        "contents",
        new Wish(900, v -> Considerations.enclosing(Volume.cubicCentimetres(v), new PackingFraction(0.6)).on(POD), true, 3));
    all.put(
        "stiffness",
        new Wish(900, v -> Considerations.bendingStiffnessAtLeast(FlexuralRigidity.newtonSquareMetres(v), SHELL), true, 3));
    all.put("load", new Wish(400, v -> Considerations.tailDeflectionAtMost(Force.newtons(v), 0.6, 0.02, SHELL), true, 3));
    all.put(
        "movement",
        new Wish(0.12, v -> Considerations.tailMovesAtMost(Force.newtons(30), 0.3, 0.7, v / 100, SHELL).on(POD), false, 3));
    all.put(
        "force of the impact",
        new Wish(
            10_000,
            v ->
                NoseStrength.survivesNoseImpact(
                    Mass.kilograms(v / 8_000), Speed.metresPerSecond(8), Length.millimetres(4), SHELL, Pressure.pascals(4e7)),
            true,
            3));
    all.put("nose radius", new Wish(40, v -> NoseStrength.noseRadiusAtLeast(Length.millimetres(v)).on(POD), false, 3));
    all.put(
        "pieces",
        new Wish(
            60,
            v -> Considerations.lengthAtMost(Length.millimetres(3 * v - 2 * 10)),
            false,
            4));
    all.put(
        "view",
        new Wish(
            40,
            v ->
                BodyLayout.seesOverNose(Angle.degrees(v), Length.millimetres(120), Length.ZERO, Length.millimetres(15)).on(POD),
            false,
            3));
    all.put(
        "rotation",
        new Wish(
            30,
            v -> BodyLayout.clearsGroundAtRotation(Angle.degrees(v), 0.45, Length.millimetres(15), 1.0, Angle.ZERO).on(POD),
            false,
            3));
    all.put(
        "tip-back",
        new Wish(
            60, v -> BodyLayout.standsOnMainWheels(Angle.degrees(v), 0.5, Length.millimetres(15), 0.4, Length.ZERO).on(POD), false, 3));
    all.put("closure", new Wish(5, v -> BodyLayout.afterbodyClosesWithin(Angle.degrees(v)).on(POD), false, 3));
    all.put(
        "closure of two lines",
        new Wish(5, v -> BodyLayout.afterbodyClosesWithin(Angle.degrees(v), Angle.degrees(v)).on(POD), false, 3));
    all.put(
        "wing through", new Wish(50, v -> BodyLayout.carriesWingThrough(Length.millimetres(v), 0.2, Length.millimetres(1)), false, 4));
    all.put(
        "saddle", new Wish(500, v -> BodyLayout.carriesSaddle(Length.millimetres(v), Length.ZERO, 0.8).on(POD), false, 4));
    all.put(
        "ballast",
        new Wish(
            2, v -> BodyLayout.ballastAtMost(Mass.grams(v), Mass.grams(60), 0.5, 0.4, Length.millimetres(8)), false, 3));
    all.put(
        "balance",
        new Wish(
            20,
            v -> HEAVY.balancing(Mass.grams(200), 0.5, v / 100, Mass.grams(5), Length.millimetres(5)).on(POD),
            false,
            3));
    return all;
  }

  static List<String> names() {
    return new ArrayList<>(WISHES.keySet());
  }

  private static String words(Consideration wish, double length, double diameter) {
    String all = wish.givingWayTo(length, diameter, Length.MILLIMETRE);
    assertThat(all).startsWith("\"" + wish.nameIn(Length.MILLIMETRE) + "\" ");
    return all.substring(wish.nameIn(Length.MILLIMETRE).length() + 3);
  }

  @ParameterizedTest
  @MethodSource("names")
  void taken_at_its_word_it_is_enough_and_hardly_more(String name) {
    Wish wish = WISHES.get(name);
    Random random = new Random(61);
    int refused = 0;
    for (int i = 0; i < 60; i++) {
      double length = 0.21 + 0.15 * random.nextDouble();
      double diameter = 0.021 + 0.018 * random.nextDouble();
      Consideration asked = wish.of().apply(wish.asked());
      if (asked.margin(length, diameter) >= -0.01) {
        continue;
      }
      refused++;
      String words = words(asked, length, diameter);
      if (name.equals("pieces")) {
        words = words(
            BuildSpace.fitsInto(
                Length.millimetres(60), Length.millimetres(50), Length.millimetres(60), 3, Length.millimetres(10)),
            length,
            diameter);
      }
      double told = wish.told(words);
      assertThat(wish.of().apply(told).margin(length, diameter)).as("%s: %s", asked.name(), words).isGreaterThan(-1e-9);
      double less = told + Math.signum(wish.asked() - told) * 1.01 * Math.pow(10, Math.floor(Math.log10(told)) + 1 - wish.digits())
          * (wish.share() ? 10 : 1);
      if (!wish.share()) {
        assertThat(wish.of().apply(less).margin(length, diameter)).as("less than %s: %s", asked.name(), words).isLessThan(1e-9);
      }
    }
    assertThat(refused).isGreaterThan(20);
  }

  @Test
  void an_eye_that_sees_nothing_below_the_horizon_is_told_so() {
    Consideration wish =
        BodyLayout.seesOverNose(Angle.degrees(5), Length.millimetres(120), Length.millimetres(2), Length.millimetres(60)).on(POD);
    assertThat(words(wish, 0.3, 0.03)).isEqualTo("with no view below the horizon");
    Consideration wing = BodyLayout.carriesWingThrough(Length.millimetres(5), 0.9, Length.millimetres(1));
    assertThat(words(wing, 0.3, 0.02)).startsWith("with the wing outside the body");
  }

  @Test
  void ballast_is_told_in_ounces_where_lengths_are_in_inches_and_as_impossible_behind_the_wanted_place() {
    Consideration wish = BodyLayout.ballastAtMost(Mass.ounces(0.1), Mass.ounces(2), 0.5, 0.4, Length.inches(0.3));
    // 2 oz · 0.1 · 10 in over (0.4 · 10 − 0.3) in.
    assertThat(wish.givingWayTo(Length.inches(10).si(), 0.02, Length.INCH)).endsWith(" with 0.541 oz");
    assertThat(wish.givingWayTo(Length.inches(0.7).si(), 0.02, Length.INCH)).contains("no amount of ballast");
  }
}
