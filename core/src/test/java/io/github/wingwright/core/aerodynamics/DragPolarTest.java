// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import org.junit.jupiter.api.Test;

class DragPolarTest {
  private static final double NU = 1.5e-5;
  private static final Planform WING = Planform.tapered(Length.metres(0.4), Length.metres(0.06), Length.metres(0.04));
  private static final DragBuildUp REST =
      DragBuildUp.about(WING.area())
          .with(
              DragComponent.body(
                  "body",
                  new Fuselage(BodyShape.capsule(), Length.millimetres(180), Length.millimetres(20)),
                  FrictionModel.laminar(),
                  BodyFormFactor.HOERNER_LAMINAR));
  private static final AircraftDrag DRAG =
      AircraftDrag.of(WING, EstimatedPolar.of(new FourDigitShape(0.04, 0.06)), 0.02, REST);

  @Test
  void the_parabola_has_its_least_drag_at_its_own_lift() {
    ParabolicPolar polar = DragPolar.parabolic(0.03, 0.06, 0.2, 0.9);
    assertThat(polar.dragCoefficient(0.7)).isCloseTo(0.045, within(1e-15));
    assertThat(polar.dragCoefficient(0.2)).isEqualTo(0.03);
    assertThat(polar.lifts().contains(0.91)).isFalse();
  }

  @Test
  void a_table_is_exact_at_its_points_straight_between_and_ends() {
    TabulatedPolar polar = TabulatedPolar.of(new double[] {0.2, 0.4, 0.8}, new double[] {0.05, 0.04, 0.08});
    assertThat(polar.dragCoefficient(0.4)).isEqualTo(0.04);
    assertThat(polar.dragCoefficient(0.6)).isCloseTo(0.06, within(1e-15));
    assertThatThrownBy(() -> polar.dragCoefficient(0.81)).hasMessage("lift coefficient must be 0.2 to 0.8, was 0.81");
    assertThatThrownBy(() -> TabulatedPolar.of(new double[] {0.2, 0.2}, new double[] {0.05, 0.04}))
        .hasMessage("lifts must rise, were 0.2 then 0.2");
  }

  @Test
  void the_fitted_parabola_of_a_parabola_is_the_parabola() {
    ParabolicPolar exact = DragPolar.parabolic(0.031, 0.067, 0.23, 0.9);
    double[] lift = new double[12];
    double[] drag = new double[12];
    for (int i = 0; i < 12; i++) {
      lift[i] = 0.1 + 0.8 * i / 11;
      drag[i] = exact.dragCoefficient(lift[i]);
    }
    ParabolicPolar fitted = TabulatedPolar.of(lift, drag).fitted();
    assertThat(fitted.leastDrag()).isCloseTo(0.031, within(1e-12));
    assertThat(fitted.factor()).isCloseTo(0.067, within(1e-12));
    assertThat(fitted.leastDragLift()).isCloseTo(0.23, within(1e-11));
    assertThat(fitted.greatestLift()).isEqualTo(lift[11]);
  }

  @Test
  void the_drag_of_an_aircraft_is_section_plus_induced_plus_the_rest() {
    double sum =
        DRAG.section().likelyProfileDrag(0.6, 6.0 * WING.meanAerodynamicChord().si() / NU)
            + 1.02 * 0.36 / (Math.PI * WING.aspectRatio())
            + REST.coefficient(6.0, NU, 0.0);
    assertThat(DRAG.likelyCoefficient(0.6, 6.0, NU)).isCloseTo(sum, within(1e-15));
    assertThat(DRAG.coefficient(0.6, 6.0, NU).likely()).isEqualTo(DRAG.likelyCoefficient(0.6, 6.0, NU));
  }

  @Test
  void along_a_glide_each_lift_has_its_own_reynolds_number() {
    double unit = 2e4;
    TabulatedPolar polar = DRAG.alongGlide(unit, NU, 0.1, 30);
    double lift = polar.lifts().upper();
    double speed = unit * NU / WING.meanAerodynamicChord().si() / Math.sqrt(lift);
    assertThat(DRAG.reynolds(speed, NU) * Math.sqrt(lift)).isCloseTo(unit, within(1e-9));
    assertThat(polar.dragCoefficient(lift)).isEqualTo(DRAG.likelyCoefficient(lift, speed, NU));
    assertThat(lift).isCloseTo(0.8, within(1e-9));
    assertThat(polar.fitted().leastDragLift()).as("least drag is not at no lift").isGreaterThan(0.1);
  }

  @Test
  void a_build_up_about_another_area_is_refused() {
    DragBuildUp other = DragBuildUp.about(Area.squareMetres(1));
    assertThatThrownBy(() -> AircraftDrag.of(WING, DRAG.section(), 0.02, other))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("drag build-up must refer to the area of the wing");
  }

  @Test
  void the_shares_of_the_drag_add_up_to_all_of_it() {
    AircraftDrag drag = AircraftDrag.of(WING, DRAG.section(), 0.02, REST.withLeakageAndProtuberances(0.1));
    assertThat(drag.shares(0.6, 6.0, NU)).extracting(DragBreakdown.Part::name)
        .containsExactly("profile of the wing", "induced", "body", "leakage and protuberances");
    assertThat(drag.shares(0.6, 6.0, NU).stream().mapToDouble(DragBreakdown.Part::share).sum()).isCloseTo(1.0, within(1e-12));
    assertThat(DRAG.shares(0.6, 6.0, NU)).hasSize(3);
  }
}
