// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static io.github.wingwright.core.quantity.Length.metres;
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

class LoftedBodyTest {
  private static final CrossSection BOX = CrossSection.roundedRectangle(0.4);

  /** The body of a small survey aeroplane: a box of a body that shrinks to a round tail, raised aft. */
  private static LoftedBody survey(double raised) {
    return LoftedBody.of(
        EndProfile.halfEllipsoid(),
        List.of(
            new BodyStation(metres(0.15), metres(0.12), metres(0.14), metres(0.0), BOX),
            new BodyStation(metres(0.45), metres(0.13), metres(0.15), metres(0.0), BOX),
            new BodyStation(metres(0.8), metres(0.07), metres(0.08), metres(0.4 * raised), CrossSection.ellipse())),
        EndProfile.cone(),
        metres(1.1),
        metres(raised));
  }

  @Test
  void round_stations_give_the_body_of_revolution() {
    LoftedBody lofted =
        LoftedBody.of(
            EndProfile.halfEllipsoid(),
            List.of(BodyStation.round(millimetres(60), millimetres(40)), BodyStation.round(millimetres(200), millimetres(40))),
            EndProfile.tangentOgive(),
            millimetres(300),
            Length.ZERO);
    BodyShape round = BodyShape.of(EndProfile.halfEllipsoid(), 1.5, EndProfile.tangentOgive(), 2.5);
    Fuselage body = lofted.fuselage();
    assertThat(body.length().si()).isEqualTo(0.3);
    assertThat(body.diameter().si()).isCloseTo(0.04, withinPercentage(1e-10));
    assertThat(body.volume().si()).isCloseTo(round.volume(0.3, 0.04), withinPercentage(1e-9));
    assertThat(body.volumeCentroid().si()).isCloseTo(round.volumeCentroid(0.3, 0.04), withinPercentage(1e-9));
    assertThat(body.sideArea().si()).isCloseTo(round.sideArea(0.3, 0.04), withinPercentage(1e-9));
    assertThat(body.wettedArea().si()).isCloseTo(round.wettedArea(0.3, 0.04), withinPercentage(1e-4));
    assertThat(body.surfaceCentroid().si()).isCloseTo(round.surfaceCentroid(0.3, 0.04), withinPercentage(1e-4));
    assertThat(lofted.relativeError()).isLessThan(1e-5);
    for (int i = 0; i <= 30; i++) {
      Length x = millimetres(10 * i);
      assertThat(body.radiusAt(x).si()).isCloseTo(round.radius(x.si(), 0.3, 0.04), within(1e-9));
      assertThat(body.widthAt(x).si()).isCloseTo(2 * round.radius(x.si(), 0.3, 0.04), within(1e-9));
    }
  }

  @Test
  void an_ellipsoid_of_three_axes_has_its_volume_and_its_area() {
    double a = 0.5;
    double b = 0.1;
    double c = 0.15;
    LoftedBody body =
        LoftedBody.of(
            EndProfile.halfEllipsoid(),
            List.of(new BodyStation(metres(a), metres(2 * b), metres(2 * c), Length.ZERO, CrossSection.ellipse())),
            EndProfile.halfEllipsoid(),
            metres(2 * a),
            Length.ZERO);
    Fuselage fuselage = body.fuselage();
    assertThat(fuselage.volume().si()).isCloseTo(4.0 / 3.0 * Math.PI * a * b * c, withinPercentage(1e-10));
    // S = ∫∫ sin θ·√((b·c·cos θ)² + (a·sin θ)²·((c·cos φ)² + (b·sin φ)²)) dθ dφ, θ from the long axis.
    int rings = 2000;
    double area = 0;
    for (int i = 0; i < rings; i++) {
      double theta = Math.PI * (i + 0.5) / rings;
      for (int j = 0; j < 400; j++) {
        double phi = 2 * Math.PI * (j + 0.5) / 400;
        double across = Math.pow(c * Math.cos(phi), 2) + Math.pow(b * Math.sin(phi), 2);
        area += Math.sin(theta)
            * Math.sqrt(Math.pow(b * c * Math.cos(theta), 2) + a * a * Math.pow(Math.sin(theta), 2) * across);
      }
    }
    area *= Math.PI / rings * 2 * Math.PI / 400;
    assertThat(fuselage.wettedArea().si()).isCloseTo(area, withinPercentage(1e-4));
    assertThat(fuselage.surfaceCentroid().si()).isCloseTo(a, within(1e-9));
    assertThat(fuselage.frontalArea().si()).isCloseTo(Math.PI * b * c, withinPercentage(1e-9));
  }

