// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import org.junit.jupiter.api.Test;

class IntervalTest {
  private static final Interval A = Interval.between(0.02, 0.035);

  @Test
  void contains_its_ends_and_what_lies_between() {
    assertThat(A.contains(0.02)).isTrue();
    assertThat(A.contains(0.035)).isTrue();
    assertThat(A.contains(Math.nextDown(0.02))).isFalse();
    assertThat(A.contains(Math.nextUp(0.035))).isFalse();
    assertThat(A.contains(Double.NaN)).isFalse();
    assertThat(Interval.ALL.contains(-1e300)).isTrue();
    assertThat(Interval.NONE.contains(0)).isFalse();
  }

  @Test
  void intersection_is_what_both_contain() {
    List<double[]> ends = Seeded.points(61, 40, new double[] {-3, 3}, new double[] {-3, 3}).toList();
    for (double[] a : ends) {
      for (double[] b : ends) {
        Interval one = Interval.between(a[0], a[1]);
        Interval other = Interval.between(b[0], b[1]);
        Interval both = one.intersect(other);
        assertThat(both).isEqualTo(other.intersect(one));
        for (double x = -3; x <= 3; x += 0.125) {
          assertThat(both.contains(x)).isEqualTo(one.contains(x) && other.contains(x));
        }
        assertThat(both.intersect(one)).isEqualTo(both);
      }
      Interval one = Interval.between(a[0], a[1]);
      assertThat(one.intersect(Interval.ALL)).isEqualTo(one);
      assertThat(one.intersect(Interval.NONE).isEmpty()).isTrue();
    }
  }

  @Test
  void clamps_to_the_nearer_end() {
    assertThat(A.clamp(0.01)).isEqualTo(0.02);
    assertThat(A.clamp(0.03)).isEqualTo(0.03);
    assertThat(A.clamp(1)).isEqualTo(0.035);
    assertThatThrownBy(() -> Interval.between(2, 1).clamp(1.5)).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void the_width_of_what_is_empty_is_the_gap() {
    assertThat(Interval.between(1, 3).width()).isEqualTo(2);
    assertThat(Interval.between(3, 1).width()).isEqualTo(-2);
    assertThat(Interval.between(3, 1).isEmpty()).isTrue();
    assertThat(Interval.between(1, 1).isEmpty()).isFalse();
  }

  @Test
  void is_written_in_words() {
    assertThat(A.format(Length.MILLIMETRE)).isEqualTo("20 to 35 mm");
    assertThat(Interval.atLeast(0.02).format(Length.MILLIMETRE)).isEqualTo("at least 20 mm");
    assertThat(Interval.atMost(0.02).format(Length.MILLIMETRE)).isEqualTo("at most 20 mm");
    assertThat(Interval.between(0.02, 0.02).format(Length.MILLIMETRE)).isEqualTo("exactly 20 mm");
    assertThat(Interval.ALL).hasToString("any value");
    assertThat(Interval.NONE).hasToString("nothing");
  }

  @Test
  void has_no_ends_that_are_not_numbers_and_one_zero() {
    assertThatThrownBy(() -> Interval.between(Double.NaN, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("interval ends must be numbers, were NaN and 1.0");
    assertThat(Interval.between(-0.0, 1)).isEqualTo(Interval.between(0.0, 1));
  }

  @Test
  void a_band_keeps_its_order() {
    Band band = Band.around(0.03, 0.01);
    assertThat(band).isEqualTo(new Band(0.03 - 0.01, 0.03, 0.03 + 0.01));
    assertThat(band.interval().contains(0.025)).isTrue();
    assertThat(new Band(1, 2, 4).times(-2)).isEqualTo(new Band(-8, -4, -2));
    assertThat(new Band(1, 2, 4).times(2)).isEqualTo(new Band(2, 4, 8));
    assertThat(new Band(1, 2, 4).plus(Band.exactly(1))).isEqualTo(new Band(2, 3, 5));
    assertThat(Band.exactly(3).isExact()).isTrue();
    assertThat(band.isExact()).isFalse();
    for (double[] bad : new double[][] {{2, 1, 3}, {1, 3, 2}, {Double.NaN, 1, 2}, {1, 2, Double.POSITIVE_INFINITY}}) {
      assertThatThrownBy(() -> new Band(bad[0], bad[1], bad[2]))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageMatching("band must be (finite|in order low ≤ likely ≤ high), was .*");
    }
    assertThatThrownBy(() -> Band.around(1, -0.1)).hasMessage("spread of a band must not be negative, was -0.1");
  }
}
