// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.mass.Inertia;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.MomentOfInertia;
import org.junit.jupiter.api.Test;

class BodyInertiaTest {
  /** Mass, x forward, z down of four points in the plane of symmetry, and a pair beside it. */
  private static final double[][] POINTS = {{1, 2, 0.3, 0}, {2, -1, -0.15, 0}, {0.5, 0, 0, 1.5}, {0.5, 0, 0, -1.5}};

  private static BodyInertia seenFrom(double angle) {
    double mass = 0;
    double roll = 0;
    double pitch = 0;
    double yaw = 0;
    double product = 0;
    for (double[] p : POINTS) {
      double x = p[1] * Math.cos(angle) + p[2] * Math.sin(angle);
      double z = -p[1] * Math.sin(angle) + p[2] * Math.cos(angle);
      double y = p[3];
      mass += p[0];
      roll += p[0] * (y * y + z * z);
      pitch += p[0] * (x * x + z * z);
      yaw += p[0] * (x * x + y * y);
      product += p[0] * x * z;
    }
    return new BodyInertia(mass, roll, pitch, yaw, product);
  }

  @Test
  void turning_the_axes_is_the_same_as_looking_from_the_turned_axes() {
    for (double angle : new double[] {-0.3, 0.05, 0.2, 1}) {
      BodyInertia turned = seenFrom(0).turnedBy(angle);
      BodyInertia direct = seenFrom(angle);
      assertThat(turned.roll()).isCloseTo(direct.roll(), within(1e-12));
      assertThat(turned.pitch()).isCloseTo(direct.pitch(), within(1e-12));
      assertThat(turned.yaw()).isCloseTo(direct.yaw(), within(1e-12));
      assertThat(turned.product()).isCloseTo(direct.product(), within(1e-12));
    }
  }

  /** A rod along the fuselage, flown nose up. */
  @Test
  void inertia_of_the_fuselage_axes_becomes_that_of_the_stability_axes() {
    MomentOfInertia none = MomentOfInertia.ZERO;
    MomentOfInertia rod = MomentOfInertia.kilogramSquareMetres(2);
    BodyInertia level = BodyInertia.of(Mass.kilograms(1), new Inertia(MomentOfInertia.kilogramSquareMetres(0.1), rod,
        rod, none, none, none), Angle.degrees(5));
    // nose up against the path: the nose end of the rod is above the path, forward (x > 0) and up (z < 0)
    assertThat(level.product()).isNegative();
    assertThat(level.roll()).isGreaterThan(0.1);
  }

  @Test
  void turning_there_and_back_changes_nothing() {
    BodyInertia body = new BodyInertia(3, 2, 5, 6, 0.4);
    BodyInertia back = body.turnedBy(0.4).turnedBy(-0.4);
    assertThat(back.roll()).isCloseTo(2, within(1e-14));
    assertThat(back.product()).isCloseTo(0.4, within(1e-14));
  }

  @Test
  void impossible_bodies_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new BodyInertia(0, 1, 1, 1, 0))
        .withMessage("mass must be positive, was 0.00000 kg");
    assertThatIllegalArgumentException().isThrownBy(() -> new BodyInertia(1, 1, 1, 4, 2))
        .withMessageContaining("product of inertia must be smaller than");
  }
}
