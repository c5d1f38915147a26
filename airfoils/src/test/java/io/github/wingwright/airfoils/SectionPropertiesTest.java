// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SectionPropertiesTest {
  static Stream<PublishedValues.Row> rows() {
    return PublishedValues.beside(SectionPropertiesTest.class, "properties.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void properties_have_ten_digits(PublishedValues.Row row) {
    SectionProperties p = Naca4.parse(row.text("section"))
        .withTrailingEdge(TrailingEdge.valueOf(row.text("edge")))
        .withConstruction(Construction.valueOf(row.text("construction")))
        .properties();
    close(p.area(), row, "area");
    close(p.centroidX(), row, "centroid_x");
    close(p.centroidY(), row, "centroid_y");
    close(p.secondMomentX(), row, "second_moment_x");
    close(p.secondMomentY(), row, "second_moment_y");
    close(p.productOfInertia(), row, "product");
    close(p.upperLength(), row, "upper");
    close(p.lowerLength(), row, "lower");
  }

  private static void close(double value, PublishedValues.Row row, String column) {
    double expected = row.number(column);
    assertThat(value).as(column + " of " + row)
        .isCloseTo(expected, within(row.number("tolerance") * Math.max(Math.abs(expected), 1e-6)));
  }

  @Test
  void vertical_construction_keeps_the_area_of_the_symmetric_section() {
    // 0.685083333·t open, 0.680883333·t closed, by integration of the thickness form.
    for (String designation : new String[] {"0012", "2412", "6412"}) {
      Naca4 section = Naca4.parse(designation).withConstruction(Construction.VERTICAL);
      assertThat(section.area()).isCloseTo(0.12 * 0.685083333333333, within(1e-14));
      assertThat(section.withTrailingEdge(TrailingEdge.CLOSED).area())
          .isCloseTo(0.12 * 0.680883333333333, within(1e-14));
    }
  }

  @Test
  void a_flat_plate_has_the_properties_of_a_rectangle_with_a_half_circle() {
    double t = 0.04;
    SectionProperties p = ComposedSection.plate(t, 0).properties();
    double rectangle = (1 - t / 2) * t;
    double half = Math.PI * t * t / 8;
    assertThat(p.area()).isCloseTo(rectangle + half, within(1e-14));
    double halfCentroid = t / 2 - 4 * (t / 2) / (3 * Math.PI);
    double centroid = (rectangle * (1 + t / 2) / 2 + half * halfCentroid) / (rectangle + half);
    assertThat(p.centroidX()).isCloseTo(centroid, within(1e-13));
    assertThat(p.perimeter()).isCloseTo(2 * (1 - t / 2) + Math.PI * t / 2 + t, within(1e-12));
    assertThat(p.secondMomentX())
        .isCloseTo((1 - t / 2) * t * t * t / 12 + Math.PI * Math.pow(t / 2, 4) / 8, within(1e-16));
  }

  @Test
  void a_fine_polygon_has_the_same_area_and_length() {
    Naca4 section = Naca4.parse("4415");
    Contour fine = section.contour(20001);
    assertThat(fine.area()).isCloseTo(section.area(), within(1e-8));
    assertThat(fine.perimeter()).isCloseTo(section.perimeter(), within(1e-7));
  }
}
