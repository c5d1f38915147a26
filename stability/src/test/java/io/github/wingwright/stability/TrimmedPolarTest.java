// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aerodynamics.DragBuildUp;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrimmedPolarTest {
  private static final Airframe GLIDER = Models.glider();
  private static final PitchModel MODEL =
      PitchModel.of(GLIDER)
          .withWingSection(Models.exact(5.5, -0.05, -0.08, 0.9), 3e4)
          .withTailSection(Models.symmetric(), 2e4);
  private static final AircraftDrag DRAG =
      AircraftDrag.of(
          GLIDER.wing().planform(),
          Models.exact(5.5, -0.05, -0.08, 0.9),
          0.02,
          DragBuildUp.about(GLIDER.wing().planform().area()));
  private static final AirState AIR = AirState.of(Pressure.pascals(101325), Temperature.kelvins(293.15));
  private static final Mass MASS = Mass.grams(40);

  private static Length atMargin(double margin) {
    NeutralPoint np = MODEL.neutralPoint();
    return np.x().minus(np.meanAerodynamicChord().times(margin));
  }

  private static TrimmedPolar polar(double margin) {
    return TrimmedPolar.of(MODEL, atMargin(margin), DRAG, MASS, AIR);
  }

  @Test
  void wing_and_tail_together_have_the_induced_drag_of_two_lifting_lines_in_one_plane() {
    // Munk: D = (1/πq)·(L₁²/b₁² + 2σ·L₁L₂/(b₁b₂) + L₂²/b₂²), coplanar and elliptic: σ = b₂/b₁ for the shorter b₂.
    Seeded.points(
            31, 200, new double[] {0.1, 1}, new double[] {-0.2, 0.2}, new double[] {5, 15}, new double[] {2, 6},
            new double[] {0.1, 0.3})
        .forEach(
            p -> {
              double b1 = 2.0;
              double s1 = b1 * b1 / p[2];
              double b2 = Math.sqrt(p[3] * p[4] * s1);
              double munk =
                  s1 / Math.PI * (p[0] * p[0] / (b1 * b1)
                      + 2 * (b2 / b1) * p[0] * p[1] / (b1 * b2)
                      + p[1] * p[1] / (b2 * b2));
              double ours =
                  p[0] * p[0] / (Math.PI * p[2])
                      + TrimDrag.mutualInduced(p[1], p[0], p[2])
                      + TrimDrag.tailInduced(p[1], 0, p[3], 1, p[4]);
              assertThat(ours).isCloseTo(munk, within(1e-14));
            });
  }

  @Test
  void the_documented_examples_hold() {
    assertThat(TrimDrag.mutualInduced(-0.05, 0.65, 8)).isCloseTo(-0.00259, within(5e-6));
    assertThat(TrimDrag.tailInduced(-0.05, 0.05, 4, 0.9, 0.2)).isCloseTo(0.00116, within(5e-6));
  }

  @Test
  void a_point_is_the_wing_at_its_own_lift_and_the_cost_of_trim() {
    TrimmedPolar polar = polar(0.15);
    TrimmedPolar.Point p = polar.at(0.5);
    double speed = Math.sqrt(2 * 0.04 * 9.80665 / (AIR.density().si() * GLIDER.wing().planform().area().si() * 0.5));
    double wing =
        DRAG.likelyCoefficient(0.5 - p.tailLift(), speed, AIR.kinematicViscosity().si());
    assertThat(p.dragCoefficient()).isCloseTo(wing + p.trimDrag(), within(1e-15));
    Trim trim = MODEL.trim(atMargin(0.15), 0.5);
    assertThat(p.tailLift()).isCloseTo(trim.tailLift(), within(1e-15));
    assertThat(p.tailLiftCoefficient()).isCloseTo(trim.tailLiftCoefficient(), within(1e-14));
    assertThat(p.liftToDrag()).isEqualTo(0.5 / p.dragCoefficient());
    // A glide is a little slower than level flight at the same lift coefficient: √cos γ.
    assertThat(p.speed().si()).isCloseTo(speed * Math.sqrt(p.angle().cosine()), within(1e-12));
  }

  @Test
  void the_best_glide_is_the_best_of_all_points() {
    TrimmedPolar polar = polar(0.15);
    double best = polar.bestGlide().liftToDrag();
    double sink = polar.leastSink().sinkRate().si();
    for (TrimmedPolar.Point p : polar.points(200)) {
      assertThat(p.liftToDrag()).isLessThanOrEqualTo(best * (1 + 1e-12));
      assertThat(p.sinkRate().si()).isGreaterThanOrEqualTo(sink * (1 - 1e-12));
    }
    assertThat(polar.leastSink().liftCoefficient()).isGreaterThanOrEqualTo(polar.bestGlide().liftCoefficient());
  }

  @Test
  void a_centre_of_gravity_far_forward_costs_glide() {
    double near = polar(0.10).bestGlide().liftToDrag();
    double far = polar(0.60).bestGlide().liftToDrag();
    assertThat(far).isLessThan(near);
    assertThat(polar(0.60).price().isGain()).isFalse();
    assertThat(polar(0.60).price().relativeChange()).isNegative();
  }

  @Test
  void the_polar_ends_where_wing_or_tail_reaches_its_usable_lift() {
    TrimmedPolar polar = polar(0.15);
    TrimmedPolar.Point end = polar.at(polar.lifts().upper());
    assertThat(end.liftCoefficient() - end.tailLift()).isCloseTo(0.9, within(1e-12));
    assertThat(polar.findings()).isEmpty();
    TrimmedPolar far = polar(1.4);
    TrimmedPolar.Point stalled = far.at(far.lifts().upper());
    assertThat(stalled.tailLiftCoefficient()).isCloseTo(-0.8, within(1e-12));
    assertThat(far.findings()).anySatisfy(f -> assertThat(f.message()).contains("The tail stalls"));
    assertThatThrownBy(() -> polar.at(1.5)).hasMessageContaining("lift coefficient must be 0.05 to ");
  }

  @Test
  void it_needs_a_tail() {
    PitchModel tailless = MODEL.withAirframe(new Airframe(GLIDER.fuselage(), GLIDER.wing(), List.of()));
    assertThatThrownBy(() -> TrimmedPolar.of(tailless, atMargin(0.1), DRAG, MASS, AIR))
        .hasMessageContaining("needs a horizontal tail");
  }

  @Test
  void its_points_are_at_least_two_and_not_endless() {
    for (int points : new int[] {1, Integer.MAX_VALUE}) {
      assertThatIllegalArgumentException().isThrownBy(() -> polar(0.1).points(points))
          .withMessage("number of points must be 2 to 100000, was " + points);
    }
  }
}
