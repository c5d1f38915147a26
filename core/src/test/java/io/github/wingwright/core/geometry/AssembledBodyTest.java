// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class AssembledBodyTest {
  @Test
  void known_families_put_together_from_parts_are_the_same_bodies() {
    same(BodyShape.of(EndProfile.hemisphere(), 0.5, EndProfile.hemisphere(), 0.5), BodyShape.capsule(), 7.3);
    same(BodyShape.of(EndProfile.halfEllipsoid(), 2, EndProfile.cone(), 3), BodyShape.noseCylinderCone(2, 3), 8.1);
    same(BodyShape.of(EndProfile.halfEllipsoid(), 3, EndProfile.halfEllipsoid(), 3), BodyShape.prolateSpheroid(), 6);
  }

  private static void same(BodyShape assembled, BodyShape known, double fineness) {
    double d = 0.03;
    double l = fineness * d;
    assertThat(assembled.volume(l, d)).isCloseTo(known.volume(l, d), withinPercentage(1e-11));
    assertThat(assembled.wettedArea(l, d)).isCloseTo(known.wettedArea(l, d), withinPercentage(1e-11));
    assertThat(assembled.sideArea(l, d)).isCloseTo(known.sideArea(l, d), withinPercentage(1e-11));
    assertThat(assembled.volumeCentroid(l, d)).isCloseTo(known.volumeCentroid(l, d), withinPercentage(1e-11));
    assertThat(assembled.surfaceCentroid(l, d)).isCloseTo(known.surfaceCentroid(l, d), withinPercentage(1e-11));
    for (int i = 0; i <= 100; i++) {
      double x = Math.min(l, i / 100.0 * l);
      // Where an end is round, a rounding error in x is its square root in the radius.
      assertThat(assembled.radius(x, l, d)).isCloseTo(known.radius(x, l, d), within(1e-7 * d));
    }
  }

  @Test
  void a_polygon_between_the_corners_gives_the_same() {
    polygon(
        BodyShape.of(EndProfile.tangentOgive(), 1.5, EndProfile.boatTail(0.4), 1.2), 9, List.of(0.0, 1.5, 7.8, 9.0));
    polygon(
        BodyShape.of(EndProfile.haack(1.0 / 3.0), 2, EndProfile.power(0.75), 2.5), 4.5, List.of(0.0, 2.0, 4.5));
    polygon(
        BodyShape.podAndBoom(EndProfile.halfEllipsoid(), 1, 3.5, 1.5, 0.25), 12, List.of(0.0, 1.0, 2.0, 3.5, 12.0));
    polygon(
        BodyShape.podAndBoom(EndProfile.hemisphere(), 0.5, 2.5, 2, 0.1), 8, List.of(0.0, 0.5, 2.5, 8.0));
  }

  private static void polygon(BodyShape shape, double fineness, List<Double> corners) {
    double d = 0.04;
    double length = fineness * d;
    double volume = 0;
    double volumeMoment = 0;
    double area = 0;
    double areaMoment = 0;
    double side = 0;
    int points = 100_000;
    for (int part = 1; part < corners.size(); part++) {
      double from = corners.get(part - 1) * d;
      double to = corners.get(part) * d;
      double x1 = from;
      double r1 = shape.radius(from + 1e-15, length, d);
      for (int i = 1; i <= points; i++) {
        double s = 0.5 * (1 - Math.cos(Math.PI * i / points));
        // Crowded towards the corner at the nose, and towards that at the tail.
        double x2 = from + (to - from) * (part == 1 ? s * s : 1 - (1 - s) * (1 - s));
        double r2 = shape.radius(x2, length, d);
        double dx = x2 - x1;
        volume += Math.PI / 3 * dx * (r1 * r1 + r1 * r2 + r2 * r2);
        volumeMoment += Math.PI / 12 * dx
            * (x1 * (3 * r1 * r1 + 2 * r1 * r2 + r2 * r2) + x2 * (r1 * r1 + 2 * r1 * r2 + 3 * r2 * r2));
        double slant = Math.hypot(dx, r2 - r1);
        area += Math.PI * (r1 + r2) * slant;
        areaMoment += Math.PI * slant / 3 * (x1 * (2 * r1 + r2) + x2 * (r1 + 2 * r2));
        side += (r1 + r2) * dx;
        x1 = x2;
        r1 = r2;
      }
    }
    assertThat(shape.volume(length, d)).as("volume").isCloseTo(volume, withinPercentage(1e-7));
    assertThat(shape.wettedArea(length, d)).as("area").isCloseTo(area, withinPercentage(1e-7));
    assertThat(shape.sideArea(length, d)).as("side").isCloseTo(side, withinPercentage(1e-7));
    assertThat(shape.volumeCentroid(length, d)).as("volume centroid").isCloseTo(volumeMoment / volume, within(1e-9 * length));
    assertThat(shape.surfaceCentroid(length, d)).as("surface centroid").isCloseTo(areaMoment / area, within(1e-9 * length));
  }

  @Test
  void the_body_of_least_wave_drag_has_the_area_of_its_outline() {
    for (double f : new double[] {1, 2, 5, 12, 40}) {
      double area =
          Simpson.of(
              s -> {
                double sine = Math.sin(Math.PI * s);
                double slope = 1.5 * Math.cos(Math.PI * s);
                return Math.PI * 0.5 * Math.PI * sine * sine * Math.sqrt(f * f * sine + slope * slope);
              });
      assertThat(BodyShape.searsHaack().wettedArea(f, 1)).as("fineness %s", f).isCloseTo(area, withinPercentage(1e-9));
      double side = Simpson.of(s -> Math.pow(Math.sin(Math.PI * s), 2.5) * 0.5 * Math.PI * f);
      assertThat(BodyShape.searsHaack().sideArea(f, 1)).isCloseTo(side, withinPercentage(1e-9));
    }
  }

  @Test
  void its_workings_are_a_table_of_its_parts() {
    Step length = Step.given("length", "L", millimetres(360), Source.BRIEF);
    Step diameter = Step.given("diameter", "d", millimetres(40), Source.BRIEF);
    BodyShape shape = BodyShape.of(EndProfile.haack(0), 2, EndProfile.boatTail(0.4), 1.2);
    Workings workings = Workings.of(List.of(shape.volumeStep(length, diameter), shape.wettedAreaStep(length, diameter)));
    assertThat(workings.toString())
        .contains("volume of the nose (Haack series 0)")
        .contains("½ + 3/16·C with C = 0")
        .contains("(1 + β)·√(4·f² + (1 − β)²) with β = 0.4, f = 1.2")
        .contains("length of the cylinder");
    assertThat(workings.findings()).isEmpty();
  }

  @Test
  void a_base_is_told_apart_from_the_skin() {
    Fuselage body =
        new Fuselage(
            BodyShape.of(EndProfile.tangentOgive(), 1.5, EndProfile.boatTail(0.4), 1.2), millimetres(360), millimetres(40));
    assertThat(body.baseArea().squareMillimetres()).isCloseTo(Math.PI * 64, within(1e-9));
    assertThat(body.radiusAt(millimetres(360)).millimetres()).isCloseTo(8, within(1e-9));
    assertThat(new Fuselage(BodyShape.capsule(), millimetres(360), millimetres(40)).baseArea().si()).isZero();
  }

  @Test
  void the_greatest_section_is_found() {
    assertThat(new Fuselage(BodyShape.searsHaack(), millimetres(300), millimetres(40)).greatestSectionX().millimetres())
        .isCloseTo(150, within(0.05));
    assertThat(new Fuselage(BodyShape.noseCylinderCone(2, 3), millimetres(300), millimetres(40)).greatestSectionX().millimetres())
        .isCloseTo(80, within(0.05));
    BodyShape body = BodyShape.of(EndProfile.tangentOgive(), 1.5, EndProfile.cone(), 2);
    assertThat(body).isEqualTo(BodyShape.of(EndProfile.tangentOgive(), 1.5, EndProfile.cone(), 2));
    assertThat(body).isNotEqualTo(BodyShape.of(EndProfile.tangentOgive(), 1.6, EndProfile.cone(), 2));
    assertThat(body.name()).isEqualTo("tangent ogive, cylinder, cone");
  }

  @Test
  void a_pod_and_a_boom_have_their_widths() {
    Fuselage body =
        new Fuselage(
            BodyShape.podAndBoom(EndProfile.halfEllipsoid(), 1, 3.5, 1.5, 0.25), millimetres(500), millimetres(40));
    assertThat(body.widthAt(millimetres(60)).millimetres()).isCloseTo(40, within(1e-9));
    assertThat(body.heightAt(millimetres(400)).millimetres()).isCloseTo(10, within(1e-9));
    assertThat(body.sectionAreaAt(millimetres(400)).squareMillimetres()).isCloseTo(25 * Math.PI, within(1e-9));
    assertThat(body.centreHeightAt(millimetres(400))).isEqualTo(Length.ZERO);
    assertThat(body.shape().leastFinenessRatio()).isCloseTo(3.5, within(1e-12));
  }

  @Test
  void the_greatest_section_begins_where_the_nose_ends() {
    double d = 0.0317;
    for (BodyShape shape :
        List.of(
            BodyShape.of(EndProfile.cone(), 1.7, EndProfile.power(0.4), 2.5),
            BodyShape.of(EndProfile.haack(0.5), 1.7, EndProfile.boatTail(0.4), 1.2),
            BodyShape.noseCylinderCone(1.7, 2),
            BodyShape.noseCylinderCone(1.7, 2).upswept(2, Angle.degrees(9), 0.4),
            BodyShape.podAndBoom(EndProfile.tangentOgive(), 1.7, 4, 1.5, 0.25))) {
      double x = shape.greatestSection(9 * d, d);
      assertThat(x).as("%s", shape).isCloseTo(1.7 * d, within(1e-15));
      assertThat(shape.radius(x, 9 * d, d)).as("%s", shape).isCloseTo(0.5 * d, within(1e-15));
    }
    assertThat(BodyShape.capsule().greatestSection(9 * d, d)).isEqualTo(0.5 * d);
    assertThat(BodyShape.prolateSpheroid().greatestSection(9 * d, d)).isEqualTo(4.5 * d);
    assertThat(BodyShape.searsHaack().greatestSection(9 * d, d)).isEqualTo(4.5 * d);
  }

  @Test
  void proportions_that_do_not_fit_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BodyShape.podAndBoom(EndProfile.halfEllipsoid(), 1, 2, 1.5, 0.25))
        .withMessage("pod fineness must be at least that of its nose and its fairing together, 2.5, was 2.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BodyShape.podAndBoom(EndProfile.halfEllipsoid(), 1, 4, 1.5, 1.25))
        .withMessage("diameter of the boom over that of the pod must be 0.001 to 0.999, was 1.25");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Fuselage(BodyShape.podAndBoom(EndProfile.halfEllipsoid(), 1, 4, 1.5, 0.2), millimetres(100), millimetres(40)))
        .withMessage("body length must be at least 160 mm for a pod and boom of diameter 40 mm, was 100 mm");
  }
}
