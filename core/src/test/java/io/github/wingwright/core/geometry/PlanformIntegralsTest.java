// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static io.github.wingwright.core.quantity.Angle.degrees;
import static io.github.wingwright.core.quantity.Length.metres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.testing.Seeded;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The integrals of a planform once more, by fine strips over its chord, leading edge and height at a station. Midpoints of
 * n strips of a panel are off by the second derivative times h²/24: with 4,000 strips well below 1 part in 10⁷.
 */
class PlanformIntegralsTest {
  private static final int STRIPS = 4000;

  @ParameterizedTest
  @MethodSource("planforms")
  void strips_give_the_same_integrals(Planform planform) {
    double halves = planform.isMirrored() ? 2.0 : 1.0;
    double half = strips(planform, y -> chord(planform, y));
    assertThat(planform.area().si()).isCloseTo(halves * half, withinPercentage(1e-5));
    double meanChord = strips(planform, y -> chord(planform, y) * chord(planform, y)) / half;
    assertThat(planform.meanAerodynamicChord().si()).isCloseTo(meanChord, withinPercentage(1e-5));
    double tip = planform.stations().get(planform.stations().size() - 1).si();
    double y = strips(planform, s -> s * chord(planform, s)) / half;
    double x = strips(planform, s -> planform.leadingEdgeAt(metres(s)).si() * chord(planform, s)) / half;
    double z = strips(planform, s -> planform.heightAt(metres(s)).si() * chord(planform, s)) / half;
    assertThat(planform.meanAerodynamicChordY().si()).isCloseTo(y, within(1e-7 * tip));
    assertThat(planform.meanAerodynamicChordX().si()).isCloseTo(x, within(1e-7 * tip));
    assertThat(planform.meanAerodynamicChordZ().si()).isCloseTo(z, within(1e-7 * tip));
    assertThat(planform.meanGeometricChord().si()).isCloseTo(half / tip, withinPercentage(1e-5));
    assertThat(planform.aspectRatio())
        .isCloseTo(halves * halves * tip * tip / (halves * half), withinPercentage(1e-5));
  }

  @ParameterizedTest
  @MethodSource("planforms")
  void the_height_and_the_edge_climb_with_the_angles_of_the_panels(Planform planform) {
    double at = 0.0;
    double x = 0.0;
    double z = 0.0;
    double twist = 0.0;
    for (Panel panel : planform.panels()) {
      at += panel.extent().si();
      x += panel.extent().si() * Math.tan(panel.leadingEdgeSweep().si());
      z += panel.extent().si() * Math.tan(panel.dihedral().si());
      twist -= panel.washout().si();
      assertThat(planform.leadingEdgeAt(metres(at)).si()).isCloseTo(x, within(1e-12));
      assertThat(planform.heightAt(metres(at)).si()).isCloseTo(z, within(1e-12));
      assertThat(planform.twistAt(metres(at)).si()).isCloseTo(twist, within(1e-12));
      assertThat(planform.chordAt(metres(at)).si()).isCloseTo(panel.tipChord().si(), within(1e-12));
    }
  }

  static Stream<Planform> planforms() {
    List<Planform> planforms = new ArrayList<>();
    Seeded.points(
            2024,
            20,
            new double[] {0.2, 1.5}, // root chord
            new double[] {0.1, 2}, // first extent
            new double[] {0.1, 1.5}, // first chord
            new double[] {0.1, 2}, // second extent
            new double[] {0, 1}, // second chord
            new double[] {-30, 50}, // sweeps
            new double[] {-10, 40},
            new double[] {-15, 15}) // dihedral
        .forEach(p -> {
          List<Panel> panels =
              List.of(
                  new Panel(metres(p[1]), metres(p[2]), degrees(p[5]), degrees(p[7]), degrees(1)),
                  new Panel(metres(p[3]), metres(p[4]), degrees(p[6]), degrees(-p[7]), degrees(-2)));
          planforms.add(
              planforms.size() % 2 == 0 ? Planform.symmetric(metres(p[0]), panels) : Planform.fin(metres(p[0]), panels));
        });
    return planforms.stream();
  }

  private static double chord(Planform planform, double y) {
    return planform.chordAt(metres(y)).si();
  }

  private static double strips(Planform planform, ToDoubleFunction<Double> integrand) {
    double sum = 0.0;
    double inner = 0.0;
    for (Panel panel : planform.panels()) {
      double h = panel.extent().si() / STRIPS;
      for (int i = 0; i < STRIPS; i++) {
        sum += h * integrand.applyAsDouble(inner + (i + 0.5) * h);
      }
      inner += panel.extent().si();
    }
    return sum;
  }
}
