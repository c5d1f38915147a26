// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BodyShapeTest {
  private static final Map<String, BodyShape> BY_NAME =
      Map.of(
          "capsule", BodyShape.capsule(),
          "prolate spheroid", BodyShape.prolateSpheroid(),
          "Sears-Haack", BodyShape.searsHaack());

  @ParameterizedTest
  @MethodSource("published")
  void volume_and_area_agree_with_the_exact_values(PublishedValues.Row row) {
    BodyShape shape = BY_NAME.get(row.text("shape"));
    double length = row.number("length_m");
    double diameter = 2 * row.number("radius_m");
    assertThat(shape.volume(length, diameter))
        .isCloseTo(row.number("volume_m3"), withinPercentage(row.number("tolerance_percent")));
    assertThat(shape.wettedArea(length, diameter))
        .isCloseTo(row.number("wetted_area_m2"), withinPercentage(row.number("tolerance_percent")));
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(BodyShapeTest.class, "bodies.csv").rows();
  }

  @Test
  void a_nose_a_cylinder_and_a_cone_add_up_to_the_body() {
    PublishedValues parts = PublishedValues.beside(BodyShapeTest.class, "bodies-of-parts.csv");
    double volume = 0.0;
    double area = 0.0;
    for (PublishedValues.Row row : parts) {
      boolean wanted = row.text("part").equals("half ellipsoid") || row.text("part").equals("cone");
      if (wanted && row.number("radius_m") == 0.03) {
        volume += row.number("volume_m3");
        area += row.number("curved_area_m2");
      }
    }
    // Both parts have radius 0.03 and length 0.12; between them a cylinder 0.1 long.
    volume += Math.PI * 0.03 * 0.03 * 0.1;
    area += 2 * Math.PI * 0.03 * 0.1;
    BodyShape shape = BodyShape.noseCylinderCone(2, 2);
    assertThat(shape.volume(0.34, 0.06)).isCloseTo(volume, withinPercentage(1e-7));
    assertThat(shape.wettedArea(0.34, 0.06)).isCloseTo(area, withinPercentage(1e-7));
  }

  @Test
  void the_documented_examples_hold() {
    assertThat(BodiesOfRevolution.capsuleVolume(0.3, 0.06)).isCloseTo(791.681e-6, within(5e-10));
    assertThat(BodiesOfRevolution.capsuleWettedArea(0.3, 0.06)).isCloseTo(565.487e-4, within(5e-8));
    assertThat(BodiesOfRevolution.spheroidVolume(0.3, 0.06)).isCloseTo(565.487e-6, within(5e-10));
    assertThat(BodiesOfRevolution.spheroidWettedArea(0.06, 5)).isCloseTo(451.733e-4, within(5e-8));
    assertThat(BodiesOfRevolution.noseCylinderConeVolume(0.3, 0.03, 1.5, 3)).isCloseTo(159.043e-6, within(5e-10));
    assertThat(BodiesOfRevolution.noseCylinderConeWettedArea(0.3, 0.03, 1.5, 3)).isCloseTo(233.261e-4, within(5e-8));
  }

  @Test
  void a_sphere_is_the_end_of_every_family() {
    double volume = Math.PI / 6;
    assertThat(BodyShape.capsule().volume(1, 1)).isCloseTo(volume, within(1e-15));
    assertThat(BodyShape.capsule().wettedArea(1, 1)).isCloseTo(Math.PI, within(1e-15));
    assertThat(BodyShape.prolateSpheroid().volume(1, 1)).isCloseTo(volume, within(1e-15));
    assertThat(BodyShape.prolateSpheroid().wettedArea(1, 1)).isCloseTo(Math.PI, within(1e-15));
  }

  @Test
  void the_area_passes_through_the_sphere_without_a_jump() {
    // dS/df at the sphere is 2/3·π: next to it the closed form divides two small numbers.
    for (double step : new double[] {1e-3, 1e-6, 1e-8, 1e-9, 1e-10, 1e-12}) {
      double slope = (BodyShape.prolateSpheroid().wettedArea(1 + step, 1) - Math.PI) / step;
      assertThat(slope).as("step %s", step).isCloseTo(2.0 / 3.0 * Math.PI, within(step + 2e-15 / step));
    }
  }

  @Test
  void sizes_scale_with_the_powers_of_length() {
    Seeded.points(8, 200, new double[] {1, 20}, new double[] {0.01, 100}).forEach(p -> everyShape().forEach(shape -> {
      double f = Math.max(p[0], shape.leastFinenessRatio());
      double s = p[1];
      assertThat(shape.volume(s * f, s)).isCloseTo(s * s * s * shape.volume(f, 1), withinPercentage(1e-11));
      assertThat(shape.wettedArea(s * f, s)).isCloseTo(s * s * shape.wettedArea(f, 1), withinPercentage(1e-11));
      assertThat(shape.sideArea(s * f, s)).isCloseTo(s * s * shape.sideArea(f, 1), withinPercentage(1e-11));
      assertThat(shape.volumeCentroid(s * f, s)).isCloseTo(s * shape.volumeCentroid(f, 1), withinPercentage(1e-11));
      assertThat(shape.surfaceCentroid(s * f, s)).isCloseTo(s * shape.surfaceCentroid(f, 1), withinPercentage(1e-11));
    }));
  }

  @Test
  void the_workings_give_the_number_that_is_used() {
    Step length = Step.given("length", "L", millimetres(300), Source.BRIEF);
    Step diameter = Step.given("diameter", "d", millimetres(25), Source.BRIEF);
    everyShape().forEach(shape -> {
      assertThat(shape.volumeStep(length, diameter).value()).isEqualTo(shape.volume(0.3, 0.025));
      assertThat(shape.wettedAreaStep(length, diameter).value()).isEqualTo(shape.wettedArea(0.3, 0.025));
    });
    shapes().forEach(shape -> {
      assertThat(shape.volumeStep(length, diameter)).isInstanceOf(Step.Evaluated.class);
      assertThat(shape.wettedAreaStep(length, diameter)).isInstanceOf(Step.Evaluated.class);
    });
    Step.Solution integrated = (Step.Solution) BodyShape.searsHaack().wettedAreaStep(length, diameter);
    assertThat(integrated.residual()).isCloseTo(0, within(1e-6 * integrated.value()));
  }

  @Test
  void a_family_of_ones_own_gets_workings_with_a_residual() {
    Step length = Step.given("length", "L", millimetres(300), Source.BRIEF);
    Step diameter = Step.given("diameter", "d", millimetres(25), Source.BRIEF);
    BodyShape own = new OwnCone();
    Step.Solution volume = (Step.Solution) own.volumeStep(length, diameter);
    Step.Solution area = (Step.Solution) own.wettedAreaStep(length, diameter);
    assertThat(volume.value()).isEqualTo(own.volume(0.3, 0.025));
    assertThat(volume.residual()).isCloseTo(0, within(1e-6 * volume.value()));
    assertThat(area.residual()).isCloseTo(0, within(1e-6 * area.value()));
    assertThat(area.method()).isEqualTo("the method of the cone");
  }

  @Test
  void what_a_family_cannot_form_is_refused() {
    refuses(() -> BodyShape.noseCylinderCone(0.4, 3), "nose fineness must be 0.5 to 20.0, was 0.4");
    refuses(() -> BodyShape.noseCylinderCone(1.5, 0), "tail fineness must be 0.05 to 50.0, was 0.0");
    refuses(() -> BodyShape.noseCylinderCone(1.5, Double.NaN), "tail fineness must be 0.05 to 50.0, was NaN");
    refuses(
        () -> BodyShape.capsule().volume(millimetres(20), millimetres(25)),
        "body length must be at least 25 mm for a capsule of diameter 25 mm, was 20 mm");
    refuses(
        () -> BodyShape.prolateSpheroid().wettedArea(millimetres(200), millimetres(-25)),
        "body diameter must be positive, was -25 mm");
  }

  static Stream<BodyShape> shapes() {
    return Stream.of(
        BodyShape.capsule(),
        BodyShape.prolateSpheroid(),
        BodyShape.noseCylinderCone(0.5, 0.5),
        BodyShape.noseCylinderCone(1.5, 3),
        BodyShape.noseCylinderCone(4, 0.5));
  }

  static Stream<BodyShape> everyShape() {
    return Stream.concat(
        shapes(),
        Stream.of(
            BodyShape.searsHaack(),
            BodyShape.of(EndProfile.tangentOgive(), 1.5, EndProfile.boatTail(0.4), 1.2),
            BodyShape.of(EndProfile.haack(1.0 / 3.0), 2, EndProfile.power(0.75), 2.5),
            BodyShape.of(EndProfile.halfEllipsoid(), 1.5, EndProfile.parabolic(0.8), 2),
            BodyShape.of(EndProfile.hemisphere(), 0.5, EndProfile.cone(), 2),
            BodyShape.podAndBoom(EndProfile.halfEllipsoid(), 1, 3.5, 1.5, 0.25)));
  }

  private static void refuses(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
    assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
  }

  @Test
  void a_fuselage_is_told_in_the_unit_of_its_reader() {
    Fuselage body = new Fuselage(BodyShape.capsule(), Length.feet(22), Length.feet(4.25));
    assertThat(body.format(Length.FOOT)).isEqualTo("fuselage 22 ft × 4.25 ft, capsule");
  }
}
