// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Layouts other than a tail behind the wing: foreplane, and none at all. */
class ForeplaneTest {
  private static Airframe canard() {
    Airframe glider = Models.glider();
    Wing aft = glider.wing().placedAt(Placement.at(millimetres(220), millimetres(8)));
    Tail foreplane =
        new Tail(
            Tail.Role.HORIZONTAL,
            Planform.tapered(Area.squareCentimetres(35), 5, 0.8),
            Models.PLATE,
            Placement.at(millimetres(20), millimetres(8)),
            Angle.degrees(3));
    return new Airframe(glider.fuselage(), aft, List.of(foreplane));
  }

  private static PitchModel model() {
    return PitchModel.of(canard())
        .withTailEfficiency(1.0)
        .withWingSection(Models.exact(5.5, -0.04, -0.06, 0.9), 3e4)
        .withTailSection(Models.exact(5.5, -0.04, -0.05, 1.0), 2e4);
  }

  @Test
  void the_documented_example_holds() {
    assertThat(Foreplane.wingSlope(4.8, 0.9, 8)).isCloseTo(4.456, within(1e-3));
    assertThat(Foreplane.trimCentre(-2.25, 0.4, 8)).isCloseTo(-2.282, within(1e-3));
  }

  @Test
  void a_foreplane_moves_the_neutral_point_forward() {
    NeutralPoint with = model().neutralPoint();
    assertThat(with.contributions().get(1).value()).isNegative();
    assertThat(with.fraction()).isLessThan(0.25);
    double sum = with.contributions().stream().mapToDouble(s -> s.value()).sum();
    assertThat(sum).isCloseTo(with.fraction(), within(1e-13));
  }

  @Test
  void a_foreplane_feels_upwash_and_presses_the_wing_down() {
    PitchTerms t = model().terms();
    assertThat(t.downwash.value()).isNegative();
    assertThat(t.wingSlope.value()).isLessThan(t.wingAlone.value());
    assertThatThrownBy(() -> model().downwash()).hasMessageEndingWith("has a foreplane: use slopes() and Foreplane");
  }

  @Test
  void trimmed_it_has_no_moment_and_the_lift_wanted() {
    // Without a fuselage's moment the equations close exactly: a thread of a body.
    Airframe a = canard();
    Airframe thin =
        new Airframe(
            new Fuselage(
                a.fuselage().shape(), a.fuselage().length(), millimetres(0.01)),
            a.wing(),
            a.tails());
    PitchModel model = model().withAirframe(thin);
    NeutralPoint np = model.neutralPoint();
    Length cg = np.x().minus(np.meanAerodynamicChord().times(0.15));
    Trim trim = model.trim(cg, 0.5);
    PitchTerms t = model.terms();
    double alpha = trim.angleOfAttack().si();
    double iw = thin.wing().incidence().si();
    double foreplaneLift = trim.tailLift();
    double wingAngle = alpha + iw + 0.04 - Foreplane.downwash(foreplaneLift, t.aspectRatio.value());
    double wing = t.wingAlone.value() * wingAngle;
    double tailAngle = alpha + trim.tailIncidence().si() + 0.04 - t.downwash.value() * wingAngle;
    double tail = t.areaRatio.value() * t.tailSlope.value() * tailAngle;
    double h = np.fraction() - 0.15;
    assertThat(tail).isCloseTo(foreplaneLift, within(1e-9));
    assertThat(wing + tail).isCloseTo(0.5, within(1e-9));
    assertThat(-0.06 + wing * (h - 0.25) - tail * (t.tailCentre.value() - h)).isCloseTo(0, within(1e-6));
    // A stable foreplane works harder than the wing, and is set leading edge up against it.
    assertThat(trim.tailLiftCoefficient()).isGreaterThan(trim.wingLiftCoefficient());
    assertThat(trim.decalage().si()).isNegative();
  }

