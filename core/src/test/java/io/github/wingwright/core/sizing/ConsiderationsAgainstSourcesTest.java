// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
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
import io.github.wingwright.testing.PublishedValues;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every consideration against something that this library did not make; the resource says what and how closely. */
class ConsiderationsAgainstSourcesTest {
  private static final BodyShape SPHEROID = BodyShape.prolateSpheroid();
  private static final Interval ANY = Interval.between(1e-3, 1e3);
  private static final BodyShell RING =
      BodyShell.of(Length.millimetres(1.0), Density.kilogramsPerCubicMetre(1240.0), Pressure.pascals(2.3e9));
  private static final Length RAISED = Length.metres(0.6 - 0.749658);

  private static Map<String, DoubleSupplier> cases() {
    Map<String, DoubleSupplier> all = new TreeMap<>();
    considerations(all);
    strength(all);
    layout(all);
    return all;
  }

  private static void considerations(Map<String, DoubleSupplier> all) {
    all.put(
        "Considerations.lengthAtMost/1",
        () -> Considerations.lengthAtMost(Length.metres(0.18 * Math.sqrt(2.0))).margin(0.18, 0.03));
    all.put(
        "Considerations.lengthAtMost/3",
        () ->
            Considerations.lengthAtMost(Length.metres(0.26), 5, Length.metres(0.05)).lengthsAt(0.03, ANY).upper());
    all.put(
        "Considerations.lengthAtLeast/1",
        () -> Considerations.lengthAtLeast(Length.feet(26.42)).margin(Length.feet(31.6).si(), 1.7));
    all.put("Considerations.finenessWithin/2", () -> Considerations.finenessWithin(3, 14).margin(5.5, 1.0));
    all.put(
        "Considerations.finenessWithin/3",
        () -> Considerations.finenessWithin(6, 8, Source.COMMON_PRACTICE).margin(5.5, 1.0));
    all.put(
        "Considerations.finenessFor/1",
        () -> Considerations.finenessFor(FinenessContext.FIXED_VOLUME).diametersAt(3.0, ANY).upper());
    all.put(
        "Considerations.diameterNear/2",
        () -> Considerations.diameterNear(2.5, Length.inches(0.6)).margin(0.5, Length.inches(3.44).si()));
    all.put(
        "Considerations.diameterNear/1", () -> Considerations.diameterNear(Length.feet(5.75)).margin(9.6, Length.feet(5.0).si()));
    all.put(
        "Considerations.diameterAtLeast/1",
        () -> Considerations.diameterAtLeast(Length.metres(0.03 * Math.sqrt(2.0))).margin(0.3, 0.06));
    all.put(
        "Considerations.diameterAtMost/1",
        () -> Considerations.diameterAtMost(Length.metres(0.03 * Math.sqrt(2.0))).margin(0.3, 0.03));
    all.put(
        "Considerations.enclosing/2",
        () ->
            Considerations.enclosing(
                    Volume.cubicMetres(2.0 * Math.PI * 0.03 * 0.03 * 0.3 / (3.0 * Math.sqrt(3.0))),
                    new PackingFraction(0.57735027))
                .on(SPHEROID)
                .diametersAt(0.3, ANY)
                .lower());
    all.put(
        "Considerations.tailArmAtLeast/2",
        () ->
            Length.metres(Considerations.tailArmAtLeast(Length.feet(18.96), 0.4).lengthsAt(1.0, ANY).lower())
                .in(Length.FOOT));
  }

  private static void strength(Map<String, DoubleSupplier> all) {
    all.put(
        "Considerations.bendingStiffnessAtLeast/2",
        () ->
            Considerations.bendingStiffnessAtLeast(FlexuralRigidity.newtonSquareMetres(6.2122639), RING)
                .diametersAt(0.3, ANY)
                .lower());
    all.put(
        "Considerations.tailDeflectionAtMost/4",
        () -> Considerations.tailDeflectionAtMost(Force.newtons(1), 0.5, 0.02, RING).margin(0.3, 0.02));
    all.put(
        "Considerations.tailMovesAtMost/5",
        () ->
            Considerations.tailMovesAtMost(Force.newtons(1), 0.3, 0.7, 0.02, RING)
                .on(BodyShape.capsule())
                .margin(0.3, 0.02));
    all.put(
        "NoseStrength.survivesNoseImpact/5",
        () ->
            NoseStrength.survivesNoseImpact(
                    Mass.grams(30), Speed.metresPerSecond(8), Length.millimetres(5), RING, Pressure.pascals(1e9))
                .margin(0.3, 0.02));
    all.put(
        "NoseStrength.noseRadiusAtLeast/1",
        () -> NoseStrength.noseRadiusAtLeast(Length.millimetres(5)).on(SPHEROID).margin(0.3, 0.06));
    all.put(
        "BuildSpace.fitsInto/5",
        () ->
            BuildSpace.fitsInto(
                    Length.millimetres(250), Length.millimetres(210), Length.millimetres(220), 1, Length.ZERO)
                .margin(0.2971063, 0.03));
  }

