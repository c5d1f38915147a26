// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EndProfileTest {
  private static final int POINTS = 100_000;

  record End(EndProfile profile, double fineness) {}

  @ParameterizedTest
  @MethodSource("published")
  void volume_and_area_agree_with_the_exact_values(PublishedValues.Row row) {
    EndProfile profile =
        switch (row.text("part")) {
          case "half ellipsoid" -> EndProfile.halfEllipsoid();
          case "cone" -> EndProfile.cone();
          case "tangent ogive" -> EndProfile.tangentOgive();
          case "power" -> EndProfile.power(row.number("parameter"));
          case "parabolic" -> EndProfile.parabolic(row.number("parameter"));
          default -> EndProfile.haack(row.number("parameter"));
        };
    double r = row.number("radius_m");
    double length = row.number("length_m");
    double fineness = length / (2 * r);
    double tolerance = row.number("tolerance_percent");
    assertThat(Math.PI * r * r * length * profile.fullness(fineness))
        .isCloseTo(row.number("volume_m3"), withinPercentage(tolerance));
    assertThat(Math.PI * r * r * profile.curvedArea(fineness))
        .isCloseTo(row.number("curved_area_m2"), withinPercentage(tolerance));
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(EndProfileTest.class, "bodies-of-parts.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("ends")
  void a_fine_polygon_gives_the_same(End end) {
    // Points crowd towards both ends as x ~ s⁴: the tip of a low power is steep.
    EndProfile profile = end.profile();
    double k = 2 * end.fineness();
    double volume = 0;
    double volumeMoment = 0;
    double area = 0;
    double areaMoment = 0;
    double side = 0;
    double t1 = 0;
    double r1 = profile.radius(0, end.fineness());
    for (int i = 1; i <= POINTS; i++) {
      double s = 0.5 * (1 - Math.cos(Math.PI * i / POINTS));
      double t2 = s * s;
      double r2 = profile.radius(t2, end.fineness());
      double dt = t2 - t1;
      volume += dt / 3 * (r1 * r1 + r1 * r2 + r2 * r2);
      volumeMoment += dt / 12 * (t1 * (3 * r1 * r1 + 2 * r1 * r2 + r2 * r2) + t2 * (r1 * r1 + 2 * r1 * r2 + 3 * r2 * r2));
      double slant = Math.hypot(k * dt, r2 - r1);
      area += (r1 + r2) * slant;
      areaMoment += slant / 3 * (t1 * (2 * r1 + r2) + t2 * (r1 + 2 * r2));
      side += 0.5 * (r1 + r2) * dt;
      t1 = t2;
      r1 = r2;
    }
    assertThat(profile.fullness(end.fineness())).as("fullness").isCloseTo(volume, withinPercentage(1e-7));
    assertThat(profile.curvedArea(end.fineness())).as("area").isCloseTo(area, withinPercentage(1e-7));
    assertThat(profile.sideFullness(end.fineness())).as("side").isCloseTo(side, withinPercentage(1e-7));
    assertThat(profile.volumeCentroid(end.fineness())).as("volume centroid").isCloseTo(volumeMoment / volume, within(1e-9));
    assertThat(profile.surfaceCentroid(end.fineness())).as("surface centroid").isCloseTo(areaMoment / area, within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("ends")
  void the_integral_along_the_outline_gives_the_closed_forms(End end) {
    // The numbers that a profile states in closed form, against the integral that it would inherit.
    EndProfile p = end.profile();
    double k = 2 * end.fineness();
    assertThat(Simpson.of(s -> p.r(s, k) * p.r(s, k) * p.dt(s, k))).isCloseTo(p.fullness(end.fineness()), within(1e-10));
    assertThat(Simpson.of(s -> p.r(s, k) * p.dt(s, k))).isCloseTo(p.sideFullness(end.fineness()), within(1e-10));
    Seeded.doubles(4, 50, 0, 1).forEach(s ->
        assertThat(p.radius(p.t(s, k), end.fineness())).isCloseTo(p.r(s, k), within(1e-12)));
  }

  @ParameterizedTest
  @MethodSource("ends")
  void the_outline_rises_from_the_tip_to_the_base(End end) {
    double last = end.profile().radius(0, end.fineness());
    assertThat(last).isCloseTo(end.profile().tipRatio(), within(1e-15));
    for (int i = 1; i <= 1000; i++) {
      double r = end.profile().radius(i / 1000.0, end.fineness());
      assertThat(r).isBetween(last, 1 + 1e-15);
      last = r;
    }
    assertThat(last).isCloseTo(1, within(1e-12));
    double slope = (1 - end.profile().radius(1 - 1e-6, end.fineness())) / 1e-6;
    assertThat(slope < 0.01).isEqualTo(end.profile().isTangent());
  }

  static Stream<End> ends() {
    return Stream.of(
            EndProfile.hemisphere(),
            EndProfile.halfEllipsoid(),
            EndProfile.tangentOgive(),
            EndProfile.cone(),
            EndProfile.boatTail(0.35),
            EndProfile.power(0.4),
            EndProfile.power(0.5),
            EndProfile.power(0.75),
            EndProfile.parabolic(0.5),
            EndProfile.parabolic(1),
            EndProfile.haack(0),
            EndProfile.haack(1.0 / 3.0),
            EndProfile.haack(2.0 / 3.0))
        .flatMap(p -> Stream.of(0.5, 1.0, 2.0, 6.0, 20.0)
            .filter(f -> p.finenessRange().contains(f))
            .map(f -> new End(p, f)));
  }

  @Test
  void the_ogive_has_its_closed_forms() {
    // Solid geometry: ρ = (R² + n²)/(2R), V = π·(n·ρ² − n³/3 − (ρ − R)·ρ²·asin(n/ρ)), S = 2π·ρ·(n − (ρ − R)·asin(n/ρ)).
    for (double k : new double[] {1.2, 2, 4, 8, 12}) {
      double rho = 0.5 * (1 + k * k);
      double angle = Math.asin(k / rho);
      double volume = k * rho * rho - k * k * k / 3 - (rho - 1) * rho * rho * angle;
      double area = 2 * rho * (k - (rho - 1) * angle);
      assertThat(EndProfile.tangentOgive().fullness(0.5 * k)).isCloseTo(volume / k, within(1e-10));
      assertThat(EndProfile.tangentOgive().curvedArea(0.5 * k)).isCloseTo(area, withinPercentage(1e-9));
    }
  }

  @Test
  void an_ogive_as_short_as_its_radius_is_a_hemisphere_and_a_slender_one_a_parabola() {
    EndProfile ogive = EndProfile.tangentOgive();
    assertThat(ogive.fullness(0.5)).isCloseTo(2.0 / 3.0, within(1e-14));
    assertThat(ogive.curvedArea(0.5)).isCloseTo(2, within(1e-13));
    assertThat(ogive.fullness(50)).isCloseTo(8.0 / 15.0, within(1e-4));
    assertThat(ogive.radius(0.5, 50)).isCloseTo(0.75, within(1e-4));
  }

  @Test
  void the_paraboloid_has_its_closed_area() {
    for (double k : new double[] {0.5, 1, 4, 20}) {
      double area = (Math.pow(1 + 4 * k * k, 1.5) - 1) / (6 * k * k);
      assertThat(EndProfile.power(0.5).curvedArea(0.5 * k)).isCloseTo(area, withinPercentage(1e-9));
    }
  }

  @Test
  void equal_profiles_are_equal() {
    assertThat(EndProfile.haack(0)).isEqualTo(EndProfile.haack(0)).hasSameHashCodeAs(EndProfile.haack(0));
    assertThat(EndProfile.haack(0)).isNotEqualTo(EndProfile.haack(0.1)).isNotEqualTo(EndProfile.power(0.5));
    assertThat(EndProfile.halfEllipsoid()).isNotEqualTo(EndProfile.hemisphere());
    assertThat(EndProfile.boatTail(0.4)).hasToString("boat-tail to 0.4");
    assertThat(EndProfile.haack(1.0 / 3.0)).hasToString("Haack series 0.3333");
  }

  @Test
  void what_is_no_profile_is_refused() {
    refuses(() -> EndProfile.power(1.5), "exponent of the power series must be 0.3 to 1.0, was 1.5");
    refuses(() -> EndProfile.haack(-0.1), "parameter of the Haack series must be ");
    refuses(() -> EndProfile.parabolic(Double.NaN), "parameter of the parabolic series must be 0.0 to 1.0, was NaN");
    refuses(() -> EndProfile.boatTail(1), "base ratio must be 0.001 to 0.999, was 1.0");
    refuses(
        () -> BodyShape.of(EndProfile.hemisphere(), 1, EndProfile.cone(), 3),
        "nose fineness of a hemisphere must be 0.5, was 1.0");
    refuses(
        () -> BodyShape.of(EndProfile.tangentOgive(), 0.4, EndProfile.cone(), 3),
        "nose fineness of a tangent ogive must be 0.5 to 50.0, was 0.4");
    refuses(
        () -> BodyShape.of(EndProfile.boatTail(0.4), 1, EndProfile.cone(), 3),
        "a nose must come to a point or a round tip, was boat-tail to 0.4");
  }

  private static void refuses(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String start) {
    assertThatIllegalArgumentException().isThrownBy(call).withMessageStartingWith(start);
  }
}
