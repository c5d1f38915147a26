// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.Seeded;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrimTest {
  private static final double DEGREE = Math.toRadians(1);

  private static PitchModel model(SectionPolar wing) {
    return PitchModel.of(Models.glider()).withWingSection(wing, 3e4).withTailSection(Models.symmetric(), 2e4);
  }

  private static Length atMargin(PitchModel model, double margin) {
    NeutralPoint np = model.neutralPoint();
    return np.x().minus(np.meanAerodynamicChord().times(margin));
  }

  @Test
  void set_to_its_decalage_the_aircraft_has_no_moment_and_the_lift_wanted() {
    // Independent of the formulas of trim: lift and moment of wing, tail and body at the angle found.
    Seeded.points(21, 100, new double[] {0.2, 0.9}, new double[] {-0.05, 0.25}, new double[] {-6, 0}, new double[] {-0.15, 0})
        .forEach(
            p -> {
              PitchModel model = model(Models.exact(5.5, p[2] * DEGREE, p[3], 1.2));
              Trim trim = model.trim(atMargin(model, p[1]), p[0]);
              PitchTerms t = model.terms();
              double h = t.neutralPoint().fraction() - p[1];
              double iw = model.airframe().wing().incidence().si();
              double alpha = trim.angleOfAttack().si();
              double ih = trim.tailIncidence().si();
              double wingAngle = alpha + iw - p[2] * DEGREE;
              double wing = t.wingSlope.value() * wingAngle;
              double q = t.efficiency.value() * t.areaRatio.value();
              double tail = q * t.tailSlope.value() * (alpha + ih - t.downwash.value() * wingAngle);
              double moment =
                  p[3]
                      + t.fuselageSlope.value() * alpha
                      + wing * (h - 0.25)
                      - tail * (t.tailCentre.value() - h);
              assertThat(moment).isCloseTo(0, within(1e-12));
              assertThat(wing + tail).isCloseTo(p[0], within(1e-12));
              assertThat(trim.tailLift()).isCloseTo(tail, within(1e-12));
              assertThat(trim.tailLiftCoefficient()).isCloseTo(tail / q, within(1e-12));
              assertThat(trim.wingLiftCoefficient()).isCloseTo(wing, within(1e-12));
            });
  }

  @Test
  void the_wind_tunnel_model_is_trimmed_by_its_elevator() {
    // Anderson, Introduction to Flight, chapter 7 (from memory): −1.94° with the rounded inputs, a little up elevator.
    double rounded =
        TrimFormulas.elevator(0.06, Math.toDegrees(-0.0133), 6.5 * DEGREE, 0.34, Math.toDegrees(0.04));
    assertThat(Math.toDegrees(rounded)).isCloseTo(-1.94485, within(1e-5));
    double unrounded =
        TrimFormulas.elevator(0.0598, Math.toDegrees(-0.0133), 6.55264 * DEGREE, 0.34, Math.toDegrees(0.04));
    assertThat(Math.toDegrees(unrounded)).isCloseTo(-2.01104, within(1e-4));
    // C_m0 of the book: V_h·a_t·(i_t + ε₀) + C_m,ac, tail set leading edge down counted positive there.
    assertThat(0.34 * 0.1 * 2.7 - 0.032).isCloseTo(0.06, within(5e-4));
    // Full size: 22 700 N on 19 m² at 61 m/s at sea level.
    assertThat(22700 / (0.5 * 1.225 * 61 * 61 * 19)).isCloseTo(0.52, within(5e-3));
  }

  @Test
  void the_documented_example_hardly_loads_the_tail() {
    assertThat(TrimFormulas.tailLift(-0.05, 0.6, 0.35, 0.25, 0, 5, 0, 3.25)).isCloseTo(0.01 / 3, within(1e-12));
  }

  @Test
  void a_stable_glider_needs_more_decalage_to_fly_slower() {
    // Sign: decalage is positive when the tail is set leading edge down against the wing.
    PitchModel model = model(Models.exact(5.5, -3 * DEGREE, -0.08, 1.2));
    Length cg = atMargin(model, 0.15);
    assertThat(model.trim(cg, 0.8).decalage().si()).isGreaterThan(model.trim(cg, 0.4).decalage().si());
    // At the neutral point no change of decalage changes the trim: it is neutral.
    Length neutral = atMargin(model, 0.0);
    assertThat(model.trim(neutral, 0.8).decalage().si())
        .isCloseTo(model.trim(neutral, 0.4).decalage().si(), within(1e-12));
  }

  @Test
  void a_forward_centre_of_gravity_loads_the_tail_down() {
    PitchModel model = model(Models.exact(5.5, -3 * DEGREE, -0.08, 1.2));
    double aft = model.trim(atMargin(model, 0.05), 0.6).tailLift();
    double forward = model.trim(atMargin(model, 0.40), 0.6).tailLift();
    assertThat(forward).isLessThan(aft);
    assertThat(forward).isNegative();
  }

  @Test
  void the_decalage_is_a_range_as_wide_as_what_is_not_known() {
    PitchModel model = model(Models.uncertain());
    Trim trim = model.trim(atMargin(model, 0.15), 0.6);
    Band band = trim.decalageBand().si();
    assertThat(band.likely()).isEqualTo(trim.decalage().si());
    // The zero-lift angle alone is uncertain by 3.5°.
    assertThat(band.high() - band.low()).isGreaterThan(3.5 * DEGREE);
    assertThat(trim.tailIncidenceBand().likely().si()).isCloseTo(trim.tailIncidence().si(), within(1e-15));
    assertThat(trim.findings()).anySatisfy(f -> assertThat(f.message()).contains("shims or a trim tab"));
  }

  @Test
  void what_is_known_exactly_leaves_only_the_spread_of_the_downwash() {
    PitchModel model = model(Models.exact(2 * Math.PI, 0, 0, 1.2));
    Trim trim = model.trim(atMargin(model, 0.15), 0.6);
    assertThat(trim.decalageBand().high().minus(trim.decalageBand().low()).si()).isLessThan(2.5 * DEGREE);
  }

  @Test
  void a_tail_that_would_stall_and_a_wing_that_would_are_serious() {
    PitchModel model = model(Models.exact(5.5, -3 * DEGREE, -0.08, 0.9));
    Trim tail = model.trim(atMargin(model, 1.6), 0.6);
    assertThat(tail.findings().get(0).severity()).isEqualTo(Severity.SERIOUS);
    assertThat(tail.findings()).anySatisfy(f -> assertThat(f.message()).contains("tail would stall"));
    Trim wing = model.trim(atMargin(model, 0.1), 1.1);
    assertThat(wing.findings()).anySatisfy(f -> assertThat(f.message()).contains("wing stalls below"));
  }

  @Test
  void washout_of_the_wing_raises_its_zero_lift_angle() {
    Planform plain = Models.glider().wing().planform();
    assertThat(TrimInputs.meanTwist(plain)).isZero();
    // Linear washout of 3° on taper ratio 2/3: mean over the area 3°·ȳ/(b/2) = 3°·(7/15).
    assertThat(TrimInputs.meanTwist(plain.withWashout(Angle.degrees(3)))).isCloseTo(-3 * DEGREE * 7 / 15, within(1e-12));
  }

  @Test
  void the_forward_limit_is_where_the_tail_at_its_least_lift_still_trims() {
    Seeded.points(22, 200, new double[] {-0.2, 0.05}, new double[] {-0.12, 0}, new double[] {0.6, 1.4}, new double[] {0, 0.8})
        .forEach(
            p -> {
              double h = TrimFormulas.forwardLimit(p[0], p[1], p[2], 0.25, p[3], 4.8, -0.05, 3.4);
              assertThat(TrimFormulas.tailLift(p[1], p[2], h, 0.25, p[3], 4.8, -0.05, 3.4))
                  .isCloseTo(p[0], within(1e-12));
            });
  }

  @Test
  void what_is_missing_is_named() {
    PitchModel bare = PitchModel.of(Models.glider());
    assertThatThrownBy(() -> bare.trim(Length.millimetres(100), 0.6))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("trim needs data of the wing section");
    Airframe tailless = new Airframe(Models.glider().fuselage(), Models.glider().wing(), List.of());
    assertThatThrownBy(() -> bare.withAirframe(tailless).trim(Length.millimetres(100), 0.6))
        .hasMessageContaining("needs a horizontal tail, the airframe has none");
    assertThatThrownBy(() -> bare.trim(Length.millimetres(100), Double.NaN)).hasMessageContaining("was NaN");
  }
}
