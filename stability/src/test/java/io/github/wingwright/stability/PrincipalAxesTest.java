// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static io.github.wingwright.core.quantity.Mass.grams;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.Seeded;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.junit.jupiter.api.Test;

class PrincipalAxesTest {
  /** A dumb-bell whose rod rises aft by an angle. */
  private static MassStatement dumbBell(double degrees) {
    double x = 100 * Math.cos(Math.toRadians(degrees));
    double z = 100 * Math.sin(Math.toRadians(degrees));
    return MassStatement.of(
        MassItem.of("nose", grams(10), Placement.at(millimetres(-x), millimetres(-z))),
        MassItem.of("tail", grams(10), Placement.at(millimetres(x), millimetres(z))));
  }

  @Test
  void the_long_axis_of_a_dumb_bell_is_its_rod() {
    Seeded.doubles(9, 50, -40, 40)
        .forEach(
            degrees -> {
              PrincipalAxes axes = PrincipalAxes.of(dumbBell(degrees).inertia());
              assertThat(axes.inclination().degrees()).isCloseTo(degrees, within(1e-9));
              assertThat(axes.roll().si()).isCloseTo(0, within(1e-12));
              assertThat(axes.yaw().si()).isCloseTo(2 * 0.01 * 0.01, within(1e-12));
              assertThat(axes.findings()).isEmpty();
            });
  }

  @Test
  void the_moments_are_the_eigenvalues_of_the_tensor() {
    Seeded.points(10, 100, new double[] {1, 3}, new double[] {4, 9}, new double[] {-0.9, 0.9})
        .forEach(
            p -> {
              double[] values =
                  new EigenDecomposition(new Array2DRowRealMatrix(new double[][] {{p[0], -p[2]}, {-p[2], p[1]}}))
                      .getRealEigenvalues();
              double theta = PrincipalAxes.inclination(p[0], p[1], p[2]);
              double c = Math.cos(theta);
              double s = Math.sin(theta);
              double least = p[0] * c * c + p[1] * s * s - 2 * p[2] * s * c;
              assertThat(least).isCloseTo(Math.min(values[0], values[1]), within(1e-12));
            });
  }

  @Test
  void a_lopsided_aircraft_is_told_so() {
    MassStatement lopsided =
        dumbBell(0)
            .with(
                MassItem.of(
                    "one wing tip", grams(5), new Placement(millimetres(50), millimetres(200), Length.ZERO)));
    assertThat(PrincipalAxes.of(lopsided.inertia()).findings())
        .anySatisfy(f -> assertThat(f.message()).contains("Balance the wing tips"));
  }
}
