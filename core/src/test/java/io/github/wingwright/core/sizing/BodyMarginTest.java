// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.BodyStation;
import io.github.wingwright.core.geometry.CrossSection;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.LoftedBody;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The interval of a margin without a closed form, against asking every diameter; bodies that are not simply scaled. */
class BodyMarginTest {
  private static final int DIAMETERS = 400;

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private static double draw(Random random, double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private static BodyShape pod(Random random) {
    double nose = draw(random, 0.7, 2.5);
    double fairing = draw(random, 0.3, 3);
    return BodyShape.podAndBoom(
        EndProfile.halfEllipsoid(), nose, nose + fairing + draw(random, 0, 3), fairing, draw(random, 0.1, 0.9));
  }

  private static List<Consideration> asked(Random random, BodyShape shape) {
    return List.of(
        BodyLayout.carriesSaddle(mm(draw(random, 30, 200)), mm(draw(random, 0, 30)), draw(random, 0.5, 0.99)).on(shape),
        BodyLayout.clearsGroundAtRotation(
                Angle.degrees(draw(random, 5, 20)), draw(random, 0.3, 0.6), mm(draw(random, 3, 20)), 0.7,
                Angle.degrees(draw(random, 0, 8)))
            .on(shape),
        BodyLayout.seesOverNose(
                Angle.degrees(draw(random, 3, 20)), mm(draw(random, 100, 200)), mm(draw(random, -10, 3)), mm(60))
            .on(shape),
        BodyLayout.afterbodyClosesWithin(Angle.degrees(draw(random, 3, 30))).on(shape));
  }

  @Test
  void a_pod_may_be_too_thin_and_too_thick() {
    Random random = new Random(71);
    int bounded = 0;
    int fromBothSides = 0;
    for (int k = 0; k < 80; k++) {
      BodyShape shape = pod(random);
      double length = 0.5;
      Interval search = Interval.between(length / 500, length / shape.leastFinenessRatio());
      double ratio = Math.pow(search.upper() / search.lower(), 1.0 / DIAMETERS);
      for (Consideration one : asked(random, shape)) {
        int runs = 0;
        int from = -1;
        int to = -1;
        for (int i = 0; i <= DIAMETERS; i++) {
          boolean holds = one.margin(length, Math.min(search.upper(), search.lower() * Math.pow(ratio, i))) >= 0;
          if (holds && to < i - 1 || holds && i == 0) {
            runs++;
            from = i;
          }
          to = holds ? i : to;
        }
        // Several parts cannot be told by one interval.
        if (runs != 1) {
          continue;
        }
        Interval told = one.diametersAt(length, search).intersect(search);
        String as = one.name() + " of " + shape + " holds from step " + from + " to " + to;
        assertThat(told.isEmpty()).as(as).isFalse();
        assertThat(told.lower()).as(as).isCloseTo(search.lower() * Math.pow(ratio, from), within(told.lower() * (ratio - 1)));
        assertThat(told.upper()).as(as).isCloseTo(search.lower() * Math.pow(ratio, to), within(told.upper() * (ratio - 1)));
        bounded += from > 0 || to < DIAMETERS ? 1 : 0;
        fromBothSides += from > 0 && to < DIAMETERS ? 1 : 0;
      }
    }
    assertThat(bounded).isGreaterThan(100);
    assertThat(fromBothSides).isGreaterThan(3);
  }

  @Test
  void a_hole_between_leaves_the_thicker_bodies_and_a_narrow_peak_is_found() {
    Interval search = Interval.between(0.001, 1);
    Consideration hole =
        new BodyMargin(
            Wording.of("hole"), Strength.LIMIT, Source.BRIEF, (l, d) -> Math.abs(Math.log(d / 0.1)) - 0.5, (l, d, u) -> "");
    assertThat(hole.diametersAt(1, search).lower()).isCloseTo(0.1 * Math.exp(0.5), within(1e-12));
    assertThat(hole.diametersAt(1, search).upper()).isInfinite();
    Consideration peak =
        new BodyMargin(
            Wording.of("peak"), Strength.LIMIT, Source.BRIEF, (l, d) -> 0.01 - Math.abs(Math.log(d / 0.1)), (l, d, u) -> "");
    assertThat(peak.diametersAt(1, search).lower()).isCloseTo(0.1 * Math.exp(-0.01), within(1e-12));
    assertThat(peak.diametersAt(1, search).upper()).isCloseTo(0.1 * Math.exp(0.01), within(1e-12));
  }

  @Test
  void a_line_of_sight_over_an_edge_of_the_contour_is_exact_between_the_stations() {
    // A cone of 3 diameters and a cylinder: the edge at 3·d stands highest against a line of 5°, the cone rises by 9.5°.
    BodyShape shape = BodyShape.of(EndProfile.cone(), 3, EndProfile.cone(), 3);
    double d = 0.03;
    double eye = 0.15;
    Consideration sees = BodyLayout.seesOverNose(Angle.degrees(5), Length.metres(eye), mm(-8), Length.metres(0.13)).on(shape);
    double clear = 0.008 - Math.tan(Math.toRadians(5)) * (eye - 3 * d);
    assertThat(sees.margin(0.5, d) * eye).isCloseTo(clear, within(1e-9));
  }

  @Test
  void a_box_does_not_pass_through_a_waist_and_a_ball_touches_between_stations() {
    BodyShape waist =
        LoftedBody.of(
            EndProfile.halfEllipsoid(),
            List.of(station(60, 60), station(150, 30), station(240, 60)),
            EndProfile.halfEllipsoid(),
            mm(300),
            Length.ZERO);
    Consideration holds = Contents.of(Thing.cylinder("rod", mm(180), mm(40), Mass.ZERO)).asConsideration().on(waist);
    // 40 mm must pass where the body has half its greatest diameter; the nearest of 49 stations lies beside the waist.
    assertThat(holds.diametersAt(0.3, Interval.between(0.001, 0.3)).lower()).isCloseTo(0.080, within(2e-5));

    BodyShape cones = BodyShape.of(EndProfile.cone(), 2, EndProfile.cone(), 2);
    Consideration ball = Contents.of(Thing.sphere("ball", mm(20), Mass.ZERO)).asConsideration().on(cones);
    double halfAngle = Math.atan(0.25);
    // From the middle of two cones base to base both surfaces are R·cos α away.
    double least = 0.02 / Math.cos(halfAngle);
    assertThat(ball.margin(4 * least, least)).isCloseTo(0, within(2e-4));
  }

  private static BodyStation station(double x, double across) {
    return new BodyStation(mm(x), mm(across), mm(across), Length.ZERO, CrossSection.ellipse());
  }
}
