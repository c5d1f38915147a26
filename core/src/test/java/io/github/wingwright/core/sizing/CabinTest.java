// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import org.junit.jupiter.api.Test;

class CabinTest {
  @Test
  void a_published_six_seat_cabin_has_its_printed_width() {
    // Purdue AAE 451 course book: seats 1.75 ft, aisle 1.25 ft, cabin 4.75 ft wide, pitch 3.0 ft.
    Cabin cabin =
        new Cabin(
            3, 2, Length.feet(1.75), Length.feet(1.25), Length.feet(5.0), Length.feet(3.0), Length.ZERO);
    assertThat(cabin.width().feet()).isCloseTo(4.75, within(1e-12));
    assertThat(cabin.length().feet()).isCloseTo(9.0, within(1e-12));
    // The book's body is 5.0 ft wide and 5.75 ft high outside, not round: a round one lies between these and the corner.
    double inner = 2 * cabin.innerRadius().feet();
    assertThat(inner).isBetween(5.0, Math.hypot(4.75, 5.0));
  }

  @Test
  void the_circle_is_the_smallest_that_an_exhaustive_search_finds() {
    Cabin cabin = Cabin.small(1, 2);
    double half = 0.4572;
    double h = 1.0668;
    double[][] points = {{half - 0.1, 0}, {half, 0.62 * h}, {half - 0.2286 + 0.127, h}};
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 200_000; i++) {
      double middle = h * i / 200_000;
      double r = 0;
      for (double[] p : points) {
        r = Math.max(r, Math.hypot(p[0], p[1] - middle));
      }
      best = Math.min(best, r);
    }
    assertThat(cabin.innerRadius().si()).isCloseTo(best, within(1e-5));
  }

  @Test
  void the_eye_has_ten_inches_of_room_above_it() {
    // Feet 0.3572 m and heads 0.3556 m from the middle plane hold the circle: its middle is 0.5332 m above the floor.
    Cabin cabin = Cabin.small(1, 2);
    double feet = 0.4572 - 0.1;
    double head = 0.4572 - 0.2286 + 0.127;
    double h = 1.0668;
    double middle = (head * head + h * h - feet * feet) / (2 * h);
    double radius = Math.hypot(feet, middle);
    assertThat(cabin.innerRadius().si()).isCloseTo(radius, within(1e-9));
    assertThat(cabin.eyeBelowRoof().si()).isCloseTo(radius + middle - (h - 0.254), within(1e-7));
  }

  @Test
  void a_cabin_goes_into_a_body_like_any_other_thing() {
    Cabin cabin = Cabin.small(1, 2);
    Contents contents = Contents.of(cabin.asThing(Mass.kilograms(90))).insideWall(Length.inches(1));
    Fuselage large = new Fuselage(BodyShape.noseCylinderCone(1, 3), Length.metres(7.5), Length.metres(1.35));
    Fuselage small = new Fuselage(BodyShape.noseCylinderCone(1, 3), Length.metres(7.5), Length.metres(1.0));
    assertThat(contents.placedIn(large)).isPresent();
    assertThat(contents.placedIn(large).orElseThrow().mass().kilograms()).isCloseTo(180, within(1e-9));
    assertThat(contents.placedIn(small)).isEmpty();
  }

  @Test
  void nonsense_is_refused_by_name() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cabin.small(0, 2))
        .withMessage("cabin must have at least one row of one seat, had 0 rows of 2");
  }
}
