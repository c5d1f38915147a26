// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static io.github.wingwright.core.quantity.Angle.degrees;
import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class UpsweptBodyTest {
  private static final BodyShape STRAIGHT = BodyShape.noseCylinderCone(1.5, 3);
  private static final BodyShape BENT = STRAIGHT.upswept(3, degrees(12), 0.5);

  @Test
  void the_camber_line_bends_and_then_runs_straight_at_the_angle() {
    Fuselage body = new Fuselage(BENT, millimetres(300), millimetres(30));
    double tan = Math.tan(Math.toRadians(12));
    assertThat(body.centreHeightAt(millimetres(210))).isEqualTo(Length.ZERO);
    assertThat(body.centreHeightAt(millimetres(255)).millimetres()).isCloseTo(tan * 45 / 2, within(1e-9));
    assertThat(body.centreHeightAt(millimetres(300)).millimetres()).isCloseTo(tan * (90 - 22.5), within(1e-9));
    double rise = body.centreHeightAt(millimetres(290)).minus(body.centreHeightAt(millimetres(280))).millimetres();
    assertThat(Math.toDegrees(Math.atan(rise / 10))).isCloseTo(12, within(1e-9));
    // No edge where the bend begins and where it ends.
    for (double x : new double[] {210, 255}) {
      double before = slope(body, x - 1e-3);
      assertThat(slope(body, x + 1e-3)).isCloseTo(before, within(1e-4));
    }
  }

  private static double slope(Fuselage body, double x) {
    return body.centreHeightAt(millimetres(x + 1e-4)).minus(body.centreHeightAt(millimetres(x - 1e-4))).millimetres() / 2e-4;
  }

  @Test
  void volume_and_side_view_stay() {
    assertThat(BENT.volume(0.3, 0.03)).isEqualTo(STRAIGHT.volume(0.3, 0.03));
    assertThat(BENT.sideArea(0.3, 0.03)).isEqualTo(STRAIGHT.sideArea(0.3, 0.03));
    assertThat(BENT.volumeCentroid(0.3, 0.03)).isEqualTo(STRAIGHT.volumeCentroid(0.3, 0.03));
    assertThat(BENT.width(0.1, 0.3, 0.03)).isEqualTo(0.03);
    assertThat(BENT.leastFinenessRatio()).isEqualTo(4.5);
  }

  @Test
  void the_skin_is_the_integral_over_upright_circles_that_move_up() {
    // S = ∫∫ r·√(1 + (r′ + z′·sin θ)²) dθ dx; on the cone behind the cylinder r′ = −d/(2·3d) = −1/6.
    for (double angle : new double[] {5, 12, 30, -20}) {
      double tan = Math.tan(Math.toRadians(angle));
      double l = 0.3;
      double d = 0.03;
      double area = 0;
      double moment = 0;
      int strips = 4000;
      int around = 200;
      for (int i = 0; i < strips; i++) {
        double xi = 0.09 * (i + 0.5) / strips;
        double r = 0.015 - xi / 6;
        double z = xi < 0.045 ? tan * xi / 0.045 : tan;
        double ring = 0;
        for (int j = 0; j < around; j++) {
          double theta = 2 * Math.PI * (j + 0.5) / around;
          ring += Math.hypot(1, -1.0 / 6 + z * Math.sin(theta));
        }
        double strip = r * ring * 2 * Math.PI / around * 0.09 / strips;
        area += strip;
        moment += strip * (l - 0.09 + xi);
      }
      double cone = BodiesOfRevolution.coneArea(d, 3);
      double straight = STRAIGHT.wettedArea(l, d);
      double whole = straight - cone + area;
      double wholeMoment = straight * STRAIGHT.surfaceCentroid(l, d) - cone * (l - 2.0 / 3.0 * 0.09) + moment;
      BodyShape bent = STRAIGHT.upswept(3, degrees(angle), 0.5);
      assertThat(bent.wettedArea(l, d)).as("upsweep %s", angle).isCloseTo(whole, withinPercentage(1e-4));
      assertThat(bent.surfaceCentroid(l, d)).as("upsweep %s", angle).isCloseTo(wholeMoment / whole, within(1e-6 * l));
    }
  }

  @Test
  void its_workings_check_the_mesh_against_strips() {
    Step length = Step.given("length", "L", millimetres(300), Source.BRIEF);
    Step diameter = Step.given("diameter", "d", millimetres(30), Source.BRIEF);
    Step.Solution area = (Step.Solution) BENT.wettedAreaStep(length, diameter);
    assertThat(area.value()).isEqualTo(BENT.wettedArea(0.3, 0.03));
    assertThat(area.value() - STRAIGHT.wettedArea(0.3, 0.03)).isGreaterThan(5e-4 * area.value());
    assertThat(area.residual()).isCloseTo(0, within(1e-6 * area.value()));
    assertThat(BENT.volumeStep(length, diameter)).isInstanceOf(Step.Evaluated.class);
  }

  @Test
  void bending_up_closes_the_underside_faster_than_the_top() {
    // On the straight part of the camber line, behind the cylinder of a cone of half angle atan(1/6).
    Fuselage body = new Fuselage(BENT, millimetres(300), millimetres(30));
    double tan = Math.tan(Math.toRadians(12));
    Length x = millimetres(280);
    assertThat(body.topClosureAngleAt(x).tangent()).isCloseTo(1.0 / 6 - tan, within(1e-6));
    assertThat(body.bottomClosureAngleAt(x).tangent()).isCloseTo(1.0 / 6 + tan, within(1e-6));
    assertThat(body.sideClosureAngleAt(x).tangent()).isCloseTo(1.0 / 6, within(1e-6));
    assertThat(body.bottomClosureAngleAt(millimetres(300)).tangent()).isCloseTo(1.0 / 6 + tan, within(1e-6));
    assertThat(body.bottomClosureAngleAt(millimetres(100)).tangent()).isCloseTo(0, within(1e-9));
    assertThat(body.topClosureAngleAt(millimetres(10)).isNegative()).isTrue();
  }

  @Test
  void the_upsweep_is_the_angle_from_where_the_tail_closes_to_its_end() {
    // The cone is 2 % lower than the cylinder at ξ = 1.8 mm, where z = tan υ·ξ²/90 mm; at the end z = tan υ·67.5 mm.
    Fuselage body = new Fuselage(BENT, millimetres(300), millimetres(30));
    double tan = Math.tan(Math.toRadians(12));
    double rise = tan * (67.5 - 1.8 * 1.8 / 90);
    assertThat(body.upsweep().tangent()).isCloseTo(rise / (90 - 1.8), within(1e-9));
    assertThat(new Fuselage(STRAIGHT, millimetres(300), millimetres(30)).upsweep().si()).isZero();
    assertThat(new Fuselage(STRAIGHT.upswept(3, degrees(-12), 0.5), millimetres(300), millimetres(30)).upsweep().si())
        .isEqualTo(-body.upsweep().si());
  }

  @Test
  void no_upsweep_is_no_change() {
    BodyShape level = STRAIGHT.upswept(3, degrees(0), 0.5);
    assertThat(level.wettedArea(0.3, 0.03)).isCloseTo(STRAIGHT.wettedArea(0.3, 0.03), withinPercentage(1e-12));
    assertThat(level.centreHeight(0.3, 0.3, 0.03)).isZero();
  }

  @Test
  void the_centroids_of_a_bent_cone_are_as_high_as_the_integrals_say() {
    // On the cone behind the cylinder r = 15 mm − ξ/6 and z = tan υ·ξ²/90 mm to 45 mm, then tan υ·(ξ − 22.5 mm):
    // ∫ π·r²·z dξ and ∫∫ (z + r·sin θ)·r·√(1 + (r′ + z′·sin θ)²) dθ dξ by Simpson's rule.
    double tan = Math.tan(Math.toRadians(12));
    double volumeMoment =
        0.045 * Simpson.of(s -> area(0.045 * s) * tan * 0.045 * s * s / 2)
            + 0.045 * Simpson.of(s -> area(0.045 + 0.045 * s) * tan * (0.0225 + 0.045 * s));
    assertThat(BENT.volumeCentroidHeight(0.3, 0.03))
        .isCloseTo(volumeMoment / STRAIGHT.volume(0.3, 0.03), within(1e-6 * 0.03));
    double skinMoment =
        0.045 * Simpson.of(s -> ringMoment(0.045 * s, tan * 0.045 * s * s / 2, tan * s))
            + 0.045 * Simpson.of(s -> ringMoment(0.045 + 0.045 * s, tan * (0.0225 + 0.045 * s), tan));
    assertThat(BENT.surfaceCentroidHeight(0.3, 0.03))
        .isCloseTo(skinMoment / BENT.wettedArea(0.3, 0.03), within(1e-6 * 0.03));
    Fuselage body = new Fuselage(BENT, millimetres(300), millimetres(30));
    assertThat(body.volumeCentroidHeight().si()).isEqualTo(BENT.volumeCentroidHeight(0.3, 0.03));
    assertThat(body.surfaceCentroidHeight().compareTo(body.volumeCentroidHeight())).isPositive();
    assertThat(STRAIGHT.volumeCentroidHeight(0.3, 0.03)).isZero();
    assertThat(STRAIGHT.surfaceCentroidHeight(0.3, 0.03)).isZero();
    assertThat(STRAIGHT.upswept(3, degrees(-12), 0.5).volumeCentroidHeight(0.3, 0.03))
        .isEqualTo(-BENT.volumeCentroidHeight(0.3, 0.03));
  }

  private static double area(double xi) {
    return Math.PI * Math.pow(0.015 - xi / 6, 2);
  }

  private static double ringMoment(double xi, double z, double slope) {
    double r = 0.015 - xi / 6;
    double ring = 0;
    for (int j = 0; j < 400; j++) {
      double sine = Math.sin(2 * Math.PI * (j + 0.5) / 400);
      ring += (z + r * sine) * Math.hypot(1, -1.0 / 6 + slope * sine);
    }
    return r * ring * 2 * Math.PI / 400;
  }

  @Test
  void a_box_of_a_body_can_be_swept_up_and_keeps_its_sections() {
    CrossSection box = CrossSection.roundedRectangle(0.5);
    LoftedBody level =
        LoftedBody.withBase(
            EndProfile.halfEllipsoid(),
            List.of(
                new BodyStation(millimetres(60), millimetres(40), millimetres(50), Length.ZERO, box),
                new BodyStation(millimetres(180), millimetres(40), millimetres(50), Length.ZERO, box),
                new BodyStation(millimetres(300), millimetres(20), millimetres(20), Length.ZERO, CrossSection.ellipse())));
    double l = 0.3;
    double d = level.diameter().si();
    BodyShape bent = level.upswept(2, degrees(12), 0.4);
    Facets facets = Facets.of(bent, l, d, new double[] {0, 0.06, 0.18, l - 2 * d, l - 1.2 * d, l}, 60, 480);
    assertThat(bent.volume(l, d)).isCloseTo(facets.volume(), withinPercentage(1e-3));
    assertThat(bent.wettedArea(l, d)).isCloseTo(facets.area(), withinPercentage(1e-3));
    assertThat(bent.wettedArea(l, d)).isGreaterThan(level.wettedArea(l, d));
    assertThat(bent.volumeCentroidHeight(l, d)).isCloseTo(facets.volumeHeight(), within(1e-5 * d));
    assertThat(bent.surfaceCentroidHeight(l, d)).isCloseTo(facets.areaHeight(), within(1e-5 * d));
    assertThat(bent.width(0.1, l, d)).isCloseTo(0.04, within(1e-12));
    assertThat(bent.height(0.1, l, d)).isCloseTo(0.05, within(1e-12));
    assertThat(bent.sectionRadial(0.7, 0.1, l, d)).isEqualTo(level.sectionRadial(0.7, 0.1, l, d));
    Step.Solution area =
        (Step.Solution)
            bent.wettedAreaStep(
                Step.given("length", "L", millimetres(300), Source.BRIEF),
                Step.given("diameter", "d", level.diameter(), Source.BRIEF));
    assertThat(area.residual()).isCloseTo(0, within(1e-5 * area.value()));
  }

  @Test
  void a_body_bent_twice_carries_both_bends() {
    BodyShape twice = BENT.upswept(1, degrees(-6), 1);
    double tan = Math.tan(Math.toRadians(12));
    double back = Math.tan(Math.toRadians(6));
    assertThat(twice.centreHeight(0.3, 0.3, 0.03)).isCloseTo(tan * 0.0675 - back * 0.015, within(1e-12));
    assertThat(twice.volume(0.3, 0.03)).isEqualTo(BENT.volume(0.3, 0.03));
  }

  @Test
  void what_cannot_be_bent_is_refused() {
    refuses(() -> STRAIGHT.upswept(3, degrees(50), 0.5), "upsweep must be -45° to 45°, was 50°");
    refuses(() -> STRAIGHT.upswept(3, degrees(5), 0), "part of the afterbody that bends must be 0.01 to 1.0, was 0.0");
    refuses(
        () -> STRAIGHT.upswept(0, degrees(5), 0.5),
        "length of the upswept afterbody over the diameter must be 0.1 to 50.0, was 0.0");
  }

  private static void refuses(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String start) {
    assertThatIllegalArgumentException().isThrownBy(call).withMessageStartingWith(start);
  }
}
