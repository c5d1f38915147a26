// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static io.github.wingwright.core.sizing.BodyLayout.afterbodyClosesWithin;
import static io.github.wingwright.core.sizing.BodyLayout.ballastAtMost;
import static io.github.wingwright.core.sizing.BodyLayout.carriesSaddle;
import static io.github.wingwright.core.sizing.BodyLayout.carriesWingThrough;
import static io.github.wingwright.core.sizing.BodyLayout.clearsGroundAtRotation;
import static io.github.wingwright.core.sizing.BodyLayout.seesOverNose;
import static io.github.wingwright.core.sizing.BodyLayout.standsOnMainWheels;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.BodyStation;
import io.github.wingwright.core.geometry.CrossSection;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LoftedBody;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BodyLayoutTest {
  private static final List<BodyShape> SHAPES =
      List.of(BodyShape.capsule(), BodyShape.prolateSpheroid(), BodyShape.noseCylinderCone(1.5, 3));

  /** On a model and on a light aeroplane, so that each has bodies that it takes and bodies that it refuses. */
  static Stream<ShapeConsideration> all() {
    return Stream.of(
        shape -> BuildSpace.fitsInto(mm(250), mm(210), mm(200), 1, Length.ZERO),
        shape -> BuildSpace.fitsInto(mm(180), mm(180), mm(180), 2, mm(10)),
        shape ->
            NoseStrength.survivesNoseImpact(
                Mass.grams(30), Speed.metresPerSecond(8), mm(5), ConsiderationsTest.PLA, Pressure.megapascals(30)),
        NoseStrength.noseRadiusAtLeast(mm(5)),
        seesOverNose(Angle.degrees(10), mm(150), mm(10), mm(70)),
        clearsGroundAtRotation(Angle.degrees(12), 0.45, mm(20), 0.5, Angle.degrees(6)),
        standsOnMainWheels(Angle.degrees(15), 0.45, mm(20), 0.38, mm(3)),
        afterbodyClosesWithin(Angle.degrees(12), Angle.degrees(15)),
        Considerations.tailMovesAtMost(Force.newtons(2), 0.35, 0.95, 0.02, ConsiderationsTest.PLA),
        afterbodyClosesWithin(Angle.degrees(15)),
        shape -> carriesWingThrough(mm(4), 0.3, mm(0.8)),
        carriesSaddle(mm(60), mm(20), 0.9),
        shape -> ballastAtMost(Mass.grams(6), Mass.grams(24), 0.45, 0.38, mm(10)));
  }

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  @ParameterizedTest
  @MethodSource("all")
  void the_intervals_say_what_the_margin_says(ShapeConsideration asked) {
    for (BodyShape shape : SHAPES) {
      Consideration one = asked.on(shape);
      Seeded.points(61, 300, new double[] {Math.log(0.05), Math.log(0.8)}, new double[] {Math.log(0.02), 0})
          .forEach(
              p -> {
                double length = Math.exp(p[0]);
                double stoutest = length / shape.leastFinenessRatio();
                double diameter = stoutest * Math.exp(p[1]);
                double margin = one.margin(length, diameter);
                assertThat(margin).isFinite();
                if (Math.abs(margin) > 1e-6) {
                  assertThat(one.diametersAt(length, Interval.between(0.002 * length, stoutest)).contains(diameter))
                      .as("%s, %s, %s × %s, margin %s", one.name(), shape, length, diameter, margin)
                      .isEqualTo(margin > 0);
                }
              });
    }
  }

  @ParameterizedTest
  @MethodSource("longestParts")
  void the_longest_part_on_a_bed_is_that_of_an_independent_search(PublishedValues.Row row) {
    double longest =
        BuildSpace.longestLying(row.number("a_mm"), row.number("b_mm"), row.number("width_mm"));
    assertThat(longest).as(row.toString()).isCloseTo(row.number("longest_mm"), within(row.number("tolerance_mm")));
  }

  static Stream<PublishedValues.Row> longestParts() {
    return PublishedValues.beside(BodyLayoutTest.class, "longest-parts.csv").rows();
  }

  @Test
  void a_part_on_a_bed_fits_by_the_exact_condition_for_rectangles_in_rectangles() {
    // L. Carver, Mathematics Magazine 30 (1957) 92: p × q with p > a fits slanted into a × b if and only if this holds.
    Seeded.points(62, 400, new double[] {150, 300}, new double[] {0.5, 1}, new double[] {0.02, 0.9})
        .forEach(
            s -> {
              double a = s[0];
              double b = s[0] * s[1];
              double q = b * s[2];
              double p = BuildSpace.longestLying(a, b, q);
              if (p > a * (1 + 1e-9)) {
                double root = Math.sqrt(p * p + q * q - a * a);
                double needed = (2 * p * q * a + (p * p - q * q) * root) / (p * p + q * q);
                assertThat(needed).isCloseTo(b, within(1e-6 * b));
              }
            });
  }

  @Test
  void a_part_wider_than_the_bed_does_not_fit_and_one_as_wide_lies_straight() {
    assertThat(BuildSpace.longestLying(200, 150, 151)).isZero();
    assertThat(BuildSpace.longestLying(200, 150, 149.9)).isEqualTo(200);
  }

  @Test
  void the_documented_examples_hold() {
    assertThat(BodyLayout.overNoseDegrees(3, 100)).isCloseTo(10, within(1e-12));
    assertThat(NoseStrength.impactForce(0.03, 8, 0.005)).isCloseTo(192, within(1e-10));
  }

  @ParameterizedTest
  @MethodSource("overNose")
  void the_over_nose_angle_is_the_handbooks(PublishedValues.Row row) {
    Angle angle =
        BodyLayout.overNoseAngle(Angle.degrees(row.number("approach_deg")), Speed.knots(row.number("speed_kt")));
    assertThat(angle.degrees()).isCloseTo(row.number("angle_deg"), within(row.number("tolerance_deg")));
  }

  static Stream<PublishedValues.Row> overNose() {
    return PublishedValues.beside(BodyLayoutTest.class, "over-nose.csv").rows();
  }

  @Test
  void the_tail_clearance_of_a_tube_is_the_handbooks_angle() {
    // Lowest point 0.90 m high, 4.60 m aft of the wheel: 11.07020° (restated from Raymer, figs 11.3 to 11.5).
    for (double turn : new double[] {-1e-4, 1e-4}) {
      Consideration rotation =
          clearsGroundAtRotation(
                  Angle.degrees(11.07020 + turn), 0.54, Length.metres(0.90), 1.0, Angle.ZERO)
              .on(new Tube());
      assertThat(rotation.margin(10, 1.2) >= 0).isEqualTo(turn < 0);
    }
  }

  @Test
  void the_tip_back_angle_is_the_handbooks() {
    // Centre of gravity 1.10 m high, 0.35 m ahead of the wheels: 17.65012° (restated from Raymer, figs 11.3 to 11.5).
    for (double turn : new double[] {-1e-4, 1e-4}) {
      Consideration stands =
          standsOnMainWheels(Angle.degrees(17.65012 + turn), 0.435, Length.metres(0.60), 0.40, Length.metres(-0.10))
              .on(new Tube());
      assertThat(stands.margin(10, 1.2) >= 0).isEqualTo(turn < 0);
    }
  }

  @Test
  void what_gives_way_says_what_the_body_comes_to_in_its_own_measure() {
    // The handbook's examples once more: 11.07020° and 17.65012°.
    Consideration rotation =
        clearsGroundAtRotation(Angle.degrees(13), 0.54, Length.metres(0.90), 1.0, Angle.ZERO).on(new Tube());
    assertThat(rotation.givingWayTo(10, 1.2, Length.METRE))
        .isEqualTo("\"clears the ground at a rotation of 13°\" with a rotation of 11°");
    Consideration stands =
        standsOnMainWheels(Angle.degrees(20), 0.435, Length.metres(0.60), 0.40, Length.metres(-0.10)).on(new Tube());
    assertThat(stands.givingWayTo(10, 1.2, Length.METRE)).endsWith("with 17.6°");
    Consideration machine = BuildSpace.fitsInto(mm(215), mm(215), mm(215), 4, mm(12));
    // 872.7 mm in four pieces that overlap by 12 mm: (872.7 + 36)/4; five pieces of 215 mm make 1,027 mm.
    assertThat(machine.givingWayTo(0.8727, 0.0884, Length.MILLIMETRE))
        .endsWith("with pieces of 227.2 mm, or with 5 segments");
    Consideration nose = NoseStrength.noseRadiusAtLeast(mm(5)).on(BodyShape.capsule());
    assertThat(nose.givingWayTo(0.3, 0.008, Length.MILLIMETRE)).endsWith("with a radius of 4 mm");
    // b²/a = 12.247² mm²/37.5 mm of half a spheroid.
    Consideration longer = NoseStrength.noseRadiusAtLeast(mm(5)).on(BodyShape.noseCylinderCone(37.5 / 24.494897427831781, 2));
    assertThat(longer.givingWayTo(0.3, 0.024494897427831781, Length.MILLIMETRE)).endsWith("with a radius of 4 mm");
    Consideration cone = NoseStrength.noseRadiusAtLeast(mm(5)).on(BodyShape.of(EndProfile.cone(), 2, EndProfile.cone(), 2));
    assertThat(cone.givingWayTo(0.3, 0.03, Length.MILLIMETRE)).endsWith("with a pointed nose");
    assertThat(cone.margin(0.3, 0.03)).isCloseTo(-1, within(1e-12));
    // A tube seen along its top: the eye 0.2 m above it and 1 m behind the end of the nose sees atan(0.2).
    Consideration sees = seesOverNose(Angle.degrees(15), Length.metres(1), Length.metres(-0.2), mm(500)).on(new Tube());
    assertThat(sees.givingWayTo(5, 1, Length.METRE)).endsWith("with 11.3° of view");
  }

  @Test
  void upsweep_steepens_the_underside_and_flattens_the_top() {
    // A cone of 3 diameters closes at atan(1/6) = 9.462° on both sides; swept up by 4° with a short bend it is 5.5° and 13.3°.
    BodyShape swept = BodyShape.noseCylinderCone(1, 3).upswept(3, Angle.degrees(4), 0.01);
    double top = Math.toDegrees(Math.atan(1.0 / 6 - Math.tan(Math.toRadians(4))));
    double below = Math.toDegrees(Math.atan(1.0 / 6 + Math.tan(Math.toRadians(4))));
    assertThat(afterbodyClosesWithin(Angle.degrees(89), Angle.degrees(below)).on(swept).margin(1, 0.1))
        .isCloseTo(0, within(1e-6));
    assertThat(afterbodyClosesWithin(Angle.degrees(top), Angle.degrees(89)).on(swept).margin(1, 0.1))
        .isCloseTo(0, within(1e-6));
  }

  @Test
  void the_pilot_sees_from_where_the_cabin_fits() {
    Contents contents =
        Contents.of(
            Thing.box("engine", mm(60), mm(40), mm(40), Mass.grams(100)),
            Thing.cylinder("cabin", mm(100), mm(70), Mass.grams(200)));
    BodyShape shape = BodyShape.noseCylinderCone(1.5, 3);
    double front = contents.placedIn(new Fuselage(shape, mm(500), mm(90))).orElseThrow().places().get(1).front().millimetres();
    double moving = seesOverNose(Angle.degrees(8), contents, "cabin", mm(50), mm(-5), mm(40)).on(shape).margin(0.5, 0.09);
    double fixed = seesOverNose(Angle.degrees(8), mm(front + 50), mm(-5), mm(front + 10)).on(shape).margin(0.5, 0.09);
    assertThat(moving).isCloseTo(fixed, within(1e-12));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> seesOverNose(Angle.degrees(8), contents, "tent", mm(50), mm(-5), mm(40)))
        .withMessage("thing must be one of [engine, cabin], was \"tent\"");
  }

  @Test
  void the_eye_and_the_belly_are_those_of_the_real_section() {
    // Twice as high as wide: the roof is 0.1·√2 above the middle, not 0.1 as of the circle of equal area.
    double half = 0.1 * Math.sqrt(2);
    Length high = Length.metres(2 * half);
    Length wide = Length.metres(half);
    BodyShape tall =
        LoftedBody.withBase(
            EndProfile.halfEllipsoid(),
            List.of(
                new BodyStation(mm(100), wide, high, Length.ZERO, CrossSection.ellipse()),
                new BodyStation(mm(2000), wide, high, Length.ZERO, CrossSection.ellipse())));
    // From the end of the belly to a wheel 1 m ahead of it and 0.1 m below the belly: atan(0.1).
    for (double turn : new double[] {-1e-6, 1e-6}) {
      assertThat(
              clearsGroundAtRotation(Angle.radians(Math.atan(0.1) + turn), 0.5, Length.metres(0.1), 1.0, Angle.ZERO)
                      .on(tall)
                      .margin(2.0, 0.2)
                  >= 0)
          .isEqualTo(turn < 0);
    }
    // The eye 0.05 m below the roof, 0.3 m aft of the tip; the nose is a quarter of an ellipse.
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 100_000; i++) {
      double x = 0.02 * i / 100_000;
      double top = half * Math.sqrt(1 - Math.pow(1 - x / 0.1, 2));
      least = Math.min(least, half - 0.05 - Math.tan(Math.toRadians(5)) * (0.3 - x) - top);
    }
    Consideration sees = seesOverNose(Angle.degrees(5), mm(300), mm(50), mm(20)).on(tall);
    assertThat(sees.margin(2.0, 0.2)).isCloseTo(least / 0.3, within(1e-9));
  }

  @Test
  void an_upsweep_lets_the_aeroplane_rotate_further() {
    ShapeConsideration straight = clearsGroundAtRotation(Angle.degrees(14), 0.5, mm(15), 0.6, Angle.ZERO);
    ShapeConsideration swept = clearsGroundAtRotation(Angle.degrees(14), 0.5, mm(15), 0.6, Angle.degrees(8));
    for (BodyShape shape : SHAPES) {
      assertThat(swept.on(shape).margin(0.4, 0.04)).isGreaterThan(straight.on(shape).margin(0.4, 0.04));
    }
  }

  @Test
  void the_contour_of_a_spheroid_closes_at_root_three_over_the_fineness() {
    Seeded.points(63, 50, new double[] {0.1, 8}, new double[] {3, 20})
        .forEach(
            p ->
                assertThat(BodyLayout.closureSlope(BodyShape.prolateSpheroid(), p[0], p[0] / p[1]))
                    .isCloseTo(Math.sqrt(3) / p[1], within(1e-6)));
    assertThat(BodyLayout.closureSlope(BodyShape.noseCylinderCone(1, 3), 1, 0.1)).isCloseTo(1.0 / 6, within(1e-9));
    assertThat(Math.toDegrees(Math.atan(BodyLayout.closureSlope(BodyShape.capsule(), 1, 0.1))))
        .as("a hemisphere")
        .isCloseTo(60, within(1e-3));
    // A pod of 5 diameters on a boom: it has closed long before the middle of the body.
    assertThat(BodyLayout.closureSlope(BodyShape.podAndBoom(EndProfile.halfEllipsoid(), 1.5, 5, 2, 0.3), 1, 0.04))
        .isCloseTo(0.7 / 4, within(1e-9));
    assertThat(BodyLayout.closureSlope(BodyShape.podAndBoom(EndProfile.halfEllipsoid(), 1.5, 5, 2, 0.7), 1, 0.04))
        .as("a boom of more than half the radius")
        .isCloseTo(0.3 / 4, within(1e-9));
  }

  @Test
  void the_nose_radius_is_that_of_the_sphere_or_of_the_ellipse() {
    assertThat(NoseStrength.noseRadiusAtLeast(mm(5)).on(BodyShape.capsule()).margin(0.3, 0.01)).isCloseTo(0, within(2e-6));
    // Radius of curvature of an ellipse at its vertex: b²/a = d²/(2L).
    double d = Math.sqrt(2 * 0.3 * 0.005);
    assertThat(NoseStrength.noseRadiusAtLeast(mm(5)).on(BodyShape.prolateSpheroid()).margin(0.3, d))
        .isCloseTo(0, within(2e-6));
  }

  @Test
  void the_saddle_lies_on_the_thick_part_of_a_capsule() {
    // r ≥ s·R leaves L − d·(1 − √(1 − s²)).
    double thick = 0.3 - 0.04 * (1 - Math.sqrt(1 - 0.81));
    assertThat(carriesSaddle(mm(60), mm(20), 0.9).on(BodyShape.capsule()).margin(0.3, 0.04))
        .isCloseTo(thick / 0.08 - 1, within(1e-9));
  }

  @Test
  void the_body_at_the_limit_buckles_or_crushes_under_the_force() {
    Consideration impact =
        NoseStrength.survivesNoseImpact(
            Mass.grams(60), Speed.metresPerSecond(9), mm(3), ConsiderationsTest.PLA, Pressure.megapascals(30));
    double force = 0.06 * 81 / 0.006;
    double wall = 0.8e-3;
    for (double length : new double[] {0.1, 0.3, 1.0}) {
      double d = impact.diametersAt(length, Interval.between(1e-3, length)).lower();
      double inner = d - 2 * wall;
      double area = Math.PI / 4 * (d * d - inner * inner);
      double euler = Math.PI * Math.PI * 2.3e9 * Math.PI / 64 * (Math.pow(d, 4) - Math.pow(inner, 4)) / length / length;
      assertThat(Math.min(30e6 * area, euler)).isCloseTo(force, within(1e-8 * force));
    }
  }

  @Test
  void the_ballast_at_the_shortest_nose_is_the_most_that_was_allowed() {
    Consideration balance = ballastAtMost(Mass.grams(6), Mass.grams(24), 0.45, 0.38, mm(10));
    double length = balance.lengthsAt(0.03, Interval.between(0.01, 10)).lower();
    double ballast = 24 * (0.45 * length - 0.38 * length) / (0.38 * length - 0.010);
    assertThat(ballast).isCloseTo(6, within(1e-12));
    assertThat(ballastAtMost(Mass.grams(1), Mass.grams(24), 0.45, 0.38, mm(10)).diametersAt(100, Interval.ALL).isEmpty())
        .as("no nose is long enough")
        .isTrue();
  }

  @Test
  void the_wing_passes_through_with_its_wall_above_and_below() {
    Interval diameters = carriesWingThrough(mm(4), 0.2, mm(0.8)).diametersAt(0.3, Interval.between(0.001, 0.3));
    assertThat(diameters.lower()).isCloseTo(5.6e-3 / 0.8, within(1e-15));
  }

  @Test
  void nonsense_is_refused_by_name() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> seesOverNose(Angle.degrees(10), mm(50), mm(10), mm(70)))
        .withMessageContaining("distance from the nose, of windscreen and eye");
    assertThatIllegalArgumentException().isThrownBy(() -> carriesWingThrough(mm(4), 1.0, mm(1)));
    assertThatIllegalArgumentException().isThrownBy(() -> BuildSpace.fitsInto(mm(1), mm(1), mm(1), 0, mm(0)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ballastAtMost(Mass.grams(6), Mass.grams(24), 0.3, 0.38, mm(10)))
        .withMessageStartingWith("wanted place of the centre of gravity must be 0.0 to 0.3");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ballastAtMost(Mass.grams(6), Mass.grams(24), 0.38, 0.38, mm(10)))
        .withMessageContaining("must be less than the place without ballast, 0.38 of the length");
  }
}