  private static void layout(Map<String, DoubleSupplier> all) {
    all.put(
        "BodyLayout.seesOverNose/4",
        () ->
            BodyLayout.seesOverNose(Angle.degrees(10), Length.metres(3), RAISED, Length.metres(2))
                .on(SPHEROID)
                .margin(8.0, 1.2));
    Contents cabin = Contents.of(Thing.sphere("cabin", Length.millimetres(1), Mass.ZERO));
    all.put(
        "BodyLayout.seesOverNose/6",
        () ->
            BodyLayout.seesOverNose(Angle.degrees(10), cabin, "cabin", Length.metres(3), RAISED, Length.metres(1))
                .on(SPHEROID)
                .margin(8.0, 1.2));
    all.put(
        "BodyLayout.clearsGroundAtRotation/5",
        () ->
            BodyLayout.clearsGroundAtRotation(Angle.degrees(11.0702), 0.5, Length.metres(0.89), 1.0, Angle.ZERO)
                .on(SPHEROID)
                .margin(9.2, 0.02));
    all.put(
        "BodyLayout.standsOnMainWheels/5",
        () ->
            BodyLayout.standsOnMainWheels(Angle.degrees(17.65012), 0.45, Length.metres(0.5), 0.40, Length.ZERO)
                .on(SPHEROID)
                .margin(7.0, 1.2));
    all.put(
        "BodyLayout.afterbodyClosesWithin/1",
        () -> BodyLayout.afterbodyClosesWithin(Angle.degrees(12)).on(SPHEROID).margin(0.3, 0.03));
    all.put(
        "BodyLayout.afterbodyClosesWithin/2",
        () -> BodyLayout.afterbodyClosesWithin(Angle.degrees(11), Angle.degrees(15)).on(SPHEROID).margin(0.3, 0.03));
    all.put(
        "BodyLayout.carriesWingThrough/3",
        () ->
            BodyLayout.carriesWingThrough(Length.millimetres(12), 0.76, Length.ZERO)
                .diametersAt(0.3, ANY)
                .lower());
    all.put(
        "BodyLayout.carriesSaddle/3",
        () ->
            BodyLayout.carriesSaddle(Length.millimetres(120), Length.millimetres(30), 0.8)
                .on(SPHEROID)
                .margin(0.3, 0.03));
    all.put(
        "BodyLayout.ballastAtMost/5",
        () ->
            BodyLayout.ballastAtMost(
                    Mass.kilograms(0.02892857), Mass.kilograms(0.27), 0.5, 0.3 / 0.66, Length.metres(0.02))
                .lengthsAt(0.03, ANY)
                .lower());
    all.put(
        "Contents.balancing/5",
        () ->
            Contents.of(Thing.sphere("nothing", Length.millimetres(1), Mass.ZERO))
                .balancing(Mass.kilograms(5), 0.6, 0.575, Mass.kilograms(0.29411765), Length.metres(0.3))
                .on(SPHEROID)
                .margin(2.0, 0.2));
    all.put(
        "Contents.asConsideration/0",
        () -> {
          Length across = Length.metres(0.06 / Math.sqrt(3.0));
          Consideration holds =
              Contents.of(Thing.box("box", across.times(5), across, across, Mass.ZERO)).asConsideration().on(SPHEROID);
          return holds.diametersAt(0.3, ANY).lower();
        });
  }

  @ParameterizedTest
  @MethodSource("published")
  void agrees_with_its_source(PublishedValues.Row row) {
    assertThat(cases().get(row.text("case")).getAsDouble())
        .as(row.toString())
        .isCloseTo(row.number("expected"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(ConsiderationsAgainstSourcesTest.class, "considerations.csv").rows();
  }

  @Test
  void every_factory_of_a_consideration_has_a_row() {
    TreeSet<String> rows = new TreeSet<>();
    published().forEach(row -> rows.add(row.text("case")));

    assertThat(rows).isEqualTo(ConsiderationWorkingsTest.factories()).isEqualTo(cases().keySet());
  }
}
