// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import org.junit.jupiter.api.Test;

class StretchedLoftTest {
  private static LoftedBody body(double length) {
    return LoftedBody.of(
        EndProfile.halfEllipsoid(),
        List.of(
            new BodyStation(Length.metres(0.1 * length), Length.metres(1.1), Length.metres(0.6), Length.metres(-0.05), CrossSection.ellipse()),
            new BodyStation(Length.metres(0.3 * length), Length.metres(1.2), Length.metres(1.3), Length.metres(0.2), CrossSection.superellipse(3)),
            new BodyStation(Length.metres(0.5 * length), Length.metres(1.2), Length.metres(1.3), Length.metres(0.2), CrossSection.ellipse())),
        EndProfile.cone(),
        Length.metres(length),
        Length.metres(0.4));
  }

  @Test
  void the_skin_of_a_stretched_body_is_that_of_the_body_built_so() {
    LoftedBody given = body(6);
    Seeded.points(81, 25, new double[] {Math.log(1.5), Math.log(24)}, new double[] {0.4, 3})
        .forEach(
            p -> {
              double length = Math.exp(p[0]);
              LoftedBody built = body(length);
              double scale = p[1];
              double area = given.wettedArea(length * scale, given.diameter().si() * scale);
              double expected = scale * scale * built.wettedArea(built.length().si(), built.diameter().si());
              assertThat(area).as("%s m", length).isCloseTo(expected, within(2e-6 * expected));
            });
  }
}