  @Test
  void a_prism_has_the_area_of_its_perimeter() {
    LoftedBody body =
        LoftedBody.withBase(
            EndProfile.cone(),
            List.of(
                new BodyStation(metres(0.1), metres(0.2), metres(0.1), Length.ZERO, BOX),
                new BodyStation(metres(1.1), metres(0.2), metres(0.1), Length.ZERO, BOX)));
    LoftedBody nose =
        LoftedBody.withBase(
            EndProfile.cone(),
            List.of(
                new BodyStation(metres(0.1), metres(0.2), metres(0.1), Length.ZERO, BOX),
                new BodyStation(metres(0.1 + 1e-9), metres(0.2), metres(0.1), Length.ZERO, BOX)));
    double prism = body.fuselage().wettedArea().si() - nose.fuselage().wettedArea().si();
    assertThat(prism).isCloseTo(BOX.perimeter(0.2, 0.1), withinPercentage(0.01));
    assertThat(body.fuselage().volume().si()).isCloseTo(BOX.area(0.2, 0.1) * (1 + 0.1 / 3), withinPercentage(1e-9));
    assertThat(body.fuselage().baseArea().si()).isCloseTo(BOX.area(0.2, 0.1), withinPercentage(1e-9));
  }

  @Test
  void raising_the_tail_changes_the_skin_alone() {
    Fuselage level = survey(0).fuselage();
    Fuselage raised = survey(0.08).fuselage();
    assertThat(raised.volume().si()).isCloseTo(level.volume().si(), withinPercentage(1e-10));
    assertThat(raised.volumeCentroid().si()).isCloseTo(level.volumeCentroid().si(), withinPercentage(1e-10));
    assertThat(raised.sideArea().si()).isCloseTo(level.sideArea().si(), withinPercentage(1e-10));
    assertThat(raised.diameter().si()).isCloseTo(level.diameter().si(), withinPercentage(1e-10));
    assertThat(raised.wettedArea().si() / level.wettedArea().si()).isBetween(1.0005, 1.02);
    assertThat(raised.centreHeightAt(metres(1.1)).si()).isCloseTo(0.08, within(1e-12));
    assertThat(raised.centreHeightAt(metres(0.3)).si()).isCloseTo(0, within(1e-12));
    assertThat(level.centreHeightAt(metres(0.7))).isEqualTo(Length.ZERO);
  }

  @Test
  void volume_and_side_view_are_the_integrals_of_its_curves() {
    Fuselage body = survey(0.05).fuselage();
    double l = body.length().si();
    double d = body.diameter().si();
    double volume = Simpson.of(s -> l * body.shape().sectionArea(s * s * (3 - 2 * s) * l, l, d) * 6 * s * (1 - s));
    double side = Simpson.of(s -> l * body.shape().height(s * s * (3 - 2 * s) * l, l, d) * 6 * s * (1 - s));
    assertThat(body.volume().si()).isCloseTo(volume, withinPercentage(1e-5));
    assertThat(body.sideArea().si()).isCloseTo(side, withinPercentage(1e-5));
  }

