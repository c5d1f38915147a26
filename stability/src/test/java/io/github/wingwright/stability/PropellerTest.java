// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** What a running propeller does to neutral point and trim, term by term and sign by sign. */
class PropellerTest {
  private static final PitchModel MODEL =
      PitchModel.of(Models.glider())
          .withWingSection(Models.exact(5.5, -0.05, -0.08, 0.9), 3e4)
          .withTailSection(Models.symmetric(), 2e4);
  private static final double CHORD = MODEL.neutralPoint().meanAerodynamicChord().si();
  private static final Length LEVEL = Length.ZERO;

  private static Propeller at(double x, double z) {
    return Propeller.of(millimetres(120), Placement.at(millimetres(x), millimetres(z)))
        .blades(2, millimetres(12), Angle.degrees(15));
  }

  private static Propeller pulling(double x, double z) {
    return at(x, z).thrust(Force.newtons(0.04), Pressure.pascals(20), 0.5);
  }

  private static double shift(Propeller propeller) {
    return MODEL.withPropeller(propeller, LEVEL).neutralPoint().fraction() - MODEL.neutralPoint().fraction();
  }

  @Test
  void a_propeller_ahead_is_a_small_foreplane_and_one_behind_a_small_tail() {
    assertThat(shift(at(-10, 0))).isNegative();
    assertThat(shift(at(340, 0))).isPositive();
    // More thrust makes more of it.
    assertThat(shift(pulling(-10, 0))).isLessThan(shift(at(-10, 0)));
  }

  @Test
  void a_high_thrust_line_pitches_down_and_steadies() {
    double low = shift(pulling(-10, -15));
    double high = shift(pulling(-10, 15));
    assertThat(high).isGreaterThan(low);
    // By hand: C_T = 0.04/20/0.02 = 0.1; Δh = 1.5·(0.1/0.5)·(30 mm/c̄) between the two.
    assertThat(high - low).isCloseTo(1.5 * 0.1 / 0.5 * 0.030 / CHORD, within(1e-9));
    assertThat(PropellerFormulas.THRUST_MOMENT.evaluate(0.1, 0.015, CHORD)).as("nose down").isNegative();
  }

  @Test
  void the_tail_works_better_in_the_slipstream() {
    assertThat(shift(pulling(-10, 0).immersing(0.7))).isGreaterThan(shift(pulling(-10, 0)));
    // An actuator disc leaves q·(1 + T/(q·S_d)) far behind it.
    assertThat(PropellerFormulas.SLIPSTREAM_EFFICIENCY.evaluate(0.9, 1.0, 0.5)).isCloseTo(1.35, within(1e-15));
  }

  @Test
  void each_term_is_named_and_they_add_up() {
    NeutralPoint point = MODEL.withPropeller(pulling(-10, 10).immersing(0.5), LEVEL).neutralPoint();
    assertThat(point.contributions()).extracting(s -> s.name())
        .endsWith("shift of the neutral point by the slipstream on the tail",
            "shift of the neutral point by the thrust line",
            "shift of the neutral point by the normal force of the propeller");
    assertThat(point.contributions().stream().mapToDouble(s -> s.value()).sum()).isCloseTo(point.fraction(), within(1e-13));
    assertThat(point.band().low()).isLessThanOrEqualTo(point.fraction());
    assertThat(point.band().high()).isGreaterThanOrEqualTo(point.fraction());
  }

  @Test
  void the_thrust_must_be_trimmed_out() {
    Length cg = MODEL.neutralPoint().x().minus(millimetres(6));
    double off = MODEL.trim(cg, 0.5).tailLift();
    double on = MODEL.withPropeller(pulling(-10, 15), LEVEL).trim(cg, 0.5).tailLift();
    assertThat(on).as("a nose-down moment takes more download").isLessThan(off);
  }

  /** The numbers of the Javadoc, by hand from the formula. */
  @Test
  void the_documented_example_holds() {
    assertThat(PropellerFormulas.normalSlope(0.04, Math.toRadians(20), 0)).isCloseTo(0.0739, within(5e-5));
    double factor = PropellerFormulas.normalSlope(0.04, 0.3, 1) / PropellerFormulas.normalSlope(0.04, 0.3, 0);
    assertThat(factor).isCloseTo(1.2904, within(5e-5));
  }

  @Test
  void findings_say_how_far_and_what_to_do() {
    var moved = MODEL.withPropeller(pulling(-60, -20), LEVEL).neutralPoint().findings();
    assertThat(moved).anySatisfy(f -> {
      assertThat(f.severity()).isEqualTo(Severity.CAUTION);
      assertThat(f.message()).contains("Power moves the neutral point forward by").contains("mm")
          .contains("raise the thrust line");
    });
    var hard = MODEL.withPropeller(at(-10, 0).thrust(Force.newtons(1), Pressure.pascals(20), 0.5), LEVEL).neutralPoint();
    assertThat(hard.findings()).anyMatch(f -> f.message().contains("only a direction"));
    assertThat(hard.findings()).anyMatch(f -> f.message().contains("Left out"));
  }

  @Test
  void what_is_wrong_is_refused() {
    assertThatThrownBy(() -> at(0, 0).thrust(Force.newtons(-1), Pressure.pascals(20), 0.5))
        .hasMessage("thrust must not be negative, was -1 N");
    assertThatThrownBy(() -> at(0, 0).blades(1, millimetres(10), Angle.ZERO))
        .hasMessage("number of blades must be 2 to 6, was 1");
    assertThatThrownBy(() -> MODEL.withPropeller(at(0, 0), LEVEL).withPropellerAhead(millimetres(50)).neutralPoint())
        .isInstanceOf(IllegalStateException.class).hasMessageContaining("conflict: give one");
  }
}
