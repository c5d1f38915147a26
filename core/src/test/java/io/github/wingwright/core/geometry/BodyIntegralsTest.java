// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Volume, surface, side area and both centroids once more, from the radius alone: frustums of a polygon with 100,000
 * points between any two corners of the outline, drawn together at the corners, where a blunt body turns. The chord of the
 * arc is off by less than 1 part in 10¹⁰.
 */
class BodyIntegralsTest {
  private static final int POINTS = 100_000;

  /** A body with the lengths of its nose and its tail: between them its outline is straight. */
  record Body(BodyShape shape, double length, double diameter, double nose, double tail) {
    double[] corners() {
      return new double[] {0, nose, length - tail, length};
    }
  }

  static Stream<Body> bodies() {
    return Stream.of(1.0, 1.3, 2.5, 8.0, 25.0).flatMap(f -> Stream.of(
        body(BodyShape.capsule(), f, 0.5, 0.5),
        body(BodyShape.prolateSpheroid(), f, f / 2, f / 2),
        body(BodyShape.noseCylinderCone(0.5, 0.5), f, 0.5, 0.5),
        body(BodyShape.noseCylinderCone(1.5, 3), 3.5 + f, 1.5, 3),
        body(BodyShape.noseCylinderCone(4, 0.5), 3.5 + f, 4, 0.5)));
  }

  private static Body body(BodyShape shape, double fineness, double nose, double tail) {
    double f = Math.max(fineness, shape.leastFinenessRatio());
    return new Body(shape, 0.04 * f, 0.04, 0.04 * nose, 0.04 * tail);
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void the_polygon_gives_the_same(Body body) {
    BodyShape shape = body.shape();
    double length = body.length();
    double d = body.diameter();
    double volume = 0;
    double volumeMoment = 0;
    double area = 0;
    double areaMoment = 0;
    double side = 0;
    double[] corners = body.corners();
    for (int part = 0; part < 3; part++) {
      double x1 = corners[part];
      double r1 = shape.radius(x1, length, d);
      for (int i = 1; i <= POINTS; i++) {
        double x2 = corners[part] + 0.5 * (corners[part + 1] - corners[part]) * (1 - Math.cos(Math.PI * i / POINTS));
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
    assertThat(shape.volume(length, d)).as("volume").isCloseTo(volume, withinPercentage(1e-8));
    assertThat(shape.wettedArea(length, d)).as("area").isCloseTo(area, withinPercentage(1e-8));
    assertThat(shape.sideArea(length, d)).as("side").isCloseTo(side, withinPercentage(1e-8));
    assertThat(shape.volumeCentroid(length, d)).as("volume centroid").isCloseTo(volumeMoment / volume, within(1e-10 * length));
    assertThat(shape.surfaceCentroid(length, d)).as("surface centroid").isCloseTo(areaMoment / area, within(1e-10 * length));
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void the_radius_grows_to_half_the_diameter_and_closes_at_both_ends(Body body) {
    double greatest = 0;
    for (int i = 0; i <= 2000; i++) {
      double r = body.shape().radius(body.length() * i / 2000.0, body.length(), body.diameter());
      assertThat(r).isBetween(0.0, 0.5 * body.diameter() * (1 + 1e-12));
      greatest = Math.max(greatest, r);
    }
    assertThat(greatest).isCloseTo(0.5 * body.diameter(), withinPercentage(0.1));
    assertThat(body.shape().radius(0, body.length(), body.diameter())).isCloseTo(0, within(1e-9));
    assertThat(body.shape().radius(body.length(), body.length(), body.diameter())).isCloseTo(0, within(1e-9));
  }
}