  @Test
  void its_skin_is_that_of_its_outlines() {
    // Strips between outlines, by the polygon of each: an area from below that a fine grid brings close.
    Fuselage body = survey(0.05).fuselage();
    double l = body.length().si();
    double d = body.diameter().si();
    int along = 4000;
    int around = 400;
    double[][] last = new double[around + 1][3];
    double area = 0;
    for (int i = 0; i <= along; i++) {
      double s = (double) i / along;
      double x = s * s * (3 - 2 * s) * l;
      double w = body.shape().width(x, l, d);
      double h = body.shape().height(x, l, d);
      double z = body.shape().centreHeight(x, l, d);
      double[][] ring = new double[around + 1][];
      for (int j = 0; j <= around; j++) {
        double angle = Math.PI * (j / (double) around - 0.5);
        double t = Math.min(1, Math.max(0, (x - 0.45) / 0.35));
        double share = t * t * (3 - 2 * t);
        double rho = (1 - share) * BOX.radial(angle, w, h) + share;
        rho = Double.isFinite(rho) ? rho : 0;
        ring[j] = new double[] {x, 0.5 * w * rho * Math.cos(angle), z + 0.5 * h * rho * Math.sin(angle)};
      }
      if (i > 0) {
        for (int j = 0; j < around; j++) {
          area += triangle(last[j], last[j + 1], ring[j]) + triangle(ring[j], ring[j + 1], last[j + 1]);
        }
      }
      last = ring;
    }
    assertThat(body.wettedArea().si()).isCloseTo(2 * area, withinPercentage(0.002));
    assertThat(body.shape().relativeError()).isLessThanOrEqualTo(2e-5);
  }

  private static double triangle(double[] p, double[] q, double[] r) {
    double[] u = {q[0] - p[0], q[1] - p[1], q[2] - p[2]};
    double[] v = {r[0] - p[0], r[1] - p[1], r[2] - p[2]};
    return 0.5 * Math.sqrt(
        Math.pow(u[1] * v[2] - u[2] * v[1], 2)
            + Math.pow(u[2] * v[0] - u[0] * v[2], 2)
            + Math.pow(u[0] * v[1] - u[1] * v[0], 2));
  }

  @Test
  void its_workings_say_how_good_they_are() {
    LoftedBody body = survey(0.05);
    Step length = Step.given("length", "L", body.length(), Source.BRIEF);
    Step diameter = Step.given("diameter", "d", body.diameter(), Source.BRIEF);
    Step.Solution area = (Step.Solution) body.wettedAreaStep(length, diameter);
    assertThat(area.value()).isEqualTo(body.fuselage().wettedArea().si());
    assertThat(area.residual()).isEqualTo(body.relativeError() * area.value());
    Step.Solution volume = (Step.Solution) body.volumeStep(length, diameter);
    assertThat(volume.residual()).isCloseTo(0, within(1e-5 * volume.value()));
  }

  @Test
  void as_a_family_it_stretches_and_scales() {
    LoftedBody body = survey(0.05);
    double l = body.length().si();
    double d = body.diameter().si();
    assertThat(body.volume(2 * l, 3 * d)).isCloseTo(18 * body.volume(l, d), withinPercentage(1e-10));
    assertThat(body.wettedArea(2 * l, 2 * d)).isCloseTo(4 * body.wettedArea(l, d), withinPercentage(1e-10));
    assertThat(body.surfaceCentroid(2 * l, 2 * d)).isCloseTo(2 * body.surfaceCentroid(l, d), withinPercentage(1e-10));
    assertThat(body.wettedArea(l * (1 + 1e-9), d)).isCloseTo(body.wettedArea(l, d), withinPercentage(1e-6));
    assertThat(body.width(0.6 * l, l, d) * 3).isCloseTo(body.width(1.2 * l, 2 * l, 3 * d), within(1e-12));
    assertThat(body.stations()).hasSize(3);
    assertThat(body.toString()).startsWith("lofted body 1.1 m × ").hasSizeLessThanOrEqualTo(75);
  }

  @Test
  void curves_do_not_overshoot_their_stations() {
    Fuselage body = survey(0.05).fuselage();
    for (int i = 0; i <= 1000; i++) {
      Length x = body.length().times(i / 1000.0);
      assertThat(body.widthAt(x).si()).isLessThanOrEqualTo(0.13 + 1e-12);
      assertThat(body.heightAt(x).si()).isLessThanOrEqualTo(0.15 + 1e-12);
      assertThat(body.centreHeightAt(x).si()).isBetween(0.0, 0.05 + 1e-12);
    }
    assertThat(body.widthAt(metres(0.45)).si()).isCloseTo(0.13, within(1e-12));
    assertThat(body.widthAt(metres(0.8)).si()).isCloseTo(0.07, within(1e-12));
  }

