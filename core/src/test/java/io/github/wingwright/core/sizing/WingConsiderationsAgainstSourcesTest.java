// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.testing.PublishedValues;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every consideration on a wing against something that this library did not make; the resource says what and how closely. */
class WingConsiderationsAgainstSourcesTest {
  private static final BiconvexSection THIN = new BiconvexSection(0.06);
  private static final BiconvexSection TWELVE = new BiconvexSection(0.12);

  /** At 95 % of the chord 1.14 % above and 0.48 % below, from the table. */
  private static final BiconvexSection TABLED = new BiconvexSection((0.0114 + 0.0048) / (4.0 * 0.95 * 0.05));

  /** 0.0023772 slug/ft³. */
  private static final double LANDING_DENSITY = 0.0023772 * Mass.slugs(1).si() / Math.pow(Length.feet(1).si(), 3);

  /** What a square foot carries: 43.2454884 lb of take-off weight, of which 0.975 are left at the landing. */
  private static final Mass LANDING_MASS = Mass.pounds(43.2454884 * 0.975);

  private static final Length TAIL_SPAN = Length.feet(13.00071793);
  private static final Area TAIL_AREA = Area.squareFeet(30.73066667);

  private static Map<String, DoubleSupplier> cases() {
    Map<String, DoubleSupplier> all = new TreeMap<>();
    all.put(
        "WingConsiderations.printableTrailingEdge/2",
        () ->
            WingConsiderations.printableTrailingEdge(Length.millimetres(0.45), 0.95)
                .margin(new WingFrame(0.4, 0.6, TABLED), 0.05));
    all.put(
        "WingConsiderations.reynoldsNumberAtLeast/3",
        () ->
            WingConsiderations.reynoldsNumberAtLeast(
                    20_000, Speed.metresPerSecond(6), KinematicViscosity.squareMetresPerSecond(1.4607e-5))
                .margin(new WingFrame(0.4, 1.0, THIN), 0.05));
    all.put(
        "WingConsiderations.fliesWhenThrown/5",
        () ->
            WingConsiderations.fliesWhenThrown(
                    Speed.knots(75.2354794), 1.0, 2.2, Density.kilogramsPerCubicMetre(LANDING_DENSITY), LANDING_MASS)
                .meanChords(new WingFrame(Length.feet(1.0).si(), 1.0, TWELVE))
                .lower());
    all.put(
        "WingConsiderations.fliesWhenThrown/6",
        () -> {
          Interval chords =
              WingConsiderations.fliesWhenThrown(
                      Speed.metresPerSecond(10),
                      1.2,
                      0.8,
                      Density.kilogramsPerCubicMetre(1.2),
                      Mass.grams(10),
                      Density.kilogramsPerCubicMetre(1240))
                  .meanChords(new WingFrame(0.4, 0.0, THIN));
          return chords.lower() + chords.upper();
        });
    all.put(
        "WingConsiderations.rootChordAtMost/1",
        () ->
            WingConsiderations.rootChordAtMost(Length.feet(2.7))
                .margin(new WingFrame(TAIL_SPAN.si(), 0.75, THIN), TAIL_AREA.dividedBy(TAIL_SPAN).si()));
    all.put(
        "WingConsiderations.piecesOfEachHalf/2",
        () ->
            WingConsiderations.piecesOfEachHalf(Length.millimetres(250), 3)
                .margin(new WingFrame(1.5, 0.6, THIN), 0.15));
    all.put(
        "WingConsiderations.aspectRatioWithin/3",
        () ->
            WingConsiderations.aspectRatioWithin(5.5, 12, Source.COMMON_PRACTICE)
                .margin(new WingFrame(TAIL_SPAN.si(), 0.75, TWELVE), TAIL_AREA.dividedBy(TAIL_SPAN).si()));
    all.put(
        "WingConsiderations.rootThicknessAtLeast/1",
        () ->
            WingConsiderations.rootThicknessAtLeast(Length.inches(6))
                .margin(new WingFrame(10, 1.0, TWELVE), Length.inches(64).si()));
    return all;
  }

  @ParameterizedTest
  @MethodSource("published")
  void agrees_with_its_source(PublishedValues.Row row) {
    assertThat(cases().get(row.text("case")).getAsDouble())
        .as(row.toString())
        .isCloseTo(row.number("expected"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(WingConsiderationsAgainstSourcesTest.class, "wing-considerations.csv").rows();
  }

  @Test
  void every_factory_of_a_consideration_has_a_row() {
    TreeSet<String> rows = new TreeSet<>();
    published().forEach(row -> rows.add(row.text("case")));

    assertThat(rows).isEqualTo(WingConsiderationWorkingsTest.factories()).isEqualTo(cases().keySet());
  }
}