  @Test
  void forward_a_foreplane_runs_out_of_lift_and_aft_the_wing_stalls_first() {
    CentreOfGravityRange range = CentreOfGravityRange.of(model(), 0.05, 0.7, 1.0);
    double forward = range.range().limits().lower();
    double aft = range.range().limits().upper();
    assertThat(forward).isLessThan(aft);
    // At the forward end the foreplane is at its greatest lift, at the lift coefficient asked for.
    assertThat(model().trim(Length.metres(forward), 0.7).tailLiftCoefficient()).isCloseTo(1.0, within(1e-9));
    // At the place of the order of stalling both are at theirs; a little forward the foreplane is first, aft the wing.
    double order = range.range().bounds().stream().filter(b -> b.name().contains("stalls before"))
        .findFirst().orElseThrow().interval().upper();
    PitchTerms t = model().terms();
    double foreplane = t.efficiency.value() * t.areaRatio.value() * 1.0;
    Trim both = model().trim(Length.metres(order), 0.9 + foreplane);
    assertThat(both.tailLiftCoefficient()).isCloseTo(1.0, within(1e-9));
    assertThat(both.wingLiftCoefficient()).isCloseTo(0.9, within(1e-9));
    Length ahead = Length.metres(order - 0.002);
    assertThat(model().trim(ahead, 0.9 + foreplane).tailLiftCoefficient()).as("stalled by then").isGreaterThan(1.0);
  }

  @Test
  void a_canard_too_far_aft_is_told_that_the_wing_would_stall_first() {
    CentreOfGravityRange range = CentreOfGravityRange.of(model(), -0.2, 0.7, 0.4);
    double aft = range.range().limits().upper();
    var loaded = range.check(List.of(new LoadingCase("tail-heavy",
        io.github.wingwright.core.mass.MassStatement.of(io.github.wingwright.core.mass.MassItem.of("battery",
            io.github.wingwright.core.quantity.Mass.grams(10), Placement.at(Length.metres(aft + 0.004), Length.ZERO))))));
    assertThat(loaded.findings().get(0).message()).contains("Move battery forward by 4 mm");
    assertThat(range.workings().toString()).contains("stall together");
  }

  @Test
  void a_foreplane_is_sized_between_trim_and_margin() {
    NeutralPoint np = model().neutralPoint();
    Length forward = np.x().minus(np.meanAerodynamicChord().times(0.20));
    Length aft = np.x().minus(np.meanAerodynamicChord().times(0.10));
    var sized = ForeplaneSizing.of(model()).staticMargin(0.03, aft).trimAt(0.5, 1.0, forward, aft).solve();
    // The area that leaves the margin is that of the aircraft itself with another area.
    double most = sized.range().bounds().get(0).interval().upper();
    Tail largest = TailScale.toArea(model().airframe().pitchTail().orElseThrow(), most);
    Airframe grown = new Airframe(canard().fuselage(), canard().wing(), List.of(largest));
    assertThat(model().withAirframe(grown).staticMargin(aft).value()).isCloseTo(0.03, within(1e-7));
    // The least that trims, trims.
    Airframe small = new Airframe(canard().fuselage(), canard().wing(), List.of(sized.value()));
    assertThat(model().withAirframe(small).trim(forward, 0.5).tailLiftCoefficient()).isCloseTo(1.0, within(1e-9));
    assertThat(sized.value().quarterChordX().si())
        .isCloseTo(canard().pitchTail().orElseThrow().quarterChordX().si(), within(1e-12));
    assertThatThrownBy(() -> ForeplaneSizing.of(model()).staticMargin(0.9, aft))
        .hasMessageContaining("no foreplane leaves a static margin of 90 %").hasMessageContaining("Move the centre of gravity");
    assertThatThrownBy(() -> ForeplaneSizing.of(PitchModel.of(Models.glider())))
        .hasMessage("a foreplane must stand ahead of the wing, the airframe has its tail behind it: use TailSizing");
    assertThatThrownBy(() -> ForeplaneSizing.of(model()).solve()).hasMessageContaining("none was given");
  }