  @Test
  void between_two_boxes_of_other_corners_the_section_is_exact() {
    // Corners of both boxes once fell between the points of the rule: 0.6 % of the section was lost, and of the skin 0.4 %.
    for (double[] rounding : new double[][] {{0.95, 0.0}, {0.0, 0.48}, {0.88, 0.16}}) {
      LoftedBody body =
          LoftedBody.withBase(
              EndProfile.halfEllipsoid(),
              List.of(
                  new BodyStation(metres(1), metres(0.9), metres(0.6), Length.ZERO, CrossSection.roundedRectangle(rounding[0])),
                  new BodyStation(metres(2), metres(0.7), metres(0.5), Length.ZERO, CrossSection.roundedRectangle(rounding[1]))));
      double d = body.diameter().si();
      for (double x : new double[] {1.0, 1.2, 1.5, 1.9, 2.0}) {
        assertThat(body.sectionArea(x, 2, d)).as("at %s", x).isCloseTo(polygon(body, x, d), withinPercentage(1e-6));
      }
      Facets facets = Facets.of(body, 2, d, new double[] {0, 1, 2}, 40, 960);
      assertThat(body.volume(2, d)).isCloseTo(facets.volume(), withinPercentage(1e-4));
      assertThat(body.wettedArea(2, d)).isCloseTo(facets.area(), withinPercentage(1e-3));
      assertThat(body.relativeError()).isBetween(1e-7, 3e-5);
    }
  }

  private static double polygon(BodyShape body, double x, double d) {
    double sum = 0;
    int corners = 40_000;
    for (int j = 0; j < corners; j++) {
      double from = 2 * Math.PI * j / corners;
      double to = 2 * Math.PI * (j + 1) / corners;
      sum += 0.5 * Math.sin(to - from) * body.sectionRadial(from, x, 2, d) * body.sectionRadial(to, x, 2, d);
    }
    return sum * 0.25 * body.width(x, 2, d) * body.height(x, 2, d);
  }

  @Test
  void where_a_box_turns_from_upright_to_flat_its_corner_follows_the_shorter_side() {
    // A = w·h − (4 − π)·r², r = ¼·min(w, h): with w and h on straight lines an integral by hand, with an edge at the middle.
    CrossSection box = CrossSection.roundedRectangle(0.5);
    LoftedBody body =
        LoftedBody.withBase(
            EndProfile.cone(),
            List.of(
                new BodyStation(metres(1), metres(0.4), metres(0.6), Length.ZERO, box),
                new BodyStation(metres(2), metres(0.6), metres(0.4), Length.ZERO, box)));
    double product = 0.25 - 0.04 / 12;
    double least = (Math.pow(0.5, 3) - Math.pow(0.4, 3)) / 3 / 0.1;
    double loft = product - (4 - Math.PI) / 16 * least;
    double nose = box.area(0.4, 0.6) / 3;
    assertThat(body.fuselage().volume().si()).isCloseTo(loft + nose, withinPercentage(1e-9));
  }

  @Test
  void the_greatest_section_is_found_to_rounding_at_a_station_and_between_two() {
    Fuselage edge =
        LoftedBody.of(
                EndProfile.cone(),
                List.of(BodyStation.round(metres(0.123_456_789), metres(0.1))),
                EndProfile.cone(),
                metres(0.6),
                Length.ZERO)
            .fuselage();
    assertThat(edge.greatestSectionX().si()).isCloseTo(0.123_456_789, within(1e-15));
    // w = 0.4 + 0.2·t against h = 0.6 − 0.2·t: an ellipse is greatest half-way.
    LoftedBody between =
        LoftedBody.withBase(
            EndProfile.cone(),
            List.of(
                new BodyStation(metres(1), metres(0.4), metres(0.6), Length.ZERO, CrossSection.ellipse()),
                new BodyStation(metres(2), metres(0.6), metres(0.4), Length.ZERO, CrossSection.ellipse())));
    assertThat(between.fuselage().greatestSectionX().si()).isCloseTo(1.5, within(1e-6));
    assertThat(between.diameter().si()).isCloseTo(0.5, within(1e-12));
    // Along a straight piece it is the first place.
    Fuselage straight =
        LoftedBody.withBase(EndProfile.cone(), List.of(BodyStation.round(metres(0.3), metres(0.1)), BodyStation.round(metres(1), metres(0.1))))
            .fuselage();
    assertThat(straight.greatestSectionX().si()).isCloseTo(0.3, within(1e-15));
  }

