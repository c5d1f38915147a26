// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.Seeded;
import org.junit.jupiter.api.Test;

class TailGeometryTest {
  /** Volume V·S·r [m³], aspect ratio, taper ratio, and the room as a multiple of the least. */
  private static final double[][] RANGES = {{1e-5, 1e-2}, {0.8, 8}, {0.2, 1.2}, {1.0001, 20}};

  private static double room(double arm, double volume, double aspectRatio, double taperRatio) {
    return arm + 0.75 * TailGeometry.rootChord(volume / arm, aspectRatio, taperRatio);
  }

  @Test
  void the_root_chord_of_100_square_centimetres_at_aspect_ratio_4_is_50_millimetres() {
    assertThat(TailGeometry.rootChord(0.01, 4.0, 1.0)).isEqualTo(0.05);
  }

  @Test
  void the_arm_closes_the_circle_of_arm_area_and_root_chord() {
    Seeded.points(11, 2_000, RANGES)
        .forEach(
            p -> {
              double room = p[3] * TailGeometry.leastRoom(p[0], p[1], p[2]);
              double arm = TailGeometry.arm(room, p[0], p[1], p[2]);
              assertThat(room(arm, p[0], p[1], p[2])).isCloseTo(room, within(1e-13 * room));
            });
  }

  @Test
  void the_arm_is_the_longer_of_the_two_that_close_it() {
    Seeded.points(12, 2_000, RANGES)
        .forEach(
            p -> {
              double room = p[3] * TailGeometry.leastRoom(p[0], p[1], p[2]);
              double arm = TailGeometry.arm(room, p[0], p[1], p[2]);
              // Beyond the longer root the left side only rises; just inside it falls short of the room.
              assertThat(room(1.001 * arm, p[0], p[1], p[2])).isGreaterThan(room);
              double atLeast = TailGeometry.leastRoom(p[0], p[1], p[2]) / 3.0 * 2.0;
              // l + k/√l is least at l = (k/2)^⅔, where l : k/√l = 1 : 2, so that l is a third of the least room.
              assertThat(arm).isGreaterThan(0.5 * atLeast);
            });
  }

  @Test
  void less_room_than_the_least_has_no_arm() {
    Seeded.points(13, 500, RANGES)
        .forEach(
            p -> {
              double least = TailGeometry.leastRoom(p[0], p[1], p[2]);
              assertThat(TailGeometry.arm(0.999_999 * least, p[0], p[1], p[2])).isNaN();
              assertThat(TailGeometry.arm(1.000_001 * least, p[0], p[1], p[2])).isCloseTo(least / 3.0, within(2e-3 * least));
            });
  }

  @Test
  void the_least_room_is_the_least_value_of_the_closing_equation() {
    Seeded.points(14, 50, RANGES)
        .forEach(
            p -> {
              double least = TailGeometry.leastRoom(p[0], p[1], p[2]);
              double scanned = Double.POSITIVE_INFINITY;
              for (int i = 1; i <= 3_000; i++) {
                scanned = Math.min(scanned, room(least * i / 3_000.0, p[0], p[1], p[2]));
              }
              assertThat(scanned).isBetween(least * (1 - 1e-12), least * (1 + 1e-6));
            });
  }
}
