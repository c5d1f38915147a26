// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class FrictionModelTest {
  private static final double NU = 1.5e-5;

  private static List<FrictionModel> withTransition(double transition, TurbulentFriction law) {
    return List.of(FrictionModel.mixed(transition, law), FrictionModel.mixedWithContinuousThickness(transition, law));
  }

  @ParameterizedTest
  @MethodSource("rough")
  void transition_on_smooth_and_rough_surfaces_is_that_of_an_independent_solution(PublishedValues.Row row) {
    TurbulentFriction law = TurbulentFriction.valueOf(row.text("law"));
    Length roughness = Length.metres(row.number("roughness_m"));
    List<String> columns = List.of("substituted", "continuous");
    for (int i = 0; i < 2; i++) {
      FrictionModel model = withTransition(row.number("transition"), law).get(i).withRoughness(roughness);
      assertThat(model.coefficient(row.number("reynolds"), row.number("length_m"), row.number("mach")))
          .as(columns.get(i) + " " + row)
          .isCloseTo(row.number(columns.get(i)), withinPercentage(row.number("tolerance_percent")));
    }
  }

  static Stream<PublishedValues.Row> rough() {
    return PublishedValues.beside(FrictionModelTest.class, "transition-on-rough-surfaces.csv").rows();
  }

  @ParameterizedTest
  @EnumSource
  void roughness_never_lessens_friction_and_a_smooth_wall_is_one_of_no_roughness(TurbulentFriction law) {
    Seeded.points(5, 300, new double[] {4, 8}, new double[] {-6, -2}, new double[] {4, 7}, new double[] {0, 0.8})
        .forEach(
            p -> {
              double reynolds = Math.pow(10, p[0]);
              double length = 0.7;
              for (FrictionModel model : withTransition(Math.pow(10, p[2]), law)) {
                double smooth = model.coefficient(reynolds, length, p[3]);
                Length grain = Length.metres(length * Math.pow(10, p[1]));
                assertThat(model.withRoughness(grain).coefficient(reynolds, length, p[3]))
                    .as("%s, Re %s, k %s", model, reynolds, grain)
                    .isGreaterThanOrEqualTo(smooth * (1 - 1e-14));
                assertThat(model.withRoughness(Length.ZERO).coefficient(reynolds, length, p[3])).isEqualTo(smooth);
              }
            });
  }

  @ParameterizedTest
  @EnumSource
  void friction_is_continuous_at_transition_and_at_the_cut_off(TurbulentFriction law) {
    Length grain = Length.micrometres(60);
    double cutOff = Roughness.cutOffReynolds(0.5, 60e-6);
    for (double transition : new double[] {2e4, 5e5, 3e6}) {
      for (FrictionModel smooth : withTransition(transition, law)) {
        FrictionModel rough = smooth.withRoughness(grain);
        for (double at : new double[] {transition, cutOff}) {
          double before = rough.coefficient(at * (1 - 1e-12), 0.5, 0.2);
          assertThat(rough.coefficient(at * (1 + 1e-12), 0.5, 0.2)).as("%s at %s", rough, at).isCloseTo(before, within(1e-9));
        }
      }
    }
  }

  @Test
  void the_documented_example_holds() {
    FrictionModel model = FrictionModel.mixed(1e6, TurbulentFriction.PRANDTL_SCHLICHTING);
    assertThat(model.coefficient(4e6, 1, 0)).isCloseTo(0.00270763, within(5e-9));
    assertThat(model.withRoughness(Length.micrometres(50)).coefficient(4e6, 1, 0)).isCloseTo(0.00320291, within(5e-9));
    assertThat(Roughness.transitionAtCutOff(5e5, 6e5, 1e6)).isCloseTo(3e5, within(1e-9));
  }

  @Test
  void a_wall_so_rough_that_no_law_knows_it_still_has_a_number_and_a_finding() {
    for (TurbulentFriction law : TurbulentFriction.values()) {
      for (FrictionModel model : withTransition(1e4, law)) {
        FrictionModel gravel = model.withRoughness(Length.millimetres(20));
        assertThat(gravel.coefficient(1e6, 0.1, 0.0)).as("%s", gravel).isBetween(0.01, 0.1);
        assertThat(subjects(gravel, 1e6, 0.1, 0.0)).contains("cut-off Reynolds number of a rough surface");
      }
    }
  }

  @Test
  void every_law_says_where_it_is_used_outside_of_what_it_was_stated_for() {
    TurbulentFriction prandtl = TurbulentFriction.PRANDTL_SCHLICHTING;
    assertThat(subjects(FrictionModel.laminar(), 1e5, 0.3, 0)).isEmpty();
    assertThat(subjects(FrictionModel.laminar(), 1e7, 0.3, 0)).containsExactly("laminar skin friction");
    assertThat(subjects(FrictionModel.turbulent(prandtl), 1e7, 0.3, 0)).isEmpty();
    assertThat(subjects(FrictionModel.turbulent(prandtl), 5e4, 0.3, 0)).containsExactly("turbulent skin friction");
    assertThat(subjects(FrictionModel.turbulent(TurbulentFriction.FIFTH_ROOT), 2e7, 3, 0))
        .containsExactly("turbulent skin friction");
    assertThat(subjects(FrictionModel.mixed(5e5, prandtl), 1e5, 0.3, 0)).isEmpty();
    assertThat(subjects(FrictionModel.mixed(5e5, prandtl), 1e7, 0.3, 0)).isEmpty();
    assertThat(subjects(FrictionModel.mixed(9e6, prandtl), 1e7, 0.3, 0)).containsExactly("laminar skin friction");
    assertThat(subjects(FrictionModel.mixed(3e4, prandtl), 1e6, 0.3, 0)).containsExactly("turbulent skin friction");
    assertThat(subjects(FrictionModel.turbulent(prandtl), 1e8, 3, 3.5))
        .containsExactly("divisor of turbulent friction for compressibility");
    assertThat(subjects(FrictionModel.partlyLaminar(0.1, prandtl), 5.5e7, 3, 0.3)).isEmpty();
    assertThat(subjects(FrictionModel.fixed(0.004), 10, 0.3, 0)).isEmpty();
  }

  private static List<String> subjects(FrictionModel model, double reynolds, double length, double mach) {
    return model.findings(reynolds * NU / length, length, NU, mach).stream().map(Finding::subject).toList();
  }

  @Test
  void what_is_no_friction_is_refused_with_its_value() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FrictionModel.mixedWithContinuousThickness(0, TurbulentFriction.FIFTH_ROOT))
        .withMessage("Reynolds number of transition must be positive, was 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> FrictionModel.laminar().withRoughness(Length.millimetres(-1)))
        .withMessage("height of the roughness must not be negative, was -1 mm");
  }
}