  @Test
  void raising_the_tail_raises_both_centroids() {
    Fuselage raised = survey(0.08).fuselage();
    Facets facets =
        Facets.of(raised.shape(), 1.1, raised.diameter().si(), new double[] {0, 0.15, 0.45, 0.8, 1.1}, 60, 480);
    assertThat(raised.volumeCentroidHeight().si()).isCloseTo(facets.volumeHeight(), within(1e-6));
    assertThat(raised.surfaceCentroidHeight().si()).isCloseTo(facets.areaHeight(), within(1e-6));
    assertThat(survey(0).fuselage().volumeCentroidHeight()).isEqualTo(Length.ZERO);
    double l = raised.length().si();
    double d = raised.diameter().si();
    assertThat(raised.shape().surfaceCentroidHeight(2 * l, 2 * d))
        .isCloseTo(2 * raised.surfaceCentroidHeight().si(), withinPercentage(1e-9));
  }

  @Test
  void what_is_no_body_is_refused() {
    BodyStation station = BodyStation.round(metres(0.2), metres(0.1));
    refuses(
        () -> LoftedBody.of(EndProfile.halfEllipsoid(), List.of(), EndProfile.cone(), metres(1), Length.ZERO),
        "a lofted body needs at least one station, got none");
    refuses(
        () -> LoftedBody.of(EndProfile.halfEllipsoid(), List.of(station, station), EndProfile.cone(), metres(1), Length.ZERO),
        "stations must run aft: after 200 mm must come more, was 200 mm");
    refuses(
        () -> LoftedBody.of(EndProfile.halfEllipsoid(), List.of(station), EndProfile.cone(), metres(0.2), Length.ZERO),
        "length must be more than the last station's 200 mm, was 200 mm");
    refuses(
        () -> LoftedBody.withBase(EndProfile.halfEllipsoid(), List.of(station)),
        "a body with a base needs at least two stations, got one");
    refuses(
        () -> LoftedBody.of(EndProfile.boatTail(0.3), List.of(station), EndProfile.cone(), metres(1), Length.ZERO),
        "a nose must come to a point or a round tip, was boat-tail to 0.3");
    refuses(
        () -> LoftedBody.of(EndProfile.hemisphere(), List.of(station), EndProfile.cone(), metres(1), Length.ZERO),
        "nose fineness of a hemisphere must be 0.5, was 2.0");
    refuses(() -> BodyStation.round(Length.ZERO, metres(1)), "station must be positive, was 0 m");
    refuses(() -> BodyStation.round(metres(1), metres(-1)), "width at station 1 m must be positive, was -1 m");
  }

  private static void refuses(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String start) {
    assertThatIllegalArgumentException().isThrownBy(call).withMessageStartingWith(start);
  }

  @Test
  void a_station_off_the_body_is_refused_and_a_hair_beyond_its_end_is_the_end() {
    LoftedBody body = survey(0.05);
    for (double x : new double[] {Double.NaN, -0.1, 1.2}) {
      String message = "station must lie from nose to end, 0 m to 1.1 m, was " + x + " m";
      assertThatIllegalArgumentException().isThrownBy(() -> body.radius(x, 1.1, 0.15)).withMessage(message);
      assertThatIllegalArgumentException().isThrownBy(() -> body.width(x, 1.1, 0.15)).withMessage(message);
      assertThatIllegalArgumentException().isThrownBy(() -> body.height(x, 1.1, 0.15)).withMessage(message);
    }
    assertThat(body.width(1.1 + 1e-12, 1.1, 0.15)).isEqualTo(body.width(1.1, 1.1, 0.15));
  }
}
