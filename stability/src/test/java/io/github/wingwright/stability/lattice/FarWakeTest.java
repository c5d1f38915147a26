// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.PublishedValues;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FarWakeTest {
  private static final int STRIPS = 400;

  private static double[] loading(DoubleUnaryOperator ofTheta) {
    double[] circulation = new double[STRIPS];
    for (int j = 1; j <= STRIPS; j++) {
      circulation[j - 1] = ofTheta.applyAsDouble(j * Math.PI / (STRIPS + 1));
    }
    return circulation;
  }

  @ParameterizedTest
  @MethodSource("loadings")
  void given_loadings_have_their_exact_induced_drag(PublishedValues.Row row) {
    DoubleUnaryOperator shape = switch (row.text("loading")) {
      case "elliptic" -> Math::sin;
      case "bell" -> t -> Math.pow(Math.sin(t), 3);
      case "parabolic" -> t -> Math.pow(Math.sin(t), 2);
      case "triangular" -> t -> 1 - Math.abs(Math.cos(t));
      case "third-tenth" -> t -> Math.sin(t) + 0.1 * Math.sin(3 * t);
      default -> throw new IllegalArgumentException(row.toString());
    };
    WakeStrips wake = WakeStrips.none().withLevelSheet(1, 0, STRIPS);
    double[] circulation = loading(shape);
    double lift = TrefftzPlane.liftArea(wake, circulation);
    double drag = TrefftzPlane.inducedDragArea(wake, circulation);
    assertThat(drag * Math.PI / (lift * lift) - 1).as(row.toString())
        .isCloseTo(row.number("delta"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> loadings() {
    return PublishedValues.beside(FarWakeTest.class, "far-wake-loadings.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("gaps")
  void two_wings_and_a_wing_over_ground_have_the_mutual_interference(PublishedValues.Row row) {
    WakeStrips one = WakeStrips.none().withLevelSheet(1, 0, STRIPS);
    double gap = row.number("gap");
    double[] single = loading(Math::sin);
    double[] both = new double[2 * STRIPS];
    System.arraycopy(single, 0, both, 0, STRIPS);
    System.arraycopy(single, 0, both, STRIPS, STRIPS);
    double alone = TrefftzPlane.inducedDragArea(one, single);
    double pair = TrefftzPlane.inducedDragArea(one.withLevelSheet(1, gap, STRIPS), both);
    double sigma = (pair / alone - 2) / 2;
    assertThat(sigma).as(row.toString()).isCloseTo(row.number("sigma"), within(row.number("tolerance")));
    assertThat((1 - 0.66 * gap) / (1.05 + 3.7 * gap)).as(row.toString())
        .isCloseTo(row.number("prandtl"), within(6e-4));
    assertThat(sigma).as(row.toString())
        .isCloseTo(row.number("prandtl"), within(row.number("tolerance_prandtl")));
    double overGround = TrefftzPlane.inducedDragArea(one.overGround(-gap / 2), single);
    assertThat(overGround / alone).as(row + " over ground")
        .isCloseTo(1 - row.number("sigma"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> gaps() {
    return PublishedValues.beside(FarWakeTest.class, "biplane-interference.csv").rows();
  }

  @Test
  void elliptic_loading_has_the_same_downwash_everywhere() {
    WakeStrips wake = WakeStrips.none().withLevelSheet(2, 0, 60);
    double[] circulation = new double[60];
    for (int j = 1; j <= 60; j++) {
      circulation[j - 1] = 0.3 * Math.sin(j * Math.PI / 61);
    }
    for (double w : TrefftzPlane.normalVelocity(wake, circulation)) {
      assertThat(w).isCloseTo(-0.3 / 2, within(1e-3));
    }
  }

  @Test
  void a_circulation_of_the_wrong_length_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TrefftzPlane.inducedDragArea(WakeStrips.none().withLevelSheet(1, 0, 8), new double[7]))
        .withMessage("circulation must be given for each of 8 strips, was given for 7");
  }
}