  @Test
  void a_straight_wing_alone_cannot_be_trimmed_with_camber_but_a_swept_one_with_washout_can() {
    Airframe glider = Models.glider();
    Airframe plank = new Airframe(glider.fuselage(), glider.wing(), List.of());
    PitchModel straight = PitchModel.of(plank).withWingSection(Models.exact(5.5, -0.04, -0.06, 0.9), 3e4);
    NeutralPoint np = straight.neutralPoint();
    Length cg = np.x().minus(np.meanAerodynamicChord().times(0.08));
    TaillessTrim trim = TaillessTrim.of(straight, cg, 0.4);
    assertThat(trim.neededMoment()).isPositive();
    assertThat(trim.ownMoment().likely()).isEqualTo(-0.06);
    assertThat(trim.findings().get(0).message()).contains("section with reflex");
    // Moving the centre of gravity aft would trim it, behind the neutral point.
    assertThat(trim.findings().get(0).message()).contains("aft by").endsWith("unstable.");
    assertThat(trim.marginInTrim().value()).isNegative();
    assertThat(TaillessTrim.of(straight, trim.balancePoint(), 0.4).neededMoment())
        .isCloseTo(trim.ownMoment().likely(), within(1e-12));

    Planform swept = glider.wing().planform().withSweep(0.25, Angle.degrees(25));
    Wing wing = new Wing(swept, Models.PLATE, glider.wing().placement(), Angle.ZERO);
    PitchModel flying =
        PitchModel.of(new Airframe(glider.fuselage(), wing, List.of()))
            .withWingSection(Models.exact(5.5, -0.01, 0.0, 0.9), 3e4);
    NeutralPoint sweptPoint = flying.neutralPoint();
    Length sweptCg = sweptPoint.x().minus(sweptPoint.meanAerodynamicChord().times(0.06));
    Angle missing = TaillessTrim.of(flying, sweptCg, 0.3).washoutMissing().orElseThrow();
    assertThat(missing.degrees()).isBetween(0.5, 12.0);
    // Built with it, the wing is in trim, up to the small change of its zero-lift angle in the fuselage's moment.
    Wing twisted = new Wing(swept.withWashout(missing), Models.PLATE, wing.placement(), Angle.ZERO);
    TaillessTrim done =
        TaillessTrim.of(
            flying.withAirframe(new Airframe(glider.fuselage(), twisted, List.of())), sweptCg, 0.3);
    assertThat(done.ownMoment().likely()).isCloseTo(done.neededMoment(), within(0.012));
    assertThat(done.ownMoment().likely()).isPositive();
  }

  @Test
  void a_tailless_aircraft_goes_through_margin_range_and_trim() {
    Airframe wing = Layouts.TAILLESS.airframe();
    PitchModel model = PitchModel.of(wing).withWingSection(Models.exact(5.5, -0.01, 0.005, 0.9), 3e4);
    TaillessTrim trim = TaillessTrim.of(model, model.neutralPoint().x(), 0.4);
    // Where it trims itself it is stable, and in the range, which has an aft end only.
    assertThat(trim.marginInTrim().value()).isPositive();
    CentreOfGravityRange range = CentreOfGravityRange.of(model, 0.01, 0.6, 0.5);
    assertThat(trim.balancePoint().si()).isLessThan(range.range().limits().upper());
    assertThat(range.range().limits().lower()).isEqualTo(Double.NEGATIVE_INFINITY);
    TaillessTrim there = TaillessTrim.of(model, trim.balancePoint(), 0.4);
    assertThat(there.findings()).isEmpty();
    // Farther forward it can only be flown faster: at a lower lift coefficient the balance point lies farther forward.
    assertThat(TaillessTrim.of(model, trim.balancePoint(), 0.3).balancePoint()).isLessThan(trim.balancePoint());
  }

  @Test
  void washout_on_a_swept_wing_pitches_up_and_without_sweep_does_nothing() {
    Planform straight = Planform.tapered(millimetres(400), millimetres(50), millimetres(50));
    Planform washed = straight.withWashout(Angle.degrees(3));
    assertThat(SweptTwist.moment(washed, 4.5)).isZero();
    Planform back = straight.withSweep(0.25, Angle.degrees(20)).withWashout(Angle.degrees(3));
    assertThat(SweptTwist.moment(back, 4.5)).isPositive();
    // Rectangular wing, by hand: C_m = a·θ·tan Λ·(b/2)/c̄·(⅓ − ¼) with θ at the tip.
    // The slope of the third harmonic at A = 8: 4.5/(1 + 9/8π).
    double slope = 4.5 / (1 + 9 / (8 * Math.PI));
    double byHand = slope * Math.toRadians(3) * Math.tan(Math.toRadians(20)) * 4.0 / 12.0;
    assertThat(SweptTwist.moment(back, 4.5)).isCloseTo(byHand, within(1e-12));
  }
}
