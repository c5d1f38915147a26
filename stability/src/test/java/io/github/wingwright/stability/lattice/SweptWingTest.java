// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The classic swept wing: span 1, chord 0.2, 45° of sweep, as worked out in Bertin and Smith. */
class SweptWingTest {
  private static final LatticeSurface WING = LatticeSurface.trapezoid("wing", 1, 0.2, 0.2, Math.PI / 4, 0)
      .spacing(Spacing.UNIFORM).panels(1, 4);
  private static final LatticeReference REFERENCE = new LatticeReference(0.2, 0.2, 1, 0, 0);

  @ParameterizedTest
  @MethodSource("strengths")
  void strengths_are_those_of_the_book(PublishedValues.Row row) {
    double alpha = 0.001;
    double[] strengths = VortexLattice.of(REFERENCE, WING).factor().solve(LatticeCondition.at(alpha))
        .strengths("wing", false);
    double value = strengths[(int) row.number("strip") - 1] / (4 * Math.PI * Math.sin(alpha));
    assertThat(value).as(row.toString()).isCloseTo(row.number("printed"), within(row.number("tolerance_printed")));
    assertThat(value).as(row.toString())
        .isCloseTo(row.number("computed"), within(row.number("tolerance_computed")));
  }

  static Stream<PublishedValues.Row> strengths() {
    return PublishedValues.beside(SweptWingTest.class, "swept-wing.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("influence")
  void influence_coefficients_are_those_of_the_book(PublishedValues.Row row) {
    int i = (int) row.number("control") - 1;
    double[] v = new double[3];
    for (int j = 0; j < 4; j++) {
      double yc = 0.0625 + 0.125 * i;
      double xc = 0.15 + yc;
      double ya = 0.125 * j;
      double yb = ya + 0.125;
      HorseshoeKernel.velocity(0.05 + ya, ya, 0, 0.05 + yb, yb, 0, xc, yc, 0, v);
      double wash = v[2];
      HorseshoeKernel.velocity(0.05 + yb, -yb, 0, 0.05 + ya, -ya, 0, xc, yc, 0, v);
      assertThat(4 * Math.PI * (wash + v[2])).as(row + " from strip " + (j + 1))
          .isCloseTo(row.number("g" + (j + 1)), within(row.number("tolerance")));
    }
  }

  static Stream<PublishedValues.Row> influence() {
    return PublishedValues.beside(SweptWingTest.class, "swept-wing-influence.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("lattices")
  void lift_slopes_of_finer_lattices_agree_with_an_independent_one(PublishedValues.Row row) {
    double slope = VortexLattice.of(REFERENCE, WING.panels((int) row.number("rows"), (int) row.number("strips")))
        .factor().liftSlope();
    assertThat(slope).as(row.toString()).isCloseTo(row.number("slope"), within(row.number("tolerance")));
  }

  static Stream<PublishedValues.Row> lattices() {
    return PublishedValues.beside(SweptWingTest.class, "swept-wing-convergence.csv").rows();
  }

  /** Computed independently of this project: 1.479713 chords behind the leading edge of the root. */
  @Test
  void centre_of_pressure_of_the_coarse_lattice() {
    assertThat(VortexLattice.of(REFERENCE, WING).factor().neutralPoint() / 0.2).isCloseTo(1.479713, within(5e-7));
  }
}
