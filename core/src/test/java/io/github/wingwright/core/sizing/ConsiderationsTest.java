// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static io.github.wingwright.core.sizing.Considerations.asGuideline;
import static io.github.wingwright.core.sizing.Considerations.asLimit;
import static io.github.wingwright.core.sizing.Considerations.bendingStiffnessAtLeast;
import static io.github.wingwright.core.sizing.Considerations.diameterAtLeast;
import static io.github.wingwright.core.sizing.Considerations.diameterAtMost;
import static io.github.wingwright.core.sizing.Considerations.diameterNear;
import static io.github.wingwright.core.sizing.Considerations.enclosing;
import static io.github.wingwright.core.sizing.Considerations.finenessFor;
import static io.github.wingwright.core.sizing.Considerations.finenessWithin;
import static io.github.wingwright.core.sizing.Considerations.lengthAtLeast;
import static io.github.wingwright.core.sizing.Considerations.lengthAtMost;
import static io.github.wingwright.core.sizing.Considerations.packingFraction;
import static io.github.wingwright.core.sizing.Considerations.tailArmAtLeast;
import static io.github.wingwright.core.sizing.Considerations.tailDeflectionAtMost;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ConsiderationsTest {
  static final BodyShell PLA =
      BodyShell.of(Length.millimetres(0.8), Density.kilogramsPerCubicMetre(1240), Pressure.gigapascals(2.3));

  private static final Interval SEARCH = Interval.between(1e-4, 10);

  static Stream<Consideration> all() {
    return Stream.of(
        lengthAtMost(Length.millimetres(254)),
        lengthAtMost(Length.millimetres(180), 2, Length.millimetres(10)),
        lengthAtLeast(Length.millimetres(120)),
        tailArmAtLeast(Length.millimetres(150), 0.4),
        finenessWithin(6, 10),
        finenessFor(FinenessContext.FIXED_VOLUME),
        diameterAtLeast(Length.millimetres(14)),
        diameterAtMost(Length.millimetres(60)),
        enclosing(Volume.cubicCentimetres(60), packingFraction(0.6)).on(BodyShape.capsule()),
        enclosing(Volume.cubicCentimetres(60), packingFraction(0.6)).on(BodyShape.prolateSpheroid()),
        enclosing(Volume.cubicCentimetres(60), packingFraction(0.6)).on(BodyShape.noseCylinderCone(1, 3)),
        bendingStiffnessAtLeast(FlexuralRigidity.newtonSquareMetres(2), PLA),
        tailDeflectionAtMost(Force.newtons(2), 0.6, 0.02, PLA),
        asGuideline(diameterAtLeast(Length.millimetres(14))),
        asLimit(finenessWithin(5, 12)));
  }

  /** The intervals are closed forms; the margin is what they must agree with, at any point of the plane. */
  @ParameterizedTest
  @MethodSource("all")
  void the_intervals_say_what_the_margin_says(Consideration one) {
    Seeded.points(11, 2_000, new double[] {Math.log(0.02), Math.log(1)}, new double[] {Math.log(0.003), Math.log(0.3)})
        .forEach(
            p -> {
              double length = Math.exp(p[0]);
              double diameter = Math.exp(p[1]);
              double margin = one.margin(length, diameter);
              assertThat(margin).isNotNaN();
              if (Math.abs(margin) > 1e-9) {
                String where = one.name() + " at " + length + " × " + diameter;
                assertThat(one.diametersAt(length, SEARCH).contains(diameter)).as(where).isEqualTo(margin > 0);
                assertThat(one.lengthsAt(diameter, SEARCH).contains(length)).as(where).isEqualTo(margin > 0);
              }
            });
  }

  @ParameterizedTest
  @MethodSource("all")
  void at_a_finite_end_of_an_interval_the_margin_is_zero(Consideration one) {
    Seeded.logUniform(12, 50, 0.05, 0.6)
        .forEach(
            length -> {
              Interval interval = one.diametersAt(length, SEARCH);
              for (double end : new double[] {interval.lower(), interval.upper()}) {
                if (!interval.isEmpty() && Double.isFinite(end)) {
                  assertThat(one.margin(length, end)).as(one.name()).isCloseTo(0, within(1e-11));
                }
              }
            });
  }

  @Test
  void names_carry_their_numbers_and_strengths_are_the_usual_ones() {
    assertThat(all().map(Consideration::name))
        .contains(
            "length at most 254 mm",
            "length at most 350 mm in 2 segments of 180 mm",
            "fineness ratio 6 to 10",
            "fineness ratio 6 to 8 (subsonic, volume fixed)",
            "encloses 60 cm³ packed to 0.6",
            "tail arm at least 150 mm with 40 % of the length outside it",
            "tail moves at most 2 % of its arm under 2 N");
    assertThat(lengthAtMost(Length.millimetres(254)).strength()).isEqualTo(Strength.LIMIT);
    assertThat(finenessWithin(6, 10).strength()).isEqualTo(Strength.GUIDELINE);
    assertThat(diameterNear(2.5, Length.millimetres(4)).strength()).isEqualTo(Strength.TARGET);
    assertThat(asLimit(finenessWithin(6, 10)).strength()).isEqualTo(Strength.LIMIT);
    assertThat(asGuideline(lengthAtMost(Length.millimetres(254))).strength()).isEqualTo(Strength.GUIDELINE);
  }

  @Test
  void every_one_says_who_says_so() {
    assertThat(all().map(c -> c.source().cite())).noneMatch(String::isBlank);
    assertThat(finenessFor(FinenessContext.SUBSONIC_PRACTICE).source().cite()).isEqualTo("common practice, no source");
  }

  @Test
  void a_target_prefers_a_multiple_of_the_wings_thickness() {
    Consideration near = diameterNear(2.5, Length.millimetres(4));
    assertThat(near.preferredDiameter(0.3)).hasValue(0.01);
    assertThat(near.margin(0.3, 0.01)).isZero();
    assertThat(near.margin(0.3, 0.012)).isCloseTo(-0.2, within(1e-12));
  }

  @Test
  void the_load_at_launch_grows_with_the_square_of_the_speed_ratio() {
    Force load =
        Considerations.atLaunch(
            Force.newtons(0.05), Speed.metresPerSecond(9), Speed.metresPerSecond(4.5));
    assertThat(load.newtons()).isCloseTo(0.2, within(1e-15));
  }

  @Test
  void a_body_too_short_for_its_contents_leaves_no_diameter() {
    Consideration sixtyCc = enclosing(Volume.cubicCentimetres(60), packingFraction(0.6)).on(BodyShape.capsule());
    // A sphere of 100 cm³ is 57.6 mm long: π/6·L³ = V.
    double sphere = Math.cbrt(6 * 100e-6 / Math.PI);
    assertThat(sixtyCc.diametersAt(sphere * 0.999, SEARCH).isEmpty()).isTrue();
    assertThat(sixtyCc.diametersAt(sphere * 1.001, SEARCH).isEmpty()).isFalse();
    assertThat(sixtyCc.lengthsAt(1, SEARCH).lower()).isCloseTo(sphere, within(1e-9));
  }

  @Test
  void nonsense_is_refused_by_name() {
    List<Runnable> calls =
        List.of(
            () -> lengthAtMost(Length.ZERO),
            () -> lengthAtMost(Length.millimetres(100), 0, Length.ZERO),
            () -> lengthAtMost(Length.millimetres(10), 3, Length.millimetres(20)),
            () -> finenessWithin(10, 6),
            () -> finenessWithin(-1, 6),
            () -> diameterNear(0, Length.millimetres(4)),
            () -> packingFraction(0),
            () -> packingFraction(1.01),
            () -> packingFraction(Double.NaN),
            () -> tailArmAtLeast(Length.millimetres(100), 1),
            () -> tailDeflectionAtMost(Force.newtons(1), 1.5, 0.02, PLA),
            () -> asLimit(diameterNear(Length.millimetres(10))),
            () -> enclosing(Volume.ZERO, packingFraction(0.5)));
    calls.forEach(call -> assertThatIllegalArgumentException().isThrownBy(call::run));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> packingFraction(1.2))
        .withMessage("packing fraction must be above 0 and at most 1, was 1.2");
  }
}
