// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.testing.PublishedValues;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LaminarLayersTest {
  static Stream<PublishedValues.Row> similar() {
    return PublishedValues.beside(LaminarLayersTest.class, "similar-layers.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("similar")
  void the_table_of_similar_layers_agrees_with_an_independent_solution(PublishedValues.Row row) {
    assertThat(SimilarLayers.shear(row.number("shape"))).isCloseTo(row.number("shear"), within(row.number("tolerance")));
  }

  @ParameterizedTest
  @MethodSource("similar")
  void energy_and_momentum_of_similar_layers_are_consistent(PublishedValues.Row row) {
    // In a similar layer V ~ x^m both H and H* stay: momentum gives Reθ·dθ/dx, and energy must give the same.
    double m = row.number("m");
    double h = row.number("shape");
    double s = SimilarLayers.shear(h);
    double e = SimilarLayers.energyShape(h);
    double d = SimilarLayers.dissipation(h);
    // Write g = θ²·V/(ν·x): (1 − m)/2·g = S − (H + 2)·m·g and 0 = 2·D − H*·S + (H − 1)·H*·m·g
    double g = s / ((1 - m) / 2 + (h + 2) * m);
    assertThat(2 * d - e * s + (h - 1) * e * m * g).isCloseTo(0, within(2e-4));
  }

  @Test
  void worked_numbers_of_the_flat_plate() {
    assertThat(SimilarLayers.energyShape(2.5911)).isCloseTo(1.57258, within(5e-6));
    assertThat(SimilarLayers.shear(2.5911)).isCloseTo(0.22052, within(1e-5));
    assertThat(SimilarLayers.dissipation(2.5911)).isCloseTo(0.17340, within(1e-5));
    assertThat(SimilarLayers.shear(4.029)).as("separation, beta −0.198838").isCloseTo(0, within(3e-4));
  }

  @Test
  void thwaites_gives_the_blasius_layer_within_two_percent() {
    // θ·√Rex/x = 0.664115, Blasius.
    double[] x = new double[50];
    double[] v = new double[50];
    double[] theta = new double[50];
    for (int i = 0; i < 50; i++) {
      x[i] = i / 49.0;
      v[i] = 1;
    }
    Thwaites.momentumThickness(x, v, 1e-6, theta);
    assertThat(theta[49] * 1e3).isCloseTo(0.664115, withinPercentage(1.2));
    assertThat(Thwaites.shape(0)).isCloseTo(2.5911, withinPercentage(1.5));
    assertThat(Thwaites.shear(0)).isCloseTo(0.220524, withinPercentage(2.5));
  }

  @ParameterizedTest
  @MethodSource("similar")
  void thwaites_gives_falkner_skan_layers_within_a_few_percent(PublishedValues.Row row) {
    double m = row.number("m");
    if (m < -0.06) {
      return; // near separation the quadrature is known to be off by more
    }
    int n = 400;
    double[] x = new double[n];
    double[] v = new double[n];
    double[] theta = new double[n];
    for (int i = 0; i < n; i++) {
      double u = (i + 1.0) / n;
      x[i] = u * u;
      v[i] = Math.pow(x[i], m);
    }
    Thwaites.momentumThickness(x, v, 1e-6, theta);
    double g = row.number("shear") / ((1 - m) / 2 + (row.number("shape") + 2) * m);
    assertThat(theta[n - 1]).isCloseTo(Math.sqrt(1e-6 * g), withinPercentage(5));
  }

  @Test
  void howarths_retarded_flow_separates_at_0_123() {
    // Exact 0.1199, Thwaites 0.123 (White, Viscous Fluid Flow, from memory).
    int n = 301;
    double[] x = new double[n];
    double[] v = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = 0.2 * i / (n - 1);
      v[i] = 1 - x[i];
    }
    assertThat(Thwaites.separation(x, v, 1e-5)).isCloseTo(0.123, within(5e-4));
    assertThat(Thwaites.separation(x, v, 1e-5)).isCloseTo(0.1199, withinPercentage(3.5));
  }

  @Test
  void a_stagnation_point_has_hiemenz_thickness() {
    // θ = 0.29234·√(ν/a) exactly, 0.2739 by Thwaites.
    double[] x = {0, 0.1, 0.2, 0.3};
    double[] v = {0, 0.1, 0.2, 0.3};
    double[] theta = new double[4];
    Thwaites.momentumThickness(x, v, 1e-6, theta);
    assertThat(theta[0]).isCloseTo(0.27386e-3, withinPercentage(0.1));
    assertThat(theta[3]).isCloseTo(0.27386e-3, withinPercentage(0.5));
  }

  @Test
  void transition_criteria_have_their_known_values_on_a_flat_plate() {
    // Exact for parallel flow: Reθ = 201 (Reδ* = 520, Schlichting, from memory); the fit is a fifth above.
    assertThat(Math.pow(10, Transition.logCriticalReynolds(2.5911))).isCloseTo(201, withinPercentage(22));
    // e^9 from there at Rex of 2.5 to 3.5 million (Schlichting: 2.8 million in quiet tunnels, from memory).
    double grown = 9 / Transition.growthPerReynolds(2.5911) + Math.pow(10, Transition.logCriticalReynolds(2.5911));
    double lengthReynolds = Math.pow(grown / 0.664115, 2);
    assertThat(lengthReynolds).isBetween(2.2e6, 3.6e6);
    double low = 1e6;
    double high = 1e7;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (0.664115 * Math.sqrt(middle) > Transition.michel(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    assertThat(low).isCloseTo(2.02e6, withinPercentage(0.5));
  }

  @Test
  void the_laminar_plate_with_its_trailing_edge_term() {
    // Independent evaluation: 0.0282520 at 1e4, 0.0086255 at 1e5.
    assertThat(ProfileDrag.laminarPlate(1e4)).isCloseTo(0.0282520, within(6e-8));
    assertThat(ProfileDrag.laminarPlate(1e5)).isCloseTo(0.0086255, within(6e-8));
  }
}
