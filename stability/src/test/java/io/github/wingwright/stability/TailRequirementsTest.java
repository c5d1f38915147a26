// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.derivatives.BodyLateral;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The smallest tail that satisfies all requirements, and who decides. */
class TailRequirementsTest {
  private static final Airframe GLIDER = Models.glider();
  private static final PitchModel MODEL =
      PitchModel.of(GLIDER)
          .withWingSection(Models.exact(5.5, -0.05, -0.10, 0.9), 3e4)
          .withTailSection(Models.symmetric(), 2e4);
  private static final Length QUARTER = GLIDER.wing().quarterChordX();

  private static TailSizing level() {
    return TailSizing.horizontal(GLIDER.wing())
        .section(Models.PLATE)
        .aspectRatio(3.5)
        .taperRatio(0.8)
        .arm(millimetres(190));
  }

  private static PitchModel with(Tail tail) {
    return MODEL.withAirframe(new Airframe(GLIDER.fuselage(), GLIDER.wing(), List.of(tail)));
  }

  @Test
  void a_tail_for_the_forward_limit_trims_there_at_exactly_its_greatest_download() {
    Length forward = QUARTER.minus(millimetres(8));
    Tail tail = level().trimAt(0.85, forward, 0.6, MODEL).solve().value();
    Trim trim = with(tail).trim(forward, 0.85);
    assertThat(trim.tailLiftCoefficient()).isCloseTo(-0.6, within(1e-12));
    CentreOfGravityRange range = CentreOfGravityRange.of(with(tail), 0.05, 0.85, 0.6);
    assertThat(range.range().limits().lower()).isCloseTo(forward.si(), within(1e-12));
  }

  @Test
  void of_margin_and_forward_limit_the_harder_one_decides() {
    Length aft = QUARTER.plus(millimetres(8));
    Length forward = QUARTER.minus(millimetres(2));
    Sized<Tail> byMargin = level().staticMargin(0.15, aft, MODEL).trimAt(0.85, forward, 0.6, MODEL).solve();
    assertThat(byMargin.range().lowerBinding().orElseThrow().name()).startsWith("static margin");
    assertThat(with(byMargin.value()).staticMargin(aft).value()).isCloseTo(0.15, within(1e-12));

    Length farForward = QUARTER.minus(millimetres(25));
    Length hardlyAft = QUARTER.minus(millimetres(10));
    Sized<Tail> byTrim =
        level().staticMargin(0.15, hardlyAft, MODEL).trimAt(0.85, farForward, 0.6, MODEL).solve();
    assertThat(byTrim.range().lowerBinding().orElseThrow().name()).startsWith("trim at a lift coefficient");
    // The smallest that satisfies all: each requirement alone asks for no more.
    double alone = level().trimAt(0.85, farForward, 0.6, MODEL).solve().value().planform().area().si();
    assertThat(byTrim.value().planform().area().si()).isEqualTo(alone);
  }

  @Test
  void requirements_hold_too_where_the_tail_must_end_with_the_fuselage() {
    Length aft = QUARTER.plus(millimetres(5));
    Tail tail =
        TailSizing.horizontal(GLIDER.wing())
            .section(Models.PLATE)
            .aspectRatio(3.5)
            .taperRatio(0.8)
            .trailingEdgeAt(millimetres(320))
            .staticMargin(0.12, aft, MODEL)
            .solve()
            .value();
    assertThat(with(tail).staticMargin(aft).value()).isCloseTo(0.12, within(1e-10));
    assertThat(tail.placement().x().plus(tail.planform().rootChord()).millimetres()).isCloseTo(320, within(1e-6));
  }

  @Test
  void a_fin_for_directional_stability_has_it() {
    Length cg = QUARTER;
    Sized<Tail> sized =
        TailSizing.vertical(GLIDER.wing())
            .section(Models.PLATE)
            .aspectRatio(1.5)
            .taperRatio(0.7)
            .arm(millimetres(190))
            .directionalStability(0.08, GLIDER, cg)
            .solve();
    Tail fin = sized.value();
    // Independent: fuselage couple and fin, with the sign that a positive yaw moment turns the nose into the wind.
    double sb = GLIDER.wing().planform().area().si() * 0.4;
    double body =
        BodyLateral.yawDueToSideslip(
            ApparentMass.munkFactor(GLIDER.fuselage().finenessRatio()), GLIDER.fuselage().volume().si() / sb);
    double a = 1.55 * 1.5;
    double slope = 2 * Math.PI * a / (2 + Math.sqrt(4 + a * a));
    double gives = slope * 0.9 * fin.planform().area().si() * 0.190 / sb;
    assertThat(body).isNegative();
    assertThat(body + gives).isCloseTo(0.08, within(1e-12));
    assertThat(sized.range().lowerBinding().orElseThrow().name()).isEqualTo("directional stability of 0.080 per radian");
  }

  @Test
  void a_tail_for_rotation_just_balances_the_moments_about_the_wheels() {
    Length forward = QUARTER;
    Length wheels = QUARTER.plus(millimetres(15));
    Tail tail = level().rotation(0.3, 0.7, 0.6, wheels, forward, MODEL).solve().value();
    double c = GLIDER.wing().planform().meanAerodynamicChord().si();
    double s = tail.planform().area().si() / GLIDER.wing().planform().area().si();
    // By hand, about the wheels: wing moment, wing lift ahead, weight ahead, download behind.
    double moment = -0.10 + 0.3 * 0.015 / c - 0.7 * 0.015 / c + 0.8 * s * 0.6 * (0.190 - 0.015) / c;
    assertThat(moment).isCloseTo(0, within(1e-12));
    // Sign: wheels farther aft need more tail.
    Tail more = level().rotation(0.3, 0.7, 0.6, wheels.plus(millimetres(5)), forward, MODEL).solve().value();
    assertThat(more.planform().area().si()).isGreaterThan(tail.planform().area().si());
    assertThatThrownBy(() -> level().rotation(0.3, 0.7, 0.6, QUARTER, forward, MODEL))
        .hasMessageContaining("must lie behind the centre of gravity");
  }

  @Test
  void each_requirement_belongs_to_its_own_tail() {
    TailSizing fin = TailSizing.vertical(GLIDER.wing()).section(Models.PLATE);
    assertThatThrownBy(() -> fin.trimAt(0.8, QUARTER, 0.6, MODEL)).hasMessageContaining("trim in pitch");
    assertThatThrownBy(() -> level().directionalStability(0.08, GLIDER, QUARTER))
        .hasMessageContaining("directional stability is a matter of the fin");
    assertThatThrownBy(
            () -> fin.arm(millimetres(5)).directionalStability(0.08, GLIDER, QUARTER.plus(millimetres(50))).solve())
        .hasMessageContaining("must lie behind the centre of gravity");
  }
}
