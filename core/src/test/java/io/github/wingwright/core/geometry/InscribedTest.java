// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.Seeded;
import java.util.Random;
import org.junit.jupiter.api.Test;

class InscribedTest {
  @Test
  void the_documented_examples_hold() {
    assertThat(Inscribed.longestRectangle(0.25, 0.21, 0.03)).isCloseTo(0.2971082, within(5e-8));
    assertThat(Math.toDegrees(Inscribed.slant(0.25, 0.21, 0.03))).isCloseTo(38.9215, within(5e-5));
    assertThat(Inscribed.longestBar(0.25, 0.21, 0.22, 0, 0)).isCloseTo(0.3937004, within(1e-6));
  }

  @Test
  void without_width_the_longest_is_the_diagonal_and_in_a_square_it_is_the_diagonal_less_the_width() {
    Seeded.points(91, 200, new double[] {0.1, 0.5}, new double[] {0.1, 0.5})
        .forEach(
            p -> {
              assertThat(Inscribed.longestRectangle(p[0], p[1], 0)).isCloseTo(Math.hypot(p[0], p[1]), within(1e-12));
              double w = 0.3 * p[0];
              assertThat(Inscribed.longestRectangle(p[0], p[0], w))
                  .isCloseTo(Math.max(p[0], Math.sqrt(2) * p[0] - w), within(1e-14));
            });
  }

  @Test
  void the_longest_rectangle_is_that_of_a_scan_of_all_angles() {
    Seeded.points(92, 60, new double[] {0.1, 0.5}, new double[] {0.3, 1}, new double[] {0, 0.99})
        .forEach(
            p -> {
              double a = p[0];
              double b = p[0] * p[1];
              double w = b * p[2];
              double scanned = a;
              for (int i = 1; i < 200_000; i++) {
                double t = 0.25 * Math.PI * i / 200_000;
                double along = (a - w * Math.sin(t)) / Math.cos(t);
                double across = (b - w * Math.cos(t)) / Math.sin(t);
                scanned = Math.max(scanned, Math.min(along, across));
              }
              assertThat(Inscribed.longestRectangle(a, b, w)).isCloseTo(scanned, within(1e-5 * a));
              assertThat(Inscribed.longestRectangle(b, a, w)).isEqualTo(Inscribed.longestRectangle(a, b, w));
            });
  }

  @Test
  void the_angle_uses_up_both_sides() {
    double p = Inscribed.longestRectangle(0.25, 0.21, 0.03);
    double t = Inscribed.slant(0.25, 0.21, 0.03);
    assertThat(p * Math.cos(t) + 0.03 * Math.sin(t)).isCloseTo(0.25, within(1e-12));
    assertThat(p * Math.sin(t) + 0.03 * Math.cos(t)).isCloseTo(0.21, within(1e-12));
  }

  @Test
  void a_bar_is_never_shorter_than_one_that_lies_or_stands_and_never_longer_than_the_body_diagonal() {
    Seeded.points(93, 40, new double[] {0.1, 0.3}, new double[] {0.1, 0.3}, new double[] {0.1, 0.3}, new double[] {0, 0.3}, new double[] {0, 0.3})
        .forEach(
            p -> {
              double w = p[3] * p[0];
              double d = p[4] * p[1];
              double bar = Inscribed.longestBar(p[0], p[1], p[2], w, d);
              double diagonal = Math.sqrt(p[0] * p[0] + p[1] * p[1] + p[2] * p[2]);
              assertThat(bar).isLessThanOrEqualTo(diagonal + 1e-12);
              if (d <= p[2] && w <= Math.min(p[0], p[1])) {
                assertThat(bar).isGreaterThan((1 - 1e-4) * Inscribed.longestRectangle(p[0], p[1], w));
              }
            });
  }

  @Test
  void a_flat_bar_along_the_body_diagonal_is_that_of_a_random_search() {
    // Sixty random attitudes, each improved by six thousand small random turns: nothing is longer.
    double[] box = {0.25, 0.21, 0.22};
    for (double[] section : new double[][] {{0.05, 0.004}, {0.02, 0.02}, {0.09, 0.006}, {0.12, 0.03}}) {
      compare(box, section[0], section[1]);
    }
  }

  private static void compare(double[] box, double w, double d) {
    double found = Inscribed.longestBar(box[0], box[1], box[2], w, d);
    Random random = new Random(94);
    double best = 0;
    for (int start = 0; start < 60; start++) {
      double[] q = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
      double here = length(box, q, w, d);
      double step = 0.3;
      for (int i = 0; i < 6000; i++) {
        double[] r = q.clone();
        for (int k = 0; k < 4; k++) {
          r[k] += step * random.nextGaussian();
        }
        double there = length(box, r, w, d);
        if (there > here) {
          here = there;
          q = r;
        }
        step = Math.max(1e-7, step * 0.997);
      }
      best = Math.max(best, here);
    }
    assertThat(found).isGreaterThan(best * (1 - 1e-4)).isLessThan(best * 1.0005);
  }

  /** The longest bar in the attitude of a quaternion. */
  private static double length(double[] box, double[] q, double w, double d) {
    double n = Math.sqrt(q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3]);
    double a = q[0] / n;
    double b = q[1] / n;
    double c = q[2] / n;
    double e = q[3] / n;
    double[][] m = {
      {1 - 2 * (c * c + e * e), 2 * (b * c - e * a), 2 * (b * e + c * a)},
      {2 * (b * c + e * a), 1 - 2 * (b * b + e * e), 2 * (c * e - b * a)},
      {2 * (b * e - c * a), 2 * (c * e + b * a), 1 - 2 * (b * b + c * c)}
    };
    double length = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      length = Math.min(length, (box[i] - w * Math.abs(m[i][1]) - d * Math.abs(m[i][2])) / Math.abs(m[i][0]));
    }
    return length;
  }
}
