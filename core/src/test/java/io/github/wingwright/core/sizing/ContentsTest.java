// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.BodyStation;
import io.github.wingwright.core.geometry.CrossSection;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LoftedBody;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ContentsTest {
  private static final Thing BATTERY = Thing.box("battery", mm(70), mm(34), mm(20), Mass.grams(120));
  private static final Thing CAMERA = Thing.cylinder("camera", mm(30), mm(40), Mass.grams(60));
  private static final Thing RECEIVER = Thing.box("receiver", mm(40), mm(22), mm(12), Mass.grams(14));
  private static final Thing BALL = Thing.sphere("lead ball", mm(12), Mass.grams(10));

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  @Test
  void the_largest_cylinder_in_a_spheroid_fills_one_over_root_three_of_it() {
    double length = 0.3;
    double diameter = 0.05;
    Thing largest =
        Thing.cylinder(
            "largest", Length.metres(length / Math.sqrt(3)), Length.metres(diameter * Math.sqrt(2.0 / 3)), Mass.ZERO);
    Consideration holding = Contents.of(largest).asConsideration().on(BodyShape.prolateSpheroid());
    assertThat(holding.diametersAt(length, Interval.between(0.001, 0.3)).lower()).isCloseTo(diameter, within(1e-8));
    double volume = Math.PI * Math.pow(largest.radius().si(), 2) * largest.length().si();
    assertThat(volume / BodyShape.prolateSpheroid().volume(length, diameter)).isCloseTo(0.57735027, within(1e-8));
  }

  @Test
  void the_largest_box_in_a_spheroid_fills_two_over_pi_root_three_of_it() {
    double length = 0.3;
    double diameter = 0.05;
    double side = diameter / Math.sqrt(3);
    Thing box =
        Thing.box("largest", Length.metres(length / Math.sqrt(3)), Length.metres(side), Length.metres(side), Mass.ZERO);
    Consideration holding = Contents.of(box).asConsideration().on(BodyShape.prolateSpheroid());
    assertThat(holding.diametersAt(length, Interval.between(0.001, 0.3)).lower()).isCloseTo(diameter, within(1e-8));
    double volume = box.length().si() * side * side;
    assertThat(volume / BodyShape.prolateSpheroid().volume(length, diameter)).isCloseTo(0.36755260, within(1e-8));
  }

  @Test
  void a_sphere_goes_right_into_a_round_nose_of_its_size_and_a_cylinder_does_not() {
    Fuselage body = new Fuselage(BodyShape.capsule(), mm(100), mm(12.001));
    assertThat(Contents.of(BALL).placedIn(body).orElseThrow().places().get(0).front().si())
        .isCloseTo(0, within(2e-4));
    Thing rod = Thing.cylinder("rod", mm(12), mm(11.9), Mass.grams(10));
    assertThat(Contents.of(rod).placedIn(body).orElseThrow().places().get(0).front().millimetres()).isGreaterThan(4);
  }

  @Test
  void nothing_overlaps_and_nothing_sticks_out() {
    Contents contents =
        Contents.of(BALL, BATTERY, CAMERA, RECEIVER).insideWall(mm(1)).withClearance(mm(1)).withGap(mm(3));
    int placed = 0;
    for (double[] p :
        Seeded.points(71, 300, new double[] {0.15, 0.5}, new double[] {0.03, 0.09}).toList()) {
      for (BodyShape shape : new BodyShape[] {BodyShape.capsule(), BodyShape.noseCylinderCone(1, 2)}) {
        Fuselage body = new Fuselage(shape, Length.metres(p[0]), Length.metres(Math.min(p[1], p[0] / 3)));
        Optional<Contents.Placing> placing = contents.placedIn(body);
        if (placing.isEmpty()) {
          continue;
        }
        placed++;
        double free = 0.001;
        for (Contents.Place place : placing.get().places()) {
          double front = place.front().si();
          assertThat(front).isGreaterThanOrEqualTo(free - 1e-12);
          for (int i = 0; i <= 40; i++) {
            double along = place.thing().length().si() * i / 40;
            double inner = body.radiusAt(Length.metres(Math.min(front + along, p[0]))).si() - 0.002;
            // Between the points at which a sphere is checked it may touch the clearance by a fiftieth of its radius.
            double allowed = place.thing().form() == Thing.Form.SPHERE ? 0.02 * place.thing().radius().si() : 1e-9;
            assertThat(inner).isGreaterThan(place.thing().radiusAt(along) - allowed);
          }
          free = front + place.thing().length().si() + 0.003;
        }
        assertThat(free - 0.003).isLessThanOrEqualTo(p[0] - 0.001 + 1e-12);
      }
    }
    assertThat(placed).isGreaterThan(100);
  }

  @Test
  void the_interval_says_what_placing_says() {
    Contents contents = Contents.of(BATTERY, CAMERA, RECEIVER).insideWall(mm(1)).withGap(mm(2));
    for (BodyShape shape : new BodyShape[] {BodyShape.capsule(), BodyShape.prolateSpheroid()}) {
      Consideration holding = contents.asConsideration().on(shape);
      Seeded.points(72, 150, new double[] {0.1, 0.5}, new double[] {0.02, 0.15})
          .forEach(
              p -> {
                double d = Math.min(p[1], p[0]);
                boolean fits =
                    contents.placedIn(new Fuselage(shape, Length.metres(p[0]), Length.metres(d))).isPresent();
                double margin = holding.margin(p[0], d);
                if (Math.abs(margin) > 1e-9) {
                  assertThat(margin > 0).as("%s × %s in %s", p[0], d, shape).isEqualTo(fits);
                  assertThat(holding.diametersAt(p[0], Interval.between(1e-3, p[0])).contains(d)).isEqualTo(fits);
                }
              });
    }
  }

  @Test
  void the_centre_of_gravity_is_the_weighted_mean_of_the_middles() {
    Fuselage body = new Fuselage(BodyShape.capsule(), mm(300), mm(60));
    Contents.Placing placing = Contents.of(BATTERY, RECEIVER).placedIn(body).orElseThrow();
    double first = placing.places().get(0).front().millimetres() + 35;
    double second = placing.places().get(1).front().millimetres() + 20;
    assertThat(placing.mass().grams()).isCloseTo(134, within(1e-9));
    assertThat(placing.centreOfGravity().millimetres())
        .isCloseTo((120 * first + 14 * second) / 134, within(1e-9));
  }

  @Test
  void a_section_that_is_not_round_offers_the_circle_inside_it() {
    // An ellipse of 60 mm × 30 mm is as large as a circle of 42.4 mm, but a rod of 31 mm does not go into it.
    BodyShape flat =
        LoftedBody.withBase(
            EndProfile.halfEllipsoid(),
            List.of(
                new BodyStation(mm(60), mm(60), mm(30), Length.ZERO, CrossSection.ellipse()),
                new BodyStation(mm(300), mm(60), mm(30), Length.ZERO, CrossSection.ellipse())));
    Fuselage body = new Fuselage(flat, mm(300), mm(Math.sqrt(60 * 30)));
    assertThat(Contents.of(Thing.cylinder("rod", mm(100), mm(29.99), Mass.ZERO)).placedIn(body)).isPresent();
    assertThat(Contents.of(Thing.cylinder("rod", mm(100), mm(30.01), Mass.ZERO)).placedIn(body)).isEmpty();
    // The largest box in an ellipse is 1/√2 as wide and as high.
    double w = 60 / Math.sqrt(2);
    double h = 30 / Math.sqrt(2);
    assertThat(Contents.of(Thing.box("box", mm(100), mm(w * 0.999), mm(h * 0.999), Mass.ZERO)).placedIn(body)).isPresent();
    assertThat(Contents.of(Thing.box("box", mm(100), mm(w * 1.001), mm(h * 1.001), Mass.ZERO)).placedIn(body)).isEmpty();
  }

  @Test
  void a_stiff_thing_needs_more_room_where_the_body_bends() {
    BodyShape straight = BodyShape.noseCylinderCone(1, 3);
    BodyShape bent = straight.upswept(14, Angle.degrees(10), 1.0);
    Thing rod = Thing.cylinder("rod", mm(250), mm(30), Mass.ZERO);
    Interval search = Interval.between(0.02, 0.05);
    double wide = Contents.of(rod).asConsideration().on(straight).diametersAt(0.5, search).lower();
    double wider = Contents.of(rod).asConsideration().on(bent).diametersAt(0.5, search).lower();
    assertThat(wider).isGreaterThan(1.05 * wide);
  }

  @Test
  void contents_and_rest_balance_where_the_moments_say() {
    Contents contents = Contents.of(BATTERY, RECEIVER).withGap(mm(3));
    BodyShape shape = BodyShape.capsule();
    Consideration balance =
        contents.balancing(Mass.grams(300), 0.5, 0.4, Mass.grams(10), mm(5)).on(shape);
    Seeded.points(74, 60, new double[] {0.2, 0.5}, new double[] {0.045, 0.08})
        .forEach(
            p -> {
              Contents.Placing placing =
                  contents.placedIn(new Fuselage(shape, Length.metres(p[0]), Length.metres(p[1]))).orElseThrow();
              double all = 0.3 + placing.mass().si() + 0.01;
              double x =
                  (0.3 * 0.5 * p[0] + placing.mass().si() * placing.centreOfGravity().si() + 0.01 * 0.005) / all;
              assertThat(balance.margin(p[0], p[1])).isCloseTo(0.4 - x / p[0], within(1e-12));
            });
    assertThatIllegalArgumentException()
        .isThrownBy(() -> contents.inAnyOrder().balancing(Mass.grams(300), 0.5, 0.4, Mass.ZERO, mm(5)))
        .withMessage("contents that balance must be in a given order, were in any order");
  }

  @Test
  void in_any_order_the_body_is_never_larger_than_in_the_given_one() {
    Contents given = Contents.of(CAMERA, BALL, RECEIVER, BATTERY).withGap(mm(2));
    Consideration inOrder = given.asConsideration().on(BodyShape.prolateSpheroid());
    Consideration anyhow = given.inAnyOrder().asConsideration().on(BodyShape.prolateSpheroid());
    Interval search = Interval.between(1e-3, 0.3);
    double ordered = inOrder.diametersAt(0.3, search).lower();
    double free = anyhow.diametersAt(0.3, search).lower();
    assertThat(free).isLessThanOrEqualTo(ordered + 1e-12);
    assertThat(free).as("the camera, thickest, belongs in the middle").isLessThan(0.999 * ordered + 1e-12);
  }

  @Test
  void the_smallest_body_just_holds_everything() {
    Contents contents = Contents.of(BATTERY, CAMERA, RECEIVER).insideWall(mm(1)).withGap(mm(2));
    Sized<Fuselage> body =
        FuselageSizing.of(BodyShape.capsule())
            .considering(contents.asConsideration())
            .considering(Considerations.lengthAtMost(mm(400)))
            .smallest();
    assertThat(body.isFeasible()).isTrue();
    Fuselage smallest = body.value();
    assertThat(contents.placedIn(smallest)).isPresent();
    Fuselage thinner =
        new Fuselage(BodyShape.capsule(), smallest.length(), smallest.diameter().times(1 - 1e-6));
    assertThat(contents.placedIn(thinner)).isEmpty();
    for (double[] p : Seeded.points(73, 3_000, new double[] {0.1, 0.4}, new double[] {0.03, 0.09}).toList()) {
      double d = Math.min(p[1], p[0]);
      Fuselage other = new Fuselage(BodyShape.capsule(), Length.metres(p[0]), Length.metres(d));
      if (other.volume().si() < smallest.volume().si() * (1 - 1e-4)) {
        assertThat(contents.placedIn(other)).as("%s holds it too", other).isEmpty();
      }
    }
  }

  @Test
  void nonsense_is_refused_by_name() {
    assertThatIllegalArgumentException().isThrownBy(Contents::of).withMessageContaining("at least one");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Contents.of(BALL, BALL, BALL, BALL, BALL, BALL, BALL, BALL).inAnyOrder())
        .withMessage("things in any order must be at most 7, were 8");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Thing.box("battery", mm(70), mm(-34), mm(20), Mass.ZERO))
        .withMessage("width of battery must be positive, was -34 mm");
    assertThatIllegalArgumentException().isThrownBy(() -> Thing.sphere(" ", mm(10), Mass.ZERO));
  }
}
